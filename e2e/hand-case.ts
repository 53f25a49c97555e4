import { expect, type Page } from '@playwright/test';
import type { Hand } from './hand';

// A case worked out by the hand of `hand.ts`, blank by blank.

export const button = (page: Page, name: string | RegExp) =>
  page.locator('main').getByRole('button', { name }).first();
export const key = (page: Page, name: string | RegExp) =>
  page.getByRole('dialog').getByRole('button', { name });

/** Width, height and depth: the keys for the first stand open, each next blank follows. */
export async function sizes(page: Page, hand: Hand, figures: readonly string[]): Promise<void> {
  for (const [k, figure] of figures.entries()) {
    await hand.figure(figure);
    await hand.tap(key(page, k < figures.length - 1 ? /^Next/ : 'Done'));
  }
}

type Filled = { readonly blank: RegExp; readonly figure: string };

export async function filled(page: Page, hand: Hand, { blank, figure }: Filled): Promise<void> {
  await hand.tap(button(page, blank));
  await hand.figure(figure);
  await hand.tap(key(page, 'Done'));
  await expect(page.getByRole('dialog')).toBeHidden();
}

type Measured = { readonly what: string; readonly reads: readonly string[] };

/** What is asked for, measured now; the page comes back to the case. */
export async function measured(page: Page, hand: Hand, { what, reads }: Measured): Promise<void> {
  await hand.tap(button(page, what));
  for (const read of reads) await filled(page, hand, { blank: /^(First|Another) reading/, figure: read });
  await hand.tap(page.getByRole('button', { name: 'Back to case' }));
}
