import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { painted } from './app';
import { screens } from './screens';

const sample = path.join(import.meta.dirname, '../demo-data/mineral-and-shell-cabinet.json');
const word = 'W'.repeat(120);

/** How long what a person types may be, by the last word of its path, else by that and the table it is in. */
const typed: Readonly<Record<string, number>> = {
  name: 120,
  place: 120,
  note: 120,
  'boards end': 40,
  mateName: 80,
  why: 120,
  'room what': 80,
  'room name': 80,
  lives: 120,
  failed: 120,
  said: 120,
};

/** The most of a path that a person types; undefined for any other. */
function mostAt(path: string): number | undefined {
  const [table, ...rest] = path.split('/');
  const last = rest.at(-1) ?? table ?? '';
  return typed[`${table} ${last}`] ?? typed[last];
}

/** The sample with a word that never ends in every place where a person types one. */
function longWords(): string {
  const file = JSON.parse(readFileSync(sample, 'utf8'));
  const entries = file.entries.map((entry: { readonly path?: string; readonly value?: unknown }) => {
    const most = mostAt(entry.path ?? '');
    return most !== undefined && typeof entry.value === 'string'
      ? { ...entry, value: word.slice(0, most) }
      : entry;
  });
  return JSON.stringify({ ...file, entries });
}

async function takeIn(page: Page): Promise<void> {
  await page.goto('./#/import');
  const buffer = Buffer.from(longWords());
  await page.setInputFiles('input[type=file]', { name: 'job.txt', mimeType: 'text/plain', buffer });
  await expectNarrow(page, 'import');
  await page.getByRole('button', { name: 'Take it in' }).click();
  await expect(page.locator('.home-head')).toBeVisible();
}

/** Nothing is wider than the phone, and nothing that can be tapped lies beside it. */
async function expectNarrow(page: Page, name: string): Promise<void> {
  await painted(page);
  const found = await page.evaluate(() => {
    const wide = document.documentElement.clientWidth;
    /** It lies in a row of its own that is pushed sideways. */
    const inRow = (on: Element | null): boolean =>
      on !== null &&
      on !== document.body &&
      (/auto|scroll/.test(getComputedStyle(on).overflowX) || inRow(on.parentElement));
    const taps = [...document.querySelectorAll('button, a, input')].filter((on) => {
      const { right, width } = on.getBoundingClientRect();
      return width > 0 && right > wide + 1 && !inRow(on);
    });
    return {
      beside: document.documentElement.scrollWidth - wide,
      taps: taps.map((on) => (on.getAttribute('aria-label') ?? on.textContent ?? '').slice(0, 30)),
    };
  });
  expect.soft(found, name).toEqual({ beside: 0, taps: [] });
}

/** The narrowest phone in each run, the wider one too at night. */
const widths = process.env.KNIFELINE_NIGHTLY ? [390, 360] : [360];

for (const width of widths)
  test(`a word that never ends wraps on every screen at ${width}`, async ({ page }) => {
    test.setTimeout(300_000);
    await page.setViewportSize({ width, height: 700 });
    await takeIn(page);
    for (const { name, hash, ready } of screens) {
      await page.goto(`./${hash}`);
      // the stack asks for the shop's pieces first: they come with the sample, not with a file
      await page
        .locator(name === 'stack' ? 'main' : ready)
        .first()
        .waitFor();
      await expectNarrow(page, name);
    }
    await page.goto('./#/jobs');
    await page.getByRole('button', { name: 'New job' }).click();
    await page.getByRole('textbox').fill(word);
    await expectNarrow(page, 'naming');
    await page.getByRole('button', { name: 'Done' }).click();
    await expect(page.getByRole('heading', { name: word, level: 1 })).toBeVisible();
    await expectNarrow(page, 'named');
  });

test('a family that does not fit into a name whole is left out whole', async ({ page }) => {
  const family = '👨‍👩‍👧‍👦';
  await page.goto('./#/jobs');
  await page.getByRole('button', { name: 'New job' }).click();
  const field = page.getByRole('textbox');
  await field.pressSequentially('x');
  await field.fill(`${'x'.repeat(120 - family.length)}${family}${family}`);
  await expect(field).toHaveValue(`${'x'.repeat(120 - family.length)}${family}`);
  await field.fill(`${'x'.repeat(119)}${family}`);
  await expect(field).toHaveValue('x'.repeat(119));
});
