import fc from 'fast-check';
import { expect, test } from 'vitest';
import { editBoxJoint } from '../../src/job/box-joint';
import { editBank, editJob, editStock } from '../../src/job/edits';
import { add, half, inches, type Length, less, negate, subtract, times, zero } from '../../src/length/length';
import { grainOf, tapes } from '../../src/length/tape';
import type { Plan } from '../../src/plan/plan';
import type { Operation } from '../../src/trade/setups/operation';
import { l } from '../length/write-figures';
import { runs } from '../runs';
import { at, thousandths } from './assembled';
import { worked } from './job-of';

const sixtyFourths = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((n) => inches(BigInt(n), 64n));

const drawers = fc.record({
  tape: fc.constantFrom(...tapes),
  side: thousandths(440, 500),
  front: thousandths(700, 760),
  bottom: thousandths(180, 260),
  opening: at(14, 17),
  slide: at(10, 14),
  // 1/2 for a slide, more or less; nothing but the gaps where the front is dovetailed
  clearance: sixtyFourths(28, 36),
  gap: sixtyFourths(4, 8),
  cover: sixtyFourths(0, 32),
  fit: fc.constantFrom('inset', 'overlay' as const),
  boxUp: fc.option(sixtyFourths(0, 32), { nil: undefined }),
  rabbet: thousandths(340, 460),
  grooveUp: sixtyFourths(20, 32),
  captured: fc.boolean(),
  joint: fc.constantFrom(undefined, 'rabbeted', 'butted' as const),
});
type Drawers = typeof drawers extends fc.Arbitrary<infer T> ? T : never;

function planned(d: Drawers): Plan {
  const stock = (id: string, used: Length) => editStock(id, { name: id, used });
  // dovetailed, a front is as wide as its box: inset, with nothing but its gaps beside it
  const flush = d.joint === undefined;
  const fit = flush ? 'inset' : d.fit;
  return worked([
    ...editJob({ name: 'Drawers', tape: d.tape }),
    ...[...stock('s', d.side), ...stock('f', d.front), ...stock('o', d.bottom)],
    ...editBank('bank', {
      name: 'Drawers',
      width: d.opening,
      height: l('29 11/32'),
      depth: l('20'),
      count: 2,
      fit,
      between: d.gap,
      side: fit === 'inset' ? d.gap : d.cover,
      frontStock: 'f',
      sideStock: 's',
      boxBottomStock: 'o',
      slideLong: d.slide,
      clearance: flush ? d.gap : d.clearance,
      boxUp: d.boxUp,
      grooveUp: d.grooveUp,
      grooveFit: zero,
      ease: l('1/16'),
      bottomHow: d.captured ? 'captured' : 'slid-in',
    }),
    ...editBoxJoint('bank', { frontIs: 'box', boxJoint: d.joint, frontRabbet: d.rabbet }),
  ]).plan;
}

const honoured = (op: Operation): Length =>
  add(op.setup.figure?.value ?? zero, op.setup.figure?.rest ?? zero);

function piecesOf(plan: Plan, drawer: string) {
  const of = (role: string, cut: string, copy = '1') => {
    const op = plan.byId.get(`cut/bank~${drawer}${role}/${cut}/${copy}`);
    if (!op) throw new Error(`no ${cut} of ${role}`);
    return op;
  };
  return { of, size: (role: string, cut: 'len' | 'rip', copy = '1') => honoured(of(role, cut, copy)) };
}

type Pieces = ReturnType<typeof piecesOf>;

/** How far the outside of a side is from its end of the front, from what is cut in the front. */
function pastAt(d: Drawers, { of }: Pieces, end: 'left' | 'right'): Length {
  if (d.joint === 'rabbeted') return subtract(honoured(of('front', `rabbet~${end}`)), d.side);
  if (d.joint === undefined) return zero;
  // the same row of dowels off the end of the front, and off the outside of the side
  return subtract(honoured(of('front', 'dowels~front')), honoured(of('side', 'dowels~front', 'left')));
}

/** What is left of the front over the ends of the sides. */
function lapOf(d: Drawers, { of }: Pieces): Length {
  if (d.joint === 'rabbeted') return subtract(d.front, of('front', 'rabbet~left').setup.height ?? zero);
  return d.joint === undefined ? subtract(d.front, of('front', 'pins').setup.height ?? zero) : d.front;
}

test('cut as printed, a front that is that of its box covers its slides, its joint shut and its box in the middle', () => {
  let fronts = 0;
  const seen = new Set<string>();
  fc.assert(
    fc.property(drawers, (d) => {
      const plan = planned(d);
      const made = plan.banks.get('bank')?.drawers;
      if (!made?.ok) return;
      const grain = grainOf(d.tape);
      const bound = half(grain);
      for (const { column, no } of made.value.drawers) {
        const pieces = piecesOf(plan, `c${column}d${no}`);
        const { of, size } = pieces;
        // rounded down to enter, it is cut to its mark: all that stands on it stands on that
        const wide = of('front', 'len').setup.figure?.value ?? zero;
        const [left, right] = (['left', 'right'] as const).map((end) => pastAt(d, pieces, end));
        const outside = subtract(subtract(wide, left ?? zero), right ?? zero);
        const off = new Map<string, Length>();
        // sides stand so far apart that the back fills its dadoes, or stands between
        const dado = d.joint === 'butted' ? zero : (of('side', 'along~back', 'left').setup.height ?? zero);
        const inside = subtract(outside, times(d.side, 2n));
        off.set('back', subtract(size('boxback', 'len'), add(inside, times(dado, 2n))));
        // each slide has its room, and not a mark more
        const room = d.joint === undefined ? d.gap : d.clearance;
        const spare = subtract(d.opening, add(outside, times(room, 2n)));
        expect([less(negate(bound), spare), less(spare, add(grain, bound))]).toEqual([true, true]);
        off.set('in the middle', subtract(left ?? zero, right ?? zero));
        // the side is as long as its slide, and meets the front
        off.set('side', subtract(size('side', 'len', 'left'), d.slide));
        const deep = add(size('side', 'len', 'left'), lapOf(d, pieces));
        off.set('deep', subtract(deep, made.value.drawers[0]?.plan.depth ?? zero));
        // the grooves of front and side make one, however far the box stands over the lower edge
        const up = d.boxUp ?? made.value.slides.boxUp;
        const [own, beside] = [of('front', 'along~bottom'), of('side', 'along~bottom', 'left')].map(honoured);
        off.set('level', subtract(subtract(own ?? zero, beside ?? zero), up));
        // the box is nowhere over its front
        const over = subtract(size('front', 'rip'), add(up, size('side', 'rip', 'left')));
        expect(less(over, negate(bound))).toBe(false);
        // its bottom ends at the floor of the front's groove
        expect(plan.byId.has(`cut/bank~c${column}d${no}boxfront/len/1`)).toBe(false);
        const bad = [...off].filter(([, by]) => by.abs().compare(bound) > 0);
        expect(bad.map(([what, by]) => `${what}: ${by.toFraction(true)}`)).toEqual([]);
        fronts += 1;
        seen.add(`${d.joint} ${d.joint ? d.fit : 'inset'}`);
      }
    }),
    { numRuns: runs(60) },
  );
  expect(fronts).toBeGreaterThan(9);
  expect(seen.size).toBeGreaterThan(2);
});
