import { describe, expect, test } from 'vitest';
import { add, subtract } from '../../../src/length/length';
import * as anchor from '../../../src/screens/install/anchor-words';
import * as finish from '../../../src/screens/install/finish-words';
import * as labels from '../../../src/screens/install/label-words';
import * as back from '../../../src/screens/install/look-back-words';
import * as screws from '../../../src/screens/install/screw-words';
import { rowFails } from '../../../src/screens/shared/row-fails';
import { setupOf } from '../../../src/trade/setups/setup';
import { l } from '../../trade/grooves/sample';

const usual = {
  through: undefined,
  into: undefined,
  bite: 'face',
  run: undefined,
  leastBite: l('3/8'),
} as const;
const limits = { least: l('1'), most: l('1 1/4') };

describe('screws', () => {
  test('say which to take, and why none will do, by how much and what would', () => {
    const pick = { ...limits, pick: l('1 1/4'), bite: l('1/2') };
    expect(screws.takes(pick, 'in', false)).toContain(
      'Take screws 1 1/4 long, the longest that bite enough: each bites 1/2',
    );
    expect(screws.takes(pick, 'in', true)).toContain('the shortest that bite enough');
    // through 18 mm, a bite of 1 1/4: 1.959 at the least, in a job that is in inches
    const inches = {
      ...pick,
      pick: l('2'),
      least: add(l('18 mm'), l('1 1/4')),
      bite: subtract(l('2'), l('18 mm')),
    };
    expect(screws.takes(inches, 'in', true)).toContain('each bites 1.291. From 1.959 to 1 1/4 would do');
    const wall = { ...pick, clear: l('50 mm') };
    expect(screws.takes(wall, 'mm', true)).toContain('the tip 40 mm in at most');
    expect(screws.takes(pick, 'mm', false)).toContain('3 mm left in front of the tip');
    expect(screws.deep(l('5 mm'), 'mm')).toContain('deeper than 40 mm into the wall');
    const says = (code: 'too-short' | 'too-long' | 'none-between' | 'no-room') =>
      screws.fails({ ...limits, fails: code, by: l('1/16') }, { usual });
    expect(says('too-short')).toBe(
      'Every screw on the shelf is too short, the longest by 1/16: one between 1 and 1 1/4 is wanted.',
    );
    expect(says('too-long')).toContain('would come through, the shortest by 1/16');
    expect(says('none-between')).toContain('the nearest is off by 1/16');
    expect(says('no-room')).toContain('1/16 too thin for a bite of 3/8');
  });

  test('one screw and several, one in the middle', () => {
    const row = { count: 1, marks: [l('1 1/2')] };
    expect(screws.row(row, ['1 1/2'], 1)).toBe(
      '1 screw: the ends leave room for one, in the middle, at 1 1/2.',
    );
    const two = { count: 4, marks: [l('1'), l('5')], pitch: l('4') };
    expect(screws.row(two, ['1', '5'], 2)).toBe('4 screws in 2 rows, 4 apart. Marks from one end: 1, 5.');
    expect(screws.many(1)).toContain('1 screw goes');
    expect(screws.many(undefined)).toContain('until their count is said');
  });

  test('a blank of a row that is nothing is named', () => {
    expect(rowFails({ code: 'not-positive', what: 'most' })).toBe('Make the spacing more than 0.');
  });

  test('are called by what they are for, else by their kind', () => {
    expect(screws.ask({ kind: 'cleat' }, 'many')).toBe('Another cleat to the wall: how many');
    expect(screws.ask({ kind: 'cleat', name: 'Upper cleat' }, 'many')).toBe('Upper cleat: how many');
  });
});

describe('the anchor card', () => {
  test('never promises what a fixing holds', () => {
    const all = [anchor.notReckoned, anchor.noZones, anchor.fact({ code: 'before-loading' })].join(' ');
    expect(all).not.toMatch(/\bsafe\b|cannot tip|will hold/i);
    expect(anchor.fact({ code: 'strip-between', past: l('4 1/4'), over: l('60') })).toContain(
      '4 1/4 over 60',
    );
  });

  test('a case with a strip between is fixed through that, one without wants one', () => {
    const between = { code: 'strip-between', past: l('4 1/4'), over: l('60') } as const;
    expect(anchor.fact({ ...between, has: 'nailer' })).toContain('fix it through the nailer between as well');
    expect(anchor.fact(between)).toContain('an anchor strip between floor and top as well');
  });

  test('where it goes along the wall, and how many studs take a screw', () => {
    expect(anchor.atWall(undefined, undefined, undefined)).toBe(
      'Where it goes along the wall is not said yet.',
    );
    expect(anchor.atWall(l('2'), l('38'), ['10 3/4'])).toBe(
      'It goes from 2 to 38 along the wall. 1 stud takes a screw: at 10 3/4.',
    );
    expect(anchor.atWall(l('2'), l('38'), ['12', '28'])).toContain('2 studs take a screw: at 12, 28.');
    expect(anchor.atWall(l('2'), l('9'), [])).toContain('No stud behind it takes a screw.');
  });

  test('one fixing and two, a zone with its place and without', () => {
    expect(anchor.lack({ code: 'too-few', by: 1 })).toBe('1 fixing too few.');
    expect(anchor.lack({ code: 'too-few', by: 2 })).toBe('2 fixings too few.');
    expect(anchor.zone({ what: 'Water pipe', from: l('10'), to: l('14') })).toBe(
      'Not here: Water pipe, 10 to 14 from the left.',
    );
    const low = { from: l('10'), to: l('14'), low: l('8'), high: l('9') };
    expect(anchor.zone({ what: 'Wire', ...low })).toBe('Not here: Wire, 10 to 14 from the left, 8 to 9 up.');
    expect(anchor.zone({})).toBe('Not here: something in the wall.');
  });
});

test('a cure of one day and of several, curing and done', () => {
  const wait = { days: 1, usual: true };
  expect(finish.cure({ ...wait, is: 'not-on' })).toContain('1 day is counted');
  expect(finish.cure({ days: 7, usual: true, is: 'not-on' })).toContain('7 days are counted');
  const since = '2026-11-02T12:00:00.000Z';
  expect(finish.cure({ ...wait, is: 'curing', since, until: '2026-11-03T12:00:00.000Z' })).toMatch(
    /^On since .+: cured on .+ or later/,
  );
  expect(finish.cure({ ...wait, is: 'cured' })).toBe('Ticked as cured.');
});

test('labels as text, one a line; one of a thing has no count', () => {
  const lot = (name: string, count: number) => ({ id: name, name, count });
  const text = labels.asText('Cabinet', [
    {
      id: 'b',
      named: '',
      labels: [
        { on: 'drawer', place: { no: 1 }, things: [lot('Agates', 18), lot('Geode', 1)] },
        { on: 'drawer', place: { no: 2, column: 2 }, things: [] },
      ],
    },
  ]);
  expect(text).toBe('Cabinet\n\nDrawers\nDrawer 1: Agates × 18, Geode\nDrawer 2, column 2: empty\n');
  expect(labels.withoutPlace(1)).toContain('1 lot goes nowhere yet and has no label');
  expect(labels.withoutPlace(2)).toContain('2 lots go nowhere yet and have no label');
});

test('what was learned, beside what the shop says or does not', () => {
  const one = { field: 'slideThickness', now: l('1/2'), learned: l('17/32'), from: '' } as const;
  expect(back.learned(one)).toBe('Slides need 17/32 at each side in Drawers. Shop figures say 1/2.');
  expect(back.learned({ ...one, now: undefined, from: 'Upper' })).toContain(
    'in Upper. Shop figures say nothing.',
  );
});

test('look back tells of the bit and of pieces: what it was, what was found, and where', () => {
  // the side's groove 13 up, the base 2 31/32 to the middle of a 1/2 bit: 13 - (2 31/32 - 1/4) = 10 9/32
  const on = { at: 'end', named: 'bottom', guide: 'reference' } as const;
  const figure = { value: l('10 9/32'), rest: l('0') };
  const setup = setupOf({ machine: 'router', cutter: l('1/2'), sets: 'guide-edge', figure, on });
  const name = { of: { role: 'left' } } as const;
  const at = {
    id: 'x',
    part: 'left',
    copy: '1',
    name,
    what: 'groove',
    setup,
    figure: l('0'),
    after: [],
  } as const;
  expect(back.bit({ now: l('1/2'), learned: l('0.494'), at })).toBe(
    'The bit cuts 0.494 wide by a test cut in one pass (Left side, Guide edge at 10 9/32). Shop figures say 1/2.',
  );
  const stack = { ...at, setup: setupOf({ machine: 'fence', cutter: l('23/32'), on }) };
  const piece = { size: l('1/8'), count: 2, kind: 'chipper' } as const;
  expect(back.lacked({ piece, has: 1, at: stack })).toBe(
    'A stack was made with 2\u00a0×\u00a01/8 chippers (Table saw, fence, 23/32 wide). The box in Shop figures has 1.',
  );
  expect(back.lacked({ piece, has: 0, at: stack })).toMatch(/has none\.$/);
});
