import { describe, expect, test } from 'vitest';
import { editBoard, editOwnName, editPart } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { ownGone } from '../../src/plan/own-gone';
import { throughOn } from '../../src/plan/through-on';
import { withinReach } from '../../src/plan/within-reach';
import type { OwnMachine, Shop } from '../../src/trade/machines/shop';
import { l, w } from '../length/write-figures';
import { worked } from './job-of';

/** A second table saw, and one along a rail. */
const old: OwnMachine = {
  id: 'own1',
  name: 'Old saw',
  like: 'fence',
  figures: { capacity: l('52'), tableHeight: l('2') },
};
const rail: OwnMachine = {
  id: 'own2',
  name: 'Rail saw',
  like: 'circular',
  figures: { shoeKeep: l('5'), circularDepth: l('2'), circularGuide: l('100'), kerf: l('3/32') },
};
const shop: Shop = { capacity: l('30'), tableHeight: l('3'), shoeKeep: l('4'), own: [old, rail] };

const size = { length: l('60'), thickness: l('3/4') };
/** Three boards 60 long: 20, 20 and 34 wide. */
const boards: readonly Change[] = [
  ...editBoard('a', { name: 'A', across: l('20'), ...size }),
  ...editBoard('b', { name: 'B', across: l('20'), ...size }),
  ...editBoard('c', { name: 'C', across: l('34'), ...size }),
];
const rips = (shop: Shop, changes: readonly Change[] = []) => {
  const { plan, job } = worked([...boards, ...changes], shop);
  const ops = plan.operations.filter(({ what }) => what === 'rip');
  return { plan, job, ops, on: Object.fromEntries(ops.map((op) => [op.part, op.setup])) };
};

describe('two saws of one kind', () => {
  test('in the order said the first that lacks nothing rips each: 34 is 4 over the fence, the old saw reaches 52', () => {
    const { on, plan } = rips({ ...shop, order: ['fence', 'own1'] });
    expect(Object.values(on).map(({ own, figure }) => [own?.name, figure && w(figure.value)])).toEqual([
      ['Old saw', '34'],
      [undefined, '20'],
      [undefined, '20'],
    ]);
    const wide = plan.operations.find(({ id }) => id === 'cut/c/rip/1');
    const found = wide && withinReach(wide, plan.parts, { ...shop, order: ['fence', 'own1'] });
    expect([found?.own.own?.id, found?.own.lacks]).toEqual(['own1', []]);
    expect(found?.passed).toMatchObject([{ tool: 'fence', lacks: [{ field: 'capacity', by: l('4') }] }]);
  });

  test('one figure on both is two set-ups, each with a key of its own; the proof counts them so', () => {
    const alone = rips(shop).plan.order;
    const apart = rips(shop, editPart('b', { ripOn: 'rip', ripBy: 'own1' }));
    expect([apart.on.a?.key, apart.on.b?.key]).toEqual([
      'rip~r20d1~wtrue0edge',
      'rip~yown1~r20d1~wtrue0edge',
    ]);
    expect([apart.on.a?.build, apart.on.b?.build]).toEqual(['rip', 'rip~yown1']);
    const { order } = apart.plan;
    if (!alone.ok || !order.ok) throw new Error('a ring');
    // 20 and 34 by the fence are two settings of one saw; 20 on the other is a third setting and a second saw
    expect([
      order.value.runs.length - alone.value.runs.length,
      order.value.builds - alone.value.builds,
    ]).toEqual([1, 1]);
    expect([order.value.proved, order.value.leastBuilds]).toEqual([true, order.value.builds]);
  });

  test('what is cut along a rail is set by its own shoe: 20 − 5, not 20 − 4; it cuts 3/4 + 1/8 deep', () => {
    const { on } = rips(shop, [
      ...editPart('a', { ripOn: 'saw', ripBy: 'own2' }),
      ...editPart('b', { ripOn: 'saw' }),
    ]);
    expect([on.a, on.b].map((s) => s?.figure && w(s.figure.value))).toEqual(['15', '16']);
    expect(on.a).toMatchObject({ machine: 'saw', own: { id: 'own2' }, build: 'saw~yown2~h7d8' });
  });

  test('its blank shoe is asked of it, though the shop’s own is measured', () => {
    const blank = { ...rail, figures: { circularGuide: l('100') } };
    const { plan } = rips({ ...shop, own: [blank] }, editPart('a', { ripOn: 'saw', ripBy: 'own2' }));
    const rip = plan.operations.find(({ id }) => id === 'cut/a/rip/1');
    expect([rip?.cannot, rip?.asks, rip?.setup.own?.id]).toEqual([true, 'shoeKeep', 'own2']);
  });
});

describe('a machine that this phone’s shop has not', () => {
  const put = [...editPart('c', { ripOn: 'saw', ripBy: 'own2' }), ...editOwnName('own2', 'Rail saw')];

  test('is named, its cut is on the usual one, and what was chosen is kept', () => {
    const { plan, job, on, ops } = rips({ ...shop, own: undefined }, put);
    expect([on.c?.machine, on.c?.own]).toEqual(['rip', undefined]);
    expect(ownGone(ops, job, { own: undefined })).toEqual([{ id: 'own2', name: 'Rail saw' }]);
    expect(
      throughOn(
        ops.filter(({ part }) => part === 'c'),
        plan,
        {},
      )?.chosen,
    ).toBeUndefined();
    // and where it is, nothing is said
    expect(ownGone(ops, job, shop)).toEqual([]);
    expect(rips(shop, put).on.c?.own?.id).toBe('own2');
  });

  test('one that works like another tool by now does not take the cut: what was named beside it does', () => {
    const { on } = rips({ ...shop, own: [{ ...rail, like: 'sled' }] }, put);
    expect([on.c?.machine, on.c?.own]).toEqual(['saw', undefined]);
  });
});

test('all that rips is offered, the shop’s own by name, and which of them was chosen', () => {
  const { plan, ops } = rips(shop, editPart('a', { ripOn: 'rip', ripBy: 'own1' }));
  const found = throughOn(
    ops.filter(({ part }) => part === 'a'),
    plan,
    shop,
  );
  expect(found?.tools.map(({ taker }) => (typeof taker === 'string' ? taker : taker.name))).toEqual([
    'fence',
    'circular',
    'Old saw',
    'Rail saw',
  ]);
  expect(found?.chosen).toBe(old);
});
