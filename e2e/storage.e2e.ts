import { expect, type Page, test } from '@playwright/test';
import { openSample, pastBounce, readyOffline, readySettings } from './app';
import { offlineTest } from './browser';
import { keptSetting } from './kept';
import { keptLog } from './kept-log';

const origin = (page: Page) => new URL(page.url()).origin;

/** The log as the database has it, as one text. */
const log = async (page: Page): Promise<string> => `[${(await keptLog(page)).join(',')}]`;

async function clearDatabase(page: Page, at: string): Promise<void> {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Storage.clearDataForOrigin', { origin: at, storageTypes: 'indexeddb' });
}

offlineTest(
  'the database wiped: everything comes back from the second copy, and it is said how much',
  async ({ page }) => {
    await openSample(page);
    await readyOffline(page);
    await readySettings(page);
    await page.locator('.tick').first().click();
    await expect(page.locator('.tick').first()).toBeChecked();
    await page.goto('./#/shop');
    await page.goto('./#/phone');
    await page.getByRole('button', { name: 'Blued' }).click();
    await keptSetting(page, 'theme', 'blued');
    const before = await log(page);
    const entries = JSON.parse(before).length;
    await page.context().setOffline(true);
    const home = page.url().replace(/#.*/, '');
    const lost = page.getByText(`The browser had lost ${entries} entries.`);
    for (const when of ['while it is closed', 'while it is open', 'while it is closed']) {
      const at = origin(page);
      if (when === 'while it is closed') await page.goto('about:blank');
      await clearDatabase(page, at);
      await page.goto(`${home}#/stops/shellcase`);
      // what is open notices at its next write: where one stands is kept
      await page.goto(`${home}#/boards`);
      await page.goto(`${home}#/stops/shellcase`);
      await expect(lost).toBeVisible();
      await expect(page.locator('.tick').first()).toBeChecked();
      expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe('blued');
      await expect.poll(() => log(page)).toBe(before);
      await page.getByRole('button', { name: 'Good' }).click();
      await expect(page.locator('.trouble')).toBeHidden();
    }
  },
);

offlineTest(
  'the database gone, and the app started at its bare address: the job stands there as on any start',
  async ({ page }) => {
    await openSample(page);
    await readyOffline(page);
    const at = origin(page);
    const home = page.url().replace(/#.*/, '');
    await page.context().setOffline(true);
    await page.goto('about:blank');
    await clearDatabase(page, at);
    await page.goto(home); // as on a first visit, the browser keeps no database here
    await expect(page.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
    await page.getByRole('button', { name: 'Pick up where I was' }).click();
    await expect(page.locator('.giant .mx').first()).toBeVisible();
  },
);

test('no room on the phone: what is not saved is said until it is, and goes out with the job all the same', async ({
  page,
}) => {
  await openSample(page);
  await readySettings(page);
  await expect(page.locator('.tick').first()).toBeVisible();
  // as browsers do: the request succeeds, then the transaction ends for want of room
  await page.evaluate(() => {
    const own = IDBObjectStore.prototype.add;
    Object.assign(window, { room: () => (IDBObjectStore.prototype.add = own) });
    IDBObjectStore.prototype.add = function add(this: IDBObjectStore, ...args: Parameters<typeof own>) {
      const request = own.apply(this, args);
      request.addEventListener('success', () => {
        Object.defineProperty(request.transaction, 'error', {
          value: new DOMException('no room', 'QuotaExceededError'),
        });
        request.transaction?.abort();
      });
      return request;
    };
  });
  const tick = page.locator('.tick').nth(1);
  await tick.click();
  const line = page.getByRole('alert');
  await expect(line).toContainText('Phone storage is full. Not saved: ');
  await expect(tick).not.toBeChecked();
  // what goes out holds it all the same
  const waiting = page.waitForEvent('download');
  await line.getByRole('button', { name: 'Share the job out' }).click();
  const text = await (await (await waiting).createReadStream()).toArray();
  expect(Buffer.concat(text).toString()).toContain('"kind":"tick"');
  await pastBounce(page);
  await line.getByRole('button', { name: 'Try again' }).click();
  await expect(tick).not.toHaveAttribute('aria-busy', 'true'); // tried again, and refused again
  await expect(line).toContainText('Not saved');
  await page.evaluate(() => (window as unknown as { room: () => void }).room());
  await pastBounce(page);
  await line.getByRole('button', { name: 'Try again' }).click();
  await expect(tick).toBeChecked();
  await expect(line).toBeHidden();
  await page.reload();
  await expect(tick).toBeChecked();
});

test('a database that does not answer: the journal takes the change, says so, and gives it back', async ({
  page,
}) => {
  await openSample(page);
  await readySettings(page);
  const tick = page.locator('.tick').nth(1);
  await expect(tick).toBeVisible();
  await page.evaluate(() => {
    IDBDatabase.prototype.transaction = () => {
      throw new DOMException('Connection to Indexed Database server lost', 'UnknownError');
    };
  });
  await tick.click();
  await expect(tick).toBeChecked({ timeout: 20_000 });
  await expect(page.getByText('kept in the second copy alone')).toBeVisible();
  await pastBounce(page);
  await page.getByRole('button', { name: 'Open again' }).click();
  await expect(page.locator('.tick').nth(1)).toBeChecked();
  expect(await log(page)).toContain('"kind":"tick"');
});

test('a database that is read and takes nothing: what the second copy alone has is shown, on a page opened again too', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const { add, put } = IDBObjectStore.prototype;
    const refusing = (own: typeof add) =>
      function write(this: IDBObjectStore, ...args: Parameters<typeof add>) {
        if (sessionStorage.getItem('refuses')) throw new DOMException('Internal error', 'UnknownError');
        return own.apply(this, args);
      };
    Object.assign(IDBObjectStore.prototype, { add: refusing(add), put: refusing(put) });
  });
  const line = page.getByText('kept in the second copy alone');
  await openSample(page);
  await readySettings(page);
  const tick = page.locator('.tick').nth(1);
  await expect(tick).toBeVisible();
  await page.evaluate(() => sessionStorage.setItem('refuses', 'yes'));
  await tick.click();
  await expect(tick).toBeChecked({ timeout: 20_000 });
  await page.reload();
  await expect(tick).toBeChecked();
  await expect(line).toBeVisible();
  // in one step: once it takes again the page may bring the copies together by itself, and the line goes
  await page.getByRole('button', { name: 'Open again' }).evaluate((button: HTMLElement) => {
    sessionStorage.removeItem('refuses');
    button.click();
  });
  await expect(tick).toBeChecked();
  await expect(line).toBeHidden();
  await expect.poll(() => log(page)).toContain('"kind":"tick"');
});

test('a newer version has the database: an old page shows it, and keeps nothing', async ({
  page,
  context,
}) => {
  await openSample(page);
  await readySettings(page);
  const tick = page.locator('.tick').first();
  await expect(tick).toBeVisible();
  const newer = await context.newPage();
  await newer.goto('./fonts-OFL.txt');
  await newer.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const open = indexedDB.open('knifeline', 99);
        open.onsuccess = () => {
          open.result.close();
          resolve();
        };
        open.onblocked = () => reject(new Error('blocked'));
      }),
  );
  await expect(page.getByText('A newer Knifeline is open on this phone.')).toBeVisible();
  await tick.click();
  await expect(tick).not.toBeChecked();
  await page.reload();
  await expect(page.locator('.tick').first()).toBeVisible();
  await expect(page.getByText('A newer Knifeline is open on this phone.')).toBeVisible();
});

offlineTest(
  'a database that does not open: what the second copy holds can be shared out whole',
  async ({ page }) => {
    await openSample(page);
    await readyOffline(page);
    await page.addInitScript(() => {
      indexedDB.open = () => {
        throw new DOMException('Internal error opening backing store', 'UnknownError');
      };
    });
    await page.reload();
    await expect(page.getByText('What was kept here is whole in the second copy.')).toBeVisible({
      timeout: 20_000,
    });
    const waiting = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Share everything out' }).click();
    const text = Buffer.concat(await (await (await waiting).createReadStream()).toArray()).toString();
    expect(JSON.parse(text).jobs[0]).toMatchObject({ job: 'mineralshell' });
  },
);
