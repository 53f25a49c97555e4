import { expect, type Page } from '@playwright/test';

/** The job in hand marked to a tape. */
export async function marksTo(page: Page, tape: string): Promise<void> {
  await page.goto('./#/');
  await page.getByRole('button', { name: /^Marks to/ }).click();
  await page.getByRole('dialog').getByRole('button', { name: tape, exact: true }).click();
  await expect(page.getByRole('dialog')).toBeHidden();
}

/** Everything on the page, as a reader has it and as the eye has it. */
export function words(page: Page): Promise<string> {
  return page.evaluate(() => {
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const said: string[] = [];
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      // a slide made in inches has them beside its millimetres
      if (!node.parentElement?.closest('script, style, .own')) said.push(node.textContent ?? '');
    }
    return said.join(' | ').replaceAll('\u00a0', ' ');
  });
}

/** A case from nothing, its first blank let be. */
export async function beginCase(page: Page): Promise<void> {
  await page.goto('./');
  await page.getByRole('button', { name: 'Work out a case' }).click();
  // the keys for the width stand open
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
  await expect(page.getByRole('dialog')).toBeHidden();
}
