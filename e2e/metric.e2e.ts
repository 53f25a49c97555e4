import { expect, type Page, test } from '@playwright/test';
import { choose, pastBounce, shot, ticksHere } from './app';
import { beginCase, marksTo, words } from './in-units';

const main = (page: Page) => page.locator('main');
const pad = (page: Page) => page.getByRole('dialog');

/** Types a figure into the blank: its pad says millimetres, and the blank holds it in them. */
async function fill(page: Page, blank: RegExp | string, figure: string): Promise<void> {
  await main(page).getByRole('button', { name: blank }).first().click();
  await typeIn(page, figure);
}

async function typeIn(page: Page, figure: string): Promise<void> {
  await expect(pad(page).locator('.un'), `the pad for ${figure}`).toHaveText('mm');
  await pad(page).getByRole('textbox').fill(figure);
  await pad(page).getByRole('button', { name: 'Done' }).click();
  await expect(pad(page)).toBeHidden();
}

/** No inch and no fraction on the screen, but of a part made elsewhere, in the unit it has. */
async function inMillimetres(page: Page, screen: string): Promise<void> {
  const text = (await words(page)).replaceAll('1/2 mm', '');
  const inches = text.match(/.{0,40}(\d\/\d|\binch(es)?\b|\d ?in\b).{0,20}/g);
  expect.soft(inches, `${screen}: no inch, no fraction`).toBeNull();
}

for (const tape of ['1 mm', '1/2 mm'])
  test(`a job in millimetres, marks to ${tape}, from an empty phone to its list of what to buy`, async ({
    page,
  }) => {
    test.setTimeout(300_000);
    await beginCase(page);
    await marksTo(page, tape);
    await shopFigures(page);
    await page.goto('./#/');
    await page.getByRole('button', { name: /^Case/ }).first().click();
    await caseOf18(page);
    await drawers(page, tape);
    await toItsEnd(page);
  });

/** Kerf, cutters, screws. */
async function shopFigures(page: Page): Promise<void> {
  await page.goto('./#/shop');
  await fill(page, /^Single blade/, '3');
  await fill(page, /^Router bit/, '6');
  await fill(page, /^Kerf of the circular saw/, '2.5');
  await main(page).getByRole('button', { name: '+ screw' }).click();
  await typeIn(page, '50');
  await inMillimetres(page, 'shop');
}

async function caseOf18(page: Page): Promise<void> {
  await fill(page, /^Outside width/, '900');
  await fill(page, /^Outside height/, '1200');
  await fill(page, /^Depth, without/, '400');
  await fill(page, /^Floor to the underside/, '80');
  await main(page).getByRole('button', { name: 'Measure a sheet' }).click();
  for (const reading of ['18', '18.1', '17.9']) await fill(page, /^(First|Another) reading/, reading);
  await inMillimetres(page, 'sheet');
  await page.getByRole('button', { name: 'Back to case' }).click();
  await main(page).getByRole('button', { name: '+ A fixed shelf' }).click();
  await fill(page, /^Case bottom to the shelf/, '400');
  await main(page).getByRole('button', { name: '+ A back' }).click();
  await main(page).getByRole('button', { name: 'Measure a sheet' }).click();
  await fill(page, /^First reading/, '6');
  await page.getByRole('button', { name: 'Back to case' }).click();
  await expect(main(page).locator('.casedraw')).toBeVisible();
  await inMillimetres(page, 'case');
  await shot(page, 'metric-case');
}

/** Drawers on the bottom, under the shelf; slides of half an inch keep it, beside their millimetres. */
async function drawers(page: Page, tape: string): Promise<void> {
  await page.goto('./#/');
  await page.getByRole('button', { name: 'New drawers' }).click();
  await choose(page, /What the drawers stand on/, 'the bottom');
  await inMillimetres(page, 'drawers, fronts');
  await page.getByRole('button', { name: 'Next: boxes and slides' }).click();
  await fill(page, /^How long the slides are/, '350');
  await fill(page, /^Room a slide needs/, '1/2"');
  await expect(main(page).getByRole('button', { name: /^Room a slide needs/ })).toContainText('12.7');
  await expect(main(page).locator('.own').last()).toHaveText('1/2 in');
  await inMillimetres(page, 'drawers, boxes');
  await shot(page, 'metric-slides');
  await pastBounce(page);
  await page.getByRole('button', { name: 'Next: wood and joints' }).click();
  for (const what of ['fronts', 'box sides', 'box fronts', 'box backs'])
    await choose(page, new RegExp(`What the ${what} are of`), 'Sheet A');
  await choose(page, /What the box bottoms are of/, 'Sheet B');
  await inMillimetres(page, 'drawers, wood');
  await pastBounce(page);
  await page.getByRole('button', { name: 'To the fronts' }).click();
  await expect(page.locator('.bankfront')).toHaveCount(4);
  await inMillimetres(page, 'fronts');
  const bank = page.url().replace(/.*fronts\//, '');
  await page.goto(`./#/boxes/${bank}`);
  await expect(page.locator('.drawerrow').first()).toBeVisible();
  // the bottom, 875.8, is marked 876: 864 between the sides, less 2 × 12.7 = 838.6, and a box goes down to its mark
  await expect(main(page)).toContainText(tape === '1 mm' ? '838 mm' : '838.5 mm');
  await inMillimetres(page, 'boxes');
  for (const at of ['opening', 'contents']) {
    await page.goto(`./#/${at}/${bank}`);
    await expect(page.locator('.bar h1')).toBeVisible();
    await inMillimetres(page, at);
  }
}

/** Parts, cuts and their print, the machine, the stack, the sheets, what to buy. */
async function toItsEnd(page: Page): Promise<void> {
  await page.goto('./#/parts');
  // 900 - 2 × 18.1 + 2 × 6 in the dadoes = 875.8; either tape has 876 nearest
  const bottom = main(page)
    .locator('.nextset')
    .filter({ hasText: /^Bottom/ });
  await expect(bottom).toContainText('876 mm');
  await inMillimetres(page, 'parts');
  await bottom.first().click();
  await expect(page.locator('.sizerow').first()).toBeVisible();
  await inMillimetres(page, 'part');

  await page.goto('./#/cuts');
  await expect(page.locator('.build').first()).toBeVisible();
  await inMillimetres(page, 'cuts');
  // what is copied out as text is what is printed
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => dispatchEvent(new Event('beforeprint'))); // as a browser says before it prints
  await expect(page.getByText(/1\. Rip fence at 400\smm/)).toBeVisible();
  await page.emulateMedia({ media: null });
  await main(page).locator('.nextset, .sect').filter({ hasText: 'Rip fence at' }).first().click();
  await expect(page.locator('.giant .sr').first()).toHaveText('400 mm');
  await inMillimetres(page, 'machine');
  await shot(page, 'metric-machine');
  await page.locator('.knuckle .main').click();
  await expect(ticksHere(page)).toHaveCount(1);

  await page.goto('./#/cuts');
  await main(page)
    .getByRole('button', { name: /Stop block at/ })
    .first()
    .click();
  await expect(page.locator('.mboth, .giant').first()).toBeVisible();
  await inMillimetres(page, 'change of stack');
  await shot(page, 'metric-change');
  await main(page).getByRole('button', { name: 'Build the stack' }).click();
  await expect(page.locator('.stackbox, .setrow').first()).toBeVisible();
  await inMillimetres(page, 'stack');

  await page.goto('./#/sheets');
  await page.getByRole('button', { name: 'Lay out' }).first().click();
  await page.getByRole('button', { name: 'Cut by this plan' }).click();
  await expect(page.getByRole('button', { name: 'Cut by this plan' })).toBeHidden();
  await pastBounce(page);
  await inMillimetres(page, 'sheets');
  await page.locator('button.thumb').first().click();
  await expect(page.locator('.cutnow')).toBeVisible();
  await inMillimetres(page, 'layout');
  await page.goto('./#/buy');
  await expect(page.locator('.buyline').first()).toBeVisible();
  await inMillimetres(page, 'buy');
  await shot(page, 'metric-buy');
}

test('a figure in the other unit is asked about, with what was perhaps meant', async ({ page }) => {
  await beginCase(page);
  const firstReading = async (figure: string) => {
    await main(page)
      .getByRole('button', { name: /^First reading/ })
      .click();
    await pad(page).getByRole('textbox').fill(figure);
    await pad(page).getByRole('button', { name: 'Done' }).click();
  };
  await page.goto('./#/');
  await page.getByRole('button', { name: 'Measure', exact: true }).click();
  await firstReading('18');
  await expect(pad(page).getByRole('alert')).toContainText('18 inches? A thickness is 1/8 to 3 inches.');
  await pad(page).getByRole('button', { name: 'It is 18 mm, 0.709 in' }).click();
  await expect(main(page)).toContainText('Reading 10.709'); // 18 ÷ 25.4 = .7087

  await marksTo(page, '1 mm');
  await page.getByRole('button', { name: 'Measure', exact: true }).click();
  await firstReading('23/32');
  // 23 × 25.4 ÷ 32 = 18.25625
  await expect(pad(page).getByRole('button', { name: /^It is/ })).toHaveText(['It is 23/32 in, 18.26 mm']);
});
