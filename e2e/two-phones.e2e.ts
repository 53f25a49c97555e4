import { expect, type Page, test } from '@playwright/test';
import { keys, openSample, pastBounce, readySettings, shot } from './app';
import { violations } from './axe';

type Sheet = { handed?: string | undefined };

/** A phone has a share sheet; this one keeps what it is handed. */
const withShareSheet = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    Object.assign(navigator, {
      canShare: () => true,
      share: async ({ files }: { readonly files: readonly File[] }) => {
        (window as unknown as Sheet).handed = await files[0]?.text();
      },
    });
  });

async function shareOut(page: Page): Promise<string> {
  await page.goto('./#/');
  const handed = () => page.evaluate(() => (window as unknown as Sheet).handed ?? '');
  await page.evaluate(() => {
    (window as unknown as Sheet).handed = undefined;
  });
  await page.getByRole('button', { name: 'Share out' }).click();
  await expect.poll(handed).toContain('"knifeline"');
  return handed();
}

/** One phone takes in what the other hands it. */
async function takeIn(page: Page, file: string): Promise<void> {
  await page.goto('./#/import');
  await page.setInputFiles('input[type=file]', {
    name: 'job.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from(file),
  });
  await page.getByRole('button', { name: 'Merge into the one here' }).click();
  await expect(page.locator('.home-head')).toBeVisible();
}

const ticks = async (page: Page): Promise<readonly boolean[]> => {
  await page.goto('./#/stops/shellcase');
  await page.locator('.tick').first().waitFor();
  return page
    .locator('.tick')
    .evaluateAll((all) => all.map((t) => t.getAttribute('aria-checked') === 'true'));
};

const tickNth = async (page: Page, nth: number): Promise<void> => {
  await readySettings(page);
  await page.locator('.tick').nth(nth).click();
  await expect(page.locator('.tick').nth(nth)).toBeChecked();
};

/** How deep the case is: the third figure of its sizes. */
async function sayDeep(page: Page, figure: string): Promise<void> {
  await page.goto('./#/case/case');
  await page.locator('section[aria-label=Sizes]').getByRole('button').nth(4).click();
  await keys(page, [...figure]);
  await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
  await expect(page.getByRole('dialog')).toBeHidden();
}

const line = (page: Page) => page.getByRole('link', { name: 'Phones disagree in one place' });

test('two phones change one reading and tick different cuts: both readings stand until one is picked, on both phones', async ({
  page: anna,
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({
    baseURL: baseURL ?? '',
    viewport: { width: 390, height: 844 },
    hasTouch: true,
  });
  const ben = await context.newPage();
  for (const page of [anna, ben]) {
    await withShareSheet(page);
    await openSample(page);
  }

  for (const [page, figure, nth] of [
    [anna, '17', 0],
    [ben, '18', 1],
  ] as const) {
    await sayDeep(page, figure);
    await tickNth(page, nth);
  }

  const [fromAnna, fromBen] = [await shareOut(anna), await shareOut(ben)];
  expect(JSON.parse(fromAnna).knifeline).toBe(2);
  await takeIn(anna, fromBen);
  await takeIn(ben, fromAnna);
  await takeIn(ben, fromAnna); // twice is once

  expect(await ticks(anna)).toEqual(await ticks(ben));
  expect((await ticks(anna)).slice(0, 2)).toEqual([true, true]);
  expect(await shareOut(anna)).toBe(await shareOut(ben));

  for (const page of [anna, ben]) {
    await page.goto('./#/');
    await expect(line(page)).toBeVisible();
    await shot(page, `double-job-${page === anna ? 'a' : 'b'}`);
  }
  await line(anna).click();
  await expect(anna.locator('.pick')).toHaveCount(2);
  await expect(anna.locator('.pick', { hasText: 'this phone' })).toContainText('17');
  await expect(anna.locator('.pick', { hasText: 'the other phone' })).toContainText('18');
  await shot(anna, 'double');
  await anna.setViewportSize({ width: 360, height: 640 });
  expect(await violations(anna)).toEqual([]);
  for (const box of await anna.locator('.pick').evaluateAll((all) => all.map((b) => b.clientHeight)))
    expect(box).toBeGreaterThanOrEqual(60);
  await shot(anna, 'double-small');

  await anna.locator('.pick', { hasText: 'this phone' }).click();
  await expect(anna.getByText('The phones agree.')).toBeVisible();
  await anna.getByRole('button', { name: /^Undo: Picked/ }).click();
  await expect(anna.locator('.pick')).toHaveCount(2);
  await pastBounce(anna);
  await anna.locator('.pick', { hasText: 'this phone' }).click();
  await expect(anna.getByText('The phones agree.')).toBeVisible();

  await takeIn(ben, await shareOut(anna));
  await expect(line(ben)).toBeHidden();
  expect(await shareOut(ben)).toBe(await shareOut(anna));
  await context.close();
});
