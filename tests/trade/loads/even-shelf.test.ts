import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, ratio } from '../../../src/length/length';
import { evenShelf } from '../../../src/trade/loads/even-shelf';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

type Plan = Parameters<typeof evenShelf>[0];
const ply: Plan = { span: l('36'), deep: l('16'), thick: l('23/32'), stiff: ratio(950_000n) };
const found = (more: Partial<Plan> = {}, use: Parameters<typeof evenShelf>[1] = 'other') => {
  const result = evenShelf({ ...ply, ...more }, use);
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};

describe('evenShelf', () => {
  // 32 × 950,000 × (23/32)³ / (5 × 40) = 56,438.7: 38³ = 54,872, 39³ = 59,319. 40 × 38 × 16 / 144 = 168.9.
  // For years half of it, 28,219.4: 30³ = 27,000, 31³ = 29,791.
  test('Example 6 of loads: span 38, 168.9 lb at 16 deep; loaded for years 30', () => {
    const at38 = found({ span: l('38') });
    expect([w(at38.span), at38.load.valueOf().toFixed(1)]).toEqual(['38', '168.9']);
    expect(w(found({ years: true }).span)).toBe('30');
  });

  test('the two limits are told apart: at 38 the standard holds and the .02 a foot does not; at 39 neither', () => {
    const lacks = (span: string) => found({ span: l(span) }).lacks.map((x) => x.code);
    expect([lacks('38'), lacks('39')]).toEqual([['shop'], ['standard', 'shop']]);
    // L³ <= 32 E t³ / (5 w) × 144/600 = 13,545.3, L = 23.84
    expect([lacks('23'), lacks('24')]).toEqual([[], ['shop']]);
  });

  test('never more than 200 lb, whatever the sag: 40 lb a square foot on 16 deep is 45 of span', () => {
    // 200 × 144 / (40 × 16) = 45
    const thick = { thick: l('2'), span: l('45') };
    expect([w(found(thick).spanByCap), found(thick).lacks.map((x) => x.code)]).toEqual(['45', []]);
    // 46 × 16 × 40 / 144 = 204.44
    const over = found({ ...thick, span: l('46') }).lacks[0];
    expect(over?.code === 'cap' && over.by.valueOf().toFixed(2)).toBe('4.44');
  });

  test('a school, a hospital, a library are reckoned at 50', () => {
    // 45,151: 35³ = 42,875, 36³ = 46,656
    for (const use of ['school', 'hospital', 'library'] as const) expect(w(found({}, use).span)).toBe('35');
  });

  test('bad input is refused', () => {
    const code = (more: Partial<Plan>) => {
      const result = evenShelf({ ...ply, ...more }, 'other');
      return result.ok ? 'ok' : result.error;
    };
    expect([code({ span: l('0') }), code({ deep: l('0') }), code({ thick: l('-1') })]).toEqual([
      { code: 'not-positive', what: 'span' },
      { code: 'not-positive', what: 'deep' },
      { code: 'not-positive', what: 'thick' },
    ]);
    expect([code({ stiff: undefined }), code({ stiff: ratio(0n) })]).toEqual([
      { code: 'stiff-missing' },
      { code: 'not-positive', what: 'stiff' },
    ]);
  });

  test('the span named does not sag past span / 144, an inch more does, whatever the depth', () => {
    const size = (n: bigint) => inches(n, 32n);
    fc.assert(
      fc.property(
        fc.bigInt({ min: 12n, max: 48n }),
        fc.bigInt({ min: 64n, max: 960n }),
        fc.boolean(),
        (t, d, years) => {
          const at = { thick: size(t), deep: size(d), years };
          const { span } = found(at);
          const fails = (to: typeof span) =>
            found({ ...at, span: to }).lacks.some((x) => x.code === 'standard');
          if (span.n > 0n) expect(fails(span)).toBe(false);
          expect(fails(span.add(1n) as typeof span)).toBe(true);
        },
      ),
      { numRuns: runs(100) },
    );
  });
});
