import { expect, type Page, test } from '@playwright/test';
import { blankOf, choose, fillBlank, makeReady, pastBounce, shot, typed, typeInto } from './app';
import { caseBegun } from './begun';

test.describe.configure({ mode: 'parallel' });

const part = (page: Page, name: RegExp) => page.locator('main .nextset').filter({ hasText: name }).first();

/** Outside 30 × 48 × 12 of sheet planned at 3/4, one fixed shelf 20 over the bottom. */
async function stand(page: Page): Promise<void> {
  await caseBegun(page, { planned: '3/4', case: { width: '30', height: '48', depth: '12' } });
  await page.getByRole('button', { name: '+ A fixed shelf' }).click();
  await fillBlank(page, /Case bottom to the shelf/, '20');
}

test('a case butted together, its top over the sides, to its cut cards', async ({ page }) => {
  await stand(page);
  await choose(page, /How the bottom meets the sides/, 'butted between the sides');
  await choose(page, /How fixed shelves meet their walls/, 'butted');
  // nothing is cut so deep any more: no depth is asked for
  await expect(blankOf(page, /Depth of the dadoes in the sides/)).toHaveCount(0);
  await choose(page, /How the top meets the sides/, 'over the sides');
  await expect(blankOf(page, /Depth of the rabbet for the top/)).toHaveCount(0);
  await fillBlank(page, /How far the top of the case stands past each side/, '1/2');
  await expect(page.getByRole('region', { name: 'Adds back up' }).locator('li')).toHaveCount(4);

  // what holds them is not said: it is, one tap away, with the lines screws go in along, and is told here then
  const holds = page.getByRole('link', { name: /What holds the butted joints/ });
  await expect(holds).toContainText('not yet said');
  await expect(page.locator('main')).toContainText('For a heavy load let it into dadoes');
  await holds.click();
  const butted = page.getByRole('region', { name: 'Butted joints' });
  // the bottom at the lower ends: 3/8; the shelf's lower face 20 3/4 up: 21 1/8
  await expect(butted).toContainText('Left side, from its bottom end: bottom 3/8; shelf 21 1/8.');
  await expect(butted).toContainText('Top, from its left end: side 7/8; side 30 1/8.');
  await page.getByRole('button', { name: 'A butted joint' }).click();
  // number 8, .164 thick, in 3/4: (.750 − .164) ÷ 2
  await expect(page.locator('main')).toContainText('.293 of the part is left at each side of the screw.');
  await page.getByRole('button', { name: 'Dowels', exact: true }).click();
  await page.goBack();
  await expect(holds).toContainText('dowels, screws');

  // 30 − 2 × 3/4 = 28 1/2 between the sides; 30 + 2 × 1/2 over them; they are 48 − 3/4 long
  await page.getByRole('button', { name: 'Parts', exact: true }).click();
  await expect(part(page, /^Bottom/)).toContainText('28 and 1/2');
  await expect(part(page, /^Fixed shelf/)).toContainText('28 and 1/2');
  await expect(part(page, /^Top/)).toContainText('31');
  await expect(part(page, /^Left side/)).toContainText('47 and 1/4');

  // where the shelf stands is said, though nothing is cut: 20 over a bottom of 3/4
  await part(page, /^Left side/).click();
  await expect(page.locator('main')).toContainText('Line for the shelf');
  await expect(page.locator('main')).toContainText('its lower face 20 3/4 from the bottom end');

  // rips and lengths alone: three stops for 47 1/4, 31 and 28 1/2, and no groove or rabbet
  await page.goto('./#/cuts');
  const cuts = page.locator('main .cutrow').filter({ hasText: /Crosscut, stop at/ });
  await expect(cuts).toHaveCount(3);
  await expect(cuts.filter({ hasText: '28 and 1/2' })).toContainText(/Bottom/);
  await expect(page.locator('main')).not.toContainText(/[Rr]abbet|[Dd]ado/);
});

test('butted joints held by dowels, biscuits or slant screws: from the case to Cuts, on the part and on the list To buy', async ({
  page,
}) => {
  await stand(page);
  await choose(page, /How the bottom meets the sides/, 'butted between the sides');
  await choose(page, /How fixed shelves meet their walls/, 'butted');
  const holds = page.getByRole('link', { name: /What holds the butted joints/ });
  await holds.click();
  const screws = page.url();
  const hold = async (what: string, by: string) => {
    await page.getByRole('group', { name: what }).getByRole('button', { name: by }).click();
    await pastBounce(page);
  };
  await hold('Bottom and sides', 'by dowels');
  await hold('Fixed shelves and their walls', 'by dowels');
  // a third of 3/4 is 1/4, half 3/8: 3/8 goes; (12 - 2 1/2) / 6 goes up to 2 spaces: 3 in each of 2 joints, twice
  await expect(page.getByText('6 in all go on the list To buy.')).toHaveCount(2);
  await expect(page.locator('main')).toContainText('3 in each: marks from the front edge 1 1/4, 6, 10 3/4.');
  await shot(page, 'butted-dowels');
  await page.goBack();
  await expect(holds).toContainText('bottom by dowels, shelf by dowels');

  // on the part: its two rows. The bottom at the lower ends: 3/8; the shelf 20 over 3/4, and 3/8
  await page.getByRole('button', { name: 'Parts', exact: true }).click();
  await part(page, /^Left side/).click();
  await expect(page.locator('main')).toContainText(
    'Holes 3/8 wide and 9/16 deep, 3/8 from the bottom end, for dowels of the bottom: 1 1/4, 6, 10 3/4 from the front edge.',
  );
  await expect(page.locator('main')).toContainText('21 1/8 from the bottom end, for dowels of the shelf');
  await shot(page, 'butted-dowels-part');

  // in Cuts, each row at its own figure, then on its card with its marks
  await page.goto('./#/cuts');
  const rows = page.locator('main .cutrow').filter({ hasText: /Middle of the dowels at/ });
  await expect(rows).toHaveCount(3);
  await shot(page, 'butted-dowels-cuts');
  await rows.filter({ hasText: '21 and 1/8' }).click();
  await makeReady(page);
  await expect(page.locator('main')).toContainText(
    'for dowels of the shelf: 1 1/4, 6, 10 3/4 from the front edge',
  );
  await shot(page, 'butted-dowels-card');
  await page.goto('./#/buy');
  await expect(page.getByText('Dowels 3/8 × 1 1/2')).toBeVisible();

  // the same on slant screws and biscuits: bored in the bottom alone, slotted in shelf and sides
  await page.goto(screws);
  for (const _ of [1, 2]) {
    await page.getByRole('button', { name: 'Take it out' }).first().click();
    await pastBounce(page);
  }
  await hold('Bottom and sides', 'by slant screws');
  await typeInto(
    page,
    'Bottom and sides: slant screws: from the joint back to the head’s seat, along the screw',
    '5/8',
  );
  await typeInto(page, 'Bottom and sides: slant screws: the head, so wide', '11/32');
  // 1 1/4 bites 5/8 × .9659 = .6037 of 3/4 and leaves 1/8
  await expect(page.locator('main')).toContainText('Take screws 1 1/4 long, driven at 15°');
  await hold('Fixed shelves and their walls', 'by biscuits');
  // 2 from either end, (12 − 4) ÷ 6 goes up to 2 spaces
  await expect(page.locator('main')).toContainText('3 in each: marks from the front edge 2, 6, 10.');
  await expect(page.getByRole('link', { name: 'Their slots are in Cuts.' })).toBeVisible();
  await shot(page, 'butted-biscuits');
  await page.goto('./#/cuts');
  await expect(page.locator('main .cutrow').filter({ hasText: /Stop collar/ })).toHaveCount(1);
  const slots = page.locator('main .cutrow').filter({ hasText: /Middle of the slots at/ });
  await expect(slots).toHaveCount(2);
  await shot(page, 'butted-biscuits-cuts');
  await slots.filter({ hasText: '21 and 1/8' }).click();
  await makeReady(page);
  await expect(page.locator('main')).toContainText(
    'for #20 biscuits of the shelf: 2, 6, 10 from the front edge',
  );
  await expect(page.locator('main')).toContainText('The base of the joiner against a straightedge');
  await expect(
    page.getByRole('button', {
      name: /Measure once for the shop: deepest the plate joiner plunges, plate joiner, base to mid-cutter/,
    }),
  ).toBeVisible();
  await expect(page.locator('.caution')).toContainText('Work clamped, both hands on the joiner.');
  await shot(page, 'butted-biscuits-card');

  // its joiner measured: the straightedge lies at 21 1/8 − 3/8, and nothing is asked any more
  const card = page.url();
  await page.goto('./#/shop');
  for (const [figure, size] of [
    ['Deepest the plate joiner plunges', '3/4'],
    ['Plate joiner, base to mid-cutter', '3/8'],
  ] as const) {
    await page.getByRole('button', { name: new RegExp(`^${figure}`) }).click();
    await typed(page, size);
  }
  await page.goto(card);
  await expect(page.locator('main')).toContainText(
    'Straightedge at 20 3/4, the base of the joiner against its far side.',
  );
  await expect(page.getByRole('button', { name: /Measure once/ })).toHaveCount(0);
});

test('a bottom under the sides of a case off the floor is refused by how much, at its blank', async ({
  page,
}) => {
  await stand(page);
  await fillBlank(page, /Floor to the underside/, '4');
  await choose(page, /How the bottom meets the sides/, 'under the sides');
  const says = 'The sides stand on the bottom, so the case cannot stand 4 off the floor. Make that 0';
  await expect(page.getByRole('region', { name: 'Joints' })).toContainText(says);
  await fillBlank(page, /Floor to the underside/, '0');
  await expect(page.getByRole('region', { name: 'Joints' })).not.toContainText('cannot stand');
  // the sides stand on it: 48 − 3/4
  await page.getByRole('button', { name: 'Parts', exact: true }).click();
  await expect(part(page, /^Right side/)).toContainText('47 and 1/4');
});

test('a shelf on tongues: a narrow groove in the sides, a shoulder cut away at each of its ends', async ({
  page,
}) => {
  await stand(page);
  await choose(page, /How fixed shelves meet their walls/, 'on tongues');
  const joints = page.getByRole('region', { name: 'Joints' });
  await fillBlank(page, /How thick the tongues are/, '3/4');
  await expect(joints).toContainText('Tongues 3/4 thick leave no shoulder: the shelves are 3/4 thick.');
  await expect(joints).toContainText('Half of that would do, 3/8.');
  await fillBlank(page, /How thick the tongues are/, '1/4');
  await expect(joints).not.toContainText('leave no shoulder');
  await choose(page, /Where the tongues of fixed shelves lie/, 'at the under face');

  // 28 1/2 clear, and two tongues of 1/4 − 1/32 = 7/32
  await page.getByRole('button', { name: 'Parts', exact: true }).click();
  await expect(part(page, /^Fixed shelf/)).toContainText('28 and 15/16');
  await part(page, /^Fixed shelf/).click();
  await expect(page.locator('main')).toContainText(
    'Tongue at the left end, 7/32 long: 1/2 cut away in the upper face.',
  );
  await expect(page.locator('main')).toContainText('rabbet for its tongue, right end');

  // the shelf's groove is the tongue and .005, and stands where the shelf's under face does: 20 over a bottom of 3/4
  await page.goto('./#/cuts');
  const card = (words: RegExp) => page.locator('main .cutrow').filter({ hasText: words });
  await expect(card(/Teeth showing past the fence.*Fixed shelf/)).toContainText('7/32 inches');
  // 20 3/4 less half of .005, from the bottom end
  await expect(card(/Stop block at.*Left side, Right side/)).toContainText('20 and 3/4 inches');
});

test('a bottom in a dado at the left and butted at the right, then a top in dadoes under the ends of the sides', async ({
  page,
}) => {
  await stand(page);
  const there = page.url();
  await choose(page, /How fixed shelves meet their walls/, 'butted');
  await fillBlank(page, /Floor to the underside/, '4');
  await page.getByRole('button', { name: 'Right ends otherwise' }).click();
  await choose(page, /How the right end of the bottom meets its side/, 'butted');
  const joints = page.getByRole('region', { name: 'Joints' });
  await expect(joints).toContainText('meets its side: butted, the top');
  await expect(page.getByRole('region', { name: 'Adds back up' }).locator('li')).toHaveCount(4);

  // 28 1/2 clear, and 1/4 into the left side
  await page.getByRole('button', { name: 'Parts', exact: true }).click();
  await expect(part(page, /^Bottom/)).toContainText('28 and 3/4');
  await part(page, /^Right side/).click();
  await expect(page.locator('main')).toContainText('Line for the bottom');
  await page.goto('./#/cuts');
  const dadoes = page.locator('main .cutrow').filter({ hasText: /Stop block at/ });
  await expect(dadoes).toHaveCount(1);
  await expect(dadoes).toContainText('Left side');
  await expect(dadoes).not.toContainText('Right side');

  // 48 high: what the sides run past the top comes off the clear height, and more than there is is refused
  await page.goto(there);
  await choose(page, /How the top meets the sides/, 'in dadoes');
  await fillBlank(page, /How far the sides run past/, '44');
  // 4 + 2 × 3/4 + 44 = 49 1/2
  await expect(page.locator('main')).toContainText(
    'what the sides run past it alone are 1 1/2 over the height',
  );
  await fillBlank(page, /How far the sides run past/, '3');
  await expect(joints).toContainText('past its upper face, fixed shelves');
  await expect(page.getByRole('region', { name: 'Adds back up' }).locator('li')).toHaveCount(4);
  await shot(page, 'top-in-dadoes');
  // 28 1/2 clear, 1/4 into each side; in both its dado begins 48 − 3 − 3/4 from the lower end, of the bottom's stack
  await page.getByRole('button', { name: 'Parts', exact: true }).click();
  await expect(part(page, /^Top/)).toContainText('29');
  await part(page, /^Right side/).click();
  await expect(page.locator('main')).toContainText(/dado for the top.*44 and 1\/4/);
  await shot(page, 'top-in-dadoes-side');
  await page.goto('./#/cuts');
  await expect(dadoes).toHaveCount(2);
  await expect(dadoes.filter({ hasText: '44 and 1/4' })).toContainText(/Left side.*Right side/);
});

test('a case mitred at its four corners: its parts to their long points, then their ends at 45°', async ({
  page,
}) => {
  await stand(page);
  await choose(page, /How the bottom meets the sides/, 'mitred with the sides');
  await choose(page, /How the top meets the sides/, 'mitred with the sides');
  await expect(page.getByRole('region', { name: 'Adds back up' }).locator('li')).toHaveCount(4);
  await page.getByRole('button', { name: 'Parts', exact: true }).click();
  await expect(part(page, /^Top/)).toContainText('30');
  await expect(part(page, /^Left side/)).toContainText('48');
  await part(page, /^Left side/).click();
  await expect(page.locator('main')).toContainText(
    'Mitred at the bottom and top end, 45°, the long points outside: its length is to them.',
  );
  // two figures: 30 for bottom and top, 48 for the sides
  await page.goto('./#/cuts');
  const mitres = page.locator('main .cutrow').filter({ hasText: 'outside up' });
  await expect(mitres).toHaveCount(2);
  await expect(mitres.filter({ hasText: '48' })).toContainText(/Left side/);
});

test('a case mitred at the bottom alone: the row of the sides says which end', async ({ page }) => {
  await stand(page);
  await choose(page, /How the bottom meets the sides/, 'mitred with the sides');
  await page.goto('./#/cuts');
  const mitres = page.locator('main .cutrow').filter({ hasText: 'outside up' });
  await expect(mitres.filter({ hasText: 'Left side' })).toContainText(
    'Left side, bottom end, Right side, bottom end',
  );
});
