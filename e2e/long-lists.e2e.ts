import { expect, type Page, test } from '@playwright/test';
import { drawnFor, jobOfMany, modulesOf } from './bench/chain.mjs';
import { fileOf } from './bench/lists.mjs';

/** The large job of the bench, taken in. */
async function largeJob(page: Page): Promise<void> {
  const app = await modulesOf();
  await takenIn(page, jobOfMany(drawnFor.large, app));
}

async function takenIn(page: Page, values: ReadonlyMap<string, unknown>): Promise<void> {
  await page.goto('./#/import');
  const buffer = Buffer.from(fileOf(values));
  await page.setInputFiles('input[type=file]', { name: 'many.json', mimeType: 'application/json', buffer });
  await page.getByRole('button', { name: 'Take it in' }).click();
  await expect(page.getByRole('heading', { name: 'A great many' })).toBeVisible();
}

const many = 70;
const each = Array.from({ length: many }, (_, k) => k);

const sheetOf = (id: string) =>
  Object.entries({
    name: `Ply ${id}`,
    kind: 'sheet',
    planned: '3/4',
    used: '3/4',
    long: '96',
    wide: '96',
  }).map(([field, value]) => [`stock/${id}/${field}`, value] as const);
const boardOf = (id: string, stock: string) =>
  Object.entries({ name: `Slip ${id}`, length: '90', across: '1', copies: 1, stock }).map(
    ([field, value]) => [`boards/${id}/${field}`, value] as const,
  );

/** A sheet of the stock of its name, from which these slips are ripped one after the other. */
function ripped(id: string, slips: readonly string[]) {
  const strip = (slip: string) => ['cross', '90', ['piece', `${slip}/1`], ['left']];
  const tree = slips.reduceRight<unknown>((far, slip) => ['rip', '1', strip(slip), far], ['left']);
  return Object.entries({ stock: id, no: 1, long: '96', wide: '96', kerf: '1/8', tree }).map(
    ([field, value]) => [`sheets/${id}/${field}`, value] as const,
  );
}

/** Slips out of one sheet; and as many sheets more, a slip out of each. */
const manySlips = (): ReadonlyMap<string, unknown> =>
  new Map<string, unknown>([
    ['name', 'A great many'],
    ['over', '0'],
    ...sheetOf('s'),
    ...each.flatMap((k) => boardOf(`b${k}`, 's')),
    ...ripped(
      's',
      each.map((k) => `b${k}`),
    ),
    ...each.flatMap((k) => [
      ...sheetOf(`s${k}`),
      ...boardOf(`c${k}`, `s${k}`),
      ...ripped(`s${k}`, [`c${k}`]),
    ]),
  ]);

/** The browser never has nothing else to do: what is drawn is drawn because it came near. */
const neverIdle = (page: Page) =>
  page.addInitScript(() => Object.assign(window, { requestIdleCallback: undefined }));

const scrolledTo = (page: Page) => page.evaluate(() => Math.round(scrollY));

test('far rows of a large job are drawn as they come near; back from one is where it was', async ({
  page,
}) => {
  await neverIdle(page);
  await largeJob(page);
  await page.evaluate(() => {
    location.hash = '#/cuts';
  });
  const builds = page.locator('.build');
  await expect(builds.first()).toBeVisible();
  const last = page.getByText('Copy out as text');
  const few = await builds.count();
  expect(few).toBeGreaterThan(0);
  await last.scrollIntoViewIfNeeded();
  await expect.poll(() => builds.count()).toBeGreaterThan(few);
  // what lies between the top and the end has not come near
  const blank = page.locator('main > div:empty');
  expect(await blank.count()).toBeGreaterThan(20);
  const row = builds.last().locator('.cutrow').last();
  await row.scrollIntoViewIfNeeded();
  const stood = await scrolledTo(page);
  expect(stood).toBeGreaterThan(5000);
  await row.click();
  await expect(page).toHaveURL(/#\/setup\//);
  await page.goBack();
  await expect(row).toBeInViewport();
  expect(Math.abs((await scrolledTo(page)) - stood)).toBeLessThan(100);
});

test('printed, and once the browser is idle, a long list stands whole', async ({ page }) => {
  await neverIdle(page);
  await largeJob(page);
  await page.evaluate(() => {
    location.hash = '#/parts';
  });
  const rows = page.locator('main li');
  await expect(rows.first()).toBeVisible();
  // a row is a row before it is drawn: a reader counts them all
  const all = await rows.count();
  expect(all).toBeGreaterThan(60);
  expect(await page.locator('main li:empty').count()).toBeGreaterThan(20);
  // as a print begins, before it takes the page
  const left = await page.evaluate(() => {
    dispatchEvent(new Event('beforeprint'));
    return document.querySelectorAll('main li:empty').length;
  });
  expect(left).toBe(0);
  expect(await rows.count()).toBe(all);
  await page.evaluate(() => {
    location.hash = '#/cuts';
  });
  await expect(page.locator('.build').first()).toBeVisible();
  await expect(page.locator('.printed')).toBeEmpty();
  const printed = await page.evaluate(() => {
    dispatchEvent(new Event('beforeprint'));
    return document.querySelector('.printed')?.textContent ?? '';
  });
  expect(printed).toContain('A great many, 0 of ');
  expect(printed.match(/\[ \]/g)?.length).toBe(Number(/0 of (\d+) cut/.exec(printed)?.[1]));
});

test('with nothing else to do, the rest is drawn unasked', async ({ page }) => {
  await largeJob(page);
  await page.evaluate(() => {
    location.hash = '#/parts';
  });
  await expect(page.locator('main li').first()).toBeVisible();
  await expect(page.locator('main li:empty')).toHaveCount(0, { timeout: 60_000 });
});

for (const [hash, list, row] of [
  ['#/buy', 'main ul:not(.problems)', '.buyline'],
  ['#/layout/s', 'main section > ol', '.nextset'],
  ['#/pieces/s', 'main ul', '.piecerow'],
] as const)
  test(`${hash}: of seventy rows what is far is drawn as it comes near, and printed whole`, async ({
    page,
  }) => {
    await neverIdle(page);
    await takenIn(page, manySlips());
    await page.evaluate((to) => location.assign(to), hash);
    const rows = page.locator(`${list} > li`);
    await expect(rows.first()).toBeVisible();
    expect(await rows.count()).toBeGreaterThanOrEqual(many);
    const blank = page.locator(`${list} > li:empty`);
    const far = await blank.count();
    expect(far).toBeGreaterThan(10);
    await expect(rows.first().locator(row)).toBeVisible();
    await rows.last().scrollIntoViewIfNeeded();
    await expect(rows.last().locator(row)).toBeVisible();
    expect(await blank.count()).toBeLessThan(far);
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    await expect(blank).toHaveCount(0);
  });
