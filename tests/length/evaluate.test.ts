import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countAndLeft, evaluate, noLines } from '../../src/length/evaluate';
import { linesIn, writeExpr } from '../../src/length/expr';
import { parseLine } from '../../src/length/parse-line';
import { readLength } from '../../src/length/read';
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
    ["3'2-3/8", '38 3/8 length'],
    ["3' - 2", '34 length'],
    ['1-½', '1 1/2 length'],
    ['3/4-½', '1/4 length'],
    ['3 ft.-2 in', '38 length'],
    ['18mmx3', '2 16/127 length'],
    ['6ft x 2', '144 length'],
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
    [`${'1+'.repeat(2000)}1`, 'too-long'],
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
  test('Example 10 of length: 17 3/4 goes into 48 twice, 12 1/2 left', () => {
    const found = countAndLeft(l('48'), l('17 3/4'));
    expect(found && [found.count, w(found.left)]).toEqual([2n, '12 1/2']);
  });

  test('nothing goes into it no times', () => expect(countAndLeft(l('48'), l('0'))).toBeUndefined());
});

describe('lines of the strip in a sum', () => {
  const nine = () => ({ ok: true, value: { kind: 'length', value: l('9') } }) as const;

  test.each(['a', '12', 'a1x2', 'xx3', 'q_7', 'mm', 'c'])('#%s is one line whatever its letters', (id) => {
    for (const text of [`#${id} + 1`, `2 × #${id}`, `2x#${id}`, `(#${id} − 1) ÷ 2`]) {
      const expr = parseLine(text);
      if (!expr.ok) throw new Error(`${text}: ${expr.error.code}`);
      expect(linesIn(expr.value)).toEqual([id]);
      expect(parseLine(writeExpr(expr.value))).toEqual(expr);
    }
  });

  test('two hundred lines add up in one sum', () => {
    const text = Array.from({ length: 200 }, (_, k) => `#line${k}`).join(' + ');
    const expr = parseLine(text);
    if (!expr.ok) throw new Error(expr.error.code);
    expect(writeExpr(expr.value)).toBe(text);
    const value = evaluate(expr.value, nine);
    expect(value.ok && w(value.value.value as ReturnType<typeof l>)).toBe('1800');
  });

  test('a line beside a figure without a sign is refused', () => {
    const expr = parseLine('#a 3/4');
    expect(!expr.ok && expr.error).toEqual({ code: 'sign-missing', at: 3 });
  });
});

describe('one text, one meaning', () => {
  test('what reads as one length comes to the same length as a sum', () => {
    const piece = fc.constantFrom(
      ...['1', '2', '12', '3/4', '7⁄64', '½', '⅜', '.', '1.5', ',', '-', '−', ' ', ' ', "'", '’', '"', '″'],
      ...[' ft ', 'ft.', ' in', 'mm', ' cm', 'feet', '/', '0'],
    );
    let both = 0;
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 7 }), (pieces) => {
        const text = pieces.join('');
        const read = readLength(text);
        if (!read.ok) return;
        both += 1;
        const expr = parseLine(text);
        if (!expr.ok) throw new Error(`${text}: ${expr.error.code}`);
        const value = evaluate(expr.value, noLines);
        if (!value.ok) throw new Error(`${text}: ${value.error.code}`);
        expect(value.value.kind, text).toBe('length');
        expect(value.value.value.equals(read.value.value), text).toBe(true);
      }),
      { numRuns: runs(2000) },
    );
    expect(both).toBeGreaterThan(50);
  });
});

describe('ordinary precedence', () => {
  /** Fractions worked apart, unreduced: numerator and denominator. */
  type F = readonly [bigint, bigint];
  type Step = { readonly op: '×' | '÷'; readonly k: number };
  type Product = { readonly n: number; readonly d: number; readonly steps: readonly Step[] };
  const plus = ([a, b]: F, [c, d]: F, sign: bigint): F => [a * d + sign * c * b, b * d];
  const worth = (p: Product): F =>
    p.steps.reduce<F>(
      ([n, d], { op, k }) => (op === '×' ? [n * BigInt(k), d] : [n, d * BigInt(k)]),
      [BigInt(p.n), BigInt(p.d)],
    );
  const text = (p: Product): string => [`${p.n}/${p.d}`, ...p.steps.map((s) => `${s.op} ${s.k}`)].join(' ');

  const step = fc.record({
    op: fc.constantFrom('×', '÷') as fc.Arbitrary<'×' | '÷'>,
    k: fc.integer({ min: 1, max: 12 }),
  });
  const product = fc.record({
    n: fc.integer({ min: 1, max: 5000 }),
    d: fc.constantFrom(1, 3, 16, 64, 127),
    steps: fc.array(step, { maxLength: 3 }),
  });
  const signed = fc.tuple(fc.constantFrom(1n, -1n), product);
  const total = fc.tuple(product, fc.array(signed, { maxLength: 4 }));
  type Total = readonly [Product, readonly (readonly [bigint, Product])[]];
  const totalText = ([first, rest]: Total): string =>
    [text(first), ...rest.map(([s, p]) => `${s > 0n ? '+' : '-'} ${text(p)}`)].join(' ');
  const totalWorth = ([first, rest]: Total): F =>
    rest.reduce<F>((sum, [s, p]) => plus(sum, worth(p), s), worth(first));

  test('× and ÷ bind before + and −, brackets before both, as worked apart in whole numbers', () => {
    fc.assert(
      fc.property(total, total, fc.integer({ min: 1, max: 9 }), (a, b, k) => {
        const expr = parseLine(`${totalText(a)} - (${totalText(b)}) ÷ ${k}`);
        if (!expr.ok) throw new Error(expr.error.code);
        const [bn, bd] = totalWorth(b);
        const [n, d] = plus(totalWorth(a), [bn, bd * BigInt(k)], -1n);
        const value = evaluate(expr.value, noLines);
        if (!value.ok) throw new Error(value.error.code);
        const found = value.value.value;
        expect(value.value.kind).toBe('length');
        expect(found.s * found.n * d).toBe(n * found.d);
        expect(parseLine(writeExpr(expr.value))).toEqual(expr);
      }),
      { numRuns: runs(1500) },
    );
  });
});
