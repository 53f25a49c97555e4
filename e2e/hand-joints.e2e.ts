import { expect, test } from '@playwright/test';
import { choose, keyIn, openSample, shot, typeInto } from './app';

test('a groove added to a part by hand is said, refused where it comes out, and stands among its cuts', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/part/case~left');
  await page.getByRole('button', { name: 'A joint or a row of holes' }).click();
  await choose(page, 'Joint 1: what is cut', 'A groove');
  await choose(page, 'Joint 1: along which edge or end', 'front edge');
  await typeInto(page, 'Joint 1: how far from the front edge', '1/2');
  await typeInto(page, 'Joint 1: how wide', '1/4');
  await typeInto(page, 'Joint 1: how deep', '2');
  // the side is 23/32 thick: 2 deep comes out by 1 9/32
  await expect(page.getByText('It is not cut: it comes out at the other side, by 1 9/32.')).toBeVisible();
  await expect(page.getByText(/^Groove added by hand/)).toHaveCount(0);
  await typeInto(page, 'Joint 1: how deep', '3/8');
  await expect(
    page.getByText('Groove added by hand: 1/2 from the front edge, 1/4 wide, 3/8 deep.'),
  ).toBeVisible();
  await shot(page, 'hand-joints');
  await expect(page.getByText('groove added by hand', { exact: true })).toBeVisible();
  // the back of a drawer has a bottom and a top edge: set like the grooves of its sides, it is cut with them
  await page.goto('./#/part/drawers~c1d1boxback');
  await page.getByRole('button', { name: 'A joint or a row of holes' }).click();
  await choose(page, 'Joint 1: what is cut', 'A groove');
  await typeInto(page, 'Joint 1: how far from the bottom edge', '13/32');
  await typeInto(page, 'Joint 1: how wide', '11/32');
  await typeInto(page, 'Joint 1: how deep', '3/16');
  await expect(
    page.getByText('Groove added by hand: 13/32 from the bottom edge, 11/32 wide, 3/16 deep.'),
  ).toBeVisible();
  // holes 3/8 to 5/8 up run into it, 13/32 up: below it there is room from 9/32 down, 7/32 nearer
  await page.getByRole('button', { name: 'A joint or a row of holes' }).click();
  await choose(page, 'Joint 2: what is cut', 'A row of holes');
  await typeInto(page, 'Joint 2: how wide', '1/4');
  await typeInto(page, 'Joint 2: how deep', '1/4');
  await typeInto(page, 'Joint 2: how far from the bottom edge', '1/2');
  await keyIn(page, 'Joint 2: how many', '4');
  await typeInto(page, 'Joint 2: how far apart', '2');
  await typeInto(page, 'Joint 2: how far the first is from the left end', '3');
  await expect(
    page.getByText(
      'It is not bored: hole 1 runs into a groove or a dado that is there already. Moved 7/32 toward the bottom edge it fits.',
    ),
  ).toBeVisible();
  await typeInto(page, 'Joint 2: how far from the bottom edge', '1 1/4');
  await expect(
    page.getByText(
      'Holes 1/4 wide and 1/4 deep in the inside face, 1 1/4 from the bottom edge: row added by hand: 4 holes, 3 to 9 from the left end, every 2.',
    ),
  ).toBeVisible();
  await shot(page, 'hand-holes-drawer');
  // a dado across the stiles, which had no groove; the side of a drawer has a bottom edge that is notched
  await page.goto('./#/part/case~stile');
  await page.getByRole('button', { name: 'A joint or a row of holes' }).click();
  await choose(page, 'Joint 1: what is cut', 'A dado across it');
  await typeInto(page, 'Joint 1: how far from the bottom end', '4 1/8');
  await typeInto(page, 'Joint 1: how wide', '3/4');
  await typeInto(page, 'Joint 1: how deep', '9/32');
  await expect(
    page.getByText('Dado added by hand: 4 1/8 from the bottom end, 3/4 wide, 9/32 deep.'),
  ).toBeVisible();
  await expect(page.getByRole('button', { name: /dado added by hand/ }).first()).toBeVisible();
  // set like that for the bottom of the case, it is as wide as the bottom's: 23/32 and .005 of room, .724
  await page.getByRole('button', { name: 'Set like another dado' }).click();
  await shot(page, 'hand-dado');
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Left side: / })
    .first()
    .click();
  await expect(
    page.getByText(/^Dado added by hand: .* from the bottom end, 0\.724 wide, 9\/32 deep\.$/),
  ).toBeVisible();
  // a row of holes in the right side, refused where a hole runs off it
  await page.goto('./#/part/case~right');
  await page.getByRole('button', { name: 'A joint or a row of holes' }).click();
  await choose(page, 'Joint 1: what is cut', 'A row of holes');
  await typeInto(page, 'Joint 1: how wide', '1/4');
  await typeInto(page, 'Joint 1: how deep', '3/8');
  await typeInto(page, 'Joint 1: how far from the front edge', '2');
  await keyIn(page, 'Joint 1: how many', '3');
  await typeInto(page, 'Joint 1: how far apart', '1');
  await typeInto(page, 'Joint 1: how far the first is from the bottom end', '1/16');
  await expect(page.getByText('the first hole runs 1/16 off the part')).toBeVisible();
  await typeInto(page, 'Joint 1: how far the first is from the bottom end', '20');
  await shot(page, 'hand-holes');
  await expect(
    page.getByText(
      'Holes 1/4 wide and 3/8 deep in the inside face, 2 from the front edge: row added by hand: 3 holes, 20 to 22 from the bottom end, every 1.',
    ),
  ).toBeVisible();
  await page.goto('./#/part/drawers~c1d1side');
  await page.getByRole('button', { name: 'A joint or a row of holes' }).click();
  await choose(page, 'Joint 1: what is cut', 'A notch in the bottom edge');
  await page.goto('./#/cuts');
  await expect(
    page.locator('main .cutrow').filter({ hasText: 'inside down, bottom edge on fence' }).first(),
  ).toContainText('Drawer 1, back left leads');
  await expect(
    page.locator('main .cutrow').filter({ hasText: 'bottom edge toward you, marked from left end' }),
  ).toContainText('inside up');
});
