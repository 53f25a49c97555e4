import { expect, type Page } from '@playwright/test';

/** The last word of each setting in the second copy whose key begins so, read while nobody writes there. */
const wordsOf = (page: Page, prefix: string): Promise<Readonly<Record<string, unknown>>> =>
  page.evaluate(async (wanted) => {
    type Listed = { readonly values: () => AsyncIterable<FileSystemFileHandle> };
    const root = await navigator.storage.getDirectory();
    const folder = (await root.getDirectoryHandle('knifeline', { create: true })) as unknown as Listed;
    const last: Record<string, { readonly word: unknown; readonly at: string }> = {};
    await navigator.locks.request('knifeline-journal', async () => {
      for await (const handle of folder.values()) {
        if (handle.name === 'starting') continue; // it names a start, and has no lines
        const lines = (await (await handle.getFile()).text()).split('\n').filter(Boolean);
        for (const [kind, key, word, at = ''] of lines.map((line) => JSON.parse(line.slice(9)))) {
          if (kind === 'settings' && key.startsWith(wanted) && at >= (last[key]?.at ?? ''))
            last[key] = { word, at };
        }
      }
    });
    return Object.fromEntries(Object.entries(last).map(([key, { word }]) => [key, word]));
  }, prefix);

/**
 * Until a setting is kept so. The screen shows it at once; it goes into the database, then into the second copy, so
 * from then on a kill takes it from neither.
 */
export async function keptSetting(page: Page, name: string, word: string): Promise<void> {
  await expect.poll(async () => (await wordsOf(page, name))[name]).toBe(word);
}

/** Until it is kept where the user is. */
export async function keptHere(page: Page): Promise<void> {
  await keptSetting(page, 'here', new URL(page.url()).hash);
}

/** Until the sum of Figure is kept with so many lines on its strip. */
export async function keptLines(page: Page, lines: readonly string[]): Promise<void> {
  type Kept = { readonly text: string; readonly at: number } | null;
  const texts = async () =>
    Object.values((await wordsOf(page, 'strip/')) as Readonly<Record<string, Kept>>)
      .flatMap((line) => line ?? [])
      .sort((a, b) => a.at - b.at)
      .map(({ text }) => text.replace(/#[a-p]{4}(?=\d)/g, '#')); // each page marks its lines with letters of its own
  await expect.poll(texts).toEqual(lines);
}

/** Bytes of each file of the second copy, read while nobody writes there. */
export const sizesOf = (page: Page): Promise<readonly number[]> =>
  page.evaluate(async () => {
    type Listed = { readonly values: () => AsyncIterable<FileSystemFileHandle> };
    const root = await navigator.storage.getDirectory();
    const folder = (await root.getDirectoryHandle('knifeline', { create: true })) as unknown as Listed;
    const sizes: number[] = [];
    await navigator.locks.request('knifeline-journal', async () => {
      for await (const handle of folder.values()) sizes.push((await handle.getFile()).size);
    });
    return sizes;
  });
