import { expect, type Page, test } from '@playwright/test';
import { keys, openSample, shot } from './app';

/** A reading keyed in on the page of a sheet; how many taps that took. */
async function read(page: Page, opens: RegExp, figure: readonly string[]): Promise<number> {
  await page.getByRole('button', { name: opens }).click();
  const tapped = await keys(page, figure);
  await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
  await expect(page.getByRole('dialog')).toBeHidden();
  return tapped + 2;
}

const another = /^(First|Another) reading$/;
const inUse = (page: Page) => page.getByText(/^Parts of it are reckoned at/);

test('the sheet is thin: six taps from the job to what changes, and one takes it back', async ({ page }) => {
  await openSample(page);
  await page.getByRole('button', { name: /Sheet B/ }).click();
  const taps = 1 + (await read(page, another, ['1', '8', 'mm']));
  const changes = page.getByRole('status', { name: 'What the reading changed' });
  await expect(changes.locator('.changes li').first()).toBeInViewport();
  await expect(changes).toContainText('0.709 is in use; it was 0.719');
  expect(taps).toBeLessThanOrEqual(6);
  await shot(page, 'thin-sheet');
  await page.setViewportSize({ width: 360, height: 640 });
  await expect(changes.locator('.changes li').first()).toBeInViewport();
  await expect(page.getByRole('button', { name: another })).toBeInViewport(); // the next reading is in reach
  await shot(page, 'thin-sheet-small');

  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(changes).toBeHidden();
  await expect(inUse(page)).toContainText('0.719, as planned');
});

test('readings are in use as they come, the greatest of them, until something of the sheet is cut', async ({
  page,
}) => {
  await openSample(page);
  await page.getByRole('button', { name: /Sheet B/ }).click();
  for (const figure of ['708', '714', '711', '709']) await read(page, another, ['.', ...figure]);
  const changes = page.getByRole('status', { name: 'What the reading changed' });
  await page.setViewportSize({ width: 360, height: 640 });
  await page.evaluate(() => scrollTo(0, 0));
  await expect(changes.locator('.changes li').first()).toBeInViewport();
  await shot(page, 'four-readings-small');
  await expect(page.getByText('Thickest: parts and stacks go by this')).toBeVisible();
  await expect(inUse(page)).toContainText('0.714, as measured');

  // a rip of the bottom, which is of this sheet
  await page.goto('./#/cuts');
  await page.getByRole('button', { name: /^Rip fence at.*Bottom, Top/ }).click();
  await page.locator('.knuckle .main').click();
  await page.goto('./#/stock/sheetb');
  await read(page, another, ['.', '7', '1', '7']);
  await expect(page.getByText('Thickest: not in use yet')).toBeVisible();
  await expect(inUse(page)).toContainText('0.714, as measured');
  await expect(page.getByText(/a reading changes nothing until you use it/)).toBeVisible();
  await shot(page, 'thicker-reading-waits');
  await page.goto('./#/part/case~bottom');
  await expect(
    page.getByText('Goes by Sheet B, birch ply at 0.714. Its thickest reading is 0.717.').first(),
  ).toBeVisible();
  await shot(page, 'part-thinner-than-read');
  await page.goto('./#/cuts');
  await page
    .getByRole('button', { name: /Goes by Sheet B, birch ply at 0.714/ })
    .first()
    .click();
  await expect(page.locator('main')).toContainText('Its thickest reading is 0.717.');
  await shot(page, 'machine-thinner-than-read');

  await page.goto('./#/stock/sheetb');
  await page.getByRole('button', { name: 'Use it for what is not cut' }).click();
  await expect(inUse(page)).toContainText('0.717, as measured');
});

test('a stick’s width that stands in is the one it is laid out with', async ({ page }) => {
  await openSample(page);
  await page.goto('./#/stock/maple');
  const wide = page.getByRole('button', { name: /How wide it is/ });
  await expect(wide).toContainText('widest piece');
  await shot(page, 'stick-widest-piece');
});
