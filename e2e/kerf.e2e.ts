import { expect, test } from '@playwright/test';
import { keyIn, openSample, typeInto } from './app';

test('the kerf by a test cut: refused by how much, kept with the job, and given to Shop figures on a tap', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/lookback');
  const saw = page.getByRole('region', { name: 'Circular saw' });
  await typeInto(page, 'Circular saw: the board before it is cut', '6');
  await typeInto(page, 'Circular saw: the pieces that came off, side by side', '2');
  // 6 - 2 - 3 1/2 = 1/2, 1/4 over what a blade takes
  await typeInto(page, 'Circular saw: what is left of the board', '3 1/2');
  await expect(saw).toContainText('That is 1/2 a cut, 1/4 more than the 1/4 a single blade takes.');
  // 6 - 2 - 3 13/16 = 3/16, over two cuts 3/32
  await typeInto(page, 'Circular saw: what is left of the board', '3 13/16');
  await expect(saw).toContainText('A cut takes 3/16.');
  await keyIn(page, 'Circular saw: how many cuts', '2');
  await expect(saw).toContainText('A cut takes 3/32.');
  await saw.getByRole('button', { name: 'Keep in Shop figures' }).click();
  await expect(saw).toContainText('A cut takes 3/32. Shop figures say 3/32.');
  await page.reload();
  await expect(saw).toContainText('A cut takes 3/32. Shop figures say 3/32.');
  await expect(saw.getByRole('button', { name: 'Keep in Shop figures' })).toHaveCount(0);
});
