import { describe, expect, test } from 'vitest';
import { add, half, inches, subtract, times } from '../../src/length/length';
import { layOut } from '../../src/trade/grooves/lay-out';
import { board, l, run, w } from '../trade/grooves/sample';

// Source: Edwin W. Foster, Carpentry and Woodwork (bitlit.ru/page/en/edwin-w-foster/carpentry-and-woodwork/120): shelves,
// top and bottom 24-5/8 x 12 x 1/2 (4), ends 14 x 12 x 1/2 (2), back 25-1/8 x 14 x 1/4, all shelves let into the ends.
// The page prints its fractions run together (245/8). The depth of the dadoes is not printed: it is worked from the back,
// which covers the outside of the ends.
describe("Foster's cabinet", () => {
  const [shelf, end, back] = [l('24 5/8'), l('1/2'), l('25 1/8')];

  test('a back over the ends leaves dadoes 1/4 deep, half the thickness, and 24 1/8 clear', () => {
    const depth = subtract(end, half(subtract(back, shelf)));
    expect(w(depth)).toBe('1/4');
    expect(w(subtract(shelf, times(depth, 2n)))).toBe('24 1/8');
    expect(w(add(subtract(shelf, times(depth, 2n)), times(end, 2n)))).toBe('25 1/8');
  });

  test('its ends lay out with those dadoes: as deep as half, so neither too deep nor thin behind', () => {
    // The spacing is ours: two shelves over the 13 between a top and a bottom 1/2 thick.
    const shelves = run({
      spacing: 'openings',
      count: 2,
      width: inches(1n, 2n),
      depth: inches(1n, 4n),
      first: l('1/2'),
      span: l('13'),
    });
    const layout = layOut(board({ length: l('14'), thickness: end, runs: [shelves] }));
    expect([layout.problems, layout.warnings]).toEqual([[], []]);
    expect(w(layout.facts[0]?.opening)).toBe('4');
    expect(layout.endForEndSafe).toBe(true);
  });
});
