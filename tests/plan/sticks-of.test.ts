import { describe, expect, test } from 'vitest';
import { jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { add, equals, subtract } from '../../src/length/length';
import { planOf } from '../../src/plan/plan';
import { type Stick, sticksOf } from '../../src/plan/sticks-of';
import { w } from '../length/write-figures';
import { jobId, sampleLog } from './laid-sample';

const plan = planOf(jobOf(jobId, fold(sampleLog).values), {});
const sticks = sticksOf(plan);
const stick = (of: string, which: string): Stick => {
  const found = sticks.find((one) => one.of === of && one.which === which);
  if (!found) throw new Error(`${of} ${which}`);
  return found;
};
const places = ({ spans }: Stick) => spans.map(({ from, to }) => `${w(from)}–${w(to)}`);

/** The figures of the cabinet are worked out by hand in demo-data/README.md. */
describe('sticksOf', () => {
  test('the cabinet across: side, partition and side, 38 3/8 in all', () => {
    const across = stick('case', 'width');
    expect(w(across.to)).toBe('38 3/8');
    expect(across.spans.map((span) => span.is === 'part' && span.name.role)).toEqual([
      'left',
      'partition',
      'right',
    ]);
    const [left, , right] = across.spans;
    expect([w(left?.from ?? across.to), w(right?.to ?? across.from)]).toEqual(['0', '38 3/8']);
  });

  test('upward: what stands in the case, from its lower end, never one in the other', () => {
    const upward = sticks.filter(({ which }) => which.startsWith('height'));
    expect(upward.length).toBeGreaterThan(0);
    for (const { spans, to } of upward) {
      expect(spans.every((span, k) => k === 0 || !span.from.lt(spans[k - 1]?.to ?? to))).toBe(true);
      expect(spans.at(-1)?.is === 'part' && spans.at(-1)?.to.lte(to)).toBe(true);
    }
  });

  test('a face of a board has the marks of Marks, each groove as wide as it is', () => {
    const left = plan.parts.find(({ id }) => id === 'case~left')?.board;
    const own = stick('case~left', 'A');
    expect(own.spans.length).toBe(31);
    const widths = new Set(own.spans.map(({ from, to }) => w(subtract(to, from))));
    expect(widths.size).toBeLessThanOrEqual(3);
    expect(left && equals(own.to, left.length ?? own.from)).toBe(true);
  });

  test('two faces of a partition are two sticks', () => {
    expect(sticks.filter(({ of }) => of === 'case~partition1').map(({ which }) => which)).toEqual(['A', 'B']);
  });

  test('the fronts fill their opening with the gaps between them', () => {
    const fronts = stick('drawers', 'fronts');
    expect(fronts.spans.length).toBe(5);
    const gaps = fronts.spans
      .slice(1)
      .map((span, k) => subtract(span.from, fronts.spans[k]?.to ?? span.from));
    expect(new Set(gaps.map((gap) => w(gap))).size).toBe(1);
    expect(places(fronts).length).toBe(5);
    expect(equals(add(fronts.from, fronts.long.value), fronts.to)).toBe(true);
  });
});
