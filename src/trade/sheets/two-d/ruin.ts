import { type State, takeOff, widenMarks } from './state';

/** At most so many sheets and pieces are touched in a step. Tuned on samples, no source. */
const mostSheets = 3;
const mostPieces = 16;

/** Marks the pieces of the branch at node k; how many were not marked yet. */
function markBranch(state: State, place: number, k: number): number {
  const lay = state.lays[place];
  if (!lay) return 0;
  let marked = 0;
  let end = k;
  do {
    if ((lay.what[end] ?? 0) >= 0 && !state.gone[end]) {
      state.gone[end] = 1;
      marked += 1;
    }
    end += 1;
  } while (end < lay.n && (lay.up[end] ?? 0) >= k);
  return marked;
}

/**
 * Marks the rest of each group of which a piece is marked: half the time, so that a group may move to another sheet.
 */
function markGroups(state: State, place: number): void {
  const lay = state.lays[place];
  if (!lay || state.stock.groups.length === 0) return;
  for (let k = 0; k < lay.n; k += 1) {
    const group = state.gone[k] ? (state.stock.group[(lay.what[k] ?? 0) >> 1] ?? -1) : -1;
    if (group < 0 || state.dice.part() < 0.5) continue;
    for (let j = 0; j < lay.n; j += 1) {
      const what = lay.what[j] ?? 0;
      if (what >= 0 && state.stock.group[what >> 1] === group) state.gone[j] = 1;
    }
  }
}

function pickSheet(state: State): number {
  const { lays, dice } = state;
  for (let tries = 0; tries < 50; tries += 1) {
    const place = dice.next(lays.length);
    if ((lays[place]?.kind ?? -1) >= 0) return place;
  }
  return lays.findIndex((lay) => lay.kind >= 0);
}

/** Takes some branches off a few sheets, and now and then a whole sheet. */
export function ruin(state: State): void {
  const { dice } = state;
  const sheets = 1 + dice.next(mostSheets);
  let quota = 1 + dice.next(mostPieces);
  for (let s = 0; s < sheets && quota > 0; s += 1) {
    const place = pickSheet(state);
    const lay = state.lays[place];
    if (!lay) return;
    widenMarks(state, lay.n);
    const share = s === sheets - 1 ? quota : 1 + dice.next(quota);
    let taken = 0;
    for (let tries = 0; tries < share && taken < share; tries += 1) {
      taken += markBranch(state, place, dice.next(lay.n));
    }
    quota -= taken;
    markGroups(state, place);
    takeOff(state, place);
  }
}
