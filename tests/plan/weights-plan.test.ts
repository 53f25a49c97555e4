import { describe, expect, test } from 'vitest';
import { editCase, editJob, editLift, editStock, editThing } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { editHanging } from '../../src/job/hanging';
import { jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { editAcross, editRoom } from '../../src/job/room-edits';
import { type Ratio, ratio } from '../../src/length/length';
import { liftables } from '../../src/plan/lift-check';
import { planOf } from '../../src/plan/plan';
import {
  type CaseWeights,
  mostOf,
  movingIn,
  stackOf,
  tippingOf,
  weightsOf,
} from '../../src/plan/weights-plan';
import { newCase } from '../../src/trade/carcass/case';
import { weighAll } from '../../src/trade/loads/weights';
import { installId } from '../../src/trade/setups/install-steps';
import { l, w } from '../length/write-figures';
import { caseDecided } from './carried-cabinet-case';
import { worked } from './job-of';
import { sampleLog, shop } from './laid-sample';
import { twoColumns } from './two-columns';

const tenth = (x: Ratio): string => x.valueOf().toFixed(1);
const none = ratio(0n);

function own(...more: readonly (readonly Change[])[]) {
  const { job, plan } = worked([...caseDecided, ...more.flat()]);
  const c = job.cases.find(({ id }) => id === 'case');
  if (!c) throw new Error('case');
  return { job, plan, c, found: weightsOf(plan, c) };
}

describe('what a case weighs', () => {
  test('part by part, with the sum so far', () => {
    // a side 64 1/4 × 17 1/2 / 144 × 2.2 = 17.18; bottom 37 1/2 × 17 7/32 9.86; top 37 5/8 9.90; partition 59 1/4 15.58
    const { weights } = own().found;
    if (!weights.ok) throw new Error('weights');
    expect(weights.value.pieces.slice(0, 5).map((x) => tenth(x.running))).toEqual([
      '17.2',
      '34.4',
      '44.2',
      '54.1',
      '69.7',
    ]);
  });

  test('filler strips go on when it stands: they are not lifted with it', () => {
    const walls = [
      ...editRoom({ apart: l('40') }),
      ...editAcross('a', { at: l('0'), left: l('3/8'), right: l('1') }),
    ];
    const { plan, found } = own(walls);
    const strips = plan.parts.filter(({ stock }) => stock === 'filler').map(({ id }) => id);
    expect(strips).toEqual(['case~fillerleft', 'case~fillerright']);
    expect(strips.filter((id) => found.parts.has(id))).toEqual([]);
    expect(found.weights).toEqual(own().found.weights);
  });

  test('with the rest that is no part, and what stands on its shelves apart', () => {
    const bare = own().found;
    const { found } = own(
      editLift('case', { rest: ratio(10n) }),
      editThing('a', { part: 'case~shelf', count: 3, heavy: ratio(2n) }),
      editThing('b', { part: 'case~trays', count: 2 }),
    );
    if (!found.weights.ok || !bare.weights.ok) throw new Error('weights');
    expect(found.weights.value.all.sub(bare.weights.value.all).equals(10n)).toBe(true);
    expect([tenth(found.onShelves), found.unweighed]).toEqual(['6.0', 2]);
  });

  test('one person lifts 50 pounds until the job says another', () => {
    expect(mostOf(own().job).equals(50n)).toBe(true);
    expect(mostOf(own(editJob({ carry: ratio(35n) })).job).equals(35n)).toBe(true);
  });

  test('what is lifted by itself: the case and each loose piece', () => {
    const { plan, found } = own();
    expect(liftables(plan, found).map(({ id }) => id)).toEqual(['case', 'case~trays']);
  });
});

describe('moving in', () => {
  const upper = editCase('upper', {
    width: l('38 3/8'),
    height: l('20'),
    depth: l('17 1/2'),
    sideStock: 'sheeta',
  });

  test('the lower case is set, levelled and anchored before the one on it, from either page', () => {
    const { job, plan, c } = own(upper, editLift('upper', { on: 'case' }));
    const [, other] = job.cases;
    expect(stackOf(job, c).map(({ id }) => id)).toEqual(['case', 'upper']);
    expect(other && stackOf(job, other).map(({ id }) => id)).toEqual(['case', 'upper']);
    const steps = movingIn(plan, c);
    expect(steps.ok && steps.value.map(({ code, id }) => `${code} ${id}`)).toEqual([
      'loose-out case~trays',
      'set case',
      'level case',
      'anchor case',
      'set upper',
      'anchor upper',
      'loose-in case~trays',
    ]);
  });

  test('two that stand on each other come to an end', () => {
    const { job, c } = own(upper, editLift('upper', { on: 'case' }), editLift('case', { on: 'upper' }));
    expect(
      stackOf(job, c)
        .map(({ id }) => id)
        .sort(),
    ).toEqual(['case', 'upper']);
  });
});

describe('drawers pulled out', () => {
  const weights = weighAll([{ id: 'case', of: 'case', count: 1, pounds: ratio(98n) }]);
  const drawer = (id: string, full: bigint) => ({
    id,
    bank: 'd',
    no: 1,
    empty: none,
    things: none,
    unweighed: 0,
    full: ratio(full),
    deep: l('15 1/2'),
    says: { code: 'rating-missing' } as const,
  });
  const at = (drawers: CaseWeights['drawers'], depth = '18 1/4'): CaseWeights => ({
    of: { ...newCase('case'), depth: l(depth) },
    setBack: l('0'),
    behind: l('0'),
    weights,
    parts: new Map(),
    unknown: [],
    rest: undefined,
    drawers,
    onShelves: none,
    unweighed: 0,
  });

  test('all of them against the case alone, the heaviest against the others as well', () => {
    // 3 × 40 × 7 3/4 = 930 against 98 × 9 1/8 = 894 1/4; one: 310 against 894 1/4 + 2 × 310 = 1514 1/4
    const found = tippingOf(at([drawer('a', 40n), drawer('b', 40n), drawer('c', 40n)]));
    if (!found?.all.ok || !found.one.ok) throw new Error('tipping');
    expect([found.all.value.tipping, found.all.value.holding].map((x) => x.valueOf())).toEqual([930, 894.25]);
    expect([found.all.value.code, found.all.value.outAtMost]).toEqual(['falls', 1]);
    expect([found.one.value.tipping, found.one.value.holding].map((x) => x.valueOf())).toEqual([
      310, 1514.25,
    ]);
    expect(found.one.value.code).toBe('past-margin');
  });

  test('a back laid on behind its sides moves its middle back by half of it', () => {
    // 98 × (18 1/4 + 1/4) / 2 = 98 × 9 1/4 = 906 1/2
    const found = tippingOf({ ...at([drawer('a', 40n)]), behind: l('1/4') });
    if (!found?.all.ok) throw new Error('tipping');
    expect(found.all.value.holding.valueOf()).toBe(906.5);
  });

  test('what is loose holds nothing, and is told apart', () => {
    // 30 trays of 2 1/2 are 75, 12 on them: 87; the case alone holds 98 × 9 1/8 = 894 1/4 as before
    const trays = { id: 'trays', of: 'loose', count: 30, pounds: ratio(5n, 2n) } as const;
    const loaded = {
      ...at([drawer('a', 40n)]),
      weights: weighAll([{ id: 'case', of: 'case', count: 1, pounds: ratio(98n) }, trays]),
      onShelves: ratio(12n),
    };
    const found = tippingOf(loaded);
    if (!found?.all.ok) throw new Error('tipping');
    expect([found.all.value.holding.valueOf(), found.loose.valueOf()]).toEqual([894.25, 87]);
  });

  test('a drawer of the sample is as deep as its box outside: 16, its middle 8 ahead', () => {
    // inside 14 15/32, its front 5/8, its back 15/32, 7/16 behind it: 16
    const job = jobOf('j', fold(sampleLog).values);
    const plan = planOf(job, shop);
    const [c] = job.cases;
    if (!c) throw new Error('case');
    const found = weightsOf(plan, c);
    expect(found.drawers.map(({ deep }) => w(deep))).toEqual(['16', '16', '16', '16', '16']);
    const tips = tippingOf(found);
    if (!tips?.all.ok) throw new Error('tipping');
    const full = found.drawers.reduce((so, x) => so.add(x.full) as Ratio, none);
    expect(tips.all.value.tipping.equals(full.mul(8n))).toBe(true);
    expect([tips.all.value.code, tips.loose.n > 0n]).toEqual(['near', true]);
  });

  test('nothing to pull, nothing told', () => {
    expect(tippingOf(at([]))).toBeUndefined();
  });
});

describe('two columns of drawers', () => {
  const { job, plan } = worked(twoColumns);
  const [c] = job.cases;
  if (!c) throw new Error('case');
  const found = weightsOf(plan, c);

  test('each drawer has what goes into it: 3 of 2 pounds in the first column, 2 of 5 in the second', () => {
    expect(found.drawers.map(({ id, column, things }) => [id, column, tenth(things)])).toEqual([
      ['b~c1d1', 1, '0.0'],
      ['b~c1d2', 1, '6.0'],
      ['b~c2d1', 2, '0.0'],
      ['b~c2d2', 2, '10.0'],
    ]);
    expect(found.drawers.every(({ empty, things, full }) => full.equals(empty.add(things)))).toBe(true);
    const [, near, , far] = found.drawers;
    // one case, one height of front: both boxes of a row weigh alike
    expect(near && far && near.empty.equals(far.empty)).toBe(true);
    expect(
      far && [far.says.code, far.says.code !== 'rating-missing' && far.says.total.equals(far.full)],
    ).toEqual(['within', true]);
  });

  test('what they run on stays in the case when it is wood, and nobody rates it', () => {
    const lowerOn = (stock: string) => {
      const made = worked([
        ...twoColumns,
        ...editStock('thick', { name: 'Thick', planned: l('1') }),
        ...editHanging('b', { hung: 'runners', runnerStock: stock }),
      ]);
      const [own] = made.job.cases;
      if (!own) throw new Error('case');
      const { drawers, weights } = weightsOf(made.plan, own);
      return { lower: drawers[1], all: weights.ok ? weights.value.sums.case : none };
    };
    const [usual, thick] = [lowerOn('s'), lowerOn('thick')];
    expect([usual.lower?.inWood, usual.lower?.says.code]).toEqual([true, 'rating-missing']);
    // thicker runners are heavier, and what lies flat over the upper boxes is: the lower box is as it was
    expect(usual.lower && thick.lower?.empty.equals(usual.lower.empty)).toBe(true);
    expect(thick.all.gt(usual.all)).toBe(true);
  });

  test('all four come out to move it in, are lifted by themselves and pull together at the front', () => {
    const steps = movingIn(plan, c);
    const moved = (code: string) =>
      steps.ok ? steps.value.flatMap((x) => (x.code === code ? [x.id] : [])) : [];
    const ids = ['b~c1d1', 'b~c1d2', 'b~c2d1', 'b~c2d2'];
    expect([moved('drawer-out'), moved('drawer-in')]).toEqual([ids, ids]);
    const full = liftables(plan, found).filter(({ code }) => code === 'full-drawer');
    expect(full.map(({ id }) => id)).toEqual(['full b~c1d2', 'full b~c2d2']);
    const tips = tippingOf(found);
    if (!tips?.all.ok || !tips.one.ok) throw new Error('tipping');
    expect(tips.one.value.tipping.lt(tips.all.value.tipping)).toBe(true);
  });

  test('both columns are hung before it is carried in, and fitted and bored before it is finished', () => {
    const waitsFor = (step: 'carry-in' | 'finish') => plan.byId.get(installId('c1', step))?.after ?? [];
    for (const at of ['c1d1', 'c1d2', 'c2d1', 'c2d2']) {
      expect(waitsFor('carry-in')).toContain(`cut/b~bench/hang/${at}`);
      expect(waitsFor('finish')).toContain(`cut/b~bench/fronton/${at}`);
    }
  });
});
