import { type BrowserContext, expect, type Locator, type Page, test } from '@playwright/test';
import { openSample, pastBounce, typed } from './app';
import { noRoom, roomAgain, slowStorage, storageTakes } from './poor-storage';

// each part by itself: whoever is free takes the next
test.describe.configure({ mode: 'parallel' });

/** How many acts. */
const many = Number(process.env.KNIFELINE_HANDS ?? (process.env.KNIFELINE_NIGHTLY ? 10_000 : 100));
const seed = Number(process.env.KNIFELINE_SEED ?? 1 + (Date.now() % 1_000_000));

/** Numbers from 0 to under 1, the same for the same seed. */
function dice(from: number): () => number {
  let state = from;
  return () => {
    state = (state * 1_664_525 + 1_013_904_223) % 4_294_967_296;
    return state / 4_294_967_296;
  };
}

/** One thing a hand can do: `key` names what it changes, `value` what it is to be then. */
type Asked = { readonly key: string; readonly value: string };

type Hand = {
  readonly page: Page;
  /** Of the boxes on a screen one hand takes the even, the other the odd: no two hands change one thing. */
  readonly parity: number;
  /** Asked for, and the page has not said yet that all of it is kept. */
  waiting: Asked[];
  full: boolean;
  /** The control it touched last. */
  touched?: string;
};

/** What may be shown of each thing: what was acknowledged last, or what was asked for since. */
type Ledger = Map<string, Set<string>>;

const none = '';
const another = (page: Page) => page.getByRole('button', { name: /^(First|Another) reading$/ });
const alert = (page: Page) => page.getByRole('alert');
const boxes = (page: Page) => page.locator('.rows .tick');

async function at(page: Page, hash: string, ready: Locator): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
  await expect(ready.first()).toBeVisible();
}

const sheet = (page: Page) => at(page, '#/stock/sheetb', another(page));
const figure = (page: Page) => at(page, '#/figure', page.locator('.calc, .typing'));
const marks = (page: Page) => at(page, '#/marks/case~left', boxes(page));

/** Nothing is on its way to storage. */
const quiet = (page: Page) => expect(page.locator('.saving-line')).toHaveCount(0, { timeout: 60_000 });

/** Waits until nothing is on its way; what no line calls not saved is acknowledged. */
async function settle(hand: Hand, ledger: Ledger): Promise<void> {
  await quiet(hand.page);
  if (await alert(hand.page).isVisible()) return;
  for (const { key, value } of hand.waiting) ledger.set(key, new Set([value]));
  hand.waiting = [];
}

async function makeRoom(hand: Hand): Promise<void> {
  if (hand.full) await roomAgain(hand.page);
  hand.full = false;
  await storageTakes(hand.page, 0);
  while (await alert(hand.page).isVisible()) {
    await alert(hand.page).getByRole('button', { name: 'Try again' }).click();
    await pastBounce(hand.page);
    await quiet(hand.page);
  }
}

type Act = (hand: Hand, no: number) => Promise<Asked | undefined>;

/** A touch on the control touched last waits until it is no glove bounce. */
async function ready(hand: Hand, name: string): Promise<void> {
  if (hand.touched === name) await pastBounce(hand.page);
  hand.touched = name;
}

const reading: Act = async (hand, no) => {
  const { page } = hand;
  await sheet(page);
  await ready(hand, 'another');
  await another(page).click();
  await typed(page, `0.${500 + no}`);
  return { key: `reading ${500 + no}`, value: 'kept' };
};

/** The strip takes sixty lines. */
const mostLines = 50;

/** Not on a phone without room: there the sum that is typed leaves the screen at each key, and is named. */
const line: Act = async ({ page, full }, no) => {
  if (no > mostLines || full) return undefined;
  await figure(page);
  const field = page.getByLabel('Type it as you would write it');
  if (!(await field.isVisible())) await page.getByRole('button', { name: 'Type', exact: true }).click();
  await field.fill(`${500 + no}`);
  await page.keyboard.press('Enter');
  await expect(field).toHaveValue('');
  return { key: `line ${500 + no}`, value: 'kept' };
};

/** A box shows what is kept: it is tapped again once it shows what the tap before has done. */
const tick: Act = async (hand, no) => {
  const { page, parity, full, waiting } = hand;
  await marks(page);
  const nth = 2 * (no % 12) + parity;
  const box = boxes(page).nth(nth);
  if (waiting.some(({ key }) => key === `tick ${nth}`)) {
    if (full) return undefined;
    await quiet(page);
  }
  await ready(hand, `tick ${nth}`);
  const was = await box.getAttribute('aria-checked');
  await box.click();
  return { key: `tick ${nth}`, value: was === 'true' ? none : 'kept' };
};

const acts: readonly Act[] = [reading, reading, tick, tick, line];

/** What a start shows of all that. */
async function shownAt(page: Page): Promise<readonly string[]> {
  await sheet(page);
  const readings = await page.locator('.readings .reading-big').allTextContents();
  await marks(page);
  const ticks = await boxes(page).evaluateAll((all) => all.map((box) => box.getAttribute('aria-checked')));
  await figure(page);
  await page.getByRole('button', { name: 'Strip', exact: true }).click();
  await expect(page.locator('.strippage')).toBeVisible();
  const lines = await page.locator('.rl .sr').allTextContents();
  return [
    ...readings.map((size) => `reading ${Math.round(Number(size) * 1000)}`),
    ...ticks.flatMap((on, nth) => (on === 'true' ? [`tick ${nth}`] : [])),
    ...lines.map((text) => `line ${Number.parseInt(text, 10)}`),
  ];
}

/** One of the acts at random, or something that befalls the phone. */
async function step(hand: Hand, ledger: Ledger, roll: () => number): Promise<void> {
  const { page } = hand;
  const what = roll();
  if (what < 0.75) {
    const made = await acts[Math.floor(roll() * acts.length)]?.(hand, ledger.size + 1);
    if (!made) return;
    const may = ledger.get(made.key) ?? new Set([none]);
    ledger.set(made.key, may.add(made.value));
    hand.waiting.push(made);
    if (roll() < 0.5) await settle(hand, ledger);
  } else if (what < 0.83) {
    await storageTakes(page, waits[Math.floor(roll() * waits.length)] ?? 0);
  } else if (what < 0.91 && !hand.full) {
    await settle(hand, ledger);
    await noRoom(page);
    hand.full = true;
  } else if (hand.full) {
    await makeRoom(hand);
    await settle(hand, ledger);
  } else {
    // ended by force: what was not acknowledged may be kept or not
    hand.waiting = [];
    await page.goto('about:blank');
    await page.goto('./#/stock/sheetb');
    await expect(another(page)).toBeVisible();
  }
}

/** Storage takes so long to say that it has kept something. Milliseconds. */
const waits = process.env.KNIFELINE_NIGHTLY ? [0, 0, 300, 1500] : [0, 0, 0, 300, 700];

/**
 * Readings, marks ticked and unticked and lines of the strip on two pages, storage slow, full or ended by force, at
 * random.
 *
 * @returns how many things were acknowledged; and each that stands at the end neither as it was acknowledged last nor
 * as it was asked for since
 */
async function hands(context: BrowserContext, roll: () => number, count: number) {
  const pages = [await context.newPage(), await context.newPage()];
  for (const page of pages) await slowStorage(page);
  const [first] = pages;
  if (!first) throw new Error('no page');
  await openSample(first);
  const both = pages.map((page, parity): Hand => ({ page, parity, waiting: [], full: false }));
  for (const { page } of both) {
    await page.goto('./#/stock/sheetb');
    await expect(another(page)).toBeVisible();
  }
  const ledger: Ledger = new Map();
  for (let k = 0; k < count; k += 1) {
    const hand = both[Math.floor(roll() * 2)];
    if (!hand) throw new Error('no hand');
    await hand.page.bringToFront();
    await step(hand, ledger, roll);
  }
  for (const hand of both) {
    await hand.page.bringToFront();
    await makeRoom(hand);
    await settle(hand, ledger);
  }
  await first.goto('about:blank');
  await first.goto('./#/');
  await expect(first.locator('.home-head')).toBeVisible();
  const there = await shownAt(first);
  for (const { page } of both) await page.close();
  return {
    acknowledged: [...ledger.values()].filter((may) => may.size === 1).length,
    lost: [...ledger].flatMap(([key, may]) => (may.has(there.includes(key) ? 'kept' : none) ? [] : [key])),
    strange: there.filter((key) => !ledger.has(key)),
  };
}

/** One sheet has room for no more on the page; more acts are made on more phones. */
const atOnce = 75;

const parts = Array.from({ length: Math.ceil(many / atOnce) }, (_, k) => k);
for (const part of parts)
  test(`two hands at random, part ${part + 1}: nothing acknowledged is lost, nothing shown that was not kept`, async ({
    context,
  }) => {
    const count = Math.min(atOnce, many - part * atOnce);
    test.setTimeout(120_000 + count * 8_000);
    const { acknowledged, lost, strange } = await hands(context, dice(seed + part), count);
    expect([lost, strange], `KNIFELINE_HANDS=${many} KNIFELINE_SEED=${seed}`).toEqual([[], []]);
    expect(acknowledged).toBeGreaterThan(count / 10);
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
      if (this.name !== 'entries' || location.hash === '' || location.hash === '#/')
        return own.apply(this, args);
      seen += 1;
      return seen % 3 === 0 ? (this.count() as IDBRequest<IDBValidKey>) : own.apply(this, args);
    };
  });
  const { lost } = await hands(context, dice(7), 30);
  expect(lost.length).toBeGreaterThan(0);
});
