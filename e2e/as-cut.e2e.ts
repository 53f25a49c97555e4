import { expect, type Page, test } from '@playwright/test';
import { choose, keys, openSample, shot } from './app';

/** Rips the bottom and cuts it to length, and says it came out at another figure, all at the machine. */
async function cutOtherwise(page: Page, figure: readonly string[]): Promise<void> {
  await page.goto('./#/cuts');
  await page.getByRole('button', { name: /^Rip fence at.*Bottom, Top/ }).click();
  await page.locator('.knuckle .main').click();
  await page.goto('./#/part/case~bottom');
  await page
    .getByRole('button', { name: /length/i })
    .filter({ hasText: /stop/i })
    .first()
    .click();
  await page.locator('.knuckle .main').click();
  await page.getByRole('button', { name: 'Came out another size' }).click();
  await keys(page, figure);
  await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
}

/** The dock that asks what to do about it. */
const asked = (page: Page) => page.getByRole('dialog', { name: 'Bottom came out 1/16 short' });
const long = (page: Page) => page.locator('.sizerow').first();

test('a bottom that came out short: its mates match it in one tap, and one takes it back', async ({
  page,
}) => {
  await openSample(page);
  await cutOtherwise(page, ['3', '7', '7/16']);
  // 38 3/8 wide by the drawing: 1/16 less; the top, 37 5/8, with it
  await expect(asked(page)).toContainText('comes out 38 5/16 wide instead of 38 3/8');
  await expect(asked(page).locator('.changes')).toContainText('Top, length');
  await shot(page, 'as-cut');
  await asked(page).getByRole('button', { name: 'Make its mates match' }).click();
  await expect(asked(page)).toBeHidden();
  // the setting is another now, and stays in hand: its piece is cut there
  await expect(page.locator('.giant')).toContainText('37 and 7/16 inches');

  await page.goto('./#/part/case~top');
  await expect(long(page)).toContainText('37 and 9/16 inches');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(long(page)).toContainText('37 and 5/8 inches');

  // the size that was found stays, and so does the question, on its page
  await page.goto('./#/part/case~bottom');
  await page.getByRole('button', { name: /^Bottom came out 1\/16 short/ }).click();
  await expect(asked(page)).toBeVisible();
  await page.setViewportSize({ width: 360, height: 640 });
  await shot(page, 'as-cut-small');
  await asked(page).getByRole('button', { name: 'Recut it' }).click();
  await expect(page.getByRole('dialog', { name: 'Bottom again' })).toBeVisible();
});

test('what nothing is cut by can only be recut, or stay', async ({ page }) => {
  await openSample(page);
  await page.goto('./#/part/case~back');
  await page.getByRole('button', { name: 'Back, true width' }).click();
  await keys(page, ['3', '7']);
  await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
  const dock = page.getByRole('dialog', { name: /^Back came out .* narrow$/ });
  await expect(dock).toContainText('No other part is cut by this size.');
  await expect(dock.getByRole('button', { name: 'Make its mates match' })).toHaveCount(0);
});

test('trays as wide as the bottom, but of other stock: asked once where they are cut, and kept', async ({
  page,
}) => {
  await openSample(page);
  // 17 1/2 − 9/32 = 17 7/32 is between two marks: with the bottom 17 1/4, a tray alone 17 3/16
  await choose(page, /marks to/i, '1/16');
  await page.goto('./#/part/case~trays');
  const wide = page.locator('.sizerow').nth(1);
  await expect(wide).toContainText('17 and 1/4 inches');
  const question = page.getByText(/One mark for all, or each its own\?/);
  await expect(question).toContainText('as wide as');
  await page.goto('./#/cuts');
  await expect(question).toBeVisible();
  await page.setViewportSize({ width: 360, height: 640 });
  await question.scrollIntoViewIfNeeded();
  await shot(page, 'one-mark-small');
  await page.getByRole('button', { name: 'Each its own' }).click();
  await expect(question).toBeHidden();
  await page.goto('./#/part/case~trays');
  await expect(wide).toContainText('17 and 3/16 inches');
  await expect(page.getByText(/Each has its own mark/)).toBeVisible();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(question).toBeVisible();
});
