import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { openSample, pastBounce, sampleOnPhone } from './app';
import { withWorker } from './browser';
import { keptLog } from './kept-log';
import { keptPictures, photo, pick, withPlace } from './photos';

test.describe.configure({ mode: 'parallel' });

/** The sample with one picture of its room. */
async function onePicture(page: Page): Promise<void> {
  await openSample(page);
  await page.goto('./#/pictures/room');
  await pick(page, [{ name: 'a.jpg', buffer: await photo(page, { wide: 400, high: 300 }) }]);
  await expect(shown(page)).toHaveCount(1);
}

/** Puts bytes in the place of a picture of the database, behind the app's back. */
const putInDatabase = (page: Page, key: string, bytes: readonly number[]): Promise<void> =>
  page.evaluate(
    async ({ at, put }) => {
      const db = await new Promise<IDBDatabase>((done) => {
        const request = indexedDB.open('knifeline');
        request.onsuccess = () => done(request.result);
      });
      const tx = db.transaction('pictures', 'readwrite');
      tx.objectStore('pictures').put(new Uint8Array(put).buffer, at);
      await new Promise((done) => {
        tx.oncomplete = done;
      });
      db.close();
    },
    { at: key, put: bytes },
  );

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

for (const by of ['a worker', 'the page, where a worker has nothing to draw on'])
  test(`where and with what a picture was taken is in neither copy; held upright it stands upright, drawn by ${by}`, async ({
    page,
  }) => {
    const here = by !== 'a worker';
    if (here) await page.addInitScript(() => Reflect.deleteProperty(globalThis, 'OffscreenCanvas'));
    await openSample(page);
    await page.goto('./#/pictures/room');
    const taken = withPlace(await photo(page, { wide: 2400, high: 1200 }), 6);
    expect(taken.includes('SECRETMAKER')).toBe(true);
    await page.evaluate(() => {
      const { toBlob } = HTMLCanvasElement.prototype;
      document.documentElement.dataset.drawn = '';
      HTMLCanvasElement.prototype.toBlob = function drawn(this: HTMLCanvasElement, ...given) {
        document.documentElement.dataset.drawn = 'here';
        return toBlob.apply(this, given);
      };
    });
    await pick(page, [{ name: 'room.jpg', buffer: taken }]);
    await expect(shown(page)).toHaveCount(1);
    expect(await page.evaluate(() => document.documentElement.dataset.drawn)).toBe(here ? 'here' : '');
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

test('pictures that could hurt are refused in words at the place, and nothing of them is kept', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/pictures/room');
  const good = await photo(page, { wide: 400, high: 300 });
  // ISO/IEC 15948: a PNG of 30,000 pixels a side that says so in its IHDR, and has nothing else
  const bomb = Buffer.alloc(45);
  bomb.writeUInt32BE(0x89504e47, 0);
  bomb.writeUInt32BE(0x0d0a1a0a, 4);
  bomb.writeUInt32BE(13, 8);
  bomb.write('IHDR', 12);
  bomb.writeUInt32BE(30_000, 16);
  bomb.writeUInt32BE(30_000, 20);
  bomb.writeUInt8(8, 24);
  bomb.write('IEND', 37);
  const script = '<svg xmlns="http://www.w3.org/2000/svg"><script>document.title = "hurt"</script></svg>';
  const files = [
    { name: 'script.svg', mimeType: 'image/svg+xml', buffer: Buffer.from(script) },
    { name: 'named.jpg', buffer: Buffer.from(script) },
    { name: 'huge.png', mimeType: 'image/png', buffer: bomb },
    { name: 'cut.jpg', buffer: good.subarray(0, good.length - 200) },
    { name: 'empty.jpg', buffer: Buffer.alloc(0) },
    // ISO/IEC 23008-12: a file type box, a picture of 4032 × 3024, and nothing this browser can decode
    {
      name: 'phone.heic',
      mimeType: 'image/heic',
      buffer: Buffer.from(
        '0000000c6674797068656963' + '000000146973706500000000' + '00000fc000000bd000000000',
        'hex',
      ),
    },
    // a head that says 16 × 16, and then no picture
    {
      name: 'noise.jpg',
      buffer: Buffer.from('ffd8ffc0000b080010001001011100ffda0008010100003f00aabbccddffd9', 'hex'),
    },
  ];
  await pick(page, files);
  const told = page.getByRole('alert');
  for (const line of [
    'script.svg: No picture that is taken here',
    'named.jpg: No picture that is taken here',
    'huge.png: 30000 × 30000 pixels are too many',
    'cut.jpg: The file ends before the picture does',
    'empty.jpg: No picture that is taken here',
    'phone.heic: This browser opens no HEIC. Save it as JPEG and pick that',
  ])
    await expect(told.filter({ hasText: line })).toBeVisible();
  await expect(page.getByText(/^Scaling/)).toBeHidden();
  // a good picture with a film's worth of bytes behind it comes in as its pixels alone; put together in the page
  await page.getByLabel('Pick pictures').evaluate(
    (input: HTMLInputElement, begins: readonly number[]) => {
      const list = new DataTransfer();
      const bytes = [new Uint8Array(begins), new Uint8Array(47 * 1024 * 1024)];
      list.items.add(new File(bytes, 'fat.jpg', { type: 'image/jpeg' }));
      input.files = list.files;
      input.dispatchEvent(new Event('change', { bubbles: true }));
    },
    [...good],
  );
  await expect(page.getByText(/^Scaling/)).toBeHidden();
  await expect(shown(page)).toHaveCount(await page.locator('.picturegrid li').count());
  const { database, files: second } = await keptPictures(page);
  for (const bytes of [...Object.values(database), ...Object.values(second)]) {
    expect(bytes.length).toBeLessThan(300 * 1024);
    expect(bytes.includes('script')).toBe(false);
  }
  expect(Object.keys(database).length).toBeLessThanOrEqual(2);
  expect(await page.title()).not.toBe('hurt');
});

test('a file over sixty megabytes is not even opened, and by how much it is over is said', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/pictures/room');
  // put together in the page: no such file goes through a socket
  await page.getByLabel('Pick pictures').evaluate((input: HTMLInputElement) => {
    const list = new DataTransfer();
    list.items.add(new File([new Uint8Array(100 * 1024 * 1024)], 'big.jpg', { type: 'image/jpeg' }));
    input.files = list.files;
    input.dispatchEvent(new Event('change', { bubbles: true }));
  });
  // 100 - 60
  await expect(page.getByRole('alert')).toHaveText(
    'The file is 100 MB: 40 MB more than the 60 MB that are opened.',
  );
});

test('a full phone refuses a picture and keeps its ticks; the next picture comes in once there is room', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/pictures/room');
  await page.evaluate(() => {
    const { put } = IDBObjectStore.prototype;
    Object.assign(window, { room: () => Object.assign(IDBObjectStore.prototype, { put }) });
    IDBObjectStore.prototype.put = function full(this: IDBObjectStore, ...given: Parameters<typeof put>) {
      if (this.name === 'pictures') throw new DOMException('no room', 'QuotaExceededError');
      return put.apply(this, given);
    };
  });
  const buffer = await photo(page, { wide: 400, high: 300 });
  await pick(page, [{ name: 'a.jpg', buffer }]);
  await expect(page.getByRole('alert')).toHaveText(
    'The phone is full: the picture was not kept. The job itself is.',
  );
  const kept = await keptPictures(page);
  expect([Object.keys(kept.database), Object.keys(kept.files)]).toEqual([[], []]);
  await page.getByRole('button', { name: /^Note/ }).click();
  await page.getByRole('textbox', { name: /^Note/ }).fill('damp at the left');
  await page.keyboard.press('Enter');
  await expect(page.getByText('damp at the left')).toBeVisible();
  await page.evaluate(() => {
    (window as unknown as { room: () => void }).room();
    navigator.storage.estimate = async () => ({ quota: 100e6, usage: 100e6 - 12 * 1024 * 1024 });
  });
  await pick(page, [{ name: 'a.jpg', buffer }]);
  await expect(page.getByRole('alert')).toHaveText(
    'The phone has 12 MB left, and 20 MB stay free for ticks and readings. Make room on the phone first.',
  );
  await page.evaluate(() => {
    navigator.storage.estimate = async () => ({ quota: 100e6, usage: 0 });
  });
  await pick(page, [{ name: 'a.jpg', buffer }]);
  await expect(shown(page)).toHaveCount(1);
});

/** The hashes of all pictures that the log on the phone names. */
async function named(page: Page): Promise<ReadonlySet<string>> {
  const entries = (await keptLog(page)).map((text) => JSON.parse(text));
  return new Set(entries.flatMap(({ path, value }) => (/^pictures\/.*\/hash$/.test(path) ? [value] : [])));
}

/** Pictures of a job that is ended again and again: so many by day, two hundred at night. */
const many = process.env.KNIFELINE_NIGHTLY ? 200 : 70;

test('a great many pictures, the page ended by force again and again while they come in: each that the log names is whole in both copies', async ({
  page,
}) => {
  test.setTimeout(500_000);
  await openSample(page);
  await page.goto('./#/pictures/room');
  const all = [];
  for (let seed = 1; seed <= many; seed += 1)
    all.push({ name: `${seed}.jpg`, buffer: await photo(page, { wide: 320, high: 240, seed }) });
  let came = 0;
  for (let kill = 1; came < all.length; kill += 1) {
    await page.goto('./#/pictures/room');
    await expect(page.getByLabel('Pick pictures')).toBeAttached();
    await pick(page, all.slice(came));
    // ended at another moment each time, in the middle of one
    const until = Math.min(all.length, came + 10 + ((kill * 7) % 23));
    await expect
      .poll(() => page.locator('.picturegrid li').count(), { intervals: [3], timeout: 60_000 })
      .toBeGreaterThanOrEqual(until);
    await page.goto('about:blank');
    await page.goto('./#/pictures/room');
    await expect(page.getByLabel('Pick pictures')).toBeAttached();
    const shownNow = await page.locator('.picturegrid li').count();
    // the last of those shown was on its way; the one before was acknowledged before it was begun
    expect(shownNow).toBeGreaterThanOrEqual(until - 1);
    came = shownNow;
  }
  const hashes = await named(page);
  const { database, files } = await keptPictures(page);
  expect(hashes.size).toBe(many);
  for (const hash of hashes) {
    const [own] = Object.keys(database).filter((key) => key.endsWith(`~${hash}`));
    expect(database[own ?? '']?.equals(files[own ?? ''] ?? Buffer.alloc(0))).toBe(true);
  }
});

async function fileWithPictures(page: Page): Promise<string> {
  await pastBounce(page);
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Share the job with its pictures' }).click();
  const file = await waiting;
  expect(file.suggestedFilename()).toMatch(/ with pictures\.json$/);
  return readFileSync(await file.path(), 'utf8');
}

test('a job with its pictures goes out as one file and comes in on another phone; damaged on its way it is refused whole', async ({
  page,
  browser,
}) => {
  await page.addInitScript(() => Reflect.deleteProperty(window, 'showSaveFilePicker'));
  await openSample(page);
  await page.goto('./#/pictures/part~case~left');
  const taken = [1, 2, 3].map(async (seed) => ({
    name: `${seed}.jpg`,
    buffer: await photo(page, { wide: 900, high: 700, seed }),
  }));
  await pick(page, await Promise.all(taken));
  await expect(shown(page)).toHaveCount(3);
  await page.goto('./#/handover');
  await expect(page.getByText('Its 3 pictures do not go by codes')).toBeVisible();
  await page.goto('./#/pictures');
  const text = await fileWithPictures(page);
  const before = await keptPictures(page);

  const other = await (await browser.newContext({ serviceWorkers: 'block' })).newPage();
  const choose = (file: string) =>
    other.setInputFiles('input[type=file]', {
      name: 'job.txt',
      mimeType: 'text/plain',
      buffer: Buffer.from(file),
    });
  await other.goto(new URL('./#/import', page.url()).href);
  await choose(text.slice(0, text.length - 300));
  await expect(other.getByRole('alert')).toContainText('cut short or changed');
  const [head = '', copy = '', first = '', ...rest] = text.split('\n');
  const at = first.indexOf('jpeg') + 300;
  const sign = first[at] === 'A' ? 'B' : 'A';
  await choose([head, copy, first.slice(0, at) + sign + first.slice(at + 1), ...rest].join('\n'));
  await expect(other.getByRole('alert')).toContainText('Picture 1 of the copy was damaged');
  await choose(text);
  await expect(other.getByText('3 pictures are in it.')).toBeVisible();
  await other.getByRole('button', { name: 'Take it in' }).click();
  await expect(other.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
  await other.goto(new URL('./#/pictures/part~case~left', page.url()).href);
  await expect(shown(other)).toHaveCount(3);
  const after = await keptPictures(other);
  expect(Object.keys(after.database).sort()).toEqual(Object.keys(before.database).sort());
  for (const [key, bytes] of Object.entries(before.database)) {
    expect(after.database[key]?.equals(bytes)).toBe(true);
    expect(after.files[key]?.equals(bytes)).toBe(true);
  }
  await other.context().close();
});

test('taken off it is kept, and undo puts it back; deleted for good by a tap on that its bytes are gone, and the log says so', async ({
  page,
}) => {
  await onePicture(page);
  const movesOfOff = await page.evaluateHandle(() => {
    const seen = new Set<number>();
    const look = () => {
      const off = document.querySelector('.largepicture .btn');
      if (off) seen.add(Math.round(off.getBoundingClientRect().top));
      requestAnimationFrame(look);
    };
    look();
    return seen;
  });
  await page.locator('.picturegrid button').click();
  await expect(page.locator('.largepicture img')).toBeVisible();
  // the button stands where it will stand before the picture is read
  expect(await movesOfOff.evaluate((seen) => seen.size)).toBe(1);
  await page.getByRole('button', { name: 'Take it off' }).click();
  await expect(page.getByText('No picture here yet.')).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(shown(page)).toHaveCount(1);
  await page.locator('.picturegrid button').click();
  await page.getByRole('button', { name: 'Take it off' }).click();
  await page.goto('./#/pictures');
  await expect(shown(page)).toHaveCount(1);
  expect(Object.keys((await keptPictures(page)).files)).toHaveLength(1);
  await page.getByRole('button', { name: 'Delete for good' }).click();
  await expect(page.getByText(/undo does not bring them back/)).toBeVisible();
  await page.getByRole('dialog').getByRole('button', { name: 'Delete for good' }).click();
  await expect(page.getByText('Taken off their place')).toBeHidden();
  await expect
    .poll(async () => {
      const { database, files } = await keptPictures(page);
      return [...Object.keys(database), ...Object.keys(files)];
    })
    .toEqual([]);
  // the note of the job may have several lines: there Enter begins the next
  await page.getByRole('button', { name: /^Note/ }).first().click();
  await page.getByRole('textbox', { name: 'Note: The job' }).fill('Oak for the doors.');
  await page.keyboard.press('Enter');
  await page.keyboard.type('Damp wall.');
  await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
  const note = page.locator('.noted-text').first();
  await expect(note).toContainText('Damp wall.');
  expect(await note.textContent()).toBe('Oak for the doors.\nDamp wall.');
  await expect(note).toHaveCSS('white-space-collapse', 'preserve-breaks');
  await page.goto('./#/job');
  const way = page.getByRole('link', { name: /^Notes and pictures/ });
  await expect(way).toContainText('Oak for the doors.');
  await expect(way).not.toContainText('Damp wall.');
});

test('damaged in both copies it says so in its place, and stays set aside', async ({ page }) => {
  await onePicture(page);
  const [key = ''] = Object.keys((await keptPictures(page)).database);
  await putInDatabase(page, key, [1, 2, 3]);
  await page.evaluate(async (at) => {
    const root = await navigator.storage.getDirectory();
    const folder = await root.getDirectoryHandle('knifeline-pictures');
    const file = await (await folder.getFileHandle(at)).createWritable();
    await file.write(new Uint8Array([4, 5]));
    await file.close();
  }, key);
  await page.reload();
  await expect(page.getByText('Damaged: set aside')).toBeVisible();
  expect(Object.keys((await keptPictures(page)).database)).toEqual([`${key}~damaged`]);
});

test('pictures of a job that is gone for good stay until a tap on This phone deletes them', async ({
  page,
}) => {
  await onePicture(page);
  const [key = ''] = Object.keys((await keptPictures(page)).database);
  // as a purge leaves it: the bytes of a job that is not here
  await putInDatabase(page, key.replace(/^[^~]+/, 'goneforgood'), [1]);
  await page.goto('./#/phone');
  await expect(page.getByText('One picture is kept of a job that is no longer on this phone.')).toBeVisible();
  await page.getByRole('button', { name: 'Delete it for good' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Delete it for good' }).click();
  await expect(page.getByText(/no longer on this phone/)).toBeHidden();
  await expect.poll(async () => Object.keys((await keptPictures(page)).database)).toEqual([key]);
});
