import { describe, expect, test } from 'vitest';
import { ratio } from '../../../src/length/length';
import * as words from '../../../src/screens/bank/contents-words';
import * as lot from '../../../src/screens/shared/lot-words';
import { l } from '../../trade/grooves/sample';
import { said } from '../said';

describe('what a drawer weighs', () => {
  const at = { total: ratio(20n), things: ratio(12n), own: ratio(8n), unweighed: 0 };

  test('beside what its slides carry; too much and near it are said', () => {
    expect(words.load({ ...at, says: 'within', share: 40 })).toBe(
      'About 20 lb: things 12 lb, box and front 8 lb. 40\u00a0% of what the pair carries.',
    );
    expect(words.load({ ...at, says: 'near', share: 80 })).toMatch(/80\u00a0% .*: near it\.$/);
    expect(words.load({ ...at, says: 'over', share: 120 })).toMatch(/120\u00a0% .*: too much\.$/);
  });

  test('asks for what they carry where that is not known, and tells what was not weighed', () => {
    const says = words.load({ ...at, unweighed: 2, says: 'rating-missing', share: undefined });
    expect(says).toMatch(/8 lb, 2 not weighed\. Enter what a pair of slides carries\.$/);
    expect(says).not.toContain('%');
  });
});

test('a thing without a name is a thing, also where it does not fit', () => {
  expect(lot.takenOut({ name: '' })).toBe('Thing taken out');
  expect(lot.what({ name: '' })).toBe('What it is: a thing');
  expect(lot.howTall({ name: 'Geode' })).toBe('Geode: how tall');
  expect(words.unfit(undefined, { code: 'too-tall', by: l('1/2') })).toBe('A thing is 1/2 too tall.');
  expect(words.unfit('Whelk', { code: 'too-long', by: l('3/4') })).toBe('Whelk is 3/4 too long.');
});

test('a line of a drawer holds its five blanks in their order', () => {
  const blanks = { many: '3', name: 'Geode', tall: '4', long: '6', heavy: '2' };
  expect(said(lot.line(blanks))).toBe('3 Geode, 4 tall, 6 long, 2 lb.');
});

test('contents first is offered only where it is off', () => {
  expect(words.say(true)).not.toContain('Turn on');
  expect(words.say(false)).toContain('Turn on Contents first, and no front');
});
