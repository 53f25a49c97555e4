import { expect, type Page, test } from '@playwright/test';
import {
  blankOf,
  choose,
  keyIn,
  makeReady,
  pastBounce,
  shot,
  standing,
  ticksHere,
  typed,
  typeInto,
} from './app';
import { caseBegun } from './begun';

test.describe.configure({ mode: 'parallel' });

/** The stock in hand with no reading of it yet, and back to its case. */
async function plannedAt(page: Page, thick: string): Promise<void> {
  await page
    .locator('main .nextset, main .sect')
    .filter({ hasText: /Planned, until it is measured/ })
    .first()
    .click();
  await page.getByRole('dialog').getByRole('button', { name: thick, exact: true }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
  await page.getByRole('button', { name: 'Back to case' }).click();
}

/** A case 42 5/8 wide, 65 1/2 high and 18 deep of 3/4 sheet, without a back: 41 1/8 across and 60 up, clear. */
async function caseOfSheet(page: Page): Promise<void> {
  const outside = { width: '341/8', height: '131/2', depth: '18', feet: '4' };
  await caseBegun(page, { planned: '3/4', case: outside });
  await expect(blankOf(page, /What the sides are of/)).toContainText('Sheet A');
}

async function looseShelves(page: Page): Promise<void> {
  await page.getByRole('button', { name: /loose shelves/i }).click();
  const dock = page.getByRole('dialog');
  await dock.getByRole('button', { name: '3', exact: true }).click();
  await dock.getByRole('button', { name: 'Done' }).click();
  await expect(dock).toBeHidden();
  await pastBounce(page);
}

const inBays = (page: Page) => page.getByRole('region', { name: 'In the bays, 1' });

test('loose shelves on pins, to the cards their holes are bored by', async ({ page }) => {
  await caseOfSheet(page);
  await looseShelves(page);
  await expect(inBays(page)).toContainText('pins, no holes laid out.');
  await choose(page, /What holds the loose shelves/, 'pins in rows of holes');
  await typeInto(page, /First hole over the bottom/, '4 3/4');
  await typeInto(page, /Hole to hole/, '1 1/2');
  await typeInto(page, /Room over the last hole/, '5');
  await typeInto(page, /Back edge to the rear row/, '2 1/2');
  // 60 − 4 3/4 − 5 = 50 1/4: 33 pitches of 1 1/2 are 49 1/2, so 34 holes, 3/4 over; the last at 4 3/4 + 49 1/2
  await expect(inBays(page)).toContainText('34 holes a row');
  await expect(inBays(page)).toContainText(
    'the last 54 1/4 over the bottom, 3/4 more than said left at the top',
  );
  // a shelf: 41 1/8 less 1/8 of play
  await typeInto(page, /Room for a pin at each end/, '1/16');

  await page.goto('./#/cuts');
  const rear = page.locator('main .nextset').filter({ hasText: 'Row from the front edge' });
  await expect(rear).toHaveCount(2);
  await rear.last().click();
  await makeReady(page);
  // 18 − 2 1/2 from the front edge; both sides on one card, at other hands
  await expect(standing(page)).toHaveText(/15 and 1\/2/);
  const marks = page.getByRole('region', { name: 'Holes on: Left side, Right side' });
  // bottom 3/4 on feet of 4: the datum is 4 3/4 up, the first hole at 9 1/2, the last at 9 1/2 + 49 1/2
  await expect(marks.getByRole('listitem').first()).toHaveText('1: 9 1/2');
  await expect(marks.getByRole('listitem')).toHaveCount(34);
  await expect(marks.getByRole('listitem').last()).toHaveText('34: 59');
  const pieces = page.locator('.saw [role="checkbox"]');
  await expect(pieces.filter({ hasText: 'Left side' })).toContainText('bottom end on your right');
  await expect(pieces.filter({ hasText: 'Right side' })).toContainText('bottom end on your left');
  await pieces.first().click();
  await expect(ticksHere(page)).toHaveCount(1);

  // a dado by hand 20 to 20 1/2 up opens hole 8 of both rows, at 9 1/2 + 7 × 1 1/2 = 20, 1/4 wide: clear from 20 1/8
  await page.goto('./#/parts');
  await page.getByRole('button', { name: /^Right side/ }).click();
  await page.getByRole('button', { name: 'A joint or a row of holes' }).click();
  await choose(page, 'Joint 1: what is cut', 'A dado across it');
  await typeInto(page, 'Joint 1: how wide', '1/2');
  await typeInto(page, 'Joint 1: how deep', '1/4');
  await typeInto(page, 'Joint 1: how far from the bottom end', '20');
  await expect(page.getByRole('region', { name: 'A joint or a row of holes' })).toContainText(
    'It cuts into hole 8 of the front row and hole 8 of the rear row: no pin holds there. Moved 1/8 toward the top end it is clear of them.',
  );
  await shot(page, 'dado-over-pins');
});

test('holes too near a dado are left out of both walls, and what cannot be bored is told at its blank', async ({
  page,
}) => {
  await caseOfSheet(page);
  await looseShelves(page);
  await choose(page, /What holds the loose shelves/, 'pins in rows of holes');
  await typeInto(page, /First hole over the bottom/, '4 3/4');
  await typeInto(page, /Hole to hole/, '1 1/2');
  await page.getByRole('button', { name: /fixed shelf/i }).click();
  // 15 1/4 is hole 8, in a dado from 14 15/16 to 15 11/16 and its fit; hole 9 at 16 3/4 is an inch clear
  await typeInto(page, /Case bottom to the shelf/, '14 15/16');
  await expect(inBays(page)).toContainText('too near a shelf or a groove across the wall: hole 8.');
  await typeInto(page, /How deep the holes are/, '3/4');
  await expect(inBays(page)).toContainText('Holes 3/4 deep go through a wall 3/4 thick.');
});

test('a template says what turning it does and how far its holes may drift; four pins say whether a shelf rocks', async ({
  page,
}) => {
  await caseOfSheet(page);
  await looseShelves(page);
  await choose(page, /What holds the loose shelves/, 'pins in rows of holes');
  await typeInto(page, /First hole over the bottom/, '4 3/4');
  await typeInto(page, /Hole to hole/, '1 1/2');
  await typeInto(page, /Room over the last hole/, '4');
  await typeInto(page, /How long the template is/, '36');
  await typeInto(page, /End of the template to its first hole/, '1 5/8');
  await keyIn(page, /How many holes the template has/, '23');
  // 36 − 2 × 1 5/8 − 22 × 1 1/2 = −1/4
  await expect(inBays(page)).toContainText('every hole comes 1/4 too low');
  await expect(inBays(page)).toContainText('or make it 36 1/4 long');
  // 60 − 4 3/4 − 4 = 51 1/4: 35 holes; 12 more than 23 are one hop: 34 × .001 + .003, and 34 × .004
  await expect(inBays(page)).toContainText('pinned again once in its last hole, by 0.037 (too much)');
  await expect(inBays(page)).toContainText('pinned anew in every hole by 0.136 (too much)');

  await page.getByRole('link', { name: 'As built' }).click();
  const pins = page.getByRole('region', { name: 'Four pins of a shelf' });
  for (const [place, figure] of [
    ['front, left', '12 1/4'],
    ['front, right', '12 1/4'],
    ['back, left', '12 1/4'],
    ['back, right', '12 5/16'],
  ] as const) {
    await pins.getByRole('button', { name: place }).click();
    await typed(page, figure);
    await pastBounce(page);
  }
  await expect(pins).toContainText('The shelf rocks: 1/16 under the fourth pin, 1/32 more than 1/32.');
});

test('metal strips let in: grooves in both sides off one fence, and a shelf short of them', async ({
  page,
}) => {
  await caseOfSheet(page);
  await looseShelves(page);
  await choose(page, /What holds the loose shelves/, 'metal strips let in');
  await expect(page.getByRole('button', { name: 'Next: how wide a strip is' })).toBeVisible();
  await typeInto(page, /How wide a strip is/, '5/8');
  await typeInto(page, /How thick a strip is/, '13/64');
  await typeInto(page, /How deep its groove is/, '3/16');
  await typeInto(page, /Strip short of its opening/, '1/2');
  await typeInto(page, /How long a strip is as sold/, '72');
  await keyIn(page, /Clips to spare/, '2');
  // 60 − 1/2; 5/8 + 1/32; 13/64 − 3/16
  await expect(inBays(page)).toContainText('Four strips, at most 59 1/2 long, in grooves 21/32 wide');
  await expect(inBays(page)).toContainText('They stand 1/64 proud.');

  // the near wall of the rear groove: 18 − 2 − 21/32 = 15 11/32; both sides on one card
  await page.goto('./#/cuts');
  const rear = page.locator('main .nextset').filter({ hasText: 'front edge on fence' });
  await expect(rear).toHaveCount(2);
  await rear.last().click();
  await makeReady(page);
  await expect(standing(page)).toHaveText(/15 and 11\/32/);
  // a shelf is 41 1/8 − 2 × 1/64 − 2 × 1/16 = 40 31/32 long
  await page.goto('./#/parts');
  await page.getByRole('button', { name: /Loose shelf/ }).click();
  await expect(page.locator('main')).toContainText('40 and 31/32');

  // four clips for each of three shelves; four strips out of what is sold 72 long: 72 − 59 1/2 left of each
  await page.goto('./#/buy');
  await expect(page.getByRole('region', { name: 'Shelf clips' })).toContainText('14');
  const metal = page.getByRole('region', { name: 'Metal strips' });
  await expect(metal).toContainText('Cut to at most: 4 of 59 1/2.');
  await expect(metal).toContainText('Left of each: 12 1/2');
});

test('edging of wood: bought as band until its stick is said, then ripped and cut with the shelves', async ({
  page,
}) => {
  await caseOfSheet(page);
  await looseShelves(page);
  await choose(page, /What holds the loose shelves/, 'pins 32 mm apart');
  await typeInto(page, /Edging on the front of a shelf/, '1/4');
  const here = page.url();
  await page.goto('./#/buy');
  // 3 × (41 1/8 − 1/8) are 123; a tenth over 135 3/10, 11 11/40 feet
  const band = page.getByRole('region', { name: 'Band' });
  await expect(band).toContainText('Band 1/4 thick, for edges of 3/4');
  await expect(band.locator('.many')).toHaveText('12 ft');

  await page.goto(here);
  await blankOf(page, /What the shelf edging is of/).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Measure a stick' }).click();
  await plannedAt(page, '7/8');
  await expect(blankOf(page, /What the shelf edging is of/)).toContainText('Stick B');
  await expect(inBays(page)).toContainText('it stands 1/8 past the shelf: trim it flush.');

  await page.goto('./#/parts');
  const edge = page.getByRole('button', { name: /Shelf edging/ });
  await edge.click();
  await expect(page.locator('main')).toContainText('41');
  await page.goto('./#/buy');
  await expect(page.getByRole('region', { name: 'Shelf pins' })).toBeVisible();
  await expect(band).toHaveCount(0);
  await page.goto('./#/cuts');
  await expect(
    page
      .locator('main')
      .getByText(/Shelf edging/)
      .first(),
  ).toBeVisible();
});
