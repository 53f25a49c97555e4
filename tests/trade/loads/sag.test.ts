import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { atMost, half, inches, ratio, times } from '../../../src/length/length';
import { type Loaded, sagOf } from '../../../src/trade/loads/sag';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';
import { thou } from '../movement/sample';

const short: Loaded = {
  span: l('18 7/64'),
  deep: l('16'),
  thick: l('23/32'),
  stiff: ratio(1_300_000n),
  load: ratio(70n),
  grain: l('1/16'),
};
const long = { ...short, span: l('36 15/16') };
const strip = { thick: l('3/4'), tall: l('1 1/2'), stiff: ratio(1_690_000n) };
const found = (at: Loaded) => {
  const result = sagOf(at);
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};
const refused = (more: Partial<Loaded>) => {
  const result = sagOf({ ...short, ...more });
  return result.ok ? 'ok' : result.error;
};

describe('sagOf', () => {
  // I = 16 × (23/32)³ / 12 = .49508; E I = 643,600. 5 × 70 × 18.109375³ (5938.9) / (384 × 643,600) = .00841; allowed
  // 18.109 / 600 = .0302. At 36.9375: 50,396.6 × 350 / 247,142,000 = .07137; allowed .06156, .0098 over.
  test('Example 5 of loads: 8 thousandths; over 36 15/16 it is 71 against 62', () => {
    expect([thou(found(short).sag), found(short).over]).toEqual([8, undefined]);
    expect([thou(found(long).sag), thou(found(long).allowed), thou(found(long).over)]).toEqual([71, 62, 10]);
  });

  // n = 1.3. A1 = 11.5 at .359375, A2 = 1.3 × .75 × 1.5 = 1.4625 at .75: middle (4.13281 + 1.09688) / 12.9625 =
  // .40345. I = .49508 + 1.3 × .75 × 3.375 / 12 (.27422) + 11.5 × .04408² (.02234) + 1.4625 × .34655² (.17564) =
  // .96728; .07137 × .49508 / .96728 = .03653
  test('Example 5 of loads: a strip of 3/4 × 1 1/2 that is 1.3 times as stiff brings it to 37', () => {
    expect(thou(found({ ...long, edging: strip }).sag)).toBe(37);
  });

  // most: 70 × .06156 / .07137 = 60.38 lb. Same pounds: L² = 384 × 643,600 / (3000 × 70) = 1176.9, L = 34.306, down to
  // 34 1/4. Same pounds a foot: L³ = 1176.9 × 36.9375 = 43,471, L = 35.163, down to 35 1/8.
  test('the greatest load, and the greatest span for the same pounds and for the same pounds a foot', () => {
    const { mostLoad, span, spanByFoot } = found(long);
    expect([mostLoad.valueOf().toFixed(1), w(span), w(spanByFoot)]).toEqual(['60.4', '34 1/4', '35 1/8']);
  });

  test('loaded for years it sags twice as far and carries half', () => {
    const years = found({ ...long, years: true });
    expect(years.sag.equals(times(found(long).sag, 2n))).toBe(true);
    expect(years.mostLoad.mul(2n).equals(found(long).mostLoad)).toBe(true);
  });

  test('a glued back is a rough bound, and is called one; without edging it changes nothing', () => {
    const glued = found({ ...long, glued: true });
    expect([glued.rough, found(long).rough, glued.sag.equals(found(long).sag)]).toEqual([true, false, true]);
    // front half 8 deep: A1 = 5.75, middle (2.06641 + 1.09688) / 7.2125 = .43859; I = .24754 + .27422 + 5.75 × .07921²
    // (.03608) + 1.4625 × .31141² (.14183) = .69967; half the load: .07137 × .24754 / .69967 = .02525
    expect(thou(found({ ...long, glued: true, edging: strip }).sag)).toBe(25);
  });

  test('bad input is refused; stiffness nobody said is asked for', () => {
    expect(refused({ span: l('0') })).toEqual({ code: 'not-positive', what: 'span' });
    expect(refused({ deep: l('-1') })).toEqual({ code: 'not-positive', what: 'deep' });
    expect(refused({ thick: l('0') })).toEqual({ code: 'not-positive', what: 'thick' });
    expect(refused({ load: ratio(0n) })).toEqual({ code: 'not-positive', what: 'load' });
    expect(refused({ stiff: ratio(0n) })).toEqual({ code: 'not-positive', what: 'stiff' });
    expect(refused({ stiff: undefined })).toEqual({ code: 'stiff-missing' });
    expect(refused({ edging: { ...strip, tall: l('0') } })).toEqual({ code: 'not-positive', what: 'edging' });
  });

  const size = (max: bigint) => fc.bigInt({ min: 8n, max: max * 8n }).map((n) => inches(n, 8n));
  const shelves = fc.record({
    span: size(90n),
    deep: size(30n),
    thick: size(2n),
    stiff: fc.bigInt({ min: 300_000n, max: 2_000_000n }).map((n) => ratio(n)),
    load: fc.bigInt({ min: 1n, max: 400n }).map((n) => ratio(n)),
    years: fc.boolean(),
    glued: fc.boolean(),
    grain: fc.constant(l('1/16')),
  });
  const edges = fc.option(
    fc.record({ thick: size(1n), tall: size(3n), stiff: fc.constant(ratio(1_600_000n)) }),
    { nil: undefined },
  );
  const all = fc.tuple(shelves, edges).map(([at, edging]): Loaded => (edging ? { ...at, edging } : at));

  test('sag goes by the cube of the span for the same pounds, by its fourth power for the same pounds a foot', () => {
    fc.assert(
      fc.property(all, fc.bigInt({ min: 2n, max: 5n }), (at, k) => {
        const once = found(at).sag;
        expect(found({ ...at, span: times(at.span, k) }).sag.equals(once.mul(k ** 3n))).toBe(true);
        const load = at.load.mul(k) as typeof at.load;
        expect(found({ ...at, span: times(at.span, k), load }).sag.equals(once.mul(k ** 4n))).toBe(true);
      }),
      { numRuns: runs(100) },
    );
  });

  test('the greatest load sags it just as far as allowed; the greatest spans not past it, one mark more past it', () => {
    fc.assert(
      fc.property(all, (at) => {
        const { mostLoad, span, spanByFoot } = found(at);
        const full = found({ ...at, load: mostLoad });
        expect(full.sag.equals(full.allowed)).toBe(true);
        const over = (to: typeof span, load = at.load) => found({ ...at, span: to, load }).over !== undefined;
        const byFoot = (to: typeof span) => at.load.mul(to).div(at.span) as typeof at.load;
        const next = (x: typeof span) => x.add(at.grain) as typeof span;
        if (span.n > 0n) expect(over(span)).toBe(false);
        if (spanByFoot.n > 0n) expect(over(spanByFoot, byFoot(spanByFoot))).toBe(false);
        expect([over(next(span)), over(next(spanByFoot), byFoot(next(spanByFoot)))]).toEqual([true, true]);
      }),
      { numRuns: runs(100) },
    );
  });

  test('a strip never makes it sag more; one of the shelf itself, as tall as it is thick, is so much more depth', () => {
    fc.assert(
      fc.property(shelves, size(2n), size(3n), (at, thick, tall) => {
        const stiff = at.stiff;
        expect(atMost(found({ ...at, edging: { thick, tall, stiff } }).sag, found(at).sag)).toBe(true);
        const more = found({ ...at, glued: false, edging: { thick, tall: at.thick, stiff } }).sag;
        expect(
          more.equals(found({ ...at, glued: false, deep: at.deep.add(thick) as typeof thick }).sag),
        ).toBe(true);
      }),
      { numRuns: runs(100) },
    );
  });

  test('half the span with half the load sags a sixteenth', () => {
    const halved = found({ ...long, span: half(long.span), load: ratio(35n) });
    expect(halved.sag.mul(16n).equals(found(long).sag)).toBe(true);
  });
});
