import { expect, type Page, test } from '@playwright/test';
import { choose, cutNext, makeReady, pastBounce, shot, standing, typeInto } from './app';
import { drawersBegun } from './begun';

test.describe.configure({ mode: 'parallel' });

/** Into a blank that may be open: a figure, as calipers type it. */
async function read(page: Page, blank: string | RegExp, figure: string): Promise<void> {
  await pastBounce(page);
  await typeInto(page, blank, figure);
}

/** Drawers in an opening of their own, on the page of their wood. */
async function toWood(page: Page): Promise<void> {
  await drawersBegun(page, { width: '265/16', height: '24', depth: '20', boxDeep: '67/4' });
  await expect(page.locator('.problems')).toHaveCount(0);
}

/** The settings of a machine in the list of cuts, from the first. */
async function firstCard(page: Page, named: RegExp): Promise<void> {
  await page.goto('./#/cuts');
  await page.getByRole('button', { name: named }).first().click();
  await makeReady(page);
}

test('box joints: fingers, their groove, the sled, and the cards they are cut at', async ({ page }) => {
  test.setTimeout(120_000);
  await toWood(page);
  await choose(page, /How box front and sides are joined/, 'a box joint');
  await read(page, /How wide a finger is/, '1/2');
  await page.getByRole('button', { name: 'More: depths, groove, step of the sled' }).click();
  // a cutter of 1/2 on a pin that steps 1.005: fingers of .505, .005 too wide; for .003 loose .008 toward the blade
  await read(page, /From slot to slot/, '1.005');
  await shot(page, 'box-joint-wood');
  await page.getByRole('button', { name: 'To the fronts' }).click();
  await page.getByRole('button', { name: 'Boxes, slides, pulls' }).click();
  await page
    .getByRole('button', { name: /Sizes and joint/ })
    .first()
    .click();
  await expect(page.getByRole('img', { name: /Front end of a side with \d+ fingers/ })).toBeVisible();
  await expect(
    page.getByText(/the first at 1\/2, then every 1\. The front begins with a slot/),
  ).toBeVisible();
  // the groove, 3/8 up and .26 wide, crosses the line of two fingers at 1/2
  await expect(page.getByText(/lies across the line of two fingers/)).toContainText('9/32 from both ends');
  await expect(page.getByText(/The pin makes fingers/).first()).toContainText(
    'fingers 0.505 wide, 0.005 tight. For 0.003 loose move it 0.008 toward the blade.',
  );

  // sides first, off the pin; the front after them, off a side hung on it
  await firstCard(page, /First slot at/);
  await expect(standing(page)).toContainText('1/2 inch');
  await expect(
    page.getByText('bottom edge against the pin; then each slot over the pin, 1 on'),
  ).toBeVisible();
  await expect(page.getByText('Bottom edge toward the pin').first()).toBeVisible();
  await shot(page, 'box-joint-side');
  await cutNext(page);
  await firstCard(page, /Slot at the edge, up to/);
  await expect(standing(page)).toContainText('1/2 inch');
  await expect(page.getByText(/^Bottom edge against that of a side hung on the pin/)).toBeVisible();
  await shot(page, 'box-joint-front');
});

test('a rabbeted front: its depth is asked, said wrong by how much, and its card shows the teeth', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await toWood(page);
  await choose(page, /How box front and sides are joined/, 'a rabbeted front');
  await read(page, /How deep the rabbets/, '5/8');
  await expect(page.getByText(/goes through a front 1\/2 thick, 1\/8 past it/)).toBeVisible();
  await read(page, /How deep the rabbets/, '1/4');
  await expect(page.locator('.problems')).toHaveCount(0);
  await page.getByRole('button', { name: 'To the fronts' }).click();
  await page.getByRole('button', { name: 'Boxes, slides, pulls' }).click();
  await page
    .getByRole('button', { name: /Sizes and joint/ })
    .first()
    .click();
  // 16 3/4 less 1/2 and 1/4 more
  await expect(page.getByText('plus rabbet of the front')).toBeVisible();
  await expect(
    page.getByText(/Rabbets across both ends of the front, 1\/4 deep and 1\/2 wide/),
  ).toBeVisible();
  await firstCard(page, /Teeth showing past the fence/);
  await expect(standing(page)).toContainText('1/2 inch');
  await shot(page, 'rabbeted-front');
});

test('in wood instead of slides: what is asked and refused, the sticks, what stops a drawer, and nothing to buy', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await toWood(page);
  await page.getByRole('button', { name: 'Boxes and slides' }).click();
  await choose(page, /What the boxes run on/, 'strips in their sides');
  await page.getByRole('button', { name: 'Next: wood and joints' }).click();
  await expect(page.getByText('Say what the runners or strips are of, and how thick.')).toBeVisible();
  await choose(page, /What the runners or strips are of/, 'Sheet C');
  // a dado of 1/4 for the back in a side of 1/2 leaves the 1/4 a strip takes
  await expect(page.getByText(/meets the dado for the back/)).toContainText('Strips under 1/4 thick');
  await page.getByRole('button', { name: 'Boxes and slides' }).click();
  await choose(page, /What the boxes run on/, 'wooden runners');
  // two of 1/4 less a side of 1/2 and its play: 1/32 under nothing, 9/32 under the 1/4 that catches
  await expect(page.getByText(/does not reach past the side of the box/)).toContainText('9/32 short');
  await shot(page, 'on-runners');
  await page.getByRole('button', { name: 'Next: wood and joints' }).click();
  await choose(page, /What the runners or strips are of/, 'Sheet A');
  await expect(page.locator('.problems')).toHaveCount(0);
  await page.getByRole('button', { name: 'To the fronts' }).click();
  await page.getByRole('button', { name: 'Boxes, slides, pulls' }).click();
  await expect(page.getByRole('heading', { name: 'Sticks for the runners' })).toBeVisible();
  // inside 16 3/4 − 1/2 − 1/2 − 1/2 = 15 1/4, less 1/16, a block of 3 and 3/4; from the face 3/4 + 1/2 + 1/16
  const stops = page.getByText(/a block on each runner over it/);
  await expect(stops).toContainText('1 5/16 behind the face');
  await expect(stops).toContainText('turned up 15/16 over its top edge. It comes out 11 7/16.');
  await expect(page.getByRole('img', { name: /One side from the front/ })).toBeVisible();
  await stops.scrollIntoViewIfNeeded();
  await shot(page, 'runners-and-stops');
  await page.getByRole('button', { name: 'Set runners one at a time' }).click();
  await expect(page.getByText(/rest the runner on it, one at each side/)).toBeVisible();
  await page.goto('./#/cuts');
  await expect(page.getByText(/Stop the drawers/).first()).toBeAttached();
  await page.goto('./#/buy');
  await expect(page.getByText(/how long the slides are/)).toHaveCount(0);
  await expect(page.getByText(/pair/)).toHaveCount(0);
});

test('dowels: front and back butted, where the holes go from the top edge, how deep, and on the list to buy', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await toWood(page);
  await choose(page, /How box front and sides are joined/, 'dowels');
  await choose(page, /Where the box front stands/, 'between the sides');
  await choose(page, /Where the box front stands/, 'over the side ends');
  await page.getByRole('button', { name: 'More: groove, dowels' }).click();
  await expect(page.getByRole('button', { name: /How thick the dowels are/ })).toContainText('1/4');
  // stuff of 1/2 takes from 1/6 to 1/4
  await read(page, /How thick the dowels are/, '3/8');
  await expect(page.getByText(/No dowel on the shelf fits/)).toContainText('to 1/4 thick');
  await read(page, /How thick the dowels are/, '1/4');
  await expect(page.locator('.problems')).toHaveCount(0);
  await page.getByRole('button', { name: 'To the fronts' }).click();
  await page.getByRole('button', { name: 'Boxes, slides, pulls' }).click();
  await page
    .getByRole('button', { name: /Sizes and joint/ })
    .first()
    .click();
  // a third of 1 1/2 in a side of 1/2 is too deep: 5/16 and 1/16 of room, the rest and 1/16 in the end of the back
  await expect(page.getByText(/Dowels of the back/).last()).toContainText(
    'Bore 3/8 deep in the face and 1 1/4 in the end',
  );
  await shot(page, 'doweled');
  await firstCard(page, /Middle of the dowels at/);
  await expect(standing(page)).toContainText('1/4 inch');
  await expect(page.getByText(/from the top edge/).first()).toBeVisible();
  await shot(page, 'doweled-card');
  // four drawers, two in each of four corners
  await page.goto('./#/buy');
  await expect(page.getByText(/Dowels 1\/4/).first()).toBeVisible();
});

test('fronts that are those of their boxes: refused dovetailed by how much, rabbeted past the slides, and nothing fitted', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await toWood(page);
  await choose(page, /What the front of a drawer is/, 'the fronts of the boxes');
  // 16 9/16 less two gaps of 3/32 is 16 3/8, the box 15 9/16
  await expect(page.getByText(/the box is 13\/16 narrower than the front/)).toContainText(
    '3/32 at each side of the box would fit',
  );
  await pastBounce(page);
  await choose(page, /How box front and sides are joined/, 'a rabbeted front');
  await expect(page.locator('.problems')).toHaveCount(0);
  await expect(page.getByText(/box fronts of/)).toHaveCount(0);
  await shot(page, 'own-front-wood');
  await page.getByRole('button', { name: 'To the fronts' }).click();
  await expect(page.getByText(/shims/i)).toHaveCount(0);
  await shot(page, 'own-front-fronts');
  await page.getByRole('button', { name: 'Boxes, slides, pulls' }).click();
  await page
    .getByRole('button', { name: /Sizes and joint/ })
    .first()
    .click();
  // 13/32 at each end and a side of 1/2
  await expect(page.getByText(/Rabbets across the front, 3\/8 deep, 29\/32 wide at both ends/)).toBeVisible();
  await expect(page.getByText(/The front stands past its box 13\/32 at each end/).first()).toBeVisible();
  await shot(page, 'own-front-boxes');
  // 14 9/16 and two grooves of 1/4 less 1/16 is 15: a screw 1 1/2 in from either side and one between
  await page.goBack();
  await page.getByRole('button', { name: 'Change' }).click();
  await page.getByRole('button', { name: /Wood and joints/ }).click();
  await choose(page, /How the bottom goes in/, 'slid in');
  await page.getByRole('button', { name: 'To the fronts' }).click();
  await page.getByRole('button', { name: 'Boxes, slides, pulls' }).click();
  const up = page.getByText(/^3 screws up through each bottom/);
  await expect(up).toContainText('1 1/2, 7 1/2, 13 1/2 from the left and 3/4 in from the back edge');
  await up.scrollIntoViewIfNeeded();
  await shot(page, 'bottom-screws');
  await firstCard(page, /Teeth showing past the fence/);
  await expect(standing(page)).toContainText('29/32 inch');
  await shot(page, 'own-front-card');
  await page.goto('./#/cuts');
  await expect(page.getByText(/Fit the fronts/)).toHaveCount(0);
  await expect(page.getByText(/Hang the boxes|Glue up the boxes|Glue the boxes/).first()).toBeAttached();
  await page.goto('./#/buy');
  await expect(page.getByText(/screwed on from inside/)).toHaveCount(0);
});
