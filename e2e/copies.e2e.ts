import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { openSample, pastBounce, readySettings } from './app';
import { keptSetting } from './kept';

/** No picker, as on most phones; `navigator.share` is not there on a desk, so a copy is a download. */
const withoutPicker = (page: Page): Promise<unknown> =>
  page.addInitScript(() => Reflect.deleteProperty(window, 'showSaveFilePicker'));

/** A picker whose file is a real one, in the browser's own folder. */
const withPicker = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    Object.assign(window, {
      showSaveFilePicker: async ({ suggestedName }: { readonly suggestedName: string }) =>
        (await navigator.storage.getDirectory()).getFileHandle(suggestedName, { create: true }),
    });
  });

async function copyOut(page: Page): Promise<string> {
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Copy everything out' }).click();
  return readFileSync(await (await waiting).path(), 'utf8');
}

const bringIn = (page: Page, text: string): Promise<void> =>
  page.setInputFiles('input[type=file]', {
    name: 'all.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from(text),
  });

/** A phone with two jobs, a figure of the shop and a liking of its own. */
async function twoJobs(page: Page): Promise<void> {
  await openSample(page);
  await page.goto('./#/jobs');
  await page.getByRole('button', { name: 'New job' }).click();
  await page.getByRole('textbox').fill('Bench hook');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Bench hook' })).toBeVisible();
  await page.goto('./#/shop');
  await page.getByRole('button', { name: /kerf/i }).click();
  await page.getByRole('dialog').getByRole('button', { name: '1/8', exact: true }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
  await page.goto('./#/phone');
  await page.getByRole('button', { name: 'Left', exact: true }).click();
  await keptSetting(page, 'hand', 'left');
}

test('everything goes out in one file and comes in on another phone; twice changes nothing', async ({
  page,
  browser,
  baseURL,
}) => {
  await withoutPicker(page);
  await twoJobs(page);
  const text = await copyOut(page);
  await expect(page.getByText('Everything is in one file among the downloads.')).toBeVisible();
  await expect(page.getByText('Nothing has changed since.')).toBeVisible();
  expect(JSON.parse(text)).toMatchObject({ 'knifeline-all': 1, likes: { hand: 'left' } });
  expect(text).not.toContain('"here"');

  const other = await (await browser.newContext({ baseURL: baseURL ?? '' })).newPage();
  await withoutPicker(other);
  await other.goto('./#/import');
  await bringIn(other, text);
  await expect(other.getByText(/entries new to this phone, in 2 jobs of 2/)).toBeVisible();
  await other.getByRole('button', { name: 'Take it in' }).click();
  await expect(other.locator('.home-head')).toBeVisible();
  await other.goto('./#/jobs');
  await expect(other.locator('.sect')).toHaveCount(2);
  await expect(other.locator('html')).toHaveClass(/hand-left/);
  await other.goto('./#/phone');
  expect(JSON.parse(await copyOut(other))).toEqual(JSON.parse(text)); // nothing lost, nothing added

  await other.goto('./#/import');
  await bringIn(other, text);
  await expect(other.getByText('Its 2 jobs are already here, complete.')).toBeVisible();
  await other.getByRole('button', { name: 'Go to the job' }).click();
  await other.goto('./#/phone');
  expect(JSON.parse(await copyOut(other))).toEqual(JSON.parse(text));
});

test('where figures differ the phone says where, and asks whose stand', async ({ page }) => {
  await withoutPicker(page);
  await twoJobs(page);
  const text = await copyOut(page);
  await page.getByRole('button', { name: 'Right', exact: true }).click();
  await keptSetting(page, 'hand', 'right');
  await page.goto('./#/import');
  await bringIn(page, text);
  await expect(page.getByText(/differ in one place: hand\./)).toBeVisible();
  await page.getByRole('button', { name: 'Take it in, keep this phone’s' }).click();
  await expect(page.locator('.home-head')).toBeVisible();
  await expect(page.locator('html')).not.toHaveClass(/hand-left/);
  await page.goto('./#/import');
  await bringIn(page, text);
  await page.getByRole('button', { name: 'Take it in, with the file’s' }).click();
  await expect(page.locator('.home-head')).toBeVisible();
  await expect(page.locator('html')).toHaveClass(/hand-left/);
});

test('a torn copy is refused in words, and nothing of it is taken', async ({ page }) => {
  await withoutPicker(page);
  await twoJobs(page);
  const text = await copyOut(page);
  await page.goto('./#/import');
  for (const bad of [text.slice(0, -40), text.replace('Bench hook', 'Bench book')]) {
    await bringIn(page, bad);
    await expect(page.getByRole('alert')).toContainText('cut short or changed on its way');
    await expect(page.getByRole('alert')).toContainText('Nothing was changed.');
  }
  await bringIn(page, text.replace('"knifeline-all": 1', '"knifeline-all": 7'));
  await expect(page.getByRole('alert')).toContainText('written by a newer Knifeline (version 7)');
});

test('where a file can be chosen, the copy is in it, whole', async ({ page }) => {
  await withPicker(page);
  await twoJobs(page);
  await page.getByRole('button', { name: 'Copy everything out' }).click();
  await expect(page.getByText('Everything is in the file you chose.')).toBeVisible();
  const text = await page.evaluate(async () => {
    const folder = await navigator.storage.getDirectory();
    for await (const handle of (
      folder as unknown as { values(): AsyncIterable<FileSystemFileHandle> }
    ).values())
      if (handle.name.startsWith('Knifeline')) return (await handle.getFile()).text();
    return '';
  });
  expect(JSON.parse(text).jobs).toHaveLength(2);
});

test('a choice left, or a file that takes nothing, is no copy', async ({ page }) => {
  await page.addInitScript(() => {
    let turn = 0;
    const broken = { createWritable: () => Promise.reject(new DOMException('full', 'QuotaExceededError')) };
    Object.assign(window, {
      showSaveFilePicker: () => {
        turn += 1;
        return turn === 1 ? Promise.reject(new DOMException('left', 'AbortError')) : Promise.resolve(broken);
      },
    });
  });
  await openSample(page);
  await page.goto('./#/phone');
  await page.getByRole('button', { name: 'Copy everything out' }).click();
  await expect(page.getByText('Cancelled; nothing saved.')).toBeVisible();
  await pastBounce(page);
  await page.getByRole('button', { name: 'Copy everything out' }).click();
  await expect(page.getByText('The file could not be written in full.')).toBeVisible();
  await expect(page.getByText('Not copied out yet.')).toBeVisible();
});

/** As if so many changes had been made since the last copy. */
async function changedBefore(page: Page, since: number): Promise<void> {
  await page.evaluate(async (n) => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const open = indexedDB.open('knifeline');
      open.onsuccess = () => resolve(open.result);
    });
    await new Promise((done) => {
      const tx = db.transaction('settings', 'readwrite');
      tx.objectStore('settings').put({ since: n, remindAt: 200 }, 'copied');
      tx.oncomplete = done;
    });
    db.close();
  }, since);
  await page.reload();
}

test('after 200 changes one quiet line offers a copy; put off or copied, it is gone', async ({ page }) => {
  await withoutPicker(page);
  await openSample(page);
  await readySettings(page);
  await changedBefore(page, 198);
  const line = page.getByText(/changes since the last copy out/);
  await page.goto('./#/stops/shellcase');
  for (const k of [0, 1]) {
    await page.locator('.tick').nth(k).click();
    await expect(page.locator('.tick').nth(k)).toBeChecked();
    await expect(line).toBeHidden();
  }
  await page.goto('./#/saw/shellcase');
  await expect(page.locator('.giant .mx').first()).toBeVisible();
  await expect(line).toBeHidden(); // never at the saw
  await page.goto('./#/');
  await expect(page.getByText('200 changes since the last copy out.')).toBeVisible();
  await page.getByRole('button', { name: 'Later' }).click();
  await expect(line).toBeHidden();
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
  await expect(line).toBeHidden();

  await changedBefore(page, 205);
  await copyOut(page);
  await expect(line).toBeHidden();
  await expect(page.getByText('Everything is in one file among the downloads.')).toBeVisible();
});

test('an empty home-screen app offers to bring the copy in first; on an iPhone the browser says to copy out first', async ({
  browser,
  baseURL,
}) => {
  const iPhone = async (standalone: boolean) => {
    const page = await (await browser.newContext({ baseURL: baseURL ?? '' })).newPage();
    await page.addInitScript(
      (on) => Object.defineProperty(navigator, 'standalone', { value: on }),
      standalone,
    );
    return page;
  };
  const app = await iPhone(true);
  await app.goto('./');
  await app.getByRole('link', { name: 'Bring the copy in' }).click();
  await expect(app.getByText('Choose a file')).toBeVisible();
  await app.goto('./#/phone');
  await expect(app.getByRole('heading', { name: 'On the home screen' })).toBeHidden();
  await openSample(app, './#/');

  const inBrowser = await iPhone(false);
  await inBrowser.goto('./#/');
  await expect(inBrowser.getByRole('link', { name: 'Bring the copy in' })).toBeHidden();
  await inBrowser.goto('./#/phone');
  await expect(inBrowser.getByText('On an iPhone the app on the home screen starts empty')).toBeVisible();
});

test('the browser’s offer to install is taken up from the phone page', async ({ page }) => {
  await page.goto('./#/phone');
  await expect(page.getByRole('heading', { name: 'On the home screen' })).toBeVisible();
  await page.evaluate(() => {
    const offer = Object.assign(new Event('beforeinstallprompt'), {
      prompt: async () => document.body.setAttribute('data-asked', 'yes'),
    });
    dispatchEvent(offer);
  });
  await page.getByRole('button', { name: 'Put it on the home screen' }).click();
  await expect(page.locator('body')).toHaveAttribute('data-asked', 'yes');
  await expect(page.getByRole('button', { name: 'Put it on the home screen' })).toBeHidden();
});
