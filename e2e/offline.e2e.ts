import { rmSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import { sawLock } from '../src/ui/hold';
import { letGo, newerIs, openSample, pastBounce, readyOffline } from './app';
import { withWorker } from './browser';
import { host, release } from './host';

test.use(withWorker);

test('a newer version waits: never swapped at the saw, started when asked elsewhere', async ({ context }) => {
  const site = await host();
  try {
    const page = await context.newPage();
    await openSample(page, site.url);
    await readyOffline(page);
    release(site.folder);
    await page.goto(`${site.url}#/saw/shellcase`);
    await page.reload();
    await expect(page.locator('.giant .mx').first()).toBeVisible();
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    await newerIs(page, 'waiting', true);
    const saw = await context.newPage();
    await saw.goto(`${site.url}#/saw/shellcase`);
    await expect(saw.locator('.giant .mx').first()).toBeVisible();
    await page.evaluate(() => document.body.setAttribute('data-stood', 'at the saw'));
    await page.goto(`${site.url}#/`);
    await expect(page.getByText('Newer version saved. It starts next time you open it.')).toBeVisible();
    // the page knows of it, and the saw went on as it was
    await expect(page.locator('body')).toHaveAttribute('data-stood', 'at the saw');
    await expect(page).toHaveTitle('Knifeline');
    await expect(saw).toHaveTitle('Knifeline');
    await page.getByRole('button', { name: 'Start it now' }).click();
    await expect(page.getByText('It starts once the setting that stands at the saw')).toBeVisible();
    await saw.close();
    await letGo(page, sawLock);
    await pastBounce(page);
    await page.getByRole('button', { name: 'Start it now' }).click();
    await expect(page).toHaveTitle('Knifeline, newer');
    await expect(page.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
  } finally {
    await site.close();
  }
});

test('one missing file of a newer version leaves the old one whole', async ({ context }) => {
  const site = await host();
  try {
    const page = await context.newPage();
    await openSample(page, site.url);
    await readyOffline(page);
    release(site.folder);
    rmSync(path.join(site.folder, 'index.html'));
    await page.evaluate(async () =>
      (await navigator.serviceWorker.getRegistration())?.update().catch(() => undefined),
    );
    await newerIs(page, 'installing', false);
    expect(
      await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.waiting),
    ).toBeFalsy();
    await page.reload();
    await expect(page.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
    expect(await page.title()).toBe('Knifeline');
  } finally {
    await site.close();
  }
});

test('once there, the app asks no network for anything, and never another origin', async ({
  page,
  baseURL,
}) => {
  await openSample(page);
  await readyOffline(page);
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  page.on('response', (response) => {
    if (!response.fromServiceWorker()) asked.push(`from the network: ${response.url()}`);
  });
  asked.length = 0;
  await page.reload();
  for (const [hash, ready] of [
    ['#/figure', '.calc'],
    ['#/marks/shellcase', '.mark'],
    ['#/saw/shellcase', '.giant'],
    ['#/change/shellcase', '.fillin'],
    ['#/jobs', '.sect'],
    ['#/shop', '.nextset'],
  ] as const) {
    await page.goto(`./${hash}`);
    await page.locator(ready).first().waitFor();
    // what is asked for when nothing else is to be done is asked for by then
    await page.evaluate(() => new Promise((done) => requestIdleCallback(done)));
  }
  expect(baseURL).toMatch(/^http:/);
  const outside = asked.filter((url) => !url.startsWith(`${baseURL}`) || url.startsWith('from'));
  expect(outside.filter((url) => !url.endsWith('/sw.js'))).toEqual([]); // the browser looks for a newer worker by itself
});

test('the licences of the libraries open with no network, and back leads to the app', async ({
  page,
  context,
}) => {
  await openSample(page);
  await readyOffline(page);
  await page.goto('./#/phone');
  await context.setOffline(true);
  await page.getByRole('link', { name: 'Licences of the libraries used' }).click();
  await expect(page.locator('body')).toContainText(/preact \d/);
  await expect(page.locator('body')).toContainText('Permission is hereby granted');
  await page.goBack();
  await expect(page.getByRole('heading', { name: 'This phone' })).toBeVisible();
});

test('the last setup and Figure open from the home screen’s shortcuts', async ({ page }) => {
  await openSample(page);
  await page.goto('./#/saw/shellcase');
  await expect(page.locator('.giant .mx').first()).toBeVisible();
  await page.goto('./#/jobs');
  await page.goto('./#/last');
  await expect(page.locator('.giant .mx').first()).toBeVisible();
  const manifest = await (await page.request.get('./manifest.webmanifest')).json();
  expect(manifest.shortcuts.map((s: { readonly url: string }) => s.url)).toEqual(['./#/figure', './#/last']);
  expect(manifest.icons.some((i: { readonly purpose: string }) => i.purpose === 'maskable')).toBe(true);
});
