import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, type Length } from '../../../src/length/length';
import type { Part } from '../../../src/trade/carcass/part';
import { type HandJoint, withHandJoints } from '../../../src/trade/joints/by-hand';
import { isClear, lacksOf } from '../../../src/trade/machines/limits';
import { remediesFor } from '../../../src/trade/machines/remedies';
import type { OwnMachine, Shop } from '../../../src/trade/machines/shop';
import type { Chosen } from '../../../src/trade/machines/through';
import { needOf } from '../../../src/trade/setups/need';
import type { Operation } from '../../../src/trade/setups/operation';
import { partOperations } from '../../../src/trade/setups/part-operations';
import { l, w } from '../../length/write-figures';
import { runs } from '../../runs';
import { part, plainCase, work } from '../carcass/sample-case';

const joint = (kind: HandJoint['kind'], own: Omit<HandJoint, 'id' | 'part' | 'kind' | 'at' | 'takes'>) =>
  ({ id: kind, part: 'c1~left', kind, at: 'front', takes: 'a strip', ...own }) as const;

/** A side 64 1/4 × 17 1/2 with a joint of each kind added by hand, a stopped groove and a row of holes. */
const bare = part(work(plainCase), 'left');
const side: Part = {
  ...withHandJoints({ ...bare, rabbets: [], notches: [], laps: [], along: [] }, [
    joint('rabbet', { width: l('1/2'), depth: l('3/8') }),
    joint('groove', { near: l('2'), width: l('1/4'), depth: l('1/4') }),
    joint('lap', { near: l('40'), width: l('2'), depth: l('3/8') }),
    joint('notch', { near: l('20'), width: l('3'), depth: l('2 1/4') }),
  ]),
  bores: [
    {
      id: 's~rear',
      inside: 's',
      row: 'rear',
      face: 'A',
      off: l('15 1/2'),
      dia: l('1/4'),
      deep: l('3/8'),
      pitch: l('2'),
      metric: false,
      holes: [
        { no: 1, at: l('8') },
        { no: 2, at: l('10') },
      ],
      leftOut: [],
      by: 'press',
    },
  ],
};
const withStopped: Part = {
  ...side,
  along: (side.along ?? []).map((groove) => ({ ...groove, from: l('3'), to: l('20') })),
};

/** The first operation of a kind, in a shop. */
function made(what: Operation['what'], shop: Shop, chosen: Chosen = {}, of: Part = side): Operation {
  const op = partOperations(of, {}, { shop, tape: '1/32', chosen: () => chosen }).find(
    (x) => x.what === what,
  );
  if (!op) throw new Error(what);
  return op;
}
const machine = (
  like: OwnMachine['like'],
  id: OwnMachine['id'],
  figures: OwnMachine['figures'],
): OwnMachine => ({
  id,
  name: `No. ${id}`,
  like,
  figures,
});
const low: OwnMachine = machine('fence', 'own1', { capacity: l('24'), tableHeight: l('1/4') });
const saw: OwnMachine = machine('fence', 'own2', { capacity: l('30'), tableHeight: l('2') });
const sled: OwnMachine = machine('sled', 'own3', {
  sledCross: l('24'),
  stopReach: l('48'),
  tableHeight: l('3'),
});
const table: OwnMachine = machine('table', 'own4', { capacity: l('10'), bit: l('1/4'), routerReach: l('1') });
const press: OwnMachine = machine('press', 'own5', {
  pressThroat: l('16'),
  pressStroke: l('3'),
  pressBit: l('1/2'),
});
const sliding: OwnMachine = machine('sliding', 'own7', {
  slidingCross: l('18'),
  slidingStop: l('48'),
  slidingHeight: l('3'),
  slidingStack: l('13/16'),
});
const all: Shop = { own: [low, saw, sled, table, press] };
const said: Shop = { ...all, order: ['own1', 'own2', 'own3', 'own4', 'own5', 'fence', 'sled', 'press'] };

describe('what joints want of a machine', () => {
  const need = (what: Operation['what'], of = side) => needOf(made(what, {}, {}, of), of);

  test('along an edge: what lies along the fence, and off it; a rabbet has nothing set between', () => {
    const lies = { length: l('17 1/2'), across: l('64 1/4') };
    expect(need('rabbet')).toEqual({ cut: 'edge', near: l('0'), width: l('1/2'), depth: l('3/8'), ...lies });
    expect(need('along')).toEqual({ cut: 'along', near: l('2'), width: l('1/4'), depth: l('1/4'), ...lies });
    expect(need('along', withStopped)).toMatchObject({ cut: 'stopped', near: l('2'), width: l('1/4') });
  });

  test('off a stop: a lap lies across the sled, a notch stands on edge', () => {
    expect(need('lap')).toEqual({
      cut: 'shoulder',
      near: l('40'),
      width: l('2'),
      depth: l('3/8'),
      length: l('64 1/4'),
      across: l('17 1/2'),
    });
    expect(need('notch')).toEqual({
      cut: 'shoulder',
      near: l('20'),
      width: l('3'),
      depth: l('2 1/4'),
      length: l('64 1/4'),
      stands: l('17 1/2'),
    });
    expect(need('bore')).toEqual({ cut: 'bore', off: l('15 1/2'), dia: l('1/4'), depth: l('3/8') });
  });
});

describe('by how much a machine is short of a joint', () => {
  const lacking = (what: Operation['what'], taker: Parameters<typeof lacksOf>[1], shop: Shop, of = side) => {
    const need = needOf(made(what, {}, {}, of), of);
    if (!need) throw new Error('nothing wanted');
    const { lacks } = lacksOf(need, taker, shop);
    return lacks.map((lack) =>
      'by' in lack ? `${'field' in lack ? lack.field : lack.code} ${w(lack.by)}` : '',
    );
  };

  test('a rabbet 3/8 deep under a stack that stands 1/4: 1/8 too low; a lap at 40 off a stop at 32: 8', () => {
    expect(lacking('rabbet', low, all)).toEqual(['tableHeight 1/8']);
    expect(lacking('lap', 'sled', { sledCross: l('16'), stopReach: l('32') })).toEqual([
      // 17 1/2 − 16
      'sledCross 1 1/2',
      'stopReach 8',
    ]);
  });

  test('a stopped groove 1/4 wide wants that bit: 3/8 is 1/8 too wide, 3/16 is 1/16 too narrow', () => {
    const bit = (size: string) => ({ ...table, figures: { ...table.figures, bit: l(size) } });
    expect(lacking('along', bit('3/8'), all, withStopped)).toEqual(['cutter-too-wide 1/8']);
    expect(lacking('along', bit('3/16'), all, withStopped)).toEqual(['cutter-too-narrow 1/16']);
    expect(lacking('along', table, all, withStopped)).toEqual([]);
  });

  test('a through groove on a router table, in one pass: the same bit, and a fence at 1 is 1 short of 2', () => {
    const near = { ...table, figures: { ...table.figures, bit: l('3/16'), capacity: l('1') } };
    expect(lacking('along', near, all)).toEqual(['capacity 1', 'cutter-too-narrow 1/16']);
    expect(lacking('along', table, all)).toEqual([]);
  });

  // 17 1/2 − 12 across, 40 − 32 along, 3/8 − 1/4 deep
  test('a lap on a sliding saw: its stop, its reach across, its depth, and a stack only where that is said', () => {
    const short = machine('sliding', 'own6', {
      slidingCross: l('12'),
      slidingStop: l('32'),
      slidingHeight: l('1/4'),
    });
    expect(lacking('lap', short, all)).toEqual([
      'slidingCross 5 1/2',
      'slidingStop 8',
      '', // no stack
      'slidingHeight 1/8',
    ]);
    expect(lacking('lap', sliding, all)).toEqual([]);
    // a notch stands on edge: nothing lies across, and 17 1/2 stand under it
    expect(lacking('notch', short, all)).toEqual(['', 'slidingHeight 17 1/4']);
  });

  test('a hole 1/4 wide, 3/8 deep, 15 1/2 in: throat, stroke and chuck each by how much', () => {
    const small = machine('press', 'own6', {
      pressThroat: l('7'),
      pressStroke: l('1/4'),
      pressBit: l('3/16'),
    });
    expect(lacking('bore', small, all)).toEqual(['pressThroat 8 1/2', 'pressStroke 1/8', 'pressBit 1/16']);
    expect(lacking('bore', press, all)).toEqual([]);
  });

  test('turned round: off the other end the lap is at 64 1/4 − 40 − 2 = 22 1/4, within a stop at 32', () => {
    const need = needOf(made('lap', {}), side);
    if (!need) throw new Error('nothing wanted');
    const shop = { sledCross: l('24'), stopReach: l('32'), tableHeight: l('3') };
    expect(remediesFor(need, shop)).toEqual([
      { code: 'other-end', figure: l('22 1/4') },
      { code: 'template' },
    ]);
    // a sled that is too narrow is too narrow either way
    expect(remediesFor(need, { ...shop, sledCross: l('12') })).toEqual([{ code: 'template' }]);
  });
});

describe('which machine takes a joint', () => {
  const byKey = (what: Operation['what'], shop: Shop, chosen: Chosen = {}, of = side) =>
    made(what, shop, chosen, of).setup.build;

  test('until an order is said, that of every shop, by the key it always had', () => {
    for (const what of ['rabbet', 'along', 'lap', 'notch'] as const) {
      expect(made(what, all).setup).toEqual(made(what, {}).setup);
      expect(made(what, all).setup.own).toBeUndefined();
    }
  });

  test('in an order said the first that lacks nothing: the low saw is passed over for what is deeper than 1/4', () => {
    expect(byKey('rabbet', said)).toBe('rabbet~yown2~h3d8');
    expect(byKey('along', said)).toBe('fence~yown1~c1d4~h1d4');
    expect(byKey('along', said, {}, withStopped)).toBe('routertable~yown4~c1d4~h1d4');
    expect([byKey('lap', said), byKey('notch', said)]).toEqual([
      'lap~yown3~c2d1~h3d8',
      'notch~yown3~c3d1~h9d4',
    ]);
    expect(made('bore', said).setup).toMatchObject({ machine: 'press', own: { id: 'own5' } });
  });

  test('what was chosen goes before the order; one that makes no such cut, or is not here, counts for nothing', () => {
    expect(byKey('rabbet', said, { edgeBy: 'own1' })).toBe('rabbet~yown1~h3d8');
    expect(byKey('rabbet', said, { edgeBy: 'usual' })).toBe('rabbet~h3d8');
    expect(byKey('lap', all, { shoulderBy: 'own3' })).toBe('lap~yown3~c2d1~h3d8');
    expect(byKey('lap', all, { shoulderBy: 'own2' })).toBe('lap~c2d1~h3d8');
    expect(byKey('rabbet', all, { edgeBy: 'own9' })).toBe('rabbet~h3d8');
  });

  test('a through groove goes to a router table where that is said of its part, and by no order', () => {
    const first: Shop = { ...said, order: ['own4', 'own2', 'fence'] };
    expect(byKey('along', first)).toBe('fence~yown2~c1d4~h1d4');
    // what was said of the stopped grooves of a part says nothing of these
    expect(byKey('along', all, { edgeBy: 'own4' })).toBe('fence~c1d4~h1d4');
    const op = made('along', all, { alongBy: 'own4', edgeBy: 'own2' });
    expect(op.setup.build).toBe('tablerouter~yown4~c1d4~h1d4');
    expect(op.setup).toMatchObject({ sets: 'bit-fence', on: { at: 'edge', named: 'front' } });
    // its fence is at the far side; what leads is the end that led
    const there = made('along', all).placing;
    expect(op.placing).toEqual({
      face: there?.face,
      onFence: there?.onFence,
      leads: there?.leads,
      fence: 'far',
    });
    expect(byKey('rabbet', all, { alongBy: 'own4' })).toBe('rabbet~h3d8');
    expect(byKey('along', all, { alongBy: 'own2', edgeBy: 'own2' })).toBe('fence~yown2~c1d4~h1d4');
    expect(byKey('along', all, { alongBy: 'own9' })).toBe('fence~c1d4~h1d4');
  });

  test('notches and laps go to a sliding saw where that is said, cut from above', () => {
    const shop: Shop = { ...all, own: [...(all.own ?? []), sliding] };
    const first: Shop = { ...shop, order: ['own7', 'sliding', 'own3', 'sled'] };
    expect([byKey('lap', first), byKey('notch', first)]).toEqual([
      'lap~yown3~c2d1~h3d8',
      'notch~yown3~c3d1~h9d4',
    ]);
    expect(byKey('lap', shop, { shoulderBy: 'own7' })).toBe('slidinglap~yown7~c2d1~h3d8');
    expect(byKey('notch', shop, { shoulderBy: 'own7' })).toBe('slidingnotch~yown7~c3d1~h9d4');
    expect(byKey('lap', shop, { shoulderBy: 'sliding' })).toBe('slidinglap~c2d1~h3d8');
    expect(made('lap', shop, { shoulderBy: 'own7' }).placing).toMatchObject({
      face: { named: 'show', lies: 'up' },
      fence: 'far',
    });
    expect(made('notch', shop, { shoulderBy: 'own7' }).placing).toMatchObject({
      stands: { at: 'edge', named: 'front' },
      fence: 'far',
    });
  });

  test('a row the press of the shop is short of goes to one of its own that reaches it, else into a template', () => {
    const usual = { pressThroat: l('7') };
    expect(made('bore', { ...all, ...usual }).setup).toMatchObject({ machine: 'press', own: { id: 'own5' } });
    const short = machine('press', 'own6', { ...press.figures, pressThroat: l('12') });
    const none = made('bore', { ...usual, own: [short] });
    expect(none.setup.machine).toBe('template');
    // 15 1/2 − 7 of the usual one; 15 1/2 − 12 of the other
    expect(none.which).toMatchObject({
      short: l('8 1/2'),
      passed: [{ own: { id: 'own6' }, lacks: [{ field: 'pressThroat', by: l('3 1/2') }] }],
    });
    expect(made('bore', { ...all, ...usual }, { boreBy: 'usual' }).setup.machine).toBe('template');
    // chosen, it stays there and says what it lacks
    expect(made('bore', { ...usual, own: [short] }, { boreBy: 'own6' }).setup.own?.id).toBe('own6');
  });
});

const size = fc.integer({ min: 1, max: 8 * 40 }).map((n) => inches(BigInt(n), 8n));
const figures = <K extends string>(...fields: readonly K[]): fc.Arbitrary<Partial<Record<K, Length>>> =>
  fc.dictionary(fc.constantFrom(...fields), size) as fc.Arbitrary<Partial<Record<K, Length>>>;

test('any order, any figures: a joint is on a machine of the shop’s own only where that lacks nothing and asks nothing', () =>
  fc.assert(
    fc.property(
      figures('capacity', 'tableHeight', 'sledCross', 'stopReach'),
      figures('capacity', 'bit', 'routerReach'),
      figures('pressThroat', 'pressStroke', 'pressBit'),
      fc.shuffledSubarray(['own1', 'own2', 'own3', 'own4', 'fence', 'sled', 'press'] as const, {
        minLength: 1,
      }),
      (cuts, bits, holes, order) => {
        const own = [
          machine('fence', 'own1', cuts),
          machine('sled', 'own2', cuts),
          machine('table', 'own3', bits),
          machine('press', 'own4', holes),
        ];
        const shop: Shop = { own, order };
        for (const of of [side, withStopped])
          for (const what of ['rabbet', 'along', 'lap', 'notch', 'bore'] as const) {
            const op = made(what, shop, {}, of);
            const need = needOf(op, of);
            const on = own.find(({ id }) => id === op.setup.own?.id);
            if (need && on) expect(isClear(lacksOf(need, on, shop))).toBe(true);
          }
      },
    ),
    { numRuns: runs(60) },
  ));
