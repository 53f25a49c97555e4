import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { editCase, editInside, editJob, editStock, spoilPiece, tickOf as tickAt } from '../../src/job/edits';
import type { Change, Entry } from '../../src/job/entry';
import { jobOf } from '../../src/job/job';
import { type Folded, fold, inOrder, merge } from '../../src/job/log';
import { undoable, undoOf } from '../../src/job/undo';
import { equals } from '../../src/length/length';
import { fromStored, toStored } from '../../src/length/stored';
import { planOf } from '../../src/plan/plan';
import { jointOf, noLongerFit, wouldChange } from '../../src/trade/setups/changes';
import type { Operation } from '../../src/trade/setups/operation';
import { l } from '../length/write-figures';
import { runs } from '../runs';

type Log = readonly Entry[];

/** One tap on one phone: its changes get the next counts, whatever clocks say. */
function tap(log: Log, device: string, changes: readonly Change[], undoes?: string): Log {
  const from = log.reduce((most, e) => Math.max(most, e.count), 0);
  const act = `${device}.${from + 1}`;
  const stamp = {
    job: 'j',
    device,
    at: '2026-11-02T08:00:00Z',
    act,
    label: 'x',
    ...(undoes ? { undoes } : {}),
  };
  return [...log, ...changes.map((change, k): Entry => ({ ...stamp, count: from + 1 + k, ...change }))];
}

function takenBack(log: Log, device: string): Log {
  const act = undoable(log, (name) => name === device)[0];
  return act ? tap(log, device, undoOf(log, act), act.act) : log;
}

/** A small case, so that a whole plan is quick. */
const decided: readonly Change[] = [
  ...editJob({ name: 'Case', tape: '1/32' }),
  ...editStock('a', { planned: l('23/32') }),
  ...editStock('b', { planned: l('23/32') }),
  ...editCase('c', {
    width: l('30'),
    height: l('40'),
    depth: l('12'),
    feet: l('3'),
    partitions: 1,
    sideStock: 'a',
    bottomStock: 'b',
    topStock: 'b',
    partitionStock: 'b',
    shelfStock: 'b',
  }),
  ...editInside('c', 'i1', { kind: 'fixed', bay: 1, at: l('15') }),
];
const start = tap([], 'anna', decided);

const planAt = (log: Log) => planOf(jobOf('j', fold(log).values), {});
const state = ({ values, ticks }: Folded) => [[...values].sort(), [...ticks].sort()];
/** A tick as the screens write it: with the width where something stands in the groove. */
const tickOf = (op: Operation): readonly Change[] => tickAt(op.id, op.figure, jointOf(op));

const figure = fc.constantFrom('23/32', '3/4', '18 mm', '0.703', '11/16').map(l);
const pieces = ['c~left', 'c~right', 'c~partition1', 'c~i1'] as const;

/** What a phone does next. `nth` picks an operation of the plan as that phone then has it. */
type Doing =
  | { readonly does: 'tick' | 'untick'; readonly nth: number }
  | { readonly does: 'undo' | 'sync' }
  | { readonly does: 'spoil'; readonly part: (typeof pieces)[number] }
  | { readonly does: 'edit'; readonly changes: readonly Change[] };

const edit: fc.Arbitrary<readonly Change[]> = fc.oneof(
  fc.tuple(fc.constantFrom('a', 'b'), figure).map(([id, x]) => editStock(id, { readings: [x], used: x })),
  fc.constantFrom('30', '29 1/2', '31 5/64').map((x) => editCase('c', { width: l(x) })),
  fc.constantFrom(true, false).map((gone) => editInside('c', 'i1', { gone })),
);
const doing: fc.Arbitrary<Doing> = fc.oneof(
  { weight: 5, arbitrary: fc.record({ does: fc.constant('tick' as const), nth: fc.nat(40) }) },
  { weight: 1, arbitrary: fc.record({ does: fc.constant('untick' as const), nth: fc.nat(40) }) },
  {
    weight: 2,
    arbitrary: fc.record({ does: fc.constant('spoil' as const), part: fc.constantFrom(...pieces) }),
  },
  { weight: 2, arbitrary: fc.record({ does: fc.constant('edit' as const), changes: edit }) },
  { weight: 2, arbitrary: fc.record({ does: fc.constant('undo' as const) }) },
);
const step = fc.tuple(
  fc.constantFrom('anna', 'ben'),
  fc.oneof({ weight: 6, arbitrary: doing }, { weight: 1, arbitrary: fc.constant<Doing>({ does: 'sync' }) }),
);

function next(log: Log, device: string, what: Doing): Log {
  switch (what.does) {
    case 'tick':
    case 'untick': {
      const { operations } = planAt(log);
      const op = operations[what.nth % Math.max(1, operations.length)];
      if (!op) return log;
      return tap(log, device, what.does === 'tick' ? tickOf(op) : [{ kind: 'untick', op: op.id }]);
    }
    case 'spoil': {
      const again = (jobOf('j', fold(log).values).parts[what.part]?.pieces['1']?.recuts ?? 0) + 1;
      return tap(log, device, spoilPiece(what.part, '1', again));
    }
    case 'edit':
      return tap(log, device, what.changes);
    case 'undo':
      return takenBack(log, device);
    case 'sync':
      return log;
  }
}

/** Two phones that started from one job and met now and then. */
function lived(steps: readonly (readonly [string, Doing])[]): { readonly anna: Log; readonly ben: Log } {
  let [anna, ben] = [start, start];
  for (const [device, what] of steps) {
    if (what.does === 'sync') {
      if (device === 'anna') anna = merge(anna, ben);
      else ben = merge(ben, anna);
    } else if (device === 'anna') anna = next(anna, 'anna', what);
    else ben = next(ben, 'ben', what);
  }
  return { anna, ben };
}

describe('ticks, spoiled pieces, readings and undo on two phones', () => {
  test('the union of both logs comes to the same whichever is taken in first, and in whatever order it is read', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 20 }), fc.nat(1000), (steps, turn) => {
        const { anna, ben } = lived(steps);
        const [ab, ba] = [merge(anna, ben), merge(ben, anna)];
        expect(ab).toEqual(ba);
        expect(merge(ab, ben)).toEqual(ab);
        const at = turn % ab.length;
        const mixed = [...ab.slice(at), ...ab.slice(0, at)].reverse();
        expect(state(fold(mixed))).toEqual(state(fold(ab)));
        expect(jobOf('j', fold(mixed).values).parts).toEqual(jobOf('j', fold(ba).values).parts);
        const ids = (log: Log) => planAt(log).operations.map((op) => op.id);
        expect(ids(mixed)).toEqual(ids(ba));
      }),
      { numRuns: runs(120) },
    );
  }, 600_000);

  test('every tick that stands was written by a tap, to the figure that stands', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 20 }), (steps) => {
        const { anna, ben } = lived(steps);
        const all = merge(anna, ben);
        const written = new Set(all.flatMap((e) => (e.kind === 'tick' ? [`${e.op} ${e.figure}`] : [])));
        for (const [op, { figure: cutTo }] of fold(all).ticks) expect(written).toContain(`${op} ${cutTo}`);
      }),
      { numRuns: runs(120) },
    );
  }, 600_000);

  test('undo of a spoiled piece brings back the piece with its ticks', () => {
    const side = planAt(start).operations.filter((op) => op.part === 'c~left');
    const cut = side.reduce<Log>((log, op) => tap(log, 'anna', tickOf(op)), start);
    const spoiled = tap(cut, 'anna', spoilPiece('c~left', '1', 1));
    const ticked = (log: Log) => planAt(log).operations.filter((op) => fold(log).ticks.has(op.id));
    expect(ticked(spoiled)).toEqual([]);
    const back = takenBack(spoiled, 'anna');
    expect(ticked(back).map((op) => op.id)).toEqual(ticked(cut).map((op) => op.id));
    expect(ticked(back)).toHaveLength(side.length);
  });

  test('a side spoiled on one phone while the other ticks its grooves: the recut has none of those ticks', () => {
    const groove = planAt(start).operations.find((op) => op.part === 'c~left' && op.what === 'groove');
    if (!groove) throw new Error('no groove');
    const anna = tap(start, 'anna', spoilPiece('c~left', '1', 1));
    const ben = tap(start, 'ben', tickOf(groove));
    const both = merge(anna, ben);
    expect(fold(both).ticks.has(groove.id)).toBe(true);
    const own = planAt(both).operations.filter((op) => op.part === 'c~left');
    expect(own.length).toBeGreaterThan(2);
    expect(own.filter((op) => fold(both).ticks.has(op.id))).toEqual([]);
  });

  test('one phone spoils a piece twice, the other once not knowing: no tick of a spoiled one comes back', () => {
    const once = tap(start, 'anna', spoilPiece('c~left', '1', 1));
    const rip = planAt(once).operations.find((op) => op.part === 'c~left' && op.what === 'rip');
    if (!rip) throw new Error('no rip');
    expect(rip.copy).toBe('1~2');
    const anna = tap(tap(once, 'anna', tickOf(rip)), 'anna', spoilPiece('c~left', '1', 2));
    const ben = tap(start, 'ben', spoilPiece('c~left', '1', 1));
    const both = merge(anna, ben);
    const own = planAt(both).operations.filter((op) => op.part === 'c~left');
    expect(new Set(own.map((op) => op.copy))).toEqual(new Set(['1~3']));
    expect(own.filter((op) => fold(both).ticks.has(op.id))).toEqual([]);
  });

  /** A phone cuts what it has of the side, or spoils it; whether the phones met is the third. */
  const side = fc.tuple(
    fc.constantFrom('anna', 'ben'),
    fc.oneof(
      { weight: 3, arbitrary: fc.constant('cut' as const) },
      { weight: 3, arbitrary: fc.constant('spoil' as const) },
      { weight: 1, arbitrary: fc.constant('sync' as const) },
    ),
  );
  const sideAt = (log: Log) => planAt(log).operations.filter((op) => op.part === 'c~left');

  test('M16: whichever makings of a piece either phone spoils, knowing or not, no tick of one of them comes back', () => {
    fc.assert(
      fc.property(fc.array(side, { maxLength: 14 }), (steps) => {
        const logs: Record<string, Log> = { anna: start, ben: start };
        const spoiled = new Set<string>();
        for (const [device, what] of steps) {
          const log = logs[device] ?? start;
          if (what === 'sync') logs[device] = merge(log, logs[device === 'anna' ? 'ben' : 'anna'] ?? start);
          else if (what === 'cut') logs[device] = tap(log, device, sideAt(log).flatMap(tickOf));
          else {
            for (const op of sideAt(log)) spoiled.add(op.id);
            logs[device] = next(log, device, { does: 'spoil', part: 'c~left' });
          }
        }
        const own = sideAt(merge(logs.anna ?? start, logs.ben ?? start));
        expect(own.filter((op) => spoiled.has(op.id)).map((op) => op.id)).toEqual([]);
        expect(own.length).toBeGreaterThan(2);
      }),
      { numRuns: runs(100) },
    );
  }, 600_000);

  test('an earlier spoil taken back, once a later making is spoiled, brings back no earlier tick', () => {
    const anna = tap(start, 'anna', spoilPiece('c~left', '1', 1));
    const ben = tap(merge(start, anna), 'ben', spoilPiece('c~left', '1', 2));
    const both = takenBack(merge(anna, ben), 'anna');
    expect(new Set(sideAt(both).map((op) => op.copy))).toEqual(new Set(['1~3']));
  });

  test('a spoil the other phone said too still stands when one takes its own word back, having read the other', () => {
    const anna = tap(start, 'anna', spoilPiece('c~left', '1', 1));
    const ben = tap(start, 'ben', spoilPiece('c~left', '1', 1));
    const both = takenBack(merge(anna, ben), 'anna');
    expect(new Set(sideAt(both).map((op) => op.copy))).toEqual(new Set(['1~2']));
  });

  test('M16: both phones spoil the same piece: it is cut again once', () => {
    const anna = tap(start, 'anna', spoilPiece('c~left', '1', 1));
    const ben = tap(start, 'ben', spoilPiece('c~left', '1', 1));
    const copies = new Set(
      planAt(merge(anna, ben)).operations.flatMap((op) => (op.part === 'c~left' ? [op.copy] : [])),
    );
    expect(copies).toEqual(new Set(['1~2']));
  });
});

describe('what is cut keeps its figure', () => {
  const reckoned = fc.array(edit, { minLength: 1, maxLength: 6 });

  test('whatever readings are accepted after, every tick stands at the figure it was cut to', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(200), { maxLength: 12 }), reckoned, (picks, changes) => {
        const { operations } = planAt(start);
        const chosen = [...new Set(picks.map((k) => operations[k % operations.length]))].flatMap(
          (op) => op ?? [],
        );
        const cut = chosen.reduce<Log>((log, op) => tap(log, 'anna', tickOf(op)), start);
        const later = changes.reduce<Log>((log, c) => tap(log, 'ben', c), cut);
        const { ticks } = fold(later);
        expect([...ticks].map(([op, t]) => [op, t.figure])).toEqual(
          chosen.map((op) => [op.id, toStored(op.figure)]),
        );
      }),
      { numRuns: runs(150) },
    );
  }, 600_000);

  test('a cut piece is named where its figure has changed, with what it was cut to; an uncut one among what would change', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(200), { maxLength: 12 }), reckoned, (picks, changes) => {
        const before = planAt(start).operations;
        const chosen = new Set(picks.map((k) => before[k % before.length]?.id ?? ''));
        const cut = before
          .filter((op) => chosen.has(op.id))
          .reduce<Log>((log, op) => tap(log, 'anna', tickOf(op)), start);
        const later = changes.reduce<Log>((log, c) => tap(log, 'ben', c), cut);
        const { ticks } = fold(later);
        const after = planAt(later).operations;
        const cutTo = (op: string) => {
          const read = fromStored(ticks.get(op)?.figure ?? '');
          return read.ok ? { figure: read.value, ...jobOf('j', fold(later).values).widths[op] } : undefined;
        };
        const named = new Map(noLongerFit(after, cutTo).map((c) => [c.op.id, c]));
        const would = new Map(wouldChange(before, after, (op) => ticks.has(op)).map((c) => [c.op.id, c]));
        const old = new Map(before.map((op) => [op.id, op]));
        for (const op of after) {
          const was = old.get(op.id);
          if (!was || op.what === 'test' || op.setup.machine === 'bench') continue;
          const moved = !equals(was.figure, op.figure);
          const [joint, kept] = [jointOf(op), jointOf(was)];
          const wider =
            kept.width !== undefined && joint.width !== undefined && !equals(kept.width, joint.width);
          const deeper =
            kept.depth !== undefined && joint.depth !== undefined && !equals(kept.depth, joint.depth);
          const other = moved || wider || deeper;
          expect(named.has(op.id), op.id).toBe(other && chosen.has(op.id));
          expect(would.has(op.id), op.id).toBe(other && !chosen.has(op.id));
          const found = named.get(op.id);
          if (found)
            expect([toStored(found.was), toStored(found.now)]).toEqual(
              [was, op].map((x) =>
                toStored((moved ? x.figure : wider ? x.width : x.setup.height) ?? x.figure),
              ),
            );
        }
      }),
      { numRuns: runs(150) },
    );
  }, 600_000);

  test('a dado cut for 23/32 keeps its width beside its tick, and is named when the sheet goes to 3/4', () => {
    const dado = planAt(start).operations.find((op) => op.part === 'c~left' && op.width);
    if (!dado?.width) throw new Error('no dado');
    const cut = tap(start, 'anna', tickOf(dado));
    const width = (log: Log) => jobOf('j', fold(log).values).widths[dado.id]?.width;
    expect(width(cut)).toEqual(dado.width);
    const later = tap(cut, 'ben', editStock('b', { readings: [l('3/4')], used: l('3/4') }));
    const named = noLongerFit(planAt(later).operations, (op) => {
      const read = fromStored(fold(later).ticks.get(op)?.figure ?? '');
      return read.ok ? { figure: read.value, width: width(later) } : undefined;
    });
    expect(named.map((c) => [c.op.id, c.width])).toEqual([[dado.id, true]]);
    expect(width(takenBack(later, 'anna'))).toBeUndefined();
  });

  test('reckoning again changes nothing in the log', () => {
    const log = tap(start, 'anna', editStock('b', { readings: [l('18 mm')], used: l('18 mm') })).map((e) =>
      Object.freeze(e),
    );
    const kept = JSON.stringify(log);
    planAt(log);
    expect(JSON.stringify(log)).toBe(kept);
    expect([...log].sort(inOrder)).toEqual(log);
  });
});
