import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, equals, inches, subtract, sum, times } from '../../../src/length/length';
import { blankFor, spoiledFront } from '../../../src/trade/fronts/blank';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

type At = Parameters<typeof blankFor>[1];

const heights = ['4 1/2', '5 3/16', '5 7/8'].map(l);
const plan: At = { trim: l('5/16'), kerf: l('3/32'), band: l('0'), between: l('5/64') };
const blank = (more: Partial<At> = {}) => {
  const made = blankFor(heights, { ...plan, ...more });
  if (!made.ok) throw new Error(made.error.code);
  return made.value;
};
const fault = (more: Partial<At>) => {
  const made = blankFor(heights, { ...plan, ...more });
  return made.ok ? undefined : made.error;
};

describe('blankFor', () => {
  test('EX 6f: 16 3/8 long, cores from 5/16, 4 29/32, 10 3/16, slipping -1/64', () => {
    const made = blank();
    expect(w(made.length)).toBe('16 3/8');
    expect(made.cores.map((c) => `${c.no}: ${w(c.near)}`)).toEqual(['1: 5/16', '2: 4 29/32', '3: 10 3/16']);
    expect(made.cores.map((c) => w(c.high))).toEqual(['4 1/2', '5 3/16', '5 7/8']);
    expect(w(made.slip)).toBe('-1/64');
  });

  test('the figure runs on when the kerf is the gap and there is no band', () => {
    expect(w(blank({ kerf: l('5/64') }).slip)).toBe('0');
  });

  test('a band takes its two thicknesses off each core and adds them to the slip', () => {
    const banded = blank({ band: l('1/16') });
    expect(banded.cores.map((c) => w(c.high))).toEqual(['4 3/8', '5 1/16', '5 3/4']);
    expect(banded.cores.map((c) => w(c.near))).toEqual(['5/16', '4 25/32', '9 15/16']);
    expect([w(banded.length), w(banded.slip)]).toEqual(['16', '7/64']);
  });

  test('one front is a core between two trims, without a kerf', () => {
    const made = blankFor([l('7')], plan);
    expect(made.ok && w(made.value.length)).toBe('7 5/8');
  });

  test('a kerf of nothing, or none said, is asked for; the thinnest there is will do', () => {
    expect(fault({ kerf: l('0') })).toEqual({ code: 'kerf-missing' });
    expect(fault({ kerf: undefined })).toEqual({ code: 'kerf-missing' });
    expect(fault({ kerf: l('1/1000') })).toBeUndefined();
  });

  test.each(['trim', 'band', 'between'] as const)('a %s below nothing is refused by how much', (what) => {
    expect(fault({ [what]: l('-1/64') })).toMatchObject({ code: 'negative', what, by: l('1/64') });
    expect(fault({ [what]: l('0') })).toBeUndefined();
  });

  test('bands that leave a front no core name the first, by how much', () => {
    const said = (band: string) => {
      const error = fault({ band: l(band) });
      return error?.code === 'core-gone' ? `${error.front} ${w(error.by)}` : error;
    };
    expect([said('2 5/16'), said('2 1/4'), said('2 15/64')]).toEqual(['1 1/8', '1 0', undefined]);
  });

  test('each core starts a kerf past the one over it, and the last ends a trim short of the end', () => {
    const eighths = fc.array(fc.bigInt({ min: 16n, max: 80n }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(eighths, fc.bigInt({ min: 1n, max: 16n }), fc.bigInt({ min: 0n, max: 8n }), (ns, k, e) => {
        const fronts = ns.map((n) => inches(n, 8n));
        const [kerf, band] = [inches(k, 64n), inches(e, 64n)];
        const made = blankFor(fronts, { ...plan, kerf, band });
        if (!made.ok) throw new Error(made.error.code);
        let edge = plan.trim;
        made.value.cores.forEach((core, at) => {
          expect(w(core.near)).toBe(w(edge));
          expect(w(add(core.high, times(band, 2n)))).toBe(w(fronts[at]));
          edge = sum([core.near, core.high, kerf]);
        });
        expect(equals(subtract(edge, kerf), subtract(made.value.length, plan.trim))).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});

describe('spoiledFront', () => {
  test('the lowest is cut again from the offcut, the run holds', () => {
    expect(spoiledFront(4, 4)).toEqual({ breaksRun: false, recut: [4] });
    expect(spoiledFront(1, 1)).toEqual({ breaksRun: false, recut: [1] });
  });

  test('a higher one breaks the run, unless it and all below it are cut again', () => {
    expect(spoiledFront(3, 4)).toEqual({ breaksRun: true, recut: [3, 4] });
    expect(spoiledFront(1, 4)).toEqual({ breaksRun: true, recut: [1, 2, 3, 4] });
  });
});
