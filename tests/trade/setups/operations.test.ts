import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { newBoard } from '../../../src/job/board-of';
import { equals, type Length, zero } from '../../../src/length/length';
import { byHand as boardByHand } from '../../../src/trade/carcass/by-hand';
import type { Case } from '../../../src/trade/carcass/case';
import { newCase } from '../../../src/trade/carcass/case';
import { partsOf } from '../../../src/trade/carcass/parts';
import { copiesOf, cutOp } from '../../../src/trade/grooves/copies';
import { layOut } from '../../../src/trade/grooves/lay-out';
import { settingsFor } from '../../../src/trade/grooves/settings';
import type { Gauge } from '../../../src/trade/machines/gauges';
import { isTested, type MachineId, machineAt } from '../../../src/trade/machines/machines';
import type { Shop } from '../../../src/trade/machines/shop';
import type { Operation } from '../../../src/trade/setups/operation';
import { type HandWork, operationsOf } from '../../../src/trade/setups/operations';
import { orderSetups } from '../../../src/trade/setups/order/order';
import { setupOf } from '../../../src/trade/setups/setup';
import type { Seat } from '../../../src/trade/setups/which';
import { l, w } from '../../length/write-figures';
import { runs } from '../../runs';
import { framedCase, part, plainCase, sheets, work } from '../carcass/sample-case';

type Over = {
  readonly b?: string;
  readonly hand?: readonly HandWork[];
  readonly recuts?: Readonly<Record<string, Readonly<Record<string, number>>>>;
};

function made(c: Case, { b = '23/32', hand = [], recuts = {} }: Over = {}) {
  const worked = work(c, sheets(b));
  const operations = operationsOf(
    { parts: worked.parts, cases: [c], hand, recuts: (id) => recuts[id] ?? {} },
    { shop: {}, tape: '1/32' },
  );
  return { worked, operations, byId: new Map(operations.map((op) => [op.id, op])) };
}

/** Everything an operation waits for, near and far. */
function waitsFor(id: string, byId: ReadonlyMap<string, Operation>): ReadonlySet<string> {
  const found = new Set<string>();
  const open = [id];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    for (const before of byId.get(next)?.after ?? []) {
      if (found.has(before)) continue;
      found.add(before);
      open.push(before);
    }
  }
  return found;
}

const ordered = (operations: readonly Operation[]) =>
  orderSetups(
    operations.map((op) => ({ id: op.id, build: op.setup.build, setup: op.setup.key, after: op.after })),
  );

const orderOf = (operations: readonly Operation[]) => {
  const order = ordered(operations);
  if (!order.ok) throw new Error(order.error.ring.join(' '));
  return order.value;
};

const dryFit = 'cut/c1~bench/dryfit/1';
const glueUp = 'cut/c1~bench/glueup/1';

/** Two partitions with two cleats let into their backs. */
const cleated: Case = {
  ...plainCase,
  partitions: 2,
  cleats: 2,
  stocks: { ...plainCase.stocks, cleat: 'a' },
};

describe('operationsOf: order on a piece', () => {
  const rank: Partial<Record<Operation['what'], number>> = {
    rip: 0,
    length: 1,
    mitre: 1,
    groove: 2,
    rabbet: 3,
    notch: 3,
    lap: 3,
  };

  test.each([
    ['the sample case', plainCase],
    ['the sample case with a face frame', framedCase],
    ['two partitions and cleats', cleated],
  ])('%s: rip before length before grooves before rabbets and notches, in the order laid', (_, c) => {
    const { operations, byId } = made(c);
    const place = new Map(
      orderOf(operations)
        .runs.flatMap((run) => run.steps)
        .map((id, k) => [id, k]),
    );
    expect(place.size).toBe(operations.length);
    const pieces = new Map<string, Operation[]>();
    for (const op of operations) {
      if (rank[op.what] === undefined) continue;
      const copy = /^[AB]/.test(op.copy) ? '1' : op.copy;
      pieces.set(`${op.part} ${copy}`, [...(pieces.get(`${op.part} ${copy}`) ?? []), op]);
    }
    for (const ops of pieces.values()) {
      expect(ops.filter((op) => op.what === 'rip')).toHaveLength(1);
      expect(ops.filter((op) => op.what === 'length' || op.what === 'mitre')).toHaveLength(1);
      for (const first of ops)
        for (const later of ops) {
          if ((rank[first.what] ?? 0) >= (rank[later.what] ?? 0)) continue;
          expect(waitsFor(later.id, byId), `${later.id} waits for ${first.id}`).toContain(first.id);
          expect(place.get(first.id)).toBeLessThan(place.get(later.id) ?? -1);
        }
    }
  });

  test('no operation waits for itself, and whatever is waited for is there', () => {
    const { operations, byId } = made(cleated);
    expect(byId.size).toBe(operations.length);
    for (const op of operations) {
      expect(waitsFor(op.id, byId).has(op.id)).toBe(false);
      expect(op.after.filter((id) => !byId.has(id))).toEqual([]);
    }
  });

  test('rips stand widest first', () => {
    const widths = made(framedCase)
      .operations.filter((op) => op.what === 'rip')
      .map((op) => op.figure.valueOf());
    expect(widths).toEqual([...widths].sort((a, b) => b - a));
  });

  test('rabbets of a side follow every groove of that side alone', () => {
    const { operations, byId } = made(plainCase);
    const rabbet = operations.find((op) => op.part === 'c1~right' && op.what === 'rabbet');
    const grooves = [...waitsFor(rabbet?.id ?? '', byId)].flatMap((id) => byId.get(id) ?? []);
    expect(new Set(grooves.filter((op) => op.what === 'groove').map((op) => op.part))).toEqual(
      new Set(['c1~right']),
    );
  });
});

describe('operationsOf: test cuts', () => {
  const { operations, byId } = made(cleated);
  const tests = operations.filter((op) => op.what === 'test');

  test('each stack build has one, and its first cut waits for it', () => {
    const builds = new Set(
      operations.filter((op) => isTested(machineAt(op.setup.machine))).map((op) => op.setup.build),
    );
    expect(builds.size).toBeGreaterThan(2);
    expect(new Set(tests.map((op) => op.setup.build))).toEqual(builds);
    expect(tests).toHaveLength(builds.size);
    const sequence = orderOf(operations).runs.flatMap((run) => run.steps);
    for (const build of builds) {
      const first = sequence.find((id) => byId.get(id)?.setup.build === build);
      expect(byId.get(first ?? '')?.what).toBe('test');
    }
  });

  test('every cut of a stack names its own test, and rips and lengths name none', () => {
    for (const op of operations.filter((x) => x.what !== 'test')) {
      const named = op.after.flatMap((id) => byId.get(id) ?? []).filter((x) => x.what === 'test');
      expect(named.map((x) => x.setup.build)).toEqual(
        isTested(machineAt(op.setup.machine)) ? [op.setup.build] : [],
      );
    }
  });

  test('one is made in scrap of the sheet its stack is fitted to, and wants it measured; tray stacks want none', () => {
    const of = (id: string) => tests.find((op) => byId.get(id)?.setup.build === op.setup.build)?.fits;
    expect(of('cut/c1~left/bottom~only/1')).toBe('b');
    expect(of('cut/c1~left/trays~1~only/1')).toBeUndefined();
  });

  test('a stack of another width asks for another test', () => {
    const test32 = made(plainCase).operations.filter((op) => op.what === 'test');
    const test18 = made(plainCase, { b: '18 mm' }).operations.filter((op) => op.what === 'test');
    const wide = (ops: readonly Operation[]) => ops.find((op) => op.setup.machine === 'stop')?.id;
    expect(wide(test18)).not.toBe(wide(test32));
  });
});

describe('operationsOf: the dry-fit', () => {
  test('it waits for every cut in the carcass', () => {
    const { operations, worked, byId } = made(cleated);
    const carcass = new Set(worked.parts.filter((p) => p.stage === 'carcass').map((p) => p.id));
    const before = waitsFor(dryFit, byId);
    const cuts = operations.filter((op) => carcass.has(op.part));
    expect(cuts.length).toBeGreaterThan(60);
    expect(cuts.filter((op) => !before.has(op.id))).toEqual([]);
  });

  test('what is fitted to an opening waits for it with its last cut; no rip does but that of the back', () => {
    const { operations, byId } = made({
      ...framedCase,
      hasToe: true,
      inside: [...framedCase.inside, { id: 'loose1', kind: 'loose', bay: 2, count: 2 }],
    });
    const waiting = operations.filter(
      (op) => !op.part.endsWith('~bench') && waitsFor(op.id, byId).has(dryFit),
    );
    const fitted = ['trays', 'loose1', 'back', 'stile', 'middle', 'railtop', 'railbottom', 'toe'];
    expect(new Set(waiting.map((op) => op.part))).toEqual(new Set(fitted.map((role) => `c1~${role}`)));
    expect(waiting.filter((op) => op.what === 'rip').map((op) => op.part)).toEqual(['c1~back']);
    const last = waiting.filter((op) => op.what === 'length' || op.what === 'mitre');
    expect(new Set(last.map((op) => op.part)).size).toBe(fitted.length);
  });

  test('a fixed shelf stands in its dadoes: the dry-fit waits for it', () => {
    const { byId } = made(plainCase);
    expect(waitsFor(dryFit, byId)).toContain('cut/c1~fixed1/rip/1');
    expect(waitsFor(dryFit, byId)).toContain('cut/c1~fixed1/len/1');
  });

  test('what is fitted to no opening neither waits for it nor keeps it waiting', () => {
    const { operations, byId } = made({
      ...plainCase,
      hasLooseTop: true,
      hasBase: true,
      hasEdging: true,
      stocks: { ...plainCase.stocks, base: 'a', edging: 'a' },
    });
    const free = operations.filter((op) => /~(loose|baserail|basecross|edge\w+)$/.test(op.part));
    expect(new Set(free.map((op) => op.part)).size).toBeGreaterThan(3);
    for (const op of free) {
      expect(waitsFor(op.id, byId).has(dryFit), op.id).toBe(false);
      expect(waitsFor(dryFit, byId).has(op.id), op.id).toBe(false);
    }
  });

  test('fixed shelves and the back are cut before the inside is finished and glued up, trays need not be', () => {
    const { byId } = made(plainCase);
    const before = waitsFor(glueUp, byId);
    expect(before).toContain('cut/c1~fixed1/len/1');
    expect(before).toContain('cut/c1~bench/finishinside/1');
    expect(before).not.toContain('cut/c1~trays/len/1');
    expect(before).toContain('cut/c1~back/len/1');
  });

  test('the frame goes on after glue-up and after each of its own strips', () => {
    const { operations, byId } = made(framedCase);
    const before = waitsFor('cut/c1~bench/frameon/1', byId);
    expect(before).toContain(glueUp);
    const strips = operations.filter((op) => /stile|rail|middle/.test(op.part));
    expect(strips).toHaveLength(10);
    expect(strips.filter((op) => !before.has(op.id))).toEqual([]);
  });

  test('a case without a frame has no such step', () => {
    expect(made(plainCase).byId.has('cut/c1~bench/frameon/1')).toBe(false);
  });
});

describe('operationsOf: notches', () => {
  test('none of them before every partition is to length', () => {
    const { operations, byId } = made(cleated);
    const notches = operations.filter((op) => op.what === 'notch');
    expect(notches).toHaveLength(4);
    for (const notch of notches)
      for (const k of [1, 2]) {
        expect(waitsFor(notch.id, byId)).toContain(`cut/c1~partition${k}/len/1`);
      }
  });

  test('a notch of one partition waits for no other notch', () => {
    const { operations, byId } = made(cleated);
    for (const notch of operations.filter((op) => op.what === 'notch'))
      expect([...waitsFor(notch.id, byId)].filter((id) => byId.get(id)?.what === 'notch')).toEqual([]);
  });

  test('a recut partition is notched with the others again to length', () => {
    const { operations, byId } = made(cleated, { recuts: { 'c1~partition2': { '1': 1 } } });
    const again = operations.filter((op) => op.what === 'notch' && op.part === 'c1~partition2');
    expect(again.map((op) => op.copy)).toEqual(['1~2', '1~2']);
    for (const notch of again) {
      expect(waitsFor(notch.id, byId)).toContain('cut/c1~partition1/len/1');
      expect(waitsFor(notch.id, byId)).toContain('cut/c1~partition2/len/1~2');
    }
  });
});

describe('operationsOf: ids', () => {
  const ids = (operations: readonly Operation[], wanted = (_: Operation) => true) =>
    operations
      .filter((op) => op.what !== 'test' && wanted(op))
      .map((op) => op.id)
      .sort();

  test.each(['18 mm', '11/16', '3/4', '0.7031'])(
    'sheet B at %s gives the same ids as at 23/32, at other figures',
    (b) => {
      const [planned, read] = [made(plainCase).operations, made(plainCase, { b }).operations];
      // how many trays go in is a question of size
      const fixed = (op: Operation) => !op.part.endsWith('~trays') && !/trays~\d/.test(op.id);
      expect(ids(read, fixed)).toEqual(ids(planned, fixed));
      const was = new Map(planned.map((op) => [op.id, op.figure]));
      const moved = read.filter((op) => op.what !== 'test' && !equals(was.get(op.id) ?? zero, op.figure));
      expect(moved.length).toBeGreaterThan(0);
    },
  );

  test('another width, depth, joint and fit give the same ids too', () => {
    const other = { ...plainCase, width: l('40'), depth: l('16'), dado: l('1/4'), fit: l('1/128') };
    expect(ids(made(other).operations)).toEqual(ids(made(plainCase).operations));
  });

  test('every id is what a row of the log takes for an operation', () => {
    for (const c of [cleated, framedCase])
      for (const op of made(c, { b: '18 mm' }).operations)
        expect(op.id).toMatch(/^cut(\/[A-Za-z0-9~]{1,60}){3}$/);
  });

  test.each(['left', 'right', 'partition1', 'bottom', 'top'])(
    'grooves of the %s carry the ids that Marks and Saw tick',
    (role) => {
      const { worked, operations } = made(plainCase);
      const { board } = part(worked, role);
      if (!board) throw new Error('no board');
      const { settings } = settingsFor(layOut(board), { board, shop: {}, tape: '1/32' });
      const ticked = settings.flatMap((s) =>
        copiesOf(board, s.groove).map((copy) => cutOp(board.id, s.id, copy.id)),
      );
      const grooves = operations.filter((op) => op.part === board.id && op.what === 'groove');
      expect(ticked.length).toBeGreaterThan(0);
      expect(grooves.map((op) => op.id)).toEqual(ticked);
    },
  );

  test('so do those of a partition cut again, on both faces', () => {
    const c: Case = {
      ...plainCase,
      inside: [...plainCase.inside, { id: 'low', kind: 'fixed', bay: 1, at: l('1') }],
    };
    const recuts = { '1': 1 };
    const { worked, operations } = made(c, { recuts: { 'c1~partition1': recuts } });
    const found = part(worked, 'partition1').board;
    if (!found) throw new Error('no board');
    const board = { ...found, recuts };
    const { settings } = settingsFor(layOut(board), { board, shop: {}, tape: '1/32' });
    const ticked = settings.flatMap((s) =>
      copiesOf(board, s.groove).map((copy) => cutOp(board.id, s.id, copy.id)),
    );
    const grooves = operations.filter((op) => op.part === board.id && op.what === 'groove');
    expect(grooves.map((op) => op.id)).toEqual(ticked);
    expect(new Set(grooves.map((op) => op.copy))).toEqual(new Set(['A~2', 'B~2']));
  });

  test('trap 28: either side, and either face of a partition, has a tick of its own', () => {
    const { operations } = made(plainCase);
    const of = (id: string) =>
      operations.filter((op) => op.part === id && op.what === 'groove').map((op) => op.id);
    expect(of('c1~left').filter((id) => of('c1~right').includes(id))).toEqual([]);
    expect(new Set(of('c1~partition1').map((id) => id.split('/')[3]))).toEqual(new Set(['A', 'B']));
  });
});

describe('operationsOf: work added by hand', () => {
  const byHand = (id: string, over: Partial<HandWork> = {}): HandWork => ({
    id,
    part: 'c1~left',
    name: `Work ${id}`,
    machine: 'hand',
    ...over,
  });

  test('two that wait for each other are refused, and the ring is named', () => {
    const { operations } = made(plainCase, {
      hand: [byHand('x1', { after: 'x2' }), byHand('x2', { after: 'x1' })],
    });
    const order = ordered(operations);
    expect(order.ok).toBe(false);
    if (order.ok) return;
    expect(order.error.code).toBe('ring');
    expect([...order.error.ring].sort()).toEqual(['cut/c1~left/h~x1/1', 'cut/c1~left/h~x2/1']);
  });

  test('one of the carcass that waits for a part cut after the dry-fit is refused: the ring names the dry-fit', () => {
    const { operations } = made(plainCase, {
      hand: [byHand('x1', { after: 'x2' }), byHand('x2', { part: 'c1~back', after: 'rip' })],
    });
    const order = ordered(operations);
    if (order.ok) throw new Error('no ring');
    expect([...order.error.ring].sort()).toEqual(
      [dryFit, 'cut/c1~left/h~x1/1', 'cut/c1~back/h~x2/1', 'cut/c1~back/rip/1'].sort(),
    );
  });

  test('in a row they are no ring, and the second follows the first', () => {
    const { operations, byId } = made(plainCase, {
      hand: [byHand('x1', { after: 'len' }), byHand('x2', { after: 'x1' })],
    });
    expect(ordered(operations).ok).toBe(true);
    expect(byId.get('cut/c1~left/h~x2/1')?.after).toEqual(['cut/c1~left/h~x1/1']);
    expect(byId.get('cut/c1~left/h~x1/1')?.after).toEqual(['cut/c1~left/len/1']);
  });

  test('with no word on what comes first, each piece of it follows the length of that piece', () => {
    const hand = [byHand('x1'), byHand('x2', { part: 'c1~trays' })];
    const { operations, byId } = made(plainCase, { hand });
    expect(byId.get('cut/c1~left/h~x1/1')?.after).toEqual(['cut/c1~left/len/1']);
    for (const op of operations.filter((x) => x.part === 'c1~trays' && x.what === 'hand'))
      expect(op.after).toEqual([`cut/c1~trays/len/${op.copy}`]);
    expect(ordered(operations).ok).toBe(true);
  });

  test('the dry-fit waits for one on the carcass; one on the back waits for the dry-fit', () => {
    const { byId } = made(plainCase, {
      hand: [byHand('x1'), byHand('x2', { part: 'c1~back' }), byHand('x3', { part: 'c1~fixed1' })],
    });
    expect(waitsFor(dryFit, byId)).toContain('cut/c1~left/h~x1/1');
    expect(waitsFor(dryFit, byId)).toContain('cut/c1~fixed1/h~x3/1');
    expect(waitsFor(dryFit, byId)).not.toContain('cut/c1~back/h~x2/1');
    expect(waitsFor('cut/c1~back/h~x2/1', byId)).toContain(dryFit);
  });

  test('on a recut it follows the length of the recut', () => {
    const { byId } = made(plainCase, { hand: [byHand('x1')], recuts: { 'c1~left': { '1': 1 } } });
    expect(byId.get('cut/c1~left/h~x1/1~2')?.after).toEqual(['cut/c1~left/len/1~2']);
    expect(byId.has('cut/c1~left/h~x1/1')).toBe(false);
  });

  test('two of one id are one tick: the first stands, and the order is worked out', () => {
    const { operations } = made(plainCase, { hand: [byHand('x1', { name: 'Drill' }), byHand('x1')] });
    expect(operations.filter((op) => op.what === 'hand').map((op) => op.which)).toEqual([
      { is: 'own', said: 'Drill' },
    ]);
    expect(ordered(operations).ok).toBe(true);
  });

  test('cutter alone, height alone, and long fractions are setups of their own, and the order is worked out', () => {
    const fine = l('1/2').add(l('1').div(10n ** 12n)) as Length;
    const { operations } = made(plainCase, {
      hand: [
        byHand('x1', { machine: 'stop', cutter: l('1/2'), figure: l('3') }),
        byHand('x2', { machine: 'stop', height: l('1/2'), figure: l('3') }),
        byHand('x3', { machine: 'stop', cutter: fine, height: fine, figure: l('3') }),
        byHand('x4', { machine: 'stop', cutter: fine, height: fine, figure: l('4') }),
      ],
    });
    const own = operations.filter((op) => op.what === 'hand');
    expect(new Set(own.map((op) => op.setup.key)).size).toBe(4);
    expect(new Set(own.map((op) => op.setup.build)).size).toBe(3);
    expect(ordered(operations).ok).toBe(true);
  });

  test('after one on a part of several copies, it waits for every copy', () => {
    const { operations, byId } = made(plainCase, {
      hand: [
        byHand('x1', { part: 'c1~fixed1', after: 'x2' }),
        byHand('x2', { part: 'c1~trays', after: 'len' }),
      ],
    });
    const trays = operations.filter((op) => op.part === 'c1~trays' && op.what === 'hand');
    expect(byId.get('cut/c1~fixed1/h~x1/1')?.after).toEqual(trays.map((op) => op.id));
    expect(trays.length).toBeGreaterThan(20);
  });

  test('a figure is set as said, to the tape', () => {
    const { byId } = made(plainCase, { hand: [byHand('x1', { machine: 'stop', figure: l('3.01') })] });
    const op = byId.get('cut/c1~left/h~x1/1');
    expect(op?.setup.sets).toBe('as-said');
    expect(w(op?.figure ?? zero)).toBe('3');
  });

  test('one on a part that is not there makes no operation', () => {
    const hand = [byHand('x1', { part: 'c1~gone' })];
    expect(made(plainCase, { hand }).operations).toEqual(made(plainCase).operations);
  });
});

describe('Example 1 of setups, as the setups of real operations', () => {
  const { operations, byId } = made({ ...plainCase, inside: [] });
  const order = orderOf(operations);
  /** Runs of one machine in the carcass, before the dry-fit. */
  const at = (machine: string) =>
    order.runs.filter(({ steps }) => {
      const first = byId.get(steps[0] ?? '');
      return first?.setup.machine === machine && first.part !== 'c1~back';
    });
  const figures = (machine: string) =>
    at(machine).map(({ steps }) => w(byId.get(steps[0] ?? '')?.figure ?? zero));

  test('2 rips: the sides at 17 1/2, bottom, top and partition at 17 7/32', () => {
    expect(at('rip').map((run) => run.steps.map((id) => id.split('/')[1]))).toEqual([
      ['c1~left', 'c1~right'],
      ['c1~bottom', 'c1~top', 'c1~partition1'],
    ]);
    expect(figures('rip')).toEqual(['17 1/2', '17 7/32']);
  });

  test('4 lengths: both sides at one, bottom, top and partition each at its own', () => {
    expect(at('crosscut').map(({ steps }) => steps.length)).toEqual([2, 1, 1, 1]);
    expect(figures('crosscut')).toEqual(['64 1/4', '37 1/2', '37 5/8', '59 1/4']);
  });

  test('1 stack for the dadoes of sides, bottom and top, built once; then 1 sacrificial fence: 8 in all', () => {
    const place = (machine: string) => at(machine).map((run) => order.runs.indexOf(run));
    const [stack, fence] = [place('stop'), place('rabbet')];
    for (const places of [stack, fence])
      expect((places.at(-1) ?? 0) - (places[0] ?? 0)).toBe(places.length - 1);
    expect(fence[0]).toBeGreaterThan(stack[0] ?? 0);
    const builds = new Set([...at('stop'), ...at('rabbet')].map((run) => run.build));
    expect(at('rip').length + at('crosscut').length + builds.size).toBe(8);
    expect(order.proved).toBe(true);
    const dadoed = at('stop').flatMap(({ steps }) => steps.map((id) => id.split('/')[1]));
    expect(new Set(dadoed)).toEqual(new Set(['test', 'c1~left', 'c1~right', 'c1~bottom', 'c1~top']));
  });

  test('shelves and trays as wide as the bottom are ripped with it: no fence stands twice', () => {
    const shelved = made({
      ...framedCase,
      inside: [...framedCase.inside, { id: 'loose1', kind: 'loose', bay: 2, count: 1 }],
    });
    const fence = shelved.byId.get('cut/c1~bottom/rip/1')?.setup.key;
    const runs = orderOf(shelved.operations).runs;
    const atFence = runs.filter((run) => run.setup === fence);
    expect(atFence).toHaveLength(1);
    const ripped = new Set(atFence.flatMap(({ steps }) => steps.map((id) => id.split('/')[1])));
    const wide = ['bottom', 'top', 'partition1', 'fixed1', 'loose1', 'trays'];
    expect(ripped).toEqual(new Set(wide.map((role) => `c1~${role}`)));
    const rips = runs.filter(({ steps }) => shelved.byId.get(steps[0] ?? '')?.what === 'rip');
    expect(new Set(rips.map((run) => run.setup)).size).toBe(rips.length);
  });
});

test('a case without parts has no operation, not even at the bench', () => {
  expect(
    operationsOf(
      { parts: [], cases: [newCase('c1')], hand: [], recuts: () => ({}) },
      { shop: {}, tape: '1/32' },
    ),
  ).toEqual([]);
});

test('grooves wait for their stock by its id', () => {
  const { operations } = made(plainCase);
  const fits = (id: string, seat: Seat) =>
    operations.find(
      ({ part, which }) => part === id && which?.is === 'groove' && isDeepStrictEqual(which.seat, seat),
    )?.fits;
  expect(fits('c1~left', { in: 'bottom' })).toBe('b');
  expect(fits('c1~top', { in: 'partition', no: '1' })).toBe('b');
  expect(fits('c1~left', { in: 'run', no: '1' })).toBeUndefined();
});

const own = (id: string) => ({ at: 'own', id }) as const;

describe('keys of setups', () => {
  const on = { at: 'end', named: 'bottom' } as const;
  const stop = (cutter: string, height: string) =>
    setupOf({
      machine: 'stop',
      cutter: l(cutter),
      height: l(height),
      on,
      sets: 'stop-to-near-teeth',
      figure: { value: l('3'), rest: zero },
    });

  test.each([
    [stop('1', '63/64'), stop('1/16', '3/64')],
    [
      setupOf({ machine: 'stop', cutter: l('1/2'), on: own('a') }),
      setupOf({ machine: 'stop', height: l('1/2'), on: own('a') }),
    ],
    [setupOf({ machine: 'hand', on: own('Сверлить') }), setupOf({ machine: 'hand', on: own('Шлифовать') })],
    [
      setupOf({ machine: 'bench', on: own(`${'x'.repeat(70)}1`) }),
      setupOf({ machine: 'bench', on: own(`${'x'.repeat(70)}2`) }),
    ],
  ])('two setups have two keys and two builds: %#', (a, b) => {
    expect(a.key).not.toBe(b.key);
    expect(a.build).not.toBe(b.build);
    for (const { key, build } of [a, b]) {
      expect(key).toMatch(/^[A-Za-z0-9~]{1,60}$/);
      expect(build).toMatch(/^[A-Za-z0-9~]{1,60}$/);
    }
  });

  const words = [
    'true edge',
    'squared end',
    'bottom end',
    'top end',
    'left end',
    'other end',
    'c1 dry-fit',
    'c1 glue-up',
  ];
  const other = ['Сверлить', 'Шлифовать', '左端', '', 'a'.repeat(80), `${'a'.repeat(80)}b`];
  const machine = fc.constantFrom<MachineId>('rip', 'crosscut', 'stop', 'fence', 'saw', 'hand', 'bench');
  const sets = fc.constantFrom<Gauge>('rip-fence', 'length-stop', 'stop-to-near-teeth', 'as-said');
  const size = fc
    .tuple(fc.bigInt(1n, 10n ** 7n), fc.constantFrom(1n, 64n, 800n, 127n, 12_700n, 10n ** 12n))
    .map(([n, d]) => l('1').mul(n).div(d) as Length);
  const anySetup = fc.record({
    machine,
    cutter: fc.option(size, { nil: undefined }),
    height: fc.option(size, { nil: undefined }),
    set: fc.option(fc.tuple(sets, size), { nil: undefined }),
    on: fc.constantFrom(...[...words, ...other].map(own)),
  });

  test('whatever differs makes another key, what is alike makes the same; a setup is of one build', () => {
    const make = ({ set, ...rest }: typeof anySetup extends fc.Arbitrary<infer T> ? T : never) =>
      setupOf({ ...rest, ...(set ? { sets: set[0], figure: { value: set[1], rest: zero } } : {}) });
    const said = (x: { readonly [name: string]: unknown }) =>
      JSON.stringify(x, (_, v: unknown) => (typeof v === 'bigint' ? `${v}` : v));
    fc.assert(
      fc.property(fc.array(anySetup, { maxLength: 12 }), (all) => {
        const distinct = [...new Map(all.map((x) => [said(x), x])).values()];
        const setups = distinct.map(make);
        expect(new Set(setups.map((x) => x.key)).size).toBe(distinct.length);
        expect(distinct.map((x) => make({ ...x }).key)).toEqual(setups.map((x) => x.key));
        const steps = setups.map(({ key, build }, k) => ({ id: `${k}`, setup: key, build, after: [] }));
        expect(orderSetups(steps).ok).toBe(true);
        for (const { key, build } of setups)
          for (const name of [key, build]) expect(name).toMatch(/^[A-Za-z0-9~]{1,60}$/);
      }),
      { numRuns: runs(200) },
    );
  });

  test('height of the cutter alone, or its width alone, is another build; the figure alone is not', () => {
    expect(stop('1/2', '1/4').build).not.toBe(stop('1/2', '3/8').build);
    expect(stop('1/2', '1/4').build).not.toBe(stop('3/8', '1/4').build);
    const figure = { value: l('4'), rest: zero };
    const moved = setupOf({ ...stop('1/2', '1/4'), figure });
    expect(moved.build).toBe(stop('1/2', '1/4').build);
    expect(moved.key).not.toBe(stop('1/2', '1/4').key);
  });
});

describe('grooves that cannot be set', () => {
  const sawn = (shop: Shop = {}) => {
    const worked = partsOf(plainCase, { stuff: sheets(), tape: '1/32', cutting: () => ({ machine: 'saw' }) });
    if (!worked.ok) throw new Error('no parts');
    const operations = operationsOf(
      { parts: worked.value.parts, cases: [plainCase], hand: [], recuts: () => ({}) },
      { shop, tape: '1/32' },
    );
    return { operations, byId: new Map(operations.map((op) => [op.id, op])) };
  };
  const known: Shop = { kerf: l('1/8'), shoeKeep: l('4 1/2'), shoeWaste: l('1 1/2') };
  const roles = ['left', 'right', 'bottom', 'top', 'partition1'];

  test('a saw without its kerf leaves one on each board, blocked and not forgotten', () => {
    const { operations } = sawn();
    const waiting = operations.filter((op) => op.cannot);
    expect(waiting.map((op) => op.id).sort()).toEqual(roles.map((role) => `cut/c1~${role}/grooves/1`).sort());
    expect(operations.filter((op) => op.what === 'groove')).toEqual(waiting);
    expect(ordered(operations).ok).toBe(true);
  });

  test('they come after the length and before the rabbets, and the dry-fit waits for all of them', () => {
    const { operations, byId } = sawn();
    for (const role of roles) expect(waitsFor(dryFit, byId)).toContain(`cut/c1~${role}/grooves/1`);
    expect(waitsFor('cut/c1~left/grooves/1', byId)).toContain('cut/c1~left/len/1');
    const rabbets = operations.filter((op) => op.part === 'c1~left' && op.what === 'rabbet');
    expect(rabbets.length).toBeGreaterThan(0);
    for (const op of rabbets) expect(op.after).toContain('cut/c1~left/grooves/1');
  });

  test('the shoe without the kerf, or the kerf without the shoe, leaves them all the same', () => {
    for (const shop of [{ ...known, kerf: undefined }, { kerf: known.kerf }])
      expect(sawn(shop).operations.filter((op) => op.cannot)).toHaveLength(roles.length);
  });

  test('with kerf and shoe the same saw cuts them all, and none is left', () => {
    const { operations } = sawn(known);
    expect(operations.filter((op) => op.cannot)).toEqual([]);
    expect(operations.filter((op) => op.what === 'groove').length).toBeGreaterThan(10);
  });
});

describe('a board laid out by hand', () => {
  const byBoard = (over: Partial<ReturnType<typeof newBoard>>) =>
    boardByHand({ ...newBoard('b1'), length: l('20'), across: l('5'), ...over }, { tape: '1/32' });

  test('a pair is checked against itself; one board, so many alike and a partition against none', () => {
    expect(byBoard({ made: 'pair' }).mates).toEqual(['b1']);
    expect(byBoard({ made: 'alike', copies: 3 }).mates).toEqual([]);
    expect(byBoard({ made: 'partition' }).mates).toEqual([]);
  });

  test('each piece is ripped and cut to length; with no size nothing of it is cut', () => {
    const cuts = (over: Partial<ReturnType<typeof newBoard>>) =>
      operationsOf(
        { parts: [byBoard(over)], cases: [], hand: [], recuts: () => ({}) },
        { shop: {}, tape: '1/32' },
      ).map((op) => op.id);
    expect(cuts({ made: 'pair' })).toEqual([
      'cut/b1/rip/left',
      'cut/b1/rip/right',
      'cut/b1/len/left',
      'cut/b1/len/right',
    ]);
    expect(cuts({ length: undefined })).toEqual(['cut/b1/rip/1']);
    expect(cuts({ length: undefined, across: undefined })).toEqual([]);
  });

  test('a wide groove has its number in Marks: what stands in it was never said', () => {
    const wide = { id: 'w1', face: 'A', near: l('9'), width: l('3/4'), depth: l('1/4') } as const;
    const [groove] = operationsOf(
      { parts: [byBoard({ wides: [wide] })], cases: [], hand: [], recuts: () => ({}) },
      { shop: {}, tape: '1/32' },
    ).filter((op) => op.what === 'groove');
    expect(groove?.which).toEqual({ is: 'groove', seat: { in: 'run', no: 'W1' } });
  });
});

test('work by hand whose id looks like a figure, or a cutter, is a setup of its own', () => {
  const byHand = setupOf({ machine: 'hand', on: own('a3d1') });
  const set = setupOf({
    machine: 'hand',
    on: { at: 'nothing' },
    sets: 'as-said',
    figure: { value: l('3'), rest: zero },
  });
  const cutter = setupOf({
    machine: 'hand',
    on: { at: 'nothing' },
    sets: 'as-said',
    figure: { value: l('3'), rest: zero },
    cutter: l('1/2'),
  });
  const named = setupOf({ machine: 'hand', on: own('c1d2') });
  expect(new Set([byHand, set, cutter, named].map((s) => s.key)).size).toBe(4);
  expect(byHand.build).not.toBe(set.build);
  expect(named.build).not.toBe(cutter.build);
});

test('a bit too wide for some of the grooves leaves those blocked, not forgotten', () => {
  const worked = partsOf(plainCase, {
    stuff: sheets(),
    tape: '1/32',
    cutting: () => ({ machine: 'router' }),
  });
  if (!worked.ok) throw new Error('no parts');
  const operations = operationsOf(
    { parts: worked.value.parts, cases: [{ id: 'c1', name: 'Case' }], hand: [], recuts: () => ({}) },
    { shop: { bit: l('1/2'), routerBase: l('2 31/32') }, tape: '1/32' },
  );
  const left = operations.filter((op) => op.part === 'c1~left' && op.what === 'groove');
  // the tray grooves are 13/32, the bottom's dado 23/32 and a glue line
  expect(left.some((op) => op.which?.is === 'groove' && op.which.seat.in === 'bottom')).toBe(true);
  expect(left.filter((op) => op.cannot).map((op) => op.id)).toEqual(['cut/c1~left/grooves/1']);
  expect(operations.find((op) => op.what === 'dry-fit')?.after).toContain('cut/c1~left/grooves/1');
});

test('every joint made to the thickness of another piece waits for that stock to be measured', () => {
  const { parts } = work({
    ...plainCase,
    cleats: 1,
    hasBase: true,
    crosses: 2,
    stocks: { ...plainCase.stocks, cleat: 't', base: 'a', cross: 'b' },
  });
  const operations = operationsOf(
    { parts, cases: [{ id: 'c1', name: 'Case' }], hand: [], recuts: () => ({}) },
    { shop: {}, tape: '1/32' },
  );
  const fits = (id: string) => operations.find((op) => op.id === id)?.fits;
  expect(fits('cut/c1~left/bottom~only/1')).toBe('b');
  expect(fits('cut/c1~left/rabbet~top/1')).toBe('b');
  expect(fits('cut/c1~left/rabbet~back/1')).toBe('k');
  expect(fits('cut/c1~partition1/notch~cleat1/1')).toBe('t');
  expect(fits('cut/c1~baserail/lap~lap1/1')).toBe('b');
  expect(fits('cut/c1~basecross/lap~lap1/1')).toBe('a');
});
