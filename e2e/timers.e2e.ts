import { expect, test } from '@playwright/test';
import { fillBlank, openSample, shot } from './app';

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
  await page.getByRole('button', { name: 'Start', exact: true }).click();
  await expect(page.getByText('45 min left.')).toBeVisible();
  await shot(page, 'timers');
  await page.goto('./#/cuts');
  await page.clock.runFor(30 * 60_000);
  await expect(page.getByText('15 min left.')).toBeVisible();
  await page.reload();
  await expect(page.getByText('15 min left.')).toBeVisible();
  await page.goto('./#/saw/shellcase');
  await page.clock.runFor(15 * 60_000);
  await expect(page.getByRole('alert')).toContainText('Timer: time is over');
  await page.clock.runFor(1000);
  await page.getByRole('button', { name: 'Seen' }).click();
  await expect(page.getByText('time is over')).toBeHidden();
  await page.goto('./#/timers');
  await page.clock.runFor(2 * 60_000);
  await expect(page.getByText('Over since')).toBeVisible();
});
