import { expect, test } from '@playwright/test';
import { handOn } from './hand';
import { button, filled, measured, sizes } from './hand-case';

/**
 * A case for shells, 30 × 48 × 11 1/4, ply of 3/4, a frame of oak 3/4 with stiles and rails 1 1/2, half-lapped: rails
 * as long as the case is wide, 30, their laps 3/8 deep at 0 and 30 − 1 1/2 = 28 1/2; those of the stiles, 48 long, at
 * 0 and 46 1/2.
 */
test('a half-lapped face frame from nothing to the cuts that make it', async ({ page }) => {
  await page.goto('./');
  const hand = handOn(page);
  await hand.tap(button(page, 'Work out a case'));
  await sizes(page, hand, ['30', '48', '11 1/4']);
  await measured(page, hand, { what: 'Measure a sheet', reads: ['3/4'] });
  await filled(page, hand, { blank: /^Floor to the underside/, figure: '0' });
  await hand.tap(button(page, '+ A face frame'));
  await measured(page, hand, { what: 'Measure a stick', reads: ['3/4'] });
  const said = page.locator('main').getByLabel('Face frame', { exact: true });
  await expect(said).toContainText('butted');
  await hand.tap(page.getByRole('button', { name: 'Parts' }));
  const row = (name: string) => page.locator('main .nextset').filter({ hasText: name }).first();
  await expect(row('Top rail')).toContainText('27');
  await page.goBack();
  await hand.tap(button(page, /^How stiles and rails of the frame meet/));
  await hand.tap(page.getByRole('dialog').getByRole('button', { name: /half-lapped/ }));
  await expect(said).toContainText('half-lapped');
  await hand.tap(page.getByRole('button', { name: 'Parts' }));
  await expect(row('Top rail')).toContainText('30');
  await hand.tap(row('Top rail'));
  const part = page.locator('main');
  await expect(part).toContainText('Lap 28 1/2 from the left end: 1 1/2 long, 3/8 deep, in its show face.');
  await hand.tap(part.getByRole('button', { name: /why/ }).first());
  await expect(part).toContainText('frame width');
  await page.goto('./#/cuts');
  const cuts = page.locator('main');
  await expect(
    cuts.getByRole('button', { name: /^Crosscut, stop at .*rail.* 30 inches/ }).first(),
  ).toBeVisible();
  const far = cuts.getByRole('button', { name: /rail.* 28 and 1\/2 inches/ });
  await expect(far).toBeVisible();
  await expect(cuts.getByRole('button', { name: /Stile.* 46 and 1\/2 inches/ })).toBeVisible();
  await hand.tap(far);
  await expect(part).toContainText('3/8 inches');
  await hand.tap(button(page, /^It is set/));
  await expect(part).toContainText('show face down');
});
