import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { openSample, pastBounce, typed } from './app';
import { noRoom, roomAgain, slowStorage, storageTakes } from './poor-storage';

/** How many acts; a nightly run does 10,000. */
const acts = Number(process.env.KNIFELINE_HANDS ?? 30);
const seed = Number(process.env.KNIFELINE_SEED ?? 1 + (Date.now() % 1_000_000));

/** Numbers from 0 to under 1, the same for the same seed. */
function dice(from: number): () => number {
  let state = from;
  return () => {
    state = (state * 1_664_525 + 1_013_904_223) % 4_294_967_296;
    return state / 4_294_967_296;
  };
}

type Hand = {
  readonly page: Page;
  /** Keyed in, and the page has not said yet that all of it is kept. */
  waiting: string[];
  full: boolean;
};

const shown = (page: Page) => page.locator('.readings .reading-big').allTextContents();
const another = (page: Page) => page.getByRole('button', { name: /^(First|Another) reading$/ });
const alert = (page: Page) => page.getByRole('alert');

async function open(page: Page): Promise<void> {
  await page.goto('./#/stock/sheetb');
  await expect(another(page)).toBeVisible();
}

/** Waits until nothing is on its way; what no line calls not saved is acknowledged. */
async function settle(hand: Hand, acknowledged: Set<string>): Promise<void> {
  await expect(hand.page.locator('.saving-line')).toHaveCount(0, { timeout: 60_000 });
  if (await alert(hand.page).isVisible()) return;
  for (const one of hand.waiting) acknowledged.add(one);
  hand.waiting = [];
}

async function makeRoom(hand: Hand): Promise<void> {
  if (hand.full) await roomAgain(hand.page);
  hand.full = false;
  await storageTakes(hand.page, 0);
  while (await alert(hand.page).isVisible()) {
    await alert(hand.page).getByRole('button', { name: 'Try again' }).click();
    await pastBounce(hand.page);
    await expect(hand.page.locator('.saving-line')).toHaveCount(0, { timeout: 60_000 });
  }
}

/**
 * Readings keyed into one sheet on two pages, storage slow, full or ended by force, at random.
 *
 * @returns what was acknowledged and is not there, and what is shown though nobody keyed it
 */
async function hands(context: BrowserContext, roll: () => number, count: number) {
  const pages = [await context.newPage(), await context.newPage()];
  for (const page of pages) await slowStorage(page);
  const [first] = pages;
  if (!first) throw new Error('no page');
  await openSample(first);
  const both: Hand[] = [];
  for (const page of pages) {
    await open(page);
    both.push({ page, waiting: [], full: false });
  }
  const acknowledged = new Set<string>();
  const keyed = new Set<string>();
  for (let k = 0; k < count; k += 1) {
    const hand = both[Math.floor(roll() * 2)];
    if (!hand) throw new Error('no hand');
    await hand.page.bringToFront();
    const what = roll();
    if (what < 0.7) {
      const size = `0.${501 + keyed.size}`;
      keyed.add(size);
      await another(hand.page).click();
      await typed(hand.page, size);
      hand.waiting.push(size);
      await pastBounce(hand.page);
      if (roll() < 0.5) await settle(hand, acknowledged);
    } else if (what < 0.8) {
      await storageTakes(hand.page, [0, 300, 1500][Math.floor(roll() * 3)] ?? 0);
    } else if (what < 0.9 && !hand.full) {
      await settle(hand, acknowledged);
      await noRoom(hand.page);
      hand.full = true;
    } else if (hand.full) {
      await makeRoom(hand);
      await settle(hand, acknowledged);
    } else {
      // ended by force: what was not acknowledged may be kept or not
      hand.waiting = [];
      await hand.page.goto('about:blank');
      await open(hand.page);
    }
  }
  for (const hand of both) {
    await hand.page.bringToFront();
    await makeRoom(hand);
    await settle(hand, acknowledged);
  }
  await first.goto('about:blank');
  await open(first);
  const there = (await shown(first)).map(Number);
  for (const { page } of both) await page.close();
  return {
    acknowledged: acknowledged.size,
    lost: [...acknowledged].filter((one) => !there.includes(Number(one))),
    strange: there.filter((one) => ![...keyed].some((size) => Number(size) === one)),
  };
}

/** One sheet has room for no more on the page; more acts are made on more phones. */
const atOnce = 400;

test('two hands at random: nothing acknowledged is lost', async ({ browser, baseURL }) => {
  test.setTimeout(60_000 + acts * 8_000);
  const roll = dice(seed);
  for (let done = 0; done < acts; done += atOnce) {
    const context = await browser.newContext({ baseURL: baseURL ?? '' });
    const count = Math.min(atOnce, acts - done);
    const { acknowledged, lost, strange } = await hands(context, roll, count);
    expect([lost, strange], `${acts} acts, KNIFELINE_SEED=${seed}`).toEqual([[], []]);
    expect(acknowledged).toBeGreaterThan(count / 10);
    await context.close();
  }
});

test('an app that acknowledges what storage did not take is caught by the same hands', async ({
  context,
}) => {
  test.setTimeout(300_000);
  // no second copy, and every third act of the log is dropped while its transaction ends well
  await context.addInitScript(() => {
    const own = IDBObjectStore.prototype.add;
    let seen = 0;
    Object.defineProperty(StorageManager.prototype, 'getDirectory', { value: undefined });
    IDBObjectStore.prototype.add = function add(this: IDBObjectStore, ...args: Parameters<typeof own>) {
      if (this.name !== 'log' || location.hash === '' || location.hash === '#/') return own.apply(this, args);
      seen += 1;
      return seen % 3 === 0 ? (this.count() as IDBRequest<IDBValidKey>) : own.apply(this, args);
    };
  });
  const { lost } = await hands(context, dice(7), 16);
  expect(lost.length).toBeGreaterThan(0);
});
