import {
  fromMillimetres,
  inches,
  isNegative,
  isZero,
  type Length,
  negate,
  subtract,
} from '../../length/length';
import { roundTo } from '../../length/round';
import type { Units } from '../../length/units';
import { shareTrim } from './fair';

/** Trims are shared at a sixty-fourth whatever the tape, in a metric shop at half a millimetre: no tape has finer. */
const grains: Readonly<Record<Units, Length>> = { in: inches(1n, 64n), mm: fromMillimetres(1n, 2n) };

export type Trims = {
  /** New heights of the fronts that give, by number. */
  readonly heights: ReadonlyMap<number, Length>;
  /** What each gives; negative: it may be so much taller. */
  readonly off: ReadonlyMap<number, Length>;
};

/**
 * So much taken off the fronts still to go, in equal parts at a sixty-fourth or half a millimetre, the larger shares
 * off the lower ones. Fronts that are cut keep their size while there are others to give; when all are cut they are
 * planed. What is not cut may be made taller instead: rounded down, so that no gap gets less than is wanted.
 *
 * @param trim in all, inches; negative: the fronts may be so much taller
 * @param fronts still to go, from the top; @param units of the job
 * @example trimsFor(inches(5n, 64n), [four, five]).off // 4: 1/32, 5: 3/64
 */
export function trimsFor(
  trim: Length,
  fronts: readonly { readonly no: number; readonly height: Length; readonly cut: boolean }[],
  units: Units = 'in',
): Trims {
  const grain = grains[units];
  const uncut = fronts.filter((f) => !f.cut);
  const give = uncut.length > 0 || isNegative(trim) ? uncut : fronts;
  if (give.length === 0 || isZero(trim)) return { heights: new Map(), off: new Map() };
  const grows = isNegative(trim);
  const total = grows ? roundTo(negate(trim), grain, 'floor').value : trim;
  const shares = shareTrim(total, give.length, grain);
  const off = new Map(
    give.flatMap((f, k) => {
      const share = shares[k];
      if (!share || isZero(share)) return [];
      return [[f.no, grows ? negate(share) : share] as const];
    }),
  );
  const heights = new Map(
    give.flatMap((f) => {
      const share = off.get(f.no);
      return share ? [[f.no, subtract(f.height, share)] as const] : [];
    }),
  );
  return { heights, off };
}
