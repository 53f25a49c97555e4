import { type Packing, putIn } from './packing';
import { openSheet, type State, touch } from './state';

/**
 * Work to look at a node, and at a sheet, for one piece; and to take a piece off and put it in its place. Fitted to
 * processor times of twenty instances of 20 to 200 pieces, no source.
 */
const workOf = { node: 0.5, sheet: 3, settled: 80 };

/** The best place met so far for one piece; `score` is what it leaves, less is better. */
type Spot = { place: number; slot: number; turned: boolean; score: number };

/**
 * How often a place is passed over at random, so that the search does not go in circles. Tuned on samples, no source.
 */
const overlooked = 0.01;

function look(lay: Packing, w: number, h: number, spot: Spot): number {
  const { rx, ry, n } = lay;
  let slot = -1;
  let least = spot.score;
  for (let k = 0; k <= n; k += 1) {
    const x = (rx[k] ?? 0) - w;
    const y = (ry[k] ?? 0) - h;
    if (x < 0 || y < 0) continue;
    const score = Math.min(x, y);
    if (score >= least) continue;
    least = score;
    slot = k;
  }
  spot.score = least;
  return slot;
}

function lookBothWays(state: State, place: number, piece: number, spot: Spot): void {
  const lay = state.lays[place];
  if (!lay) return;
  const { stock } = state;
  const w = stock.w[piece] ?? 0;
  const h = stock.h[piece] ?? 0;
  state.work += (lay.n + 1) * workOf.node;
  const slot = look(lay, w, h, spot);
  if (slot >= 0) {
    spot.place = place;
    spot.slot = slot;
    spot.turned = false;
  }
  if (stock.turn[piece] === 0) return;
  state.work += (lay.n + 1) * workOf.node;
  const turned = look(lay, h, w, spot);
  if (turned < 0) return;
  spot.place = place;
  spot.slot = turned;
  spot.turned = true;
}

/** Whether the sheet may take the piece at all: area, and the sheet of the rest of its group. */
export function mayTake(state: State, place: number, piece: number): boolean {
  const lay = state.lays[place];
  const { area, group, groupArea } = state.stock;
  if (!lay || lay.kind < 0 || lay.free < (area[piece] ?? 0)) return false;
  const of = group[piece] ?? -1;
  if (of < 0) return true;
  const home = state.home[of] ?? -1;
  return home < 0 ? lay.free >= (groupArea[of] ?? 0) : home === place;
}

export function settle(
  state: State,
  piece: number,
  { place, slot, turned }: { readonly place: number; readonly slot: number; readonly turned: boolean },
): void {
  const { stock } = state;
  const lay = state.lays[place];
  if (!lay) return;
  touch(state, place);
  const w = stock.w[piece] ?? 0;
  const h = stock.h[piece] ?? 0;
  const put = { what: 2 * piece + (turned ? 1 : 0), w: turned ? h : w, h: turned ? w : h };
  putIn(lay, slot, put);
  state.work += workOf.settled + lay.n;
  state.looseArea -= w * h;
  const of = stock.group[piece] ?? -1;
  if (of < 0) return;
  state.home[of] = place;
  state.atHome[of] = (state.atHome[of] ?? 0) + 1;
}

const fits = (kind: { readonly w: number; readonly h: number }, w: number, h: number): boolean =>
  w <= kind.w && h <= kind.h;

/** A kind that may still be bought and takes the piece: mostly the one with most area for its cost; -1 for none. */
export function kindFor(state: State, piece: number): number {
  const { stock, kinds, dice } = state;
  const w = stock.w[piece] ?? 0;
  const h = stock.h[piece] ?? 0;
  const of = stock.group[piece] ?? -1;
  if (of >= 0 && (state.home[of] ?? -1) >= 0) return -1;
  const need = of >= 0 ? (stock.groupArea[of] ?? 0) : 0;
  let best = -1;
  let worth = 0;
  for (let k = 0; k < kinds.length; k += 1) {
    const kind = kinds[k];
    if (!kind || (state.used[k] ?? 0) >= kind.count || state.cost + kind.cost > state.budget) continue;
    if (kind.w * kind.h < need) continue;
    if (!fits(kind, w, h) && !(stock.turn[piece] === 1 && fits(kind, h, w))) continue;
    const area = kinds.length === 1 ? 1 : ((kind.w * kind.h) / kind.cost) * (0.7 + 0.6 * dice.part());
    if (area <= worth) continue;
    worth = area;
    best = k;
  }
  return best;
}

/** Puts one piece where it leaves least; a new sheet when none has room; false when there is no place for it. */
function placeOne(state: State, piece: number, spot: Spot): boolean {
  spot.place = -1;
  spot.score = Number.POSITIVE_INFINITY;
  for (let place = 0; place < state.lays.length; place += 1) {
    if (!mayTake(state, place, piece)) continue;
    if (state.dice.part() < overlooked) continue;
    lookBothWays(state, place, piece, spot);
  }
  state.work += state.lays.length * workOf.sheet;
  if (spot.place < 0) {
    const kind = kindFor(state, piece);
    if (kind < 0) return false;
    lookBothWays(state, openSheet(state, kind), piece, spot);
  }
  settle(state, piece, spot);
  return true;
}

/** Gives the loose pieces places, in the order they lie in; those that find none stay loose. */
export function fill(state: State): void {
  const spot: Spot = { place: -1, slot: 0, turned: false, score: 0 };
  let kept = 0;
  let failed = -1;
  for (let k = 0; k < state.looseCount; k += 1) {
    const piece = state.loose[k] ?? 0;
    if (piece !== failed && placeOne(state, piece, spot)) continue;
    failed = piece;
    state.loose[kept] = piece;
    kept += 1;
  }
  state.looseCount = kept;
}
