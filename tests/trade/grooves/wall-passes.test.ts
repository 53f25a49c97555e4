import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, compare, inches, less, zero } from '../../../src/length/length';
import { passEnd, passesFor, passStep } from '../../../src/trade/grooves/wall-passes';
import { runs } from '../../runs';
import { l, w } from './sample';

const passes = (width: string, cutter: string, overlap = '1/16') =>
  passesFor(l(width), l(cutter), l(overlap));

describe('passesFor', () => {
  test('Example 12 of grooves: 2 13/16 with a stack of 5/8 takes five, 35/64 apart, both walls first', () => {
    const found = passes('2 13/16', '5/8');
    if (!found.ok) throw new Error(found.error.code);
    expect(found.value.map((p) => [p.wall, w(p.offset)])).toEqual([
      ['near', '0'],
      ['far', '2 3/16'],
      ['between', '35/64'],
      ['between', '1 3/32'],
      ['between', '1 41/64'],
    ]);
    expect(w(passStep(l('2 13/16'), l('5/8'), 5))).toBe('35/64');
  });

  test.each(['0', '-1/8'])('a cutter of %s makes no pass', (cutter) => {
    expect(() => passes('1/2', cutter, '0')).toThrow(RangeError);
  });

  test('a cutter as wide as the groove makes it in one', () => {
    expect(passes('1/2', '1/2')).toEqual({ ok: true, value: [{ wall: 'only', offset: zero }] });
    expect(w(passStep(l('1/2'), l('1/2'), 1))).toBe('0');
  });

  test.each([
    ['1/2', '17/32', '1/16', 'cutter-too-wide'],
    ['1', '5/8', '-1/16', 'overlap-negative'],
    ['1', '5/8', '0', 'ok'],
    ['1', '1/16', '1/16', 'overlap-too-big'],
    ['1', '1/16', '1/8', 'overlap-too-big'],
    ['100', '1/16', '624999/10000000', 'overlap-too-big'],
    ['64 1/16', '1/16', '0', 'overlap-too-big'],
    ['62 1/2', '1/16', '0', 'ok'],
  ])('refuses %s with a cutter of %s overlapping %s', (width, cutter, overlap, code) => {
    const found = passes(width, cutter, overlap);
    expect(found.ok ? 'ok' : found.error.code).toBe(code);
  });

  test('passes cover the groove wall to wall with at least the overlap between neighbours, and never outside it', () => {
    const side = fc.bigInt(1n, 400n);
    const property = fc.property(side, side, fc.bigInt(0n, 60n), (a, b, c) => {
      const [width, cutter, overlap] = [inches(a + b, 64n), inches(b, 64n), inches(c, 64n)];
      const found = passesFor(width, cutter, overlap);
      if (!found.ok) {
        expect(less(overlap, cutter)).toBe(false);
        return;
      }
      const sorted = [...found.value].sort((x, y) => compare(x.offset, y.offset));
      expect(sorted[0]?.offset.equals(zero)).toBe(true);
      const last = sorted[sorted.length - 1];
      expect(last && passEnd(last, cutter).equals(width)).toBe(true);
      sorted.slice(1).forEach((pass, k) => {
        const before = sorted[k];
        expect(before && less(passEnd(before, cutter), add(pass.offset, overlap))).toBe(false);
      });
    });
    fc.assert(property, { numRuns: runs(500) });
  });
});
