import { expect, type Page, test } from '@playwright/test';
import { choose, openSample, pastBounce, readyOffline, shot, typeInto } from './app';
import { drawnFor, jobOfMany, modulesOf } from './bench/chain.mjs';
import { fileOf } from './bench/lists.mjs';
import { withWorker } from './browser';
import { hasPoppler, linesIn, sizeOf, wordsOf } from './poppler';

test.describe.configure({ mode: 'parallel' });

/** Two sides of 30 by 12 1/4, each with grooves 3/4 wide at 4 and 14: far walls at 4 3/4 and 14 3/4. */
const sides = new Map<string, unknown>([
  ['name', 'Two sides'],
  ['boards/b/name', 'Side'],
  ['boards/b/length', '30'],
  ['boards/b/across', '49/4'],
  ['boards/b/thickness', '3/4'],
  ['boards/b/copies', 2],
  ['boards/b/made', 'alike'],
  ['boards/b/end', 'bottom'],
  ['boards/b/runs/r/spacing', 'pitch'],
  ['boards/b/runs/r/point', 'near'],
  ['boards/b/runs/r/face', 'A'],
  ['boards/b/runs/r/first', '4'],
  ['boards/b/runs/r/pitch', '10'],
  ['boards/b/runs/r/width', '3/4'],
  ['boards/b/runs/r/depth', '1/4'],
  ['boards/b/runs/r/count', 2],
]);

async function takenIn(page: Page, values: ReadonlyMap<string, unknown>, name: string): Promise<void> {
  await page.goto('./#/import');
  const buffer = Buffer.from(fileOf(values));
  await page.setInputFiles('input[type=file]', { name: 'job.json', mimeType: 'application/json', buffer });
  await page.getByRole('button', { name: 'Take it in' }).click();
  await expect(page.getByRole('heading', { name })).toBeVisible();
}

/** Another setup, by its number on the page. */
async function toSetup(page: Page, no: string): Promise<void> {
  await pastBounce(page);
  await page.getByRole('button', { name: 'Setup on the page' }).click();
  const dock = page.getByRole('dialog');
  await dock.getByRole('button', { name: no, exact: true }).click();
  await dock.getByRole('button', { name: 'Done' }).click();
  await expect(dock).toBeHidden();
}

async function toPrint(page: Page, print: string): Promise<void> {
  await page.goto('./#/paper');
  await page.getByRole('button', { name: print }).click();
  await expect(page.getByRole('button', { name: 'Make the PDF' })).toBeVisible();
  await pastBounce(page);
}

async function madePdf(page: Page): Promise<string> {
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Make the PDF' }).click();
  return (await waiting).path();
}

const everyPage = (pdf: string): readonly string[] =>
  Array.from({ length: sizeOf(pdf).pages }, (_, k) =>
    wordsOf(pdf, k + 1)
      .replaceAll('\u00a0', ' ')
      .replaceAll(/ +/g, ' '),
  );

test.describe('with no network', () => {
  test.use(withWorker);

  for (const { paper, wide, high } of [
    { paper: 'Letter', wide: 215.9, high: 279.4 },
    { paper: 'A4', wide: 210, high: 297 },
  ])
    test(`setup sheets on ${paper}: every figure as at the saw, a box for each piece`, async ({
      page,
      context,
    }) => {
      test.skip(!hasPoppler, 'no other reader of PDFs here (Debian: poppler-utils)');
      await page.goto('./');
      await readyOffline(page);
      await context.setOffline(true);
      await takenIn(page, sides, 'Two sides');
      await toPrint(page, 'Setup sheets');
      if (paper === 'A4') await choose(page, 'Printed on', 'A4');
      const pdf = await madePdf(page);
      const size = sizeOf(pdf);
      expect(Math.abs(size.wide - wide)).toBeLessThan(0.01);
      expect(Math.abs(size.high - high)).toBeLessThan(0.01);
      const pages = everyPage(pdf);
      const all = pages.join('\n');
      expect(pages[0]).toContain('Table saw, single blade');
      for (const said of ['Rip fence at', ' 12 1/4\n', 'A Side 1: rip', 'B Side 2: rip'])
        expect(pages[0]).toContain(said);
      expect(all).toContain('Side, no. 1: groove no. 1');
      // far teeth at 4 + 3/4 and 14 + 3/4; from the other end the near wall is at 30 - 4 and 30 - 14
      for (const said of ['far teeth 4 3/4', 'the other end 26', 'far teeth 14 3/4', 'the other end 16'])
        expect(all).toContain(said);

      // what the machine's own screens say of each setup stands on the paper
      await page.goto('./#/cuts');
      const rows = await page.locator('.cutrow').count();
      expect(rows).toBeGreaterThanOrEqual(4);
      for (let k = 0; k < rows; k += 1) {
        await page.goto('./#/cuts');
        await page.locator('.cutrow').nth(k).click();
        const title = (await page.locator('main h1, main h2').first().textContent()) ?? '';
        for (const line of await page.locator('.lies span, .lies b').allInnerTexts())
          expect(all, title).toContain(line.trim());
      }
    });

  test('a page comes back by number and letter, under the guards of the machine, and goes out again as one act', async ({
    page,
  }) => {
    await takenIn(page, sides, 'Two sides');
    await page.goto('./#/tickin');
    await expect(page.getByRole('heading', { name: 'Rip fence at 12 1/4' })).toBeVisible();
    await shot(page, 'tick-in');
    await page.getByRole('button', { name: 'All of it: 2 boxes' }).click();
    for (const letter of ['A', 'B'])
      await expect(page.getByRole('checkbox', { name: `${letter}, Side` })).toBeChecked();
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect(page.getByRole('checkbox', { name: 'A, Side' })).not.toBeChecked();
    // a length waits for its rip, and says so; a tap on its box does nothing
    await page.getByRole('button', { name: 'Setup on the page' }).click();
    const dock = page.getByRole('dialog');
    await dock.getByRole('button', { name: '9', exact: true }).click();
    await dock.getByRole('button', { name: 'Done' }).click();
    await expect(dock.getByText('There is no setup 9: they go from 1 to')).toBeVisible();
    await dock.getByRole('button', { name: 'erase' }).click();
    await dock.getByRole('button', { name: '2', exact: true }).click();
    await pastBounce(page);
    await dock.getByRole('button', { name: 'Done' }).click();
    await expect(page.getByText('Blocked: Side 1, rip, comes first')).toBeVisible();
    await page.getByRole('checkbox', { name: 'A, Side 1' }).click();
    await expect(page.getByRole('checkbox', { name: 'A, Side 1' })).not.toBeChecked();
    // the stack is set before a groove is cut with it: that has a box too, and the whole page says so with it
    await toSetup(page, '1');
    await page.getByRole('button', { name: 'All of it: 2 boxes' }).click();
    // the big bar changes its meaning in place: a second tap too soon is glove bounce
    await pastBounce(page);
    await page.getByRole('button', { name: 'Next: setup 2' }).click();
    await pastBounce(page);
    await page.getByRole('button', { name: 'All of it: 2 boxes' }).click();
    await pastBounce(page);
    await page.getByRole('button', { name: 'Next: setup 3' }).click();
    await expect(page.getByRole('checkbox', { name: 'S, It is set' })).toBeVisible();
    await expect(page.getByText('Blocked: change the stack first').first()).toBeVisible();
    await pastBounce(page);
    await page.getByRole('button', { name: 'All of it: 3 boxes' }).click();
    await expect(page.getByRole('checkbox', { name: 'A, Test piece' })).toBeChecked();
    await expect(page.getByRole('checkbox', { name: 'C, Side, no. 2' })).toBeChecked();
    await expect(page.getByRole('checkbox', { name: 'S, It is set' })).toBeHidden();
  });
});

test('a long print is stopped midway and hands nothing out', async ({ page }) => {
  test.setTimeout(120_000);
  await takenIn(page, jobOfMany(drawnFor.large, await modulesOf()), 'A great many');
  let handedOut = 0;
  page.on('download', () => {
    handedOut += 1;
  });
  await toPrint(page, 'Setup sheets');
  await page.getByRole('button', { name: 'Make the PDF' }).click();
  await expect(page.getByText(/^Page \d+ …$/)).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText(/^Page [2-9]\d* …$/)).toBeVisible({ timeout: 60_000 });
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect(page.getByText('Stopped. Nothing was handed out.')).toBeVisible();
  expect(handedOut).toBe(0);
});

test('the cut list by part and the sheets of the sample say what its own pages say', async ({ page }) => {
  test.skip(!hasPoppler, 'no other reader of PDFs here (Debian: poppler-utils)');
  await openSample(page);
  await page.goto('./#/parts');
  const rows = await page.locator('main .nextset b').allInnerTexts();
  expect(rows.length).toBeGreaterThan(5);
  await toPrint(page, 'Cut list by part');
  const parts = everyPage(await madePdf(page)).join('\n');
  for (const name of rows) expect(parts).toContain(name);

  await page.goto('./#/sheets');
  await page.locator('a[href*="layout"], button.nextset, .thumb').first().click();
  await expect(page.getByRole('region', { name: 'Cuts of this sheet' })).toBeVisible();
  const title = (await page.getByRole('heading', { level: 1 }).textContent()) ?? '';
  const cuts = await page
    .getByRole('region', { name: 'Cuts of this sheet' })
    .locator('.nextset .grow')
    .allInnerTexts();
  await toPrint(page, 'Sheets with their cuts');
  const sheets = everyPage(await madePdf(page));
  const own = sheets.filter((one) => one.includes(title)).join('\n'); // it may go on over the page
  for (const cut of cuts) expect(own).toContain(cut);

  // a page of a sheet comes back by the codes of its boxes, each cut after the one it is a part of, or whole as one act
  await page.goto('./#/tickin');
  await page.getByRole('button', { name: 'Sheets', exact: true }).click();
  const compare = await page.getByText(/^At the right of its name on the paper stands /).textContent();
  const [, check = '-'] = /stands (\w\w)\./.exec(compare ?? '') ?? [];
  const named = (await page.getByRole('heading', { level: 2 }).first().textContent()) ?? '-';
  expect(sheets.find((one) => one.includes(named))).toContain(check);
  await shot(page, 'tick-in-sheet');
  const boxes = page.getByRole('checkbox');
  const last = boxes.last();
  await expect(last).toHaveAccessibleName(/, blocked$/);
  await last.click();
  await expect(last).not.toBeChecked();
  await boxes.first().click();
  await expect(boxes.first()).toBeChecked();
  const of = await boxes.count();
  await page.getByRole('button', { name: `All of it: ${of - 1} boxes` }).click();
  for (let k = 0; k < of; k += 1) await expect(boxes.nth(k)).toBeChecked();
  await expect(page.getByRole('button', { name: /^Next: / })).toBeVisible();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(last).not.toBeChecked();
  await expect(boxes.first()).toBeChecked();
  await page.getByRole('button', { name: /^The sheet itself/ }).click();
  await expect(page.getByRole('region', { name: 'Cuts of this sheet' })).toBeVisible();
  await expect(page.getByText('cut', { exact: true })).toHaveCount(1);
});

test('labels say what the app says, and lie on the sheet as the size and gaps say; one too large is refused', async ({
  page,
}) => {
  test.skip(!hasPoppler, 'no other reader of PDFs here (Debian: poppler-utils)');
  await openSample(page);
  await toPrint(page, 'Labels on paper');
  await shot(page, 'labels-on-paper');
  const parts = everyPage(await madePdf(page)).join('\n');
  for (const said of ['Left side', '64 1/4 × 17 1/2', 'Sheet A, birch ply', 'on the inside face, top end up'])
    expect(parts).toContain(said);
  // 20 in is 11 1/2 in wider than a Letter of 8 1/2, and 1 in more for the white of 1/2 at both sides; on its side 10
  await typeInto(page, 'A label, across', '20');
  await expect(page.getByText('12 1/2 too wide')).toBeVisible();
  await typeInto(page, 'A label, across', '3 1/2');
  await typeInto(page, 'Between two, side by side', '1/4');
  await page.getByRole('button', { name: 'Drawers and trays' }).click();
  const pdf = await madePdf(page);
  const drawers = everyPage(pdf).join('\n');
  for (const said of ['Drawer 1', 'Mineral drawers']) expect(drawers).toContain(said);
  // down, three of 2 1/2 with as much between begin at 1 1/2: at 150 mm the second has no words any more; across,
  // two of 3 1/2 with 1/4 between are 7 1/4 of 8 1/2: 5/8 at either side; a line at 5/8, 4 1/8, 4 3/8 and 7 7/8
  const lines = linesIn(pdf, { page: 1, x: 0, y: 150, wide: 215.9, high: 3 }, 'right');
  const wanted = [0.625, 4.125, 4.375, 7.875].map((inches) => inches * 25.4);
  expect(lines.length).toBe(4);
  wanted.forEach((x, k) => {
    expect(Math.abs((lines[k] ?? 0) - x)).toBeLessThan(0.1);
  });

  // a print that took longer than the share sheet waits after a tap is handed out by another
  await page.evaluate(() => {
    const active = { isActive: false };
    const given: string[] = [];
    Object.assign(window, { given, active });
    Object.defineProperty(navigator, 'userActivation', { value: active });
    Object.defineProperty(navigator, 'canShare', { value: () => true });
    Object.defineProperty(navigator, 'share', {
      value: async ({ files: [file] }: { files: File[] }) => {
        if (!active.isActive) throw new DOMException('no tap', 'NotAllowedError');
        given.push(`${file?.name} ${file?.type} ${(await file?.text())?.slice(0, 5)}`);
      },
    });
  });
  await pastBounce(page);
  await page.getByRole('button', { name: 'Make the PDF' }).click();
  await expect(page.getByText('It is written.')).toBeVisible();
  await page.evaluate(() =>
    Object.assign((window as unknown as { active: object }).active, { isActive: true }),
  );
  await pastBounce(page);
  await page.getByRole('button', { name: 'Hand the PDF out' }).click();
  await expect(page.getByText('Shared.')).toBeVisible();
  expect(await page.evaluate(() => (window as unknown as { given: string[] }).given)).toEqual([
    'Mineral and shell cabinet, labels on paper.pdf application/pdf %PDF-',
  ]);
});
