import { describe, expect, test } from 'vitest';
import { ratio } from '../../src/length/length';
import { gapText, pileText, sidesText } from '../../src/screens/bank/gap-words';
import { frontsProblemText, grooveText, lb, tailsErrorText } from '../../src/screens/bank/words';
import { exactlyOrMetric as w } from '../../src/screens/shared/exact-words';
import { tailsOf } from '../../src/trade/boxes/tails';
import { pileFor } from '../../src/trade/stacks/pile';
import { l } from '../trade/grooves/sample';

describe('words of a bank', () => {
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
    expect(pileText({ left: pile('1/128') })).toBe('none thin enough, 1/128 short');
  });

  test('pounds have one decimal at most; lengths from millimetres are said in millimetres', () => {
    expect([lb(ratio(6n)), lb(ratio(189n, 10n)), lb(ratio(1n, 3n))]).toEqual(['6 lb', '18.9 lb', '0.3 lb']);
    expect([w(l('5/64')), w(l('18 mm')), w(l('1/3'))]).toEqual(['5/64', '18 mm', '1/3']);
  });

  test('what is wrong is said by how much, and what would fit', () => {
    expect(frontsProblemText({ code: 'given-too-high', by: l('5/32') })).toContain('5/32 over');
    expect(frontsProblemText({ code: 'step-too-big', most: l('2 57/64') })).toContain('under 2 57/64');
    expect(tailsErrorText({ code: 'pins-eat-tails', by: l('1/8') })).toContain('1/8 over');
  });

  test('a groove that meets a pin is sent to where it lies in a tail', () => {
    const groove = { up: l('1 1/8'), wide: l('11/32') };
    const made = tailsOf({
      height: l('4 1/8'),
      tails: 3,
      halfPin: l('5/16'),
      pin: l('11/32'),
      slope: ratio(8n),
      long: l('15/32'),
      groove,
    });
    if (!made.ok) throw new Error(made.error.code);
    const says = grooveText(made.value, groove);
    const [, first] = / to (\S+(?: \S+)?) or/.exec(says) ?? [];
    const moved = tailsOf({
      height: l('4 1/8'),
      tails: 3,
      halfPin: l('5/16'),
      pin: l('11/32'),
      slope: ratio(8n),
      long: l('15/32'),
      groove: { ...groove, up: l(first ?? '0') },
    });
    expect(moved.ok && moved.value.groove?.inside).toBe(true);
  });
});
