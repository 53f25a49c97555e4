import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Burst, hear, type Stroke } from '../../src/ui/caliper';
import { runs } from '../runs';

/** Types strokes and says every reading that was heard. */
function readings(strokes: readonly Stroke[]): readonly string[] {
  let burst: Burst | undefined;
  return strokes.flatMap((stroke) => {
    const heard = hear(burst, stroke);
    burst = heard.burst;
    return heard.reading ?? [];
  });
}

/** A text typed with one gap between all strokes, Enter at the end. */
const typed = (text: string, gap: number, from = 0): readonly Stroke[] =>
  [...text, 'Enter'].map((key, k) => ({ key, at: from + k * gap }));

describe('hear', () => {
  test.each(['18.25', '0,7185', '0.00', '-0.02', '+3.5', '.718', '25.', '999.9995', '125'])(
    '%s typed with 10 ms gaps is a reading, as typed',
    (text) => expect(readings(typed(text, 10))).toEqual([text]),
  );

  test.each([
    ['a lone Enter', ''],
    ['one digit and Enter', '5'],
    ['two digits and Enter', '12'],
    ['two commas', '1,2,5'],
    ['a comma and a point', '1,250.5'],
    ['two signs', '--1.5'],
    ['a sign behind', '1.5-'],
    ['a sign inside', '12-3'],
    ['12 digits, as a scanner sends', '012345678905'],
    ['nine figures', '1234567.89'],
    ['letters before', 'AB1.25'],
    ['letters behind', '1.25mm'],
    ['letters inside', '1e25'],
    ['no figure at all', '-.,'],
    ['a fraction', '5/8'],
    ['a space', '5 25'],
  ])('%s is none', (_, text) => expect(readings(typed(text, 10))).toEqual([]));

  test('a hand, however fast, is no caliper', () => {
    for (const gap of [81, 100, 150, 250]) expect(readings(typed('18.25', gap))).toEqual([]);
  });

  test('one long gap breaks a burst, and what follows it stands alone', () => {
    const late = [...typed('1', 10).slice(0, 1), ...typed('8.25', 10, 200)];
    expect(readings(late)).toEqual(['8.25']);
  });

  test('the whole, with its Enter, lasts at most 300 ms', () => {
    expect(readings(typed('18.2', 75))).toEqual(['18.2']); // 4 gaps: 300
    expect(readings(typed('18.2', 76))).toEqual([]);
    expect(readings(typed('18.25', 61))).toEqual([]); // 5 gaps: 305
  });

  test('a held key is none', () => {
    const held = [...'11111'].map((key, k) => ({ key, at: k * 30, repeat: k > 0 }));
    expect(readings([...held, { key: 'Enter', at: 150 }])).toEqual([]);
  });

  test('a Shift going down for a sign is passed over; a Backspace is not', () => {
    const strokes = typed('+1.25', 10);
    expect(readings([{ key: 'Shift', at: 0 }, ...strokes])).toEqual(['+1.25']);
    expect(readings([...strokes.slice(0, 2), { key: 'Backspace', at: 15 }, ...strokes.slice(2)])).toEqual([]);
  });

  test('two readings in a row are two', () =>
    expect(readings([...typed('18.25', 10), ...typed('18.27', 10, 400)])).toEqual(['18.25', '18.27']));

  test('the first stroke alone begins a burst', () => {
    const first = hear(undefined, { key: '1', at: 0 });
    expect(first.began).toBe(true);
    expect(hear(first.burst, { key: '8', at: 10 }).began).toBeUndefined();
    expect(hear(first.burst, { key: '8', at: 500 }).began).toBe(true);
  });

  test('whatever is heard was typed last, whole, fast, and has one sign of decimals at most', () => {
    const stroke = fc.record({
      key: fc.constantFrom(...'0123456789.,+-a', 'Enter', 'Shift', 'Tab'),
      gap: fc.integer({ min: 0, max: 120 }),
    });
    fc.assert(
      fc.property(fc.array(stroke, { maxLength: 40 }), (made) => {
        let at = 0;
        const strokes = made.map(({ key, gap }) => {
          at += gap;
          return { key, at };
        });
        for (const [k, stroke] of strokes.entries()) {
          const heard = readings(strokes.slice(0, k + 1));
          if (stroke.key !== 'Enter' || heard.length === readings(strokes.slice(0, k)).length) continue;
          const text = heard[heard.length - 1] ?? '';
          const own = strokes
            .slice(0, k)
            .filter((s) => s.key !== 'Shift')
            .slice(-text.length);
          expect(own.map((s) => s.key).join('')).toBe(text);
          expect(stroke.at - (own[0]?.at ?? 0)).toBeLessThanOrEqual(300);
          expect(text).toMatch(/^[+-]?(\d+[.,]?\d*|[.,]\d+)$/);
        }
      }),
      { numRuns: runs(200) },
    );
  });
});
