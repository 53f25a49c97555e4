import { createHash } from 'node:crypto';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { choose, goBy, keys, openSample, pastBounce, pastQuickBounce, typed } from './app';
import { keptLines } from './kept';
import { keptLog } from './kept-log';
import { noRoom, roomAgain, slowStorage, storageTakes } from './poor-storage';

test.describe.configure({ mode: 'parallel' });

/** Everything that is kept, but where the user is and what is half done. */
async function kept(page: Page): Promise<string> {
  const beside = await page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const open = indexedDB.open('knifeline');
      open.onsuccess = () => resolve(open.result);
    });
    const all = (store: string) =>
      new Promise<unknown>((resolve) => {
        const tx = db.transaction(store).objectStore(store);
        const found: [unknown, unknown][] = [];
        tx.openCursor().onsuccess = (event) => {
          const cursor = (event.target as IDBRequest<IDBCursorWithValue | null>).result;
          if (!cursor) return resolve(found);
          if (!/^(here|saw|draft|at\/settings\/(here|saw|draft))/.test(`${cursor.key}`))
            found.push([cursor.key, cursor.value]);
          cursor.continue();
        };
      });
    const rows = await Promise.all(['settings', 'shop'].map(all));
    db.close();
    return rows;
  });
  return JSON.stringify([beside, await keptLog(page)]);
}

/** What is kept among the settings under keys that begin so. */
const keptUnder = (page: Page, prefix: string): Promise<Readonly<Record<string, unknown>>> =>
  page.evaluate(async (begins) => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const open = indexedDB.open('knifeline');
      open.onsuccess = () => resolve(open.result);
    });
    const store = db.transaction('settings').objectStore('settings');
    const range = IDBKeyRange.bound(begins, `${begins}\uffff`);
    const [keys, values] = await Promise.all(
      [store.getAllKeys(range), store.getAll(range)].map(
        (asked) =>
          new Promise<readonly unknown[]>((resolve) => {
            asked.onsuccess = () => resolve(asked.result);
          }),
      ),
    );
    db.close();
    return Object.fromEntries((keys ?? []).map((key, k) => [`${key}`, values?.[k]]));
  }, prefix);

/** What is kept of half done blanks. */
const draftsKept = async (page: Page): Promise<string> =>
  JSON.stringify(Object.values(await keptUnder(page, 'draft/')));

/** What is kept of figures that are no part of a job. */
async function asideKept(page: Page): Promise<string> {
  const drafts = Object.entries(await keptUnder(page, 'draft/'));
  return JSON.stringify([drafts.filter(([key]) => key.includes('= ')), await keptUnder(page, 'figure')]);
}

/** Comes to a page of the app from another, so that there is one to go back to. */
async function arrive(page: Page, form: string): Promise<void> {
  await page.goto('about:blank');
  await page.goto('./#/boards');
  await expect(page.locator('.sect').first()).toBeVisible();
  await page.evaluate((at) => location.assign(`#/${at}`), form);
}

/** Back on the page, with no panel open, wherever the last step has led. */
async function again(page: Page, form: string): Promise<void> {
  if (await page.getByRole('dialog').count()) await page.keyboard.press('Escape');
  await page.evaluate((at) => location.assign(`#/${at}`), form);
  await expect(page.getByRole('dialog')).toHaveCount(0);
}

/** The same, short: what failed is read in the trace. */
const sizeOf = async (page: Page): Promise<string> =>
  createHash('sha256')
    .update(await kept(page))
    .digest('hex');

const readings = (page: Page) => page.locator('.readings .reading-big');
const another = (page: Page) => page.getByRole('button', { name: /^(First|Another) reading$/ });
/** Nothing is on its way to storage. */
const settled = (page: Page) => expect(page.locator('.saving-line')).toHaveCount(0, { timeout: 60_000 });

for (const wait of [0, 300, 700, 1500, 4000]) {
  test(`readings taken one after the other are all kept, storage answering in ${wait} ms`, async ({
    page,
  }) => {
    test.setTimeout(180_000);
    await slowStorage(page);
    await openSample(page);
    await page.goto('./#/stock/sheetb');
    await storageTakes(page, wait);
    const all = ['.718', '.721', '.724', '.719'].slice(0, wait > 3000 ? 2 : 4);
    for (const one of all) {
      await another(page).click();
      await typed(page, one);
      await pastBounce(page); // the same control again is a touch of its own
    }
    await expect(readings(page)).toHaveText(all.map((one) => new RegExp(`0${one.replace('.', '\\.')}`)));
    await settled(page);
    await storageTakes(page, 0);
    await page.reload();
    await expect(readings(page)).toHaveText(all.map((one) => new RegExp(`0${one.replace('.', '\\.')}`)));
  });
}

test('places given one after the other are all kept, storage slow', async ({ page }) => {
  await slowStorage(page);
  await openSample(page);
  await page.goto('./#/change/shellcase');
  await choose(page, /^How they are spaced/, 'one by one');
  await storageTakes(page, 700);
  for (const place of ['4', '8', '12']) {
    await page.getByRole('button', { name: /^Where does the next one go/ }).click();
    await typed(page, place);
    await pastBounce(page);
  }
  for (const place of ['4', '8', '12'])
    await expect(
      page.getByRole('button', { name: new RegExp(`^Where does no\\. \\d+ go\\?: ${place}\\b`) }),
    ).toBeVisible();
  await settled(page);
});

/** A figure that can be meant in the blank that is open: what is too large is asked about, and not taken. */
async function keyOne(page: Page): Promise<string> {
  const dock = page.getByRole('dialog');
  const odd = dock.getByRole('alert');
  for (const figure of ['7', '.2', '.02']) {
    for (const key of figure) {
      await dock.getByRole('button', { name: key, exact: true }).click();
      await pastQuickBounce(page);
    }
    if ((await odd.count()) === 0) return figure === '7' ? '7' : `0${figure}`;
    for (const _ of figure) {
      await dock.getByRole('button', { name: 'erase' }).click();
      await pastQuickBounce(page);
    }
  }
  throw new Error('no figure can be meant');
}

/** As it is read, and as it is spoken. */
const standsAs = (figure: string): RegExp => {
  const read = figure === '7' ? '7' : Number(figure).toFixed(3);
  return new RegExp(`(^|\\D)${read.replace('.', '\\.')}(${read} inches)?(\\D|$)`);
};

/** How a panel is left. Each gives back how to come to the page again. */
const ways: readonly {
  readonly name: string;
  readonly leave: (page: Page, blank: Locator, come: (page: Page) => Promise<void>) => Promise<void>;
}[] = [
  {
    name: 'the next blank tapped',
    leave: async (page) => {
      const other = page.locator('main .blank[aria-expanded="false"]').first();
      if (await other.count()) await other.click();
      else await page.keyboard.press('Escape');
    },
  },
  {
    name: 'closed',
    leave: (page) => page.getByRole('dialog').getByRole('button', { name: 'Close' }).click(),
  },
  { name: 'Escape', leave: (page) => page.keyboard.press('Escape') },
  { name: 'another page', leave: (page) => page.evaluate(() => void location.assign('#/boards')) },
  { name: 'back', leave: (page) => page.goBack().then(() => undefined) },
  { name: 'Done', leave: (page) => page.getByRole('dialog').getByRole('button', { name: 'Done' }).click() },
  {
    name: 'the page opened again, then Done',
    leave: async (page, blank, come) => {
      await expect.poll(() => draftsKept(page)).toMatch(/7|0\.0?2/);
      await page.reload();
      await come(page);
      await blank.click();
      await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
    },
  },
];

/** Each blank at night; else every fifth one: over all forms each way is met many times. */
const night = process.env.KNIFELINE_NIGHTLY !== undefined;
const step = night ? 1 : 5;

/** Storage takes so long to say that it has kept something, blank by blank in turn. Milliseconds. */
const waits = night ? [0, 300, 700, 1500, 4000] : [0, 300, 700];

const forms = [
  'change/shellcase',
  'case/case',
  'bank/drawers',
  'opening/drawers',
  'boxes/drawers',
  'contents/drawers',
  'stock/sheetb',
  'stock/maple',
  'built/case',
  'shop',
  'setup/rip~r35d2~wtrue0edge',
  'pieces/sheeta',
] as const;

/** The quick sums of Figure. */
const sums = 7;

/** Comes to one of them, by its place in the list. */
const sum = (nth: number) => async (page: Page) => {
  await again(page, 'boards');
  await again(page, 'figure');
  await page.getByRole('button', { name: 'Sums' }).click();
  const choices = page.locator('.choices button');
  await expect(choices).toHaveCount(sums);
  await choices.nth(nth).click();
  await expect(page.locator('main.sum')).toBeVisible();
};

/** Pages whose figures are no part of a job: how to come to each. */
const asides: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  shims: (page) => again(page, 'shims'),
  'a stack': (page) => again(page, 'stack/stop~c13d32~h3d16'),
  'a fit': (page) => again(page, 'fit/shellcase/shelves'),
  'a tray': (page) => again(page, 'tray/shellcase'),
  ...Object.fromEntries(
    Array.from({ length: sums }, (_, k) => [`sum ${k + 1}`, sum(k)] as const).filter(
      (_, k) => night || k % 3 === 0,
    ),
  ),
};

test('what was keyed into any blank aside from the job stands there once the page is opened again', async ({
  page,
}) => {
  test.setTimeout(120_000 * Object.keys(asides).length);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openSample(page);
  for (const [k, [name, come]] of Object.entries(asides).entries()) {
    await arrive(page, 'boards');
    await come(page);
    const blanks = page.locator('main .blank:not(.choice), main button.nextset');
    await blanks.first().waitFor();
    let tried = 0;
    // a short form is begun at its first
    for (let at = k % Math.min(step, await blanks.count()); at < (await blanks.count()); at += step) {
      const blank = blanks.nth(at);
      await blank.click();
      await goBy(page, 60);
      const seven = page.getByRole('dialog').getByRole('button', { name: '7', exact: true });
      const way = ways[(tried + k) % ways.length];
      if (!way) throw new Error('no way');
      if (await seven.count()) {
        const before = await asideKept(page);
        const figure = await keyOne(page);
        await way.leave(page, blank, come);
        tried += 1;
        const left = `${name}, blank ${at + 1}, ${way.name}`;
        await expect.poll(() => asideKept(page), { message: left }).not.toBe(before);
        await page.reload();
        await come(page);
        await expect(blank, left).toHaveText(standsAs(figure));
      }
      await come(page);
    }
    expect(tried, `blanks of ${name} that take a figure`).toBeGreaterThan(0);
  }
});

for (const [k, form] of forms.entries()) {
  test(`every blank of ${form}, left in any way, keeps what was keyed`, async ({ page }) => {
    test.setTimeout(300_000);
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await slowStorage(page);
    await openSample(page);
    await arrive(page, form);
    const blanks = page.locator('main .blank:not(.choice), main button.nextset, main .place-chip');
    await blanks.first().waitFor();
    let tried = 0;
    // a short form is begun at its first
    for (let at = k % Math.min(step, await blanks.count()); at < (await blanks.count()); at += step) {
      const blank = blanks.nth(at);
      await blank.click();
      const dock = page.getByRole('dialog');
      const seven = dock.getByRole('button', { name: '7', exact: true });
      await goBy(page, 60);
      if ((await seven.count()) === 0) {
        await again(page, form);
        await blanks.first().waitFor();
        continue;
      }
      const title = (await dock.getAttribute('aria-label')) ?? '';
      const way = ways[(tried + k) % ways.length];
      if (!way) throw new Error('no way');
      await settled(page);
      await storageTakes(page, waits[tried % waits.length] ?? 0);
      const before = await sizeOf(page);
      await keyOne(page);
      await way.leave(page, blank, () => blanks.first().waitFor());
      await expect
        .poll(() => sizeOf(page), { message: `${form}: ${title}, ${way.name}: kept` })
        .not.toBe(before);
      tried += 1;
      await again(page, form);
      await blanks.first().waitFor();
    }
    expect(tried, 'blanks that take a figure').toBeGreaterThan(0);
  });
}

test('what does not read stays in its blank, marked, and is there after the page ends; put right, it is taken', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/case/case');
  const width = page.getByRole('button', { name: /^How wide/ }).first();
  await width.click();
  const dock = page.getByRole('dialog');
  await dock.getByLabel('or typed').fill('3 11/');
  await dock.getByRole('button', { name: 'Done' }).click();
  await expect(dock).toBeVisible(); // the big Done does not drop it
  await dock.getByRole('button', { name: 'Close' }).click();
  await expect(width).toContainText('3 11/');
  await expect(width).toContainText('not a length yet');
  await expect(page.getByRole('status').filter({ hasText: 'Not taken yet: “3 11/”' })).toBeVisible();
  await page.goto('about:blank');
  await page.goto('./#/case/case');
  await expect(width).toContainText('3 11/');
  await width.click();
  await dock.getByLabel('or typed').fill('3 11/32');
  await dock.getByRole('button', { name: 'Done' }).click();
  await expect(dock).toBeHidden();
  await expect(width).toContainText('3 and 11/32');
  await expect(page.getByText('Not taken yet')).toBeHidden();
});

test('a name half typed is kept when its panel is closed, and is there again after a kill', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/stock/sheetb');
  await page.getByRole('button', { name: 'Name', exact: true }).click();
  await page.getByRole('textbox', { name: 'Name of the sheet' }).fill('Shell drawers');
  await page.keyboard.press('Escape');
  await expect(page.getByText('Shell drawers').first()).toBeVisible();
  await pastBounce(page);
  await page.getByRole('button', { name: 'Name', exact: true }).click();
  await page.getByRole('textbox', { name: 'Name of the sheet' }).fill('Shell drawers, lot two');
  await expect.poll(() => draftsKept(page)).toContain('lot two');
  await page.goto('about:blank');
  await page.goto('./#/stock/sheetb');
  await page.getByRole('button', { name: 'Name', exact: true }).click();
  await expect(page.getByRole('textbox', { name: 'Name of the sheet' })).toHaveValue(
    'Shell drawers, lot two',
  );
});

test('Next goes from blank to blank that is empty, and each is kept', async ({ page }) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'Lay out a board' }).click();
  const dock = page.getByRole('dialog');
  if (await dock.count()) await page.keyboard.press('Escape');
  await page.locator('main .blank.empty:not(.choice)').first().click();
  const titles: string[] = [];
  for (let k = 0; k < 3; k += 1) {
    titles.push((await dock.getAttribute('aria-label')) ?? '');
    // half an inch can be meant of all of them
    await dock.getByRole('button', { name: '1/2', exact: true }).click();
    await dock.getByRole('button', { name: 'Next' }).click();
    await expect(dock).toBeVisible();
    await expect(dock).not.toHaveAttribute('aria-label', titles[k] ?? '');
  }
  expect(new Set(titles).size).toBe(3);
  for (const title of titles)
    await expect(page.locator('main').getByRole('button', { name: title }).first()).toContainText(
      '1/2 inches',
    );
});

test('two pages that each take a reading of one sheet keep both, and nothing stands double', async ({
  page,
  context,
}) => {
  await openSample(page);
  await page.goto('./#/stock/sheetb');
  const other = await context.newPage();
  await other.goto('./#/stock/sheetb');
  await expect(another(other)).toBeVisible();
  await another(page).click();
  await another(other).click();
  await typed(other, '.721');
  await page.bringToFront();
  await typed(page, '.718');
  for (const one of [page, other]) await expect(readings(one)).toHaveCount(2);
  await page.goto('./#/');
  await expect(page.getByText('double')).toBeHidden();
});

test('lines of the strip typed while storage is slow, then at once, are all kept', async ({ page }) => {
  await slowStorage(page);
  await page.goto('./#/figure');
  await page.getByRole('button', { name: 'Type', exact: true }).click();
  const field = page.getByLabel('Type it as you would write it');
  const line = async (text: string): Promise<void> => {
    await field.fill(text);
    await page.keyboard.press('Enter');
    await expect(field).toHaveValue('');
  };
  await storageTakes(page, 1500);
  await line('501');
  await line('502');
  await storageTakes(page, 0);
  await line('503');
  await settled(page);
  await line('504');
  await line('505');
  await settled(page);
  await page.reload();
  await page.getByRole('button', { name: 'Strip', exact: true }).click();
  await expect(page.locator('.rl .sr')).toHaveText(
    ['501', '502', '503', '504', '505'].map((n) => `${n} inches`),
  );
});

test('two pages on one strip: a key in one wipes no line of the other', async ({ page, context }) => {
  await page.goto('./#/figure');
  const other = await context.newPage();
  await other.goto('./#/figure');
  await expect(other.locator('.pad')).toBeVisible();
  await page.bringToFront();
  for (const digit of ['1', '2', '3']) await keys(page, [digit, 'equals']);
  await keptLines(page, ['1', '2', '3']);
  await other.bringToFront();
  await keys(other, ['4']);
  await keys(other, ['equals']);
  await keptLines(other, ['1', '2', '3', '4']);
  await page.bringToFront();
  await page.reload();
  await page.getByRole('button', { name: 'Strip' }).click();
  await expect(page.locator('.rl')).toHaveCount(4);
});

test('everything refused is named and waits, in order; with room again all of it is kept', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/stock/sheetb');
  await noRoom(page);
  for (const one of ['.718', '.721']) {
    await another(page).click();
    await typed(page, one);
    await settled(page);
    await pastBounce(page);
  }
  await expect(readings(page)).toHaveCount(0); // nothing shows as kept that is not
  await page.evaluate(() => void location.assign('#/shop'));
  const kerf = page.getByRole('button', { name: /kerf/i }).first();
  const was = await kerf.textContent();
  await kerf.click();
  await typed(page, '3/32');
  await settled(page);
  await expect(kerf).toHaveText(was ?? '');
  const line = page.getByRole('alert');
  await expect(line).toContainText(/Not saved: Reading 1; Reading 1; .*kerf/i);
  await roomAgain(page);
  await goBy(page, 500);
  await line.getByRole('button', { name: 'Try again' }).click();
  await expect(line).toBeHidden();
  await expect(kerf).toContainText('3/32');
  await page.goto('./#/stock/sheetb');
  await page.reload();
  await expect(readings(page)).toHaveCount(2);
});

test('a name of one long word breaks where the line ends, and an emoji at the limit goes whole', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/stock/sheetb');
  await page.getByRole('button', { name: 'Name', exact: true }).click();
  const field = page.getByRole('textbox', { name: 'Name of the sheet' });
  await field.fill(`${'W'.repeat(77)}👨‍👩‍👧`);
  await expect(field).toHaveValue('W'.repeat(77));
  await page.keyboard.press('Enter');
  for (const hash of ['stock/sheetb', 'sheets', 'parts', 'case/case', '']) {
    await page.goto(`./#/${hash}`);
    await expect(page.getByText('WWWW').first()).toBeAttached();
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wide, hash).toBeLessThanOrEqual(0);
  }
});
