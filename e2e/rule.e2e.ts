import { expect, type Page, test } from '@playwright/test';
import { openSample, pastBounce, shot, typed } from './app';

/** A tap on a button that may stand where the one before did. */
async function tap(page: Page, name: string): Promise<void> {
  await pastBounce(page);
  await page.getByRole('button', { name, exact: true }).click();
}

test('the edge of the phone is a rule once a card was met, and says how far it may be off', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/phone');
  await page.getByRole('link', { name: 'Rule on the screen' }).click();
  await expect(page.locator('.screenrule')).toBeHidden(); // never uncalibrated
  // the lines stand at 500 and 320 points: a screen of 510 along a card has 321.6 across it
  await tap(page, 'Down 10');
  await tap(page, 'It touches: next the short edge');
  await tap(page, 'Down 10');
  await tap(page, 'It touches');
  // 330 points are 330 × 85.6 / 510 = 55.388 mm, of 53.98
  await expect(page.getByText('The short edge comes out 1.41 mm too long')).toBeVisible();
  await tap(page, 'It touches: next the short edge');
  await tap(page, 'Up 10');
  await tap(page, 'It touches');
  const rule = page.locator('.screenrule');
  await expect(rule).toBeVisible();
  await shot(page, 'rule');
  // an inch of the drawing is 25.4 × 510 / 85.6 = 151.33 points
  const inch = await rule.locator('g', { hasText: '1' }).first().locator('line').getAttribute('y1');
  expect(Math.abs(Number(inch) - 151.33)).toBeLessThan(0.01);
  await page.getByRole('button', { name: 'Show how thick' }).click();
  await typed(page, '3/4');
  const thick = Number(await rule.locator('.thing').getAttribute('height'));
  expect(Math.abs(thick - 113.5)).toBeLessThan(0.01);
  // 85.73 / 509 of a millimetre a point in place of 85.6 / 510: .0664 over on 113.5 points
  await expect(page.getByText('3/4 may be off by ± 0.07 mm here.')).toBeVisible();
  await page.reload();
  await expect(rule).toBeVisible();
});
