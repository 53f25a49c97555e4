import type { PicturesAsked, PicturesTold } from '../store/pictures/files';
import { scaledBy } from '../store/pictures/scaled';
import { openBitmap } from './scale';

/** The files of pictures, beside those of the journal; and pictures scaled down. Both off the page's thread. */
async function folder(): Promise<FileSystemDirectoryHandle> {
  const root = await navigator.storage.getDirectory();
  return root.getDirectoryHandle('knifeline-pictures', { create: true });
}

async function held<T>(key: string, work: (file: FileSystemSyncAccessHandle) => T): Promise<T> {
  const file = await (await (await folder()).getFileHandle(key, { create: true })).createSyncAccessHandle();
  try {
    // before Safari 16.4 these calls are asynchronous: they cannot be used here
    if (typeof file.getSize() !== 'number') throw new DOMException('too old', 'NotSupportedError');
    return work(file);
  } finally {
    file.close();
  }
}

/**
 * A file half written is none of its key: its hash says so to whoever reads it. One that stands as it should is not
 * written over.
 */
async function put(key: string, bytes: ArrayBuffer): Promise<void> {
  if (await stands(key, bytes)) return;
  try {
    await held(key, (file) => {
      file.truncate(0);
      if (file.write(new Uint8Array(bytes), { at: 0 }) !== bytes.byteLength)
        throw new DOMException('short write', 'QuotaExceededError');
      file.flush();
    });
  } catch (error) {
    await remove(key).catch(() => undefined); // nothing of it counts
    throw error;
  }
}

async function stands(key: string, bytes: ArrayBuffer): Promise<boolean> {
  const there = new Uint8Array((await get(key)) ?? []);
  const wanted = new Uint8Array(bytes);
  return there.length === wanted.length && there.every((byte, k) => byte === wanted[k]);
}

async function get(key: string): Promise<ArrayBuffer | undefined> {
  try {
    return await (await (await (await folder()).getFileHandle(key)).getFile()).arrayBuffer();
  } catch {
    return undefined;
  }
}

async function remove(key: string): Promise<void> {
  await (await folder()).removeEntry(key).catch((error: unknown) => {
    if (!(error instanceof DOMException && error.name === 'NotFoundError')) throw error;
  });
}

type Listed = { readonly keys: () => AsyncIterable<string> };

async function keys(): Promise<readonly string[]> {
  const found: string[] = [];
  for await (const key of ((await folder()) as unknown as Listed).keys()) found.push(key);
  return found;
}

async function answer(asked: PicturesAsked): Promise<Omit<PicturesTold, 'no'>> {
  switch (asked.what) {
    case 'put':
      await put(asked.key, asked.bytes);
      return {};
    case 'get': {
      const bytes = await get(asked.key);
      return bytes ? { bytes } : {};
    }
    case 'remove':
      await remove(asked.key);
      return {};
    case 'keys':
      return { keys: await keys() };
    case 'scale': {
      const done = await scaledBy(openBitmap, asked.file);
      return done.ok ? { scaled: done.value } : { refused: done.error };
    }
  }
}

addEventListener('message', ({ data }: MessageEvent<PicturesAsked>) => {
  const tell = (told: Omit<PicturesTold, 'no'>) =>
    postMessage({ no: data.no, ...told } satisfies PicturesTold);
  answer(data).then(tell, (error: unknown) => tell({ error: error instanceof Error ? error.name : 'Error' }));
});
