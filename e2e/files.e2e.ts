import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { openSample, readySettings } from './app';
import { damaged } from './damage';
import { keptLog } from './kept-log';

/** What the database holds, whole, to compare before and after. */
async function everything(page: Page): Promise<string> {
  const beside = await page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const open = indexedDB.open('knifeline');
      open.onsuccess = () => resolve(open.result);
      open.onerror = () => reject(open.error);
    });
    const read = (store: string) =>
      new Promise<unknown>((resolve, reject) => {
        const all = db.transaction(store).objectStore(store).getAll();
        all.onsuccess = () => resolve(all.result);
        all.onerror = () => reject(all.error);
      });
    const rows = [await read('jobs'), await read('aside')];
    db.close();
    return rows;
  });
  return JSON.stringify([beside, await keptLog(page)]);
}

async function shareOut(page: Page): Promise<string> {
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Share out' }).click();
  return readFileSync(await (await waiting).path(), 'utf8');
}

test('a job goes out as a file and comes back the same, on another phone too', async ({
  page,
  browser,
  baseURL,
}) => {
  await openSample(page);
  await readySettings(page);
  await page.locator('.tick').first().click();
  await expect(page.locator('.tick').first()).toBeChecked();
  await page.goto('./#/');
  const file = await shareOut(page);
  expect(JSON.parse(file)).toMatchObject({ knifeline: 2, job: 'mineralshell' });

  const other = await (await browser.newContext({ baseURL: baseURL ?? '' })).newPage();
  await other.goto('./#/import');
  await other.setInputFiles('input[type=file]', {
    name: 'job.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from(file),
  });
  await other.getByRole('button', { name: 'Take it in' }).click();
  await expect(other.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
  expect(await shareOut(other)).toBe(file); // nothing lost, nothing added

  await other.goto('./#/import'); // bringing the same file in again changes nothing
  await other.setInputFiles('input[type=file]', {
    name: 'job.json',
    mimeType: 'application/json',
    buffer: Buffer.from(file),
  });
  await expect(other.getByText('0 of these entries are new')).toBeVisible();
  await other.getByRole('button', { name: 'Keep both' }).click();
  await expect(other.getByRole('heading', { name: 'Mineral and shell cabinet (2)' })).toBeVisible();
  await other.goto('./#/stops/shellcase');
  await expect(other.locator('.tick').first()).toBeChecked();
});

test('damaged and hostile files are refused in words, and the database stays as it was', async ({ page }) => {
  test.setTimeout(300_000);
  await openSample(page);
  const file = await shareOut(page);
  await page.goto('./#/import');
  const before = await everything(page);
  const files = damaged(file, 220);
  expect(files.length).toBeGreaterThanOrEqual(200);
  for (const [k, text] of files.entries()) {
    await page.setInputFiles('input[type=file]', {
      name: `bad-${k}.json`,
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    });
    await expect(page.getByRole('alert')).toContainText('Nothing was changed.');
    await page.evaluate(() => document.querySelector('input')?.form?.reset());
  }
  expect(await everything(page)).toBe(before);
});

test('a deleted job comes back', async ({ page }) => {
  await openSample(page);
  await page.goto('./#/jobs');
  await page.getByRole('button', { name: /^Delete/ }).click();
  await page.getByRole('button', { name: 'Restore' }).click();
  await expect(page.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
});
