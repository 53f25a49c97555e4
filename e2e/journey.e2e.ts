import { expect, type Page, test } from '@playwright/test';
import { afterWake } from '../src/ui/touch';
import {
  blankOf,
  choose,
  cutNext,
  fillBlank,
  goBy,
  keyIn,
  makeReady,
  nextSetting,
  openSample,
  pastBounce,
  readyOffline,
  readySettings,
  standing,
  ticksHere,
} from './app';
import { offlineTest } from './browser';
import { keptHere } from './kept';
import { newProfile } from './profile';
import { serve } from './serve';

test.describe.configure({ mode: 'parallel' });

offlineTest('first visit to cut grooves, offline, killed, and everything still there', async () => {
  const server = await serve('/shop/knifeline/');
  const profile = newProfile();
  try {
    let context = await profile.open();
    let page = context.pages()[0] ?? (await context.newPage());
    await openSample(page, server.url);
    await readyOffline(page);
    await server.stop(); // from here on there is no network at all

    await page.goto(`${server.url}#/boards`);
    await page.getByRole('button', { name: 'Lay out a board' }).click();
    await fillBlank(page, /Length of the board/, '30');
    await choose(page, /How they are spaced/, 'evenly spaced');
    await fillBlank(page, /How many grooves/, '4');
    await fillBlank(page, /How wide the grooves are/, '3/4');
    await fillBlank(page, /Where the first one goes/, '3 1/8');
    await fillBlank(page, /How far apart/, '6 5/16');
    await page.getByRole('button', { name: 'Show the marks' }).click();
    for (const spoken of ['3 and 1/8', '9 and 7/16', '15 and 3/4', '22 and 1/16']) {
      await expect(page.locator('.mark').filter({ hasText: `${spoken} inches` })).toHaveCount(1);
    }
    await expect(page.locator('.mark').filter({ hasText: '26 and 7/8 inches' })).toContainText('3 and 1/8'); // from the other end
    await page.getByRole('checkbox', { name: 'Marked 1' }).click();
    await expect(page.getByRole('checkbox', { name: 'Marked 1' })).toBeChecked();

    await page.getByRole('button', { name: 'To the saw' }).click();
    await makeReady(page);
    const board = await boardOf(page);
    await expect(standing(page)).toHaveText('3 and 1/8 inches');
    await cutNext(page);
    await expect(standing(page)).toHaveText('3 and 1/8 inches'); // no figure changes by itself
    await nextSetting(page);
    await expect(standing(page)).toHaveText('9 and 7/16 inches');
    await makeReady(page);
    await cutNext(page);
    await nextSetting(page);
    await expect(standing(page)).toHaveText('15 and 3/4 inches');

    await keptHere(page);
    await profile.kill();
    context = await profile.open();
    page = context.pages()[0] ?? (await context.newPage());
    await page.goto(server.url); // cold start: server gone, nothing in memory
    await expect(standing(page)).toHaveText('15 and 3/4 inches'); // the same setting
    await expect(page.getByText('3 of 4')).toBeVisible();
    await page.goto(`${server.url}#/stops/${board}`);
    await expect(page.locator('.tick[aria-checked="true"]')).toHaveCount(2); // every acknowledged tick
    await page.getByRole('button', { name: 'Knife marks' }).click();
    await expect(page.getByRole('checkbox', { name: 'Marked 1' })).toBeChecked();

    await page.getByRole('button', { name: 'Undo' }).click(); // undo reaches back over the kill
    await page.getByRole('button', { name: 'Settings', exact: true }).click();
    await expect(page.locator('.tick[aria-checked="true"]')).toHaveCount(1);
    await context.close();
  } finally {
    await profile.kill();
    profile.remove();
    await server.stop().catch(() => undefined);
  }
});

/** Says where the next groove goes: it is then that number's place. */
async function addPlace(page: Page, no: number, place: string): Promise<void> {
  await keyIn(page, /Where does the next one go/, place);
  await expect(blankOf(page, `Where does no. ${no} go?`)).toBeVisible();
}

/** Milliseconds until a panel that was closed has brought its blank in sight again: see `src/ui/dock.tsx`. */
const settled = 150;

const boardOf = async (page: Page): Promise<string> =>
  (await page.evaluate(() => location.hash)).split('/')[2] ?? '';

test('a wrong figure says by how much, and the last good marks stay', async ({ page }) => {
  await openSample(page);
  await page.goto('#/change/shellcase');
  await choose(page, /How they are spaced/, 'evenly spaced');
  await fillBlank(page, /Where the first one goes/, '3');
  await fillBlank(page, /How far apart/, '9');
  await expect(page.getByText('No. 5 runs 5 15/64 past the end. 4 fit.')).toBeVisible();
  await expect(page.getByText('before this change')).toBeVisible();
  await page.getByRole('button', { name: 'Show the marks' }).click();
  await expect(page.getByText('The figures below are from before this change.')).toBeVisible();
  await expect(page.locator('.stale .mark')).toHaveCount(5);
  await page.reload();
  await expect(page.locator('.stale .mark')).toHaveCount(5); // also after a restart
  for (let k = 0; k < 3; k += 1) {
    const undo = page.getByRole('button', { name: 'Undo' });
    const before = (await undo.getAttribute('aria-label')) ?? '';
    await undo.click();
    await expect(undo).not.toHaveAttribute('aria-label', before); // taken back: it names the act before
    await pastBounce(page);
  }
  await expect(page.locator('.stale')).toHaveCount(0);
});

test('two pages on one job lose no tick and follow each other', async ({ page, context }) => {
  await openSample(page);
  await readySettings(page);
  const other = await context.newPage();
  await other.goto('./#/stops/shellcase');
  await page.bringToFront();
  const boxes = page.locator('.tick');
  const others = other.locator('.tick');
  await Promise.all([boxes.nth(0).click(), others.nth(1).click()]);
  await boxes.nth(2).click();
  await expect(page.locator('.tick[aria-checked="true"]')).toHaveCount(3);
  await expect(other.locator('.tick[aria-checked="true"]')).toHaveCount(3);
  await other
    .getByRole('button', { name: 'Leave' })
    .or(other.getByRole('button', { name: 'Undo' }))
    .first()
    .click();
  await expect(page.locator('.tick[aria-checked="true"]')).toHaveCount(2);
});

test('glove bounce ticks once, and a wiping thumb after waking ticks nothing', async ({ page }) => {
  await openSample(page);
  await page.goto('./#/saw/shellcase');
  await makeReady(page);
  // the page's own clock is held, so that a slow machine cannot turn a bounce into a second tap
  await page.clock.install();
  await page.clock.pauseAt(Date.now() + 60_000);
  await page.locator('.knuckle .main').dblclick({ delay: 10 });
  await expect(ticksHere(page)).toHaveCount(1);
  await page.evaluate(() => {
    Object.defineProperty(document, 'visibilityState', { value: 'visible', configurable: true });
    document.dispatchEvent(new Event('visibilitychange'));
  });
  await page.evaluate(() => {
    const { dataset } = document.documentElement;
    dataset.reached = '0'; // taps that came through to the page
    document.addEventListener('click', () => {
      dataset.reached = `${Number(dataset.reached) + 1}`;
    });
  });
  await page.clock.runFor(afterWake - 10);
  await page.locator('.mpiece').nth(1).click();
  await expect(page.locator('html')).toHaveAttribute('data-reached', '0');
  await expect(ticksHere(page)).toHaveCount(1);
  await page.clock.runFor(60);
  await page.locator('.mpiece').nth(1).click();
  await expect(page.locator('html')).toHaveAttribute('data-reached', '1');
  await expect(ticksHere(page)).toHaveCount(2);
});

test('started anew on a page, Back goes to the one it is reached from', async ({ page }) => {
  await openSample(page);
  for (const [here, before] of [
    ['shop', '#/'],
    ['shims', '#/'],
    ['stack/stop~c13d32~h3d16', '#/setup/stop~c13d32~h3d16'],
  ]) {
    await page.goto('about:blank');
    await page.goto(`./#/${here}`);
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    await expect.poll(() => new URL(page.url()).hash).toBe(before);
  }
});

test('a screen opens at its top, however far the one before was scrolled', async ({ page }) => {
  await openSample(page);
  await page.goto('./#/marks/shellcase');
  await page.locator('.mark').first().waitFor();
  await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  await page.getByRole('button', { name: 'Change' }).click();
  await expect(page.locator('.drawing')).toBeInViewport();
  await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  await page.getByRole('button', { name: 'Show the marks' }).click();
  await expect(page.getByRole('button', { name: 'Knife marks' })).toBeInViewport();
  await page.goto('./#/marks/case~left');
  await expect(page.getByRole('checkbox', { name: 'Marked W1' })).toBeInViewport(); // the first to mark, at the foot
});

test('a new board asks for one thing at a time, and a blank just filled stays in sight', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 640 });
  await page.goto('./');
  await page.getByRole('button', { name: 'Lay out a board' }).click();
  await expect(page.locator('.wrongline')).toHaveCount(0); // nothing is wrong yet
  await expect(page.locator('.nextblank')).toHaveText('Say the length of the board.');
  await fillBlank(page, /Length of the board/, '24 1/2');
  await expect(page.locator('.nextblank')).toHaveText('Say how wide the grooves are.');
  await fillBlank(page, /How wide the grooves are/, '3/4');
  await choose(page, /How they are spaced/, 'one by one');
  for (const [k, place] of ['4', '10 5/8', '16'].entries()) {
    await addPlace(page, k + 1, place);
    await goBy(page, settled);
    const blank = await page
      .locator('main')
      .getByRole('button', { name: /Where does the next one go/ })
      .boundingBox();
    const bar = await page.locator('.bar').boundingBox();
    expect(blank?.y ?? 0).toBeGreaterThanOrEqual((bar?.y ?? 0) + (bar?.height ?? 0));
  }
  await expect(page.locator('.nextblank')).toHaveCount(0);
});

test('erase empties a filled blank; the other places keep their numbers and ticks, and undo brings it back', async ({
  page,
}) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'Lay out a board' }).click();
  await fillBlank(page, /Length of the board/, '24 1/2');
  await fillBlank(page, /How wide the grooves are/, '3/4');
  await choose(page, /How they are spaced/, 'one by one');
  for (const [k, place] of ['4', '10 5/8', '16'].entries()) await addPlace(page, k + 1, place);
  await page.getByRole('button', { name: 'Show the marks' }).click();
  await page.getByRole('checkbox', { name: 'Marked 3' }).click();
  await expect(page.getByRole('checkbox', { name: 'Marked 3' })).toBeChecked();
  await page.getByRole('button', { name: 'Change' }).click();
  await page
    .locator('main')
    .getByRole('button', { name: /Where does no. 2 go/ })
    .click();
  await page.getByRole('dialog').getByRole('button', { name: 'erase' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
  await page.getByRole('button', { name: 'Show the marks' }).click();
  await expect(page.getByRole('checkbox')).toHaveCount(2);
  await expect(page.getByRole('checkbox', { name: 'Marked 3' })).toBeChecked();
  await expect(page.getByRole('checkbox', { name: 'Marked 1' })).not.toBeChecked();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.getByRole('checkbox')).toHaveCount(3);
  await expect(page.getByRole('checkbox', { name: 'Marked 2' })).not.toBeChecked();
});
