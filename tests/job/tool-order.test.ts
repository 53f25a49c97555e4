import { describe, expect, test } from 'vitest';
import { readLists, shelfChanges, usualLists, writeLists } from '../../src/job/shop-lists';
import { orderIn, orderOf } from '../../src/job/tool-order';

describe('the order of the shop’s machines', () => {
  test('reads as it was kept, each name once, what is no tool left out', () => {
    expect(orderOf('sliding sled sliding chisel')).toEqual(['sliding', 'sled']);
    expect([orderOf(''), orderOf('chisel'), orderOf(7), orderOf(undefined)]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  test('is kept as one thing of the drawers, goes with a copy of everything, and can be taken back', () => {
    const said = { ...usualLists, order: ['circular', 'fence'] as const };
    const kept = shelfChanges(usualLists, said);
    expect(kept).toEqual({ 'shelf/tools': 'circular fence' });
    expect(readLists(undefined, kept).order).toEqual(said.order);
    expect(readLists(writeLists(said)).order).toEqual(said.order);
    const back = shelfChanges(said, usualLists);
    expect(readLists(writeLists(said), back).order).toBeUndefined();
    expect(orderIn({ lists: writeLists(said), ...back })).toBeUndefined();
  });

  test('by itself it goes over that of lists kept whole', () => {
    expect(orderIn({ lists: { order: 'sled fence' } })).toEqual(['sled', 'fence']);
    expect(orderIn({ lists: { order: 'sled fence' }, 'shelf/tools': 'fence' })).toEqual(['fence']);
    expect(orderIn({ lists: ['order'] })).toBeUndefined();
  });
});
