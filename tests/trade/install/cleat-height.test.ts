import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, atMost, inches, isPositive, less, subtract } from '../../../src/length/length';
import {
  type CleatPlan,
  clearMoves,
  clears,
  cleatHeight,
  cleatWrong,
} from '../../../src/trade/install/cleat-height';
import { l, w } from '../grooves/sample';

/** A case 64 1/4 high, its bottom 4 27/32 and the underside of its top 63 17/32 up: a cleat of 2 3/4 just under it. */
const plan: CleatPlan = {
  inCase: l('60 25/32'),
  lift: l('0'),
  back: { from: l('4 27/32'), to: l('63 17/32') },
  wide: l('2 3/4'),
  drop: l('35 7/8'),
};
const shown = (own: Partial<CleatPlan>) => {
  const found = cleatHeight({ ...plan, ...own });
  return found && [w(found.low), w(found.top), w(found.screws), w(found.fromLine), found.by];
};

describe('cleatHeight', () => {
  test('as the case has it, on the high point of the floor: Example 10 of install', () => {
    // 60 25/32 + 2 3/4 = 63 17/32; + 1 3/8 = 62 5/32; 60 25/32 - 35 7/8 = 24 29/32
    expect(shown({})).toEqual(['60 25/32', '63 17/32', '62 5/32', '24 29/32', 'case']);
  });

  test('feet that screw lift it, and what is said stands over the case', () => {
    expect(shown({ lift: l('1 1/4') })?.[0]).toBe('62 1/32');
    expect(shown({ said: l('30'), lift: l('1 1/4') })).toEqual(['30', '32 3/4', '31 3/8', '-5 7/8', 'said']);
  });

  test('nothing where nobody says it; of no width its screws go along its edge', () => {
    expect(cleatHeight({ lift: l('0'), wide: l('3') })).toBeUndefined();
    const bare = cleatHeight({ lift: l('0'), said: l('40') });
    expect([w(bare?.screws), bare?.top, bare?.fromLine]).toEqual(['40', undefined, undefined]);
  });
});

describe('cleatWrong', () => {
  const wrong = (low: string, own: Partial<CleatPlan> = {}) =>
    cleatWrong({ ...plan, inCase: undefined, ...own }, l(low));

  test('all of it stands behind the case: Example 10 of install', () => {
    // most 63 17/32 - 2 3/4 = 60 25/32
    expect([wrong('60 25/32'), wrong('4 27/32')]).toEqual([undefined, undefined]);
    const over = wrong('62');
    expect(over?.code === 'over' && [over.by, over.least, over.most].map((x) => w(x))).toEqual([
      ...['1 7/32', '4 27/32', '60 25/32'],
    ]);
    const under = wrong('4');
    expect(under?.code === 'under' && w(under.by)).toBe('27/32');
  });

  test('feet that screw move what fits', () => {
    expect(wrong('62', { lift: l('1 7/32') })).toBeUndefined();
    expect(wrong('5', { lift: l('1 7/32') })?.code).toBe('under');
  });

  test('wider than the back is high', () => {
    const found = wrong('5', { back: { from: l('4'), to: l('6') } });
    expect(found?.code === 'too-wide' && w(found.by)).toBe('3/4');
  });

  test('not where the case has it, by how much which way', () => {
    const found = wrong('60 3/4', { inCase: l('60 25/32') });
    expect(found?.code === 'differs' && [w(found.by), w(found.inCase)]).toEqual(['-1/32', '60 25/32']);
    expect(wrong('60 25/32', { inCase: l('60 25/32') })).toBeUndefined();
  });

  test('nothing while the case does not work out', () => {
    expect(cleatWrong({ lift: l('0') }, l('500'))).toBeUndefined();
  });
});

describe('clearMoves', () => {
  const at = cleatHeight({ ...plan, said: l('40') });
  if (!at) throw new Error('no height');
  const moves = (bands: readonly (readonly [string, string])[], own: Partial<CleatPlan> = {}) => {
    const found = clearMoves({ ...plan, ...own }, at, {
      bands: bands.map(([low, high]) => ({ low: l(low), high: l(high) })),
      keep: l('2'),
    });
    return [w(found.up), w(found.down)];
  };

  test('just so far off as wanted, both ways: Example 11 of install', () => {
    // the screws go at 40 + 1 3/8 = 41 3/8; up to 42 + 2 = 44 is 2 5/8, down to 41 - 2 = 39 is 2 3/8
    expect(moves([['41', '42']])).toEqual(['2 5/8', '2 3/8']);
    // a second one from 45 on bars 44: up to 46 + 2 = 48 is 6 5/8
    expect(
      moves([
        ['41', '42'],
        ['45', '46'],
      ]),
    ).toEqual(['6 5/8', '2 3/8']);
    expect(
      moves([
        ['45', '46'],
        ['41', '42'],
      ]),
    ).toEqual(['6 5/8', '2 3/8']);
  });

  test('not out of the case', () => {
    // up 2 5/8 the upper edge stands 45 3/8 up
    expect(moves([['41', '42']], { back: { from: l('4'), to: l('45 3/8') } })[0]).toBe('2 5/8');
    expect(moves([['41', '42']], { back: { from: l('4'), to: l('45 11/32') } })[0]).toBe('none');
    // down 2 3/8 the lower edge stands 37 5/8 up
    expect(moves([['41', '42']], { back: { from: l('37 21/32'), to: l('60') } })[1]).toBe('none');
    expect(moves([['1', '70']])).toEqual(['none', 'none']);
  });

  test('whatever the bands, a move clears all of them and a shorter one does not', () => {
    const figure = fc.integer({ min: 0, max: 640 }).map((n) => inches(BigInt(n), 8n));
    const band = fc
      .tuple(figure, figure)
      .map(([a, b]) => (less(a, b) ? { low: a, high: b } : { low: b, high: a }));
    fc.assert(
      fc.property(fc.array(band, { maxLength: 6 }), figure, (bands, keep) => {
        const found = clearMoves({ lift: l('0') }, at, { bands, keep });
        if (!found.up) return true;
        const to = add(at.screws, found.up);
        if (!bands.every((one) => clears(to, one, keep))) return false;
        const step = inches(1n, 16n);
        for (let less16 = step; atMost(less16, found.up); less16 = add(less16, step)) {
          const nearer = subtract(to, less16);
          if (bands.every((one) => clears(nearer, one, keep))) return !isPositive(found.up);
        }
        return true;
      }),
      { numRuns: 60 },
    );
  });
});
