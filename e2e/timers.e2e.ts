import { expect, type Page, test } from '@playwright/test';
import { fillBlank, openSample, shot } from './app';
import { keptHere } from './kept';

const minute = 60_000;

/**
 * So many minutes are left, by the page's own clock: it goes on while a busy machine works.
 *
 * @param begun between what times the timer began
 */
const left = (page: Page, begun: readonly [number, number]): Promise<void> =>
  expect
    .poll(async () => {
      const said = Number.parseInt((await page.getByText('min left.').textContent()) ?? '', 10);
      const now = await page.evaluate(() => Date.now());
      const [least = 0, most = 0] = begun.map((at) => Math.ceil((at + 45 * minute - now) / minute));
      return said >= least && said <= most;
    })
    .toBe(true);

test('glue waits as long as its bottle says: shown in Cuts, over a restart, told on every page when it is over', async ({
  page,
}) => {
  await page.clock.install({ time: new Date('2026-11-02T08:30:00Z') });
  await openSample(page);
  await page.goto('./#/cuts');
  await page.getByRole('link', { name: 'Timers' }).click();
  await page.getByRole('button', { name: 'Timer', exact: true }).click();
  await expect(page.getByText('Say how long it waits.')).toBeVisible();
  await fillBlank(page, 'Timer: Minutes it waits', '45');
  await page.clock.runFor(1000);
  const before = await page.evaluate(() => Date.now());
  await page.getByRole('button', { name: 'Start', exact: true }).click();
  await expect(page.getByText('min left.')).toBeVisible();
  const begun = [before, await page.evaluate(() => Date.now())] as const;
  await left(page, begun);
  await shot(page, 'timers');
  await page.goto('./#/cuts');
  // what is being kept does not wait half an hour for the database
  await keptHere(page);
  await page.clock.runFor(30 * minute);
  await left(page, begun);
  await page.reload();
  await left(page, begun);
  await page.goto('./#/saw/shellcase/shelves~1~only');
  await page.locator('.giant .mx').first().waitFor();
  await keptHere(page);
  await page.clock.runFor(15 * minute);
  await expect(page.getByRole('alert').filter({ hasText: 'Timer: time is over' })).toBeVisible();
  await page.clock.runFor(1000);
  await page.getByRole('button', { name: 'Seen' }).click();
  await expect(page.getByText('time is over')).toBeHidden();
  await page.goto('./#/timers');
  await page.clock.runFor(2 * minute);
  await expect(page.getByText('Over since')).toBeVisible();
});
