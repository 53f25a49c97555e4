import type { Page } from '@playwright/test';

/** A photo as a phone's camera would take it, `wide` by `high`: every one of another seed is another picture. */
export async function photo(
  page: Page,
  size: { wide: number; high: number; seed?: number },
): Promise<Buffer> {
  const text = await page.evaluate(async ({ wide, high, seed = 1 }) => {
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [wide, high];
    const drawing = canvas.getContext('2d') as CanvasRenderingContext2D;
    // left red, right blue: which way up it lies can be told of its pixels
    drawing.fillStyle = '#c00000';
    drawing.fillRect(0, 0, wide / 2, high);
    drawing.fillStyle = '#0000c0';
    drawing.fillRect(wide / 2, 0, wide / 2, high);
    drawing.fillStyle = '#ffffff';
    drawing.fillRect(wide / 4, high / 4, 1 + (seed % 97), 1 + Math.floor(seed / 97));
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', 0.9));
    const bytes = new Uint8Array(await (blob as Blob).arrayBuffer());
    return Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  }, size);
  return Buffer.from(text, 'latin1');
}

/**
 * A JPEG with a camera's own notes in it, written by hand (Exif 2.32, TIFF 6.0): the maker, which way it was held, and
 * where it was taken (48° 12' N). Nothing of them may be kept.
 *
 * @param orientation as the tag 0x0112 has it: 6 is held upright
 */
export function withPlace(jpeg: Buffer, orientation = 1): Buffer {
  const maker = Buffer.from('SECRETMAKER\0');
  const tiff = Buffer.alloc(8 + 2 + 3 * 12 + 4 + maker.length + 2 + 2 * 12 + 4 + 24);
  const gps = 8 + 2 + 3 * 12 + 4 + maker.length;
  tiff.write('II', 0);
  tiff.writeUInt16LE(42, 2);
  tiff.writeUInt32LE(8, 4);
  tiff.writeUInt16LE(3, 8);
  const field = (at: number, tag: number, type: number, count: number, value: number) => {
    tiff.writeUInt16LE(tag, at);
    tiff.writeUInt16LE(type, at + 2);
    tiff.writeUInt32LE(count, at + 4);
    tiff.writeUInt32LE(value, at + 8);
  };
  field(10, 0x010f, 2, maker.length, 50);
  field(22, 0x0112, 3, 1, orientation);
  field(34, 0x8825, 4, 1, gps);
  maker.copy(tiff, 50);
  tiff.writeUInt16LE(2, gps);
  field(gps + 2, 0x0001, 2, 2, 'N'.charCodeAt(0));
  field(gps + 14, 0x0002, 5, 3, gps + 2 + 24 + 4);
  for (const [k, n] of [48, 1, 12, 1, 0, 1].entries()) tiff.writeUInt32LE(n, gps + 30 + 4 * k);
  const head = Buffer.from('Exif\0\0');
  const marker = Buffer.from([0xff, 0xe1, 0, 0]);
  marker.writeUInt16BE(2 + head.length + tiff.length, 2);
  return Buffer.concat([jpeg.subarray(0, 2), marker, head, tiff, jpeg.subarray(2)]);
}

/** Picks files at a place, as out of the phone's gallery. */
export async function pick(
  page: Page,
  files: readonly { name: string; buffer: Buffer; mimeType?: string }[],
) {
  await page
    .getByLabel('Pick pictures')
    .setInputFiles(files.map(({ name, buffer, mimeType = 'image/jpeg' }) => ({ name, buffer, mimeType })));
}

/** The bytes of every picture kept on the phone, by key: of the database, and of the files. */
export async function keptPictures(page: Page): Promise<{
  readonly database: Readonly<Record<string, Buffer>>;
  readonly files: Readonly<Record<string, Buffer>>;
}> {
  const found = await page.evaluate(async () => {
    const textOf = (bytes: ArrayBuffer) =>
      Array.from(new Uint8Array(bytes), (byte) => String.fromCharCode(byte)).join('');
    const answer = <T>(request: IDBRequest<T>) =>
      new Promise<T>((done, fail) => {
        request.onsuccess = () => done(request.result);
        request.onerror = () => fail(request.error);
      });
    const db = await answer(indexedDB.open('knifeline'));
    const store = db.transaction('pictures').objectStore('pictures');
    const [keys, all] = await Promise.all([answer(store.getAllKeys()), answer(store.getAll())]);
    db.close();
    const root = await navigator.storage.getDirectory();
    const folder = await root.getDirectoryHandle('knifeline-pictures', { create: true });
    const files: [string, string][] = [];
    // one that is deleted meanwhile is not there
    for await (const [name, file] of (
      folder as unknown as { entries(): AsyncIterable<[string, FileSystemFileHandle]> }
    ).entries())
      await file.getFile().then(
        async (whole) => void files.push([name, textOf(await whole.arrayBuffer())]),
        () => undefined,
      );
    return { database: keys.map((key, k) => [`${key}`, textOf(all[k])] as [string, string]), files };
  });
  const buffers = (pairs: readonly (readonly [string, string])[]) =>
    Object.fromEntries(pairs.map(([key, text]) => [key, Buffer.from(text, 'latin1')]));
  return { database: buffers(found.database), files: buffers(found.files) };
}
