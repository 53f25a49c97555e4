import { describe, expect, test } from 'vitest';
import { headOf } from '../../src/job/picture-head';

const text = (said: string): readonly number[] => [...said].map((sign) => sign.charCodeAt(0));
const two = (n: number) => [n >> 8, n & 255];
const four = (n: number) => [...two(n >>> 16), ...two(n & 0xffff)];
const head = (...bytes: readonly (readonly number[])[]) => headOf(new Uint8Array(bytes.flat()));

// ITU-T T.81: SOI, APP1 with a thumbnail's end in it, SOF0 (8 bits, height, width, one component), SOS, a scan, EOI
const app1 = [0xff, 0xe1, ...two(6), 0xff, 0xd9, 0xff, 0xd9];
const frame = (wide: number, high: number, marker = 0xc0) => [
  0xff,
  marker,
  ...two(11),
  8,
  ...two(high),
  ...two(wide),
  1,
  1,
  0x11,
  0,
];
const scan = [0xff, 0xda, ...two(8), 1, 1, 0, 0, 63, 0, 0x12, 0xff, 0x00, 0x34];
const soi = [0xff, 0xd8];
const eoi = [0xff, 0xd9];

// ISO/IEC 15948: the signature, IHDR (13 bytes and a check), IDAT, IEND
const signature = [0x89, ...text('PNG'), 0x0d, 0x0a, 0x1a, 0x0a];
const chunk = (name: string, data: readonly number[]) => [
  ...four(data.length),
  ...text(name),
  ...data,
  0,
  0,
  0,
  0,
];
const ihdr = (wide: number, high: number) => chunk('IHDR', [...four(wide), ...four(high), 8, 2, 0, 0, 0]);

// RFC 9649: RIFF, the size of what follows, little end first
const riff = (body: readonly number[]) => [
  ...text('RIFF'),
  body.length + 4,
  0,
  0,
  0,
  ...text('WEBP'),
  ...body,
];

describe('what a file says of itself before it is decoded', () => {
  test('a JPEG, with anything after its end, and progressive', () => {
    const wanted = { ok: true, value: { type: 'jpeg', wide: 4000, high: 3000 } };
    expect(head(soi, app1, frame(4000, 3000), scan, eoi)).toEqual(wanted);
    expect(head(soi, frame(4000, 3000, 0xc2), scan, eoi, text('a film after it'))).toEqual(wanted);
  });

  test('a JPEG cut off in its scan ends too early, whatever its thumbnail ends with', () => {
    expect(head(soi, app1, frame(4000, 3000), scan)).toEqual({ ok: false, error: { code: 'cut-short' } });
    expect(head(soi, app1)).toEqual({ ok: false, error: { code: 'cut-short' } });
  });

  test('a picture of 30,000 pixels a side says so in a few bytes', () => {
    expect(head(signature, ihdr(30_000, 30_000), chunk('IEND', []))).toEqual({
      ok: true,
      value: { type: 'png', wide: 30_000, high: 30_000 },
    });
  });

  test('a PNG without its end is cut short', () => {
    expect(head(signature, ihdr(10, 20), chunk('IDAT', [1, 2, 3]))).toEqual({
      ok: false,
      error: { code: 'cut-short' },
    });
  });

  test('WebP in its three forms', () => {
    // VP8X: flags and three bytes, then width and height less one, three bytes each: 1000 and 500
    const extended = [...text('VP8X'), 10, 0, 0, 0, 0, 0, 0, 0, 0xe7, 0x03, 0, 0xf3, 0x01, 0];
    // VP8L: 0x2f, then 14 bits each less one: 999 + 499 << 14 = 8176615 = 0x7cc3e7
    const lossless = [...text('VP8L'), 5, 0, 0, 0, 0x2f, 0xe7, 0xc3, 0x7c, 0x00];
    // VP8: three bytes, 9d 01 2a, then 14 bits each: 1000 = 0x3e8, 500 = 0x1f4
    const lossy = [...text('VP8 '), 10, 0, 0, 0, 0, 0, 0, 0x9d, 0x01, 0x2a, 0xe8, 0x03, 0xf4, 0x01];
    for (const body of [extended, lossless, lossy])
      expect(head(riff(body))).toEqual({ ok: true, value: { type: 'webp', wide: 1000, high: 500 } });
    expect(head(riff(lossy).slice(0, -2))).toEqual({ ok: false, error: { code: 'cut-short' } });
  });

  test('HEIC: the greatest size of those in it', () => {
    const ispe = (wide: number, high: number) => [
      ...four(20),
      ...text('ispe'),
      ...four(0),
      ...four(wide),
      ...four(high),
    ];
    const ftyp = [...four(16), ...text('ftypheic'), ...four(0)];
    expect(head(ftyp, ispe(512, 512), ispe(4032, 3024), four(0), four(0))).toEqual({
      ok: true,
      value: { type: 'heic', wide: 4032, high: 3024 },
    });
  });

  test('anything else is none: a drawing with a script, a film, a page, nothing, sizes of nought', () => {
    const none = { ok: false, error: { code: 'no-picture' } };
    for (const said of [
      '<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>',
      'GIF89a\x01\x00\x01\x00\x00\x00\x00',
      '%PDF-1.7 and more of it',
      '',
      'x',
      '\x00\x00\x00\x10ftypisom\x00\x00\x00\x00',
    ])
      expect(head(text(said))).toEqual(none);
    expect(head(signature, ihdr(0, 10), chunk('IEND', []))).toEqual(none);
    expect(head(soi, text('not a marker at all'))).toEqual(none);
  });

  test('whatever bytes follow a good beginning, it ends, with an answer', () => {
    let state = 20261130;
    const next = () => {
      state = (state * 1664525 + 1013904223) % 4294967296;
      return state >>> 24;
    };
    const begins = [
      soi,
      signature,
      [...text('RIFF'), 40, 0, 0, 0, ...text('WEBP')],
      [...four(16), ...text('ftypheic')],
    ];
    for (let k = 0; k < 20_000; k += 1) {
      const rest = Array.from({ length: next() }, next);
      const found = head(begins[k % 4] ?? [], rest);
      expect(found.ok || ['no-picture', 'cut-short'].includes(found.error.code)).toBe(true);
    }
  });
});
