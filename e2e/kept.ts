import { expect, type Page } from '@playwright/test';

/** The last word of a setting in the second copy, read while nobody writes there. */
const wordOf = (page: Page, name: string): Promise<unknown> =>
  page.evaluate(async (wanted) => {
    type Listed = { readonly values: () => AsyncIterable<FileSystemFileHandle> };
    const root = await navigator.storage.getDirectory();
    const folder = (await root.getDirectoryHandle('knifeline', { create: true })) as unknown as Listed;
    let last: { readonly word: unknown; readonly at: string } | undefined;
    await navigator.locks.request('knifeline-journal', async () => {
      for await (const handle of folder.values()) {
        const lines = (await (await handle.getFile()).text()).split('\n').filter(Boolean);
        for (const [kind, key, word, at = ''] of lines.map((line) => JSON.parse(line.slice(9)))) {
          if (kind === 'settings' && key === wanted && at >= (last?.at ?? '')) last = { word, at };
        }
      }
    });
    return last?.word;
  }, name);

/**
 * Until a setting is kept so. The screen shows it at once; it goes into the database, then into the second copy, so from
 * then on a kill takes it from neither.
 */
export async function keptSetting(page: Page, name: string, word: string): Promise<void> {
  await expect.poll(() => wordOf(page, name)).toBe(word);
}

/** Until it is kept where the user is. */
export async function keptHere(page: Page): Promise<void> {
  await keptSetting(page, 'here', new URL(page.url()).hash);
}

/** Until the sum of Figure is kept with so many lines on its strip. */
export async function keptLines(page: Page, lines: readonly string[]): Promise<void> {
  const texts = async () => {
    const figure = (await wordOf(page, 'figure')) as
      | { readonly lines: readonly { readonly text: string }[] }
      | undefined;
    return figure?.lines.map(({ text }) => text);
  };
  await expect.poll(texts).toEqual(lines);
}
