import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { equals, inches, type Length, sum } from '../../../src/length/length';
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
const gaps = (ahead: Ahead) => {
  const found = gapsAhead(ahead);
  if (!found) throw new Error('no gap');
  return found;
};

describe('gapsAhead', () => {
  const six = { opening: l('29 5/16'), reach: l('15 9/16'), heights: [l('6 13/32'), l('7 3/32')] };
  const eight = { opening: l('29 9/32'), reach: l('15 1/2'), heights: [l('6 15/32'), l('7 5/32')] };

  test('EX 6d: 13 3/4 left, 1/12 a gap over three; the fronts may be 1/64 taller', () => {
    const found = gaps(six);
    expect([w(found.space), found.gaps, w(found.each)]).toEqual(['13 3/4', 3, '1/12']);
    expect(w(trimTotal(found, wanted))).toBe('-1/64');
    expect(gapWarning(found.each)).toBeUndefined();
  });

  test('H.8: 13 25/32 left, 5/96 a gap, tight; 5/64 off the two holds it', () => {
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
    expect(gapWarning(found.each)).toMatchObject({ code: 'binds' });
    expect(w(found.each)).toBe('-11/96');
  });

  test('a gap of 1/16 or 5/32 is well, a hair beyond is not', () => {
    expect(gapWarning(l('1/16'))).toBeUndefined();
    expect(gapWarning(l('5/32'))).toBeUndefined();
    expect(gapWarning(l('63/1024'))?.code).toBe('tight');
    expect(gapWarning(l('161/1024'))?.code).toBe('wide');
  });

  test('left and right are reckoned apart and the tighter side decides the trim', () => {
    const both = bothAhead(eight, { ...eight, reach: l('15 17/32') }, wanted);
    expect(w(both.taper)).toBe('1/96');
    expect(w(both.trim)).toBe('7/64');
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
});

describe('edgesAhead', () => {
  const ahead = fc.record({
    opening: fc.bigInt({ min: 900n, max: 2000n }).map((n) => inches(n, 64n)),
    reach: fc.bigInt({ min: 0n, max: 400n }).map((n) => inches(n, 64n)),
    heights: fc.array(
      fc.bigInt({ min: 100n, max: 400n }).map((n) => inches(n, 64n)),
      { minLength: 1, maxLength: 5 },
    ),
  });

  test('gaps and fronts add back to the opening, whichever way the difference goes', () => {
    fc.assert(
      fc.property(ahead, fc.constantFrom('gaps' as const, 'last' as const), (a, goes) => {
        const edges = edgesAhead(a, { goes, wanted });
        const last = edges[edges.length - 1]?.far ?? a.reach;
        const between = edges.map(({ near }, k) => near.sub(edges[k - 1]?.far ?? a.reach) as Length);
        const end = a.opening.sub(last) as Length;
        expect(equals(sum([a.reach, ...between, ...a.heights, end]), a.opening)).toBe(true);
        if (goes === 'gaps') for (const gap of between) expect(equals(gap, end)).toBe(true);
        else for (const gap of between) expect(equals(gap, wanted)).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});
