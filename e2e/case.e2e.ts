import { expect, type Page, test } from '@playwright/test';
import { blankOf, fillBlank, openSample, pastBounce, pastQuickBounce, readyOffline, ticksHere } from './app';
import { offlineTest } from './browser';
import { keptHere } from './kept';
import { newProfile } from './profile';
import { serve } from './serve';

test.describe.configure({ mode: 'parallel' });

/** The figure of the setup on the screen, as it is spoken. */
const figure = (page: Page) => page.locator('.giant .sr').first();
const main = (page: Page) => page.locator('.knuckle .main');

async function tapMain(page: Page, words: string): Promise<void> {
  const cut = ticksHere(page);
  await expect(main(page)).toContainText(words);
  const before = await cut.count();
  await main(page).click();
  await expect(cut).toHaveCount(before + 1);
  await pastBounce(page);
}

/** Presses keys of the docked panel by their names, and Done. */
async function press(page: Page, names: readonly string[]): Promise<void> {
  const dock = page.getByRole('dialog');
  for (const name of names) {
    await dock.getByRole('button', { name, exact: true }).click();
    await pastQuickBounce(page);
  }
  await dock.getByRole('button', { name: 'Done' }).click();
  await expect(dock).toBeHidden();
}

const row = (page: Page, words: RegExp) =>
  page.locator('main .nextset, main .sect').filter({ hasText: words }).first();

async function openCuts(page: Page, url: string): Promise<void> {
  await page.goto(`${url}#/cuts`);
  await expect(page.getByRole('heading', { name: 'Cuts', exact: true })).toBeVisible();
}

offlineTest('a case from outside sizes to a recut, offline, killed midway', async () => {
  const server = await serve();
  const profile = newProfile();
  try {
    let context = await profile.open();
    let page = context.pages()[0] ?? (await context.newPage());
    await page.goto(server.url);
    await page.getByRole('button', { name: 'Work out a case' }).click();
    await readyOffline(page);
    await server.stop(); // from here on there is no network at all

    // outside sizes; what is missing is asked for one thing at a time
    await expect(page.getByRole('button', { name: 'Next: outside width' })).toBeVisible();
    await fillBlank(page, /Outside width/, '38 3/8');
    await fillBlank(page, /Outside height/, '64 1/4');
    await fillBlank(page, /Depth, without a face frame/, '17 1/2');
    await fillBlank(page, /Floor to the underside/, '4 1/8');
    await page
      .locator('main')
      .getByRole('button', { name: /How many partitions/ })
      .click();
    await press(page, ['1']);
    // no stock yet: the tray of the sides has a sheet measured, they are of it, and the page comes back
    await page
      .locator('main')
      .getByRole('button', { name: /What the sides are of/ })
      .click();
    await page.getByRole('dialog').getByRole('button', { name: 'Measure a sheet' }).click();
    await row(page, /Planned, until it is measured/).click();
    await press(page, ['3/4']);
    await page.getByRole('button', { name: 'Back to case' }).click();
    await expect(page.locator('main').getByRole('button', { name: /What the sides are of/ })).toContainText(
      'Sheet A',
    );

    // (38 3/8 less two sides, less a partition) shared by two, in 3/4
    await expect(page.locator('.whyrow').first()).toContainText('18 and 1/16 inches');
    await expect(page.getByRole('region', { name: 'Adds back up' }).locator('li')).toHaveCount(5);

    // two sides ripped, the bottom ripped and cut to length
    await openCuts(page, server.url);
    await row(page, /Rip fence at/).click();
    await expect(figure(page)).toHaveText('17 and 1/2 inches');
    await tapMain(page, 'Left side is cut');
    await tapMain(page, 'Right side is cut');
    await tapMain(page, 'Bottom is cut');

    await keptHere(page);
    await profile.kill();
    context = await profile.open();
    page = context.pages()[0] ?? (await context.newPage());
    await page.goto(server.url); // cold start: server gone, nothing in memory
    await expect(figure(page)).toHaveText('17 and 1/2 inches'); // the same setup
    await expect(ticksHere(page)).toHaveCount(3); // every acknowledged tick
    await page.getByRole('button', { name: 'Leave' }).click(); // left with two uncut: said, and let go
    await expect(page.locator('.lastcall')).toContainText('2 more pieces want this figure:');
    await expect(page.locator('.lastcall li')).toHaveText(['Top, rip', 'Partition, rip']);
    await page.getByRole('button', { name: 'Leave, 2 to come back for' }).click();
    await expect(page.getByRole('heading', { name: 'Cuts', exact: true })).toBeVisible(); // and goes nowhere else
    await openCuts(page, server.url);
    await row(page, /Crosscut, stop at.*Bottom/).click();
    await expect(figure(page)).toHaveText('37 and 3/8 inches');
    await tapMain(page, 'Bottom is cut');

    // the sheet reads 18 mm: seen before it is taken up, and nothing cut moves
    await page.goto(`${server.url}#/`);
    await page.getByRole('button', { name: /Sheet A/ }).click();
    await page.getByRole('button', { name: 'First reading' }).click();
    await press(page, ['1', '8', 'mm']);
    await page.getByRole('button', { name: /See what 0.709/ }).click();
    await expect(page.locator('.changes li').first()).toBeVisible();
    await expect(page.getByText('as planned.')).toBeVisible(); // still
    await page.getByRole('button', { name: 'Use it for what is not cut' }).click();
    await expect(page.getByText('as measured.')).toBeVisible();

    await openCuts(page, server.url);
    await expect(page.locator('.misfits')).toContainText('37 and 3/8 inches');
    await expect(page.locator('.misfits')).toContainText(
      '37 and 15/32 inches, scant by 0.011'.split(',')[0] ?? '',
    );
    await expect(page.locator('.misfits li')).toHaveCount(1); // the rips are as they were
    await page.locator('.misfits button').click();

    // spoiled: its own cuts again, and the bottom comes back on the list
    await page.getByRole('button', { name: 'Spoiled' }).click();
    await expect(page.getByRole('dialog')).toContainText('Its own 2 cuts again, 1 to set up:');
    await page.getByRole('button', { name: 'Spoiled. Put it back on the list' }).click();
    await openCuts(page, server.url);
    await expect(page.locator('.misfits')).toHaveCount(0);
    await row(page, /Rip fence at/).click();
    await tapMain(page, 'Bottom, recut is cut');
    await openCuts(page, server.url);
    await row(page, /Crosscut, stop at.*Bottom, recut/).click();
    await expect(figure(page)).toHaveText(/37 and 15\/32 inches/);
    await tapMain(page, 'Bottom, recut is cut');
    await expect(ticksHere(page)).toHaveCount(1);

    await page.getByRole('button', { name: /^Undo/ }).click(); // undo takes back the tick, by name
    await expect(ticksHere(page)).toHaveCount(0);
  } finally {
    await profile.kill();
    profile.remove();
    await server.stop().catch(() => undefined);
  }
});

test('a blocked cut says what blocks it, and goes ahead with a reason', async ({ page }) => {
  await openSample(page);
  await page.goto('./#/cuts');
  await row(page, /Crosscut, stop at.*Left side/).click();
  const pieces = page.locator('.mpiece');
  await expect(pieces.first()).toContainText('Blocked: Left side, rip, comes first');
  await expect(pieces.first().getByRole('checkbox')).toHaveCount(0); // nothing to tick
  await page.getByRole('button', { name: 'measured another way' }).first().click();
  await expect(pieces.first()).not.toContainText('Blocked');
  await expect(pieces.first()).toContainText('measured another way'); // kept with the cut
  await pastBounce(page);
  await pieces.first().click();
  await expect(pieces.first()).toBeChecked();
});

test('one setting has one screen: from the marks of a part and from Cuts, blocked alike and ticked once', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/saw/case~left');
  await expect(page.locator('.giant .mx').first()).toBeVisible();
  await page.getByRole('button', { name: /^(It is set|Set and tested)/ }).click();
  await expect(page.locator('.giant .sr')).toContainText('4 and 1/8');
  await expect(page.locator('.mpiece')).toContainText(['Test piece', 'Left side', 'Right side']);
  for (const blocked of await page.locator('.mpiece').all()) await expect(blocked).toContainText('Blocked:');
  await page.getByRole('button', { name: 'I know what I’m doing' }).first().click();
  await pastBounce(page);
  await expect(main(page)).toContainText('Test cut fits');
  await main(page).click();
  await expect(page.locator('.mpiece')).toHaveCount(2); // it has nothing more to say
  for (const side of ['Left side', 'Right side']) {
    const blocked = page.locator('.mpiece.waits').filter({ hasText: side });
    await blocked.getByRole('button', { name: 'I know what I’m doing' }).click();
    await expect(blocked).toHaveCount(0);
    await pastBounce(page);
  }
  const pair = page.locator('.mpiece');
  await expect(pair).toHaveCount(2);
  await expect(pair.nth(0)).toContainText('Front edge on fence');
  await expect(pair.nth(1)).toContainText('Back edge on fence');
  await tapMain(page, 'Left side is cut');
  await page.goto('./#/part/case~left');
  await row(page, /Stop block at.*dado for the bottom/).click();
  await expect(page.getByRole('checkbox', { name: /^Left side/ })).toBeChecked();
  await expect(page.getByRole('checkbox', { name: /^Right side/ })).not.toBeChecked();
});

test('the stack for a sheet, and what a test cut asks for', async ({ page }) => {
  await openSample(page);
  await page.goto('./#/stack/stop~c13d32~h3d16');
  const fewest = page.getByRole('region', { name: 'Between the outers' });
  await expect(fewest).toContainText('cuts 0.408');
  await fewest.getByRole('button', { name: 'This one is on the arbor' }).click();
  await expect(page.getByText('Recipe kept:')).toBeVisible();
  await row(page, /It measures/).click();
  await press(page, ['0', '.', '4', '1']);
  await expect(page.locator('.verdict')).toHaveText('Take from the stack: 0.004.');
});

test('an as-built measure is seen beside the plan, and taken up by a tap', async ({ page }) => {
  await openSample(page);
  await page.goto('./#/built/case');
  const bay = page.getByRole('region', { name: 'Bay 1', exact: true });
  await bay.getByRole('button', { name: /front, low/ }).click();
  await press(page, ['1', '8', '1/16']);
  await expect(bay).toContainText('3/64 under plan'); // 18 1/16 where 18 7/64 was planned
  await page.goto('./#/part/case~trays');
  await expect(page.locator('.sizerow').first()).toContainText('18 and 7/16 inches'); // not yet
  await page.goto('./#/built/case');
  await bay.getByRole('button', { name: /See what/ }).click();
  await bay.getByRole('button', { name: 'Use it for what is not cut' }).click();
  await page.goto('./#/part/case~trays');
  await expect(page.locator('.sizerow').first()).toContainText('18 and 3/8 inches'); // 18 25/64, rounded down
});

test('what is typed wrong says by how much at its blank, and the last good drawing stays', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/case/case');
  await blankOf(page, /Outside width/).click();
  const dock = page.getByRole('dialog');
  await dock.getByRole('button', { name: '2', exact: true }).click();
  await expect(dock.locator('.says')).toContainText('5/32 over what there is between'); // as it is keyed
  await dock.getByRole('button', { name: 'Done' }).click();
  const sizes = page.getByRole('region', { name: 'Sizes' });
  await expect(sizes.locator('.wrongline')).toContainText('5/32 over what there is between');
  await expect(page.getByRole('button', { name: 'Does not fit: outside width' })).toBeVisible();
  await expect(page.locator('.casedraw.stale')).toBeVisible();
  await expect(page.getByText('before this change')).toBeVisible();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.locator('.wrongline')).toHaveCount(0);
});

test('shelves with no place stand evenly, each by a name of its own; two in each other say so beside the keys', async ({
  page,
}) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'Work out a case' }).click();
  const dock = page.getByRole('dialog');
  const keyed = async (names: readonly string[]) => {
    for (const name of names) {
      await dock.getByRole('button', { name, exact: true }).click();
      await pastBounce(page);
    }
  };
  // the keys for the width stand open; Next names what it goes on to
  await keyed(['3', '0', 'Next: outside height', '4', '8']);
  await keyed(['Next: depth, without a face frame', '1', '1', 'Done']);
  await page.getByRole('button', { name: 'Measure a sheet' }).click();
  await page.getByRole('button', { name: 'First reading' }).click();
  await press(page, ['3/4']);
  await page.getByRole('button', { name: 'Back to case' }).click();
  for (let k = 0; k < 2; k += 1) {
    await page.getByRole('button', { name: '+ A fixed shelf' }).click();
    await pastBounce(page);
  }
  // 48 less top and bottom of 3/4 is 46 1/2; less two shelves, in three: 15
  const shelf = (no: number) => blankOf(page, new RegExp(`Case bottom to the shelf, no. ${no} of the list`));
  await expect(shelf(1)).toContainText('15 inches');
  await expect(shelf(2)).toContainText('30 and 3/4');

  await shelf(2).click();
  await keyed(['1', '5', '1/2']);
  // the first moves to the middle of what the second leaves over it: nothing is wrong
  await expect(dock.locator('.says')).toBeEmpty();
  await keyed(['Done']);
  await shelf(1).click();
  await keyed(['1', '5']);
  await expect(dock.locator('.says')).toContainText('stands 1/4 in');
  await keyed(['Done']);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.locator('.wrongline')).toHaveCount(0);
  await page.getByRole('button', { name: 'Parts', exact: true }).click();
  await expect(page.getByText('Fixed shelf 1')).toBeVisible();
  await expect(page.getByText('Fixed shelf 2')).toBeVisible();
});
