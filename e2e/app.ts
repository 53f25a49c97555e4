import { expect, type Locator, type Page } from '@playwright/test';
import { bounce, quickBounce } from '../src/ui/touch';

/** Ways round the app that several journeys share. Taps, as a hand would. */
export async function openSample(page: Page, url = './'): Promise<void> {
  await page.goto(url);
  await page.getByRole('button', { name: 'Open the sample job' }).click();
  await expect(page.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
}

/** Until no page holds the lock any more: one that was closed lets go a little later. */
export const letGo = (page: Page, lock: string): Promise<void> =>
  expect
    .poll(() =>
      page.evaluate(async (name) => {
        const { held = [] } = await navigator.locks.query();
        return held.some((one) => one.name === name);
      }, lock),
    )
    .toBe(false);

/** Until a newer version of the service worker is there: being installed, or waiting to be started. */
export const newerIs = (page: Page, where: 'installing' | 'waiting', is: boolean): Promise<void> =>
  expect
    .poll(() =>
      page.evaluate(async (at) => Boolean((await navigator.serviceWorker.getRegistration())?.[at]), where),
    )
    .toBe(is);

/** Waits until the service worker has everything and serves the page. */
export async function readyOffline(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((done) =>
      navigator.serviceWorker.addEventListener('controllerchange', done, { once: true }),
    );
  });
}

/** The sample, with everything on the phone: the network may go. */
export async function sampleOnPhone(page: Page, url?: string): Promise<void> {
  await openSample(page, url);
  await readyOffline(page);
}

/** The sample, with no network from here on. */
export async function openSampleOffline(page: Page): Promise<void> {
  await sampleOnPhone(page);
  await page.context().setOffline(true);
}

/** Lets milliseconds go by on the page's own clock, the one its guards against touches read: right on any machine. */
export function goBy(page: Page, milliseconds: number): Promise<void> {
  return page.evaluate(async (wait) => {
    const until = performance.now() + wait;
    for (let left = wait; left > 0; left = until - performance.now())
      await new Promise((done) => setTimeout(done, left));
  }, milliseconds);
}

/**
 * Puts the clock forward that the page's guards against touches read, and waits for a frame: no test waits out in
 * earnest what only those guards are about.
 */
function clockForward(page: Page, milliseconds: number): Promise<void> {
  return page.evaluate(async (by) => {
    const clock: Performance & { ahead?: number } = performance;
    if (clock.ahead === undefined) {
      const now = performance.now.bind(performance);
      clock.ahead = 0;
      clock.now = () => now() + (clock.ahead ?? 0);
    }
    clock.ahead += by;
    // a page behind another draws no frames
    await new Promise((done) => {
      requestAnimationFrame(done);
      setTimeout(done, 50);
    });
  }, milliseconds);
}

/** A second touch on the control touched last is no glove bounce any more. */
export const pastBounce = (page: Page): Promise<void> => clockForward(page, bounce);
/** The same on the keys of a pad. */
export const pastQuickBounce = (page: Page): Promise<void> => clockForward(page, quickBounce);

/** Until what stands has been painted, and what the page does right after painting is done. */
export function painted(page: Page): Promise<void> {
  return page.evaluate(async () => {
    for (let k = 0; k < 2; k += 1) await new Promise((done) => requestAnimationFrame(done));
    await new Promise((done) => setTimeout(done));
  });
}

/** Presses calculator keys by name, one tap each; returns how many taps that was. */
export async function keys(page: Page, names: readonly string[]): Promise<number> {
  for (const name of names) {
    await page.getByRole('button', { name, exact: true }).click();
    await pastQuickBounce(page);
  }
  return names.length;
}

/** A figure as a blank speaks it: `5 5/8` is “5 and 5/8”. */
const spoken = (figure: string): string => figure.replace(' ', ' and ');

export const blankOf = (page: Page, label: string | RegExp): Locator =>
  page.locator('main').getByRole('button', { name: label }).first();

const opened = new WeakMap<Page, string>();

/** Opens the panel of a blank; of the blank opened last only once that is no glove bounce. */
async function openBlank(page: Page, label: string | RegExp): Promise<void> {
  if (opened.get(page) === `${label}`) await pastBounce(page);
  opened.set(page, `${label}`);
  await blankOf(page, label).click();
}

/** Opens a blank and keys a figure in, by the docked keys. `5 5/8` is digits then the fraction. */
export async function keyIn(page: Page, label: string | RegExp, figure: string): Promise<void> {
  await openBlank(page, label);
  const dock = page.getByRole('dialog');
  const [whole = '', fraction] =
    figure.includes('/') && !figure.includes(' ') ? ['', figure] : figure.split(' ');
  for (const digit of whole) {
    await dock.getByRole('button', { name: digit, exact: true }).click();
    await pastQuickBounce(page);
  }
  if (fraction) await dock.getByRole('button', { name: fraction, exact: true }).click();
  await dock.getByRole('button', { name: 'Done' }).click();
  await expect(dock).toBeHidden();
}

/** Fills a blank by the docked keys: done when the figure stands in it, not before. */
export async function fillBlank(page: Page, label: string | RegExp, figure: string): Promise<void> {
  await keyIn(page, label, figure);
  await expect(blankOf(page, label)).toContainText(spoken(figure));
}

/** Types a figure into the panel that has just been opened. */
export async function typed(page: Page, figure: string): Promise<void> {
  const dock = page.getByRole('dialog');
  await expect(dock).toBeFocused();
  await dock.getByLabel('or typed').fill(figure);
  await page.keyboard.press('Enter');
  await expect(dock).toBeHidden();
}

/** Fills a blank by typing: done when the figure stands in it, not before. */
export async function typeInto(page: Page, label: string | RegExp, figure: string): Promise<void> {
  await openBlank(page, label);
  await typed(page, figure);
  await expect(blankOf(page, label)).toContainText(spoken(figure));
}

/** Takes one of a list: done when it stands in the blank. */
export async function choose(page: Page, blank: string | RegExp, choice: string): Promise<void> {
  await blankOf(page, blank).click();
  await page.getByRole('dialog').getByRole('button', { name: choice }).click();
  await expect(page.getByRole('dialog')).toBeHidden();
  await expect(blankOf(page, blank)).toContainText(choice);
}

/** The figure that stands at the saw, as it is spoken. */
export const standing = (page: Page) => page.locator('.giant .sr').first();

/** What is ticked of the setting or step in hand. */
export const ticksHere = (page: Page) => page.locator('.saw [role="checkbox"][aria-checked="true"]');

/** Takes the change of stack, and says of what comes first that it is done: then the setting can be cut. */
export async function makeReady(page: Page): Promise<void> {
  const set = page.getByRole('button', { name: /^(It is set|Set and tested)/ });
  const bar = page.locator('.knuckle .main');
  await expect(bar).toBeVisible();
  if (await set.isVisible()) await set.click();
  await expect(set).toBeHidden();
  const done = page.getByRole('button', { name: /done already$/ });
  while ((await done.count()) > 0) {
    // one said done may take others with it
    await done
      .first()
      .click({ timeout: 2000 })
      .catch(() => undefined);
    await pastBounce(page);
  }
}

/** Makes the shell case ready to be grooved, as a hand would at the machine; then to its settings in Marks. */
export async function readySettings(page: Page): Promise<void> {
  await page.goto('./#/saw/shellcase');
  await makeReady(page);
  await page.goto('./#/stops/shellcase');
  await expect(page.locator('.tick[role="checkbox"]')).toHaveCount(5);
}

/** Cuts what the big bar says is next. */
export async function cutNext(page: Page): Promise<void> {
  const bar = page.locator('.knuckle .main');
  await expect(bar).toContainText('cut');
  const before = await ticksHere(page).count();
  await bar.click();
  await expect(ticksHere(page)).toHaveCount(before + 1);
  await pastBounce(page);
}

/** To the next setting of the run, by the big bar. */
export async function nextSetting(page: Page): Promise<void> {
  await page
    .locator('.knuckle')
    .getByRole('button', { name: /^Next: / })
    .click();
  await pastBounce(page);
}

/** A picture for people to look at, where they are asked for: they take a while. */
export async function shot(page: Page, name: string): Promise<void> {
  if (process.env.KNIFELINE_SHOTS) await page.screenshot({ path: `e2e/shots/${name}.png` });
}
