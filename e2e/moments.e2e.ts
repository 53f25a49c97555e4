import { expect, type Page, test } from '@playwright/test';
import { cutNext, makeReady, openSample, pastBounce, standing, ticksHere, typeInto } from './app';
import { type Hand, handOn } from './hand';

/** A moment in the shop: what is wanted, and in how many taps a hand must have it, or pencil and scrap are quicker. */
type Moment = { readonly no: number; readonly what: string; readonly allowed: number };

const moments: readonly Moment[] = [
  { no: 1, what: 'less two thicknesses, halved, at a mark', allowed: 12 },
  { no: 2, what: 'the same mark from the other end', allowed: 1 },
  { no: 3, what: 'next groove: its figure, done', allowed: 1 },
  { no: 4, what: 'test cut reads so, wanted so: how much, which way', allowed: 8 },
  { no: 5, what: 'stack for this sheet and its clearance', allowed: 2 },
  { no: 6, what: 'the sheet is thin: what changes', allowed: 6 },
  { no: 7, what: 'diagonals: push how much, till what', allowed: 10 },
  { no: 8, what: 'third front on: gap for the rest, shims', allowed: 6 },
  { no: 9, what: 'may I move this fence?', allowed: 1 },
  { no: 10, what: 'spoiled: what again, at which figures, from which offcut', allowed: 2 },
];

const taken = new Map<number, number>();

/** One moment: the sample job is opened and gone to, uncounted; then only the hand of a user, counted. */
function moment(
  no: number,
  ways: { readonly at: string; readonly before?: (page: Page) => Promise<void> },
  does: (page: Page, hand: Hand) => Promise<void>,
): void {
  const own = moments.find((m) => m.no === no);
  if (!own) throw new Error(`no moment ${no}`);
  test(`moment ${no}: ${own.what}, in ${own.allowed}`, async ({ page }) => {
    await openSample(page);
    await page.goto(`./${ways.at}`);
    await ways.before?.(page);
    const hand = handOn(page);
    await does(page, hand);
    taken.set(no, hand.taps());
    expect(hand.taps()).toBeLessThanOrEqual(own.allowed);
  });
}

test.afterAll(() => {
  const rows = moments.flatMap(({ no, what, allowed }) =>
    taken.has(no)
      ? [`${`${no}`.padStart(2)}  ${what.padEnd(60)}allowed ${allowed}, taken ${taken.get(no)}`]
      : [],
  );
  console.log(['', ...rows].join('\n'));
});

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first();
const main = (page: Page, name: string | RegExp) =>
  page.locator('main').getByRole('button', { name }).first();
const dock = (page: Page, name: string | RegExp) => page.getByRole('dialog').getByRole('button', { name });

// (38 3/8 − 23/32 − 23/32) ÷ 2 = 36 15/16 ÷ 2 = 18 15/32
moment(1, { at: '#/figure' }, async (page, hand) => {
  await hand.keys(['3', '8', '3/8']);
  for (const _ of ['left', 'right']) {
    await hand.keys(['minus', 't, a measured sheet']);
    await hand.tap(dock(page, /Sheet A/));
  }
  await hand.keys(['divided by', '2', 'equals']);
  await expect(page.locator('.answer .sr').first()).toHaveText('18 and 15/32 inches');
});

// the bottom's dado 4 1/8 up a side of 64 1/4: 60 1/8 from the top
moment(2, { at: '#/saw/case~left', before: itIsSet }, async (page) => {
  await expect(standing(page)).toContainText('4 and 1/8');
  await expect(page.locator('.seconds p').filter({ hasText: 'from the other end' })).toContainText('60 1/8');
});

moment(3, { at: '#/saw/shellcase', before: makeReady }, async (page, hand) => {
  await hand.tap(page.locator('.knuckle .main'));
  await expect(ticksHere(page)).toHaveCount(1);
});

moment(4, { at: '#/stack/stop~c13d32~h3d16' }, async (page, hand) => {
  await hand.tap(main(page, /It measures/));
  await hand.figure('.41');
  await hand.tap(dock(page, 'Done'));
  await expect(page.locator('.verdict')).toHaveText('Take from the stack: 0.004.');
});

moment(5, { at: '#/cuts', before: toDado }, async (page, hand) => {
  await hand.tap(button(page, 'Build the stack'));
  const fewest = page.getByRole('region', { name: 'Between the outers' });
  await expect(fewest).toContainText('cuts 0.');
  await hand.tap(fewest.getByRole('button', { name: 'This one is on the arbor' }));
});

// sheet B was planned 23/32 and reads 18 mm: in use at once, and what that changed is listed
moment(6, { at: '#/' }, async (page, hand) => {
  await hand.tap(button(page, /Sheet B/));
  await hand.tap(button(page, 'First reading'));
  await hand.figure('18 mm');
  await hand.tap(dock(page, 'Done'));
  const changed = page.getByRole('status', { name: 'What the reading changed' });
  await expect(changed.locator('.changes li').first()).toBeInViewport();
});

// 38 3/8 × 64 1/4 is known: 74 31/32 and 74 23/32 push the top a quarter, until each reads 74 27/32
moment(7, { at: '#/built/case' }, async (page, hand) => {
  const diagonals = page.getByRole('region', { name: 'Diagonals' });
  await hand.tap(diagonals.getByRole('button', { name: /low left to high right/ }));
  await hand.figure('74 15/16 strong');
  await hand.tap(dock(page, /^Next/));
  await hand.figure('74 11/16 strong');
  const pushed = diagonals.locator('.pushed .marked');
  await expect(pushed.nth(0)).toContainText('1/4');
  await expect(pushed.nth(1)).toContainText('74 and 27/32');
});

moment(8, { at: '#/opening/drawers', before: twoFrontsOn }, async (page, hand) => {
  await hand.tap(main(page, /^Left (?!upright)/));
  await hand.figure('15 1/2');
  await hand.tap(dock(page, 'Done'));
  await expect(page.getByText(/gaps to go/)).toBeVisible();
});

moment(9, { at: '#/setup/rip~r35d2~wtrue0edge', before: cutNext }, async (page, hand) => {
  await hand.tap(button(page, 'Leave'));
  await expect(page.locator('.lastcall')).toContainText('Last call');
});

moment(10, { at: '#/setup/rip~r35d2~wtrue0edge' }, async (page, hand) => {
  await hand.tap(button(page, 'Spoiled'));
  await hand.tap(dock(page, 'Left side'));
  await expect(page.getByRole('dialog')).toContainText('again');
});

/** The stack is on and set. */
async function itIsSet(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^(It is set|Set and tested)/ }).click();
}

/** At the setting of a dado. */
async function toDado(page: Page): Promise<void> {
  await main(page, /Stop block at/).click();
  await expect(page.getByRole('button', { name: /^(It is set|Set and tested)/ })).toBeVisible();
}

/** The opening measured, and two fronts fitted: the third is in hand. */
async function twoFrontsOn(page: Page): Promise<void> {
  for (const [where, figure] of [
    [/high, at the left/, '29 11/32'],
    [/high, at the right/, '29 9/32'],
    [/wide, in front/, '17 1/32'],
    [/wide, at the back/, '16 31/32'],
  ] as const) {
    await pastBounce(page);
    await typeInto(page, where, figure);
  }
  await page.getByRole('button', { name: 'See what this would change' }).click();
  await page.getByRole('button', { name: 'Use it for what is not cut' }).click();
  await page.getByRole('button', { name: 'Fronts', exact: true }).click();
  for (const at of ['4 29/64', '9 19/32']) {
    await pastBounce(page);
    await typeInto(page, /^Left (?!upright)/, at);
    await pastBounce(page);
    await typeInto(page, /^Right (?!upright)/, at);
    await page.getByRole('button', { name: 'Use it, next front' }).click();
  }
}
