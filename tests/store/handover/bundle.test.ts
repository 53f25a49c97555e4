import { readFileSync } from 'node:fs';
import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pack, unpack } from '../../../src/store/handover/bundle';
import { compact } from '../../../src/store/handover/handed';
import { runs } from '../../runs';

const sample = compact(readFileSync('demo-data/mineral-and-shell-cabinet.json', 'utf8'));

describe('pack and unpack', () => {
  test('any text comes back to the letter', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'grapheme' }), async (text) => {
        expect(await unpack(await pack(text))).toEqual({ ok: true, value: text });
      }),
      { numRuns: runs(100) },
    );
  }, 600_000);

  test('the sample job is under a tenth of its length', async () => {
    expect((await pack(sample)).length).toBeLessThan(sample.length / 10);
  });

  test('cut short it is refused; drawn out or changed it is never another text, and never a crash', async () => {
    const bundle = await pack(sample);
    const damage = fc.record({ at: fc.nat(bundle.length - 1), bits: fc.integer({ min: 1, max: 255 }) });
    await fc.assert(
      fc.asyncProperty(damage, fc.constantFrom('change', 'cut', 'more'), async ({ at, bits }, how) => {
        const bad =
          how === 'cut'
            ? bundle.slice(0, at)
            : how === 'more'
              ? new Uint8Array([...bundle, bits])
              : bundle.slice();
        if (how === 'change') bad[at] = (bad[at] ?? 0) ^ bits;
        const read = await unpack(bad);
        expect(read.ok && read.value !== sample).toBe(false);
        if (how === 'cut') expect(read.ok).toBe(false);
      }),
      { numRuns: runs(100) },
    );
  }, 600_000);

  test('of a later version it says so', async () => {
    const bundle = await pack('{}');
    bundle[0] = 2;
    expect(await unpack(bundle)).toEqual({ ok: false, error: { code: 'newer-bundle', version: 2 } });
  });

  test('a few bytes that would fill the phone are stopped on the way', async () => {
    const huge = deflateRawSync(Buffer.alloc(80 * 1024 * 1024));
    const bundle = new Uint8Array([1, ...new Uint8Array(32), ...huge]);
    expect(bundle.length).toBeLessThan(100_000);
    expect(await unpack(bundle)).toEqual({ ok: false, error: { code: 'torn' } });
  });
});
