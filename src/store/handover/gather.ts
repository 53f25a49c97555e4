import { blockSize, type CodeFrame } from './frame';
import { mixOf, xorInto } from './mixes';

/** How far a bundle has come; `bundle` once it is whole. */
export type Gathered = {
  readonly have: number;
  readonly count: number;
  readonly bundle?: Uint8Array;
};

type Gathering = {
  /** Takes a code in, whatever the order, as often as it comes; says how far its bundle is. */
  readonly add: (frame: CodeFrame) => Gathered;
};

/** Sets kept side by side: one more than this pushes out the one seen longest ago. */
const mostSets = 4;

/**
 * Gathers codes into bundles. Codes of different bundles, or of one bundle cut otherwise, are kept apart, so turning
 * to another phone and back loses nothing.
 */
export function gathering(): Gathering {
  const sets = new Map<string, Rows>();
  return {
    add: (frame) => {
      const name = `${frame.bundle} ${frame.length} ${frame.count}`;
      const rows = sets.get(name) ?? new Map();
      sets.delete(name);
      sets.set(name, rows); // seen last, so it goes last
      if (sets.size > mostSets) sets.delete([...sets.keys()][0] ?? '');
      take(rows, frame);
      return stateOf(rows, frame);
    },
  };
}

/** By the first block a row has in it: which blocks, then their sum. No two rows begin with the same block. */
type Rows = Map<number, Uint8Array>;

/** Gauss's elimination, a row at a time: what a row shares with the rows before is taken off it. */
function take(rows: Rows, { number, count, block }: CodeFrame): void {
  const row = new Uint8Array(count + block.length);
  row.set(mixOf(number, count));
  row.set(block, count);
  for (let k = 0; k < count; k += 1) {
    if (!row[k]) continue;
    const other = rows.get(k);
    if (!other) {
      rows.set(k, row);
      return;
    }
    xorInto(row, other);
  }
}

function stateOf(rows: Rows, { count, length }: CodeFrame): Gathered {
  if (rows.size < count) return { have: rows.size, count };
  return { have: count, count, bundle: solved(rows, count, length) };
}

/** From the last block up, each row gives up the blocks already known. */
function solved(rows: Rows, count: number, length: number): Uint8Array {
  const size = blockSize(length, count);
  const whole = new Uint8Array(size * count);
  for (let k = count - 1; k >= 0; k -= 1) {
    const row = rows.get(k) ?? new Uint8Array(count + size);
    const block = row.slice(count);
    for (let other = k + 1; other < count; other += 1) {
      if (row[other]) xorInto(block, whole.subarray(other * size, (other + 1) * size));
    }
    whole.set(block, k * size);
  }
  return whole.slice(0, length);
}
