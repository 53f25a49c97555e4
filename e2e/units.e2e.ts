import { expect, type Page, test } from '@playwright/test';
import { openSample, painted, shot } from './app';
import { beginCase, marksTo, words } from './in-units';
import { screens } from './screens';

// alike: whoever is free takes the next
test.describe.configure({ mode: 'parallel' });

/** Screens that are about units themselves: the marks of Figure are its own, cautions are of machines in general. */
const apart = ['figure', 'phone', 'before', 'before-saw', 'jobs', 'import', 'handover', 'takein'];

const oddFractions = (text: string): readonly string[] =>
  [...text.matchAll(/(\d+)\/(\d+)/g)]
    .filter(([, , d]) => ![2, 4, 8, 16, 32, 64].includes(Number(d)))
    .map(([all]) => all);

for (const tape of ['1/16 in', '1/64 in', '1 mm', '1/2 mm'])
  test(`marks to ${tape}: no screen has a fraction that no tape has, nor another unit`, async ({ page }) => {
    test.setTimeout(300_000);
    await openSample(page);
    await marksTo(page, tape);
    for (const { name, hash, ready } of screens.filter((screen) => !apart.includes(screen.name))) {
      // keys of setups follow their figures: what the sample has in inches is elsewhere in millimetres
      if (tape.includes('mm') && ['setup', 'stack'].includes(name)) continue;
      await page.goto(`./${hash}`);
      await page.locator(ready).first().waitFor();
      await painted(page);
      const text = await words(page);
      expect.soft(oddFractions(text), `${name}: fractions of a tape alone`).toEqual([]);
      if (!tape.includes('mm')) continue;
      const inches = text.replaceAll('1/2 mm', '').match(/.{0,40}(\d\/\d|\binch(es)?\b|\d ?in\b).{0,20}/g);
      expect.soft(inches, `${name}: no inch`).toBeNull();
      const pounds = text.match(/.{0,40}(\blb\b|\bpounds?\b|\bpsi\b|°F).{0,20}/g);
      expect.soft(pounds, `${name}: no pound`).toBeNull();
    }
  });

const pad = (page: Page) => page.getByRole('dialog');
const field = (page: Page) => pad(page).getByRole('textbox');

test('in a job in millimetres pad and blank say so before a key is pressed, and the way on is named', async ({
  page,
}) => {
  await beginCase(page);
  await marksTo(page, '1 mm');
  await page.getByRole('button', { name: /^Case/ }).first().click();

  const width = page.locator('main').getByRole('button', { name: /^Outside width/ });
  await expect(width).toContainText('mm');
  await width.click();
  await expect(pad(page).locator('.un')).toHaveText('mm');
  await expect(pad(page).getByRole('button', { name: 'Next: outside height' })).toBeVisible();
  await shot(page, 'pad-mm');
});

test('what cannot be meant is asked about or refused by name, and nothing typed is lost', async ({
  page,
}) => {
  await beginCase(page);
  const main = page.locator('main');
  const ask = async (label: RegExp, figure: string) => {
    await main.getByRole('button', { name: label }).first().click();
    await field(page).fill(figure);
    await pad(page).getByRole('button', { name: 'Done' }).click();
    return pad(page).getByRole('alert');
  };

  // 100,000 wide in either unit: refused, with the limit; it stays half done in its blank
  await expect(await ask(/^Outside width/, '100000')).toContainText(
    '100000 inches? A length is 1/2 to 192 inches.',
  );
  await shot(page, 'pad-refused');
  await page.keyboard.press('Escape');
  await expect(main.getByRole('button', { name: /^Outside width/ })).toContainText('100000');

  // three behind a comma may be a thousand; here it can only be a decimal, and is asked about all the same
  await main.getByRole('button', { name: /^Outside width/ }).click();
  await field(page).fill('1,200');
  await pad(page).getByRole('button', { name: 'Done' }).click();
  await expect(pad(page).getByRole('button', { name: /^It is/ })).toHaveText(['It is 1.200 in']);

  // 762 is 762 mm, perhaps: one tap
  await field(page).fill('762');
  await pad(page).getByRole('button', { name: 'It is 762 mm, 30.000 in' }).click();
  await expect(main.getByRole('button', { name: /^Outside width/ })).toContainText('30');

  await expect(await ask(/^Clearance in the dadoes/, '3')).toContainText(
    'A clearance is 1/16 inches at most.',
  );
  await page.keyboard.press('Escape');
});

test('while a figure is not taken, what rests on it stays as it last was, greyed, and comes back', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/case/case');
  const main = page.locator('main');
  const drawing = main.locator('.casedraw');
  const sums = main.getByRole('region', { name: 'Adds back up' });
  const width = main.getByRole('button', { name: /^Outside width/ });
  await expect(drawing).toHaveCSS('opacity', '1');
  const high = async () => (await drawing.boundingBox())?.height;
  const before = { high: await high(), said: await sums.textContent() };

  await width.click();
  await field(page).fill('100000');
  await expect(pad(page).getByRole('alert')).toBeVisible();
  for (const rests of [drawing, sums]) await expect(rests).toHaveCSS('opacity', '0.55');
  expect(await sums.textContent()).toBe(before.said);
  expect(await high()).toBe(before.high);

  // left half done it is still not taken
  await page.keyboard.press('Escape');
  await expect(pad(page)).toBeHidden();
  for (const rests of [drawing, sums]) await expect(rests).toHaveCSS('opacity', '0.55');
  await shot(page, 'greyed');

  await page.getByRole('button', { name: 'Leave it out' }).click();
  for (const rests of [drawing, sums]) await expect(rests).toHaveCSS('opacity', '1');
  expect(await high()).toBe(before.high);
});

test('the pad of Figure says the unit in hand, before a key is pressed and after', async ({ page }) => {
  await page.goto('./#/figure');
  const sum = page.locator('.expr');
  await expect(sum).toHaveText('inches');
  await page.getByRole('button', { name: '7', exact: true }).click();
  await expect(sum).toHaveText(/^7.*inches$/);
  await page.getByRole('button', { name: 'mm', exact: true }).click();
  await expect(sum).toHaveText('7 mm');
  await shot(page, 'figure-unit');
});
