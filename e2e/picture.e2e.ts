import { expect, type Page, test } from '@playwright/test';
import { openSample, pastBounce, readyOffline, sampleOnPhone, shot, standing } from './app';
import { withWorker } from './browser';
import { keptHere, keptSetting } from './kept';
import { firstPage, newProfile } from './profile';
import { serve } from './serve';

test.use(withWorker);

const key = 'knifeline.picture';

/** From the next start on the page paints nothing before it is let go: what stands first is left standing. */
const holdPaint = (page: Page) =>
  page.addInitScript(() => {
    const raf = window.requestAnimationFrame.bind(window);
    let held: FrameRequestCallback[] | undefined = [];
    window.requestAnimationFrame = (then) => (held ? held.push(then) : raf(then));
    const attach = Element.prototype.attachShadow;
    // what is closed to the page is open to the test
    Element.prototype.attachShadow = function (how) {
      return attach.call(this, { ...how, mode: 'open' });
    };
    Object.assign(window, {
      letGo: () => {
        const then = held ?? [];
        held = undefined;
        for (const one of then) raf(one);
      },
    });
  });

const askedFor = (page: Page, file: string) =>
  page.evaluate(
    (file) =>
      performance.getEntriesByType('resource').some(({ name }) => new RegExp(`/${file}-[^/]*js$`).test(name)),
    file,
  );

/** From the next start on it is noted when the screen takes over from its picture. */
const noteTakeOver = (page: Page) =>
  page.addInitScript(() => {
    new MutationObserver((_, watch) => {
      const stands = document.querySelector('#app:not(#picture *) .giant');
      if (!stands || document.getElementById('picture')) return;
      performance.mark('took over');
      watch.disconnect();
    }).observe(document, { subtree: true, childList: true });
  });

/** By how much later than that what brings the copies even was asked for, milliseconds; undefined until it is. */
const evenedAfter = (page: Page) =>
  page.evaluate(() => {
    const [took] = performance.getEntriesByName('took over');
    const asked = performance.getEntriesByType('resource').find(({ name }) => /reconcile-copies/.test(name));
    return took && asked && asked.startTime - took.startTime;
  });

const letGo = (page: Page) => page.evaluate(() => (window as unknown as { letGo(): void }).letGo());
const picture = (page: Page) => page.locator('#picture');
const kept = (page: Page) => page.evaluate((key) => localStorage.getItem(key) ?? '', key);
/** From the next start on this is the picture that was kept. */
const keepFor = (page: Page, text: string) =>
  page.addInitScript(([key, text]) => localStorage.setItem(key, text), [key, text] as const);
const clear = (page: Page) => page.locator('#picture[data-clear]');
const boxes = (page: Page) => page.locator('#app .mpiece[role="checkbox"]');
const ticked = (page: Page) => page.locator('#app .mpiece[aria-checked="true"]');

/** A rip of the sample at its machine, kept as a picture. */
async function atTheSaw(page: Page): Promise<void> {
  await openSample(page);
  await readyOffline(page);
  await page.goto('./#/setup/rip~r35d2~wtrue0edge');
  await expect(boxes(page)).toHaveCount(2);
  await expect.poll(() => kept(page)).toContain('rip~r35d2');
}

test('a start shows where the user was before the app is read in: greyed, deaf, and taken over in place', async ({
  page,
  context,
}) => {
  await atTheSaw(page);
  const at = await standing(page).boundingBox();
  const { of: _, ...unmarked } = JSON.parse(await kept(page));
  await keepFor(page, JSON.stringify(unmarked)); // nobody can look whether it is still so
  await holdPaint(page);
  await context.setOffline(true);
  await page.reload();
  await expect(picture(page).locator('.giant .sr').first()).toContainText('17 and 1/2 inches');
  await expect(picture(page).getByText('Opening')).toBeVisible();
  expect(await picture(page).locator('.giant .sr').first().boundingBox()).toEqual(at);
  // before it is painted what reckons is on its way, and no screen of the app is drawn
  await expect.poll(() => askedFor(page, 'planning')).toBe(true);
  expect(await askedFor(page, 'later')).toBe(false);
  await expect(page.locator('#app:not(#picture *) .giant')).toHaveCount(0);
  await shot(page, 'picture');
  // nothing there is to be tapped, by a finger, a key or a reader of screens
  const box = await picture(page).locator('.mpiece').first().boundingBox();
  await page.touchscreen.tap((box?.x ?? 0) + 20, (box?.y ?? 0) + 20);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('checkbox')).toHaveCount(0);
  await letGo(page);
  await expect(picture(page)).toHaveCount(0);
  await expect(standing(page)).toContainText('17 and 1/2 inches');
  expect(await standing(page).boundingBox()).toEqual(at);
  await expect(ticked(page)).toHaveCount(0);
});

test('the bare address, where a phone starts it, shows the screen that was left', async ({ page }) => {
  await atTheSaw(page);
  await holdPaint(page);
  await noteTakeOver(page);
  await page.goto('about:blank');
  await page.goto('./');
  await expect(picture(page).locator('.giant .sr').first()).toContainText('17 and 1/2 inches');
  await letGo(page);
  await expect(picture(page)).toHaveCount(0);
  await expect(boxes(page)).toHaveCount(2);
  // what brings the copies even is asked for once the screen takes a tap, and not before
  await expect.poll(() => evenedAfter(page)).toBeGreaterThan(0);
});

/** Taken anew once all of where the user is is kept: what is written later makes another mark. */
async function marked(page: Page): Promise<void> {
  await keptHere(page);
  await keptSetting(page, 'saw', new URL(page.url()).hash);
  await page.evaluate((key) => {
    localStorage.removeItem(key);
    document.getElementById('app')?.toggleAttribute('data-again'); // as a change on the screen
  }, key);
  await expect.poll(() => kept(page)).toContain('"of":');
}

/** The picture of that rip as the next start shows it, held until the app is let go. */
async function clearPicture(page: Page): Promise<void> {
  await holdPaint(page);
  await page.reload();
  await expect(clear(page)).toHaveCount(1);
}

async function tapPicture(page: Page, what: string): Promise<void> {
  const at = await picture(page).locator(what).first().boundingBox();
  await page.touchscreen.tap((at?.x ?? 0) + 20, (at?.y ?? 0) + 20);
}

test('a picture of what the database still holds stands clear, and a tap on a box of it is a tick', async ({
  page,
  context,
}) => {
  await atTheSaw(page);
  await marked(page);
  await context.setOffline(true);
  await clearPicture(page);
  await expect(picture(page).getByText('Opening')).toBeHidden();
  await expect(picture(page).locator('#app')).toHaveCSS('opacity', '1');
  await shot(page, 'picture-clear');
  await tapPicture(page, '.mpiece');
  await expect(picture(page).locator('.mpiece.saving')).toHaveCount(1);
  await expect(picture(page).getByText('Opening')).toBeVisible();
  await tapPicture(page, '.mpiece'); // a glove that bounces
  await letGo(page);
  await expect(picture(page)).toHaveCount(0);
  await expect(ticked(page)).toHaveCount(1);
  await keptHere(page);
  await page.reload();
  await expect(ticked(page)).toHaveCount(1);
});

test('a tap on anything else of a clear picture leads where it leads in the app', async ({ page }) => {
  await atTheSaw(page);
  await marked(page);
  await clearPicture(page);
  await tapPicture(page, 'button:not([aria-checked])');
  await expect(clear(page)).toHaveCount(0); // it takes nothing more
  await letGo(page);
  await expect(picture(page)).toHaveCount(0);
  await expect(page).not.toHaveURL(/#\/setup\/rip~r35d2~wtrue0edge$/);
  await expect(ticked(page)).toHaveCount(0);
});

test('a picture older than the log stays greyed: it shows what was, and takes no tap', async ({ page }) => {
  await atTheSaw(page);
  await marked(page);
  const before = await kept(page);
  await pastBounce(page);
  await boxes(page).first().click();
  await expect.poll(() => kept(page)).toMatch(/aria-checked=\\"true\\"/);
  // as a kill brings it back: the browser had not put the newer one on disk
  await keepFor(page, before);
  await page.addInitScript(() => {
    new MutationObserver(() => {
      if (document.querySelector('#picture[data-clear]')) Object.assign(window, { misled: true });
    }).observe(document, { subtree: true, childList: true, attributes: true });
  });
  await page.reload();
  await expect(ticked(page)).toHaveCount(1);
  await expect(picture(page)).toHaveCount(0);
  expect(await page.evaluate(() => 'misled' in window)).toBe(false);
});

test('where the app says another word than its picture, a tap on that is not done, and is told', async ({
  page,
}) => {
  await atTheSaw(page);
  await marked(page);
  const other = (await kept(page)).replace('17 and 1/2 inches', '18 and 1/2 inches');
  await keepFor(page, other);
  await clearPicture(page);
  await tapPicture(page, '.mpiece');
  await letGo(page);
  await expect(page.getByRole('alert').filter({ hasText: 'not taken: tap again' })).toBeVisible();
  await expect(standing(page)).toContainText('17 and 1/2 inches');
  await expect(ticked(page)).toHaveCount(0);
});

for (const [what, change] of [
  ['of another version', (text: string) => text.replace(/"build":"[^"]*"/, '"build":"other"')],
  ['of another page', (text: string) => text.replace('rip~r35d2', 'rip~r11d4')],
  ['that is damaged', (text: string) => text.slice(0, 300)],
  [
    'that holds a script',
    (text: string) => text.replace('"html":"', '"html":"<script>window.ran = 1</script>'),
  ],
] as const)
  test(`a picture ${what} misleads nobody`, async ({ page }) => {
    await atTheSaw(page);
    const text = change(await kept(page));
    await keepFor(page, text);
    await page.reload();
    await expect(boxes(page)).toHaveCount(2);
    await expect(picture(page)).toHaveCount(0);
    expect(await page.evaluate(() => 'ran' in window)).toBe(false);
  });

test('the first change of what it shows drops it; what stands after a kill is the log', async () => {
  const server = await serve();
  const profile = newProfile();
  try {
    let context = await profile.open();
    let page = await firstPage(context);
    await sampleOnPhone(page, server.url);
    await page.goto(`${server.url}#/setup/rip~r35d2~wtrue0edge`);
    await expect.poll(() => kept(page)).toContain('rip~r35d2');
    await pastBounce(page);
    await boxes(page).first().click();
    await expect(ticked(page)).toHaveCount(1);
    // none, or the one with the box ticked
    expect(await kept(page)).toMatch(/^$|aria-checked=\\"true\\"/);
    await keptHere(page);
    await profile.kill();
    await server.stop();

    context = await profile.open();
    page = await firstPage(context);
    await page.goto(`${server.url}#/setup/rip~r35d2~wtrue0edge`);
    await expect(ticked(page)).toHaveCount(1);
    await expect(picture(page)).toHaveCount(0);
    await expect.poll(() => kept(page)).toMatch(/aria-checked=\\"true\\"/);
  } finally {
    await profile.kill();
    profile.remove();
    await server.stop();
  }
});
