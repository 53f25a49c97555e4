import { expect, type Page, test } from '@playwright/test';
import { type Hand, handOn } from './hand';

/** What an empty phone may take to the parts of this bookcase. */
const allowed = 80;

const button = (page: Page, name: string | RegExp) =>
  page.locator('main').getByRole('button', { name }).first();
const key = (page: Page, name: string | RegExp) => page.getByRole('dialog').getByRole('button', { name });

/**
 * The bookcase of `tests/plan/bookcase.ts`, keyed in by a user who has never opened the app: 30 × 48 × 11 1/4, 3 off
 * the floor, ply read at four corners, two shelves in dadoes, two loose, a back in a rabbet, a face frame.
 */
test('a bookcase from an empty phone to its parts, in the taps allowed', async ({ page }) => {
  await page.goto('./');
  const hand = handOn(page);
  await hand.tap(button(page, 'Work out a case'));
  await sizes(page, hand);
  await stock(page, hand, {
    of: /What the sides are of/,
    named: 'Sheet A',
    reads: ['.708', '.714', '.711', '.709'],
  });
  await hand.tap(button(page, '+ A back'));
  await stock(page, hand, { of: /What the back is of/, named: 'Sheet B', reads: ['.22'] });
  await hand.tap(button(page, '+ A face frame'));
  await stock(page, hand, { of: /What the frame is of/, named: 'Sheet C', reads: ['3/4'] });
  for (const at of ['14', '28 3/4']) {
    await hand.tap(button(page, '+ A fixed shelf'));
    await filled(page, hand, { blank: /Case bottom to the shelf.*not given/, figure: at });
  }
  await hand.tap(button(page, '+ Loose shelves'));
  await filled(page, hand, { blank: /How many loose shelves/, figure: '2' });
  await hand.tap(page.getByRole('button', { name: 'Parts' }));
  await expect(page.locator('.pairsize')).toHaveCount(11);
  console.log(`\nA bookcase from an empty phone to its parts: allowed ${allowed}, taken ${hand.taps()}`);
  expect(hand.taps()).toBeLessThanOrEqual(allowed);
});

async function sizes(page: Page, hand: Hand): Promise<void> {
  await hand.tap(button(page, /Outside width/));
  await hand.figure('30');
  await hand.tap(key(page, /^Next/));
  await hand.figure('48');
  await hand.tap(key(page, /^Next/));
  await hand.figure('11 1/4');
  await hand.tap(key(page, 'Done'));
  await filled(page, hand, { blank: /Floor to the underside/, figure: '3' });
}

type Filled = { readonly blank: RegExp; readonly figure: string };

async function filled(page: Page, hand: Hand, { blank, figure }: Filled): Promise<void> {
  await hand.tap(button(page, blank));
  await hand.figure(figure);
  await hand.tap(key(page, 'Done'));
  await expect(page.getByRole('dialog')).toBeHidden();
}

type Wanted = { readonly of: RegExp; readonly named: string; readonly reads: readonly string[] };

/** A sheet measured, and said to be what is asked for. */
async function stock(page: Page, hand: Hand, { of, named, reads }: Wanted): Promise<void> {
  await hand.tap(button(page, 'Measure a sheet'));
  for (const read of reads) await filled(page, hand, { blank: /^(First|Another) reading/, figure: read });
  await hand.tap(page.getByRole('button', { name: 'Job', exact: true }));
  await hand.tap(page.locator('main .sect').filter({ hasText: /^Case/ }).first());
  await hand.tap(button(page, of));
  await hand.tap(key(page, named));
}
