import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonical } from '../../src/job/canonical';
import type { Change, Entry } from '../../src/job/entry';
import { extend, type Folded, fold, keyOf, merge } from '../../src/job/log';
import { placeOf, said } from '../../src/job/merge';
import { runs } from '../runs';
import { type Log, passed, state, takenBack, tap } from './phones';

const names = ['anna', 'ben', 'carl'] as const;
const name = fc.constantFrom(...names);
const paths = ['boards/side/length', 'boards/side/name', 'stock/a/used', 'layouts/a/rests'] as const;

const change: fc.Arbitrary<Change> = fc.oneof(
  fc.record({
    kind: fc.constant('edit' as const),
    path: fc.constantFrom(...paths),
    value: fc.constantFrom('1/2', '3', '5', null),
  }),
  fc.record({
    kind: fc.constant('tick' as const),
    op: fc.constantFrom('cut/b/s/1', 'cut/b/s/2'),
    figure: fc.constantFrom('1/2', '3'),
  }),
  fc.record({
    kind: fc.constant('edit' as const),
    path: fc.constant('boards/side/gone'),
    value: fc.constantFrom(true, null),
  }),
  fc.record({ kind: fc.constant('untick' as const), op: fc.constantFrom('cut/b/s/1', 'cut/b/s/2') }),
);

/** What a phone does; `years` its clock is off by. Handing over may happen twice, and to a phone that has it all. */
type Doing =
  | {
      readonly does: 'write';
      readonly who: string;
      readonly changes: readonly Change[];
      readonly years: number;
    }
  | { readonly does: 'undo'; readonly who: string; readonly years: number }
  | { readonly does: 'pick'; readonly who: string; readonly nth: number; readonly years: number }
  | { readonly does: 'pass'; readonly who: string; readonly to: string; readonly twice: boolean };

const years = fc.integer({ min: -10, max: 10 });
const doing: fc.Arbitrary<Doing> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({
      does: fc.constant('write' as const),
      who: name,
      changes: fc.array(change, { minLength: 1, maxLength: 3 }),
      years,
    }),
  },
  { weight: 2, arbitrary: fc.record({ does: fc.constant('undo' as const), who: name, years }) },
  {
    weight: 2,
    arbitrary: fc.record({ does: fc.constant('pick' as const), who: name, nth: fc.nat(20), years }),
  },
  {
    weight: 3,
    arbitrary: fc.record({ does: fc.constant('pass' as const), who: name, to: name, twice: fc.boolean() }),
  },
);

/** Long ones as often as short: left to itself the library makes ten at the most. */
const acts = (most: number) => fc.array(doing, { maxLength: most, size: 'max' });

type Phones = Record<string, Log>;
const at = (years: number) => new Date(Date.UTC(2026 + years, 5, 1)).toISOString();

/** The same said again, over all that stands there. */
const pickOf = (entry: Entry): Change =>
  entry.kind === 'edit'
    ? { kind: 'edit', path: entry.path, value: entry.value }
    : entry.kind === 'tick'
      ? { kind: 'tick', op: entry.op, figure: entry.figure }
      : { kind: 'untick', op: entry.op };

type Saw = Map<string, ReadonlySet<string>>;

function lived(all: readonly Doing[], saw: Saw = new Map()): Phones {
  const phones: Phones = { anna: [], ben: [], carl: [] };
  for (const what of all) {
    const log = phones[what.who] ?? [];
    if (what.does === 'pass') {
      for (let k = 0; k < (what.twice ? 2 : 1); k += 1) phones[what.to] = passed(log, phones[what.to] ?? []);
    } else if (what.does === 'undo') phones[what.who] = takenBack(log, what.who);
    else if (what.does === 'write')
      phones[what.who] = tap(log, what.who, what.changes, { at: at(what.years) });
    else {
      const { doubled, places } = fold(log);
      const heads = [...doubled].flatMap((place) => places.get(place)?.heads ?? []);
      const picked = heads[what.nth % Math.max(1, heads.length)];
      if (picked) phones[what.who] = tap(log, what.who, [pickOf(picked)], { at: at(what.years) });
    }
    const held = new Set<string>(log.map(keyOf));
    for (const e of what.does === 'pass' ? [] : (phones[what.who] ?? [])) {
      if (held.has(keyOf(e))) continue;
      saw.set(keyOf(e), new Set(held));
      held.add(keyOf(e));
    }
  }
  return phones;
}

/** Everything handed round until each phone has seen it all, in some order. */
function gathered(phones: Phones, order: readonly string[]): Log {
  return order.reduce<Log>((log, who) => passed(phones[who] ?? [], log), []);
}

const orders = fc.shuffledSubarray([...names, ...names], { minLength: 6 });

describe('three phones that write, take back, pick and hand over in any order', () => {
  test('M1, M2, M18: come to one state with the same readings standing, whatever the order, clocks off by ten years either way', () => {
    fc.assert(
      fc.property(acts(30), orders, orders, (all, p, q) => {
        const phones = lived(all);
        const [one, other] = [gathered(phones, p), gathered(phones, q)];
        expect(one).toEqual(other);
        expect(state(fold([...one].reverse()))).toEqual(state(fold(other)));
        const quick = one.reduce<Folded>((f, e) => extend(f, [e]) ?? fold([]), fold([]));
        expect(state(quick)).toEqual(state(fold(one)));
      }),
      { numRuns: runs(1000) },
    );
  }, 3_000_000);

  test('M1: nothing acknowledged disappears, and taking a log in again changes nothing', () => {
    fc.assert(
      fc.property(acts(30), orders, (all, p) => {
        const phones = lived(all);
        const log = gathered(phones, p);
        const have = new Map(log.map((e) => [keyOf(e), canonical(e)]));
        for (const who of names) {
          for (const e of phones[who] ?? []) expect(have.get(keyOf(e))).toBe(canonical(e));
          expect(passed(phones[who] ?? [], log)).toEqual(log);
        }
      }),
      { numRuns: runs(300) },
    );
  }, 3_000_000);

  test('M8: what is picked stays picked: only what was written without having seen it can stand beside it', () => {
    fc.assert(
      fc.property(acts(24), orders, name, (all, p, who) => {
        const phones = lived(all);
        const log = gathered(phones, p);
        const { doubled, places } = fold(log);
        const picks = [...doubled].flatMap((place) => places.get(place)?.heads[0] ?? []).map(pickOf);
        const picked = tap(log, who, picks);
        const again = names.reduce<Log>((l, n) => passed(l, passed(phones[n] ?? [], l)), picked);
        const now = fold(again);
        expect(now.doubled.size).toBe(0);
        for (const pick of picks) {
          const heads = now.places.get(placeOf(pick))?.heads ?? [];
          expect(heads.map(said)).toEqual([said({ ...picked[0], ...pick } as Entry)]);
        }
      }),
      { numRuns: runs(300) },
    );
  }, 3_000_000);

  test('M4: what stands is what no one who had it before them wrote over, as a witness of all three would say', () => {
    fc.assert(
      fc.property(acts(30), orders, (all, p) => {
        const saw = new Map<string, ReadonlySet<string>>();
        const log = gathered(lived(all, saw), p);
        for (const { trail, heads } of fold(log).places.values())
          expect(heads.map(keyOf)).toEqual(witnessed(trail, saw).map(keyOf));
      }),
      { numRuns: runs(300) },
    );
  }, 3_000_000);

  test('M10: a phone that takes back all it did leaves what the others wrote, with what stood double', () => {
    fc.assert(
      fc.property(acts(16), (all) => {
        const alone = all.filter((d) => d.does !== 'pass' && d.does !== 'pick');
        const phones = lived(alone);
        let log = gathered(phones, names);
        for (let k = 0; k < 60; k += 1) log = takenBack(log, 'anna');
        const others = fold(merge(phones.ben ?? [], phones.carl ?? []));
        const { values, ticks, doubled } = fold(log);
        expect([[...values].sort(), [...ticks].sort(), [...doubled].sort()]).toEqual([
          [...others.values].sort(),
          [...others.ticks].sort(),
          [...others.doubled].sort(),
        ]);
      }),
      { numRuns: runs(300) },
    );
  }, 3_000_000);
});

/** Worked out from what each phone held when it wrote, and not from what entries say they are over. */
function witnessed(trail: readonly Entry[], saw: Saw): readonly Entry[] {
  const takenBack = (e: Entry) => e.undoes !== undefined || trail.some((x) => x.undoes === e.act);
  const stands = trail.filter((e) => !takenBack(e));
  return stands.filter((e) => !stands.some((x) => saw.get(keyOf(x))?.has(keyOf(e))));
}
