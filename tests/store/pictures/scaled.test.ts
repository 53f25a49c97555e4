import { describe, expect, test } from 'vitest';
import { type OpensPicture, scaledBy } from '../../../src/store/pictures/scaled';

const two = (n: number) => [n >> 8, n & 255];

/** ITU-T T.81: a JPEG that says its size and has next to nothing in its scan. */
const jpeg = (wide: number, high: number): Blob =>
  new Blob([
    new Uint8Array([
      ...[0xff, 0xd8, 0xff, 0xc0, ...two(11), 8, ...two(high), ...two(wide), 1, 1, 0x11, 0],
      ...[0xff, 0xda, ...two(8), 1, 1, 0, 0, 63, 0, 0x12, 0xff, 0xd9],
    ]),
  ]);

/** ISO/IEC 23008-12: a file type box, and one that says the size of a picture. */
const heic = (wide: number, high: number): Blob => {
  const four = (n: number) => [0, 0, ...two(n)];
  const text = (said: string) => [...said].map((sign) => sign.charCodeAt(0));
  const ispe = [...four(20), ...text('ispe'), ...four(0), ...four(wide), ...four(high)];
  return new Blob([new Uint8Array([...four(12), ...text('ftypheic'), ...ispe, ...four(0)])]);
};

/** Opens anything at the size it is given, and writes so many bytes for each size and quality. */
function opener(wide: number, high: number, bytes: (pixels: number, quality: number) => number) {
  const asked: (readonly number[])[] = [];
  let closed = 0;
  const opens: OpensPicture = async () => ({
    wide,
    high,
    drawn: (w, h) => async (quality) => {
      asked.push([w, h, quality]);
      return new Blob([new Uint8Array(bytes(w * h, quality))]);
    },
    close: () => {
      closed += 1;
    },
  });
  return { opens, asked, closed: () => closed };
}

describe('a picture scaled down', () => {
  test('is 1,600 pixels along its longer edge, and what is smaller stays as it is', async () => {
    // 3000 × 1600 / 4000 = 1200
    const large = await scaledBy(opener(4000, 3000, () => 10).opens, jpeg(4000, 3000));
    expect(large).toMatchObject({ ok: true, value: { wide: 1600, high: 1200 } });
    const small = await scaledBy(opener(40, 30, () => 10).opens, jpeg(40, 30));
    expect(small).toMatchObject({ ok: true, value: { wide: 40, high: 30 } });
  });

  test('over 300 KB it is written coarser, then smaller by a quarter, until it is under', async () => {
    // 1600 × 1600 takes 2,560,000 × 0.82 / 4 = 524,800 bytes, at 0.4 still 256,000: under 307,200
    const coarser = opener(1600, 1600, (pixels, quality) => (pixels * quality) / 4);
    const done = await scaledBy(coarser.opens, jpeg(1600, 1600));
    expect(done.ok && done.value.bytes.byteLength).toBe(256_000);
    // a byte for every 8 pixels whatever the quality: 320,000, then 1200 × 1200 / 8 = 180,000
    const smaller = opener(1600, 1600, (pixels) => pixels / 8);
    const again = await scaledBy(smaller.opens, jpeg(1600, 1600));
    expect(again).toMatchObject({ ok: true, value: { wide: 1200, high: 1200 } });
    expect(smaller.asked.length).toBe(5);
    expect([coarser.closed(), smaller.closed()]).toEqual([1, 1]);
  });

  test('what is too large is not even opened', async () => {
    const { opens, asked } = opener(9, 9, () => 1);
    const found = await scaledBy(opens, jpeg(20_001, 10));
    expect(found).toEqual({ ok: false, error: { code: 'too-many-pixels', wide: 20_001, high: 10 } });
    expect(asked).toEqual([]);
  });

  test('what the browser cannot open is said by its kind; one that breaks as it is drawn is closed', async () => {
    const opens = () => Promise.reject(new DOMException('no', 'InvalidStateError'));
    expect(await scaledBy(opens, heic(40, 30))).toEqual({
      ok: false,
      error: { code: 'not-decoded', type: 'heic' },
    });
    const broken = opener(40, 30, () => {
      throw new RangeError('no');
    });
    expect(await scaledBy(broken.opens, jpeg(40, 30))).toEqual({
      ok: false,
      error: { code: 'not-decoded', type: 'jpeg' },
    });
    expect(broken.closed()).toBe(1);
  });
});
