import { useRef, useState } from 'preact/hooks';
import { editPiece } from '../../job/edits';
import { equals, type Length } from '../../length/length';
import type { Checklist } from '../../plan/checklist';
import type { Part } from '../../trade/carcass/part';
import { KeySheet } from '../../ui/key-sheet';
import type { Bench } from '../bench';
import { MatchDock } from './came-out';
import * as words from './came-out-words';
import { exactly } from './exact-words';

type Way = keyof typeof words.trueSize;

/** A piece whose true size is keyed. */
export type Asked = {
  readonly part: Part;
  readonly copy: string;
  readonly piece: string;
  readonly way: Way;
};

export const fieldOf = { length: 'asLength', width: 'asWidth' } as const;

type TrueSizeProps = {
  readonly bench: Bench;
  readonly list: Checklist;
  readonly asked: Asked;
  readonly onClose: () => void;
};

/** The size a piece came to; where it is not what was wanted, what to do about it. */
export function TrueSizeDock({ bench, list, asked, onClose }: TrueSizeProps) {
  const [off, setOff] = useState<Length>();
  const keyed = useRef<Length | undefined>(undefined);
  const { part, copy, piece, way } = asked;
  if (off) return <MatchDock {...{ bench, list, onClose }} out={{ part, copy, piece, way, size: off }} />;
  const take = (value: Length | undefined) => {
    void bench.act(
      words.measured(piece, value ? exactly(value) : ''),
      editPiece(part.id, copy, { [fieldOf[way]]: value }),
    );
    keyed.current = value && !equals(value, part[way].mark.value) ? value : undefined;
  };
  return (
    <KeySheet
      title={`${piece}: ${words.trueSize[way].says}`}
      tape="1/64"
      fill="length"
      now={list.plan.job.parts[part.id]?.pieces[copy]?.[fieldOf[way]]}
      onLength={take}
      onClose={() => (keyed.current ? setOff(keyed.current) : onClose())}
    />
  );
}
