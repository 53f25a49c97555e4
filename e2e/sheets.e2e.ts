import { expect, type Page, test } from '@playwright/test';
import { openSample, pastBounce, sampleOnPhone, typed, typeInto } from './app';
import { offlineTest } from './browser';
import { keptHere } from './kept';
import { firstPage, newProfile } from './profile';
import { serve } from './serve';

const pool = (page: Page, name: string) => page.getByRole('region', { name, exact: true });

/** The kerf came with the sample: nothing is asked for before the sheets are laid out. */
async function toSheets(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Sheets' }).click();
  await expect(page.getByRole('button', { name: 'The kerf' })).toHaveCount(0);
}

async function laidOut(page: Page, name: string): Promise<void> {
  const own = pool(page, name);
  await own.getByRole('button', { name: /^(Lay out|Again)/ }).click();
  await own.getByRole('button', { name: 'Cut by this plan' }).click();
  await expect(own.locator('button.thumb').first()).toBeVisible();
}

/** What the panel says is next, and the tap that says it is cut. */
async function cutNext(page: Page): Promise<string> {
  const figure = (await page.locator('.cutnow .sr').first().textContent()) ?? '';
  await pastBounce(page);
  const done = page.locator('.cutno.done');
  const before = await done.count();
  await page.getByRole('button', { name: /^(Cut|Ripped), next$/ }).click();
  await expect(done).toHaveCount(before + 1);
  return figure;
}

offlineTest(
  'the sample job laid out, a sheet ticked through cut by cut, its offcut kept; offline, killed between two cuts',
  async () => {
    const server = await serve();
    const profile = newProfile();
    try {
      let context = await profile.open();
      let page = await firstPage(context);
      await sampleOnPhone(page, server.url);
      await server.stop(); // from here on there is no network at all

      await toSheets(page);
      await laidOut(page, 'Back, birch ply');
      await expect(pool(page, 'Back, birch ply')).toContainText('1 sheet. Fewest sheets possible.');
      await laidOut(page, 'Sheet B, birch ply');
      await pool(page, 'Sheet B, birch ply').locator('button.thumb').first().click();

      // the first cut says from which edge, what it keeps, and that one person does not lift it
      const panel = page.locator('.cutnow');
      await expect(panel).toContainText(/from the (left edge|top end)/);
      await expect(panel).toContainText('kept, kerf beyond the line');
      await expect(panel).toContainText(/About \d+\slb/);
      const total = await page.locator('.cutno').count();
      expect(total).toBeGreaterThan(8);
      await cutNext(page);
      const second = await panel.textContent();
      await keptHere(page);
      await profile.kill();

      // it opens where it was, the first cut made
      context = await profile.open();
      page = await firstPage(context);
      await page.goto(server.url);
      await expect(page.locator('.cutnow')).toHaveText(second ?? '');
      await expect(page.locator('.cutno.done')).toHaveCount(1);

      // a cut whose piece is not free yet sends back to the one before it
      const cuts = page.getByRole('region', { name: 'Cuts of this sheet' }).getByRole('button');
      await cuts.last().click();
      await expect(page.locator('.cutbar .main')).toHaveText(/^First cut \d+$/);
      await page.locator('.cutbar .main').click();
      await page.goto(`${server.url}#/sheets`);
      await expect(pool(page, 'Sheet B, birch ply')).toContainText(`1 of ${total}`);
      await pool(page, 'Sheet B, birch ply').locator('button.thumb').first().click();

      for (let k = 1; k < total; k += 1) await cutNext(page);
      await expect(page.getByText('All cut.')).toBeVisible();
      await pastBounce(page);
      await page.getByRole('button', { name: 'Keep as offcut' }).first().click();
      await expect(page.getByText('kept', { exact: true })).toBeVisible();

      // the offcut stands with its sheet, and the sheet is all cut
      await page.getByRole('button', { name: 'To the sheets' }).click();
      await expect(pool(page, 'Sheet B, birch ply')).toContainText('all cut');
      await page.goto(`${server.url}#/stock/sheetb`);
      await expect(
        page.getByRole('region', { name: 'Offcuts' }).getByRole('button', { name: 'Gone' }),
      ).toHaveCount(1);
    } finally {
      await profile.kill();
      profile.remove();
      await server.stop().catch(() => undefined);
    }
  },
);

/**
 * How long the page's own thread worked for each of so many frames, milliseconds of processor time: what other programs
 * of a busy machine take is not in it.
 */
async function workOfFrames(page: Page, frames: number): Promise<readonly number[]> {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Performance.enable', { timeDomain: 'threadTicks' });
  const worked = async (): Promise<number> => {
    const { metrics } = await devtools.send('Performance.getMetrics');
    return 1000 * (metrics.find(({ name }) => name === 'ThreadTime')?.value ?? Number.NaN);
  };
  const times = [await worked()];
  for (let k = 0; k < frames; k += 1) {
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(done)));
    times.push(await worked());
  }
  await devtools.detach();
  return times.slice(1).map((time, k) => time - (times[k] ?? 0));
}

test('a search is stopped, gone on with, and never keeps a tap waiting', async ({ page }) => {
  await openSample(page);
  await toSheets(page);
  const trays = pool(page, 'Trays, birch ply');
  // on sheets this long the bound does not meet the plan: the search goes on until it is stopped
  await trays.getByRole('button', { name: '35 pieces' }).click();
  await typeInto(page, /^How long it is/, '72');
  await page.getByRole('button', { name: 'To the sheets' }).click();
  await trays.getByRole('button', { name: 'Lay out' }).click();
  const says = trays.getByRole('status');
  await expect(says).toContainText('6 sheets; at least 5 are needed. Still looking.');
  // while it runs, nothing keeps the page from answering at once
  expect(Math.max(...(await workOfFrames(page, 30)))).toBeLessThan(200);
  await expect(says).toContainText('Still looking.');
  await trays.getByRole('button', { name: 'Stop' }).click();
  await expect(says).toContainText('There may be a better one.');
  await pastBounce(page);
  await trays.getByRole('button', { name: 'Look further' }).click();
  await expect(says).toContainText('Still looking.');
  // away and back: the search and its plan are still there
  await page.getByRole('link', { name: 'Cuts' }).click();
  await page.getByRole('link', { name: 'Sheets' }).click();
  await trays.getByRole('button', { name: 'Cut by this plan' }).click();
  await expect(trays.locator('button.thumb')).toHaveCount(6);
  // undo takes the plan back
  await page.getByRole('button', { name: /^Undo: Trays, birch ply: plan of 6 sheets/ }).click();
  await expect(trays.getByRole('button', { name: 'Lay out' })).toBeVisible();
});

test('a wrong cut re-plans the rest of that sheet; what no longer goes on it is named, and laid on another', async ({
  page,
}) => {
  await openSample(page);
  await toSheets(page);
  await laidOut(page, 'Sheet A, birch ply');
  const sheet = pool(page, 'Sheet A, birch ply');
  await sheet.locator('button.thumb').first().click();
  const wrong = async (figure: string) => {
    await pastBounce(page);
    await page.getByRole('button', { name: 'Cut wrong' }).click();
    await typed(page, figure);
  };

  // beyond the sheet, and at nothing: said by how much, nothing lost
  await wrong('200');
  await expect(page.getByRole('alert')).toContainText(/That is 1\d\d beyond the sheet/);
  await expect(page.locator('.cutno.done')).toHaveCount(0);

  // right through both sides: none of them goes on the sheet any more
  const crosscut = (await page.locator('.cutnow').textContent())?.includes('top end');
  await wrong(crosscut ? '40' : '9');
  await expect(page.locator('.cutno.done')).toHaveCount(1);
  if (crosscut) {
    await expect(page.getByText(/On no sheet any more: Left side and Right side/)).toBeVisible();
    await page.goto('./#/sheets');
    await sheet.getByRole('button', { name: 'Lay out the rest' }).click();
    await sheet.getByRole('button', { name: 'Cut by this plan' }).click();
    await expect(sheet.locator('button.thumb')).toHaveCount(2);
    await expect(sheet).toContainText('Sheet 2');
  } else {
    await expect(page.getByRole('alert')).toContainText('Every piece still goes');
  }
});

test('what cannot be laid out is named, by how much and what would fit', async ({ page }) => {
  await openSample(page);
  await toSheets(page);
  const back = pool(page, 'Back, birch ply');
  await back.getByRole('button', { name: '1 piece' }).click();
  await typeInto(page, /^How wide it is/, '30');
  await page.getByRole('button', { name: 'To the sheets' }).click();
  await expect(back).toContainText(
    /Back is rough 60\s5\/16 × 37\s13\/16: 7\s13\/16 too wide\. The most that fits is 96 × 30\./,
  );
  await expect(back.getByRole('button', { name: 'Lay out' })).toHaveCount(0);
});
