import { expect, type Page, test } from '@playwright/test';
import { keys, openSample, painted } from './app';
import { violations } from './axe';

const screens: readonly { readonly name: string; readonly hash: string; readonly ready: string }[] = [
  { name: 'job', hash: '#/', ready: '.home-head' },
  { name: 'jobs', hash: '#/jobs', ready: '.sect' },
  { name: 'boards', hash: '#/boards', ready: '.sect' },
  { name: 'marks', hash: '#/marks/shellcase', ready: '.mark' },
  { name: 'marks-thirty', hash: '#/marks/case~left', ready: '.mark' },
  { name: 'settings', hash: '#/stops/shellcase', ready: '.stop' },
  { name: 'change', hash: '#/change/shellcase', ready: '.fillin' },
  { name: 'fit', hash: '#/fit/shellcase/shelves', ready: '.fillin' },
  { name: 'tray', hash: '#/tray/shellcase', ready: '.fillin' },
  { name: 'saw', hash: '#/saw/shellcase', ready: '.giant' },
  { name: 'figure', hash: '#/figure', ready: '.calc' },
  { name: 'stock', hash: '#/stock/sheeta', ready: '.readings' },
  { name: 'case', hash: '#/case/case', ready: '.casedraw' },
  { name: 'built', hash: '#/built/case', ready: '.opening' },
  { name: 'parts', hash: '#/parts', ready: '.pairsize' },
  { name: 'part', hash: '#/part/case~left', ready: '.sizerow' },
  { name: 'cuts', hash: '#/cuts', ready: '.build' },
  { name: 'setup', hash: '#/setup/rip~r35d2~wtrue0edge', ready: '.piece' },
  { name: 'stack', hash: '#/stack/stop~c13d32~h3d16', ready: '.stackbox' },
  { name: 'shims', hash: '#/shims', ready: '.nextset' },
  { name: 'fronts', hash: '#/fronts/drawers', ready: '.asbuilt' },
  { name: 'bank', hash: '#/bank/drawers', ready: '.fillin' },
  { name: 'opening', hash: '#/opening/drawers', ready: '.place-chip' },
  { name: 'boxes', hash: '#/boxes/drawers', ready: '.drawerrow' },
  { name: 'contents', hash: '#/contents/drawers', ready: '.ratingbar' },
  { name: 'one-mark', hash: '#/one/drawers/marks', ready: '.giant' },
  { name: 'one-stick', hash: '#/one/drawers/sticks/d2', ready: '.bigtick' },
  { name: 'sheets', hash: '#/sheets', ready: '.pool' },
  { name: 'layout', hash: '#/layout/planside1', ready: '.cutnow' },
  { name: 'layout-stick', hash: '#/layout/planmaple1', ready: '.cutnow' },
  { name: 'pieces', hash: '#/pieces/sheeta', ready: '.piecerow' },
  { name: 'buy', hash: '#/buy', ready: '.buyline' },
  { name: 'unmeasured', hash: '#/stock/sheetb', ready: '.nextset' },
  { name: 'change-derived', hash: '#/change/case~left', ready: '.fillin' },
  { name: 'shop', hash: '#/shop', ready: '.nextset' },
  { name: 'phone', hash: '#/phone', ready: '.prefs' },
  { name: 'before', hash: '#/before', ready: '.before' },
  { name: 'before-saw', hash: '#/before/fence/saw%2Fshellcase', ready: '.tapped' },
  { name: 'double', hash: '#/double', ready: '.empty-line' },
  { name: 'import', hash: '#/import', ready: '.prefs' },
  { name: 'handover', hash: '#/handover', ready: '.codebox canvas' },
  { name: 'takein', hash: '#/takein', ready: '.takein' },
];

// alike: whoever is free takes the next
test.describe.configure({ mode: 'parallel' });

/** What axe looks at: words and roles are the same in both finishes and at both sizes. */
type Axe = 'everything' | 'contrast' | 'nothing';

const looks = [
  { name: 'satin', scheme: 'light', width: 390, height: 844, axe: 'everything' },
  { name: 'blued', scheme: 'dark', width: 390, height: 844, axe: 'contrast' },
  // a finish changes colours, not places
  { name: 'satin-small', scheme: 'light', width: 360, height: 640, axe: 'nothing' },
] as const;

for (const look of looks) {
  test(`every screen in ${look.name}: nothing wider than the phone, targets a glove can hit, axe clean`, async ({
    page,
  }) => {
    test.setTimeout(300_000);
    await page.emulateMedia({ colorScheme: look.scheme, reducedMotion: 'reduce' });
    await page.setViewportSize({ width: look.width, height: look.height });
    await page.goto('./');
    await expect(page.getByRole('button', { name: 'Lay out a board' })).toBeVisible();
    await check(page, `first-${look.name}`, look.axe);
    await openSample(page);
    for (const { name, hash, ready } of screens) {
      await page.goto(`./${hash}`);
      await page.locator(ready).first().waitFor();
      if (name === 'figure') await sum(page);
      await check(page, `${name}-${look.name}`, look.axe);
      const said = (await page.locator('body').allInnerTexts()).join(' ');
      expect.soft(said.match(oneOfMany), `${name}: one of a thing stands in the singular`).toBeNull();
      expect.soft(said.match(/once [^.]* in Shop figures/), `${name}: the sample has its figures`).toBeNull();
    }
  });
}

const oneOfMany =
  /(?<![\d/.]\s|[\d/.])1\s(partitions|pieces|parts|sheets|sticks|cuts|grooves|fronts|drawers|boxes|shelves|trays|screws|setups|readings|boards|bays|pairs|changes|jobs|things)\b/;

async function sum(page: Page): Promise<void> {
  await keys(page, ['2', '7', '5/8', 'minus', '3/4', 'divided by', '2', 'equals']);
}

/** Waits until the letters are there, and nothing moves any more. */
async function still(page: Page): Promise<void> {
  await painted(page);
  await page.evaluate(async () => {
    await document.fonts.ready;
    await Promise.allSettled(document.getAnimations().map((moving) => moving.finished));
  });
  await painted(page);
}

async function check(page: Page, name: string, what: Axe): Promise<void> {
  await still(page);
  await page.screenshot({ path: `e2e/shots/${name}.png` });
  const wide = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect.soft(wide, `${name} scrolls sideways by`).toBeLessThanOrEqual(0);
  expect.soft(await small(page), `${name}: targets under 48 px`).toEqual([]);
  const past = await page.evaluate(() =>
    Math.max(
      0,
      ...[...document.querySelectorAll('.knuckle')].map(
        (el) => el.getBoundingClientRect().bottom - innerHeight,
      ),
    ),
  );
  expect.soft(past, `${name}: the big bar runs below the screen by`).toBeLessThanOrEqual(0);
  if (what === 'nothing') return;
  expect.soft(await violations(page, what === 'contrast'), name).toEqual([]);
}

/** Controls smaller than 48 px either way, links in a sentence apart. */
const small = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('button, a[href], input:not([type=file])')]
      .filter((el) => !el.closest('p.note'))
      .map((el) => ({ el, box: el.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0 && (box.width < 47.5 || box.height < 47.5))
      .map(
        ({ el, box }) =>
          `${el.className || el.tagName} “${el.textContent?.slice(0, 20)}” ${Math.round(box.width)}×${Math.round(box.height)}`,
      ),
  );

test('text at twice the size reflows: nothing is cut off or runs sideways', async ({ page }) => {
  test.setTimeout(300_000);
  await openSample(page);
  await page.goto('./#/phone');
  await page.getByRole('button', { name: 'Twice the size' }).click();
  for (const { name, hash, ready } of screens) {
    await page.goto(`./${hash}`);
    await page.locator(ready).first().waitFor();
    await page.screenshot({ path: `e2e/shots/${name}-text200.png` });
    const wide = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect.soft(wide, name).toBeLessThanOrEqual(0);
  }
});

test('the saw turned sideways keeps the figure, the ticks and the bar in sight', async ({ page }) => {
  await openSample(page);
  await page.setViewportSize({ width: 844, height: 390 });
  await page.goto('./#/saw/shellcase');
  for (const part of ['.giant .mx', '.bigtick >> nth=1', '.knuckle .main']) {
    await expect(page.locator(part)).toBeInViewport({ ratio: 0.95 });
  }
  const tick = await page.locator('.bigtick').nth(1).boundingBox();
  const bar = await page.locator('.knuckle .main').boundingBox();
  expect((tick?.y ?? 0) + (tick?.height ?? 0)).toBeLessThanOrEqual(bar?.y ?? 0);
  await page.screenshot({ path: 'e2e/shots/saw-landscape.png' });
});
