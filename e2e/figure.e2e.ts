import { expect, test } from '@playwright/test';
import { keys, openSample } from './app';
import { keptLines, sizesOf } from './kept';

const answer = '.answer .sr';

/** Sets the tape marks Figure reads to. */
async function readTo(page: import('@playwright/test').Page, tape: string): Promise<void> {
  await page.getByRole('button', { name: /Read to/ }).click();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: `${tape} in`, exact: true })
    .click();
}

test('figures are entered in the taps the design allows', async ({ page }) => {
  await page.goto('./#/figure');
  await readTo(page, '1/64');
  expect(await keys(page, ['1', '3', '7/16'])).toBeLessThanOrEqual(3);
  await expect(page.locator(answer).first()).toHaveText('13 and 7/16 inches');
  await keys(page, ['erase', 'erase', 'erase']);
  expect(await keys(page, ['1', '3', '7/16', 'strong, more 1/64'])).toBeLessThanOrEqual(4);
  await expect(page.locator(answer).first()).toHaveText('13 and 29/64 inches');
  await keys(page, ['erase', 'erase', 'erase']);
  const sum = ['2', '7', '5/8', 'minus', '3/4', 'scant, less 1/64', 'divided by', '2', 'equals'];
  expect(await keys(page, sum)).toBeLessThanOrEqual(11);
  await expect(page.locator(answer).first()).toHaveText('13 and 29/64 inches, scant by 0.008'); // 13 57/128: a half goes away from zero
  await expect(page.locator('.expr')).toContainText('('); // the brackets are visible
});

test('the shop sum: less two thicknesses, halved, and the same from the other end', async ({ page }) => {
  await page.goto('./#/figure');
  await keys(page, ['3', '8', '3/8', 'minus', '3/4', 'scant, less 1/32', 'times', '2', 'equals']);
  // keys act on the running total, and say so: (38 3/8 − 23/32) × 2
  await expect(page.locator('.expr')).toContainText('(');
  await page.getByRole('button', { name: 'undo', exact: true }).click();
  await page.getByRole('button', { name: 'Sums' }).click();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /From the other end/ })
    .click();
  await page.getByRole('button', { name: /Length of the part/ }).click();
  for (const k of ['6', '4', '1/4'])
    await page.getByRole('dialog').getByRole('button', { name: k, exact: true }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
  await page.getByRole('button', { name: /The mark/ }).click();
  for (const k of ['2', '1', '7/16'])
    await page.getByRole('dialog').getByRole('button', { name: k, exact: true }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
  await expect(page.locator('.result .sr').first()).toHaveText('42 and 13/16 inches');
});

test('a named line is used, changed, and what is built on it follows, over a restart', async ({ page }) => {
  await page.goto('./#/figure');
  await keys(page, ['2', '7', '5/8', 'equals']);
  await page.getByRole('button', { name: 'Name it' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Inside width' }).click();
  await keys(page, ['divided by', '2', 'equals']);
  await expect(page.locator(answer).first()).toHaveText('13 and 13/16 inches');
  await page.getByRole('button', { name: 'Strip' }).click();
  await page
    .getByRole('button', { name: /Inside width/ })
    .first()
    .click();
  await page.getByRole('button', { name: /Change it: one line follows/ }).click();
  await expect(page.getByText('Changing Inside width: = writes over it.')).toBeVisible();
  await keys(page, ['plus', '1', 'equals']);
  await keptLines(page, ['27 5/8 + 1', '#1 ÷ 2']);
  await page.reload();
  await page.getByRole('button', { name: 'Strip' }).click();
  await expect(page.locator('.rl').nth(1)).toContainText('14 and 5/16 inches');
  await page.getByRole('button', { name: 'Add the lot' }).click();
  await expect(page.locator('.rl').nth(2)).toContainText('42 and 15/16 inches');
});

test('a typed line is read back before it counts', async ({ page }) => {
  await page.goto('./#/figure');
  await page.getByRole('button', { name: 'Type' }).click();
  await page.getByLabel('Type it as you would write it').fill('27 5/8 - 47/64 / 2');
  await expect(page.locator('.expr')).toContainText('('); // ordinary precedence, and visible
  await expect(page.locator(answer).first()).toContainText('27 and 1/4 inches');
  await page.getByLabel('Type it as you would write it').fill('5 1/2 3/4');
  await expect(page.getByText(/two fractions in a row/)).toBeVisible();
  await page.getByLabel('Type it as you would write it').fill('0.7085');
  await page.keyboard.press('Enter');
  await expect(page.locator('.strip')).toBeVisible();
});

test('keys work from a desk keyboard', async ({ page }) => {
  await page.goto('./#/figure');
  await page.locator('.calc').focus();
  await page.keyboard.type('12-3/2');
  await page.keyboard.press('Enter');
  await expect(page.locator(answer).first()).toHaveText('4 and 1/2 inches');
});

test('the t key takes a measured sheet', async ({ page }) => {
  await openSample(page);
  await page.goto('./#/figure');
  await keys(page, ['3', '8', '3/8', 'minus', 't, a measured sheet']);
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /Sheet A/ })
    .click();
  await keys(page, ['equals']);
  await expect(page.locator(answer).first()).toContainText('37 and 21/32 inches');
});

test('a long sum keeps the second copy small while two pages are open, and stands in both', async ({
  page,
  context,
}) => {
  await page.goto('./#/figure');
  const other = await context.newPage();
  await other.goto('./#/figure');
  await page.bringToFront();
  await page.locator('.calc').focus();
  // a late key of so long a sum is some kilobytes: in all half a megabyte, nearly all of it written over
  await page.keyboard.type('12+7-3*2+'.repeat(15), { delay: 100 });
  const figure = (await page.locator('.expr').textContent()) ?? '';
  expect(figure.length).toBeGreaterThan(20);
  // kept key by key, behind the hand that types: on a slow machine some are still on their way
  const kept = async () => {
    await other.reload();
    return other.locator('.expr').textContent();
  };
  await expect.poll(kept, { timeout: 60_000 }).toBe(figure);
  expect(Math.max(...(await sizesOf(page)))).toBeLessThan(440_000);
  await page.close();
  await expect.poll(kept).toBe(figure);
});
