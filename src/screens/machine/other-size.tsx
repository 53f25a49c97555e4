import { useState } from 'preact/hooks';
import type { Checklist } from '../../plan/checklist';
import type { Card } from '../../trade/setups/checklist';
import type { Operation } from '../../trade/setups/operation';
import type { Bench } from '../bench';
import { whichCameOut } from '../shared/came-out-words';
import { workWord } from '../shared/part-words';
import { TrueSizeDock } from '../shared/true-size';
import { WhichPiece } from '../shared/which-piece';

/** The cuts of a card that give a piece its length or its width, and are made. */
export const sized = ({ doing }: Checklist, { operations }: Card): readonly Operation[] =>
  operations.filter(({ id, what }) => (what === 'length' || what === 'rip') && doing.done(id));

type OtherProps = {
  readonly bench: Bench;
  readonly list: Checklist;
  readonly card: Card;
  readonly onClose: () => void;
};

/** Which piece came out otherwise than the figure, and the size it came to. */
export function OtherSize({ bench, list, card, onClose }: OtherProps) {
  const cut = sized(list, card);
  const [only] = cut;
  const [chosen, setChosen] = useState<Operation | undefined>(cut.length === 1 ? only : undefined);
  const part = list.plan.parts.find((p) => p.id === chosen?.part);
  if (chosen && part) {
    const way = chosen.what === 'rip' ? 'width' : 'length';
    const asked = { part, copy: chosen.copy, piece: workWord(chosen.name), way } as const;
    return <TrueSizeDock {...{ bench, list, asked, onClose }} />;
  }
  return <WhichPiece title={whichCameOut} pieces={cut} onChoose={setChosen} onClose={onClose} />;
}
