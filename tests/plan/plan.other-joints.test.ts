import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Json } from '../../src/job/entry';
import { readJobFile } from '../../src/job/file';
import { jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { add, type Length, subtract, times } from '../../src/length/length';
import { toStored } from '../../src/length/stored';
import { checklistOf } from '../../src/plan/checklist';
import { planOf } from '../../src/plan/plan';
import { l, w } from '../length/write-figures';

const file = readJobFile(readFileSync('demo-data/mineral-and-shell-cabinet.json', 'utf8'));
if (!file.ok) throw new Error('the sample');
const sample = fold(file.value.entries);
const [bank] = new Set([...sample.values.keys()].flatMap((at) => /^banks\/([^/]+)/.exec(at)?.[1] ?? []));

/** The sample as if nothing of it had been built, its case and its drawers joined otherwise: to its cut cards. */
function rebuilt(joints: Readonly<Record<string, Json>>, drawers: string) {
  const drawn = [...sample.values].filter(
    ([at]) => !/\/built\/|\/columns\/|^parts\/|^(sheets|layouts|widths|let)\//.test(at),
  );
  const own = Object.entries(joints).map(([field, value]) => [`cases/case/${field}`, value] as const);
  const values = new Map<string, Json>([...drawn, ...own, [`banks/${bank}/corner/joint/how`, drawers]]);
  const job = jobOf('j', values);
  const plan = planOf(job, {});
  const { cards } = checklistOf(plan, fold([]));
  const worked = plan.worked.get('case');
  if (!worked?.ok) throw new Error(JSON.stringify(worked?.error));
  return {
    plan,
    cards,
    case: worked.value.sizes,
    part: (id: string) => plan.parts.find((p) => p.id === `case~${id}`),
  };
}

type Rebuilt = ReturnType<typeof rebuilt>;

/** What holds however it is joined. */
function stands({ plan, cards }: Rebuilt): void {
  const onCards = cards.flatMap(({ operations }) => operations.map(({ id }) => id));
  expect(onCards.length).toBe(plan.operations.length);
  expect(new Set(onCards).size).toBe(onCards.length);
  expect(plan.operations.some(({ cannot }) => cannot)).toBe(false);
  // fewest setups, proved; or no fewer than any order has, and how many that is told
  if (!plan.order.ok) throw new Error('a ring');
  const { runs, leastRuns, builds, leastBuilds, proved } = plan.order.value;
  expect(builds).toBeGreaterThanOrEqual(leastBuilds);
  expect(runs.length).toBeGreaterThanOrEqual(leastRuns);
  if (proved) expect(builds).toBe(leastBuilds);
}

const long = (found: Rebuilt, id: string): string => w(found.part(id)?.length.sum.value as Length);
const cutIn = ({ plan }: Rebuilt, what: string) =>
  plan.operations.filter((op) => op.part.startsWith('case~') && op.what === what);

describe('the sample joined otherwise', () => {
  test('butted, its back in a groove, its drawers with box joints', () => {
    const found = rebuilt(
      {
        bottomJoint: 'butt',
        topJoint: 'butt',
        partitionJoint: 'butt',
        shelfJoint: 'butt',
        backHow: 'groove',
      },
      'box-joint',
    );
    stands(found);
    const between = subtract(found.case.width.value, times(found.case.thick('side'), 2n));
    expect([long(found, 'bottom'), long(found, 'top')]).toEqual([w(between), w(between)]);
    expect(long(found, 'partition1')).toBe(w(found.case.clearHeight.value));
    // grooves of the trays alone are cut across, and no rabbet in the case
    const across = cutIn(found, 'groove').map(({ which }) => which?.is === 'groove' && which.seat.in);
    expect(new Set(across)).toEqual(new Set(['run']));
    expect(cutIn(found, 'rabbet')).toEqual([]);
    expect(cutIn(found, 'along').length).toBeGreaterThan(0);
    // fingers in place of tails and pins
    const drawers = new Set(found.plan.operations.map(({ what }) => what));
    expect([drawers.has('tails'), drawers.has('pins'), drawers.has('fingers')]).toEqual([false, false, true]);
  });

  test('the top in dadoes, the sides 2 past it: cut by the stack of the bottom; what is inside is shorter', () => {
    const found = rebuilt({ topJoint: 'dado', sidePast: toStored(l('2')) }, 'rabbeted');
    stands(found);
    // 64 1/4 less 4 1/8, the 2, and bottom and top of one sheet
    const flats = times(found.case.thick('top'), 2n);
    expect(w(found.case.clearHeight.value)).toBe(w(subtract(l('58 1/8'), flats)));
    expect(long(found, 'partition1')).toBe(w(add(found.case.clearHeight.value, l('9/16'))));
    const builds = (flat: string) =>
      new Set(
        cutIn(found, 'groove').flatMap(({ which, setup }) =>
          which?.is === 'groove' && which.seat.in === flat ? [setup.build] : [],
        ),
      );
    expect(builds('top').size).toBe(1);
    expect(builds('top')).toEqual(builds('bottom'));
  });

  test('the top over the sides, the back laid on, rabbeted drawers', () => {
    const found = rebuilt({ topJoint: 'over', backHow: 'applied' }, 'rabbeted');
    stands(found);
    // it lies on the sides, which are so much shorter, and is as wide as the case
    expect(long(found, 'top')).toBe(w(found.case.width.value));
    expect(long(found, 'left')).toBe(w(subtract(found.case.height.value, found.case.thick('top'))));
    // in the case nothing is rabbeted any more; in the drawers their fronts are
    expect(cutIn(found, 'rabbet')).toEqual([]);
    const fronts = found.plan.operations.filter((op) => op.what === 'rabbet');
    expect(fronts.length).toBeGreaterThan(0);
  });
});
