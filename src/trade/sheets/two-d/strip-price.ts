import type { Meter } from '../one-d/meter';
import { type Nest, rowOf } from './nest';
import { alongX, alongY } from './packing';
import type { PieceTable } from './stock';

/** A piece as it lies: along its strip and over it. */
type Way = { readonly piece: number; readonly what: number; readonly along: number; readonly over: number };

/** Strips along x (`across`) or along y, on a sheet so long and so wide. */
export type Lying = {
  readonly across: boolean;
  readonly along: number;
  readonly over: number;
  readonly ways: readonly Way[];
};

/** The ways pieces may lie in strips of a sheet. @example lyingOn(stock, { w: 96, h: 48 }, true).ways */
export function lyingOn(
  stock: PieceTable,
  sheet: { readonly w: number; readonly h: number },
  across: boolean,
): Lying {
  const room = across ? { along: sheet.w, over: sheet.h } : { along: sheet.h, over: sheet.w };
  const ways = [...stock.count.keys()].flatMap((piece) => {
    const w = stock.w[piece] ?? 0;
    const h = stock.h[piece] ?? 0;
    const asIs = { piece, what: 2 * piece, along: across ? w : h, over: across ? h : w };
    const turned = { piece, what: 2 * piece + 1, along: asIs.over, over: asIs.along };
    return stock.turn[piece] === 1 ? [asIs, turned] : [asIs];
  });
  return { across, ...room, ways: ways.filter((x) => x.along <= room.along && x.over <= room.over) };
}

type Asked = { readonly prices: Float64Array; readonly left: Int32Array; readonly meter: Meter };

/** So many stacks of a piece side by side; each stack `high` pieces. */
type Bundle = { readonly way: Way; readonly high: number; readonly times: number };

function bundlesIn(lying: Lying, over: number, { prices, left }: Asked): readonly Bundle[] {
  return lying.ways.flatMap((way) => {
    const have = left[way.piece] ?? 0;
    if (way.over > over || have === 0 || (prices[way.piece] ?? 0) <= 0) return [];
    const high = Math.min(have, Math.floor(over / way.over));
    let stacks = Math.min(Math.floor(have / high), Math.floor(lying.along / way.along));
    const bundles: Bundle[] = [];
    for (let n = 1; stacks > 0; n *= 2) {
      const times = Math.min(n, stacks);
      bundles.push({ way, high, times });
      stacks -= times;
    }
    return bundles;
  });
}

/** Fills a strip of the best; `took` says which bundle was taken at which length, where it is wanted. */
function fillStrip(
  bundles: readonly Bundle[],
  best: Float64Array,
  { prices, meter }: Asked,
  took?: Uint8Array,
): number {
  const wide = best.length;
  best.fill(0);
  took?.fill(0);
  for (const [b, { way, high, times }] of bundles.entries()) {
    const size = way.along * times;
    const worth = (prices[way.piece] ?? 0) * high * times;
    for (let c = wide - 1; c >= size; c -= 1) {
      const now = (best[c - size] ?? 0) + worth;
      if (now <= (best[c] ?? 0)) continue;
      best[c] = now;
      if (took) took[b * wide + c] = 1;
    }
  }
  meter.spent += (bundles.length * wide) / 2;
  return best[wide - 1] ?? 0;
}

/** The best strip of a width, of what is left, which it is taken off. */
function cutStrip(lying: Lying, over: number, asked: Asked): Nest | undefined {
  const bundles = bundlesIn(lying, over, asked);
  const wide = lying.along + 1;
  const took = new Uint8Array(bundles.length * wide);
  fillStrip(bundles, new Float64Array(wide), asked, took);
  const stacks: Nest[] = [];
  const [along, up] = lying.across ? [alongX, alongY] : [alongY, alongX];
  let c = wide - 1;
  for (let b = bundles.length - 1; b >= 0; b -= 1) {
    const bundle = bundles[b];
    if (!bundle || took[b * wide + c] !== 1) continue;
    const { way, high, times } = bundle;
    c -= way.along * times;
    for (let t = 0; t < times; t += 1) {
      // lying and standing, a piece may have been taken more often than there is of it
      const have = Math.min(high, asked.left[way.piece] ?? 0);
      asked.left[way.piece] = (asked.left[way.piece] ?? 0) - have;
      const stack = rowOf(up, new Array<Nest>(have).fill({ what: way.what, of: [] }));
      if (stack) stacks.push(stack);
    }
  }
  return rowOf(along, stacks);
}

/** The widths of strip that fill a sheet best: `last[c]` the last of them in a room of c, −1 where it stays empty. */
function fillSheet(widths: readonly number[], worths: readonly number[], over: number): Int32Array {
  const whole = new Float64Array(over + 1);
  const last = new Int32Array(over + 1).fill(-1);
  for (let c = 1; c <= over; c += 1) {
    whole[c] = whole[c - 1] ?? 0;
    for (let k = 0; k < widths.length && (widths[k] ?? 0) <= c; k += 1) {
      const now = (whole[c - (widths[k] ?? 0)] ?? 0) + (worths[k] ?? 0);
      if (now <= (whole[c] ?? 0)) continue;
      whole[c] = now;
      last[c] = k;
    }
  }
  return last;
}

/** Strips of these widths one after the other, each of what the ones before it left; then as `last` says. */
function cutSheet(
  lying: Lying,
  asked: Asked,
  { first, widths, last }: { first: number; widths: readonly number[]; last: Int32Array },
): Nest | undefined {
  const strips: Nest[] = [];
  const known = new Map<number, Nest | undefined>();
  const cut = (over: number): void => {
    const strip = known.has(over)
      ? known.get(over)
      : cutStrip(lying, over, { ...asked, left: Int32Array.from(asked.left) });
    known.set(over, strip);
    if (strip) strips.push(strip);
  };
  cut(first);
  for (let c = lying.over - first; c > 0; ) {
    const width = widths[last[c] ?? -1];
    if (width !== undefined) cut(width);
    c -= width ?? 1;
  }
  return rowOf(lying.across ? alongY : alongX, strips);
}

/** Sheets of one pricing: each begins with another width of strip. Measured, no source. */
const sheetsAtOnce = 6;

/**
 * Sheets of strips worth much at these prices: in a strip stand stacks of equal pieces. Each width of strip is filled
 * as well as it goes, then the sheet with widths; each strip after the other then takes of what is left.
 *
 * Source: P. C. Gilmore, R. E. Gomory, Operations Research 13 (1965), here with stacks.
 *
 * @param lying the strips @param asked `prices` and pieces `left`, by piece
 * @returns sheets, no piece more often than it is left
 * @example stripSheets(lyingOn(stock, sheet, true), { prices, left, meter })
 */
export function stripSheets(lying: Lying, asked: Asked): readonly Nest[] {
  const wanted = lying.ways.filter((way) => (asked.left[way.piece] ?? 0) > 0);
  const widths = [...new Set(wanted.map((way) => way.over))].sort((a, b) => a - b);
  const best = new Float64Array(lying.along + 1);
  const worths = widths.map((over) => fillStrip(bundlesIn(lying, over, asked), best, asked));
  const last = fillSheet(widths, worths, lying.over);
  asked.meter.spent += widths.length * lying.over;
  const dear = widths
    .map((over, k) => ({ over, worth: (worths[k] ?? 0) / over }))
    .sort((a, b) => b.worth - a.worth)
    .slice(0, sheetsAtOnce);
  return dear.flatMap(({ over }) => cutSheet(lying, asked, { first: over, widths, last }) ?? []);
}
