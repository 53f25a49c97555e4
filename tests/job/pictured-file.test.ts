import { describe, expect, test } from 'vitest';
import { hashOf } from '../../src/job/picture-hash';
import {
  base64Of,
  firstLines,
  isPictured,
  lastLine,
  type PictureBytes,
  pictureLine,
  readPictured,
} from '../../src/job/pictured-file';

/** A JPEG by hand, ITU-T T.81: SOI, SOF0 of so many pixels, SOS, `said` as its scan, EOI. */
function jpeg(said: string, wide = 16, high = 16): ArrayBuffer {
  const two = (n: number) => [n >> 8, n & 255];
  const frame = [0xff, 0xc0, ...two(11), 8, ...two(high), ...two(wide), 1, 1, 0x11, 0];
  const scan = [0xff, 0xda, ...two(8), 1, 1, 0, 0, 63, 0, ...new TextEncoder().encode(said)];
  return new Uint8Array([0xff, 0xd8, ...frame, ...scan, 0xff, 0xd9]).buffer;
}

async function lineOf(bytes: ArrayBuffer, job = 'j1'): Promise<string> {
  return pictureLine(job, (await hashOf(bytes)) ?? '', base64Of(bytes));
}

const copy = '{\n"knifeline-all": 1\n}\n';

async function fileOf(pictures: readonly ArrayBuffer[]): Promise<string> {
  const lines = await Promise.all(pictures.map((bytes) => lineOf(bytes)));
  const named = await Promise.all(
    pictures.map(async (bytes) => ({ job: 'j1', hash: (await hashOf(bytes)) ?? '' })),
  );
  return [firstLines(copy), ...lines, await lastLine(named)].join('');
}

async function read(text: string) {
  const found: PictureBytes[] = [];
  async function* lines() {
    yield* text.split('\n').filter((line, k, all) => line !== '' || k < all.length - 1);
  }
  const done = await readPictured(lines(), async (picture) => void found.push(picture));
  return { done, found };
}

test('base64 as RFC 4648 has it, section 10', () => {
  const bytes = (text: string) => new TextEncoder().encode(text).buffer as ArrayBuffer;
  expect(['', 'f', 'fo', 'foo', 'foob', 'fooba', 'foobar'].map((text) => base64Of(bytes(text)))).toEqual([
    '',
    'Zg==',
    'Zm8=',
    'Zm9v',
    'Zm9vYg==',
    'Zm9vYmE=',
    'Zm9vYmFy',
  ]);
});

describe('a copy with pictures', () => {
  test('two hundred come back byte for byte, and the copy inside to the letter', async () => {
    const pictures = Array.from({ length: 200 }, (_, k) => jpeg(`picture ${k}`.repeat(1 + (k % 50))));
    const text = await fileOf(pictures);
    expect(isPictured(text)).toBe(true);
    const { done, found } = await read(text);
    expect(done).toEqual({ ok: true, value: { copy, pictures: 200 } });
    expect(found.map(({ bytes }) => base64Of(bytes))).toEqual(pictures.map(base64Of));
  });

  test('with one sign changed, cut off anywhere, or a line lost, it is refused', async () => {
    const text = await fileOf([jpeg('one'), jpeg('two'), jpeg('three')]);
    let state = 20261130;
    const next = (below: number) => {
      state = (state * 1664525 + 1013904223) % 4294967296;
      return Math.floor((state / 4294967296) * below);
    };
    const body = text.indexOf('\n', 40) + 1; // the copy inside has a check of its own
    for (let k = 0; k < 2000; k += 1) {
      const at = body + next(text.length - body - 1);
      const other = text[at] === 'x' ? 'y' : 'x';
      const { done } = await read(text.slice(0, at) + other + text.slice(at + 1));
      expect(done.ok, text.slice(at - 10, at + 10)).toBe(false);
    }
    for (let k = 0; k < 500; k += 1) {
      const { done } = await read(text.slice(0, next(text.length - 3)));
      expect(done.ok).toBe(false);
    }
    const lines = text.split('\n');
    for (const lost of [0, 1, 2, 3, 4, 5])
      expect((await read(lines.filter((_, k) => k !== lost).join('\n'))).done.ok).toBe(false);
  });

  test('what is no picture of the app is refused by its number, whatever its hash says', async () => {
    const bytes = (text: string) => new TextEncoder().encode(text).buffer as ArrayBuffer;
    const bad = [
      bytes('<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>'),
      jpeg('as large as no phone is', 30_000, 30_000),
      bytes('<html></html>'),
      jpeg('more than two megabytes'.repeat(100_000)),
    ];
    for (const one of bad)
      expect((await read(await fileOf([jpeg('good'), one]))).done).toEqual({
        ok: false,
        error: { code: 'bad-picture', no: 2 },
      });
  });

  test('one of a newer version says so', async () => {
    const text = (await fileOf([])).replace('{"knifeline-pictures":1}', '{"knifeline-pictures":2}');
    expect((await read(text)).done).toEqual({ ok: false, error: { code: 'newer-copy', version: 2 } });
  });

  test('a job that is none names no file', async () => {
    const bytes = jpeg('one');
    const text = [firstLines(copy), await lineOf(bytes, '../etc'), await lastLine([])].join('');
    expect((await read(text)).done).toEqual({ ok: false, error: { code: 'bad-picture', no: 1 } });
  });
});
