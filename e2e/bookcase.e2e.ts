import { expect, test } from '@playwright/test';
import { handOn } from './hand';
import { button, filled, key, measured, sizes } from './hand-case';

/** What an empty phone may take to the parts of this bookcase. */
const allowed = 80;

/**
 * The bookcase of `tests/plan/bookcase.ts`, keyed in by a user who has never opened the app: 30 × 48 × 11 1/4, 3 off
 * the floor, ply read at four corners, two shelves in dadoes, two loose, a back in a rabbet, a face frame.
 */
test('a bookcase from an empty phone to its parts, in the taps allowed', async ({ page }) => {
  await page.goto('./');
  const hand = handOn(page);
  await hand.tap(button(page, 'Work out a case'));
  await sizes(page, hand, ['30', '48', '11 1/4']);
  await filled(page, hand, { blank: /Floor to the underside/, figure: '3' });
  await measured(page, hand, { what: 'Measure a sheet', reads: ['.708', '.714', '.711', '.709'] });
  await hand.tap(button(page, '+ A back'));
  await measured(page, hand, { what: 'Measure a sheet', reads: ['.22'] });
  await hand.tap(button(page, '+ A face frame'));
  await measured(page, hand, { what: 'Measure a stick', reads: ['3/4'] });
  for (const [k, at] of ['14', '28 3/4'].entries()) {
    await hand.tap(button(page, '+ A fixed shelf'));
    await filled(page, hand, {
      blank: new RegExp(`Case bottom to the shelf.*${k === 0 ? '' : '2'}`),
      figure: at,
    });
  }
  await hand.tap(button(page, '+ Loose shelves')); // how many is asked at once
  await hand.figure('2');
  await hand.tap(key(page, 'Done'));
  await hand.tap(page.getByRole('button', { name: 'Parts' }));
  await expect(page.locator('.pairsize')).toHaveCount(11);
  // by the thickest reading, as worked out by hand in tests/plan/bookcase-cut-list.ts
  for (const [name, long] of [
    [/^Bottom/, '29 and 1/16'],
    [/^Top/, '29 and 9/32'],
    [/^Back/, '44 and 15/16'],
  ] as const)
    await expect(page.locator('main .nextset').filter({ hasText: name }).first()).toContainText(long);
  console.log(`\nA bookcase from an empty phone to its parts: allowed ${allowed}, taken ${hand.taps()}`);
  expect(hand.taps()).toBeLessThanOrEqual(allowed);
});
