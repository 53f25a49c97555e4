import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  add,
  asInches,
  asNumber,
  equals,
  inches,
  type Ratio,
  ratio,
  subtract,
} from '../../../src/length/length';
import {
  boxHeightMost,
  contentsByFill,
  frontFor,
  loadOf,
  loadSays,
  type Room,
  type Thing,
  tallestIn,
  whatDoesNotFit,
} from '../../../src/trade/boxes/contents';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

const under: Omit<Room, 'front'> = {
  over: l('5/64'),
  underRail: false,
  boxUp: l('3/8'),
  grooveUp: l('13/32'),
  bottom: l('11/32'),
  play: l('1/2'),
};
const rail = { ...under, underRail: true };
const part = fc.bigInt({ min: 0n, max: 2000n }).map((n) => inches(n, 77n));
const rooms = fc.record({
  over: fc.bigInt({ min: -64n, max: 64n }).map((n) => inches(n, 64n)),
  underRail: fc.boolean(),
  boxUp: part,
  grooveUp: part,
  bottom: part,
  play: part,
});

describe('tallestIn', () => {
  // h + r - groove-up - bottom - play, and under a rail less the box's rise as well.
  test.each([
    ['under another box', under, '4 3/8', '3 13/64'],
    ['under the rail', rail, '4 3/8', '2 53/64'],
    ['where the front covers the rail by 1/4', { ...rail, over: l('-1/4') }, '4 3/8', '2 1/2'],
    ['in Example 6 of boxes turned about', under, '5 23/64', '4 3/16'],
    ['where nothing does', rail, '1 1/2', '-3/64'],
  ])('%s: the tallest that goes in', (_, room, front, tall) => {
    expect(w(tallestIn({ ...room, front: l(front) }))).toBe(tall);
  });

  test('the box above moves over the thing: its own rise counts only under a rail', () => {
    const high = (boxUp: string, room: typeof rail) =>
      w(tallestIn({ ...room, front: l('6'), boxUp: l(boxUp) }));
    expect(high('1/4', under)).toBe(high('3/4', under));
    expect([high('1/4', rail), high('3/4', rail)]).toEqual(['4 37/64', '4 5/64']);
  });
});

describe('frontFor', () => {
  test('Example 6 of boxes: a crystal of 4 3/16 with 1/2 play asks for a front of 5 23/64', () => {
    expect(w(frontFor(l('4 3/16'), under))).toBe('5 23/64');
  });

  test('under the rail it asks for the rise of the box as well', () => {
    expect(w(frontFor(l('4 3/16'), rail))).toBe('5 47/64');
  });

  test('the front a thing asks for takes just that thing', () => {
    fc.assert(
      fc.property(part, rooms, (tall, room) => {
        expect(equals(tallestIn({ ...room, front: frontFor(tall, room) }), tall)).toBe(true);
        expect(equals(frontFor(tallestIn({ ...room, front: tall }), room), tall)).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});

describe('boxHeightMost', () => {
  const at = { front: l('4 3/8'), over: l('5/64'), underRail: true, boxUp: l('3/8') };

  test('step 6 of the carried cabinet: under the rail a box may be 4 5/64 less play high: 4 1/8 would strike by 3/64', () => {
    const most = boxHeightMost({ ...at, play: l('0') });
    expect([w(most), w(subtract(l('4 1/8'), most))]).toEqual(['4 5/64', '3/64']);
  });

  test('step 6 of the carried cabinet: with play 1/4 it may be 3 53/64', () => {
    expect(w(boxHeightMost({ ...at, play: l('1/4') }))).toBe('3 53/64');
  });

  test('under another box its own rise takes nothing', () => {
    expect(w(boxHeightMost({ ...at, underRail: false, play: l('1/4') }))).toBe('4 13/64');
  });

  test('the tallest thing reaches just as high as the highest box may', () => {
    fc.assert(
      fc.property(part, rooms, (front, room) => {
        const box = boxHeightMost({ ...room, front });
        const top = add(tallestIn({ ...room, front }), add(room.grooveUp, room.bottom));
        expect(equals(top, box)).toBe(true);
      }),
      { numRuns: runs(100) },
    );
  });
});

describe('loadOf', () => {
  const quartz: Thing = { id: 'a', name: 'Quartz', heavy: ratio(5n, 2n), count: 4 };
  const ammonite: Thing = { id: 'b', name: 'Ammonite', heavy: ratio(1n, 3n), count: 2 };
  const whelk: Thing = { id: 'c', name: 'Whelk', count: 2 };
  const said = (things: readonly Thing[]) => {
    const { contents, unweighed } = loadOf(things);
    return [contents.toFraction(true), unweighed];
  };

  test('each kind counts as often as it is there, exactly', () => {
    expect(said([quartz, ammonite])).toEqual(['10 2/3', 0]);
  });

  test('what nobody weighed is counted, each one, and adds nothing', () => {
    expect(said([quartz, whelk, { ...whelk, count: 3 }])).toEqual(['10', 5]);
    expect(said([{ ...quartz, count: 0 }])).toEqual(['0', 0]);
    expect(said([])).toEqual(['0', 0]);
  });

  test('what is said to weigh nothing or less is not weighed', () => {
    expect(
      said([quartz, { ...whelk, heavy: ratio(0n, 1n) }, { ...ammonite, heavy: ratio(-3n, 1n) }]),
    ).toEqual(['10', 4]);
  });
});

describe('loadSays', () => {
  const code = (total: Ratio, rating?: Ratio) => loadSays(total, rating).code;

  test('a rating not said, of nothing or under it, is asked for, never assumed', () => {
    for (const rating of [undefined, ratio(0n), ratio(-75n)])
      expect(code(ratio(10n), rating)).toBe('rating-missing');
  });

  test.each([
    [0n, 'within'],
    [75_000n, 'within'],
    [75_001n, 'near'],
    [100_000n, 'near'],
    [100_001n, 'over'],
  ])('%d thousandths of a pound on a 100 lb pair is %s', (thousandths, want) => {
    expect(code(ratio(thousandths, 1000n), ratio(100n))).toBe(want);
  });

  test('the share is total over rating, exactly', () => {
    const says = loadSays(ratio(50n, 3n), ratio(75n));
    expect(says.code !== 'rating-missing' && says.share.toFraction()).toBe('2/9');
  });
});

describe('contentsByFill', () => {
  const at = {
    wide: l('15 5/32'),
    deep: l('14 15/32'),
    high: l('3'),
    fill: ratio(3n, 10n),
    gravity: ratio(265n, 100n),
  };

  test('Example 9 of boxes: quartz filling three tenths of 15 5/32 × 14 15/32 × 3 weighs 18.9 lb', () => {
    expect(contentsByFill(at).valueOf().toFixed(1)).toBe('18.9');
  });

  test('Example 9 of boxes: with a 9 lb box and front on a 75 lb pair 37 % is used', () => {
    const total = asNumber(add(asInches(contentsByFill(at)), inches(9n)));
    const says = loadSays(total, ratio(75n));
    expect(says.code).toBe('within');
    expect(says.code !== 'rating-missing' && Math.round(says.share.valueOf() * 100)).toBe(37);
  });

  test('a cubic foot of water weighs 62.4 lb', () => {
    const foot = { wide: l('12'), deep: l('12'), high: l('12'), fill: ratio(1n), gravity: ratio(1n) };
    expect(contentsByFill(foot).valueOf().toFixed(1)).toBe('62.4');
  });

  test('nothing in it weighs nothing', () => {
    expect(contentsByFill({ ...at, fill: ratio(0n) }).valueOf()).toBe(0);
  });
});

describe('whatDoesNotFit', () => {
  const at = { tallest: l('3 7/8'), longest: l('9') };
  const thing = (id: string, more: Partial<Thing>): Thing => ({ id, name: id, count: 1, ...more });
  const off = (...things: readonly Thing[]) =>
    whatDoesNotFit(things, at).map((x) => [x.code, x.thing, w(x.by)]);

  test('too tall and too long are said apart, by thing as listed', () => {
    const crystal = thing('a', { tall: l('4'), long: l('9 1/2') });
    expect(off(crystal, thing('b', { tall: l('2') }), thing('c', { long: l('10') }))).toEqual([
      ['too-tall', 'a', '1/8'],
      ['too-long', 'a', '1/2'],
      ['too-long', 'c', '1'],
    ]);
  });

  test('what just fits, fits; a 64th more does not', () => {
    expect(off(thing('a', { tall: l('3 7/8'), long: l('9') }))).toEqual([]);
    expect(off(thing('a', { tall: l('3 57/64') }))).toEqual([['too-tall', 'a', '1/64']]);
  });

  test('what was not said of a thing is not checked', () => {
    expect(off(thing('a', {}))).toEqual([]);
  });

  test('a size of nothing or less is none, also where nothing goes in', () => {
    const sizeless = [thing('a', { tall: l('0') }), thing('b', { tall: l('-1/64'), long: l('0') })];
    expect(whatDoesNotFit(sizeless, { tallest: l('-3/64'), longest: l('-1') })).toEqual([]);
  });

  test('where nothing goes in, every thing with a height is too tall', () => {
    const none = whatDoesNotFit([thing('a', { tall: l('1') })], { ...at, tallest: l('-3/64') });
    expect(none.map((x) => w(x.by))).toEqual(['1 3/64']);
  });

  test('a thing of the height its front was asked for goes in', () => {
    fc.assert(
      fc.property(part, rooms, (tall, room) => {
        const tallest = tallestIn({ ...room, front: frontFor(tall, room) });
        expect(whatDoesNotFit([thing('a', { tall })], { ...at, tallest })).toEqual([]);
        const more = add(tall, inches(1n, 64n));
        expect(whatDoesNotFit([thing('a', { tall: more })], { ...at, tallest })).toHaveLength(1);
      }),
      { numRuns: runs(100) },
    );
  });
});
