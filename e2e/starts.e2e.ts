import { expect, type Page, test } from '@playwright/test';
import { openSample, readyOffline } from './app';
import { withWorker } from './browser';
import { filesOf, host } from './host';

test.use(withWorker);

/** A file of the app is missing. */
const notThrough = (page: Page) => page.getByText(/not come through/).filter({ visible: true });

/** As on a phone that lost what it had fetched: the next start asks the host. */
async function emptyCache(page: Page): Promise<void> {
  await (await page.context().newCDPSession(page)).send('Network.clearBrowserCache');
}

/** The first screen, before any job. */
const first = (page: Page) => page.getByRole('link', { name: 'Do a sum' });

test.describe('a start', () => {
  test('waits for no answer whether the browser keeps its storage', async ({ page }) => {
    await page.addInitScript(() => {
      const never = () => new Promise(() => undefined);
      Object.assign(StorageManager.prototype, { persisted: never, persist: never });
    });
    await page.goto('./');
    await expect(first(page)).toBeVisible();
  });

  test('stands where that question throws', async ({ page }) => {
    await page.addInitScript(() => {
      const no = () => {
        throw new DOMException('no', 'SecurityError');
      };
      Object.assign(StorageManager.prototype, { persisted: no, persist: no });
    });
    await page.goto('./');
    await expect(first(page)).toBeVisible();
    await page.goto('./#/phone');
    await expect(page.getByText('The browser has not said whether it keeps this')).toBeVisible();
  });

  test('stands where no worker may run, and says that there is a single copy', async ({ page }) => {
    await page.addInitScript(() => {
      Object.assign(window, {
        Worker: function Worker() {
          throw new DOMException('no', 'SecurityError');
        },
      });
    });
    await page.goto('./');
    await expect(first(page)).toBeVisible();
    await expect(page.getByText('in a single copy')).toBeVisible();
  });

  test('stands where the journal never answers, and says so', async ({ page }) => {
    await page.addInitScript(() => {
      Worker.prototype.postMessage = () => undefined;
    });
    await page.goto('./');
    await expect(first(page)).toBeVisible();
    await expect(page.getByText('in a single copy')).toBeVisible();
  });
});

/** A database that opens only so much later, in milliseconds: nobody is in its way. */
const opensLate = (page: Page, late: number) =>
  page.addInitScript((wait) => {
    const own = EventTarget.prototype.addEventListener;
    EventTarget.prototype.addEventListener = function add(this: EventTarget, type, heard, options) {
      const isOpening = this instanceof IDBOpenDBRequest && type === 'success';
      if (!isOpening || typeof heard !== 'function') return own.call(this, type, heard, options);
      return own.call(this, type, (event) => void setTimeout(() => heard.call(this, event), wait), options);
    };
  }, late);

test('a phone slow to open says so, and opens by itself when it can', async ({ page }) => {
  await opensLate(page, 6000);
  await page.goto('./');
  await expect(page.getByText('The phone is slow to open what is kept on it')).toBeVisible();
  await expect(page.getByText('older version')).toHaveCount(0);
  await expect(first(page)).toBeVisible({ timeout: 20_000 });
  await expect(page.getByText('Still trying')).toHaveCount(0);
});

/** The sheets of the picture have not come when it is taken away: then a browser never says that they came. */
const sheetsNeverCome = (page: Page) =>
  page.addInitScript(() => {
    for (const event of ['load', 'error'])
      Object.defineProperty(HTMLLinkElement.prototype, `on${event}`, {
        set(this: HTMLLinkElement, heard: () => void) {
          if (!(this.getRootNode() instanceof ShadowRoot)) this.addEventListener(event, heard);
        },
      });
  });

test('a slow phone that says so in place of a picture not painted yet opens all screens all the same', async ({
  page,
}) => {
  await openSample(page);
  await readyOffline(page);
  await expect.poll(() => page.evaluate(() => localStorage.getItem('knifeline.picture'))).toContain('html');
  await sheetsNeverCome(page);
  await opensLate(page, 6000);
  await page.reload();
  await expect(page.getByText('The phone is slow to open what is kept on it')).toBeVisible();
  await expect(page.locator('#picture')).toHaveCount(0);
  await page.getByRole('link', { name: 'Figure', exact: true }).click({ timeout: 20_000 });
  await expect(page.locator('#app main > *').first()).toBeVisible();
});

test('a file missing on a first visit is said in words, and a tap tries again', async ({ browser }) => {
  const at = await host();
  const files = filesOf(at.folder).filter((file) =>
    /(index|main|home|bank|later|plan|planning|looking)-.*\.js$/.test(file),
  );
  expect(files.length).toBeGreaterThanOrEqual(5);
  for (const missing of files)
    await test.step(missing, async () => {
      const page = await (await browser.newContext()).newPage();
      at.fault((file) => (file === missing ? 'missing' : undefined));
      await page.goto(`${at.url}#/phone`);
      await expect(notThrough(page)).toBeVisible();
      at.fault(() => undefined);
      await page
        .getByText(/^Open (it )?again$/)
        .filter({ visible: true })
        .click();
      await expect(page.locator('#app main > *').first()).toBeVisible();
      await expect(notThrough(page)).toHaveCount(0);
      await page.context().close();
    });
  await at.close();
});

test('on a first visit no other script is asked for before its screen is drawn, and all come then', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const seen = new MutationObserver(() => {
      if (!document.querySelector('main.first')) return;
      performance.mark('drawn');
      seen.disconnect();
    });
    seen.observe(document, { subtree: true, childList: true });
  });
  await page.goto('./');
  await readyOffline(page); // the last thing of a start
  const { drawn, asked } = await page.evaluate(() => {
    const scripts = performance.getEntriesByType('resource').filter(({ name }) => name.endsWith('.js'));
    return {
      drawn: performance.getEntriesByName('drawn')[0]?.startTime ?? 0,
      asked: scripts.map(({ name, startTime }) => ({ name: name.replace(/^.*\//, ''), at: startTime })),
    };
  });
  const early = asked.filter(({ at }) => at < drawn).map(({ name }) => name.split('-')[0]);
  const after = asked.filter(({ at }) => at >= drawn).map(({ name }) => name.split('-')[0]);
  // the journal is the worker that keeps the second copy
  expect(early.filter((name) => name !== 'journal').sort()).toEqual(['index', 'main']);
  expect(after).toEqual(expect.arrayContaining(['planning', 'home', 'later']));
});

test('where neither the screens nor what works a job out come, a page that cannot open says so and shares all out', async ({
  browser,
}) => {
  const at = await host();
  const page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage();
  await openSample(page, at.url);
  at.fault((file) => (/(home|planning|later)-.*\.js$/.test(file) ? 'missing' : undefined));
  await page.addInitScript(() => {
    indexedDB.open = () => {
      throw new DOMException('Internal error opening backing store', 'UnknownError');
    };
  });
  await emptyCache(page);
  await page.reload();
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Share everything out' }).click();
  const text = Buffer.concat(await (await (await waiting).createReadStream()).toArray()).toString();
  expect(JSON.parse(text).jobs[0]).toMatchObject({ job: 'mineralshell' });
  await page.context().close();
  await at.close();
});

test('a job whose file cannot be written for want of a part of the app is not shared, and the tap is answered', async ({
  browser,
}) => {
  const at = await host();
  const page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage();
  await openSample(page, at.url);
  at.fault((file) => (/planning-.*\.js$/.test(file) ? 'missing' : undefined));
  await emptyCache(page);
  await page.reload();
  await page.getByRole('button', { name: 'Share out' }).click();
  await expect(page.getByRole('alert')).toHaveText(/^Not shared/);
  await page.context().close();
  await at.close();
});

test('nothing of that is seen where all files come', async ({ page }) => {
  await page.goto('./');
  await readyOffline(page);
  await expect(first(page)).toBeVisible();
  await expect(notThrough(page)).toHaveCount(0);
});

test('that it works with no signal is said only where it is served from the phone', async ({
  page,
  browser,
  baseURL,
}) => {
  const open = await browser.newContext({ baseURL: baseURL ?? '', serviceWorkers: 'block' });
  const without = await open.newPage();
  await without.goto('./');
  await expect(without.locator('.kept')).toBeVisible();
  await expect(without.getByText(/no signal/)).toHaveCount(0);
  await open.close();
  await page.goto('./');
  await readyOffline(page);
  await expect(page.getByText('Works with no signal.')).toBeVisible();
});
