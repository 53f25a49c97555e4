import { describe, expect, test } from 'vitest';
import { editCase, editInside, editPart, editShelf, editStock, editThing } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { type Length, type Ratio, ratio } from '../../src/length/length';
import { toWhole } from '../../src/length/round';
import { pitchFor, spansOf, traysFor, worstOf } from '../../src/plan/shelf-loads';
import { l, w } from '../length/write-figures';
import { caseDecided } from './carried-cabinet-case';
import { worked } from './job-of';

function spans(...more: readonly (readonly Change[])[]) {
  const { job, plan } = worked([...caseDecided, ...more.flat()]);
  const found = plan.worked.get('case');
  if (!found?.ok) throw new Error('case');
  const all = spansOf(job, found.value);
  const [trays, shelf] = all;
  if (!trays || !shelf) throw new Error('spans');
  return { all, trays, shelf };
}

const thousandths = (x: Length): bigint => toWhole(x.mul(1000n) as unknown as Ratio, 'halfExpand');
const tenth = (x: Ratio): string => x.valueOf().toFixed(1);

const stiff = editStock('sheetb', { stiff: ratio(13n, 10n) });
/** Thirteen of 5 pounds on the fixed shelf. */
const ores = editThing('ores', { name: 'Ore', part: 'case~shelf', count: 13, heavy: ratio(5n) });

describe('a shelf in its bay', () => {
  test('spans the bay, as deep as the case in front of its back; the rail is no shelf', () => {
    const { all, shelf } = spans();
    expect(all.map(({ part }) => part.id)).toEqual(['case~trays', 'case~shelf']);
    expect([w(shelf.shelf.span), w(shelf.shelf.deep), w(shelf.shelf.thick)]).toEqual([
      '18 7/64',
      '17 7/32',
      '23/32',
    ]);
    expect(shelf.loaded).toEqual([]);
    expect(worstOf(shelf)).toBeUndefined();
  });

  test('carries what stands on it and itself', () => {
    // itself: 18 43/64 × 17 7/32 / 144 × 2.2 = 4.91; E 1.3 million, I = 17.21875 × .371307 / 12 = .53279:
    // 5 × 69.91 × 18.109³ / (384 × 1,300,000 × .53279) = .0078; allowed 18.109 / 600 = .0302
    const [one] = spans(stiff, ores).shelf.loaded;
    if (!one?.sag.ok) throw new Error('sag');
    expect([tenth(one.contents), tenth(one.load), one.unweighed]).toEqual(['65.0', '69.9', 0]);
    expect([thousandths(one.sag.value.sag), thousandths(one.sag.value.allowed)]).toEqual([8n, 30n]);
    expect(one.cures).toEqual([]);
  });

  test('loaded for years it sags twice as far, with its grain across the span as the stuff is across', () => {
    // across: the least of plywood, .6 million, against 1.2 along: twice as far
    const sag = (...more: readonly (readonly Change[])[]) => {
      const found = spans(ores, ...more).shelf.loaded[0]?.sag;
      if (!found?.ok) throw new Error('sag');
      return found.value.sag;
    };
    expect(sag(editShelf('case~shelf', { years: true })).equals(sag().mul(2n))).toBe(true);
    expect(sag(editPart('case~shelf', { lies: 'across' })).equals(sag().mul(2n))).toBe(true);
  });

  test('solid wood across its grain is asked for its stiffness, never assumed', () => {
    const [one] = spans(
      ores,
      editStock('sheetb', { stuff: 'hardwood' }),
      editPart('case~shelf', { lies: 'across' }),
    ).shelf.loaded;
    expect(one?.sag).toMatchObject({ ok: false, error: { code: 'stiff-missing' } });
  });

  test('a strip on its edge makes it stiffer and heavier; without its stock it is none', () => {
    const strip = editShelf('case~shelf', { strip: 'oak', tall: l('2') });
    const { shelf } = spans(strip);
    expect(shelf.shelf.edging).toMatchObject({ thick: l('3/4'), tall: l('2'), stiff: ratio(1500000n) });
    // 18 43/64 × 2 / 144 × 2.8 = .73 more than 4.91
    expect(tenth(shelf.own)).toBe('5.6');
    expect(spans(editShelf('case~shelf', { strip: 'none' })).shelf.shelf.edging).toBeUndefined();
  });

  test('each end carries its share by where a thing stands', () => {
    // 65 at 6 of 18.109: left 65 × 12.109 / 18.109 = 43.46, half of itself 2.46; right 21.54 and 2.46
    const [one] = spans(ores, editThing('ores', { from: l('6') })).shelf.loaded;
    if (!one?.ends.ok) throw new Error('ends');
    expect([tenth(one.ends.value.left), tenth(one.ends.value.right)]).toEqual(['45.9', '24.0']);
  });

  test('eight of 40 pounds are over the 200 a shelf may carry, for years as well', () => {
    // 320 and itself, 4.9: 324.9, 124.9 over; half of it, 162.5, would go over half the span
    const abalone = editThing('abalone', { part: 'case~shelf', count: 8, heavy: ratio(40n) });
    const [one] = spans(abalone).shelf.loaded;
    expect([one && tenth(one.load), one?.heavy && tenth(one.heavy)]).toEqual(['324.9', '124.9']);
    expect(one?.cures.map((x) => (x.code === 'lighter' ? tenth(x.load) : x.code))).toEqual([
      'upright',
      '200.0',
    ]);
    // for years the most for its sag is half, 249.5 / 2 = 124.7 or so: the lesser is told
    const [years] = spans(abalone, editShelf('case~shelf', { years: true })).shelf.loaded;
    const most = years?.cures.find((x) => x.code === 'lighter');
    expect(most?.code === 'lighter' && most.load.lt(125n) && ratio(124n).lt(most.load)).toBe(true);
    const [light] = spans(editThing('one', { part: 'case~shelf', count: 1, heavy: ratio(195n) })).shelf
      .loaded;
    expect(light?.heavy).toBeUndefined();
  });

  test('with nothing on it a shelf of 28 1/2 is told what helps under the even load', () => {
    // both bays 28 1/2: 2 × (28 1/2 − 18 7/64) = 20 25/32 more than 38 3/8: 59 5/32
    // load 40 × 28.5 × 17.21875 / 144 = 136.315; sag over allowed =
    // .0434028 × 28.5³ × 600 / (1.2 million × .371307) = 1.35297;
    // lighter 136.315 / 1.35297 = 100.75; thicker by its cube root, .71875 × 1.106 = .795:
    // 13/16; over 28.5 / 1.106 = 25.77: 25 3/4
    const { shelf } = spans(editCase('case', { width: l('59 5/32') }));
    expect([w(shelf.shelf.span), shelf.loaded.length, shelf.even && tenth(shelf.even.load)]).toEqual([
      '28 1/2',
      0,
      '136.3',
    ]);
    const told = shelf.even?.cures.map((x) => {
      if (x.code === 'lighter') return tenth(x.load);
      return x.code === 'thicker' ? w(x.thick) : x.code === 'shorter' ? w(x.span) : x.code;
    });
    expect(told).toEqual(['edging', 'upright', '13/16', '25 3/4', '100.8']);
  });

  test('what does not go on is told by how much', () => {
    const [one] = spans(ores, editThing('ores', { long: l('18 1/4'), wide: l('17 1/4'), tall: l('40') }))
      .shelf.loaded;
    expect(one?.unfit.map(({ code, by }) => [code, w(by)])).toEqual([
      ['too-long', '9/64'],
      ['too-wide', '1/32'],
      // clear 58 11/16, less 30 and 23/32: 27 31/32 over it
      ['too-high', '12 1/32'],
    ]);
    const [just] = spans(ores, editThing('ores', { long: l('18 7/64'), wide: l('17 7/32') })).shelf.loaded;
    expect(just?.unfit).toEqual([]);
  });
});

test('what is left over a fixed shelf ends at the next above it in its bay, not at those of other bays', () => {
  // from 30 23/32 to 40: 9 9/32; the upper one has 58 11/16 less 40 23/32: 17 31/32
  const upper = editInside('case', 'upper', { kind: 'fixed', bay: 2, at: l('40') });
  expect(spans(upper).all.map((x) => x.clear && w(x.clear))).toEqual(['1 15/32', '9 9/32', '17 31/32']);
  const other = editInside('case', 'upper', { kind: 'fixed', bay: 1, at: l('40') });
  expect(spans(other).all.map((x) => x.clear && w(x.clear))).toContain('27 31/32');
});

describe('trays', () => {
  const flat = editThing('flat', {
    name: 'Fossil',
    part: 'case~trays',
    piece: 4,
    tall: l('1 1/2'),
    heavy: ratio(2n),
  });

  test('each with its own things; what is too tall under the next asks for another pitch', () => {
    // 1 13/16 less 11/32 is 1 15/32: 1/32 too tall; 1 1/2 + 11/32 = 1 27/32 apart
    const { trays } = spans(flat, editThing('two', { part: 'case~trays', heavy: ratio(9n) }));
    expect(trays.loaded.map(({ piece, things }) => [piece, things.map(({ id }) => id)])).toEqual([
      [1, ['two']],
      [4, ['flat']],
    ]);
    expect(trays.loaded[1]?.unfit.map(({ code, by }) => [code, w(by)])).toEqual([['too-tall', '1/32']]);
    expect(pitchFor(trays)).toEqual(l('1 27/32'));
    expect(worstOf(trays)?.piece).toBe(1);
  });

  test('no standard is told of them, and no pitch where nothing tall is said', () => {
    const { trays, shelf } = spans();
    expect([trays.even, pitchFor(trays), pitchFor(shelf)]).toEqual([undefined, undefined, undefined]);
  });

  test('how many of them the things fill, each kind in rows on its own', () => {
    const on = (...things: readonly (readonly Change[])[]) => traysFor(spans(...things).trays);
    const kind = (id: string, patch: Parameters<typeof editThing>[1]) =>
      editThing(id, { part: 'case~trays', ...patch });
    // 18 7/64 by 17 7/32 clear: 4 × 3 lie 4 by 5 (18 ÷ 4 = 4, 17 ÷ 5 = 3), turned 3 × 4 (18 ÷ 5 = 3, 17 ÷ 4 = 4): 12
    const ferns = { long: l('4'), wide: l('5') };
    expect(on(kind('a', { count: 12, ...ferns }))).toBe(1);
    expect(on(kind('a', { count: 13, ...ferns }))).toBe(2);
    // and 1 of 10 by 9 a tray, turned as well: 18 ÷ 9 = 2, 17 ÷ 10 = 1, so 2; three of them 2 trays
    expect(on(kind('a', { count: 13, ...ferns }), kind('b', { count: 3, long: l('10'), wide: l('9') }))).toBe(
      4,
    );
    expect(on(kind('a', { count: 13, long: l('4') }))).toBeUndefined();
    expect(on(kind('a', { count: 1, long: l('30'), wide: l('9') }))).toBeUndefined();
    expect(traysFor(spans().shelf)).toBeUndefined();
  });
});
