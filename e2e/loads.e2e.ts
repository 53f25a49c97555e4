import { expect, test } from '@playwright/test';
import { blankOf, keyIn, openSample, openSampleOffline } from './app';
import { offlineTest } from './browser';

offlineTest(
  'heavy things on a shelf: it says so on the case too, offline and after the page is gone',
  async ({ page }) => {
    await openSampleOffline(page);
    await page.goto('./#/loads/case');
    const shelf = page.getByRole('region', { name: 'Fixed shelf, bay 2' });
    // itself 4.9 pounds, 8 of 1 1/2: 16.9
    await expect(shelf.getByText(/Carries about 16\.9\slb/)).toBeVisible();
    await expect(shelf.getByText(/within it/)).toBeVisible();
    // 8 of 40 is 320, and itself 4.9; as far as allowed it sags under 249.5, and no shelf may carry more than 200
    await keyIn(page, 'Abalone shells: how heavy, one of them', '40');
    await expect(shelf.getByText(/Carries about 324\.9\slb/)).toBeVisible();
    await expect(shelf.getByText(/too far\./)).toBeVisible();
    await expect(shelf.getByText(/is 124\.9\slb over the 200\slb a shelf may carry/)).toBeVisible();
    await expect(shelf.getByText('Not over 200 lb, itself among it.')).toBeVisible();
    await page.goto('./#/case/case');
    await expect(page.getByText(/Spans 18\s7\/64: under about 324\.9\slb it sags/)).toBeVisible();
    await page.close();
    const again = await page.context().newPage();
    await again.goto('./#/case/case');
    await expect(again.getByText(/Spans 18\s7\/64: under about 324\.9\slb it sags/)).toBeVisible();
  },
);

test('a lift asks for its grip before anything is reckoned, and solid wood for its moisture', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/lift/case');
  await expect(page.getByText(/by the lifting equation at the start/)).toBeVisible();
  await blankOf(page, 'How well it is gripped').click();
  await page.getByRole('dialog').getByRole('button', { name: 'not said' }).click();
  await expect(page.getByText('Enter first: how well it is gripped.')).toBeVisible();
  await expect(page.getByText(/by the lifting equation/)).toHaveCount(0);
  await page.goto('./#/solid/case');
  await expect(page.getByText(/^1\s11\/16 across its grain/)).toBeVisible();
});

test('a shelf asks how stiff its stock is; bare, it says what it could carry, evenly loaded', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/loads/case');
  const shelf = page.getByRole('region', { name: 'Fixed shelf, bay 2' });
  await expect(shelf.getByText(/^Until then every figure here goes by 1\.2 million/)).toBeVisible();
  await keyIn(page, 'Fixed shelf, bay 2: how stiff its stock is', '1.3');
  await expect(shelf.getByText(/, as entered\./)).toBeVisible();
  await expect(shelf.getByText(/Until then/)).toHaveCount(0);
  // left over it: 58 11/16 less 30 7/32 and 23/32 is 27 3/4
  await keyIn(page, 'Abalone shells: how tall', '40');
  await expect(shelf.getByText('Abalone shells: 12 1/4 too tall for what is left over it.')).toBeVisible();
  await shelf.getByRole('button', { name: 'Take it out' }).click();
  // 40 × 18 7/64 × 17 7/32 / 144 = 86.6
  await expect(shelf.getByText(/^Under that even load, 86\.6\slb: sags about/)).toBeVisible();
});
