import { isDue, type Meter } from '../one-d/meter';
import type { PieceSet, SheetSets } from './set-sizes';
import type { PieceTable } from './stock';

type Asked = {
  readonly stock: PieceTable;
  readonly sets: SheetSets;
  /** By piece: what it is worth, and how many are wanted. */
  readonly prices: Float64Array;
  readonly left: Int32Array;
  /** Area of a sheet. */
  readonly room: number;
  readonly meter: Meter;
  /** Where the meter stands when it is time to stop. */
  readonly until: number;
};

/** A piece that may be added, by rank, how often yet. */
type Next = { readonly rank: number; readonly times: number };

/** A set, what may be added to it in turn, and which of those is next. */
type Branch = {
  readonly set: PieceSet;
  readonly next: readonly Next[];
  readonly worth: number;
  readonly room: number;
  at: number;
};

/** Sets worth more than one, the dearest last; `all`: there is none dearer than `most`. */
export type Priced = { readonly found: readonly PieceSet[]; readonly most: number; readonly all: boolean };

/** Dear sets are enough to go on with: so many are not looked for. Measured, no source. */
const enough = 40;

/** More than rounding makes of one. */
const hair = 1e-7;

/** Steps of the meter for a piece that is weighed. Measured, no source. */
const weighing = 2;

/** The most a set may yet be worth: pieces by worth for their area, the last of them in part. */
function weigher({ stock, sets, prices, meter }: Asked) {
  const size = (rank: number): number => stock.area[sets.pieces[rank] ?? 0] ?? 0;
  const price = (rank: number): number => prices[sets.pieces[rank] ?? 0] ?? 0;
  const byWorth = [...sets.pieces.keys()]
    .filter((rank) => price(rank) > 0)
    .sort((a, b) => price(b) / size(b) - price(a) / size(a));
  const times = new Int32Array(sets.pieces.length);
  const most = (next: readonly Next[], from: number, room: number): number => {
    times.fill(0);
    for (let k = from; k < next.length; k += 1) times[next[k]?.rank ?? 0] = next[k]?.times ?? 0;
    meter.spent += weighing * (times.length + byWorth.length);
    let [sum, free] = [0, room];
    for (const rank of byWorth) {
      const area = size(rank) * (times[rank] ?? 0);
      if (area >= free) return sum + (area === 0 ? 0 : (price(rank) * free) / size(rank));
      sum += price(rank) * (times[rank] ?? 0);
      free -= area;
    }
    return sum;
  };
  return { size, price, most };
}

/**
 * The sets of pieces a sheet takes that are worth more than one, by branch and bound over all sets.
 *
 * @yields undefined for a pause
 * @example [...pricedSets(asked)]
 */
export function* pricedSets(asked: Asked): Generator<undefined, Priced> {
  const { sets, meter, until } = asked;
  const { size, price, most } = weigher(asked);
  const found: PieceSet[] = [];
  let best = 1 + hair;
  let all = true;
  const stack: Branch[] = [firstBranch(asked, price)];
  for (let branch = stack.at(-1); branch; branch = stack.at(-1)) {
    if (isDue(meter)) yield undefined;
    if (meter.spent > until || found.length >= enough) return { found, most: best, all: false };
    const { set, next, at, worth, room } = branch;
    const one = next[at];
    if (!one || worth + most(next, at, room) <= best) {
      stack.pop();
      continue;
    }
    branch.at += 1;
    const grown = sets.plus(set, one.rank);
    const now = { worth: worth + price(one.rank), room: room - size(one.rank) };
    if (now.worth > best) {
      best = now.worth;
      found.push(grown);
    }
    const open = next.slice(at).flatMap(({ rank, times }) => {
      const more = rank === one.rank ? times - 1 : times;
      return more > 0 && size(rank) <= now.room ? [{ rank, times: more }] : [];
    });
    if (open.length === 0 || now.worth + most(open, 0, now.room) <= best) continue;
    const takes = open.map(({ rank }) => sets.takes(grown, rank));
    all &&= !takes.includes(undefined);
    stack.push({ ...now, set: grown, next: open.filter((_, k) => takes[k]), at: 0 });
  }
  return { found, most: best, all };
}

function firstBranch({ sets, left, room }: Asked, price: (rank: number) => number): Branch {
  const next = [...sets.pieces.entries()].flatMap(([rank, piece]) => {
    const times = left[piece] ?? 0;
    return times > 0 && price(rank) > 0 && sets.takes(sets.none, rank) ? [{ rank, times }] : [];
  });
  return { set: sets.none, next, worth: 0, room, at: 0 };
}
