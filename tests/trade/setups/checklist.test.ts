import { describe, expect, test } from 'vitest';
import { add, equals, inches, isPositive, type Length, zero } from '../../../src/length/length';
import type { Case } from '../../../src/trade/carcass/case';
import { partsOf } from '../../../src/trade/carcass/parts';
import { noLongerFit, wouldChange } from '../../../src/trade/setups/changes';
import { blockedBy, cardsOf, type Doing, lastCall } from '../../../src/trade/setups/checklist';
import type { Operation } from '../../../src/trade/setups/operation';
import { operationsOf } from '../../../src/trade/setups/operations';
import { orderSetups } from '../../../src/trade/setups/order/order';
import { type Leftover, recutOf } from '../../../src/trade/setups/recut';
import { type Lies, roughPieces } from '../../../src/trade/sheets/pieces';
import type { RoughAt } from '../../../src/trade/sheets/rough';
import { l, w } from '../../length/write-figures';
import { framedCase, part, plainCase, sheet, sheets, work } from '../carcass/sample-case';

type Recuts = Readonly<Record<string, Readonly<Record<string, number>>>>;

function made(c: Case = plainCase, { b = '23/32', recuts = {} }: { b?: string; recuts?: Recuts } = {}) {
  const worked = work(c, sheets(b));
  const operations = operationsOf(
    { parts: worked.parts, cases: [c], hand: [], recuts: (id) => recuts[id] ?? {} },
    { shop: {}, tape: '1/32' },
  );
  return { worked, operations, byId: new Map(operations.map((op) => [op.id, op])) };
}

const one = (operations: readonly Operation[], wanted: string): Operation => {
  const found = operations.find((op) => op.id === wanted);
  if (!found) throw new Error(`no operation ${wanted}`);
  return found;
};

const doing = (over: Partial<Doing> = {}): Doing => ({
  done: () => false,
  let: () => false,
  measured: () => true,
  ...over,
});

const among =
  (...ids: readonly string[]) =>
  (id: string) =>
    ids.includes(id);

describe('blockedBy', () => {
  const { operations, byId } = made();
  const dado = one(operations, 'cut/c1~left/bottom~only/1');
  const test1 = dado.after.find((id) => id.startsWith('cut/test/')) ?? '';

  test('names what comes first and is not ticked', () => {
    const found = blockedBy(dado, byId, doing());
    expect(found).toEqual([
      { by: 'operation', op: byId.get('cut/c1~left/len/1') },
      { by: 'operation', op: byId.get(test1) },
    ]);
  });

  test('names only what is still open', () => {
    const found = blockedBy(dado, byId, doing({ done: among('cut/c1~left/len/1') }));
    expect(found).toEqual([{ by: 'operation', op: byId.get(test1) }]);
  });

  test('nothing once all of it is ticked', () => {
    expect(blockedBy(dado, byId, doing({ done: among('cut/c1~left/len/1', test1) }))).toEqual([]);
  });

  test('nothing when let go ahead, though nothing before it is done', () => {
    const let1 = doing({ let: among(dado.id), measured: () => false });
    expect(blockedBy(dado, byId, let1)).toEqual([]);
  });

  test('letting the one before it go ahead does not free what follows: it is not cut', () => {
    const found = blockedBy(dado, byId, doing({ done: among(test1), let: among('cut/c1~left/len/1') }));
    expect(found).toEqual([{ by: 'operation', op: byId.get('cut/c1~left/len/1') }]);
  });

  test('nothing when done itself, whatever has become open since', () => {
    expect(blockedBy(dado, byId, doing({ done: among(dado.id), measured: () => false }))).toEqual([]);
  });

  test('the stock it is fitted to is measured first', () => {
    const ready = doing({ done: among('cut/c1~left/len/1', test1), measured: (id) => id !== 'b' });
    expect(blockedBy(dado, byId, ready)).toEqual([{ by: 'stock', stock: 'b' }]);
  });

  test('a tray groove asks for no stock; a rip with nothing before it is never blocked', () => {
    const none = doing({ measured: () => false });
    const tray = one(operations, 'cut/c1~left/trays~1~only/1');
    expect(blockedBy(tray, byId, none).some((b) => b.by === 'stock')).toBe(false);
    expect(blockedBy(one(operations, 'cut/c1~left/rip/1'), byId, none)).toEqual([]);
  });

  test('a test cut waits for the sheet its stack is fitted to; the test of the tray stack waits for none', () => {
    const none = doing({ measured: () => false });
    expect(blockedBy(one(operations, test1), byId, none)).toEqual([{ by: 'stock', stock: 'b' }]);
    expect(blockedBy(one(operations, test1), byId, doing())).toEqual([]);
    const tray = one(operations, 'cut/c1~left/trays~1~only/1');
    const own = operations.find((op) => op.what === 'test' && op.setup.build === tray.setup.build);
    expect(own && blockedBy(own, byId, none)).toEqual([]);
  });

  test('what is no longer among the operations blocks nothing', () => {
    expect(blockedBy({ ...dado, after: ['cut/c1~gone/rip/1'] }, byId, doing())).toEqual([]);
  });
});

describe('blockedBy: grooves that cannot be set', () => {
  const worked = partsOf(plainCase, { stuff: sheets(), tape: '1/32', cutting: () => ({ machine: 'saw' }) });
  if (!worked.ok) throw new Error('no parts');
  const operations = operationsOf(
    { parts: worked.value.parts, cases: [plainCase], hand: [], recuts: () => ({}) },
    { shop: {}, tape: '1/32' },
  );
  const byId = new Map(operations.map((op) => [op.id, op]));
  const grooves = one(operations, 'cut/c1~left/grooves/1');
  const fit = one(operations, 'cut/c1~bench/dryfit/1');

  test.each<[string, Partial<Doing>]>([
    ['as they are', {}],
    ['let go ahead', { let: () => true }],
    ['ticked', { done: () => true }],
    ['with every sheet measured, ticked and let', { done: () => true, let: () => true }],
  ])('%s, they are blocked by the layout alone', (_, over) => {
    expect(blockedBy(grooves, byId, doing(over))).toEqual([{ by: 'layout' }]);
  });

  test('with all else done the dry-fit waits for them, each named', () => {
    const found = blockedBy(fit, byId, doing({ done: (id) => id !== fit.id && !byId.get(id)?.cannot }));
    const open = found.flatMap((b) => (b.by === 'operation' ? [b.op.id] : []));
    expect(open).toHaveLength(found.length);
    expect(open.sort()).toEqual(
      ['left', 'right', 'bottom', 'top', 'partition1'].map((role) => `cut/c1~${role}/grooves/1`).sort(),
    );
  });
});

describe('lastCall', () => {
  const { operations } = made();
  const bottom = one(operations, 'cut/c1~bottom/rip/1');

  test('the fence at 17 7/32 is wanted by bottom, top, partition, and by shelf and trays blocked for now', () => {
    const { sameSetup } = lastCall(bottom.setup, operations, () => false);
    const parts = new Set(sameSetup.map((op) => op.part));
    expect(parts).toEqual(new Set(['c1~bottom', 'c1~top', 'c1~partition1', 'c1~fixed1', 'c1~trays']));
    expect(sameSetup.every((op) => w(op.figure) === '17 7/32')).toBe(true);
  });

  test('other widths are the same blade at another figure', () => {
    const { sameBuild } = lastCall(bottom.setup, operations, () => false);
    expect(sameBuild.map((op) => op.id)).toEqual([
      'cut/c1~back/rip/1',
      'cut/c1~left/rip/1',
      'cut/c1~right/rip/1',
    ]);
  });

  test('what is ticked is not called', () => {
    const ticked = among(bottom.id, 'cut/c1~left/rip/1');
    const { sameSetup, sameBuild } = lastCall(bottom.setup, operations, ticked);
    expect(sameSetup.some((op) => op.id === bottom.id)).toBe(false);
    expect(sameBuild.map((op) => op.id)).toEqual(['cut/c1~back/rip/1', 'cut/c1~right/rip/1']);
  });

  test('one stack at its other stops: dadoes of sides, bottom and top, the shelf dadoes and the test', () => {
    const dado = one(operations, 'cut/c1~left/bottom~only/1');
    const { sameSetup, sameBuild } = lastCall(dado.setup, operations, () => false);
    expect(sameSetup.map((op) => op.part).sort()).toEqual(['c1~left', 'c1~right', 'test']);
    expect(new Set(sameBuild.map((op) => op.part))).toEqual(
      new Set(['c1~right', 'c1~bottom', 'c1~top', 'c1~partition1']),
    );
  });

  test('nothing is called when all is done', () => {
    expect(lastCall(bottom.setup, operations, () => true)).toEqual({ sameSetup: [], sameBuild: [] });
  });
});

describe('cardsOf', () => {
  const { operations, byId } = made();
  const order = orderSetups(
    operations.map((op) => ({ id: op.id, build: op.setup.build, setup: op.setup.key, after: op.after })),
  );
  if (!order.ok) throw new Error('a ring');
  const cards = cardsOf(order.value.runs, byId);

  test('each operation stands on one card, each card has an id of its own', () => {
    const ids = cards.flatMap((card) => card.operations.map((op) => op.id));
    expect([...ids].sort()).toEqual(operations.map((op) => op.id).sort());
    expect(new Set(cards.map((card) => card.id)).size).toBe(cards.length);
  });

  test('a setup visited twice has two cards: a back as wide as the bottom is fitted, and comes to its fence again', () => {
    // 37 27/32 − 9/32 and 38 3/8 − 2 × (23/32 − 11/32) − 1/16: both 37 9/16
    const deep = made({ ...plainCase, depth: l('37 27/32') });
    const found = orderSetups(
      deep.operations.map((op) => ({
        id: op.id,
        build: op.setup.build,
        setup: op.setup.key,
        after: op.after,
      })),
    );
    if (!found.ok) throw new Error('a ring');
    const { key } = one(deep.operations, 'cut/c1~bottom/rip/1').setup;
    const own = cardsOf(found.value.runs, deep.byId).filter((card) => card.operations[0]?.setup.key === key);
    expect(own.map((card) => card.id)).toEqual([key, `${key}~~2`]);
    expect(new Set(own[0]?.operations.map((op) => op.part))).toEqual(
      new Set(['c1~bottom', 'c1~top', 'c1~partition1', 'c1~fixed1', 'c1~trays']),
    );
    expect(own[1]?.operations.map((op) => op.part)).toEqual(['c1~back']);
  });

  test('a third visit is numbered too, and a step that is gone is left out', () => {
    const runs = ['a', 'b', 'a', 'b', 'a'].map((setup) => ({ setup, steps: ['cut/c1~gone/rip/1'] }));
    const found = cardsOf(runs, byId);
    expect(found.map((card) => card.id)).toEqual(['a', 'b', 'a~~2', 'b~~2', 'a~~3']);
    expect(found.every((card) => card.operations.length === 0)).toBe(true);
  });
});

describe('noLongerFit and wouldChange', () => {
  const before = made().operations;
  const after = made(plainCase, { b: '11/16' }).operations;
  const cut = 'cut/c1~partition1/len/1';
  const ticks = new Map<string, Length>([
    [cut, l('59 1/4')],
    ['cut/c1~left/len/1', l('64 1/4')],
  ]);
  const done = (id: string) => ticks.has(id);
  const cutTo = (id: string) => {
    const figure = ticks.get(id);
    return figure && { figure };
  };

  test('a dado cut for 23/32 is named when what stands in it measures 3/4, though it stands where it stood', () => {
    const thicker = made(plainCase, { b: '3/4' }).operations;
    const dado = (ops: readonly Operation[]) =>
      ops.find((op) => op.part === 'c1~left' && op.which?.is === 'groove' && op.which.seat.in === 'bottom');
    const was = dado(before);
    if (!was?.width) throw new Error('no dado');
    const kept = { figure: dado(thicker)?.figure ?? was.figure, width: was.width };
    const [found] = noLongerFit(thicker, (id) => (id === was.id ? kept : undefined));
    // a glue line of .005 over either sheet
    expect(found && [found.op.id, found.width, w(found.was), w(found.now)]).toEqual([
      was.id,
      true,
      '579/800',
      '151/200',
    ]);
    expect(wouldChange(before, thicker, () => false).some((c) => c.op.id === was.id && c.width)).toBe(true);
  });

  test('the dado of the bottom is as wide as before, and where it was: it is not named', () => {
    const dado = one(before, 'cut/c1~left/bottom~only/1');
    const kept = { figure: dado.figure, width: dado.width };
    expect(noLongerFit(before, (id) => (id === dado.id ? kept : undefined))).toEqual([]);
  });

  test('a groove moved and widened is named with where it was cut; an uncut one with both', () => {
    const dado = one(after, 'cut/c1~top/p1~only/1');
    const was = one(before, dado.id);
    const found = wouldChange(before, after, () => false).filter(({ op }) => op.id === dado.id);
    const moved = !equals(was.figure, dado.figure);
    expect(found.map((c) => c.width ?? false)).toEqual(moved ? [false, true] : [true]);
    const cut = noLongerFit(after, (id) =>
      id === dado.id ? { figure: l('1'), width: was.width } : undefined,
    );
    expect(cut.map(({ was: at, width }) => [w(at), width])).toEqual([['1', undefined]]);
  });

  test('grooves nothing of a sheet stands in are named by where they are alone: no tray groove has a width', () => {
    const trays = before.filter((op) => op.groove?.setting.startsWith('trays~'));
    expect(trays.length).toBeGreaterThan(10);
    expect(trays.filter((op) => op.width)).toEqual([]);
    const own = new Map(trays.map((op) => [op.id, { figure: op.figure, width: l('9') }]));
    expect(noLongerFit(before, (id) => own.get(id))).toEqual([]);
  });

  test('a tick that kept no width names no width', () => {
    const thicker = made(plainCase, { b: '3/4' }).operations;
    const dado = one(thicker, 'cut/c1~left/bottom~only/1');
    const kept = { figure: dado.figure };
    expect(noLongerFit(thicker, (id) => (id === dado.id ? kept : undefined))).toEqual([]);
  });

  test('trap 19: the partition already cut is named with old and new, and never rewritten', () => {
    const found = noLongerFit(after, cutTo);
    expect(found.map(({ op, was, now }) => [op.id, w(was), w(now)])).toEqual([[cut, '59 1/4', '59 5/16']]);
    expect(w(ticks.get(cut) ?? zero)).toBe('59 1/4');
  });

  test('uncut ones stand among what would change, old and new', () => {
    const found = wouldChange(before, after, () => false);
    const partition = found.find(({ op }) => op.id === cut);
    expect(partition && [w(partition.was), w(partition.now)]).toEqual(['59 1/4', '59 5/16']);
  });

  test('a piece already cut is never in that list, and one not cut is never among the cut', () => {
    const would = wouldChange(before, after, done);
    const cutAlready = noLongerFit(after, cutTo);
    expect(would.some(({ op }) => done(op.id))).toBe(false);
    expect(cutAlready.every(({ op }) => done(op.id))).toBe(true);
    expect(would.length).toBeGreaterThan(2);
    const both = new Set(would.map(({ op }) => op.id));
    expect(cutAlready.some(({ op }) => both.has(op.id))).toBe(false);
  });

  test('a figure that did not move is in neither', () => {
    const found = wouldChange(before, after, () => false).map(({ op }) => op.id);
    expect(found).not.toContain('cut/c1~left/len/1');
    expect(found).not.toContain('cut/c1~left/rip/1');
    expect(found).not.toContain('cut/c1~trays/len/1');
  });

  test('nothing changes when nothing was changed', () => {
    expect(wouldChange(before, before, () => false)).toEqual([]);
    const own = new Map(before.map((op) => [op.id, { figure: op.figure, width: op.width }]));
    expect(noLongerFit(before, (id) => own.get(id))).toEqual([]);
  });

  test('test cuts and steps at the bench have no figure to compare', () => {
    const odd = (op: Operation) => op.what === 'test' || op.setup.machine === 'bench';
    const found = noLongerFit(after.filter(odd), () => ({ figure: l('999') }));
    expect(after.filter(odd).length).toBeGreaterThan(4);
    expect(found).toEqual([]);
  });
});

/** A quarter over on sheets, nothing over on sticks. */
const rough: RoughAt = { tape: '1/32', over: l('1/4'), overStick: zero, stick: () => false };

describe('recutOf', () => {
  const { worked, operations } = made();
  const side = part(worked, 'left');
  const trays = operations.filter((op) => op.part === side.id && op.groove?.setting.startsWith('trays~'));
  const cutSoFar = new Set([
    ...operations.filter((op) => op.part === 'c1~right' || op.part === 'c1~bottom').map((op) => op.id),
    'cut/c1~left/rip/1',
    'cut/c1~left/len/1',
    'cut/c1~left/bottom~only/1',
    ...trays.slice(0, 7).map((op) => op.id),
  ]);
  const done = (id: string) => cutSoFar.has(id);
  const recut = recutOf(side, '1', { operations, rough, offcuts: [], done });

  test('Example 3 of setups: spoiled at the tray grooves, it repeats rip, length, wide stack and tray stack, in order', () => {
    const builds = [...new Set(recut.operations.map((op) => op.setup.build))];
    expect(builds.map((build) => build.split('~')[0])).toEqual(['rip', 'crosscut', 'stop', 'stop']);
    expect(builds).toHaveLength(4);
    expect(recut.operations.map((op) => op.id)).toEqual([
      'cut/c1~left/rip/1',
      'cut/c1~left/len/1',
      'cut/c1~left/bottom~only/1',
      ...trays.slice(0, 7).map((op) => op.id),
    ]);
  });

  test('Example 3 of setups: the tray stack still stands, so 3 of the 4 are set up again', () => {
    const standing = trays[3]?.setup.key;
    const { builds } = recutOf(side, '1', { operations, rough, offcuts: [], done, standing });
    expect(builds.map(({ op, places, stands }) => [op.setup.machine, places, stands])).toEqual([
      ['rip', 1, false],
      ['crosscut', 1, false],
      ['stop', 1, false],
      ['stop', 7, true],
    ]);
  });

  test.each<[string, (op: Operation | undefined) => string | undefined]>([
    ['named by its build', (op) => op?.setup.build],
    ['named by the setup it stands at', (op) => op?.setup.key],
    ['named by the card of a second visit', (op) => op && `${op.setup.key}~~2`],
  ])('Example 3 of setups: the tray stack, %s, is the one that stands', (_, standing) => {
    const { builds } = recutOf(side, '1', {
      operations,
      rough,
      offcuts: [],
      done,
      standing: standing(trays[0]),
    });
    expect(builds.map(({ stands }) => stands)).toEqual([false, false, false, true]);
  });

  test.each([undefined, '', 'lap~c1d2', 'ri'])('with %j standing, all 4 are set up again', (standing) => {
    const { builds } = recutOf(side, '1', { operations, rough, offcuts: [], done, standing });
    expect(builds.map(({ stands }) => stands)).toEqual([false, false, false, false]);
  });

  test('places of a build count setups, not cuts', () => {
    const bottom = part(worked, 'bottom');
    const { builds } = recutOf(bottom, '1', { operations, rough, offcuts: [], done });
    const own = operations.filter((op) => op.part === bottom.id);
    for (const { op, places } of builds) {
      const keys = own.filter((x) => x.setup.build === op.setup.build).map((x) => x.setup.key);
      expect(places).toBe(new Set(keys).size);
    }
  });

  test('nothing done: nothing to repeat', () => {
    const none = recutOf(side, '1', { operations, rough, offcuts: [], done: () => false });
    expect([none.operations, none.builds]).toEqual([[], []]);
  });

  test('the other side is named, to be checked against', () => {
    expect(recut.mates).toEqual(['c1~right']);
    expect(recutOf(part(worked, 'bottom'), '1', { operations, rough, offcuts: [], done }).mates).toEqual([]);
  });

  test('both faces of a spoiled partition are cut again', () => {
    const partition = part(worked, 'partition1');
    const again = recutOf(partition, '1', { operations, rough, offcuts: [], done: () => true });
    expect(new Set(again.operations.map((op) => op.copy))).toEqual(new Set(['1', 'A', 'B']));
  });

  test('one tray of many is repeated alone', () => {
    const again = recutOf(part(worked, 'trays'), '4', { operations, rough, offcuts: [], done: () => true });
    expect(again.operations.map((op) => op.id)).toEqual(['cut/c1~trays/rip/4', 'cut/c1~trays/len/4']);
  });
});

describe('recutOf: offcuts', () => {
  const { worked, operations } = made();
  const shelf = part(worked, 'fixed1'); // 18 43/64 down to 18 21/32 × 17 7/32, a quarter over: 18 29/32 × 17 15/32
  const offcut = (id: string, over: Partial<Leftover> = {}): Leftover => ({
    id,
    stock: 'b',
    length: l('30'),
    width: l('20'),
    ...over,
  });
  const found = (...offcuts: readonly Leftover[]) =>
    recutOf(shelf, '1', { operations, rough, offcuts, done: () => false }).offcuts.map((o) => o.id);

  test('it holds what a plan of the sheets would cut: finished size and a quarter over each way', () => {
    const recut = recutOf(shelf, '1', { operations, rough, offcuts: [], done: () => false });
    expect([w(recut.rough.long), w(recut.rough.wide)]).toEqual(['18 29/32', '17 15/32']);
    const [planned] = roughPieces([shelf], { ...rough, notes: () => ({}), recuts: () => ({}) });
    expect(recut.rough).toMatchObject({ long: planned?.long, wide: planned?.wide });
  });

  test('the smallest that holds it comes first', () => {
    const list = [
      offcut('large'),
      offcut('least', { length: l('18 29/32'), width: l('17 15/32') }),
      offcut('middling', { length: l('20') }),
    ];
    expect(found(...list)).toEqual(['least', 'middling', 'large']);
  });

  test.each<[string, Partial<Leftover>]>([
    ['too short by the least', { length: l('18 115/128') }],
    ['too narrow by the least', { width: l('17 59/128') }],
    ['as large as the part itself, without the allowance', { length: l('18 21/32'), width: l('17 7/32') }],
    ['big enough only turned across the grain', { length: l('18'), width: l('40') }],
    ['of another sheet', { stock: 'a' }],
    ['of no sheet', { stock: '' }],
    ['not measured along', { length: undefined }],
    ['not measured across', { width: undefined }],
  ])('one %s is left out', (_, over) => {
    expect(found(offcut('x', over), offcut('good'))).toEqual(['good']);
  });

  test('a part of no stock finds none', () => {
    const recut = recutOf({ ...shelf, stuff: undefined }, '1', {
      operations,
      rough,
      offcuts: [offcut('x', { stock: '' }), offcut('y')],
      done: () => false,
    });
    expect(recut.offcuts).toEqual([]);
  });

  test('the job’s own allowance counts', () => {
    const tight = recutOf(shelf, '1', {
      operations,
      rough: { ...rough, over: l('1/8') },
      offcuts: [offcut('eighth', { length: l('18 25/32'), width: l('17 11/32') })],
      done: () => false,
    });
    expect(tight.offcuts.map((o) => o.id)).toEqual(['eighth']);
  });

  test('areas a float cannot tell apart are told apart', () => {
    const hair = inches(1n, 2n ** 70n);
    const larger = offcut('larger', { length: add(l('30'), hair) });
    expect(found(larger, offcut('smaller'))).toEqual(['smaller', 'larger']);
  });

  test.each<[Lies, readonly string[]]>([
    ['along', ['along']],
    ['across', ['across']],
    ['free', ['across', 'along']],
  ])('a part that lies %s fits %j', (lies, want) => {
    const offcuts = [
      offcut('along', { length: l('30'), width: l('17 1/2') }),
      offcut('across', { length: l('17 1/2'), width: l('20') }),
    ];
    const recut = recutOf(shelf, '1', { operations, rough, offcuts, lies, done: () => false });
    expect(recut.offcuts.map((o) => o.id)).toEqual(want);
  });

  test('the offcuts given stay in the order they were in', () => {
    const list = [offcut('large'), offcut('small', { length: l('19') })];
    found(...list);
    expect(list.map((o) => o.id)).toEqual(['large', 'small']);
  });
});

describe('trap 29: a recut inherits no tick', () => {
  test.each([1, 2, 5])(
    'spoiled %d times, none of its ids was there before; all others are as they were',
    (again) => {
      const was = made().operations;
      const now = made(plainCase, { recuts: { 'c1~left': { '1': again } } }).operations;
      const ids = new Set(was.map((op) => op.id));
      const own = now.filter((op) => op.part === 'c1~left');
      expect(own).toHaveLength(was.filter((op) => op.part === 'c1~left').length);
      expect(own.filter((op) => ids.has(op.id))).toEqual([]);
      const rest = (ops: readonly Operation[]) =>
        ops.filter((op) => op.part !== 'c1~left').map((op) => op.id);
      expect(rest(now)).toEqual(rest(was));
    },
  );

  test('no number of recuts shares an id with another', () => {
    const left = (again: number) =>
      made(plainCase, { recuts: { 'c1~left': { '1': again } } })
        .operations.filter((op) => op.part === 'c1~left')
        .map((op) => op.id);
    const all = [0, 1, 2, 3].flatMap(left);
    expect(new Set(all).size).toBe(all.length);
  });

  test('of several trays only the spoiled one starts again', () => {
    const was = new Set(made().operations.map((op) => op.id));
    const now = made(plainCase, { recuts: { 'c1~trays': { '4': 1 } } }).operations;
    const fresh = now.filter((op) => !was.has(op.id)).map((op) => op.id);
    expect(fresh.sort()).toEqual(['cut/c1~trays/len/4~2', 'cut/c1~trays/rip/4~2']);
  });

  test('a partition starts again on both faces, and a copy that is not there starts nothing', () => {
    const was = made().operations.map((op) => op.id);
    const now = made(plainCase, { recuts: { 'c1~partition1': { '1': 1 } } }).operations;
    const own = now.filter((op) => op.part === 'c1~partition1');
    expect(new Set(own.map((op) => op.copy))).toEqual(new Set(['1~2', 'A~2', 'B~2']));
    expect(made(plainCase, { recuts: { 'c1~left': { '9': 3 } } }).operations.map((op) => op.id)).toEqual(was);
  });

  test('a recut waits for nothing of the spoiled one', () => {
    const { operations } = made(plainCase, { recuts: { 'c1~left': { '1': 1 } } });
    const own = operations.filter((op) => op.part === 'c1~left');
    expect(own.flatMap((op) => op.after).filter((id) => /^cut\/c1~left\/.*\/1$/.test(id))).toEqual([]);
    expect(own.every((op) => isPositive(op.figure))).toBe(true);
  });
});

describe('recutOf: offcuts of sticks', () => {
  const framed: Case = {
    ...framedCase,
    hasLooseTop: true,
    looseSide: l('3/16'),
    hasBase: true,
    hasEdging: true,
    lip: l('5/32'),
    stocks: { ...framedCase.stocks, base: 'u', edging: 'e' },
  };
  const worked = work(framed, [...sheets(), sheet('u', '1 17/32'), sheet('e', '11/16')]);
  const finds = (role: string, length: string, width: string): boolean => {
    const own = part(worked, role);
    const offcut = { id: 'x', stock: own.stuff ?? '', length: l(length), width: l(width) };
    const at = { ...rough, stick: () => true };
    return (
      recutOf(own, '1', { operations: [], rough: at, offcuts: [offcut], done: () => false }).offcuts
        .length === 1
    );
  };

  test('a stile finds one of its own length and width: nothing is over on a stick', () => {
    expect(finds('stile', '60 1/8', '1 11/16')).toBe(true);
    expect(finds('stile', '60 3/32', '1 11/16')).toBe(false);
    expect(finds('stile', '60 1/8', '1 21/32')).toBe(false);
  });

  // short point 38 3/4, long point 40 1/8
  test('Example 5 of sheets: a mitred strip wants its long point: 39 1/4 is too short', () => {
    expect(finds('edgefront', '39 1/4', '3')).toBe(false);
    expect(finds('edgefront', '40 3/32', '3')).toBe(false);
    expect(finds('edgefront', '40 1/8', '3')).toBe(true);
  });
});
