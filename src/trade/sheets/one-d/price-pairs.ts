import type { Kinds, Stick } from './kinds';
import type { Meter } from './meter';
import type { Pricer } from './pricer';

/** Pairs a finder may hold. Common practice, no source: half a million bytes, and a few milliseconds to sort. */
const pairsAtMost = 60_000;

/** Pieces a stick takes at most here, and how often a kind at most counts. */
const most = 4;

/** Sticks handed back beside the best. Measured, no source. */
const othersAtMost = 30;

/** Pieces one by one, the kind of each; behind them three that are nothing, for sticks of fewer than four. */
function piecesOf({ wanted }: Kinds): Int32Array {
  const pieces = [...wanted].flatMap((n, k) => new Array<number>(Math.min(n, most)).fill(k));
  return Int32Array.from([...pieces, -1, -1, -1]);
}

/** True when no five pieces go into one stick, and the pairs are few enough. @example isForPairs(kinds) // true */
export function isForPairs({ sizes, wanted, capacity }: Kinds): boolean {
  let pieces = 0;
  let room = capacity;
  let fit = 0;
  for (let k = sizes.length - 1; k >= 0; k -= 1) {
    const size = sizes[k] ?? 0;
    pieces += Math.min(wanted[k] ?? 0, most);
    const more = Math.min(wanted[k] ?? 0, Math.floor(room / size), most + 1);
    fit += more;
    room = more < (wanted[k] ?? 0) ? 0 : room - more * size;
  }
  const square = (pieces + 3) * (pieces + 3);
  // a pair's length and place together are one exact number
  const exact = 2 * capacity * square <= Number.MAX_SAFE_INTEGER;
  return fit <= most && pieces > 1 && square / 2 <= pairsAtMost && exact;
}

/** All pairs a < b of pieces that go into a stick together, at `place[a × count + b]` from the shortest pair on. */
type Pairs = {
  readonly count: number;
  readonly first: Int32Array;
  readonly second: Int32Array;
  /** Places of pairs no longer than what a pair leaves of the stick, by the pair's own place. */
  readonly reach: Int32Array;
  readonly place: Int32Array;
};

function pairsOf({ sizes, capacity }: Kinds, pieces: Int32Array): Pairs {
  const count = pieces.length;
  const long = Float64Array.from(pieces, (k) => sizes[k] ?? 0);
  const square = count * count;
  const keys: number[] = [];
  for (let a = 0; a < count; a += 1) {
    for (let b = a + 1; b < count; b += 1) {
      const size = (long[a] ?? 0) + (long[b] ?? 0);
      if (size <= capacity) keys.push(size * square + a * count + b);
    }
  }
  const sorted = Float64Array.from(keys).sort();
  const first = new Int32Array(sorted.length);
  const second = new Int32Array(sorted.length);
  const place = new Int32Array(square).fill(-1);
  const size = sorted.map((key, p) => {
    const at = key % square;
    second[p] = at % count;
    first[p] = (at - (second[p] ?? 0)) / count;
    place[at] = p;
    return (key - at) / square;
  });
  const reach = new Int32Array(sorted.length);
  let to = sorted.length;
  for (let p = 0; p < sorted.length; p += 1) {
    while (to > 0 && (size[to - 1] ?? 0) > capacity - (size[p] ?? 0)) to -= 1;
    reach[p] = to;
  }
  return { count, first, second, reach, place };
}

/** The best pair so far among the first so many places (a tree of P. M. Fenwick, Software 24, 1994). */
type Tree = { readonly worth: Float64Array; readonly pair: Int32Array };

function put({ worth, pair }: Tree, p: number, much: number): number {
  let steps = 0;
  for (let at = p + 1; at < worth.length; at += at & -at) {
    steps += 1;
    if ((worth[at] ?? 0) >= much) continue;
    worth[at] = much;
    pair[at] = p;
  }
  return steps;
}

/** The place of the best pair among the first `reach`, or −1. */
function bestIn({ worth, pair }: Tree, reach: number): number {
  let best = -1;
  let much = -1;
  for (let at = reach; at > 0; at -= at & -at) {
    if ((worth[at] ?? 0) <= much) continue;
    much = worth[at] ?? 0;
    best = pair[at] ?? -1;
  }
  return best;
}

type Found = { readonly a: number; readonly b: number; readonly rest: number; readonly worth: number };

/** The best stick for each b, its second longest piece, where it is worth more than `scale`; the best one first. */
function search(pairs: Pairs, worths: Float64Array, scale: number): { found: Found[]; steps: number } {
  const { count, first, second, reach, place } = pairs;
  const tree = { worth: new Float64Array(first.length + 1).fill(-1), pair: new Int32Array(first.length + 1) };
  const found: Found[] = [];
  let steps = 0;
  let top = 0;
  for (let b = count - 3; b >= 1; b -= 1) {
    for (let d = b + 2; d < count; d += 1) {
      const much = (worths[b + 1] ?? 0) + (worths[d] ?? 0);
      const p = place[(b + 1) * count + d] ?? -1;
      if (p < 0) continue;
      steps += put(tree, p, much);
      top = Math.max(top, much);
    }
    let best: Found | undefined;
    let least = scale;
    steps += b;
    for (let a = 0; a < b; a += 1) {
      const here = (worths[a] ?? 0) + (worths[b] ?? 0);
      if (here + top <= least) continue;
      const p = place[a * count + b] ?? -1;
      if (p < 0) continue;
      steps += 12;
      const rest = bestIn(tree, reach[p] ?? 0);
      if (rest < 0) continue;
      const worth = here + (worths[first[rest] ?? 0] ?? 0) + (worths[second[rest] ?? 0] ?? 0);
      if (worth <= least) continue;
      least = worth;
      best = { a, b, rest, worth };
    }
    if (best) found.push(best);
  }
  found.sort((x, y) => y.worth - x.worth);
  return { found, steps };
}

/**
 * For sticks of four pieces at most, however fine the grid: every stick is two pairs, the shorter one the best of those
 * that still go in. Finds the best stick without fail, and good ones beside it.
 *
 * Source of the pairs: E. Horowitz, S. Sahni, Journal of the ACM 21 (1974), halves of a set that are put together.
 *
 * @param kinds such as `isForPairs` says yes to
 * @param meter counts the work
 * @returns the finder
 * @example byPairs(kinds, meter)(prices, { wanted: kinds.wanted, scale: 100 }).most
 */
export function byPairs(kinds: Kinds, meter: Meter): Pricer {
  const pieces = piecesOf(kinds);
  const pairs = pairsOf(kinds, pieces);
  meter.spent += pairs.first.length * 40 + pairs.place.length * 4;
  const stickOf = ({ a, b, rest }: Found): Stick =>
    [a, b, pairs.first[rest] ?? 0, pairs.second[rest] ?? 0].map((p) => pieces[p] ?? -1).filter((k) => k >= 0);
  return (prices, { scale }) => {
    const worths = Float64Array.from(pieces, (k) => (k < 0 ? 0 : (prices[k] ?? 0)));
    const { found, steps } = search(pairs, worths, scale);
    meter.spent += steps * 3 + pairs.first.length * 2;
    const [best] = found;
    return {
      stick: best ? stickOf(best) : [],
      others: found.slice(1, othersAtMost + 1).map(stickOf),
      most: best?.worth ?? scale,
    };
  };
}
