import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, ratio } from '../../../src/length/length';
import { type Loaded, sagOf } from '../../../src/trade/loads/sag';
import { sagCures } from '../../../src/trade/loads/sag-cures';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';
import { thou } from '../movement/sample';

const shelf: Loaded = {
  span: l('36 15/16'),
  deep: l('16'),
  thick: l('23/32'),
  stiff: ratio(1_300_000n),
  load: ratio(70n),
  grain: l('1/16'),
};
const strip = { thick: l('3/4'), tall: l('1 1/2'), stiff: ratio(1_690_000n) };
const past = (at: Loaded) => {
  const found = sagOf(at);
  if (!found.ok) throw new Error(found.error.code);
  return found.value.over !== undefined;
};

describe('sagCures', () => {
  // Edging 37, as in sag.test.ts. Upright: 71.37 / 16 = 4.5, 4 in whole thousandths. Thickness: (23/32)³ × .07137 /
  // .06156 = .43046, its cube root .75505, up to 25/32. Shorter 34 1/4 and lighter 60.4, as in sag.test.ts.
  test('Example 5 of loads: a strip, an upright, thicker, shorter, lighter', () => {
    const found = sagCures(shelf, strip);
    expect(found.map((x) => x.code)).toEqual(['edging', 'upright', 'thicker', 'shorter', 'lighter']);
    const said = found.map((x) =>
      'sag' in x
        ? [thou(x.sag), x.goes]
        : 'thick' in x
          ? w(x.thick)
          : 'span' in x
            ? w(x.span)
            : x.load.valueOf().toFixed(1),
    );
    expect(said).toEqual([[37, true], [4, true], '25/32', '34 1/4', '60.4']);
  });

  test('a strip that helps and does not do is said not to', () => {
    const [edging] = sagCures({ ...shelf, load: ratio(150n) }, strip);
    expect(edging).toMatchObject({ code: 'edging', goes: false });
  });

  test('none for a shelf that does not sag too far, nor for one that is refused', () => {
    expect(sagCures({ ...shelf, span: l('18 7/64') }, strip)).toEqual([]);
    expect(sagCures({ ...shelf, span: l('0') }, strip)).toEqual([]);
  });

  test('with a strip on already, neither another nor a thickness is offered', () => {
    const edged = sagCures({ ...shelf, edging: strip, load: ratio(300n) }, strip).map((x) => x.code);
    expect(edged).toEqual(['upright', 'shorter', 'lighter']);
  });

  test('a thickness named does, and a 32nd less does not; so with span and load', () => {
    const size = (min: bigint, max: bigint) =>
      fc.bigInt({ min: min * 8n, max: max * 8n }).map((n) => inches(n, 8n));
    fc.assert(
      fc.property(
        size(20n, 80n),
        size(6n, 30n),
        fc.bigInt({ min: 20n, max: 300n }),
        fc.boolean(),
        (span, deep, p, years) => {
          const at = { ...shelf, span, deep, load: ratio(p), years };
          for (const cure of sagCures(at, strip)) {
            if (cure.code === 'thicker') {
              expect(past({ ...at, thick: cure.thick })).toBe(false);
              const thin = cure.thick.sub(l('1/32')) as typeof cure.thick;
              expect(past({ ...at, thick: thin })).toBe(true);
            }
            if (cure.code === 'shorter') expect(past({ ...at, span: cure.span })).toBe(false);
            if (cure.code === 'lighter') expect(past({ ...at, load: cure.load })).toBe(false);
          }
        },
      ),
      { numRuns: runs(100) },
    );
  });
});
