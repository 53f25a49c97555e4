import type { Part } from '../carcass/part';
import { mitred } from './lies';
import type { Operation } from './operation';
import { base, type Piece } from './part-pieces';
import { setupOf } from './setup';

/**
 * The ends of a part that are mitred, once it is cut to length square: the blade takes what is under its long points,
 * and leaves it as long.
 */
export function mitresOf(part: Part, piece: Piece): readonly Operation[] {
  const { mitres = [], end, length } = part;
  if (mitres.length === 0) return [];
  const setup = setupOf({
    machine: 'mitre',
    sets: 'long-point',
    figure: length.mark,
    on: { at: 'points', named: end },
  });
  return [
    {
      ...base(part, piece, 'mitre'),
      what: 'mitre',
      which: { is: 'long-points', ends: mitres },
      setup,
      figure: length.mark.value,
      placing: mitred(part),
    },
  ];
}
