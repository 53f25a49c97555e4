import fc from 'fast-check';
import { correction, generate, mode } from 'lean-qr';
import decodeQR from 'qr/decode.js';
import { describe, expect, test } from 'vitest';
import { cut } from '../../src/store/handover/cut';
import { readFrame } from '../../src/store/handover/frame';
import { runs } from '../runs';

const bytes = Uint8Array.from({ length: 3000 }, (_, k) => (Math.imul(k + 1, 0x9e3779b1) >>> 11) & 0xff);

/** A code as it stands on a screen, `scale` pixels a square; written by one library, read by another. */
function picture(text: string, scale: number): { data: Uint8ClampedArray; width: number; height: number } {
  const code = generate(text, { modes: [mode.alphaNumeric], minCorrectionLevel: correction.M });
  const side = (code.size + 8) * scale;
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  for (let y = 0; y < side; y += 1) {
    for (let x = 0; x < side; x += 1) {
      const on = code.get(Math.floor(x / scale) - 4, Math.floor(y / scale) - 4);
      if (on) data.fill(0, (y * side + x) * 4, (y * side + x) * 4 + 3);
    }
  }
  return { data, width: side, height: side };
}

function read(image: ReturnType<typeof picture>): string | undefined {
  try {
    return decodeQR(image, { timeLimit: 50 });
  } catch {
    return undefined;
  }
}

describe('a code on a picture', () => {
  test.each([60, 160, 400, 600, 1200])('of %s bytes is read as it was written', (size) => {
    const text = cut(bytes.slice(0, size), { still: 1200, passing: 1200 })?.text(0) ?? '';
    expect(read(picture(text, 4))).toBe(text);
  });

  test('with pieces of it blotted out is read as it was written, or refused', () => {
    const codes = cut(bytes, { still: 400, passing: 400 });
    const blot = fc.record({
      x: fc.nat(80),
      y: fc.nat(80),
      w: fc.integer({ min: 1, max: 24 }),
      h: fc.integer({ min: 1, max: 24 }),
      dark: fc.boolean(),
    });
    let refused = 0;
    fc.assert(
      fc.property(fc.nat(30), fc.array(blot, { minLength: 1, maxLength: 5 }), (number, blots) => {
        const text = codes?.text(number) ?? '';
        const image = picture(text, 3);
        for (const { x, y, w, h, dark } of blots) {
          for (let row = y * 3; row < (y + h) * 3 && row < image.height; row += 1) {
            const from = (row * image.width + x * 3) * 4;
            image.data.fill(dark ? 0 : 255, from, Math.min(from + w * 12, (row + 1) * image.width * 4));
          }
        }
        const found = read(image);
        const frame = found === undefined ? undefined : readFrame(found);
        if (frame?.ok) expect(found).toBe(text);
        else refused += 1;
      }),
      { numRuns: runs(60), seed: 7 },
    );
    expect(refused).toBeGreaterThan(5);
  }, 600_000);
});
