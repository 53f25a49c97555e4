import { kindFor, mayTake, settle } from './fill';
import { type Order, sortLoose } from './order';
import { alongX, alongY, type Packing } from './packing';
import { openSheet, type State } from './state';

/**
 * How strips are laid: `across`: they run along x and lie above each other, otherwise along y, side by side; `long`: a
 * piece that may be turned lies with its long side along the strip, otherwise across it.
 */
type Strips = { readonly across: boolean; readonly long: boolean; readonly order: Order };

/** Every way worth trying. */
export const stripWays: readonly Strips[] = [true, false].flatMap((across) =>
  [true, false].flatMap((long) =>
    (['w', 'h', 'area', 'long'] as const).map((order) => ({ across, long, order })),
  ),
);

/** Size of a piece as it lies: along the strip and across it. */
type Lying = { readonly along: number; readonly over: number; readonly turned: boolean };

/** A place for a piece: `waste` is the strip's width it does not use; a new strip wastes more than any other. */
type Place = {
  readonly place: number;
  readonly slot: number;
  readonly turned: boolean;
  readonly waste: number;
};

function lyingWays(state: State, piece: number, { across, long }: Strips): readonly Lying[] {
  const w = state.stock.w[piece] ?? 0;
  const h = state.stock.h[piece] ?? 0;
  const asIs = across ? { along: w, over: h, turned: false } : { along: h, over: w, turned: false };
  if (state.stock.turn[piece] === 0) return [asIs];
  const turned = { along: asIs.over, over: asIs.along, turned: true };
  return asIs.along > asIs.over === long ? [asIs, turned] : [turned, asIs];
}

/** The node is a strip of its sheet: the whole while there is one strip, else what stands in the first row. */
function isStrip(lay: Packing, k: number, stacked: number): boolean {
  return lay.what[0] === stacked && lay.n > 1 ? lay.up[k] === 0 : k === 0;
}

function inStrip(
  lay: Packing,
  place: number,
  { along, over, turned }: Lying,
  across: boolean,
): Place | undefined {
  const stacked = across ? alongY : alongX;
  const width = across ? lay.nh : lay.nw;
  const room = across ? lay.rx : lay.ry;
  let best: Place | undefined;
  for (let k = 0; k < lay.n; k += 1) {
    if (!isStrip(lay, k, stacked)) continue;
    const waste = (width[k] ?? 0) - over;
    // The one slot of a single piece that goes along y is the last.
    const slot = lay.n === 1 && !across ? 1 : k;
    if (waste < 0 || (room[slot] ?? 0) < along || (best && waste >= best.waste)) continue;
    best = { place, slot, turned, waste };
  }
  return best;
}

function newStrip(
  lay: Packing,
  place: number,
  { along, over, turned }: Lying,
  across: boolean,
): Place | undefined {
  const stacked = across ? alongY : alongX;
  const slot = lay.n === 0 ? 0 : lay.n === 1 ? (across ? 1 : 0) : lay.what[0] === stacked ? 0 : lay.n;
  const x = across ? along : over;
  const y = across ? over : along;
  if ((lay.rx[slot] ?? 0) < x || (lay.ry[slot] ?? 0) < y) return undefined;
  return { place, slot, turned, waste: Number.MAX_VALUE };
}

/** Work to look at a sheet, besides its nodes. Measured, no source. */
const lookAt = 16;

function findPlace(state: State, piece: number, strips: Strips): Place | undefined {
  const { lays } = state;
  let best: Place | undefined;
  const ways = lyingWays(state, piece, strips);
  for (const find of [inStrip, newStrip]) {
    for (const way of ways) {
      state.work += lookAt * lays.length;
      for (let place = 0; place < lays.length; place += 1) {
        const lay = lays[place];
        if (!lay || !mayTake(state, place, piece)) continue;
        if (find === inStrip) state.work += 3 * lay.n;
        const found = find(lay, place, way, strips.across);
        if (found && (!best || found.waste < best.waste)) best = found;
      }
      if (best) return best;
    }
  }
  return undefined;
}

function onNewSheet(state: State, piece: number, strips: Strips): Place | undefined {
  const kind = kindFor(state, piece);
  if (kind < 0) return undefined;
  const place = openSheet(state, kind);
  const lay = state.lays[place];
  const ways = lyingWays(state, piece, strips);
  return lay && ways.map((way) => newStrip(lay, place, way, strips.across)).find((p) => p !== undefined);
}

/** Work for a piece, besides looking for its place. Measured, no source. */
const besides = 50;

/**
 * Lays the loose pieces in strips from edge to edge, cut apart crosswise; a narrower piece is trimmed by a third cut.
 */
export function stage(state: State, strips: Strips): void {
  sortLoose(state, strips.order, 0);
  const pieces = state.loose.slice(0, state.looseCount);
  let kept = 0;
  for (const piece of pieces) {
    const at = findPlace(state, piece, strips) ?? onNewSheet(state, piece, strips);
    state.work += besides;
    if (at) {
      settle(state, piece, at);
      continue;
    }
    state.loose[kept] = piece;
    kept += 1;
  }
  state.looseCount = kept;
}
