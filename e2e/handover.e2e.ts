import { rmSync } from 'node:fs';
import path from 'node:path';
import {
  type Browser,
  type BrowserContext,
  chromium,
  devices,
  expect,
  type Page,
  test,
} from '@playwright/test';
import { afterWake } from '../src/ui/touch';
import { goBy, openSample, readyOffline, readySettings, shot } from './app';
import { chromiumArgs, chromiumPath, wholeChromiumPath, withWorker } from './browser';
import { film, shots } from './film';

test.describe.configure({ mode: 'parallel' });

test.use(withWorker);

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
  await readySettings(page);
  await page.locator('.tick').nth(which).click();
  await expect(page.locator('.tick').nth(which)).toBeChecked();
}

async function handOver(page: Page): Promise<void> {
  await page.goto('./#/');
  await page.getByRole('link', { name: 'Hand over' }).click();
  await expect(page.locator(code)).toBeVisible();
}

/** The whole job is said to have arrived on another phone. */
async function arrive(page: Page): Promise<void> {
  await handOver(page);
  await page.getByRole('button', { name: 'It has arrived' }).click();
  await expect(page.locator('.home-head')).toBeVisible();
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
  await arrive(page);
  await tick(page, 0);
  await handOver(page);
  await expect(page.getByRole('button', { name: / new$/ })).toHaveAttribute('aria-pressed', 'true');
  await expect(page.getByRole('img', { name: 'One code' })).toBeVisible();
  await shot(page, 'handover-one');
  const photo = photos([await page.locator(code).screenshot()]);

  const other = await otherPhone(browser, baseURL, openSample);
  for (const entries of [/ [1-9]\d* of these entries (?:is|are) new/, / 0 of these entries are new/]) {
    await other.goto('./#/takein');
    await other.setInputFiles('input[type=file]', photo);
    await expect(other.getByText(entries)).toBeVisible();
    await other.getByRole('button', { name: 'Merge into the one here' }).click();
    await expect(other.locator('.home-head')).toBeVisible(); // taken in
  }
  await other.goto('./#/stops/shellcase');
  await expect(other.locator('.tick').first()).toBeChecked();

  await arrive(page);
  await handOver(page);
  await expect(page.getByText('Nothing new since it was last handed over.')).toBeVisible();
});

test('changes to a job that is not there make no job: it says what is missing', async ({
  page,
  browser,
  baseURL,
}) => {
  await openSample(page);
  await arrive(page);
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
  await openSample(page);
  await offline(page, context);
  await handOver(page);
  await expect(page.getByRole('img', { name: /codes in turn/ })).toBeVisible();
  await shot(page, 'handover-set');
  const other = await otherPhone(browser, baseURL);
  await other.goto('./#/takein');
  const noCode = await other.screenshot();
  for (let k = 0; k < 12 && !other.url().endsWith('#/import'); k += 1) {
    // the last shows no code, which is said once all are read
    const taken = [...(await shots(page, code, 3)), noCode];
    await other.setInputFiles('input[type=file]', photos(taken));
    await expect(
      other.getByRole('alert').or(other.getByRole('button', { name: 'Take it in' })),
    ).toBeVisible();
    if (k === 0) await shot(other, 'takein-part');
  }
  await other.getByRole('button', { name: 'Take it in' }).click();
  await expect(other.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
});

const launch = (args: readonly string[], executablePath = chromiumPath): Promise<Browser> =>
  chromium.launch({
    executablePath,
    args: [...chromiumArgs, '--use-fake-device-for-media-stream', ...args],
  });

/** A phone whose camera sees a film, and may be used. */
const withCamera = (film: string): Promise<Browser> =>
  launch(['--use-fake-ui-for-media-stream', `--use-file-for-fake-video-capture=${film}`]);

/** Keeps hold of every camera the page is given, to see whether it is let go. */
const holdStreams = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    const held: MediaStream[] = [];
    const { mediaDevices } = navigator;
    const ask = mediaDevices.getUserMedia.bind(mediaDevices);
    mediaDevices.getUserMedia = async (wanted) => {
      const stream = await ask(wanted);
      held.push(stream);
      return stream;
    };
    Object.assign(window, {
      camerasOn: () => held.flatMap((s) => s.getTracks()).filter((t) => t.readyState === 'live').length,
    });
  });

const camerasOn = (page: Page): Promise<number> =>
  page.evaluate(() => (window as unknown as { camerasOn(): number }).camerasOn());

/** What the browser does when another app comes in front, and back. */
const see = (page: Page, state: 'hidden' | 'visible'): Promise<void> =>
  page.evaluate((state) => {
    Object.defineProperty(document, 'visibilityState', { get: () => state, configurable: true });
    document.dispatchEvent(new Event('visibilitychange'));
  }, state);

test('a whole job goes over by the camera: a film of the codes, turned, grainy and not quite sharp', async ({
  page,
  browser,
  baseURL,
}) => {
  await openSample(page);
  await handOver(page);
  // twice the parts and eight more: they come to the whole whichever code is the first (but once in 65,000 times)
  const says = await page.getByRole('img', { name: /codes in turn/ }).getAttribute('aria-label');
  const seen = await shots(page, code, 2 * Number.parseInt(says ?? '', 10) + 8);
  const filmed = await film(browser, seen, { turn: 7, grain: 50, blur: 0.8 });
  const seeing = await withCamera(filmed);
  try {
    const other = await otherPhone(seeing, baseURL, async (page) => {
      await holdStreams(page);
      await page.goto('./');
    });
    await other.goto('./#/import');
    await other.getByRole('link', { name: 'Read codes off another phone' }).click();
    await expect(other.getByRole('progressbar')).toBeVisible();
    await shot(other, 'takein-camera');
    await expect(other.getByRole('button', { name: 'Take it in' })).toBeVisible({ timeout: 60_000 });
    expect(await camerasOn(other)).toBe(0); // let go as soon as its screen is left
    await other.getByRole('button', { name: 'Take it in' }).click();
    await expect(other.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
  } finally {
    await seeing.close();
    rmSync(path.dirname(filmed), { recursive: true, force: true });
  }
});

test('the camera is let go while another app is in front, and taken up again after', async ({ baseURL }) => {
  const seeing = await launch(['--use-fake-ui-for-media-stream']);
  try {
    const page = await (await seeing.newContext({ ...phone, baseURL: baseURL ?? '' })).newPage();
    await holdStreams(page);
    await page.goto('./#/takein');
    await expect(page.getByText('Hold this phone over the codes')).toBeVisible();
    expect(await camerasOn(page)).toBe(1);
    await see(page, 'hidden');
    expect(await camerasOn(page)).toBe(0);
    await see(page, 'visible');
    await expect.poll(() => camerasOn(page)).toBe(1);
    await goBy(page, afterWake); // until then the screen is deaf
    await page.getByRole('button', { name: 'Back' }).click();
    await expect(page.getByText('Choose a file')).toBeVisible();
    expect(await camerasOn(page)).toBe(0);
  } finally {
    await seeing.close();
  }
});

test('a camera that is not allowed is said plainly, and a photo does as well', async ({ page, baseURL }) => {
  const refusing = await launch(['--deny-permission-prompts'], wholeChromiumPath);
  try {
    const other = await (await refusing.newContext({ ...phone, baseURL: baseURL ?? '' })).newPage();
    await other.goto('./#/takein');
    await expect(other.getByRole('status')).toContainText('The camera is not allowed here.');
    await shot(other, 'takein-refused');
  } finally {
    await refusing.close();
  }
  await openSample(page); // no camera at all here
  await page.goto('./#/takein');
  await expect(page.getByRole('status')).toContainText('There is no camera here.');
  await page.setInputFiles('input[type=file]', photos([await page.screenshot()]));
  await expect(page.getByRole('alert')).toContainText('No code could be read');
});
