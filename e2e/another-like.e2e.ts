import { expect, test } from '@playwright/test';
import { openSample, pastBounce, shot } from './app';

test('a job is begun like the one in hand, and takes the readings of a sheet measured there', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/jobs');
  await page.getByRole('button', { name: 'Begin another like the one in hand' }).click();
  await page.getByRole('button', { name: /^What was decided/ }).click();
  await page.getByRole('textbox', { name: 'Name of the new job' }).fill('East wall');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'East wall' })).toBeVisible();
  // nothing is read: the sheet is planned as thick as it was reckoned with in the other job
  await page.getByRole('button', { name: /Sheet A, birch ply.*planned, not measured yet/ }).click();
  await expect(page.getByRole('button', { name: /^Reading 1/ })).toHaveCount(0);
  await pastBounce(page);
  await page.getByRole('button', { name: 'Take the readings of another job' }).click();
  await page.getByRole('button', { name: /Mineral and shell cabinet/ }).click();
  await page.getByRole('button', { name: /^Sheet A, birch ply/ }).click();
  await expect(page.getByRole('button', { name: /^Reading 4/ })).toBeVisible();
  await shot(page, 'another-like');
  // and again after a start
  await page.reload();
  await expect(page.getByRole('button', { name: /^Reading 4/ })).toBeVisible();
});
