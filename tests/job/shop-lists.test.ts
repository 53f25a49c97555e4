import { describe, expect, test } from 'vitest';
import { readLists, shelfChanges, usualLists, writeLists } from '../../src/job/shop-lists';
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

describe('what lies in the drawers, thing by thing', () => {
  const set = { stack: testSet, shims: testSet.pieces.slice(2), screws: [l('1'), l('1 1/4')] };
  const whole = writeLists(set);

  test('only what differs is kept, each by itself', () => {
    const more = { ...set, screws: [...set.screws, l('2')] };
    expect(shelfChanges(set, more)).toEqual({ 'shelf/screw/2': 1 });
    expect(readLists(whole, shelfChanges(set, more)).screws).toEqual(more.screws);
    expect(shelfChanges(set, set)).toEqual({});
  });

  test('two pages that each add a thing, neither seeing the other, add two', () => {
    const one = shelfChanges(set, { ...set, screws: [...set.screws, l('2')] });
    const other = shelfChanges(set, { ...set, screws: [...set.screws, l('3')] });
    expect(readLists(whole, { ...one, ...other }).screws).toEqual([l('1'), l('1 1/4'), l('2'), l('3')]);
  });

  test('whatever the lists come to, the changes over the old ones read as the new', () => {
    const none = { stack: { pieces: [] }, shims: [], screws: [] };
    for (const [before, after] of [
      [set, none],
      [usualLists, set],
      [set, { ...set, stack: { pieces: [], outer: l('3/32') } }],
    ] as const)
      expect(readLists(writeLists(before), shelfChanges(before, after))).toEqual(after);
  });

  test('a thing that does not read is left out', () => {
    expect(readLists(whole, { 'shelf/screw/x': 1, 'shelf/set/shim/1~8': 400 })).toEqual(set);
  });
});
