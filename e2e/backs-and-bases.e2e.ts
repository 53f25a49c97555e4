import { expect, type Page, test } from '@playwright/test';
import { caseBegun } from './begun';
import { type Hand, handOn } from './hand';
import { button, filled, measured } from './hand-case';

test.describe.configure({ mode: 'parallel' });

/**
 * A case for shells, 30 × 48 × 11 1/4 on the floor, ply of 3/4 and a thin back of 1/4, all with a dado 1/4 deep and as
 * wide as its sheet and .005. Clear it is 30 − 1 1/2 = 28 1/2 wide, 48 − 1 1/2 = 46 1/2 high.
 */
test('a back in a groove from its first tap to the cut that makes it', async ({ page }) => {
  const hand = await begun(page);
  await hand.tap(button(page, '+ A back'));
  await sheet(page, hand, '1/4');
  await hand.tap(button(page, /^How the back is held/));
  await hand.tap(page.getByRole('dialog').getByRole('button', { name: /in a groove/ }));
  const said = page.locator('main').getByLabel('Back', { exact: true });
  await expect(said).toContainText('in a groove');
  await expect(said).toContainText('left behind it');
  // a land of 1/4 is thin: 3/8 is wanted
  await filled(page, hand, { blank: /^What is left behind/, figure: '1/4' });
  await expect(said).toContainText('Only 1/4 is left behind the groove');
  await filled(page, hand, { blank: /^What is left behind/, figure: '1/2' });
  await hand.tap(page.getByRole('button', { name: 'Parts' }));
  // 46 1/2 + 1/2 − 1/16 = 46 15/16; 28 1/2 + 1/2 − 1/16 = 28 15/16
  const back = page.locator('main .nextset').filter({ hasText: 'Back' }).first();
  await expect(back).toContainText('46 and 15/16');
  await expect(back).toContainText('28 and 15/16');
  await hand.tap(page.locator('main .nextset').filter({ hasText: 'Left side' }).first());
  await expect(page.locator('main')).toContainText('Groove for the back: 1/2 from the back edge');
  await page.goto('./#/cuts');
  const cuts = page.locator('main');
  await expect(cuts).toContainText('the back into its grooves before the second side, which goes on last');
  // one stack and one fence for both sides, the bottom and the top
  const cut = cuts.getByRole('button', { name: /back edge on fence/ }).first();
  await expect(cut).toContainText('Left side, Right side and 2 more');
  await hand.tap(cut);
  await expect(page.locator('main')).toContainText('0.255');
});

/**
 * The same case 4 off the floor, its toe board of its own sheet in notches 3 back, nothing before the sides: they are
 * notched 3 + 3/4 = 3 3/4 deep and 4 high, and the board is 4 − 1/8 = 3 7/8 by 30.
 */
test('a toe board in notches from its first tap to the cut that makes them', async ({ page }) => {
  const hand = await begun(page);
  await filled(page, hand, { blank: /^Floor to the underside/, figure: '4' });
  await hand.tap(button(page, '+ A toe board'));
  await hand.tap(button(page, /^How the toe board stands/));
  await hand.tap(page.getByRole('dialog').getByRole('button', { name: /in notches/ }));
  const said = page.locator('main').getByLabel('Toe board', { exact: true });
  // 3 1/2 + 3/4 = 4 1/4, over a third of 11 1/4
  await filled(page, hand, { blank: /^How far back the toe board/, figure: '3 1/2' });
  await expect(said).toContainText('more than a third of the sides');
  await filled(page, hand, { blank: /^How far back the toe board/, figure: '2' });
  await expect(said).toContainText('toes find room from 2 1/2 on');
  await filled(page, hand, { blank: /^How far back the toe board/, figure: '3' });
  await hand.tap(page.getByRole('button', { name: 'Parts' }));
  const board = page.locator('main .nextset').filter({ hasText: 'Toe board' }).first();
  await expect(board).toContainText('30');
  await expect(board).toContainText('3 and 7/8');
  await hand.tap(page.locator('main .nextset').filter({ hasText: 'Left side' }).first());
  await expect(page.locator('main')).toContainText(
    'Notch for the toe board: 3 3/4 in from the front edge, 4 up from the bottom end.',
  );
  await page.goto('./#/cuts');
  const cut = page
    .locator('main')
    .getByRole('button', { name: /Notch 4 up, line in at/ })
    .first();
  await expect(cut).toContainText('Left side, Right side');
  await hand.tap(cut);
  await expect(page.locator('main')).toContainText('the other line 4 up from the bottom end');
});

/**
 * The same case on a plinth 4 high: its sides are 48 − 4 = 44; the plinth 30 long and 11 1/4 − 3 = 8 1/4 deep, its
 * cross members 8 1/4 − 2 × 3/4 = 6 3/4, at 0, (30 − 3/4) / 2 = 14 5/8 and 29 1/4. Scribed, and the floor not read,
 * its strips are ripped 4 1/4.
 */
test('a plinth from its first tap to the cut that makes it', async ({ page }) => {
  const hand = await begun(page);
  await filled(page, hand, { blank: /^Floor to the underside/, figure: '4' });
  await hand.tap(button(page, '+ A plinth'));
  await expect(button(page, '+ A toe board')).toBeHidden();
  const said = page.locator('main').getByLabel('Plinth', { exact: true });
  await filled(page, hand, { blank: /^How far back the plinth/, figure: '10' });
  // 11 1/4 − 10 − 1 1/2 = −1/4
  await expect(said).toContainText('The rails of the plinth meet, 1/4 over');
  await filled(page, hand, { blank: /^How far back the plinth/, figure: '3' });
  await hand.tap(button(page, /^How the plinth comes level/));
  await hand.tap(page.getByRole('dialog').getByRole('button', { name: /scribed/ }));
  await hand.tap(page.getByRole('button', { name: 'Parts' }));
  const row = (name: string) => page.locator('main .nextset').filter({ hasText: name }).first();
  await expect(row('Left side')).toContainText('44');
  await expect(row('Plinth cross member')).toContainText('6 and 3/4');
  await hand.tap(row('Plinth rail'));
  await expect(page.locator('main')).toContainText('14 5/8');
  await page.goto('./#/cuts');
  const cut = page
    .locator('main')
    .getByRole('button', { name: /Plinth rail/ })
    .first();
  await expect(cut).toContainText('4 and 1/4');
  // down to the floor 36 1/4, 36 1/16, 36 3/8, 36 1/8: over the least they are 3/16, 0, 5/16, 1/16
  await page.goto('./#/room');
  await hand.tap(page.getByRole('button', { name: 'Level and feet' }).first());
  const corners = {
    'Front left': '36 1/4',
    'Front right': '36 1/16',
    'Back left': '36 3/8',
    'Back right': '36 1/8',
  };
  for (const [foot, figure] of Object.entries(corners))
    await filled(page, hand, { blank: new RegExp(`^${foot}`), figure });
  const main = page.locator('main');
  await expect(main).toContainText('The plinth is scribed to the floor: at each corner it stands so high.');
  for (const high of ['Front left4 3/16', 'Front right4', 'Back left4 5/16', 'Back right4 1/16'])
    await expect(main).toContainText(high);
});

/** The same case on the floor and without a back: two nailers 28 1/2 by 2 1/2, inside. */
test('nailers from its first tap to the cut that makes them', async ({ page }) => {
  const hand = await begun(page);
  await hand.tap(button(page, '+ Nailers'));
  await expect(button(page, '+ Cleats')).toBeHidden();
  const said = page.locator('main').getByLabel('Nailers', { exact: true });
  await expect(said).toContainText('they lie inside');
  await filled(page, hand, { blank: /^How wide the nailers/, figure: '2' });
  await expect(said).toContainText('A nailer is 2 wide: keep 2 1/2.');
  await filled(page, hand, { blank: /^How wide the nailers/, figure: '2 1/2' });
  await hand.tap(page.getByRole('button', { name: 'Parts' }));
  const row = page.locator('main .nextset').filter({ hasText: 'Nailer' }).first();
  await expect(row).toContainText('28 and 1/2');
  await page.goto('./#/cuts');
  const rip = page
    .locator('main')
    .getByRole('button', { name: /Rip fence at.*Nailer/ })
    .first();
  await expect(rip).toContainText('2 and 1/2');
});

/**
 * The same case with a stop strip: 28 1/2 − 1/16 = 28 7/16 long and 1 1/2 wide, under the top at 46 1/2 − 1 1/2 = 45.
 * Its face stands no more than 11 1/4 − 3/4 = 10 1/2 back.
 */
test('a stop strip from its first tap to the cut that makes it', async ({ page }) => {
  const hand = await begun(page);
  await hand.tap(button(page, '+ A stop strip'));
  const said = page.locator('main').getByLabel('In the bays, 1', { exact: true });
  await expect(button(page, /^Case bottom to the stop strip/)).toContainText('45');
  await filled(page, hand, { blank: /^How far back the face/, figure: '11' });
  await expect(said).toContainText('stands 1/2 past the back. Its face at most 10 1/2');
  await filled(page, hand, { blank: /^How far back the face/, figure: '13/16' });
  await hand.tap(page.getByRole('button', { name: 'Parts' }));
  const row = page.locator('main .nextset').filter({ hasText: 'Stop strip' }).first();
  await expect(row).toContainText('28 and 7/16');
  await page.goto('./#/cuts');
  const cuts = page.locator('main');
  await expect(
    cuts.getByRole('button', { name: /^Rip fence at Stop strip .* 1 and 1\/2 inches/ }),
  ).toBeVisible();
  await expect(cuts.getByRole('button', { name: /Stop strip .* 28 and 7\/16 inches/ }).first()).toBeVisible();
});

/** A sheet read at one corner. */
const sheet = (page: Page, hand: Hand, read: string) =>
  measured(page, hand, { what: 'Measure a sheet', reads: [read] });

/** A case begun: its outside sizes, and its sheet. */
async function begun(page: Page): Promise<Hand> {
  await caseBegun(page, { read: '3/4', case: { width: '30', height: '48', depth: '45/4' } });
  return handOn(page);
}
