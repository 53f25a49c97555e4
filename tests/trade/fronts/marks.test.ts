import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, equals, inches } from '../../../src/length/length';
import { blankFor, spoiledFront } from '../../../src/trade/fronts/blank';
import { marksOf, storyStick } from '../../../src/trade/fronts/marks';
import { type Edge, frontWidth } from '../../../src/trade/fronts/width';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

const heights = ['4 3/8', '5 1/16', '5 25/32', '6 15/32', '7 5/32'].map(l);
const at = { opening: l('29 5/16'), top: l('5/64'), between: l('5/64') };

describe('marksOf', () => {
  test('EX 6a: top edges from the top, and the bottom reveal of 5/64 that is left', () => {
    const marks = marksOf(heights, at);
    expect(marks.map((m) => w(m.top))).toEqual(['5/64', '4 17/32', '9 43/64', '15 17/32', '22 5/64']);
    expect(w(marks[4]?.bottomUp)).toBe('5/64');
  });

  test('H.7: front bottoms from the bottom of a 29 9/32 opening', () => {
    const cut = ['4 3/8', '5 1/16', '5 3/4', '6 15/32', '7 5/32'].map(l);
    const marks = marksOf(cut, { ...at, opening: l('29 9/32') });
    expect(marks.map((m) => w(m.bottomUp))).toEqual(['24 53/64', '19 11/16', '13 55/64', '7 5/16', '5/64']);
  });

  test('one story stick lists every edge in reading order from either end', () => {
    const marks = marksOf(heights, at);
    expect(storyStick(marks, 'top').map((e) => `${e.front}${e.edge}`)[1]).toBe('1bottom');
    expect(storyStick(marks, 'bottom').map((e) => `${e.front}${e.edge}`)[0]).toBe('5bottom');
    expect(storyStick(marks, 'top')).toHaveLength(10);
  });

  test('a mark from the top and the same from the bottom meet', () => {
    fc.assert(
      fc.property(fc.array(fc.bigInt({ min: 1n, max: 900n }), { minLength: 1, maxLength: 8 }), (ns) => {
        for (const m of marksOf(
          ns.map((n) => inches(n, 97n)),
          at,
        )) {
          expect(equals(add(m.top, m.topUp), at.opening)).toBe(true);
          expect(equals(add(m.top, m.height), m.bottom)).toBe(true);
        }
      }),
      { numRuns: runs(100) },
    );
  });
});

describe('frontWidth', () => {
  const inset: Edge = { kind: 'inset', reveal: l('5/64') };
  const shared: Edge = { kind: 'shared', partition: l('23/32'), gap: l('5/64') };
  const outer: Edge = { kind: 'overlay', over: l('9/16'), edge: l('23/32') };
  const width = (opening: string, left: Edge, right: Edge) => {
    const made = frontWidth(l(opening), left, right);
    if (!made.ok) throw new Error(made.error.code);
    return made.value;
  };

  test('EX 6c: over 18 7/64, covering 9/16 and half a partition less its gap: 18 127/128', () => {
    const made = width('18 7/64', outer, shared);
    expect([w(made.right), w(made.width.value)]).toEqual(['41/128', '18 127/128']);
    expect(made.warnings).toEqual([]);
  });

  test('EX 6c, H.3, H.5: inset in 17 it is 16 27/32, in 17 1/32 it is 16 7/8', () => {
    expect(w(width('17', inset, inset).width.value)).toBe('16 27/32');
    expect(w(width('17 1/32', inset, inset).width.value)).toBe('16 7/8');
  });

  test('two fronts over one partition leave the gap between them', () => {
    const one = width('18', outer, shared);
    expect(w(one.right.mul(2n).add(l('5/64')) as never)).toBe('23/32');
  });

  test('covering more than the edge there is is said; the whole edge is not', () => {
    const wide = width('18', { kind: 'overlay', over: l('3/4'), edge: l('23/32') }, shared);
    expect(wide.warnings).toMatchObject([{ code: 'past-the-edge', side: 'left' }]);
    expect(width('18', { kind: 'overlay', over: l('23/32'), edge: l('23/32') }, shared).warnings).toEqual([]);
  });

  test('reveals as wide as the opening are refused by how much', () => {
    const made = frontWidth(l('1/8'), inset, inset);
    expect(!made.ok && w(made.error.by)).toBe('1/32');
  });
});

describe('blankFor', () => {
  const cores = ['4 1/2', '5 3/16', '5 7/8'].map(l);
  const plan = { trim: l('5/16'), kerf: l('3/32'), band: l('0'), between: l('5/64') };
  const blank = (more: Partial<typeof plan> = {}) => {
    const made = blankFor(cores, { ...plan, ...more });
    if (!made.ok) throw new Error(made.error.code);
    return made.value;
  };

  test('EX 6f: 16 3/8 long, cores from 5/16, 4 29/32, 10 3/16, slipping -1/64', () => {
    const made = blank();
    expect(w(made.length)).toBe('16 3/8');
    expect(made.cores.map((c) => w(c.near))).toEqual(['5/16', '4 29/32', '10 3/16']);
    expect(w(made.slip)).toBe('-1/64');
  });

  test('no slip when the kerf is the gap and there is no band; a band takes its two thicknesses off each core', () => {
    expect(w(blank({ kerf: l('5/64') }).slip)).toBe('0');
    const banded = blank({ band: l('1/16') });
    expect(banded.cores.map((c) => w(c.high))).toEqual(['4 3/8', '5 1/16', '5 3/4']);
    expect(w(banded.slip)).toBe('7/64');
  });

  test('a kerf of nothing is asked for, and a band that eats a core is said', () => {
    expect(blankFor(cores, { ...plan, kerf: l('0') })).toMatchObject({ error: { code: 'kerf-missing' } });
    expect(blankFor(cores, { ...plan, band: l('2 1/4') })).toMatchObject({
      error: { code: 'core-gone', front: 1 },
    });
  });

  test('a spoiled front breaks the run unless it is the lowest', () => {
    expect(spoiledFront(2, 4)).toEqual({ breaksRun: true, recut: [2, 3, 4] });
    expect(spoiledFront(4, 4)).toEqual({ breaksRun: false, recut: [4] });
  });
});
