import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import type { Entry } from '../src/job/entry';
import { readJobFile, writeJobFile } from '../src/job/file';
import { jobOf } from '../src/job/job';
import { fold } from '../src/job/log';
import { toStored } from '../src/length/stored';
import { planOf } from '../src/plan/plan';
import { blankOf, choose, pastBounce, readyOffline, standing, ticksHere, typeInto } from './app';
import { offlineTest } from './browser';
import { keptHere } from './kept';
import { newProfile } from './profile';
import { serve } from './serve';

const lastPull = 'cut/drawers~bench/pulls/c1d5';
const after = ['finish', 'cure', 'load', 'label'].map((step) => `cut/case~bench/${step}/1`);
const fromLastPull = new Set([lastPull, ...after, 'cut/~bench/lookback/1']);
const fromAnchor = /\/(anchor|checkagain|fronton|pulls|finish|cure|load|label|lookback)\//;

/** The sample with everything ticked but what is still to come. */
function tickedBut(isToCome: (op: string) => boolean): string {
  const read = readJobFile(readFileSync('demo-data/mineral-and-shell-cabinet.json', 'utf8'));
  if (!read.ok) throw new Error('the sample does not open');
  const { job, entries } = read.value;
  const { operations } = planOf(jobOf(job, fold(entries).values), {});
  const last = Math.max(...entries.map((entry) => entry.count));
  const ticks = operations
    .filter((op) => !isToCome(op.id))
    .map(
      (op, k): Entry => ({
        job,
        device: 'shop',
        count: last + 1 + k,
        at: '2026-11-20T08:30:00.000Z',
        act: `shop.${last + 1 + k}`,
        label: 'Done',
        kind: 'tick',
        op: op.id,
        figure: toStored(op.figure),
      }),
    );
  return writeJobFile({ job, entries: [...entries, ...ticks] });
}

/** The step in hand, ticked by the big bar. */
async function tickStep(page: Page, setup: string): Promise<void> {
  await page.goto(`${new URL('./', page.url()).href}#/setup/${setup}`);
  const box = page.locator('.mpiece[role="checkbox"]').first();
  await expect(box).toHaveAttribute('aria-checked', 'false');
  await pastBounce(page);
  await box.click();
  await expect(box).toHaveAttribute('aria-checked', 'true');
  await keptHere(page);
}

offlineTest(
  'from the last pull to loaded and labelled: nothing goes in before it has cured; offline, killed once',
  async () => {
    const server = await serve();
    const profile = newProfile();
    try {
      let context = await profile.open();
      let page = context.pages()[0] ?? (await context.newPage());
      await page.goto(`${server.url}#/import`);
      await page.setInputFiles('input[type=file]', {
        name: 'cabinet.json',
        mimeType: 'application/json',
        buffer: Buffer.from(tickedBut((op) => fromLastPull.has(op))),
      });
      await page.getByRole('button', { name: /^Take it in/ }).click();
      await expect(page.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
      await readyOffline(page);
      await server.stop(); // from here on there is no network at all

      // the last pull is all that is left of the drawers
      await page.getByRole('button', { name: /^Pick up/ }).click();
      const box = page.locator('[role="checkbox"][aria-checked="false"]');
      await expect(box).toHaveCount(1);
      await pastBounce(page);
      await box.click();
      await expect(box).toHaveCount(0);

      // loading waits for the finish, and says so
      await page.goto(`${server.url}#/setup/bench~wcase0load`);
      await expect(page.getByText(/^Blocked: .* comes first/)).toBeVisible();
      await tickStep(page, 'bench~wcase0finish');

      // the wait of the finish is told; the phone dies here
      await page.getByRole('button', { name: 'How long it cures' }).click();
      await expect(page.getByText(/^On since .* cured on .* or later/)).toBeVisible();
      await keptHere(page);
      await profile.kill();
      context = await profile.open();
      page = context.pages()[0] ?? (await context.newPage());
      await page.goto(server.url);
      await expect(page.getByText(/^On since .* cured on .* or later/)).toBeVisible();

      await tickStep(page, 'bench~wcase0cure');
      await tickStep(page, 'bench~wcase0load');
      await tickStep(page, 'bench~wcase0label');
      await page.getByRole('button', { name: 'Labels', exact: true }).click();
      await expect(page.getByRole('region', { name: 'Mineral drawers' })).toContainText('Quartz cluster × 4');

      // what was learned stands on the page of the next job, and a slide's length goes to the shop by a tap
      await page.goto(`${server.url}#/lookback`);
      await page.getByRole('button', { name: 'A note for next time' }).click();
      await page.getByRole('dialog').getByRole('textbox').fill('Buy the back first');
      await page.getByRole('button', { name: 'Done', exact: true }).click();
      await expect(page.getByText('Buy the back first')).toBeVisible();
      await keptHere(page);
      await page.goto(`${server.url}#/cuts`);
      await expect(page.locator('.bar .sub')).toHaveText(/^(\d+) of (\d+) cut/);
      await page.goto(`${server.url}#/jobs`);
      await page.getByRole('button', { name: 'New job' }).click();
      await page.getByRole('textbox').fill('The next cabinet');
      await page.getByRole('button', { name: 'Done', exact: true }).click();
      await expect(page.getByRole('heading', { name: 'The next cabinet' })).toBeVisible();
      const noted = page.getByRole('region', { name: /^Noted for next time/ });
      const note = noted.getByRole('listitem').filter({ hasText: 'Buy the back first' });
      await pastBounce(page);
      await note.getByRole('button', { name: 'Keep in mind here' }).click();
      await expect(page.getByRole('region', { name: 'What failed last time' })).toContainText(
        'Buy the back first',
      );
      await expect(note).toHaveCount(0);
    } finally {
      await profile.kill();
      profile.remove();
      await server.stop().catch(() => undefined);
    }
  },
);

/** The sample as it stands level, taken in as a file. */
async function levelled(page: Page): Promise<void> {
  await page.goto('./#/import');
  await page.setInputFiles('input[type=file]', {
    name: 'cabinet.json',
    mimeType: 'application/json',
    buffer: Buffer.from(tickedBut((op) => fromAnchor.test(op))),
  });
  await page.getByRole('button', { name: /^Take it in/ }).click();
  await expect(page.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
}

const edge = 'How high the lower edge of the cleat stands';

test('the cleat: out of the way of a pipe, its line carried to the wall, its screws driven, undone and driven', async ({
  page,
}) => {
  await levelled(page);
  await page.goto('./#/room/wall');
  const held = page.getByRole('region', { name: edge });
  // the level line is 35 7/8 over the high point
  await expect(held).toContainText('24 7/8 over the level line');

  // its screws go at 60 3/4 + 1 3/8 = 62 1/8: a pipe from 60 to 62 wants 58 or 64, and 64 is past the top
  await typeInto(page, 'Not here 1: how high its lower end is', '60');
  await typeInto(page, 'Not here 1: how high its upper end is', '62');
  await expect(held).toContainText('too near to: Water pipe. Move the cleat 4 1/8 down, and');
  await typeInto(page, edge, '56 5/8');
  await expect(held).not.toContainText('too near');
  await expect(held).toContainText('20 3/4 over the level line');

  // the line stands alone on a screen, and its tick is kept
  await page.goto('./#/room/wall/next');
  await expect(standing(page)).toHaveText(/56 and 5\/8/);
  await expect(page.locator('.ends')).toContainText('up from the floor at its high point: 20 3/4 over');
  await page.locator('.knuckle .main').click();
  await expect(page.locator('.knuckle .main')).toContainText('Next');
  await keptHere(page);

  // the same height at the step, with its screws, their drills and studs
  await page.goto('./#/setup/bench~wcase0anchor');
  await expect(page.locator('.what')).toContainText('Drive the cleat’s screws');
  const told = page.locator('.middle');
  await expect(told).toContainText(
    '2 screws, number 10, 3 long, through the cleat into the studs: at 11, 27',
  );
  await expect(told).toContainText('9/64 in what the screw bites');
  await expect(told).toContainText('The lower edge of the cleat: 56 5/8 up');
  await expect(page.locator('.caution')).toContainText('Pipes and wires found');
  await page.locator('.mpiece[role="checkbox"]').click();
  await expect(ticksHere(page)).toHaveCount(1);
  await pastBounce(page);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(ticksHere(page)).toHaveCount(0);
  await pastBounce(page);
  await page.locator('.mpiece[role="checkbox"]').click();
  await expect(ticksHere(page)).toHaveCount(1);
  await keptHere(page);
});

test('a cleat on the wall is screwed up in a step of its own; the anchoring keeps its tick', async ({
  page,
}) => {
  await levelled(page);
  await tickStep(page, 'bench~wcase0anchor');
  await page.goto('./#/screws/case');
  await choose(page, 'Where the cleat is', 'on the wall');
  await expect(blankOf(page, edge)).toContainText('60');
  await page.goto('./#/setup/bench~wcase0cleat');
  await expect(page.locator('.what')).toContainText('Drive the cleat’s screws');
  await expect(page.locator('.caution')).toContainText('Find pipes, wires, tubes before a hole.');
  await tickStep(page, 'bench~wcase0cleat');
  await page.goto('./#/setup/bench~wcase0anchor');
  await expect(page.locator('.what')).toContainText('Anchor');
  await expect(ticksHere(page)).toHaveCount(1);
  await expect(page.locator('.middle')).toContainText('Screws from the case into its cleat are not said');
});
