import { better, type Cost, type Field, keyOf, open, type State, start } from './state';

/** States still to be opened, over all searches of one question. */
export type Purse = { left: number };

/** What is known beforehand: no order costs less than `floor`; one that costs `beat` is in hand. */
type Known = { readonly floor: Cost; readonly beat: Cost };

/** `least`: no order of the field costs less. `best`: an order better than the one in hand. */
type Found = { readonly best: State | undefined; readonly proved: boolean; readonly least: Cost };

type Entry = { readonly state: State; readonly hope: Cost; readonly serial: number };

/** Raises a hope to the floor: states that hope for less than any order costs are as good as each other. */
const raised = ({ hope }: State, floor: Cost): Cost => ({
  builds: Math.max(hope.builds, floor.builds),
  runs: Math.max(hope.runs, floor.runs),
});

/** Best hope first; then the most done; then the one found first, which is the nearest to the order given. */
function comesFirst(a: Entry, b: Entry): boolean {
  if (better(a.hope, b.hope)) return true;
  if (better(b.hope, a.hope)) return false;
  return a.state.left < b.state.left || (a.state.left === b.state.left && a.serial < b.serial);
}

function push(heap: Entry[], entry: Entry): void {
  let k = heap.push(entry) - 1;
  while (k > 0) {
    const up = (k - 1) >> 1;
    const above = heap[up];
    if (!above || !comesFirst(entry, above)) break;
    heap[k] = above;
    k = up;
  }
  heap[k] = entry;
}

function pop(heap: Entry[]): Entry | undefined {
  const top = heap[0];
  const last = heap.pop();
  if (!last || heap.length === 0) return top;
  let k = 0;
  for (;;) {
    const left = heap[2 * k + 1];
    const right = heap[2 * k + 2];
    const down = left && right && comesFirst(right, left) ? 2 * k + 2 : 2 * k + 1;
    const child = heap[down];
    if (!child || !comesFirst(child, last)) break;
    heap[k] = child;
    k = down;
  }
  heap[k] = last;
  return top;
}

/** Keeps the cheapest way to each state; true when this is it. */
function isNews(seen: Map<string, Cost>, state: State): boolean {
  const key = keyOf(state);
  const known = seen.get(key);
  if (known && !better(state.spent, known)) return false;
  seen.set(key, state.spent);
  return true;
}

/**
 * Best first: the first finished order taken up is as good as any. Ends without proof when the purse is empty.
 *
 * @example search(field, { floor, beat }, { left: 1000 })
 */
export function search(field: Field, { floor, beat }: Known, purse: Purse): Found {
  const heap: Entry[] = [];
  const seen = new Map<string, Cost>();
  let serial = 0;
  const add = (state: State) => {
    const hope = raised(state, floor);
    if (!better(hope, beat) || !isNews(seen, state)) return;
    push(heap, { state, hope, serial });
    serial += 1;
  };
  add(start(field));
  for (;;) {
    const next = pop(heap);
    if (!next) return { best: undefined, proved: true, least: beat };
    if (next.state.left === 0) return { best: next.state, proved: true, least: next.hope };
    if (purse.left <= 0) return { best: undefined, proved: false, least: next.hope };
    purse.left -= 1;
    for (const state of open(field, next.state)) add(state);
  }
}

/** Setups of the standing build tried from each state of a row. */
const mostTried = 8;

/**
 * A row of states, all opened at once, the best few of what follows kept: no proof, but always an order. A row of
 * one takes the best-looking step each time.
 *
 * @param wide how many are kept, 1 or more
 * @returns the best order found that beats the one in hand
 * @example sweep(field, { floor, beat }, 1)
 */
export function sweep(field: Field, { floor, beat }: Known, { wide, purse }: { wide: number; purse: Purse }) {
  const seen = new Map<string, Cost>();
  let row: Entry[] = [{ state: start(field), hope: floor, serial: 0 }];
  let best: State | undefined;
  let cost = beat;
  while (row.length > 0) {
    const next: Entry[] = [];
    for (const { state } of row) {
      purse.left -= 1;
      for (const child of open(field, state, mostTried)) {
        const hope = raised(child, floor);
        if (!better(hope, cost) || !isNews(seen, child)) continue;
        if (child.left > 0) next.push({ state: child, hope, serial: next.length });
        else {
          best = child;
          cost = child.spent;
        }
      }
    }
    row = next.sort((a, b) => (comesFirst(a, b) ? -1 : 1)).slice(0, wide);
  }
  return best;
}
