import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codesOf, shows } from '../../../src/screens/handover/outgoing';
import { taking } from '../../../src/screens/handover/taking';
import { runs } from '../../runs';

const json = JSON.stringify({
  words: Array.from({ length: 400 }, (_, k) => `${(k * 7919) % 1009} ${k * k}`),
});
const codes = await codesOf(json, shows.large);
if (!codes) throw new Error('too long for codes');

/** Shows texts as a camera does; resolves with what was handed on. */
async function take(texts: readonly string[]): Promise<readonly string[]> {
  const whole: string[] = [];
  const { seen } = taking((text) => whole.push(text));
  for (const text of texts) {
    seen(text);
    await new Promise((done) => setTimeout(done));
  }
  for (let k = 0; k < 20 && whole.length === 0; k += 1) await new Promise((done) => setTimeout(done, 5));
  return whole;
}

describe('taking', () => {
  test('hands the text on once, however long the codes go on', async () => {
    const texts = Array.from({ length: codes.count * 2 }, (_, k) => codes.text(k));
    expect(codes.count).toBeGreaterThan(5);
    expect(await take(texts)).toEqual([json]);
  });

  test('hands nothing on before all of it is there', async () => {
    expect(await take(Array.from({ length: codes.count - 1 }, (_, k) => codes.text(k)))).toEqual([]);
  });

  test('says what is held up to it when that is no code of ours, or of a later version', () => {
    const { seen, trouble, progress } = taking(() => undefined);
    expect(seen('https://example.org')).toBe(false);
    expect(trouble.value).toEqual({ code: 'not-ours' });
    expect(seen('KL7:ABC')).toBe(false);
    expect(trouble.value).toEqual({ code: 'newer-code', version: 7 });
    expect(progress.value).toBeUndefined();
    expect(seen(codes.text(0))).toBe(true);
    expect(trouble.value).toBeUndefined();
    expect(progress.value).toEqual({ have: 1, count: codes.count });
  });

  test('damaged codes among the good ones change nothing: the text is the very text, or none', async () => {
    const shown = fc.record({
      number: fc.nat(codes.count * 3),
      at: fc.nat(200),
      cut: fc.nat(3),
      put: fc.string({ maxLength: 4 }),
      good: fc.boolean(),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(shown, { minLength: 20, maxLength: 60, size: 'max' }), async (all) => {
        const whole: string[] = [];
        const { seen } = taking((text) => whole.push(text));
        for (const { number, at, cut, put, good } of all) {
          const text = codes.text(number);
          seen(good ? text : text.slice(0, at) + put + text.slice(at + cut));
        }
        for (let k = 0; k < codes.count; k += 1) seen(codes.text(k));
        for (let k = 0; k < 100 && whole.length === 0; k += 1)
          await new Promise((done) => setTimeout(done, 1));
        expect(whole).toEqual([json]);
      }),
      { numRuns: runs(10) },
    );
  }, 600_000);
});
