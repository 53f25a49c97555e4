import { cutterTape, markAt, type Tape } from '../../length/tape';
import type { Part } from '../carcass/part';
import type { PieceName } from '../carcass/part-name';
import { dovetailed, fingered } from './lies';
import { type Operation, opId } from './operation';
import { setupOf } from './setup';

type Piece = { readonly id: string; readonly name: PieceName };

/** What joins an end, all of it at one setup: it comes last on its piece. */
export function endOf(part: Part, piece: Piece, tape: Tape): readonly Operation[] {
  if (!part.endCut) return [];
  const { what, machine, cutter, height, sets, on, markedFrom } = part.endCut;
  const figure = part.endCut.figure && markAt(part.endCut.figure, cutterTape(tape));
  return [
    {
      id: opId(part.id, what, piece.id),
      part: part.id,
      copy: piece.id,
      name: piece.name,
      what,
      setup: setupOf({ machine, cutter, height, sets, figure, on }),
      figure: figure?.value ?? height,
      after: [],
      end: { markedFrom },
      placing: what === 'fingers' ? fingered(part) : dovetailed(part),
    },
  ];
}
