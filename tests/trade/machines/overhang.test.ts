import { describe, expect, test } from 'vitest';
import type { Need } from '../../../src/trade/machines/limits';
import { overhangOf } from '../../../src/trade/machines/overhang';
import { l } from '../../length/write-figures';

// what overhangs by more than half wants holding up: common practice, no source
describe('overhangOf', () => {
  const shop = { tableBehind: l('18'), tableBeside: l('34') };
  const rip = (length: string): Need => ({ cut: 'rip', width: l('10'), length: l(length) });

  test('a rip hangs over behind once it has gone by the blade: 64 − 18 = 46 of 64', () =>
    expect(overhangOf(rip('64'), { tool: 'fence' }, shop).hangs).toEqual({ over: 'behind', by: l('46') }));

  test('half of it over is held by the other half; a hair more is not', () => {
    expect(overhangOf(rip('36'), { tool: 'fence' }, shop).hangs).toBeUndefined();
    expect(overhangOf(rip('36 1/32'), { tool: 'fence' }, shop).hangs).toEqual({
      over: 'behind',
      by: l('18 1/32'),
    });
  });

  test('a crosscut hangs over beside, and so does a board with its end on the fence', () => {
    expect(overhangOf({ cut: 'crosscut', length: l('70') }, { tool: 'sled' }, shop).hangs).toEqual({
      over: 'beside',
      by: l('36'),
    });
    const groove = (near: string): Need => ({
      cut: 'groove',
      near: l(near),
      width: l('3/4'),
      length: l('80'),
    });
    // 80 − 4 = 76 past the blade, 76 − 34 = 42 over half of 80; from 8: 72 − 34 = 38
    expect(overhangOf(groove('4'), { tool: 'fence' }, shop).hangs).toEqual({ over: 'beside', by: l('42') });
    expect(overhangOf(groove('8'), { tool: 'fence' }, shop).hangs).toBeUndefined();
  });

  test('a table not measured is asked, with what would do; a tool that lies on the work has none', () => {
    expect(overhangOf(rip('64'), { tool: 'fence' }, {})).toEqual({
      asks: { field: 'tableBehind', wants: l('32') },
    });
    expect(overhangOf(rip('64'), { tool: 'circular' }, {})).toEqual({});
    expect(overhangOf({ cut: 'rip', width: l('10') }, { tool: 'fence' }, shop)).toEqual({});
  });
});
