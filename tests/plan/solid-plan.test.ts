import { describe, expect, test } from 'vitest';
import { editBank, editCase, editJob, editSolid, editStock } from '../../src/job/edits';
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
    const { slot, crossings } = top(editSolid('case~loose', { reach: l('15 3/4') })) ?? {};
    expect(slot?.ok && w(slot.value.long.value)).toBe('9/16');
    const fixed = crossings?.find(({ to }) => to === 'front-and-back')?.cross;
    expect(fixed?.ok && fixed.value.over !== undefined).toBe(true);
    expect(top(editSolid('case~loose', { reach: l('0') }))?.slot).toMatchObject({ ok: false });
  });

  const bank = editBank('bank', {
    of: 'case',
    bay: 2,
    count: 5,
    share: 'equal',
    frontStock: 'sheeta',
    sideStock: 'boxply',
    boxFrontStock: 'boxfront',
    boxBottomStock: 'trayply',
    slideLong: l('16'),
    slideHigh: l('1 25/32'),
    clearance: l('1/2'),
    boxUp: l('3/8'),
    lap: l('5/32'),
    backDado: l('7/32'),
    behind: l('7/16'),
    grooveDeep: l('3/16'),
    grooveUp: l('13/32'),
    bottomHow: 'captured',
  });
  const drawerBottom = (patch: Parameters<typeof editStock>[1], how: readonly Change[] = []) =>
    parts(now, bank, editStock('trayply', { stuff: 'hardwood', species: 'red-oak', ...patch }), how).find(
      ({ part }) => part.name.role === 'boxbottom',
    )?.bottom;

  test('the bottom of a drawer, caught in its grooves: cut to fill them at the dampest, and what stays at the driest', () => {
    // red oak .00369, 8 now, 6 to 12; inside 14 15/32 deep, grooves 3/16, 1/32 left at each: 14 25/32 may be filled
    // ÷ (1 + 4 × .00369) = 14.566: 14 9/16; at the driest × (1 − 2 × .00369) = 14.455
    // pushed over: 14.455 − 14 15/32 − 3/16 = −.201; pinned: (14.455 − 14.469) ÷ 2 = −.007
    const flat = drawerBottom({})?.panel;
    if (!flat?.ok) throw new Error('moves');
    expect(w(flat.value.cut.value)).toBe('14 9/16');
    expect([flat.value.pushed, flat.value.pinned].map(thousandths)).toEqual([-201n, -7n]);
    // quartersawn .00158: 14 25/32 ÷ 1.00632 = 14.688: 14 11/16 (14.6875); × .99684 = 14.641: −.015 and .086
    const quarter = drawerBottom({ quartersawn: true })?.panel;
    if (!quarter?.ok) throw new Error('moves');
    expect(w(quarter.value.cut.value)).toBe('14 11/16');
    expect([quarter.value.pushed, quarter.value.pinned].map(thousandths)).toEqual([-15n, 86n]);
  });

  test('slid in under the back it may move; of sheet there is nothing to tell', () => {
    expect(drawerBottom({}, editBank('bank', { bottomHow: 'slid-in' }))).toBeUndefined();
    expect(drawerBottom({ stuff: 'ply' })).toBeUndefined();
  });

  test('what a solid part is fixed to across its grain, by where it is', () => {
    const to = (role: string, ...more: readonly (readonly Change[])[]) =>
      parts(now, editStock('backply', { stuff: 'hardwood', species: 'red-oak' }), ...more)
        .find(({ part }) => part.name.role === role)
        ?.crossings?.map(({ to }) => to);
    expect(to('back')).toEqual(['rabbets']);
    const sheetB = editStock('sheetb', { stuff: 'hardwood', species: 'red-oak' });
    expect(to('bottom', sheetB)).toEqual(['sides']);
    // sides of the same wood move along with it
    expect(to('bottom', sheetB, editStock('sheeta', { stuff: 'hardwood', species: 'red-oak' }))).toEqual([]);
    expect(to('stile', oak)).toEqual([]);
  });
});
