import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Codes, cut } from '../../../src/store/handover/cut';
import { readFrame } from '../../../src/store/handover/frame';
import { type Gathered, gathering } from '../../../src/store/handover/gather';
import { runs } from '../../runs';
import { bytesOf, hex } from './codes';

const bundles = fc
  .tuple(fc.integer({ min: 5, max: 6000 }), fc.nat())
  .map(([length, seed]) => bytesOf(length, seed));

const fine = { still: 600, passing: 400 };

const codesOf = (bundle: Uint8Array, fineness = fine): Codes => {
  const codes = cut(bundle, fineness);
  if (!codes) throw new Error('too long for codes');
  return codes;
};

/** Shows codes to a gathering until it is whole, or they run out. */
function show(texts: readonly string[]): Gathered | undefined {
  const gather = gathering();
  let state: Gathered | undefined;
  for (const text of texts) {
    const frame = readFrame(text);
    if (frame.ok) state = gather.add(frame.value);
  }
  return state;
}

describe('cut and gathering', () => {
  test('a small bundle is one code', () => {
    expect(codesOf(bytesOf(600, 1)).count).toBe(1);
    expect(codesOf(bytesOf(601, 1)).count).toBe(2);
  });

  test('what is longer than 512 codes is not cut', () => {
    expect(cut(bytesOf(512 * 400, 1), fine)?.count).toBe(512);
    expect(cut(bytesOf(512 * 400 + 1, 1), fine)).toBeUndefined();
  });

  test('one pass in any order, with any of it twice, gives back the very bytes', () => {
    const order = fc.infiniteStream(fc.nat(1_000_000));
    fc.assert(
      fc.property(bundles, order, (bundle, chance) => {
        const codes = codesOf(bundle);
        const texts = Array.from({ length: codes.count }, (_, k) => codes.text(k));
        const shown = [...texts, ...texts.slice(0, 3)].sort(() => ((chance.next().value ?? 0) % 3) - 1);
        expect(hex(show(shown)?.bundle)).toBe(hex(bundle));
      }),
      { numRuns: runs(100) },
    );
  }, 600_000);

  test('any codes from any moment on give back the very bytes as soon as they suffice, and nothing before', () => {
    fc.assert(
      fc.property(
        bundles,
        fc.nat(65_535),
        fc.infiniteStream(fc.integer({ min: 0, max: 9 })),
        (bundle, from, seen) => {
          const codes = codesOf(bundle, { still: 100, passing: 150 });
          const gather = gathering();
          for (let k = 0, state: Gathered = { have: 0, count: codes.count }; ; k += 1) {
            if ((seen.next().value ?? 0) < 4) continue; // four in ten are missed
            const frame = readFrame(codes.text(from + k));
            if (!frame.ok) throw new Error('a good code is refused');
            const next = gather.add(frame.value);
            expect(next.have - state.have).toBeLessThanOrEqual(1);
            state = next;
            if (next.have < codes.count) expect(next.bundle).toBeUndefined();
            else {
              expect(hex(next.bundle)).toBe(hex(bundle));
              return;
            }
          }
        },
      ),
      { numRuns: runs(100) },
    );
  }, 600_000);

  test('from the middle on, about two codes more than blocks are enough', () => {
    let more = 0;
    for (let round = 0; round < 200; round += 1) {
      const codes = codesOf(bytesOf(12_000, round), { still: 100, passing: 400 });
      const gather = gathering();
      for (let k = 0; ; k += 1) {
        const frame = readFrame(codes.text(codes.count + round * 97 + k));
        if (frame.ok && gather.add(frame.value).bundle) {
          more += k + 1 - codes.count;
          break;
        }
      }
    }
    expect(more / 200).toBeLessThan(2.5);
  });

  test('codes of two bundles, and of one cut two ways, are not mixed', () => {
    const [a, b] = [bytesOf(1500, 1), bytesOf(1500, 2)];
    const sets = [codesOf(a), codesOf(b), codesOf(a, { still: 100, passing: 200 })];
    const gather = gathering();
    const whole: Uint8Array[] = [];
    for (let k = 0; k < 8; k += 1) {
      for (const codes of sets) {
        const frame = k < codes.count ? readFrame(codes.text(k)) : undefined;
        const state = frame?.ok ? gather.add(frame.value) : undefined;
        if (state?.bundle) whole.push(state.bundle);
      }
    }
    expect(whole).toEqual([a, b, a]);
  });

  test('misread codes in between change nothing', () => {
    const bundle = bytesOf(3000, 9);
    const codes = codesOf(bundle);
    const good = Array.from({ length: codes.count }, (_, k) => codes.text(k));
    const bad = good.map((text, k) => `${text.slice(0, 30 + k)}Q${text.slice(31 + k)}`);
    expect(show(good.flatMap((text, k) => [bad[k] ?? '', text, bad[k] ?? '']))?.bundle).toEqual(bundle);
  });
});
