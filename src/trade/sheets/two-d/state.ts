import type { Dice } from './dice';
import { copyLay, emptyPacking, emptyStrike, openLay, type Packing, type Strike, strike } from './packing';
import type { Kind, PieceTable } from './stock';

/** What can be taken back besides the sheets. */
type Books = {
  /** Pieces without a place, by number; the first `looseCount` count. */
  loose: Int32Array;
  looseCount: number;
  looseArea: number;
  cost: number;
  /** Sheets of each kind in use. */
  used: Int32Array;
  /** The place of each group's sheet, -1 when it has none, and how many of it lie there. */
  home: Int32Array;
  atHome: Int32Array;
};

/**
 * All sheets while the search works on them, with what it takes to undo one step. Mutable: the inside of the search.
 * `budget`: what the sheets may cost together.
 */
export type State = Books & {
  readonly stock: PieceTable;
  readonly kinds: readonly Kind[];
  readonly dice: Dice;
  budget: number;
  readonly lays: Packing[];
  readonly twins: Packing[];
  readonly touched: Uint8Array;
  readonly touchedList: Int32Array;
  touchedCount: number;
  readonly before: Books;
  gone: Uint8Array;
  strike: Strike;
  /** Steps of work done so far. */
  work: number;
  /** Fewest pieces without a place so far. */
  least: number;
};

function emptyBooks(stock: PieceTable, kinds: number): Books {
  const groups = stock.groups.length;
  return {
    loose: new Int32Array(stock.total),
    looseCount: 0,
    looseArea: 0,
    cost: 0,
    used: new Int32Array(kinds),
    home: new Int32Array(groups).fill(-1),
    atHome: new Int32Array(groups),
  };
}

function copyBooks(from: Books, to: Books): void {
  for (let k = 0; k < from.looseCount; k += 1) to.loose[k] = from.loose[k] ?? 0;
  to.looseCount = from.looseCount;
  to.looseArea = from.looseArea;
  to.cost = from.cost;
  for (let k = 0; k < from.used.length; k += 1) to.used[k] = from.used[k] ?? 0;
  for (let k = 0; k < from.home.length; k += 1) {
    to.home[k] = from.home[k] ?? 0;
    to.atHome[k] = from.atHome[k] ?? 0;
  }
}

/** Everything loose, no sheet open. */
export function emptyState(stock: PieceTable, kinds: readonly Kind[], dice: Dice): State {
  const books = emptyBooks(stock, kinds.length);
  for (const [piece, count] of stock.count.entries()) {
    for (let k = 0; k < count; k += 1) {
      books.loose[books.looseCount] = piece;
      books.looseCount += 1;
    }
    books.looseArea += count * (stock.area[piece] ?? 0);
  }
  return {
    ...books,
    stock,
    kinds,
    dice,
    budget: Number.POSITIVE_INFINITY,
    lays: [],
    twins: [],
    touched: new Uint8Array(stock.total + 1),
    touchedList: new Int32Array(stock.total + 1),
    touchedCount: 0,
    before: emptyBooks(stock, kinds.length),
    gone: new Uint8Array(64),
    strike: emptyStrike(64),
    work: 0,
    least: stock.total,
  };
}

/** Begins a step that `takeBack` can undo. */
export function begin(state: State): void {
  for (let k = 0; k < state.touchedCount; k += 1) state.touched[state.touchedList[k] ?? 0] = 0;
  state.touchedCount = 0;
  copyBooks(state, state.before);
}

/** Called before a sheet is changed. */
export function touch(state: State, place: number): void {
  if (state.touched[place] === 1) return;
  state.touched[place] = 1;
  state.touchedList[state.touchedCount] = place;
  state.touchedCount += 1;
  const lay = state.lays[place];
  const twin = state.twins[place];
  if (lay && twin) copyLay(lay, twin);
}

/** Takes back all since `begin`. */
export function takeBack(state: State): void {
  for (let k = 0; k < state.touchedCount; k += 1) {
    const place = state.touchedList[k] ?? 0;
    const lay = state.lays[place];
    const twin = state.twins[place];
    if (!lay || !twin) continue;
    state.lays[place] = twin;
    state.twins[place] = lay;
  }
  copyBooks(state.before, state);
}

/** A new sheet of a kind, in the first place that is free; the place. */
export function openSheet(state: State, kind: number): number {
  const found = state.lays.findIndex((lay) => lay.kind < 0);
  const place = found < 0 ? state.lays.length : found;
  if (found < 0) {
    state.lays.push(emptyPacking(16));
    state.twins.push(emptyPacking(16));
  }
  touch(state, place);
  const lay = state.lays[place];
  const size = state.kinds[kind];
  if (!lay || !size) throw new RangeError('openSheet: no such kind');
  openLay(lay, kind, size);
  state.used[kind] = (state.used[kind] ?? 0) + 1;
  state.cost += size.cost;
  return place;
}

function closeIfEmpty(state: State, lay: Packing): void {
  if (lay.n > 0 || lay.kind < 0) return;
  state.used[lay.kind] = (state.used[lay.kind] ?? 0) - 1;
  state.cost -= state.kinds[lay.kind]?.cost ?? 0;
  lay.kind = -1;
}

function loosen(state: State, piece: number): void {
  state.loose[state.looseCount] = piece;
  state.looseCount += 1;
  state.looseArea += state.stock.area[piece] ?? 0;
  const group = state.stock.group[piece] ?? -1;
  if (group < 0) return;
  const left = (state.atHome[group] ?? 0) - 1;
  state.atHome[group] = left;
  if (left === 0) state.home[group] = -1;
}

/** Room to mark and strike so many nodes. */
export function widenMarks(state: State, nodes: number): void {
  if (state.gone.length >= nodes) return;
  state.gone = new Uint8Array(2 * nodes);
  state.strike = emptyStrike(2 * nodes);
}

/** Takes the pieces marked in `gone` off a sheet; they are loose then, and an empty sheet is put back. */
export function takeOff(state: State, place: number): void {
  const lay = state.lays[place];
  if (!lay) return;
  touch(state, place);
  for (let k = 0; k < lay.n; k += 1) {
    const what = lay.what[k] ?? 0;
    if (what >= 0 && state.gone[k]) loosen(state, what >> 1);
  }
  state.work += lay.n;
  const marked = lay.n;
  strike(lay, state.gone, state.strike);
  state.gone.fill(0, 0, marked);
  closeIfEmpty(state, lay);
}

/** Takes everything off: all sheets are put back, all pieces loose. */
export function clearAll(state: State): void {
  for (const [place, lay] of state.lays.entries()) {
    if (lay.kind < 0) continue;
    widenMarks(state, lay.n);
    state.gone.fill(1, 0, lay.n);
    takeOff(state, place);
  }
}

/** A saved state. */
export type Saved = { readonly lays: readonly Packing[]; readonly books: Books };

/** A copy of everything as it lies. */
export function saved(state: State): Saved {
  const books = emptyBooks(state.stock, state.kinds.length);
  copyBooks(state, books);
  const lays = state.lays.map((lay) => {
    const copy = emptyPacking(lay.n);
    copyLay(lay, copy);
    return copy;
  });
  return { lays, books };
}

/** Brings a saved state back. */
export function restore(state: State, { lays, books }: Saved): void {
  for (const [place, lay] of state.lays.entries()) {
    const from = lays[place];
    if (from) copyLay(from, lay);
    else lay.kind = -1;
  }
  copyBooks(books, state);
}
