import { expect, type Locator, type Page, test } from '@playwright/test';
import { makeReady, openSample, shot, standing } from './app';
import { keptHere } from './kept';

// alike: whoever is free takes the next
test.describe.configure({ mode: 'parallel', timeout: 480_000 });

/** By day the two that have least room. */
const sizes = [
  { name: '390', width: 390, height: 844 },
  { name: '360', width: 360, height: 640 },
  { name: 'sideways', width: 844, height: 390 },
].filter(({ name }) => name !== '390' || process.env.KNIFELINE_NIGHTLY !== undefined);

/** A line stands alone below this: it is one line then. */
const roomy = 840;

/** Inside the screen, and nothing over it: its middle and near its corners are its own. */
async function seen(what: Locator, name: string): Promise<void> {
  const off = await what.evaluate((el) => {
    const { left, top, right, bottom } = el.getBoundingClientRect();
    if (left < -0.5 || top < -0.5 || right > innerWidth + 0.5 || bottom > innerHeight + 0.5)
      return `outside: ${[left, top, right, bottom].map(Math.round)}`;
    const points = [0.04, 0.5, 0.96].flatMap((x) => [0.1, 0.5, 0.9].map((y) => [x, y] as const));
    const over = points
      .map(([x, y]) => document.elementFromPoint(left + x * (right - left), top + y * (bottom - top)))
      .find((other) => !other || !(el.contains(other) || other.contains(el)));
    return over === undefined ? '' : `under ${over?.className || over?.tagName}`;
  });
  expect.soft(off, name).toBe('');
}

/** The line is in sight, to be read and hit; figure, remainder and bar are where they were: on the screen. */
async function standsThere(page: Page, name: string): Promise<void> {
  for (const size of sizes) {
    await page.setViewportSize(size);
    const at = `${name} ${size.name}`;
    await page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
    const line = page.locator('.caution');
    await expect(line, at).toHaveCount(1);
    await seen(line, `${at}: the caution`);
    for (const part of [
      '.giant .mx',
      '.giant .rem',
      '.setting > .mx',
      '.setting .rem',
      '.cutnow .cutfig',
      '.btn.main',
    ]) {
      const shown = page.locator(`${part}:visible`).first();
      if ((await shown.count()) > 0) await seen(shown, `${at}: ${part}`);
    }
    const { high, words, letter, whole } = await line.evaluate((el) => ({
      whole: el.classList.contains('whole') || (innerHeight >= 800 && el.classList.contains('whole-high')),
      high: el.getBoundingClientRect().height,
      words: el.querySelector('span')?.getBoundingClientRect().height ?? 0,
      letter: Number.parseFloat(getComputedStyle(el).fontSize),
    }));
    expect.soft(high, `${at}: how high`).toBeGreaterThanOrEqual(47.5);
    expect.soft(letter, `${at}: letters`).toBeGreaterThanOrEqual(16);
    // a step with no figure to carry has room for all its words, at any size
    if (whole) await seen(line.locator('.more'), `${at}: the rest of the caution`);
    else if (size.height < roomy) expect.soft(words, `${at}: more than one line`).toBeLessThan(2 * letter);
    // upright, the reasons to go ahead with a step of putting up stand over it
    const reasons = page.locator('.mblocked .chip:visible');
    if (size.height > size.width && (await page.locator('.whole-high').count()) > 0)
      for (const reason of await reasons.all()) await seen(reason, `${at}: a reason to go ahead`);
    const scrolls = await page.evaluate(() => {
      const saw = document.querySelector('.saw');
      return saw ? saw.scrollHeight - saw.clientHeight : 0;
    });
    expect.soft(scrolls, `${at}: the saw scrolls by`).toBeLessThanOrEqual(0);
    await shot(page, `caution-${name}-${size.name}`);
  }
}

/** All the words of the line, those not shown among them. */
const wordsOf = async (page: Page): Promise<string> => (await page.locator('.caution').textContent()) ?? '';

/** A tap opens the page at its part; Back comes back to what stood there. */
async function leadsThereAndBack(page: Page): Promise<void> {
  const [address, says] = [page.url(), await wordsOf(page)];
  await page.locator('.caution').click();
  await expect(page.getByRole('heading', { name: 'Before you cut' })).toBeVisible();
  const tapped = page.locator('.tapped');
  await expect(tapped).toBeInViewport({ ratio: 1 });
  await expect(tapped).toHaveText(says);
  await page.getByRole('button', { name: 'Back' }).click();
  await expect(page.locator('.caution')).toBeVisible();
  expect(page.url()).toBe(address);
}

async function typed(page: Page, figure: string): Promise<void> {
  const dock = page.getByRole('dialog');
  await dock.getByLabel('or typed').fill(figure);
  await page.keyboard.press('Enter');
  await expect(dock).toBeHidden();
}

test('at the saw, on every machine: in sight at each size, and back to the same setting', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/shop');
  for (const [field, figure] of shopFigures) {
    await page
      .getByRole('button', { name: new RegExp(field) })
      .first()
      .click();
    await typed(page, figure);
  }
  for (const [k, machine] of machines.entries()) {
    await page.goto('./#/stops/shellcase');
    if (k > 0) await taken(page, new RegExp(machines[k - 1] ?? '', 'i'), machine);
    await expect(page.locator('.caution')).toBeVisible();
    await page.getByRole('button', { name: /^To the (saw|router)/ }).click();
    await page.locator('.giant').waitFor();
    await makeReady(page);
    await page.getByRole('button', { name: 'Skip' }).click();
    await standsThere(page, `saw-${k}`);
    const before = await standing(page).textContent();
    await leadsThereAndBack(page);
    expect(await standing(page).textContent()).toBe(before);
  }
});

/** Another machine out of the list: its name stands in the row that had the one before. */
async function taken(page: Page, before: RegExp, machine: string): Promise<void> {
  await page.locator('main').getByRole('button', { name: before }).first().click();
  await page.getByRole('dialog').getByRole('button', { name: machine }).click();
  await expect(
    page
      .locator('main')
      .getByRole('button', { name: new RegExp(machine, 'i') })
      .first(),
  ).toBeVisible();
}

const machines = [
  'sled with a stop',
  'table-saw fence',
  'router and guide',
  'circular saw and guide',
  'one stop and spacers',
  'fence pencil marks',
];

const shopFigures = [
  ['Single blade', '1/8'],
  ['Router base', '3'],
  ['Router bit', '3/8'],
  ['guide on the keep piece', '1 1/2'],
  ['guide on the waste', '4 3/4'],
  ['Kerf of the circular saw', '3/32'],
] as const;

test('in Cuts, on the card of every machine and step: in sight at each size, and back to the card', async ({
  page: first,
  context,
}) => {
  await openSample(first);
  const met = new Set<string>();
  let page = first;
  await first.goto('./#/cuts');
  const builds = first.locator('.build');
  // far rows are drawn once the browser has nothing else to do
  const allDrawn = () => expect(first.locator('main > div:empty')).toHaveCount(0);
  await builds.first().waitFor();
  await allDrawn();
  for (let k = 0; k < (await builds.count()); k++) {
    await builds.nth(k).locator('button.nextset').first().click();
    await first.locator('.knuckle').first().waitFor();
    const says = await wordsOf(first);
    if (!met.has(says)) {
      // other pages, six cards each: one turned about too often may stop drawing, and a tap then waits for ever
      if (met.size % 6 === 0) page = await context.newPage();
      met.add(says);
      await page.bringToFront();
      await page.goto(first.url());
      await expect(page.locator('.caution')).toHaveText(says);
      await standsThere(page, `card-${met.size}`);
      await leadsThereAndBack(page);
      if (met.size % 6 === 0) await page.close();
      await first.bringToFront();
    }
    await first.goto('./#/cuts');
    await builds.first().waitFor();
    await allDrawn();
  }
  // rip, crosscut, sled, fence, rabbet, dovetails, sticks, jig, and the eighteen steps of the bench
  expect(met.size).toBe(26);
});

test('where sheets are cut, at the stack, and one number at a time: in sight at each size, and back', async ({
  page,
}) => {
  await openSample(page);
  for (const [name, hash] of cards) {
    await page.goto(`./${hash}`);
    await page.locator('.caution').waitFor();
    await standsThere(page, name);
    await leadsThereAndBack(page);
  }
});

const cards = [
  ['sheet', '#/layout/planside1'],
  ['stick', '#/layout/planmaple1'],
  ['stack', '#/stack/stop~c13d32~h3d16'],
  ['one-mark', '#/one/drawers/marks'],
  ['one-stick', '#/one/drawers/sticks/d2'],
  ['one-fit', '#/one/drawers/fit'],
] as const;

test('Before you cut says first what comes first; the phone’s own back and a start anew come back to the setting', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/phone');
  await page.getByRole('button', { name: 'Before you cut' }).click();
  await expect(page.locator('.first-words')).toContainText(
    'The tool’s own manual, local codes and licensed practice come first',
  );
  await page.getByRole('button', { name: 'Back' }).click();
  await expect(page.getByRole('heading', { name: 'This phone' })).toBeVisible();

  await page.goto('./#/saw/shellcase');
  await makeReady(page);
  await page.getByRole('button', { name: 'Skip' }).click();
  const [address, before] = [page.url(), await standing(page).textContent()];
  await page.locator('.caution').click();
  await expect(page.locator('.tapped')).toBeVisible();
  await page.goBack();
  expect(await standing(page).textContent()).toBe(before);

  await page.locator('.caution').click();
  await expect(page.locator('.tapped')).toBeVisible();
  await keptHere(page);
  const anew = await page.context().newPage();
  await anew.goto('./'); // as after a kill: nothing lies behind the page
  await anew.getByRole('button', { name: 'Back' }).click();
  expect(await standing(anew).textContent()).toBe(before);
  expect(anew.url()).toBe(address);
});

test('a gap that was given stands after a caution was read', async ({ page }) => {
  await openSample(page);
  await page.goto('./#/shims');
  await page.getByRole('button', { name: 'The gap' }).click();
  await typed(page, '3/16');
  await page.locator('.caution').first().click();
  await page.getByRole('button', { name: 'Back' }).click();
  await expect(page.getByRole('button', { name: /The gap/ })).toContainText('3/16');
});
