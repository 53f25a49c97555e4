import { expect, test } from 'vitest';
import { addPiece, type Blocks, join, noBlocks, type Sort } from '../../../../src/trade/sheets/two-d/blocks';
import { cover } from '../../../../src/trade/sheets/two-d/cover';
import { alongX } from '../../../../src/trade/sheets/two-d/packing';

const sorts: readonly Sort[] = [2, 3, 4].map((w, k) => ({ w, h: 1, turn: false, pieces: [k, k] }));

/** Blocks of the three sorts, two there are of each, by how many are in them: [1, 1, 0] is the first and the second. */
function blocksOf(...choices: readonly (readonly number[])[]) {
  const blocks = noBlocks(sorts, 50);
  const alone = sorts.map((sort, k) => addPiece(blocks, k, sort, false));
  const made = choices.map((counts) => {
    const [first = 0, ...others] = counts.flatMap((n, k) => Array.from({ length: n }, () => alone[k] ?? 0));
    return others.reduce((a, b) => join(blocks, { a, b, along: alongX }) ?? 0, first);
  });
  return { blocks, made };
}

function chosen(blocks: Blocks, made: readonly number[], sheets: number, until = 1e9) {
  const looking = cover(blocks, made, { sheets, work: { work: 0, until } });
  let step = looking.next();
  while (!step.done) step = looking.next();
  return step.value?.map((block) => made.indexOf(block)).sort();
}

test('so many blocks that every piece is on one, and on no more than one', () => {
  const { blocks, made } = blocksOf([1, 1, 1], [2, 0, 0], [0, 2, 1], [0, 2, 2], [2, 0, 1]);
  expect(chosen(blocks, made.slice(1, 4), 2)).toEqual([0, 2]);
  expect(chosen(blocks, made.slice(0, 3), 2)).toEqual([0, 0]); // the same block twice
  expect(chosen(blocks, made.slice(1, 3), 2)).toBeUndefined(); // one of the last is left
  expect(chosen(blocks, [made[2] ?? 0, made[4] ?? 0], 2)).toEqual([0, 1]);
});

test('none of no blocks, one of one', () => {
  const { blocks, made } = blocksOf([2, 2, 2]);
  expect(chosen(blocks, [], 2)).toBeUndefined();
  expect(chosen(blocks, made, 1)).toEqual([0]);
});

test('it ends where its work does', () => {
  const { blocks, made } = blocksOf([2, 0, 0], [0, 2, 2]);
  expect(chosen(blocks, made, 2, 0)).toBeUndefined();
});
