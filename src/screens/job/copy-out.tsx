import { useState } from 'preact/hooks';
import { Button } from '../../ui/button';
import type { Copies, WentOut } from '../copies';
import { copyOut, wentText } from './copy-words';
import { lastCopied } from './phone-words';
import './phone.css';

type CopiesProps = { readonly copies: Copies | undefined };

/** One tap for everything, and what came of it. */
export function CopyOut({ copies }: CopiesProps) {
  const [went, setWent] = useState<WentOut>();
  if (!copies) return null;
  return (
    <>
      <Button label={copyOut} icon="share" onTap={async () => setWent(await copies.out())} />
      <p class="note went" role="status">
        {went && wentText[went]}
      </p>
    </>
  );
}

/** When everything was last copied out. */
export function LastCopied({ copies }: CopiesProps) {
  if (!copies) return null;
  const at = copies.at.value;
  return <p>{lastCopied(at === undefined ? undefined : new Date(at), copies.since.value)}</p>;
}
