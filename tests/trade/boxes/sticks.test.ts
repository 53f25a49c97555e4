import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, equals, inches, less, subtract, sum } from '../../../src/length/length';
import { nextCut, type StickPlan, setBack, sticksOf, stickWarnings } from '../../../src/trade/boxes/sticks';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

const plan: StickPlan = {
  bottoms: ['24 55/64', '19 23/32', '13 55/64', '7 5/16', '5/64'].map(l),
  sill: l('29/32'),
  boxUp: l('3/8'),
  centre: l('1 5/8'),
  slide: l('1 25/32'),
};
const sticks = (more: Partial<StickPlan> = {}) => {
  const made = sticksOf({ ...plan, ...more });
  if (!made.ok) throw new Error(made.error.code);
  return made.value;
};
const refused = (more: Partial<StickPlan>) => {
  const made = sticksOf({ ...plan, ...more });
  return made.ok ? undefined : [made.error.code, made.error.drawer, w(made.error.by)];
};
const stick = (length: string) => ({ drawer: 1, length: l(length), sum: { value: l(length), terms: [] } });
const some = fc.bigInt({ min: 1n, max: 2000n }).map((n) => inches(n, 64n));

describe('sticksOf', () => {
  test('Example 5 of boxes: sticks longest first', () => {
    const found = sticks();
    expect(found.map((s) => w(s.length))).toEqual(['26 7/8', '21 47/64', '15 7/8', '9 21/64', '2 3/32']);
    expect(found.map((s) => s.drawer)).toEqual([1, 2, 3, 4, 5]);
  });

  test('step 7 of the carried cabinet: sticks from the front bottoms as measured', () => {
    const found = sticks({ bottoms: ['24 53/64', '19 11/16', '13 55/64', '7 5/16', '5/64'].map(l) });
    expect(found.map((s) => w(s.length))).toEqual(['26 27/32', '21 45/64', '15 7/8', '9 21/64', '2 3/32']);
  });

  test('a stick says its sum, line by line', () => {
    expect(sticks()[4]?.sum.terms.map((t) => [t.what, w(t.value)])).toEqual([
      ['sill', '29/32'],
      ['front-lower-edge', '5/64'],
      ['box-up', '3/8'],
      ['slide-centre', '1 5/8'],
      ['half-slide', '-57/64'],
    ]);
  });

  test('bottoms listed out of order keep their drawers, longest first all the same', () => {
    const found = sticks({ bottoms: ['5/64', '13 55/64', '7 5/16'].map(l) });
    expect(found.map((s) => [s.drawer, w(s.length)])).toEqual([
      [2, '15 7/8'],
      [3, '9 21/64'],
      [1, '2 3/32'],
    ]);
  });

  test('a front that hangs under the opening still has its stick', () => {
    expect(sticks({ bottoms: [l('-1/4')] }).map((s) => w(s.length))).toEqual(['1 49/64']);
  });

  // Bottom -2 1/64 leaves nothing: 29/32 + 3/8 + 1 5/8 - 57/64 = 2 1/64.
  test.each([
    ['below', '-2 1/2', '31/64'],
    ['just below', '-2 1/32', '1/64'],
    ['on', '-2 1/64', '0'],
  ])('a slide %s the bottom of the case is refused, by how much', (_, bottom, by) => {
    expect(refused({ bottoms: [l('5/64'), l(bottom)] })).toEqual(['below-the-bottom', 2, by]);
  });

  test('a slide a 64th over the bottom of the case is not refused', () => {
    expect(sticks({ bottoms: [l('-2')] }).map((s) => w(s.length))).toEqual(['1/64']);
  });

  test('drawers from the top give sticks that strictly shorten, as their bottoms do', () => {
    const downward = fc
      .uniqueArray(fc.bigInt({ min: 1n, max: 2000n }), { minLength: 2, maxLength: 9 })
      .map((ns) => [...ns].sort((a, b) => (a < b ? 1 : -1)).map((n) => inches(n, 64n)));
    fc.assert(
      fc.property(downward, (bottoms) => {
        const found = sticks({ bottoms });
        expect(found.map((s) => s.drawer)).toEqual(bottoms.map((_, k) => k + 1));
        for (const [k, s] of found.entries()) {
          const next = found[k + 1];
          if (!next) continue;
          expect(less(next.length, s.length)).toBe(true);
          const fall = subtract(bottoms[k] ?? l('0'), bottoms[k + 1] ?? l('0'));
          expect(equals(subtract(s.length, next.length), fall)).toBe(true);
        }
      }),
      { numRuns: runs(200) },
    );
  });

  test('a stick is what its terms come to', () => {
    fc.assert(
      fc.property(some, some, (sill, boxUp) => {
        for (const s of sticks({ sill, boxUp }))
          expect(equals(s.length, sum(s.sum.terms.map((t) => t.value)))).toBe(true);
      }),
      { numRuns: runs(100) },
    );
  });
});

describe('stickWarnings', () => {
  test('step 7 of the carried cabinet: the last stick is too short to hold at a saw', () => {
    const said = stickWarnings(sticks());
    expect(said.map((x) => [x.code, x.drawer, w(x.length), w(x.least)])).toEqual([
      ['too-short', 5, '2 3/32', '3'],
    ]);
  });

  test('a stick of 3 is well, a 64th less is not', () => {
    expect(stickWarnings([stick('3')])).toEqual([]);
    expect(stickWarnings([stick('2 63/64')])).toHaveLength(1);
    expect(stickWarnings([stick('75 mm'), stick('74 mm')], 'mm').map(({ length }) => length)).toEqual([
      l('74 mm'),
    ]);
  });
});

describe('nextCut', () => {
  test('Example 5 of boxes: what comes off between sticks with a kerf of 3/32', () => {
    const found = sticks().map((s) => s.length);
    const offcuts = found.slice(0, -1).map((x, k) => nextCut(x, found[k + 1] ?? x, l('3/32')).offcut);
    expect(offcuts.map((x) => w(x))).toEqual(['5 3/64', '5 49/64', '6 29/64', '7 9/64']);
  });

  test('what comes off follows what the stick measures, not what was planned', () => {
    expect(w(nextCut(l('26 55/64'), l('21 47/64'), l('3/32')).offcut)).toBe('5 1/32');
  });

  test('a stick already shorter than the next says by how much', () => {
    expect(w(nextCut(l('9 1/4'), l('9 21/64'), l('3/32')).short)).toBe('5/64');
  });

  test('a stick within a kerf of the next is not short, and nothing falls', () => {
    for (const [measured, offcut] of [
      ['9 21/64', '-3/32'],
      ['9 23/64', '-1/16'],
      ['9 27/64', '0'],
    ] as const) {
      const cut = nextCut(l(measured), l('9 21/64'), l('3/32'));
      expect([w(cut.offcut), cut.short]).toEqual([offcut, undefined]);
    }
  });

  test('next, kerf and offcut make up what was measured; short is said just when it is shorter', () => {
    fc.assert(
      fc.property(some, some, some, (measured, next, kerf) => {
        const { offcut, short } = nextCut(measured, next, kerf);
        expect(equals(sum([next, kerf, offcut]), measured)).toBe(true);
        expect(short !== undefined).toBe(less(measured, next));
        if (short) expect(equals(add(measured, short), next)).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});

describe('setBack', () => {
  test('slides stand back by an inset front, and flush behind one that covers', () => {
    expect(w(setBack('inset', l('23/32')))).toBe('23/32');
    expect(w(setBack('overlay', l('23/32')))).toBe('0');
  });
});
