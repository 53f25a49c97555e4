import { expect, type Page } from '@playwright/test';

/** Ways round the app that several journeys share. Taps, as a hand would. */
export async function openSample(page: Page, url = './'): Promise<void> {
  await page.goto(url);
  await page.getByRole('button', { name: 'Open the sample job' }).click();
  await expect(page.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
}

/** Waits until the service worker has everything and serves the page. */
export async function readyOffline(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((done) =>
      navigator.serviceWorker.addEventListener('controllerchange', done, { once: true }),
    );
  });
}

/** Presses calculator keys by name, one tap each; returns how many taps that was. */
export async function keys(page: Page, names: readonly string[]): Promise<number> {
  for (const name of names) {
    await page.getByRole('button', { name, exact: true }).click();
    await page.waitForTimeout(70); // two taps on one key closer than this are bounce
  }
  return names.length;
}

/** Fills the blank that is open, by the docked keys. `5 5/8` is digits then the fraction. */
export async function fillBlank(page: Page, label: string | RegExp, figure: string): Promise<void> {
  await page.locator('main').getByRole('button', { name: label }).first().click();
  const dock = page.getByRole('dialog');
  const [whole = '', fraction] =
    figure.includes('/') && !figure.includes(' ') ? ['', figure] : figure.split(' ');
  for (const digit of whole) {
    await dock.getByRole('button', { name: digit === '.' ? '.' : digit, exact: true }).click();
    await page.waitForTimeout(70);
  }
  if (fraction) await dock.getByRole('button', { name: fraction, exact: true }).click();
  await dock.getByRole('button', { name: 'Done' }).click();
  await expect(dock).toBeHidden();
}

export async function choose(page: Page, blank: string | RegExp, choice: string): Promise<void> {
  await page.locator('main').getByRole('button', { name: blank }).first().click();
  await page.getByRole('dialog').getByRole('button', { name: choice }).click();
  await expect(page.getByRole('dialog')).toBeHidden();
}

/** The figure that stands at the saw, as it is spoken. */
export const standing = (page: Page) => page.locator('.giant .sr').first();

/** Cuts what the big bar says is next. */
export async function cutNext(page: Page): Promise<void> {
  const bar = page.locator('.knuckle .main');
  await expect(bar).toContainText('cut');
  const before = await page.locator('.bigtick[aria-checked="true"]').count();
  await bar.click();
  await expect(page.locator('.bigtick[aria-checked="true"]')).toHaveCount(before + 1);
  await page.waitForTimeout(380); // a second touch sooner is glove bounce
}

export async function nextStop(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Next stop' }).click();
  await page.waitForTimeout(380);
}
