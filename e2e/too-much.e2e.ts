import { expect, type Page, test } from '@playwright/test';
import { writeBackup } from '../src/job/backup';
import type { Entry } from '../src/job/entry';
import { writeJobFile } from '../src/job/file';
import { openSample } from './app';

/** A job of like boards, as few entries say it. */
function big(boards: number, copies: number, count: number): readonly Entry[] {
  const values = Array.from({ length: boards }, (_, k) => [
    ...Object.entries({ name: `Board ${k + 1}`, made: 'alike', copies, length: '96', machine: 'stop' }).map(
      ([field, value]) => [`boards/b${k}/${field}`, value] as const,
    ),
    ...Object.entries({
      spacing: 'pitch',
      count,
      width: '1/128',
      pitch: '1/64',
      first: '1',
      point: 'near',
    }).map(([field, value]) => [`boards/b${k}/runs/r1/${field}`, value] as const),
  ]).flat();
  return [['name', 'Big'] as const, ...values].map(([at, value], k) => ({
    job: 'big',
    device: 'p1',
    count: k + 1,
    at: '2026-11-28T08:00:00.000Z',
    act: `p1.${k + 1}`,
    label: 'made',
    kind: 'edit',
    path: at,
    value,
  }));
}

const bringIn = async (page: Page, text: string): Promise<void> => {
  await page.goto('./#/import');
  await page.setInputFiles('input[type=file]', {
    name: 'job.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from(text),
  });
};

test('a file of more cuts than are worked out is refused by the board and by how much', async ({ page }) => {
  await bringIn(page, writeJobFile({ job: 'big', entries: big(1, 1000, 900) }));
  const line = page.getByRole('alert');
  await expect(line).toContainText('Board 1 of this job is too much to work out. 1000 boards of 900 grooves');
  await expect(line).toContainText('Nothing was changed.');
  await expect(page.getByRole('button', { name: 'Take it in' })).toBeHidden();
});

/** As an older version had it: a copy of everything is taken whole. */
async function older(page: Page, entries: readonly Entry[]): Promise<void> {
  const written = await writeBackup({ jobs: [{ job: 'big', entries }], shop: {}, likes: {} });
  if (!written.ok) throw new Error(written.error.code);
  await bringIn(page, written.value);
  await page.getByRole('button', { name: /Take/ }).click();
  await expect(page).toHaveURL(/#\/(jobs)?$/);
  await page.goto('./#/');
  await expect(page.getByRole('heading', { name: 'Big' })).toBeVisible();
}

test('a job that is too much opens, and says so in place of its operations', async ({ page }) => {
  await older(page, big(60, 10, 100));
  await expect(page.getByText('It comes to at least 60600 operations, 50600 over the 10000')).toBeVisible();
  await page.goto('./#/cuts');
  await expect(page.getByText('It comes to at least 60600 operations, 50600 over the 10000')).toBeVisible();
  await page.reload();
  await expect(page.getByText('The cuts of this job are not worked out.')).toBeVisible();
});

test('a board that is too much opens, says by how much, and is put right at its blank', async ({ page }) => {
  await older(page, big(1, 1000, 900));
  await page.goto('./#/change/b0');
  const line = page.getByText('1000 boards of 900 grooves: 898000 cuts over the 2000 of one layout.');
  await expect(line).toBeVisible();
  await page.goto('./#/cuts');
  await expect(
    page
      .getByText('not set out yet')
      .or(page.getByRole('heading', { name: 'Cuts' }))
      .first(),
  ).toBeVisible();
});

/** The start on its way as its file has it: held while it is watched. */
const watched = (page: Page) =>
  page.evaluate(async () => {
    const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('knifeline');
    const file = await folder.getFileHandle('starting');
    const held = await file.createWritable().then(
      (writable) => writable.abort().then(() => false),
      () => true,
    );
    return { held, says: await (await file.getFile()).text() };
  });

/** A page of a start whose working out never ends, closed once it was seen to be frozen; it hears nothing of that. */
async function freeze(page: Page, later: number): Promise<true> {
  const stuck = await page.context().newPage();
  await stuck.clock.setSystemTime(Date.now() + later);
  await stuck.addInitScript(() => {
    const { set } = Map.prototype;
    Map.prototype.set = function put(this: Map<unknown, unknown>, key, value) {
      if (typeof key !== 'string' || !key.startsWith('cut/')) return set.call(this, key, value);
      for (;;);
    };
  });
  void stuck.goto('./#/cuts').catch(() => undefined);
  try {
    await expect.poll(() => watched(page), { timeout: 60_000 }).toEqual({ held: true, says: 'frozen' });
    return true;
  } finally {
    await stuck.close();
  }
}

test('a screen that froze is not gone into again by itself: the list of jobs, and a tap to try', async ({
  page,
  context,
}) => {
  await openSample(page);
  await page.goto('./#/cuts');
  await expect(page.getByRole('heading', { name: 'Cuts' })).toBeVisible();
  await page.goto('./fonts-OFL.txt');
  const seen = await freeze(page, 60_000).catch(() => undefined);
  // on a slow machine it may freeze before anybody watches: then the second one in a row has to do
  if (!seen) await freeze(page, 120_000).catch(() => undefined);
  const next = await context.newPage();
  await next.clock.setSystemTime(Date.now() + 180_000);
  await next.goto('./#/cuts');
  await expect(next.getByText('did not come up last time')).toBeVisible();
  await expect(next.getByRole('heading', { name: 'All jobs' })).toBeVisible();
  await next.goto('./#/');
  await expect(next.getByText('did not come up last time')).toBeVisible(); // no job is open, and none is gone
  await next.getByRole('button', { name: 'Try it again' }).click();
  await expect(next.getByRole('heading', { name: 'Cuts' })).toBeVisible();
  await expect(next.getByText('did not come up')).toBeHidden();
});
