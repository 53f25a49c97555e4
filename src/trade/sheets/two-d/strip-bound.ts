import { kindsOf } from '../one-d/kinds';
import { meterOf } from '../one-d/meter';
import { pricerOf } from '../one-d/price';
import { generate, programmeOf } from '../one-d/relax';
import { type Dual, plainly, steps } from './dual';
import type { TwoD } from './two-d';

/** The whole of a side in parts that most shares divide: 1/2 to 1/10, and 1/12. */
const whole = 2520;

/** k of u^(k) for the side that is weighed. */
const mostSteps = 12;

/** Products of sizes and weights stay exact below this. */
const exact = Number.MAX_SAFE_INTEGER / 4096;

/** Units of effort one programme may take. Measured, no source. */
const each = 8;

type Side = { readonly size: number; readonly across: number; readonly count: number };

/** A side replaced by whole parts of it, rounded down: still no more than the whole wherever sizes lie side by side. */
const weighed = (dual: Dual, size: number, room: number): number =>
  Math.floor((dual(size) * whole) / Math.max(1, dual(room)));

/** Cut into sticks across: each piece as many times as its other side weighs. */
function* sticksNeeded(
  sides: readonly Side[],
  {
    dual,
    room,
    across,
    beaten,
    spend,
  }: {
    readonly dual: Dual;
    readonly room: number;
    readonly across: number;
    readonly beaten: number;
    readonly spend: (units: number) => void;
  },
): Generator<undefined, number> {
  const items = sides
    .map(({ size, across: other, count }) => ({ size: other, count: count * weighed(dual, size, room) }))
    .filter(({ count }) => count > 0);
  const sum = items.reduce((s, { size, count }) => s + size * count, 0);
  if (items.length === 0 || sum > exact) return 0;
  const kinds = kindsOf({ capacity: across, items });
  const meter = meterOf(each);
  const how = { meter, price: pricerOf(kinds, meter), enough: beaten * whole + 1 };
  const found = yield* generate(kinds, programmeOf(kinds, []), how);
  spend((meter.spent / meter.limit) * each);
  return Math.ceil(found.bound / whole);
}

/**
 * A bound on the sheets of one kind for pieces that may not be turned: one side of every piece is replaced by a dual
 * feasible function, and the best function for the other side is worked out, as prices of a programme over all ways to
 * lie next to each other. Proved in whole numbers.
 *
 * @param problem whole numbers, kerf added
 * @param beaten sheets known to be needed @param spend is told the units of effort it takes
 * @returns cost, >= 0; 0 where it does not apply
 * @example [...stripBound(problem, 3)]
 * Source: S. P. Fekete, J. Schepers (2004), as `sheetLowerBound`: any two conservative scales bound an area.
 */
export function* stripBound(
  problem: TwoD,
  beaten: number,
  spend: (units: number) => void = () => {},
): Generator<undefined, number> {
  const [sheet, ...others] = problem.sheets.filter((s) => (s.count ?? 1) > 0);
  const pieces = problem.pieces.filter((p) => p.count > 0);
  if (!sheet || others.length > 0 || pieces.some((p) => p.turn && p.w !== p.h)) return 0;
  let best = beaten;
  const along = pieces.map(({ w, h, count }) => ({ size: w, across: h, count }));
  const upright = pieces.map(({ w, h, count }) => ({ size: h, across: w, count }));
  for (const [sides, room, across] of [
    [along, sheet.w, sheet.h],
    [upright, sheet.h, sheet.w],
  ] as const) {
    const duals = [plainly, ...Array.from({ length: mostSteps }, (_, k) => steps(room, k + 1))];
    for (const dual of duals)
      best = Math.max(best, yield* sticksNeeded(sides, { dual, room, across, beaten: best, spend }));
  }
  return best > beaten ? best * sheet.cost : 0;
}
