import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, equals, inches, isPositive, less, subtract } from '../../../src/length/length';
import { type Hole, jigCheck, type PullPlan, pullHoles } from '../../../src/trade/boxes/pulls';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

const knob: PullPlan = { width: l('16 15/16'), height: l('6'), pulls: 1 };
const pull: PullPlan = { ...knob, centres: l('3 3/4') };
const holes = (plan: PullPlan): readonly Hole[] => {
  const made = pullHoles(plan);
  if (!made.ok) throw new Error(made.error.code);
  return made.value;
};
const xs = (plan: PullPlan) => holes(plan).map((h) => w(h.x));
const ys = (plan: PullPlan) => holes(plan).map((h) => w(h.y));
const refused = (plan: PullPlan) => {
  const made = pullHoles(plan);
  return made.ok ? undefined : [made.error.code, w(made.error.by)];
};

describe('pullHoles', () => {
  test('EX 7d: 3 3/4 between centres on 16 15/16: 6 19/32 and 10 11/32', () => {
    expect(xs(pull)).toEqual(['6 19/32', '10 11/32']);
  });

  test('screws less than nothing apart are refused; a knob has none', () => {
    expect(refused({ ...pull, centres: l('-1/64') })).toEqual(['centres-negative', '1/64']);
    expect(xs({ ...pull, centres: l('0') })).toEqual(['8 15/32']);
  });

  test('holes stand half way down when not said, else as fixed for the whole bank', () => {
    expect(ys(pull)).toEqual(['3', '3']);
    expect(ys({ ...pull, fromTop: l('2 1/8') })).toEqual(['2 1/8', '2 1/8']);
  });

  test('a knob has one hole, in the middle', () => {
    expect(xs(knob)).toEqual(['8 15/32']);
    expect(xs({ ...knob, centres: l('0') })).toEqual(['8 15/32']);
  });

  test('two pulls stand a quarter of the width in when not said', () => {
    expect(xs({ ...knob, width: l('16'), pulls: 2 })).toEqual(['4', '12']);
    expect(xs({ ...pull, width: l('16'), pulls: 2 })).toEqual(['2 1/8', '5 7/8', '10 1/8', '13 7/8']);
  });

  test('two pulls stand as far in as said; one pull stays in the middle', () => {
    expect(xs({ ...pull, width: l('16'), pulls: 2, fromEnd: l('3') })).toEqual([
      '1 1/8',
      '4 7/8',
      '11 1/8',
      '14 7/8',
    ]);
    expect(xs({ ...pull, fromEnd: l('3') })).toEqual(['6 19/32', '10 11/32']);
  });

  test.each([
    ['wider than the front', { ...pull, centres: l('17') }, '1/32'],
    ['as wide as the front', { ...pull, centres: l('16 15/16') }, '0'],
    ['two that want more than the front', { ...pull, width: l('7'), pulls: 2 }, '1/8'],
    ['two that want all of it', { ...pull, width: l('7 1/2'), pulls: 2 }, '0'],
  ] as const)('centres too wide, %s, are refused by what lies past each end', (_, plan, by) => {
    expect(refused(plan)).toEqual(['centres-too-wide', by]);
  });

  test('centres a little under the front are taken', () => {
    expect(xs({ ...pull, centres: l('16 7/8') })).toEqual(['1/32', '16 29/32']);
    expect(refused({ ...pull, width: l('7 9/16'), pulls: 2 })).toBeUndefined();
  });

  test.each([
    ['below', { ...pull, fromTop: l('6 1/8') }, '1/8'],
    ['on the lower edge', { ...pull, fromTop: l('6') }, '0'],
    ['on the top edge', { ...pull, fromTop: l('0') }, '0'],
    ['above', { ...pull, fromTop: l('-1/4') }, '1/4'],
    ['past the ends', { ...pull, pulls: 2, fromEnd: l('1 3/4') }, '1/8'],
    ['a knob on the ends', { ...knob, pulls: 2, fromEnd: l('0') }, '0'],
    ['from an end farther than the other', { ...knob, pulls: 2, fromEnd: l('17') }, '1/16'],
  ] as const)('a hole off the front is refused: %s', (_, plan, by) => {
    expect(refused(plan)).toEqual(['off-the-front', by]);
  });

  test.each([
    ['run into each other', { ...pull, fromEnd: l('7') }, '13/16'],
    ['share a hole', { ...pull, width: l('16'), fromEnd: l('6 1/8') }, '0'],
    ['are knobs at one place', { ...knob, width: l('16'), fromEnd: l('8') }, '0'],
    ['have crossed', { ...knob, width: l('16'), fromEnd: l('9') }, '2'],
  ] as const)('two pulls that %s are refused', (_, plan, by) => {
    expect(refused({ ...plan, pulls: 2 })).toEqual(['pulls-meet', by]);
  });

  test('two pulls a 64th apart are taken', () => {
    expect(refused({ ...pull, width: l('16 1/64'), pulls: 2, fromEnd: l('6 1/8') })).toBeUndefined();
  });

  const plans = fc.record({
    width: fc.bigInt({ min: 200n, max: 2000n }).map((n) => inches(n, 64n)),
    height: fc.bigInt({ min: 100n, max: 640n }).map((n) => inches(n, 64n)),
    pulls: fc.constantFrom(1 as const, 2 as const),
    centres: fc.bigInt({ min: 0n, max: 400n }).map((n) => inches(n, 64n)),
  });

  test('holes lie on the front from left to right, alike from both ends, each pull its centres apart', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const made = pullHoles(plan);
        fc.pre(made.ok);
        const found = holes(plan).map((h) => h.x);
        const mirrored = [...found].reverse().map((x) => subtract(plan.width, x));
        expect(found.map(w)).toEqual(mirrored.map(w));
        const edges = [l('0'), ...found, plan.width];
        edges.slice(1).forEach((x, k) => {
          expect(less(edges[k] ?? x, x)).toBe(true);
        });
        if (!isPositive(plan.centres)) return;
        expect(found).toHaveLength(2 * plan.pulls);
        for (let k = 0; k < found.length; k += 2)
          expect(w(subtract(found[k + 1] ?? l('0'), found[k] ?? l('0')))).toBe(w(plan.centres));
      }),
      { numRuns: runs(200) },
    );
  });

  test('where pulls stand of themselves they are refused just when their centres want the whole width', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const want = plan.pulls === 2 ? add(plan.centres, plan.centres) : plan.centres;
        expect(pullHoles(plan).ok).toBe(less(want, plan.width));
      }),
      { numRuns: runs(200) },
    );
  });
});

describe('jigCheck', () => {
  test('EX 7d: the holes of 6 19/32 on 16 15/16 come 3 3/4 apart', () => {
    expect(w(jigCheck(l('16 15/16'), l('6 19/32')))).toBe('3 3/4');
  });

  test('what the jig is off shows doubled', () => {
    expect(w(jigCheck(l('16 15/16'), l('6 5/8')))).toBe('3 11/16');
  });

  test('a jig that reaches past the middle is negative', () => {
    expect(w(jigCheck(l('10'), l('6')))).toBe('-2');
  });

  test('the check is what lies between the outer holes', () => {
    const some = fc.bigInt({ min: 200n, max: 2000n }).map((n) => inches(n, 64n));
    fc.assert(
      fc.property(
        some,
        fc.constantFrom(knob, pull),
        fc.constantFrom(1 as const, 2 as const),
        (width, ...of) => {
          const made = pullHoles({ ...of[0], width, pulls: of[1] });
          fc.pre(made.ok);
          const found = holes({ ...of[0], width, pulls: of[1] });
          const [first] = found;
          const last = found[found.length - 1];
          if (!first || !last) throw new Error('no holes');
          expect(equals(jigCheck(width, first.x), subtract(last.x, first.x))).toBe(true);
        },
      ),
      { numRuns: runs(100) },
    );
  });
});
