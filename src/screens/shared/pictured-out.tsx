import { useState } from 'preact/hooks';
import { Button } from '../../ui/button';
import type { Copies } from '../copies';
import * as words from './pictured-out-words';

type PicturedOutProps = {
  readonly copies: Copies | undefined;
  /** Name of the file. */
  readonly name: string;
  readonly label: string;
  /** Of one job alone. */
  readonly job?: string;
};

/** Hands out a copy with its pictures, where there are any, and says what came of it. */
export function PicturedOut({ copies, name, label, job }: PicturedOutProps) {
  const [told, setTold] = useState<string>();
  if (!copies?.pictures.some.value) return null;
  const out = async () => {
    setTold(words.writing);
    setTold(words.wentOut(...(await copies.outPictured(name, job))));
  };
  return (
    <>
      <Button label={label} icon="share" onTap={() => void out()} />
      {told && (
        <p class="note" role="status">
          {told}
        </p>
      )}
    </>
  );
}
