import { describe, expect, test } from 'vitest';
import { slideLines } from '../../../src/trade/buying/slides';
import { l, w } from '../grooves/sample';
import { n } from './sample';

describe('slideLines', () => {
  test('one pair a drawer, a line for each length, longest trouble said', () => {
    const lines = slideLines([
      { name: 'Left', drawers: 5, long: l('16') },
      { name: 'Right', drawers: 3, long: l('16'), tooLong: l('1/4') },
      { name: 'Low', drawers: 1, long: l('17 11/16'), tooLong: l('1/8') },
    ]);
    expect(lines.map((x) => [x.id, n(x.amount), x.unit])).toEqual([
      ['slides/16', '8', 'pair'],
      ['slides/283~16', '1', 'pair'],
    ]);
    expect(lines.map((x) => x.why.code === 'slides' && w(x.why.tooLong))).toEqual(['1/4', '1/8']);
  });

  test('no drawers, no slides', () => {
    expect(slideLines([{ name: 'Left', drawers: 0, long: l('16') }])).toEqual([]);
  });
});
