import { expect, test } from '@playwright/test';
import { openSample, pastBounce, shot, typeInto } from './app';

test('dowels in a joint of the case: which, where, how deep, one figure at a time, and on the list To buy', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/screws/case');
  await page.getByRole('button', { name: 'Dowels', exact: true }).click();
  await typeInto(page, 'Dowels: the part that ends there, so thick', '23/32');
  await typeInto(page, 'Dowels: what it ends against, so thick', '23/32');
  await typeInto(page, 'Dowels: how long the joint is', '18 3/4');
  // 5/16 lies between a third and a half of 23/32; 9/16 + 1 1/16 is 1 1/2 and an eighth
  await expect(
    page.getByText('Take 5/16 by 1 1/2. Bore 9/16 deep in the face, 1 1/16 in the end or edge'),
  ).toBeVisible();
  await expect(page.getByText('4 in each: marks from the reference end')).toBeVisible();
  await shot(page, 'joins');
  await pastBounce(page);
  await page.getByRole('button', { name: 'Slant screws', exact: true }).click();
  await expect(page.getByText('Say how wide the head is.')).toBeVisible();
  await page.goto('./#/buy');
  await expect(page.getByText('Dowels 5/16 × 1 1/2')).toBeVisible();
});
