import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countAndLeft, evaluate, noLines } from '../../src/length/evaluate';
import { writeExpr } from '../../src/length/expr';
import { parseLine } from '../../src/length/parse-line';
import { runs } from '../runs';
import { l, w } from './write-figures';

/** What a typed line comes to, as text; or why it does not. */
function typed(text: string): string {
  const expr = parseLine(text);
  if (!expr.ok) return expr.error.code;
  const found = evaluate(expr.value, noLines);
  return found.ok ? `${found.value.value.toFraction(true)} ${found.value.kind}` : found.error.code;
}

describe('parseLine and evaluate', () => {
  test.each([
    ['3\' 2 3/8" - 18 mm - 18 mm', '36 973/1016 length'],
    ['(36 30/32 - 23/32) / 2', '18 7/64 length'],
    ['36 30/32 - 23/32 / 2', '36 37/64 length'],
    ['38 3/8 - 23/32 × 2', '36 15/16 length'],
    ['6 × 3/4', '4 1/2 length'],
    ['3/4 × 6', '4 1/2 length'],
    ['3/4 × 3/4', '9/16 area'],
    ['48 / 17 3/4', '2 50/71 number'],
    ['48 / 2', '24 length'],
    ['48 / 2.5', '19 1/5 number'],
    ['48 / 2.5c', '19 1/5 length'],
    ['-(3/4) + 2', '1 1/4 length'],
    ['18-7/64', '18 7/64 length'],
    ['18 - 7/64', '17 57/64 length'],
    ['18-7', '11 length'],
    ['5 3/4-1/8', '5 5/8 length'],
    ['5\' 3-3/4" + 146mm', '69 253/508 length'],
    ['12 x 2', '24 length'],
    ['(1 + 2) × (3 - 1)', '6 area'],
  ])('%s comes to %s', (text, value) => expect(typed(text)).toBe(value));

  test.each([
    ['1 / 0', 'divide-by-nothing'],
    ['3/4 × 3/4 + 1', 'kinds'],
    ['(48 / 17 3/4) + 1', 'kinds'],
    ['(1 + 2', 'bracket-not-closed'],
    ['1 + 2)', 'bracket-not-open'],
    ['1 +', 'figure-missing'],
    ['× 2', 'figure-missing'],
    ['(1) (2)', 'sign-missing'],
    ['', 'empty'],
    ['1 + 5 1/2 3/4', 'bad-figure'],
    ['#gone + 1', 'unknown-line'],
    ['('.repeat(60), 'too-long'],
    ['-'.repeat(60), 'too-long'],
    ['1+'.repeat(300), 'too-long'],
  ])('%s is refused: %s', (text, code) => expect(typed(text)).toBe(code));

  test('brackets show wherever the reading is not plain left to right', () => {
    const shown = (text: string) => {
      const expr = parseLine(text);
      return expr.ok ? writeExpr(expr.value) : expr.error.code;
    };
    expect(shown('27 5/8 - 47/64 / 2')).toBe('27 5/8 − (47/64 ÷ 2)');
    expect(shown('1 - 2 - 3')).toBe('1 − 2 − 3');
    expect(shown('1 - (2 - 3)')).toBe('1 − (2 − 3)');
    expect(shown('2 × 3/4 + 1')).toBe('(2 × 3/4) + 1');
  });

  test('a sum agrees with one worked in whole 64ths, apart, and reads back to itself', () => {
    const leaf = fc.integer({ min: 1, max: 4000 }).map((n) => ({ text: `${n}/64`, n: BigInt(n) }));
    type Sum = { text: string; n: bigint };
    const { sum } = fc.letrec<{ sum: Sum; leaf: Sum }>((tie) => ({
      leaf,
      sum: fc.oneof(
        { depthSize: 'small' },
        tie('leaf'),
        fc.tuple(tie('sum'), fc.constantFrom('+', '-'), tie('sum')).map(([a, op, b]) => ({
          text: `(${a.text}) ${op} (${b.text})`,
          n: op === '+' ? a.n + b.n : a.n - b.n,
        })),
        fc
          .tuple(tie('sum'), fc.integer({ min: 2, max: 9 }))
          .map(([a, k]) => ({ text: `(${a.text}) × ${k}`, n: a.n * BigInt(k) })),
      ),
    }));
    fc.assert(
      fc.property(sum, ({ text, n }) => {
        fc.pre(text.length < 380);
        const expr = parseLine(text);
        if (!expr.ok && expr.error.code === 'too-long') return;
        expect(expr.ok).toBe(true);
        if (!expr.ok) return;
        const value = evaluate(expr.value, noLines);
        expect(value.ok && value.value.value.mul(64n).equals(n)).toBe(true);
        const again = parseLine(writeExpr(expr.value));
        expect(again).toEqual(expr);
      }),
      { numRuns: runs(1500) },
    );
  });
});

describe('countAndLeft', () => {
  test('17 3/4 goes into 48 twice, 12 1/2 left', () => {
    const found = countAndLeft(l('48'), l('17 3/4'));
    expect(found && [found.count, w(found.left)]).toEqual([2n, '12 1/2']);
  });

  test('nothing goes into it no times', () => expect(countAndLeft(l('48'), l('0'))).toBeUndefined());
});
