import { markAt, type Tape } from '../../length/tape';
import type { Part } from '../carcass/part';
import type { PieceName } from '../carcass/part-name';
import { cornered } from './lies';
import { type Operation, opId } from './operation';
import { setupOf } from './setup';

type Piece = { readonly id: string; readonly name: PieceName };

/** A notch at the end of an edge, sawn to two lines: so far in from the edge, so far up from the end. */
export function cornerOf(part: Part, piece: Piece, tape: Tape): readonly Operation[] {
  if (!part.corner) return [];
  const { id, deep, high } = part.corner;
  const [figure, up] = [markAt(deep, tape), markAt(high, tape)];
  const on = { at: 'corner', named: 'front', end: part.end, high: up.value } as const;
  return [
    {
      id: opId(part.id, `corner~${id}`, piece.id),
      part: part.id,
      copy: piece.id,
      name: piece.name,
      what: 'corner',
      which: { is: 'corner', high: up, end: part.end },
      setup: setupOf({ machine: 'hand', sets: 'line-in', figure, on }),
      figure: figure.value,
      after: [],
      placing: cornered,
    },
  ];
}
