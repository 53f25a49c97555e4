import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, equals, inches, less, subtract } from '../../../src/length/length';
import { frontMarksOf, storyStick } from '../../../src/trade/fronts/marks';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

type Marks = Parameters<typeof storyStick>[0];

const heights = ['4 3/8', '5 1/16', '5 25/32', '6 15/32', '7 5/32'].map(l);
const at = { opening: l('29 5/16'), top: l('5/64'), between: l('5/64') };
const read = (marks: Marks, from: 'top' | 'bottom') =>
  storyStick(marks, from).map((e) => `${e.front} ${e.edge} ${w(e.at)}`);

describe('marksOf', () => {
  test('Example 1 of fronts: top edges from the top, and the bottom reveal of 5/64 that is left', () => {
    const marks = frontMarksOf(heights, at);
    expect(marks.map((m) => w(m.top))).toEqual(['5/64', '4 17/32', '9 43/64', '15 17/32', '22 5/64']);
    expect(w(marks[4]?.bottomUp)).toBe('5/64');
    expect(marks.map((m) => m.no)).toEqual([1, 2, 3, 4, 5]);
  });

  test('Example 8 of fronts: front bottoms from the bottom of the same opening', () => {
    const marks = frontMarksOf(heights, at);
    expect(marks.map((m) => w(m.bottomUp))).toEqual(['24 55/64', '19 23/32', '13 55/64', '7 5/16', '5/64']);
  });

  test('step 7 of the carried cabinet: front bottoms from the bottom of a 29 9/32 opening', () => {
    const cut = ['4 3/8', '5 1/16', '5 3/4', '6 15/32', '7 5/32'].map(l);
    const marks = frontMarksOf(cut, { ...at, opening: l('29 9/32') });
    expect(marks.map((m) => w(m.bottomUp))).toEqual(['24 53/64', '19 11/16', '13 55/64', '7 5/16', '5/64']);
  });

  test('fronts that cover the ends are marked outside the opening', () => {
    const marks = frontMarksOf([l('5'), l('6 5/8')], {
      opening: l('10 3/4'),
      top: l('-1/2'),
      between: l('1/8'),
    });
    expect(marks.map((m) => w(m.top))).toEqual(['-1/2', '4 5/8']);
    expect(marks.map((m) => w(m.bottomUp))).toEqual(['6 1/4', '-1/2']);
    expect(w(marks[0]?.topUp)).toBe('11 1/4');
  });

  test('marks from both ends meet, and fronts stand a reveal apart', () => {
    fc.assert(
      fc.property(fc.array(fc.bigInt({ min: 1n, max: 900n }), { minLength: 1, maxLength: 8 }), (ns) => {
        const marks = frontMarksOf(
          ns.map((n) => inches(n, 97n)),
          at,
        );
        marks.forEach((m, k) => {
          expect(equals(add(m.top, m.topUp), at.opening)).toBe(true);
          expect(equals(add(m.bottom, m.bottomUp), at.opening)).toBe(true);
          expect(equals(add(m.top, m.height), m.bottom)).toBe(true);
          const over = marks[k - 1];
          expect(w(over ? subtract(m.top, over.bottom) : m.top)).toBe('5/64');
        });
      }),
      { numRuns: runs(200) },
    );
  });
});

describe('storyStick', () => {
  const two = frontMarksOf([l('4'), l('5')], { opening: l('9 1/4'), top: l('1/8'), between: l('1/16') });

  test('lists every edge in reading order from either end', () => {
    expect(read(two, 'top')).toEqual(['1 top 1/8', '1 bottom 4 1/8', '2 top 4 3/16', '2 bottom 9 3/16']);
    expect(read(two, 'bottom')).toEqual(['2 bottom 1/16', '2 top 5 1/16', '1 bottom 5 1/8', '1 top 9 1/8']);
  });

  test('where two edges meet, the front nearer the end it is read from comes first', () => {
    const meet = frontMarksOf([l('4'), l('5')], { opening: l('9'), top: l('0'), between: l('0') });
    expect(read(meet, 'top')).toEqual(['1 top 0', '1 bottom 4', '2 top 4', '2 bottom 9']);
    expect(read(meet, 'bottom')).toEqual(['2 bottom 0', '2 top 5', '1 bottom 5', '1 top 9']);
  });

  test('a front that covers the end starts before it', () => {
    const over = frontMarksOf([l('5')], { opening: l('4'), top: l('-1/2'), between: l('0') });
    expect(read(over, 'top')).toEqual(['1 top -1/2', '1 bottom 4 1/2']);
  });

  test('read from the other end it is the same edges the other way round', () => {
    fc.assert(
      fc.property(fc.array(fc.bigInt({ min: 1n, max: 90n }), { minLength: 1, maxLength: 8 }), (ns) => {
        const marks = frontMarksOf(
          ns.map((n) => inches(n, 8n)),
          at,
        );
        const [down, up] = [storyStick(marks, 'top'), storyStick(marks, 'bottom')];
        expect(up.map((e) => `${e.front}${e.edge}`)).toEqual(
          down.map((e) => `${e.front}${e.edge}`).reverse(),
        );
        down.forEach((e, k) => {
          const next = down[k + 1];
          if (next) expect(less(next.at, e.at)).toBe(false);
        });
      }),
      { numRuns: runs(200) },
    );
  });
});
