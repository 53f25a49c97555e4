import { describe, expect, test } from 'vitest';
import { ratio } from '../../../src/length/length';
import { frontsProblemText, grooveText, tailsErrorText } from '../../../src/screens/bank/words';
import { exactly as w } from '../../../src/screens/shared/exact-words';
import { weight } from '../../../src/screens/shared/pounds';
import { tailsOf } from '../../../src/trade/boxes/tails';
import { l } from '../../trade/grooves/sample';

describe('words of a bank', () => {
  test('pounds have one decimal at most; lengths from millimetres are said in millimetres', () => {
    expect([weight(ratio(6n)), weight(ratio(189n, 10n)), weight(ratio(1n, 3n))]).toEqual([
      '6 lb',
      '18.9 lb',
      '0.3 lb',
    ]);
    expect([w(l('5/64')), w(l('18 mm')), w(l('1/3'))]).toEqual(['5/64', '18 mm', '0.333']);
  });

  test('what is wrong is said by how much, and what would fit', () => {
    expect(frontsProblemText({ code: 'given-too-high', by: l('5/32') })).toContain('5/32 too much');
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
