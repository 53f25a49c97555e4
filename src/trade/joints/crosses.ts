import { absolute, type Length } from '../../length/length';
import type { Part } from '../carcass/part';
import { around, type CutWood, meet, onFace, takenAlong, takenIn } from '../carcass/taken';
import type { Side } from '../setups/on';
import type { Bore } from '../shelves/bore';
import { clearMove } from './clear-move';
import { movedToward } from './edges';

/** A cut by hand that opens holes of a row: which, by their numbers, and how far along the part it is clear of all. */
export type Crossing = {
  readonly bore: Bore;
  readonly numbers: readonly number[];
  readonly fits?: { readonly toward: Side; readonly by: Length };
};

/**
 * The holes that a cut of a part goes through. It is cut all the same: a shelf may have no pin there.
 *
 * @param id of the cut among those of its part
 * @example crossings(side, 'xj')[0]?.numbers // [3, 4] of the front row
 */
export function crossings(part: Part, id: string): readonly Crossing[] {
  const { thickness: thick, bores = [] } = part;
  if (!thick || bores.length === 0) return [];
  const own = [...takenIn(part, thick), ...takenAlong(part, thick)].find(
    (cut) => cut.id === id && cut.cut !== 'pin-hole',
  );
  if (!own) return [];
  const { taken } = own;
  const beside = bores.filter(
    ({ off, dia, deep, face }) =>
      meet(around(off, dia), taken.across) && meet(onFace(face, deep, thick), taken.into),
  );
  const fits = clearOf(part, own, beside);
  return beside.flatMap((bore): readonly Crossing[] => {
    const met = bore.holes.filter(({ at }) => meet(around(at, bore.dia), taken.along));
    if (met.length === 0) return [];
    return [{ bore, numbers: met.map(({ no }) => no), ...(fits ? { fits } : {}) }];
  });
}

/** Where a cut is clear of all rows it lies level with: moved along the part, or off the row; a rabbet stays. */
function clearOf(part: Part, { cut, taken }: CutWood, rows: readonly Bore[]): Crossing['fits'] {
  if (cut === 'rabbet') return undefined;
  const holes = rows.flatMap(({ holes: all, dia }) => all.map(({ at }) => around(at, dia)));
  const along = clearMove([taken.along], holes, part.length.sum.value);
  if (along) return { toward: movedToward(part, 'along', along), by: absolute(along) };
  if (cut !== 'groove') return undefined;
  const level = rows.map(({ off, dia }) => around(off, dia));
  const across = clearMove([taken.across], level, part.width.sum.value);
  return across && { toward: movedToward(part, 'across', across), by: absolute(across) };
}
