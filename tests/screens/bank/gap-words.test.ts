import { describe, expect, test } from 'vitest';
import { gapText, pileText, sidesText } from '../../../src/screens/bank/gap-words';
import { pileFor } from '../../../src/trade/stacks/pile';
import { l } from '../../trade/grooves/sample';

describe('words of a gap', () => {
  test('a gap says its mark, what is left, and whether it is tight, wide or binds', () => {
    expect(gapText(l('5/64'), '1/32')).toBe('5/64');
    expect(gapText(l('5/96'), '1/32')).toBe('3/64 strong by 0.005, tight');
    expect(gapText(l('3/16'), '1/32')).toBe('3/16, wide');
    expect(gapText(l('-1/64'), '1/32')).toBe('binds by 1/64');
    expect(sidesText(l('5/64'), l('1/16'), '1/32')).toBe('left 5/64; right 1/16');
  });

  test('piles are named larger first, left and right apart where they differ', () => {
    const shims = ['1/16', '1/64'].map((size) => ({ size: l(size), count: 2 }));
    const pile = (gap: string) => {
      const made = pileFor(l(gap), shims, l('0'));
      if (!made.ok) throw new Error(made.error.code);
      return made.value;
    };
    expect(pileText({ left: pile('5/64') })).toBe('1/16 and 1/64');
    expect(pileText({ left: pile('5/64'), right: pile('1/8') })).toBe('left 1/16 and 1/64; right 2 × 1/16');
    expect(pileText({ left: pile('1/128') })).toBe('none thin enough, 0.008 short');
  });
});
