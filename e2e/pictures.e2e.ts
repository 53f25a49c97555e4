import { expect, type Page, test } from '@playwright/test';
import { openSample, sampleOnPhone } from './app';
import { withWorker } from './browser';
import { keptPictures, photo, pick, withPlace } from './photos';

const shown = (page: Page) => page.locator('.picturebox img');

/** Pixels of the picture that stands large: how wide and high it is, and its colours left and right. */
const pixels = (page: Page) =>
  shown(page)
    .first()
    .evaluate(async (on: HTMLImageElement) => {
      await on.decode();
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [on.naturalWidth, on.naturalHeight];
      const drawing = canvas.getContext('2d') as CanvasRenderingContext2D;
      drawing.drawImage(on, 0, 0);
      const at = (x: number, y: number) => [...drawing.getImageData(x, y, 1, 1).data.slice(0, 3)];
      const [wide, high] = [canvas.width, canvas.height];
      return {
        wide,
        high,
        first: at(5, 5),
        last: at(wide - 5, high - 5),
        topRight: at(wide - 5, 5),
      };
    });

test.describe('with no network', () => {
  test.use(withWorker);

  test('a photo on a spoiled part, taken offline: it is there again after a restart, and after the database is wiped', async ({
    page,
  }) => {
    await sampleOnPhone(page);
    await page.context().setOffline(true);
    await page.goto('./#/part/case~left');
    await page.getByRole('button', { name: 'Spoiled' }).click();
    await page.getByRole('button', { name: 'Spoiled. Put it back on the list' }).click();
    await page.getByRole('button', { name: /^Note/ }).click();
    await page.getByRole('textbox', { name: /^Note/ }).fill('Tear-out at the lower dado');
    await page.keyboard.press('Enter');
    await expect(page.getByText('Tear-out at the lower dado')).toBeVisible();
    await page.getByRole('button', { name: 'Pictures' }).click();
    await pick(page, [{ name: 'spoiled.jpg', buffer: await photo(page, { wide: 3000, high: 2000 }) }]);
    await expect(shown(page)).toHaveCount(1);

    await page.goto('about:blank');
    await page.goto('./#/pictures/part~case~left');
    await expect(shown(page)).toHaveCount(1);
    expect(await pixels(page)).toMatchObject({ wide: 1600, high: 1067 }); // 2000 × 1600 / 3000 = 1066.7
    await expect(page.getByText('Tear-out at the lower dado')).toBeVisible();

    const { origin } = new URL(page.url());
    await page.goto('about:blank');
    const devtools = await page.context().newCDPSession(page);
    await devtools.send('Storage.clearDataForOrigin', { origin, storageTypes: 'indexeddb' });
    await page.goto('./#/pictures/part~case~left');
    await expect(shown(page)).toHaveCount(1);
    await expect
      .poll(async () => Object.keys((await keptPictures(page)).database).length, { timeout: 30_000 })
      .toBe(1);
  });
});

test('where and with what a picture was taken is in neither copy; held upright it stands upright', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/pictures/room');
  const taken = withPlace(await photo(page, { wide: 2400, high: 1200 }), 6);
  expect(taken.includes('SECRETMAKER')).toBe(true);
  await pick(page, [{ name: 'room.jpg', buffer: taken }]);
  await expect(shown(page)).toHaveCount(1);
  const { database, files } = await keptPictures(page);
  const all = [...Object.values(database), ...Object.values(files)];
  expect(all).toHaveLength(2);
  for (const bytes of all) {
    expect(bytes.includes('SECRETMAKER')).toBe(false);
    expect(bytes.includes('Exif')).toBe(false);
    expect(bytes.length).toBeLessThan(300 * 1024);
  }
  // turned clockwise by a quarter the left half, red, comes to lie on top
  const seen = await pixels(page);
  expect([seen.wide, seen.high]).toEqual([800, 1600]);
  for (const [r = 0, , b = 0] of [seen.first, seen.topRight]) expect(r - b).toBeGreaterThan(100);
  expect((seen.last[2] ?? 0) - (seen.last[0] ?? 0)).toBeGreaterThan(100);
});
