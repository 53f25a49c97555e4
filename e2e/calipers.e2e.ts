import { expect, type Locator, type Page, test } from '@playwright/test';
import { keys, makeReady, openSample, painted, ticksHere } from './app';

/**
 * Types as calipers do: a key every 10 ms, Enter at the end. The strokes carry their own times, so that a busy machine
 * does not stretch them.
 */
async function calipers(page: Page, reading: string): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const start = Date.now() / 1000;
  const strokes = [...reading, 'Enter'].flatMap((key, k) => {
    const at = { key, timestamp: start + k * 0.01 };
    const down = key === 'Enter' ? { code: 'Enter', windowsVirtualKeyCode: 13, text: '\r' } : { text: key };
    return [
      { ...at, ...down, type: 'keyDown' as const },
      { ...at, type: 'keyUp' as const },
    ];
  });
  await Promise.all(strokes.map((stroke) => session.send('Input.dispatchKeyEvent', stroke)));
  await session.detach();
}

const line = (page: Page) => page.locator('.caliper-line');
const kerf = (page: Page) => page.getByRole('button', { name: /^Circular saw.*kerf|kerf/i }).first();

/** Calipers are heard once the second file of the app is there. */
async function heard(page: Page): Promise<void> {
  await expect(line(page)).toBeAttached();
  await painted(page);
}

/** Opens a blank: its panel is the field in hand from when it has the focus. */
async function open(page: Page, blank: Locator): Promise<void> {
  await heard(page);
  await blank.click();
  await expect(page.getByRole('dialog')).toBeFocused();
}

test('a reading fills the blank that is open, with no tap, and is spoken', async ({ page }) => {
  await page.goto('./#/shop');
  await open(page, kerf(page));
  await calipers(page, '0.125');
  await expect(page.getByRole('dialog')).toBeHidden();
  await expect(kerf(page)).toContainText('1/8');
  await expect(line(page)).toHaveText('Calipers: 0.125. Taken.');
  await expect(line(page)).toHaveAttribute('role', 'status');
  await page.mouse.click(5, 300);
  await expect(line(page)).toBeHidden();
});

test('millimetres are said once on the phone page, and a comma is a point', async ({ page }) => {
  await page.goto('./#/phone');
  await page.getByRole('group', { name: 'Calipers type' }).getByRole('button', { name: 'mm' }).click();
  await page.goto('./#/shop');
  await open(page, kerf(page));
  await calipers(page, '2,54');
  await expect(page.getByRole('dialog')).toBeHidden();
  await expect(kerf(page)).toContainText('0.1');
  await expect(line(page)).toHaveText('Calipers: 2,54 mm. Taken.');
});

test('a reading of nothing, or below, stays to be looked at', async ({ page }) => {
  await page.goto('./#/shop');
  await open(page, kerf(page));
  await calipers(page, '-0.02');
  await expect(page.getByRole('dialog')).toBeVisible();
  await expect(line(page)).toContainText('-0.02 is no size');
  await page.keyboard.press('Escape');
  await expect(kerf(page)).toContainText('not measured');
});

test('a figure typed below nothing is not taken and says so, but where it can be meant', async ({ page }) => {
  await page.goto('./#/shop');
  await open(page, kerf(page));
  const dock = page.getByRole('dialog');
  await dock.getByLabel('or typed').fill('-1/64');
  await expect(dock).toContainText('1/64 inches less than nothing. A kerf is 1/32 to 1/4 inches.');
  await expect(dock.getByRole('button', { name: /^Use/ })).toBeHidden();
  await page.keyboard.press('Enter');
  await expect(dock).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(kerf(page)).toContainText('not measured');
  const step = page.getByRole('button', { name: /one step/i }).first();
  await open(page, step);
  await dock.getByLabel('or typed').fill('-1/64');
  await page.keyboard.press('Enter');
  await expect(dock).toBeHidden();
  await expect(step).toContainText('1/64');
});

test('typing by hand works as it did: slowly typed figures go to the field, Enter takes them', async ({
  page,
}) => {
  await page.goto('./#/shop');
  await open(page, kerf(page));
  await page.keyboard.type('3/32', { delay: 130 });
  await expect(page.getByRole('dialog').getByLabel('or typed')).toHaveValue('3/32');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog')).toBeHidden();
  await expect(kerf(page)).toContainText('3/32');
  await expect(line(page)).toBeHidden();
});

test('a figure typed the moment the keys stand open is taken, however late the page’s own timers come', async ({
  page,
}) => {
  await page.goto('./#/shop');
  await expect(kerf(page)).toBeVisible();
  await page.clock.install();
  await page.clock.pauseAt(Date.now() + 60_000); // what the page does after painting waits
  await kerf(page).click();
  await page.getByRole('dialog').getByLabel('or typed').fill('3/32');
  await page.clock.runFor(1000);
  await page.keyboard.press('Enter');
  await expect(kerf(page)).toContainText('3/32');
});

test('in Figure a reading is one figure of the sum, not yet reckoned', async ({ page }) => {
  await page.goto('./#/figure');
  await expect(page.locator('.pad')).toBeVisible();
  await heard(page);
  await keys(page, ['3', '8', 'minus', '1', '2']);
  await calipers(page, '0.75');
  await expect(page.locator('.answer .sr').first()).toHaveText('37 and 1/4 inches');
  await expect(page.locator('.expr')).toContainText('0.75');
  await page.getByRole('button', { name: 'undo', exact: true }).click();
  await expect(page.locator('.answer .sr').first()).toHaveText('26 inches');
});

test('in a typed sum a reading stands with its unit, and Enter reckons nothing', async ({ page }) => {
  await page.goto('./#/figure');
  await page.getByRole('button', { name: 'Type' }).click();
  const field = page.getByLabel('Type it as you would write it');
  await field.fill('27 5/8 - ');
  await heard(page);
  await calipers(page, '0.718');
  await expect(field).toHaveValue('27 5/8 - 0.718"');
  await field.fill('');
  await page.keyboard.type('5/8', { delay: 130 });
  await page.keyboard.press('Enter');
  await expect(page.locator('.strip')).toBeVisible();
});

test('with no blank open a reading does nothing but say so, even on a button in focus', async ({ page }) => {
  await openSample(page);
  await heard(page);
  await page.getByRole('link', { name: 'Shop figures', exact: true }).focus();
  await calipers(page, '18.25');
  await expect(line(page)).toHaveText('Calipers: 18.25. Open a blank first.');
  await expect(page.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();

  await page.goto('./#/saw/shellcase');
  await makeReady(page);
  await page.locator('.knuckle .main').focus();
  const before = await ticksHere(page).count();
  await calipers(page, '18.25');
  await expect(line(page)).toHaveText('Calipers: no blank is open.'); // one figure only at the saw
  await expect(ticksHere(page)).toHaveCount(before);
});

test('a scanner’s letters, two commas, 12 digits and a lone Enter are no reading', async ({ page }) => {
  await openSample(page);
  await heard(page);
  for (const text of ['AB1.25', '1,2,5', '012345678905', '']) {
    await calipers(page, text);
    await expect(line(page)).toBeHidden();
  }
});

test('a name typed by a scanner or a fast hand stays the name’s own', async ({ page }) => {
  await page.goto('./#/jobs');
  await page.getByRole('button', { name: 'New job' }).click();
  await page.getByRole('textbox').focus();
  await heard(page);
  await calipers(page, '12.50');
  await expect(page.getByRole('heading', { name: '12.50' })).toBeVisible();
});

test('a count takes no length, and stays as it was', async ({ page }) => {
  await openSample(page);
  await page.goto('./#/change/shellcase');
  const blank = page
    .locator('main')
    .getByRole('button', { name: /how many|number/i })
    .first();
  const before = await blank.textContent();
  await open(page, blank);
  await calipers(page, '18.25');
  await expect(line(page)).toContainText('No length is wanted here.');
  await expect(page.getByRole('dialog')).toBeVisible();
  await page.keyboard.press('Escape');
  expect(await blank.textContent()).toBe(before);
});
