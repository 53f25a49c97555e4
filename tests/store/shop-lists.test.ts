import { describe, expect, test } from 'vitest';
import { readLists, usualLists, writeLists } from '../../src/store/shop-lists';
import { l } from '../trade/grooves/sample';
import { testSet } from '../trade/stacks/test-set';

describe('readLists', () => {
  test('a phone that was told nothing has no set and no shims, only screws', () => {
    const { stack, shims, screws } = readLists(undefined);
    expect([stack, shims]).toEqual([{ pieces: [] }, []]);
    expect(screws.length).toBeGreaterThan(0);
  });

  test('what was written reads back, also when the outers are not said yet', () => {
    const full = {
      stack: { ...testSet, correction: l('-.002') },
      shims: testSet.pieces.slice(2),
      screws: [l('1 1/4')],
    };
    expect(readLists(writeLists(full))).toEqual(full);
    const begun = { ...usualLists, stack: { pieces: testSet.pieces.slice(0, 1) } };
    expect(readLists(writeLists(begun))).toEqual(begun);
  });

  test('a list kept before outers could be missing stands as it was', () => {
    const kept = {
      stack: { outer: '1/8', pieces: [{ size: '1/8', count: 4, kind: 'chipper' }], arbor: '13/16' },
      shims: [{ size: '1/4', count: 2, kind: 'shim' }],
      screws: ['5/4'],
    };
    expect(writeLists(readLists(kept))).toEqual(kept);
  });

  test('what does not read is left out, and nothing stands in for it', () => {
    const kept = { stack: { outer: 'wide', pieces: [{ size: '1/8', count: 400, kind: 'chipper' }, 7] } };
    expect(readLists(kept).stack).toEqual({ pieces: [] });
  });
});
