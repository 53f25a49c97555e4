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

/** The keys for the width stand open; the next blank follows. */
async function sizes(page: Page, hand: Hand): Promise<void> {
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

type Measured = { readonly what: string; readonly reads: readonly string[] };

/** What is asked for, measured now; the page comes back to the case. */
async function measured(page: Page, hand: Hand, { what, reads }: Measured): Promise<void> {
  await hand.tap(button(page, what));
  for (const read of reads) await filled(page, hand, { blank: /^(First|Another) reading/, figure: read });
  await hand.tap(page.getByRole('button', { name: 'Back to case' }));
}
