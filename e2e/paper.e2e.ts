import { expect, type Page, test } from '@playwright/test';
import { choose, pastBounce, readyOffline, shot, typeInto } from './app';
import { fileOf } from './bench/lists.mjs';
import { withWorker } from './browser';
import { hasPoppler, linesIn, sizeOf, wordsOf } from './poppler';

test.describe.configure({ mode: 'parallel' });

/** A board of 80 in, two metres: grooves 1/4 wide from 1 3/8 on, every 2 5/8: 30 of them, the last at 77 1/2. */
const board = {
  long: 80,
  first: 1.375,
  pitch: 2.625,
  width: 0.25,
  count: 30,
};
const near = Array.from({ length: board.count }, (_, k) => (board.first + k * board.pitch) * 25.4);
const far = near.map((x) => x + board.width * 25.4);

const values = new Map<string, unknown>([
  ['name', 'A long stick'],
  ['boards/b/name', 'Upright'],
  ['boards/b/length', '80'],
  ['boards/b/across', '12'],
  ['boards/b/thickness', '3/4'],
  ['boards/b/end', 'lower end'],
  ['boards/b/runs/r/spacing', 'pitch'],
  ['boards/b/runs/r/point', 'near'],
  ['boards/b/runs/r/face', 'A'],
  ['boards/b/runs/r/first', '11/8'],
  ['boards/b/runs/r/pitch', '21/8'],
  ['boards/b/runs/r/width', '1/4'],
  ['boards/b/runs/r/depth', '1/4'],
  ['boards/b/runs/r/count', 30],
]);

async function stickPage(page: Page): Promise<void> {
  await page.goto('./#/import');
  const buffer = Buffer.from(fileOf(values));
  await page.setInputFiles('input[type=file]', { name: 'stick.json', mimeType: 'application/json', buffer });
  await page.getByRole('button', { name: 'Take it in' }).click();
  await expect(page.getByRole('heading', { name: 'A long stick' })).toBeVisible();
  await page.getByRole('link', { name: 'On paper' }).click();
  await page.getByRole('button', { name: /^Upright/ }).click();
}

async function madePdf(page: Page): Promise<string> {
  await pastBounce(page);
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Make the PDF' }).click();
  const pdf = await waiting;
  expect(pdf.suggestedFilename()).toBe('Stick, Upright.pdf');
  return pdf.path();
}

/** White at the edges of the sheet, and how far sheets lap, as the page says on its own. Millimetres. */
const papers = [
  { paper: 'Letter', wide: 215.9, high: 279.4, margin: 12.7, overlap: 19.05, pages: 9 },
  { paper: 'A4', wide: 210, high: 297, margin: 12.7, overlap: 19.05, pages: 8 },
];

for (const { paper, wide, high, margin, overlap, pages } of papers) {
  test(`two metres of stick on ${paper}, laid end to end by its crosses: every mark within 0.05 mm`, async ({
    page,
  }) => {
    test.skip(!hasPoppler, 'no other reader of PDFs here (Debian: poppler-utils)');
    await stickPage(page);
    if (paper === 'A4') await choose(page, 'Printed on', 'A4');
    const pdf = await madePdf(page);
    const size = sizeOf(pdf);
    expect(size.pages).toBe(pages);
    expect(Math.abs(size.wide - wide)).toBeLessThan(0.01);
    expect(Math.abs(size.high - high)).toBeLessThan(0.01);

    // between the X and the figures there are marks alone; crosses stand right of the band, 72 mm wide
    const marks = { x: margin + 15, wide: 2, high };
    const crosses = { x: margin + 73, wide: 2, high };
    const usable = high - 2 * margin;
    let offset = margin; // where the stick begins on the sheet in hand, as laid by the crosses
    const found: number[] = [];
    for (let sheet = 1; sheet <= pages; sheet += 1) {
      const lines = linesIn(pdf, { ...marks, page: sheet }, 'down').map((y) => y - offset);
      found.push(...lines);
      const laps = linesIn(pdf, { ...crosses, page: sheet }, 'down');
      if (sheet === pages) continue;
      const next = linesIn(pdf, { ...crosses, page: sheet + 1 }, 'down');
      const [a = 0, b = 0] = laps.slice(-2);
      expect(Math.abs(b - a - overlap)).toBeLessThan(0.05);
      expect(Math.abs((next[1] ?? 0) - (next[0] ?? 0) - overlap)).toBeLessThan(0.05);
      // line a of the next sheet lies on line a of this one
      offset -= a - (next[0] ?? 0);
      expect(Math.abs(a - (high - margin - overlap))).toBeLessThan(0.05);
    }
    expect(usable).toBeGreaterThan(0);
    const wanted = [0, ...near, ...far, board.long * 25.4];
    for (const x of wanted) {
      const off = Math.min(...found.map((y) => Math.abs(y - x)));
      expect(off, `the mark at ${x} mm`).toBeLessThan(0.05);
    }
    // and nothing else is drawn there
    for (const y of found) expect(Math.min(...wanted.map((x) => Math.abs(y - x)))).toBeLessThan(0.05);
  });
}

test('what stands on the sheets reads as the app says it, and the bars are what they say', async ({
  page,
}) => {
  test.skip(!hasPoppler, 'no other reader of PDFs here (Debian: poppler-utils)');
  await stickPage(page);
  const pdf = await madePdf(page);
  const words = wordsOf(pdf, 1);
  // 1 3/8 and every 2 5/8
  for (const said of ['Upright', 'A long stick', 'Sheet 1 of 9', '1 3/8', '6 5/8', '9 1/4', 'lower end'])
    expect(words).toContain(said);
  expect(wordsOf(pdf, 9)).toContain('77 1/2');
  // the bars stand right of the band: 12.7 + 72 + 14
  const [top = 0, end = 0] = linesIn(pdf, { page: 1, x: 97, y: 90, wide: 1.4, high: 150 }, 'down').slice(-4);
  expect(Math.abs(end - top - 101.6)).toBeLessThan(0.05);
});

test('a roll is one page, as long as the stick and its words; too narrow a one is refused by how much', async ({
  page,
}) => {
  test.skip(!hasPoppler, 'no other reader of PDFs here (Debian: poppler-utils)');
  await stickPage(page);
  await choose(page, 'Printed on', 'a roll');
  await expect(page.getByText('Say how wide the roll is.')).toBeVisible();
  // 106 mm and 1/2 in at either side: 5 22/127 in; 4 is too narrow by 106 - 76.2 = 29.8 mm
  await typeInto(page, 'Width of the roll', '4');
  await expect(page.getByText(/The roll is .* too narrow/)).toBeVisible();
  await typeInto(page, 'Width of the roll', '24');
  const pdf = await madePdf(page);
  const size = sizeOf(pdf);
  expect(size.pages).toBe(1);
  expect(Math.abs(size.wide - 609.6)).toBeLessThan(0.01);
  const marks = linesIn(pdf, { page: 1, x: 12.7 + 15, wide: 2, high: 2032 + 20 }, 'down');
  expect(Math.abs((marks[1] ?? 0) - (marks[0] ?? 0) - (near[0] ?? 0))).toBeLessThan(0.05);
  expect(Math.abs((marks.at(-1) ?? 0) - (marks[0] ?? 0) - 2032)).toBeLessThan(0.05);
});

test.describe('with no network', () => {
  test.use(withWorker);

  test('a print at 97 % is refused by its bar, in what it adds up to; the whole stick decides; all of it offline', async ({
    page,
    context,
  }) => {
    await page.goto('./');
    await readyOffline(page);
    await context.setOffline(true);
    await stickPage(page);
    await madePdf(page);
    await expect(page.getByText('Saved as a PDF.')).toBeVisible();
    // 4 in at 97 % is 3.88: 80 in come out 2.4 short; printed at 100/97 it is right
    await typeInto(page, 'Bar along the stick, as printed', '3.88');
    await expect(page.getByText('Refused: the bar along the stick is 30 in 1,000 too short')).toBeVisible();
    await expect(page.getByText('over the whole stick that is 2.400')).toBeVisible();
    await expect(page.getByText('print at 103.09 %')).toBeVisible();
    await shot(page, 'stick-refused');
    await typeInto(page, 'Bar along the stick, as printed', '4');
    await typeInto(page, 'Bar across, as printed', '4');
    // 1/16 long over 80 in is under 1 in 1,000, and twice what the whole stick may be off
    await typeInto(page, 'Whole stick on your tape', '80 1/16');
    await expect(page.getByText('Refused: the whole stick is 0.063 too long')).toBeVisible();
    await typeInto(page, 'Whole stick on your tape', '80');
    await expect(page.getByText('This print may be used.')).toBeVisible();
  });
});
