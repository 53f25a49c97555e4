import { expect, test } from '@playwright/test';
import { caseBegun } from './begun';
import { handOn } from './hand';
import { button, filled, measured } from './hand-case';

/**
 * A case for shells, 30 × 48 × 11 1/4, 4 off the floor, ply of 3/4, a frame of oak 3/4 with stiles and top rail 1 1/2
 * and stiles to the floor: they are 48 − 1/8 = 47 7/8, the rails 30 − 3 = 27, the bottom one from 1/4 over the bottom,
 * 4 + 3/4 + 1/4 = 5, down to 3: 2 wide.
 */
test('a face frame with stiles to the floor from its first tap to the cuts that make it', async ({
  page,
}) => {
  await caseBegun(page, { read: '3/4', case: { width: '30', height: '48', depth: '45/4', feet: '4' } });
  const hand = handOn(page);
  await hand.tap(button(page, '+ A face frame'));
  await measured(page, hand, { what: 'Measure a stick', reads: ['3/4'] });
  await hand.tap(button(page, /^How far down the frame runs/));
  await hand.tap(page.getByRole('dialog').getByRole('button', { name: /stiles to the floor/ }));
  const said = page.locator('main').getByLabel('Face frame', { exact: true });
  await expect(said).toContainText('clear of the floor');
  await filled(page, hand, { blank: /^How far the bottom rail stands over/, figure: '1/4' });
  await filled(page, hand, { blank: /^How high off the floor the bottom rail ends/, figure: '5 1/4' });
  await expect(said).toContainText('it ends 1/4 over its upper edge. Its lower edge under 5 off the floor.');
  await filled(page, hand, { blank: /^How high off the floor the bottom rail ends/, figure: '3' });
  await hand.tap(page.getByRole('button', { name: 'Parts' }));
  const row = (name: string) => page.locator('main .nextset').filter({ hasText: name }).first();
  await expect(row('Stile')).toContainText('47 and 7/8');
  await expect(row('Bottom rail')).toContainText('27');
  await hand.tap(row('Bottom rail'));
  await hand.tap(page.locator('main').getByRole('button', { name: /why/ }).nth(1));
  await expect(page.locator('main')).toContainText('toe opening under the rail');
  await page.goto('./#/cuts');
  const cuts = page.locator('main');
  await expect(cuts.getByRole('button', { name: /^Rip fence at Bottom rail .* 2 inches/ })).toBeVisible();
  const stop = cuts.getByRole('button', { name: /^Crosscut, stop at Stile .* 47 and 7\/8 inches/ });
  await hand.tap(stop);
  await expect(page.locator('main')).toContainText('47');
});
