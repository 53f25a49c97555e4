import { describe, expect, test } from 'vitest';
import { editBoard, editHandJoint, editOwnName, editPart, editPlace, editRun } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { viewOf } from '../../src/plan/board-layout';
import { goneOf, ownGone } from '../../src/plan/own-gone';
import { throughOn } from '../../src/plan/through-on';
import { withinReach } from '../../src/plan/within-reach';
import { takerId } from '../../src/trade/machines/own-machine';
import type { OwnMachine, Shop } from '../../src/trade/machines/shop';
import type { Setup } from '../../src/trade/setups/setup';
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
    const found = wide && withinReach(wide, plan, { ...shop, order: ['fence', 'own1'] });
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

test('a joint is offered on machines that work like its own alone, and says which was chosen', () => {
  const lap = editHandJoint('j', {
    part: 'a',
    kind: 'rabbet',
    at: 'front',
    takes: 'a strip',
    width: l('1/2'),
    depth: l('3/8'),
  });
  const offered = (changes: readonly Change[]) => {
    const { plan } = worked([...boards, ...lap, ...changes], shop);
    const ops = plan.operations.filter(({ what }) => what === 'rabbet');
    // its card begins with the test cut
    const test = plan.operations.filter(({ what }) => what === 'test');
    const found = throughOn([...test, ...ops], plan, shop);
    return [
      found?.tools.map(({ taker }) => takerId(taker)),
      found?.chosen && takerId(found.chosen),
      ops[0]?.setup.own?.id,
    ];
  };
  expect(offered([])).toEqual([['fence', 'own1'], undefined, undefined]);
  expect(offered(editPart('a', { edgeBy: 'own1' }))).toEqual([['fence', 'own1'], 'own1', 'own1']);
  expect(offered(editPart('a', { edgeBy: 'usual' }))).toEqual([['fence', 'own1'], 'fence', undefined]);
  // one that is not here: the usual one takes it, and it is named
  const gone = worked(
    [...boards, ...lap, ...editPart('a', { edgeBy: 'own7' }), ...editOwnName('own7', 'Loft saw')],
    shop,
  );
  const ops = gone.plan.operations.filter(({ what }) => what === 'rabbet');
  expect(ownGone(ops, gone.job, shop)).toEqual([{ id: 'own7', name: 'Loft saw' }]);
});

test('a through groove is offered on router tables, a lap on sliding saws: that of the shop where it has one', () => {
  const table: OwnMachine = { id: 'own4', name: 'Router table', like: 'table', figures: { bit: l('1/4') } };
  const loft: OwnMachine = { id: 'own5', name: 'Loft saw', like: 'sliding', figures: {} };
  const made = [
    ...editHandJoint('j', {
      part: 'a',
      kind: 'groove',
      at: 'front',
      near: l('2'),
      width: l('1/4'),
      depth: l('1/4'),
    }),
    ...editHandJoint('k', { part: 'a', kind: 'lap', near: l('9'), width: l('2'), depth: l('3/8') }),
  ];
  const offered = (what: 'along' | 'lap', own: Shop, said: Parameters<typeof editPart>[1] = {}) => {
    const { plan, job } = worked([...boards, ...made, ...editPart('a', said)], own);
    const ops = plan.operations.filter((op) => op.what === what);
    const found = throughOn(ops, plan, own);
    const { tools = [], chosen } = found ?? {};
    const gone = ownGone(ops, job, own).map(({ id }) => id);
    return [tools.map(({ taker }) => takerId(taker)), chosen && takerId(chosen), ops[0]?.setup.machine, gone];
  };
  const own = { ...shop, own: [old, rail, table, loft] };
  expect(offered('along', own)).toEqual([['fence', 'own1', 'own4'], undefined, 'fence', []]);
  expect(offered('along', own, { alongBy: 'own4' })).toEqual([
    ['fence', 'own1', 'own4'],
    'own4',
    'tablerouter',
    [],
  ]);
  expect(offered('along', shop, { alongBy: 'own4' })[3]).toEqual(['own4']);
  expect(offered('lap', shop)).toEqual([['sled'], undefined, 'lap', []]);
  const slides = { ...own, slidingCross: l('12') };
  expect(offered('lap', slides, { shoulderBy: 'sliding' })).toEqual([
    ['sled', 'sliding', 'own5'],
    'sliding',
    'slidinglap',
    [],
  ]);
  expect(offered('lap', slides, { shoulderBy: 'own5' })[2]).toBe('slidinglap');
});

describe('grooves on a machine of the shop’s own', () => {
  /** A board 48 long, 12 across, with one groove 3/4 wide, 1/4 deep, its near edge at 12. */
  const grooved = (own: Parameters<typeof editBoard>[1]): readonly Change[] => [
    ...editBoard('g', {
      name: 'G',
      length: l('48'),
      across: l('12'),
      thickness: l('3/4'),
      guide: 'reference',
      ...own,
    }),
    ...editRun('g', 'r', { spacing: 'given', width: l('3/4'), depth: l('1/4') }),
    ...editPlace({ board: 'g', run: 'r' }, 'p', { at: l('12') }),
  ];
  const small: OwnMachine = {
    id: 'own3',
    name: 'Small router',
    like: 'router',
    figures: { routerBase: l('3'), bit: l('3/8'), routerReach: l('1'), routerGuide: l('24') },
  };
  const here: Shop = { routerBase: l('4'), bit: l('1/2'), single: l('1/8'), own: [small, old] };
  const cuts = (changes: readonly Change[], shop: Shop) => {
    const { plan, job } = worked(changes, shop);
    const ops = plan.operations.filter(({ what }) => what === 'groove');
    const [board] = job.boards;
    if (!board) throw new Error('no board');
    return { job, ops, view: viewOf(board, shop, job.tape), setups: ops.map(({ setup }) => setup) };
  };
  const figures = (setups: readonly Setup[]) => setups.map(({ figure }) => figure && w(figure.value));

  test('its bit and its base set it: guide at 12 − (3 − 3/16) = 9 3/16; the shop’s at 12 − (4 − 1/4) = 8 1/4', () => {
    const on = cuts(grooved({ machine: 'router', by: 'own3' }), here);
    // the guide stands still: a strip beside it makes the other wall
    expect(new Set(figures(on.setups))).toEqual(new Set(['9 3/16']));
    expect(on.setups.every(({ own, cutter }) => own?.id === 'own3' && cutter?.equals(l('3/8')))).toBe(true);
    expect(on.setups[0]?.build).toBe('router~yown3~c3d8~h1d4');
    expect(new Set(figures(cuts(grooved({ machine: 'router' }), here).setups))).toEqual(new Set(['8 1/4']));
  });

  test('Marks and the machine say one thing of it, by its name', () => {
    const { view, setups, job } = cuts(grooved({ machine: 'router', by: 'own3' }), here);
    expect(view.own?.name).toBe('Small router');
    expect(view.settings.settings.map(({ figure }) => w(figure.value))).toEqual(figures(setups));
    expect([goneOf({ by: 'own3' }, job, here), goneOf({ by: 'own9' }, job, here)]).toEqual([
      undefined,
      { id: 'own9', name: undefined },
    ]);
  });

  test('its blank bit is asked, though the shop has one; nothing is set by another', () => {
    const blank = { ...small, figures: { routerBase: l('3') } };
    const { view, ops } = cuts(grooved({ machine: 'router', by: 'own3' }), { ...here, own: [blank] });
    expect(view.settings.problems).toEqual([{ code: 'shop-figure-missing', field: 'bit' }]);
    expect(ops.map(({ cannot, setup }) => [cannot, setup.own?.id])).toEqual([[true, 'own3']]);
  });

  test('a second table saw: the fence over a stack that grows toward it by its own blade, 12 + 3/4 − 3/32 = 12 21/32', () => {
    const second = { ...old, figures: { ...old.figures, single: l('3/32') } };
    const shop = { ...here, own: [second] };
    const on = cuts(grooved({ machine: 'fence', by: 'own1', grows: 'toward' }), shop);
    expect(figures(on.setups)).toEqual(['12 21/32']);
    // by the shop's own blade 1/8: 12 5/8
    expect(figures(cuts(grooved({ machine: 'fence', grows: 'toward' }), shop).setups)).toEqual(['12 5/8']);
    // what lies along it wants no less than the far teeth: 12 3/4 of 12, so it turns by 3/4
    const [op] = on.ops;
    const { plan } = worked(grooved({ machine: 'fence', by: 'own1', grows: 'toward' }), shop);
    expect(op && withinReach(op, plan, shop)?.own).toMatchObject({
      own: { id: 'own1' },
      lacks: [{ code: 'unsteady', by: l('3/4') }],
    });
  });

  test('a router table stands in for the router: its fence to the near side of the bit, 12 and, 3/8 on, 12 3/8', () => {
    const table: OwnMachine = {
      id: 'own4',
      name: 'Router table',
      like: 'table',
      figures: { capacity: l('20'), bit: l('3/8'), routerReach: l('1') },
    };
    const shop = { ...here, own: [table] };
    const on = cuts(grooved({ machine: 'router', by: 'own4' }), shop);
    // the walls of a groove 3/4 wide with a bit of 3/8: its near side at 12, and at 12 3/4 − 3/8
    expect(figures(on.setups).slice(0, 2)).toEqual(['12', '12 3/8']);
    expect(on.setups[0]).toMatchObject({ machine: 'tablerouter', build: 'tablerouter~yown4~c3d8~h1d4' });
    expect(on.view.board.machine).toBe('tablerouter');
    expect(on.ops[0]?.placing).toMatchObject({ face: { lies: 'down' }, fence: 'far' });
    // beyond its fence, by its own figure though the shop's rip fence is blank
    const short = cuts(grooved({ machine: 'router', by: 'own4' }), {
      ...here,
      own: [{ ...table, figures: { ...table.figures, capacity: l('10') } }],
    });
    expect(short.view.settings.problems[0]).toMatchObject({ code: 'beyond-fence', capacity: l('10') });
    // where this shop has none, the router takes it, by the shop's base and bit
    const away = cuts(grooved({ machine: 'router', by: 'own4' }), { ...here, own: [] });
    expect(new Set(figures(away.setups))).toEqual(new Set(['8 1/4']));
  });

  test('named for another kind of machine, or not in this shop, the board stays on the one it names', () => {
    const router = grooved({ machine: 'router', by: 'own1' });
    expect(cuts(router, here).setups.map(({ own }) => own)).toEqual(
      cuts(router, here).setups.map(() => undefined),
    );
    const away = cuts(grooved({ machine: 'router', by: 'own3' }), { ...here, own: undefined });
    expect(new Set(figures(away.setups))).toEqual(new Set(['8 1/4']));
    expect(ownGone(away.ops, away.job, { own: undefined })).toEqual([{ id: 'own3', name: undefined }]);
  });
});
