import { describe, expect, test } from 'vitest';
import { editBank, editBoard, editRecipe, editRun } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { editHanging } from '../../src/job/hanging';
import { bitFound, learnedOf, piecesLacked } from '../../src/plan/look-back';
import type { Shop } from '../../src/trade/machines/shop';
import { l } from '../trade/grooves/sample';
import { worked } from './job-of';

const { plan } = worked([
  ...editBank('a', { name: 'Upper', slideLong: l('16'), slideHigh: l('1 25/32') }),
  ...editBank('b', { name: 'Lower', slideLong: l('16'), clearance: l('17/32') }),
]);

test('what the drawers say and the shop does not, once each', () => {
  expect(learnedOf(plan, { slideThickness: l('1/2') })).toEqual([
    { field: 'slideLength', now: undefined, learned: l('16'), from: 'Upper' },
    { field: 'slideHeight', now: undefined, learned: l('1 25/32'), from: 'Upper' },
    { field: 'slideThickness', now: l('1/2'), learned: l('17/32'), from: 'Lower' },
  ]);
});

test('nothing where the shop says the same', () => {
  const shop = { slideLength: l('16'), slideHeight: l('1 25/32'), slideThickness: l('17/32') };
  expect(learnedOf(plan, shop)).toEqual([]);
});

test('nothing of slides that boxes do not run on', () => {
  const hung = worked([
    ...editBank('a', { name: 'Upper', slideLong: l('16') }),
    ...editHanging('a', { hung: 'runners' }),
  ]);
  expect(learnedOf(hung.plan, {})).toEqual([]);
});

/** A side with one groove of 1/2 in it, 13 up from its bottom and 1/4 deep. */
const side = (machine: 'router' | 'stop', id = 'side', near = '13'): readonly Change[] => [
  ...editBoard(id, { name: 'Side', length: l('30'), across: l('12'), machine }),
  ...editRun(id, 'r', { spacing: 'given', at: [l(near)], width: l('1/2'), depth: l('1/4') }),
];
const shop: Shop = { routerBase: l('2 31/32'), bit: l('1/2') };

/** A job with what its groove was found to measure at the setup of its first groove. */
function tested(got: string, changes: readonly Change[] = side('router'), own: Shop = shop) {
  const grooves = worked(changes, own).plan.operations.filter(({ what }) => what === 'groove');
  const said = grooves.slice(0, 1).flatMap(({ setup }) => editRecipe(setup.key, { got: l(got) }));
  return { plan: worked([...changes, ...said], own).plan, grooves };
}

describe('the bit', () => {
  const found = (...of: Parameters<typeof tested>) => bitFound(tested(...of).plan, of[2] ?? shop);

  test('as a test cut in one pass found it, and where', () => {
    const { plan, grooves } = tested('0.494');
    expect(bitFound(plan, shop)).toEqual({ now: l('1/2'), learned: l('0.494'), at: grooves[0] });
  });

  test('nothing where it is as wide as the shop says, or too far off for a width of this bit', () => {
    // 1/32 off is still the bit, .032 is not
    expect(found('1/2')).toBeUndefined();
    expect(found('15/32')?.learned).toEqual(l('15/32'));
    expect(found('0.468')).toBeUndefined();
  });

  test('nothing of a stack, of a bit that a board names for itself, or of a wall cut by itself', () => {
    expect(found('0.494', side('stop'))).toBeUndefined();
    expect(found('0.494', [...side('router'), ...editBoard('side', { cutter: l('1/2') })])).toBeUndefined();
    expect(found('0.494', [...side('router'), ...editRun('side', 'r', { width: l('3/4') })])).toBeUndefined();
  });

  test('nothing where it may as well be the depth that was measured', () => {
    // 15/32 deep: .494 is .025 from that, and .006 from the bit
    expect(
      found('0.494', [...side('router'), ...editRun('side', 'r', { depth: l('15/32') })]),
    ).toBeUndefined();
  });

  test('nothing where two settings found two widths', () => {
    const both = [...side('router'), ...side('router', 'other', '9')];
    const keys = worked(both, shop).plan.operations.flatMap(({ what, setup }) =>
      what === 'groove' ? [setup.key] : [],
    );
    const [first = '', second = ''] = [...new Set(keys)];
    const with2 = (a: string, b: string) =>
      bitFound(
        worked([...both, ...editRecipe(first, { got: l(a) }), ...editRecipe(second, { got: l(b) })], shop)
          .plan,
        shop,
      );
    expect(second).not.toBe('');
    expect(with2('0.494', '0.497')).toBeUndefined();
    expect(with2('0.494', '0.494')?.learned).toEqual(l('0.494'));
  });
});

describe('pieces of a stack', () => {
  const changes = side('stop');
  const [groove] = worked(changes).plan.operations.filter(({ what }) => what === 'groove');
  const stack = [l('1/8'), l('1/8'), l('0.005')];
  const { plan } = worked([...changes, ...editRecipe(groove?.setup.build ?? '', { stack })]);

  test('as a recipe has them and the box has not: so many of a size, and where they stood', () => {
    const pieces = [{ size: l('1/8'), count: 1, kind: 'chipper' }] as const;
    expect(piecesLacked(plan, { pieces })).toEqual([
      { piece: { size: l('1/8'), count: 2, kind: 'chipper' }, has: 1, at: groove },
      { piece: { size: l('0.005'), count: 1, kind: 'shim' }, has: 0, at: groove },
    ]);
    expect(piecesLacked(plan, { pieces: [] })).toMatchObject([
      { piece: { count: 2, kind: 'chipper' }, has: 0 },
      { piece: { count: 1, kind: 'shim' } },
    ]);
  });

  test('nothing where the box has as many, of whichever kind', () => {
    const pieces = [
      { size: l('1/8'), count: 1, kind: 'chipper' },
      { size: l('1/8'), count: 1, kind: 'shim' },
      { size: l('0.005'), count: 3, kind: 'shim' },
    ] as const;
    expect(piecesLacked(plan, { pieces })).toEqual([]);
  });

  test('a size the box has of both kinds is nobody’s to guess', () => {
    const pieces = [
      { size: l('1/8'), count: 1, kind: 'chipper' },
      { size: l('1/8'), count: 0, kind: 'shim' },
      { size: l('0.005'), count: 1, kind: 'shim' },
    ] as const;
    expect(piecesLacked(plan, { pieces })).toEqual([]);
  });
});
