import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { openSample, painted, readyOffline } from './app';
import { withWorker } from './browser';

test.use(withWorker);

const sample = readFileSync('demo-data/mineral-and-shell-cabinet.json', 'utf8');
const shared = sample.replaceAll('mineralshell', 'sharedjob');

type Elsewhere = { readonly url: string; readonly close: () => Promise<void> };

/** A page on another site: 127.0.0.1 where the app is at localhost. */
async function elsewhere(head: string): Promise<Elsewhere> {
  const server = createServer((_, response) => {
    response.writeHead(200, { 'content-type': 'text/html' });
    response.end(`<!doctype html><html><head>${head}<title>Elsewhere</title></head><body></body></html>`);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const at = server.address();
  if (typeof at !== 'object' || !at) throw new Error('the server has no port');
  return {
    url: `http://127.0.0.1:${at.port}/`,
    close: () => {
      server.closeAllConnections();
      return new Promise((done) => server.close(() => done()));
    },
  };
}

/** Posts a form with files from the page in hand, as any page can. */
async function post(page: Page, to: string, names: readonly string[] = ['job']): Promise<void> {
  await page.evaluate(
    ([action, text, fields]) => {
      const form = document.createElement('form');
      Object.assign(form, { method: 'post', action, enctype: 'multipart/form-data' });
      for (const name of fields) {
        const files = new DataTransfer();
        files.items.add(new File([text], 'job.json', { type: 'application/json' }));
        const input = document.createElement('input');
        Object.assign(input, { type: 'file', name, files: files.files });
        form.append(input);
      }
      document.body.append(form);
      form.submit();
    },
    [to, shared, names] as const,
  );
  await page.waitForURL((url) => to.startsWith(url.origin));
}

/** Says to the page that it is a window of the installed app. A browser under test cannot install one. */
const asInstalled = (context: BrowserContext): Promise<unknown> =>
  context.addInitScript(() => {
    const real = window.matchMedia.bind(window);
    window.matchMedia = (query) => real(query.includes('display-mode: standalone') ? 'all' : query);
  });

/** Until the page has looked at what waits for it: it does so last, and then nothing waits any more. */
async function looked(page: Page): Promise<void> {
  await expect.poll(() => page.evaluate(() => caches.has('knifeline-incoming'))).toBe(false);
  expect(new URL(page.url()).search).toBe('');
}

/** The sample job open at the app, everything saved; where a form posts to. */
async function installed(page: Page, baseURL: string | undefined): Promise<string> {
  await openSample(page);
  await readyOffline(page);
  return `${baseURL}share`;
}

const nothingOffered = async (page: Page): Promise<void> => {
  await expect(page.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
  await looked(page);
  await painted(page);
  await expect(page.getByRole('button', { name: 'Take it in' })).toHaveCount(0);
  await page.goto('./#/import');
  await expect(page.getByText('Choose a file')).toBeVisible(); // nothing lies there already
  await page.goto('./#/jobs');
  await expect(page.locator('.sect')).toHaveCount(1);
};

const hidden = '<meta name="referrer" content="no-referrer">';

test.describe('a form on another site posts a job to the share target', () => {
  for (const [name, head] of [
    ['as forms are sent', ''],
    ['with its referrer and origin hidden', hidden],
  ] as const) {
    test(`${name}: a tab of the browser shows none of it`, async ({ page, baseURL }) => {
      const to = await installed(page, baseURL);
      const other = await elsewhere(head);
      await page.goto(other.url);
      await post(page, to);
      await nothingOffered(page);
      await other.close();
    });
  }

  for (const [name, head, fields] of [
    ['as forms are sent', '', undefined],
    ['in a field beside the one of the manifest', hidden, ['job', 'title']],
  ] as const) {
    test(`${name}: the installed app shows none of it either`, async ({ page, context, baseURL }) => {
      await asInstalled(context);
      const to = await installed(page, baseURL);
      const other = await elsewhere(head);
      await page.goto(other.url);
      await post(page, to, fields);
      await nothingOffered(page);
      await other.close();
    });
  }
});

/** The nearest a test comes to a share: a navigation with no referrer and an opaque origin, in a window of its own. */
async function share(page: Page, to: string): Promise<void> {
  const other = await elsewhere(hidden);
  await page.goto(other.url);
  await post(page, to);
  await other.close();
}

test('a job shared to the installed app is looked at, with where it came from, and not taken unseen', async ({
  page,
  context,
  baseURL,
}) => {
  await asInstalled(context);
  const to = await installed(page, baseURL);
  await share(page, to);
  await expect(page.getByRole('button', { name: 'Take it in' })).toBeVisible();
  await expect(page.getByText('Another app shared this.')).toBeVisible();
  await looked(page);
  await page.reload(); // once is enough
  await expect(page.getByText('Choose a file')).toBeVisible();
  await page.goto('./#/jobs');
  await expect(page.locator('.sect')).toHaveCount(1);
});

test('what was left behind for a page that never opened is not shown to the next', async ({
  page,
  context,
}) => {
  await asInstalled(context);
  await openSample(page);
  await readyOffline(page);
  await page.evaluate(async (text) => {
    const cache = await caches.open('knifeline-incoming');
    await cache.put('./left-behind', new Response(text));
    await cache.put('./incoming', new Response(text));
  }, shared);
  await page.reload();
  await nothingOffered(page);
});
