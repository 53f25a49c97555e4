import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluate, noLines } from '../../src/length/evaluate';
import { writeExpr } from '../../src/length/expr';
import { type Key, look, press } from '../../src/length/keypad';
import { emptySlotOn, pressSlot, slotText, slotValue } from '../../src/length/keypad-slot';
import { blank, emptySlot, type Keypad, type Slot } from '../../src/length/keypad-state';
import { parseLine } from '../../src/length/parse-line';
import { readLength } from '../../src/length/read';
import type { Tape } from '../../src/length/tape';
import { runs } from '../runs';
import { w } from './write-figures';

/** Keys written short: `27 5/8 - 3/4 scant / 2 =`. */
function key(word: string): readonly Key[] {
  if (/^\d+$/.test(word)) return [...word].map((d) => ({ key: 'digit', digit: Number(d) }));
  const fraction = /^(\d+)\/(\d+)$/.exec(word);
  if (fraction) return [{ key: 'fraction', sixteenths: (Number(fraction[1]) * 16) / Number(fraction[2]) }];
  const sign = ({ '+': '+', '-': '−', '*': '×', '/': '÷' } as const)[word];
  if (sign) return [{ key: 'op', op: sign }];
  if (word === '=') return [{ key: 'equals' }];
  if (word === '(' || word === ')') return [{ key: 'bracket' }];
  if (word === '.') return [{ key: 'point' }];
  if (word === 'swap') return [{ key: 'swap' }];
  return [{ key: word as 'scant' }];
}

function keyed(
  words: string,
  tape: Tape = '1/64',
): { readonly state: Keypad; readonly taps: number; readonly refused: readonly string[] } {
  const all = words.split(' ').flatMap(key);
  const refused: string[] = [];
  const state = all.reduce((at, k) => {
    const next = press(at, k, tape);
    if (!next.ok) refused.push(next.error);
    return next.ok ? next.value : at;
  }, blank);
  return { state, taps: all.length, refused };
}

function comesTo(words: string, tape: Tape = '1/64'): string {
  const { result } = look(keyed(words, tape).state, noLines);
  if (!result) return 'nothing';
  return result.ok ? `${result.value.value.toFraction(true)} ${result.value.kind}` : result.error.code;
}

const shows = (words: string): string =>
  look(keyed(words).state, noLines)
    .tokens.map((t) => ('text' in t ? t.text : `#${t.id}`))
    .join(' ');

describe('press', () => {
  test.each([
    ['13 7/16', 3, '13 7/16 length'],
    ['13 7/16 strong', 4, '13 29/64 length'],
    ['27 5/8 - 3/4 scant / 2 =', 9, '13 57/128 length'],
    ['( 27 5/8 - 3/4 scant ) / 2 =', 11, '13 57/128 length'],
  ])('%s is %d taps and comes to %s', (words, taps, value) => {
    expect(keyed(words).taps).toBe(taps);
    expect(comesTo(words)).toBe(value);
  });

  test('keys act on the running total, and the sum shown says so', () => {
    expect(comesTo('2 + 3 * 4 =')).toBe('20 length');
    expect(shows('2 + 3 * 4 =')).toBe('( 2 + 3 ) × 4');
    expect(shows('2 + 3 *')).toBe('( 2 + 3 ) ×');
  });

  test('whole and fraction fill in any order; a second fraction replaces the first, the same one clears it', () => {
    expect(comesTo('7/16 13')).toBe('13 7/16 length');
    expect(comesTo('13 7/16 1/2')).toBe('13 1/2 length');
    expect(comesTo('13 7/16 7/16')).toBe('13 length');
  });

  test('scant and strong step a 32nd, or a 64th on a finer tape', () => {
    expect(comesTo('3/4 scant', '1/32')).toBe('23/32 length');
    expect(comesTo('3/4 scant', '1/16')).toBe('23/32 length');
    expect(comesTo('3/4 scant', '1/64')).toBe('47/64 length');
    expect(comesTo('3 scant', '1/64')).toBe('2 63/64 length');
  });

  test('feet, millimetres and decimals are what they say', () => {
    expect(comesTo('5 feet 3 3/4')).toBe('63 3/4 length');
    expect(comesTo('18 mm')).toBe('90/127 length');
    expect(comesTo('0 . 734')).toBe('367/500 length');
  });

  test('a bare number after × or ÷ counts, and one tap swaps it', () => {
    expect(comesTo('9 / 2 =')).toBe('4 1/2 length');
    expect(comesTo('9 / 2 swap =')).toBe('4 1/2 number');
    expect(comesTo('9 / 2 . 5 =')).toBe('3 3/5 number');
    expect(comesTo('9 / 2 . 5 swap =')).toBe('3 3/5 length');
    expect(comesTo('9 * 2 swap =')).toBe('18 length'); // nine times two inches
  });

  test('on a metric tape a bare number is millimetres, a count still counts, and a fraction is of an inch', () => {
    expect(comesTo('18', '1 mm')).toBe('90/127 length');
    expect(comesTo('341 / 2 =', '1 mm')).toBe('6 181/254 length');
    expect(comesTo('3/4', '1/2 mm')).toBe('3/4 length');
    expect(comesTo('18 mm', '1 mm')).toBe('18 length'); // the unit key goes to inches
    expect(comesTo('1 8 erase', '1 mm')).toBe('5/127 length');
  });

  test('on a metric tape a leading bare number before × counts, as it does in inches', () => {
    expect(comesTo('6 * ( 18 + 3 =', '1 mm')).toBe('4 122/127 length');
    expect(comesTo('6 * 3/4 =', '1 mm')).toBe('4 1/2 length');
    expect(comesTo('6 * 3/4 =', '1/32')).toBe('4 1/2 length');
    expect(comesTo('6 mm * 3/4 =', '1 mm')).toBe('4 1/2 area'); // marked as inches, it measures
  });

  test('the total runs left to right, as folded apart in whole numbers', () => {
    const step = fc.tuple(fc.constantFrom('+', '-', '*', '/'), fc.integer({ min: 1, max: 15 }));
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), fc.array(step, { maxLength: 8 }), (first, steps) => {
        const words = steps.map(([op, k]) => `${op} ${op === '+' || op === '-' ? `${k}/16` : k}`);
        const { state } = keyed([`${first} 1/16`, ...words, '='].join(' '));
        let [n, d] = [BigInt(first) * 16n + 1n, 16n];
        for (const [op, k] of steps) {
          if (op === '*') n *= BigInt(k);
          else if (op === '/') d *= BigInt(k);
          else [n, d] = [n * 16n + (op === '+' ? 1n : -1n) * BigInt(k) * d, d * 16n];
        }
        const { result } = look(state, noLines);
        if (!result?.ok) throw new Error('no result');
        const { value, kind } = result.value;
        expect(kind).toBe('length');
        expect(value.s * value.n * d).toBe(n * value.d);
      }),
      { numRuns: runs(1000) },
    );
  });

  test('a sign goes on from an answer, a digit starts afresh, a second sign replaces the first', () => {
    expect(comesTo('4 + 4 = / 2 =')).toBe('4 length');
    expect(comesTo('4 + 4 = 7')).toBe('7 length');
    expect(comesTo('4 + - 1 =')).toBe('3 length');
  });

  test('erase takes the last thing back, and equals closes what is open', () => {
    expect(comesTo('13 7/16 erase')).toBe('13 length');
    expect(comesTo('4 + 3 erase')).toBe('4 length');
    expect(comesTo('4 + 3 erase erase - 1 =')).toBe('3 length');
    expect(comesTo('2 * ( 3/4 + 1/4 =')).toBe('2 length');
  });

  test.each([
    ['+', 'figure-first'],
    ['=', 'figure-first'],
    ['erase', 'nothing-to-erase'],
    ['1 . 5 .', 'second-point'],
    ['1 . 5 1/2', 'decimal-has-no-fraction'],
    ['18 mm 1/2', 'millimetres-have-no-fraction'],
    ['feet', 'feet-need-a-number'],
    ['5 feet 6 feet', 'feet-already'],
    ['scant', 'nothing-to-move'],
    ['5 )', 'nothing-to-close'],
    ['( 5 ) 6', 'sign-first'],
    ['swap', 'nothing-to-swap'],
    ['1234567890', 'too-many-digits'],
  ])('%s is refused with its reason: %s', (words, why) => expect(keyed(words).refused.at(-1)).toBe(why));

  test('dividing by nothing is said, not shown as a figure', () =>
    expect(comesTo('5 / 0 =')).toBe('divide-by-nothing'));

  test('whatever is pressed, the sum shown reads back to what it comes to', () => {
    const any = fc.constantFrom(
      '1',
      '2',
      '9',
      '1/2',
      '5/16',
      '+',
      '-',
      '*',
      '/',
      '(',
      '.',
      'mm',
      'feet',
      'scant',
      'strong',
      'erase',
      'swap',
      '=',
    );
    fc.assert(
      fc.property(fc.array(any, { maxLength: 24 }), (words) => {
        const { state } = keyed(words.join(' ') || '1');
        const seen = look(state, noLines);
        if (seen.text === undefined) return;
        const expr = parseLine(seen.text);
        expect(expr.ok, seen.text).toBe(true);
        if (!expr.ok) return;
        expect(writeExpr(expr.value)).toBe(seen.text);
        const read = evaluate(expr.value, noLines);
        if (seen.result?.ok && read.ok) {
          expect(read.value.kind).toBe(seen.result.value.kind);
          expect(read.value.value.equals(seen.result.value.value)).toBe(true);
        } else expect(read.ok).toBe(seen.result?.ok ?? false);
        expect(JSON.parse(JSON.stringify(state))).toEqual(state);
      }),
      { numRuns: runs(1500) },
    );
  });
});

describe('pressSlot', () => {
  const filled = (words: string, tape: Tape = '1/64'): Slot =>
    words
      .split(' ')
      .flatMap(key)
      .reduce((at, k) => {
        const next = pressSlot(at, k as Parameters<typeof pressSlot>[1], tape);
        return next.ok ? next.value : at;
      }, emptySlot);

  test.each([
    ['13 7/16', '13 7/16', '13 7/16'],
    ['5 feet 3 3/4', '63 3/4', '5 ft 3 3/4'],
    ['18 mm', '90/127', '18 mm'],
    ['0 . 7085', '1417/2000', '0.7085'],
    ['3/4 scant', '47/64', '47/64'],
    ['5 feet scant', '59 63/64', '59 63/64'],
  ])('%s fills a blank with %s', (words, value, text) => {
    const slot = filled(words);
    expect(w(slotValue(slot))).toBe(value);
    expect(slotText(slot)).toBe(text);
    const read = readLength(slotText(slot));
    expect(read.ok && w(read.value.value)).toBe(value);
  });

  test('on a metric tape bare inches keep their mark', () => {
    const seven: Slot = { ...emptySlotOn('1 mm'), digits: '7' };
    const inch = pressSlot(seven, { key: 'mm' }, '1 mm');
    expect(slotText(seven)).toBe('7 mm');
    expect(inch.ok && slotText(inch.value)).toBe('7"');
    const read = readLength('7"', { unit: 'mm' });
    expect(read.ok && w(read.value.value)).toBe('7');
  });
});
