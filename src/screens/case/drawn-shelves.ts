import { add, forDrawing as d, zero } from '../../length/length';
import type { Sizes } from '../../trade/carcass/sizes';

/** An opening of a bay with so many loose shelves in it, inches over the case bottom; for pictures only. */
type Opening = { readonly low: number; readonly high: number; readonly shelves: number };

/**
 * Where the loose shelves of a bay might stand: each goes into the opening that is left highest, evenly there.
 *
 * @returns lower faces over the case bottom, from the bottom up, inches as plain numbers
 */
export function loosePlaces(sizes: Sizes, bay: number): readonly number[] {
  const loose = sizes.case.inside.filter((i) => i.kind === 'loose' && i.bay === bay);
  const count = Math.min(
    mostDrawn,
    loose.reduce((n, i) => n + (i.count ?? 1), 0),
  );
  const shared = Array.from({ length: count }).reduce<readonly Opening[]>(
    withOneMore,
    openingsIn(sizes, bay),
  );
  const thick = d(sizes.thick('shelf'));
  return shared.flatMap((opening) =>
    Array.from({ length: opening.shelves }, (_, k) => opening.low + eachOf(opening) * (k + 1) - thick / 2),
  );
}

/** More would be a grey block. */
const mostDrawn = 40;

const eachOf = ({ low, high, shelves }: Opening): number => (high - low) / (shelves + 1);

function withOneMore(openings: readonly Opening[]): readonly Opening[] {
  const highest = openings.reduce((a, b) => (eachOf(b) > eachOf(a) + 1e-9 ? b : a));
  return openings.map((o) => (o === highest ? { ...o, shelves: o.shelves + 1 } : o));
}

/** What the fixed shelves of a bay leave. */
function openingsIn({ case: c, thick, clearHeight }: Sizes, bay: number): readonly Opening[] {
  const fixed = c.inside
    .filter((i) => i.kind === 'fixed' && i.bay === bay)
    .map((i) => i.at ?? zero)
    .sort((a, b) => a.compare(b));
  const lows = [0, ...fixed.map((at) => d(add(at, thick('shelf'))))];
  const highs = [...fixed.map(d), d(clearHeight.value)];
  return lows.map((low, k) => ({ low, high: highs[k] ?? low, shelves: 0 }));
}
