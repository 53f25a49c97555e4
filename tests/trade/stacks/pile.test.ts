import { describe, expect, test } from 'vitest';
import { pileFor } from '../../../src/trade/stacks/pile';
import { l, w } from '../grooves/sample';

const shims = ['1/4', '1/8', '1/16', '1/32'].map((size) => ({ size: l(size), count: 2 }));

const pile = (gap: string, tol: string, from = shims) => {
  const found = pileFor(l(gap), from, l(tol));
  if (!found.ok) throw new Error(found.error.code);
  const { chosen, height, short, within, pieces } = found.value;
  return [chosen.map((s) => `${s.count} × ${w(s.size)}`).join(' + '), w(height), w(short), within, pieces];
};

describe('pileFor', () => {
  test('Example 4 of stacks: 19/64 within .020 takes 1/4 and 1/32, short by 1/64', () => {
    expect(pile('19/64', '.020')).toEqual(['1 × 1/4 + 1 × 1/32', '9/32', '1/64', true, 2]);
  });

  test('none within the tolerance: the closest that is not over, and by how much it is short', () => {
    expect(pile('19/64', '.015')).toEqual(['1 × 1/4 + 1 × 1/32', '9/32', '1/64', false, 2]);
  });

  test('short by the tolerance to the hair is still within it', () => {
    expect(pile('19/64', '1/64')[3]).toBe(true);
  });

  test('one shim within the tolerance goes before two that come closer', () => {
    expect(pile('9/32', '1/32')).toEqual(['1 × 1/4', '1/4', '1/32', true, 1]);
    expect(pile('9/32', '.031')).toEqual(['1 × 1/4 + 1 × 1/32', '9/32', '0', true, 2]);
  });

  test('as few: the closer', () => {
    expect(pile('7/32', '3/16')).toEqual(['1 × 1/8', '1/8', '3/32', true, 1]);
  });

  test('a gap thinner than the thinnest shim takes none, and says what is missing', () => {
    expect(pile('1/64', '0')).toEqual(['', '0', '1/64', false, 0]);
    expect(pile('1/64', '.020')).toEqual(['', '0', '1/64', true, 0]);
    expect(pile('0', '0')).toEqual(['', '0', '0', true, 0]);
  });

  test('a gap wider than all the shims takes all, and is short by the rest', () => {
    expect(pile('1', '.020')).toEqual(['2 × 1/4 + 2 × 1/8 + 2 × 1/16 + 2 × 1/32', '15/16', '1/16', false, 8]);
  });

  test('taking the largest first would miss the pile that fills it', () => {
    const odd = ['.010', '.008', '.003'].map((size) => ({ size: l(size), count: 2 }));
    expect(pile('.016', '0', odd)).toEqual(['2 × 1/125', '2/125', '0', true, 2]);
  });

  test('refuses a gap less than nothing, no shims, and shims that are nothing', () => {
    const code = (gap: string, from: typeof shims, tol = '0') => {
      const found = pileFor(l(gap), from, l(tol));
      return found.ok ? 'ok' : found.error.code;
    };
    expect(code('-1/64', shims)).toBe('gap-negative');
    expect(code('1/64', shims, '-.001')).toBe('tolerance-negative');
    expect(code('1/64', [])).toBe('no-pieces');
    expect(code('1/64', [{ size: l('0'), count: 1 }])).toBe('piece-not-positive');
    expect(code('1/64', [{ size: l('1/64'), count: 0.5 }])).toBe('not-a-count');
  });
});
