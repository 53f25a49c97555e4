import { expect, type Page, test } from '@playwright/test';
import { keys, makeReady, openSample, painted, shot } from './app';
import { violations } from './axe';
import { screens } from './screens';

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
    await follows(page, look.scheme);
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

/** The phone goes over to its other scheme at dusk, and back: a page that stands open follows at once. */
async function follows(page: Page, scheme: 'light' | 'dark'): Promise<void> {
  const finish = { light: 'satin', dark: 'blued' } as const;
  for (const colorScheme of [scheme === 'light' ? 'dark' : 'light', scheme] as const) {
    await page.emulateMedia({ colorScheme });
    await expect(page.locator('html')).toHaveAttribute('data-theme', finish[colorScheme]);
  }
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
  await shot(page, `${name}`);
  const wide = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect.soft(wide, `${name} scrolls sideways by`).toBeLessThanOrEqual(0);
  expect.soft(await small(page), `${name}: targets under 48 px`).toEqual([]);
  expect.soft(await broken(page), `${name}: lengths that break over a line`).toEqual([]);
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

/** Lengths in the words of the page that stand on two lines. */
const broken = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode())
      for (const { 0: length, index } of (node.textContent ?? '').matchAll(/\d+\s(\d+\/\d+|mm\b)/g)) {
        const range = document.createRange();
        range.setStart(node, index);
        range.setEnd(node, index + length.length);
        if (new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size > 1)
          found.push(length);
      }
    return found;
  });

test('text at twice the size reflows: nothing is cut off or runs sideways', async ({ page }) => {
  test.setTimeout(300_000);
  await openSample(page);
  await page.goto('./#/phone');
  await page.getByRole('button', { name: 'Twice the size' }).click();
  for (const { name, hash, ready } of screens) {
    await page.goto(`./${hash}`);
    await page.locator(ready).first().waitFor();
    await shot(page, `${name}-text200`);
    const wide = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect.soft(wide, name).toBeLessThanOrEqual(0);
    expect.soft(await broken(page), `${name}: lengths that break over a line`).toEqual([]);
  }
});

test('text at twice the size: stack and height to set, the figure and the bar are on one screen', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/phone');
  await page.getByRole('button', { name: 'Twice the size' }).click();
  const seen = async (...parts: readonly string[]): Promise<void> => {
    for (const part of parts) await expect(page.locator(part)).toBeInViewport({ ratio: 0.95 });
    const lowest = await page.locator(parts[0] ?? '').boundingBox();
    const bar = await page.locator('.knuckle').boundingBox();
    expect((lowest?.y ?? 0) + (lowest?.height ?? 0)).toBeLessThanOrEqual(bar?.y ?? 0);
  };
  await page.goto('./#/saw/shellcase');
  await seen('.mboth .mx >> nth=0', '.mboth .mx >> nth=1', '.knuckle .main');
  await page.goto('./#/setup/rip~r35d2~wtrue0edge');
  await seen('.giant .mx', '.knuckle .main');
});

test('the saw turned sideways keeps the figure, the ticks and the bar in sight', async ({ page }) => {
  await openSample(page);
  await page.setViewportSize({ width: 844, height: 390 });
  await page.goto('./#/saw/shellcase');
  await makeReady(page);
  for (const part of ['.giant .mx', '.mpiece >> nth=0', '.knuckle .main']) {
    await expect(page.locator(part)).toBeInViewport({ ratio: 0.95 });
  }
  const tick = await page.locator('.mpiece').first().boundingBox();
  const bar = await page.locator('.knuckle .main').boundingBox();
  expect((tick?.y ?? 0) + (tick?.height ?? 0)).toBeLessThanOrEqual(bar?.y ?? 0);
  await shot(page, 'saw-landscape');
});
