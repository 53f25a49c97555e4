import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { equals, inches, type Length, subtract, sum } from '../../../src/length/length';
import {
  type Ahead,
  bothAhead,
  edgesAhead,
  gapsAhead,
  gapWarning,
  trimTotal,
} from '../../../src/trade/fronts/fitted';
import { trimsFor } from '../../../src/trade/fronts/trims';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

const wanted = l('5/64');
const six = { opening: l('29 5/16'), reach: l('15 9/16'), heights: [l('6 13/32'), l('7 3/32')] };
const eight = { opening: l('29 9/32'), reach: l('15 1/2'), heights: [l('6 15/32'), l('7 5/32')] };
const gaps = (ahead: Ahead) => {
  const found = gapsAhead(ahead);
  if (!found) throw new Error('no gap');
  return found;
};

describe('gapsAhead', () => {
  test('Example 4 of fronts: 13 3/4 left, 1/12 a gap over three; the fronts may be 1/64 taller', () => {
    const found = gaps(six);
    expect([w(found.space), found.gaps, w(found.each)]).toEqual(['13 3/4', 3, '1/12']);
    expect(w(trimTotal(found, wanted))).toBe('-1/64');
    expect(gapWarning(found.each)).toBeUndefined();
  });

  test('step 8 of the carried cabinet: 13 25/32 left, 5/96 a gap, tight; 5/64 off the two holds it', () => {
    const found = gaps(eight);
    expect([w(found.space), w(found.each)]).toEqual(['13 25/32', '5/96']);
    expect(gapWarning(found.each)?.code).toBe('tight');
    expect(w(trimTotal(found, wanted))).toBe('5/64');
    const fronts = eight.heights.map((height, k) => ({ no: k + 4, height, cut: false }));
    const trims = trimsFor(l('5/64'), fronts);
    expect([...trims.off].map(([no, x]) => `${no}: ${w(x)}`)).toEqual(['4: 1/32', '5: 3/64']);
    expect([...trims.heights.values()].map((x) => w(x))).toEqual(['6 7/16', '7 7/64']);
  });

  test('with the end held only the gaps before the fronts share; an overlay end is negative', () => {
    const held = gaps({ ...six, hold: l('-1/2') });
    expect([held.gaps, w(held.each)]).toEqual([2, '3/8']);
    expect(gapsAhead({ ...six, heights: [], hold: l('5/64') })).toBeUndefined();
    expect(w(gaps({ ...six, heights: [] }).each)).toBe('13 3/4');
  });

  test('fronts that do not go in bind, by how much', () => {
    const found = gaps({ ...eight, reach: l('16') });
    expect(w(found.each)).toBe('-11/96');
    const warning = gapWarning(found.each);
    expect(warning?.code === 'binds' && w(warning.by)).toBe('11/96');
  });

  test('a front that already stands past the opening binds by that much, with none to go', () => {
    const found = gaps({ ...eight, reach: l('30'), heights: [] });
    expect([w(found.space), found.gaps, w(found.each)]).toEqual(['-23/32', 1, '-23/32']);
  });

  test('with none to go and the end not held the one gap is all the space', () => {
    const found = gaps({ ...six, reach: l('29 7/32'), heights: [] });
    expect([found.gaps, w(found.each), w(trimTotal(found, wanted))]).toEqual([1, '3/32', '-1/64']);
  });

  test('a gap of 1/16 or 5/32 is well, a hair beyond is not', () => {
    expect(gapWarning(l('1/16'))).toBeUndefined();
    expect(gapWarning(l('5/32'))).toBeUndefined();
    expect(gapWarning(l('63/1024'))?.code).toBe('tight');
    expect(gapWarning(l('161/1024'))?.code).toBe('wide');
    expect(gapWarning(l('0'))?.code).toBe('tight');
    expect(gapWarning(l('-1/1024'))?.code).toBe('binds');
  });
});

describe('bothAhead', () => {
  test('left and right are reckoned apart and the tighter side decides the trim', () => {
    const both = bothAhead(eight, { ...eight, reach: l('15 17/32') }, wanted);
    expect(w(both.taper)).toBe('1/96');
    expect(w(both.trim)).toBe('7/64');
  });

  test('with nothing to share at either side there is no taper and no trim', () => {
    const done = { ...six, heights: [], hold: wanted };
    const both = bothAhead(done, done, wanted);
    expect([both.left, both.right, w(both.taper), w(both.trim)]).toEqual([undefined, undefined, '0', '0']);
  });

  test('where both sides have room the lesser room decides how much taller', () => {
    const both = bothAhead(six, { ...six, reach: l('15 1/2') }, wanted);
    expect([w(both.trim), w(both.taper)]).toEqual(['-1/64', '1/48']);
  });
});

describe('trimsFor', () => {
  const two = [
    { no: 4, height: l('6'), cut: true },
    { no: 5, height: l('7'), cut: false },
  ];

  test('cut fronts keep their size while another can give; when all are cut they are planed', () => {
    expect([...trimsFor(l('1/32'), two).heights].map(([no, x]) => `${no} ${w(x)}`)).toEqual(['5 6 31/32']);
    const cut = two.map((f) => ({ ...f, cut: true }));
    expect([...trimsFor(l('1/32'), cut).heights.keys()]).toEqual([4, 5]);
  });

  test('what is not cut may be taller, rounded down; what is cut is never asked to grow', () => {
    expect([...trimsFor(l('-3/128'), two).heights].map(([no, x]) => `${no} ${w(x)}`)).toEqual(['5 7 1/64']);
    const cut = two.map((f) => ({ ...f, cut: true }));
    expect(trimsFor(l('-1/32'), cut).heights.size).toBe(0);
  });

  // 2.4 mm is five half millimetres up: two off the upper, three off the lower. Common practice, no source.
  test('a metric shop trims at half a millimetre: 2.4 mm off two fronts of 150 and 180 is 1 and 1 1/2', () => {
    const fronts = [
      { no: 4, height: l('150 mm'), cut: false },
      { no: 5, height: l('180 mm'), cut: false },
    ];
    const { off, heights } = trimsFor(l('2.4 mm'), fronts, 'mm');
    expect([...off.values()]).toEqual([l('1 mm'), l('1.5 mm')]);
    expect([...heights.values()]).toEqual([l('149 mm'), l('178.5 mm')]);
    expect([...trimsFor(l('-0.9 mm'), fronts, 'mm').heights.values()]).toEqual([l('180.5 mm')]);
  });
});

describe('edgesAhead', () => {
  const edges = (goes: 'gaps' | 'last', more: Partial<Ahead> = {}) =>
    edgesAhead({ ...six, ...more }, { goes, wanted }).map(({ near, far }) => [w(near), w(far)]);

  test('Example 4 of fronts: the two to go stand 1/12 apart, and 1/12 is left at the end', () => {
    expect(edges('gaps')).toEqual([
      ['15 31/48', '22 5/96'],
      ['22 13/96', '29 11/48'],
    ]);
  });

  test('Example 4 of fronts with 5/64 before each: the end gap gets the 1/64 and stands 3/32', () => {
    expect(edges('last')).toEqual([
      ['15 41/64', '22 3/64'],
      ['22 1/8', '29 7/32'],
    ]);
  });

  test('an end that covers 1/2 is reached to the hair when the gaps share', () => {
    expect(edges('gaps', { hold: l('-1/2') })[1]?.[1]).toBe('29 13/16');
  });

  test('with none to go there are no edges', () => {
    expect(edges('gaps', { heights: [] })).toEqual([]);
    expect(edges('last', { heights: [], hold: wanted })).toEqual([]);
  });

  const ahead = fc
    .record({
      opening: fc.bigInt({ min: 900n, max: 2000n }).map((n) => inches(n, 64n)),
      reach: fc.bigInt({ min: 0n, max: 400n }).map((n) => inches(n, 64n)),
      heights: fc.array(
        fc.bigInt({ min: 100n, max: 400n }).map((n) => inches(n, 64n)),
        { minLength: 1, maxLength: 5 },
      ),
      hold: fc.option(
        fc.bigInt({ min: -48n, max: 48n }).map((n) => inches(n, 64n)),
        { nil: undefined },
      ),
    })
    .map(({ hold, ...rest }): Ahead => (hold ? { ...rest, hold } : rest));

  test('gaps and fronts add back to the opening, whichever way the difference goes', () => {
    fc.assert(
      fc.property(ahead, fc.constantFrom('gaps' as const, 'last' as const), (a, goes) => {
        const edges = edgesAhead(a, { goes, wanted });
        const last = edges[edges.length - 1]?.far ?? a.reach;
        const between = edges.map(({ near }, k) => near.sub(edges[k - 1]?.far ?? a.reach) as Length);
        const end = a.opening.sub(last) as Length;
        expect(equals(sum([a.reach, ...between, ...a.heights, end]), a.opening)).toBe(true);
        if (goes === 'gaps')
          for (const gap of between)
            expect(equals(gap, gaps(a).each) && equals(end, a.hold ?? gap)).toBe(true);
        else for (const gap of between) expect(equals(gap, wanted)).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });

  test('both ways the gaps and the end come to the same in all', () => {
    fc.assert(
      fc.property(ahead, (a) => {
        const all = (goes: 'gaps' | 'last') => {
          const found = edgesAhead(a, { goes, wanted });
          const before = found.map(({ near }, k) => subtract(near, found[k - 1]?.far ?? a.reach));
          return sum([...before, subtract(a.opening, found[found.length - 1]?.far ?? a.reach)]);
        };
        expect(equals(all('gaps'), all('last'))).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });

  test('a front fitted where it was said stays there, and those after it do not move', () => {
    fc.assert(
      fc.property(ahead, fc.constantFrom('gaps' as const, 'last' as const), (a, goes) => {
        const [next, ...rest] = edgesAhead(a, { goes, wanted });
        const after = { ...a, reach: next?.far ?? a.reach, heights: a.heights.slice(1) };
        const again = edgesAhead(after, { goes, wanted });
        expect(again.map((e) => [w(e.near), w(e.far)])).toEqual(rest.map((e) => [w(e.near), w(e.far)]));
      }),
      { numRuns: runs(200) },
    );
  });

  test('with the trim taken off, every gap is as wanted', () => {
    fc.assert(
      fc.property(ahead, (a) => {
        const [first, ...rest] = a.heights;
        if (!first) return;
        const heights = [subtract(first, trimTotal(gaps(a), wanted)), ...rest];
        expect(equals(gaps({ ...a, heights }).each, wanted)).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });

  test('left and right changed about: the same taper, the same trim', () => {
    fc.assert(
      fc.property(ahead, ahead, (a, b) => {
        const [one, other] = [bothAhead(a, b, wanted), bothAhead(b, a, wanted)];
        expect([w(one.left?.each), w(one.right?.each)]).toEqual([w(other.right?.each), w(other.left?.each)]);
        expect([w(one.taper), w(one.trim)]).toEqual([w(other.taper), w(other.trim)]);
      }),
      { numRuns: runs(200) },
    );
  });
});
