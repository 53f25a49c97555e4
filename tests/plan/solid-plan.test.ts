import { describe, expect, test } from 'vitest';
import { editCase, editJob, editSolid, editStock } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { type Length, type Ratio, ratio } from '../../src/length/length';
import { toWhole } from '../../src/length/round';
import { solidParts, yearOf } from '../../src/plan/solid-plan';
import { l, w } from '../length/write-figures';
import { caseDecided } from './carried-cabinet-case';
import { worked } from './job-of';

function parts(...more: readonly (readonly Change[])[]) {
  const { plan, job } = worked([...caseDecided, ...more.flat()]);
  const [c] = job.cases;
  return c ? solidParts(plan, c) : [];
}
const thousandths = (x: Length): bigint => toWhole(x.mul(1000n) as unknown as Ratio, 'halfExpand');
const year = (patch: Parameters<typeof editJob>[0]) => yearOf(worked(editJob(patch)).job);

describe('the year', () => {
  test('a meter goes before the air, the air before a heated room', () => {
    // 33 %: 6.2 + 3/5 × .7 = 6.62; 62 %: 11.0 + 2/5 = 11.4
    const air = { airLow: ratio(33n), airHigh: ratio(62n) };
    const by = ({ low, high, lowFrom, highFrom }: ReturnType<typeof yearOf>) => [
      low.valueOf(),
      lowFrom,
      high.valueOf(),
      highFrom,
    ];
    expect(by(year({}))).toEqual([6, 'usual', 12, 'usual']);
    expect(by(year(air))).toEqual([6.62, 'air', 11.4, 'air']);
    expect(by(year({ ...air, woodLow: ratio(7n) }))).toEqual([7, 'meter', 11.4, 'air']);
  });

  test.each([
    ['now is asked for', {}, { code: 'now-missing' }],
    ['drier than its driest', { woodNow: ratio(5n) }, { code: 'below-low', by: ratio(1n) }],
    ['damper than its dampest', { woodNow: ratio(13n) }, { code: 'above-high', by: ratio(1n) }],
    [
      'air too dry for the table',
      { woodNow: ratio(7n), airLow: ratio(19n) },
      { code: 'too-dry', by: ratio(1n), limit: ratio(20n) },
    ],
    [
      'air too damp for it',
      { woodNow: ratio(7n), airHigh: ratio(97n) },
      { code: 'too-damp', by: ratio(2n), limit: ratio(95n) },
    ],
  ])('%s', (_, patch, error) => {
    expect(year(patch).season).toEqual({ ok: false, error });
  });

  test('just at the ends of the year it is reckoned', () => {
    expect([year({ woodNow: ratio(6n) }).season.ok, year({ woodNow: ratio(12n) }).season.ok]).toEqual([
      true,
      true,
    ]);
  });
});

describe('parts of solid wood', () => {
  const now = editJob({ woodNow: ratio(8n) });
  const oak = editStock('oak', { species: 'red-oak' });

  test('are those of sticks, or of a sheet said to be solid; without a species they are asked for it', () => {
    const found = parts(now);
    expect(found.map(({ part }) => part.name.role)).toEqual([
      'inside',
      'stile',
      'railtop',
      'railbottom',
      'middle',
    ]);
    expect(found.every(({ coefficient, shrinks }) => !coefficient && !shrinks)).toBe(true);
    expect(parts(editStock('oak', { stuff: 'pressed' }))).toEqual([]);
  });

  test('a stile of red oak moves across its width', () => {
    // 1 11/16 × .00369 × 2 = .0125, × 4 = .0249; quartersawn .00158: .0053
    const stile = (...more: readonly (readonly Change[])[]) =>
      parts(now, oak, ...more).find(({ part }) => part.name.role === 'stile');
    const [own, quarter] = [stile(), stile(editStock('oak', { quartersawn: true }))];
    if (!own?.shrinks?.ok || !own.grows?.ok || !quarter?.shrinks?.ok) throw new Error('moves');
    expect([own.shrinks, own.grows, quarter.shrinks].map((x) => thousandths(x.value.change))).toEqual([
      -12n,
      25n,
      -5n,
    ]);
  });

  test('a loose top is slotted where a screw is said to stand, and told what it would take fixed', () => {
    // maple .00353, now 7: 15 3/4 × .00353 × 5 = .278 out, .056 in; with .164 and 1/16: .560, up to 9/16
    const top = (...more: readonly (readonly Change[])[]) =>
      parts(
        editJob({ woodNow: ratio(7n) }),
        editStock('oak', { species: 'hard-maple' }),
        editCase('case', { hasLooseTop: true, looseStock: 'oak' }),
        ...more,
      ).find(({ part }) => part.name.role === 'loose');
    expect(top()?.slot).toBeUndefined();
    const { slot, cross } = top(editSolid('case~loose', { reach: l('15 3/4') })) ?? {};
    expect(slot?.ok && w(slot.value.long.value)).toBe('9/16');
    expect(cross?.ok && cross.value.over !== undefined).toBe(true);
    expect(top(editSolid('case~loose', { reach: l('0') }))?.slot).toMatchObject({ ok: false });
  });
});
