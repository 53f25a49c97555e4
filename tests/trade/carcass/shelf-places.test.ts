import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, inches, isPositive, subtract, zero } from '../../../src/length/length';
import type { Inside } from '../../../src/trade/carcass/case';
import { partsOf } from '../../../src/trade/carcass/parts';
import { withShelfPlaces } from '../../../src/trade/carcass/shelf-places';
import { sizesOf } from '../../../src/trade/carcass/sizes';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';
import { plainCase, sheet } from './sample-case';

const shelf = (id: string, at?: string): Inside => ({
  id,
  kind: 'fixed',
  bay: 1,
  ...(at ? { at: l(at) } : {}),
});

/** A case with 61 1/16 clear inside, of stuff so thick. */
function sized(inside: readonly Inside[], thick = '23/32') {
  const c = {
    ...plainCase,
    hold: 'openings' as const,
    partitions: 0,
    opening: l('42 3/16'),
    clear: l('61 1/16'),
    stocks: { side: 'a', back: 'k' },
    inside,
  };
  const found = sizesOf(c, [sheet('a', thick), sheet('k', '7/32')]);
  if (!found.ok) throw new Error('no sizes');
  return { c, sizes: found.value };
}

const places = (inside: readonly Inside[], thick?: string) =>
  withShelfPlaces(sized(inside, thick).sizes, '1/32').case.inside.map((i) => i.at && w(i.at));

describe('withShelfPlaces', () => {
  // (61 1/16 - 3 × 23/32) / 4 = 14 93/128: of 1885 thirty-seconds four times 471, and the one over goes to the lowest
  test('Example 13 of carcass: three of 23/32 in 61 1/16 stand at 14 3/4, 30 3/16 and 45 5/8', () => {
    expect(places([shelf('a'), shelf('b'), shelf('c')])).toEqual(['14 3/4', '30 3/16', '45 5/8']);
  });

  test('what is under a mark stays in the top opening: in 18 mm it is 14 23/32 and .0303', () => {
    const { sizes } = sized([shelf('a'), shelf('b'), shelf('c')], '90/127');
    const last = withShelfPlaces(sizes, '1/32').case.inside[2]?.at ?? zero;
    const top = subtract(sizes.clearHeight.value, add(last, l('90/127')));
    expect(w(top)).toBe('14 761/1016');
  });

  test('one that has its place keeps it, and the others stand evenly in the highest opening left', () => {
    // over the shelf at 10 are 61 1/16 - 10 23/32 = 50 11/32; less one of 23/32, halved: 24 13/16
    expect(places([shelf('a', '10'), shelf('b')])).toEqual(['10', '35 17/32']);
    expect(places([shelf('a'), shelf('b', '50')])).toEqual(['24 21/32', '50']);
  });

  test('all with a place stand where they are said, and with no room nothing is made up', () => {
    expect(places([shelf('a', '10'), shelf('b', '20')])).toEqual(['10', '20']);
    const many = Array.from({ length: 90 }, (_, k) => shelf(`s${k}`));
    expect(places(many).filter(Boolean)).toEqual([]);
    const { c } = sized(many);
    const found = partsOf(c, { stuff: [sheet('a', '23/32'), sheet('k', '7/32')], tape: '1/32' });
    expect(!found.ok && found.error[0]).toMatchObject({ code: 'missing-inside', in: 's0', field: 'at' });
  });

  test('openings and shelves add back to the clear height, no opening a mark off another', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), fc.bigInt({ min: 30n, max: 60n }), (n, thick) => {
        const stuff = `${thick}/64`;
        const inside = Array.from({ length: n }, (_, k) => shelf(`s${k}`));
        const { sizes } = sized(inside, stuff);
        const at = withShelfPlaces(sizes, '1/32').case.inside.map((i) => i.at ?? zero);
        const floors = [zero, ...at.map((x) => add(x, l(stuff)))];
        const opens = [...at, sizes.clearHeight.value].map((top, k) => subtract(top, floors[k] ?? zero));
        expect(opens.every(isPositive)).toBe(true);
        for (const a of opens)
          for (const b of opens) expect(subtract(a, b).compare(inches(1n, 16n))).toBeLessThan(0);
        // of two openings under the top one the lower is never the smaller
        const under = opens.slice(0, -1);
        expect(under.every((x, k) => k === 0 || x.compare(under[k - 1] ?? x) <= 0)).toBe(true);
      }),
      { numRuns: runs(50) },
    );
  });
});
