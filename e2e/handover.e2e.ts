import {
  type Browser,
  type BrowserContext,
  chromium,
  devices,
  expect,
  type Page,
  test,
} from '@playwright/test';
import { openSample, readyOffline } from './app';
import { chromiumArgs, chromiumPath } from './browser';
import { film, shots } from './film';

const phone = { ...devices['Pixel 7'], viewport: { width: 390, height: 844 } };
const code = '.codebox canvas';

async function offline(page: Page, context: BrowserContext): Promise<void> {
  await readyOffline(page);
  await context.setOffline(true);
}

/** Another phone, with no signal and nothing on it but what `first` does. */
async function otherPhone(
  browser: Browser,
  baseURL: string | undefined,
  first: (page: Page) => Promise<unknown> = (page) => page.goto('./'),
): Promise<Page> {
  const context = await browser.newContext({ ...phone, baseURL: baseURL ?? '' });
  const page = await context.newPage();
  await first(page);
  await offline(page, context);
  return page;
}

async function tick(page: Page, which: number): Promise<void> {
  await page.goto('./#/stops/shellcase');
  await page.locator('.tick').nth(which).click();
  await expect(page.locator('.tick').nth(which)).toBeChecked();
}

async function handOver(page: Page): Promise<void> {
  await page.goto('./#/');
  await page.getByRole('link', { name: 'Hand over' }).click();
  await expect(page.locator(code)).toBeVisible();
}

const photos = (pictures: readonly Buffer[]) =>
  pictures.map((buffer, k) => ({ name: `photo-${k}.png`, mimeType: 'image/png', buffer }));

test('changes go over as one still code, by a photo of it, with no signal; twice changes nothing', async ({
  page,
  context,
  browser,
  baseURL,
}) => {
  await openSample(page);
  await offline(page, context);
  await tick(page, 0);
  await handOver(page);
  await expect(page.getByRole('button', { name: '1 new' })).toHaveAttribute('aria-pressed', 'true');
  await expect(page.getByRole('img', { name: 'One code' })).toBeVisible();
  await page.screenshot({ path: 'e2e/shots/handover-one.png' });
  const photo = photos([await page.locator(code).screenshot()]);

  const other = await otherPhone(browser, baseURL, openSample);
  for (const entries of ['1 of these entries are new', '0 of these entries are new']) {
    await other.goto('./#/takein');
    await other.setInputFiles('input[type=file]', photo);
    await expect(other.getByText(entries)).toBeVisible();
    await other.getByRole('button', { name: 'Merge into the one here' }).click();
    await expect(other.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
  }
  await other.goto('./#/stops/shellcase');
  await expect(other.locator('.tick').first()).toBeChecked();

  await page.getByRole('button', { name: 'It has arrived' }).click();
  await handOver(page);
  await expect(page.getByText('The other phone has all of it so far.')).toBeVisible();
});

test('changes to a job that is not there make no job: it says what is missing', async ({
  page,
  browser,
  baseURL,
}) => {
  await openSample(page);
  await tick(page, 0);
  await handOver(page);
  const photo = photos([await page.locator(code).screenshot()]);
  const other = await otherPhone(browser, baseURL);
  await other.goto('./#/takein');
  await other.setInputFiles('input[type=file]', photo);
  await expect(other.getByRole('alert')).toContainText('the job itself is not on this phone');
  await other.goto('./#/jobs');
  await expect(other.getByText('No job yet.')).toBeVisible();
});

test('a whole job goes over as a set of codes, by photos taken at random moments', async ({
  page,
  context,
  browser,
  baseURL,
}) => {
  test.setTimeout(120_000);
  await openSample(page);
  await offline(page, context);
  await handOver(page);
  await expect(page.getByRole('img', { name: /codes in turn/ })).toBeVisible();
  await page.screenshot({ path: 'e2e/shots/handover-set.png' });
  const other = await otherPhone(browser, baseURL);
  await other.goto('./#/takein');
  for (let k = 0; k < 12 && !other.url().endsWith('#/import'); k += 1) {
    await other.setInputFiles('input[type=file]', photos(await shots(page, code, 3)));
    await other.waitForTimeout(1500);
    if (k === 0) await other.screenshot({ path: 'e2e/shots/takein-part.png' });
  }
  await other.getByRole('button', { name: 'Take it in' }).click();
  await expect(other.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
});

/** A phone whose camera sees a film. */
async function withCamera(film: string): Promise<Browser> {
  return chromium.launch({
    executablePath: chromiumPath,
    args: [
      ...chromiumArgs,
      '--use-fake-device-for-media-stream',
      '--use-fake-ui-for-media-stream',
      `--use-file-for-fake-video-capture=${film}`,
    ],
  });
}

test('a whole job goes over by the camera: a film of the codes, turned, grainy and not quite sharp', async ({
  page,
  browser,
  baseURL,
}) => {
  test.setTimeout(180_000);
  await openSample(page);
  await handOver(page);
  const path = await film(browser, await shots(page, code, 14), { turn: 7, grain: 50, blur: 0.8 });
  const seeing = await withCamera(path);
  try {
    const other = await otherPhone(seeing, baseURL);
    await other.goto('./#/import');
    await other.getByRole('link', { name: 'Read codes off another phone' }).click();
    await expect(other.getByRole('progressbar')).toBeVisible();
    await other.screenshot({ path: 'e2e/shots/takein-camera.png' });
    await other.getByRole('button', { name: 'Take it in' }).click({ timeout: 60_000 });
    await expect(other.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
  } finally {
    await seeing.close();
  }
});

test('a camera that is not allowed is said plainly, and a photo of something else changes nothing', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/takein');
  await expect(page.getByRole('status')).toContainText(/camera/);
  await page.setInputFiles('input[type=file]', photos([await page.screenshot()]));
  await expect(page.getByRole('alert')).toContainText('No code could be read');
});
