import { expect, test } from '@playwright/test';
import { blankOf, openSample, openSampleOffline, pastBounce, standing, typed, typeInto } from './app';
import { offlineTest } from './browser';

offlineTest(
  'the room offline: a narrower place says by how much the case no longer goes in, at its page and at home',
  async ({ page }) => {
    await openSampleOffline(page);
    await page.goto('./#/room');
    // 41 1/8 between the lines less twice 1/2, down to the mark; 38 3/4 with the frame
    await expect(page.locator('.greatest .sr').first()).toHaveText(/40 and 1\/8/);
    await expect(page.locator('.inroom')).toContainText('1 3/8 to spare');
    // 2 more free at the left: 41 1/8 − 2 1/2 − 1/2 − 38 3/4 = −5/8
    await typeInto(page, /^Left free at the left/, '2 1/2');
    await expect(page.locator('.inroom')).toContainText('5/8 too wide');
    await page.goto('./#/case/case');
    await expect(page.locator('.inroom')).toContainText('5/8 too wide');
    await page.goto('./#/');
    await expect(page.locator('a[href="#/room"]')).toContainText('5/8 too wide');
  },
);

test('a place read at one line only is asked for at its own sentence', async ({ page }) => {
  await openSample(page);
  await page.goto('./#/room');
  await page.getByRole('button', { name: 'A place' }).first().click();
  await typed(page, '70');
  await typeInto(page, 'Place 4: from the left line to the left wall', '1');
  await expect(page.getByRole('region', { name: 'Place 4' })).toContainText('read the right line there too');
  await typeInto(page, 'Place 4: from the right line to the right wall', '1');
  await expect(page.getByRole('region', { name: 'Place 4' })).not.toContainText('read the right');
});

test('foot by foot: the figure giant, the tick kept over a reload, the whole held back until what comes first', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/level/case');
  await page.getByRole('button', { name: 'Foot by foot' }).click();
  const bar = page.locator('.knuckle .main');
  // the high point first: nothing goes under it
  await expect(page.locator('.what')).toContainText('front right');
  await bar.click();
  await pastBounce(page);
  await expect(bar).toContainText('Next');
  await page.reload();
  await expect(bar).toContainText('Next');
  await bar.click();
  await expect(standing(page)).toHaveText(/1\/16/);
  await page.goto('./#/level/case/whole');
  await expect(bar).toContainText('See what comes first');
  // the same count in the list of cuts, and the way to the first foot that is not set
  await page.goto('./#/setup/bench~wcase0level');
  await page.getByRole('button', { name: '1 of 4 feet set' }).click();
  await expect(page).toHaveURL(/#\/level\/case\/front1$/);
});

test('feet and scribe lead back to where they were opened from, and undo names what stands level', async ({
  page,
}) => {
  await openSample(page);
  const back = () => page.getByRole('button', { name: 'Back', exact: true }).click();
  for (const [from, way, to] of [
    ['#/case/case', page.locator('a[href="#/level/case"]'), '#/level/case'],
    ['#/case/case', page.locator('a[href="#/scribe/case"]'), '#/scribe/case'],
    ['#/room', page.getByRole('button', { name: 'Level and feet' }).first(), '#/level/case'],
    [
      '#/setup/bench~wcase0scribe',
      page.getByRole('button', { name: 'Scribe', exact: true }),
      '#/scribe/case',
    ],
  ] as const) {
    await page.goto(`./${from}`);
    await way.click();
    await expect(page).toHaveURL(new RegExp(`${to}$`));
    await back();
    await expect(page).toHaveURL(new RegExp(`${from}$`));
  }
  // one figure at a time, and back by the same ways
  await page.goto('./#/case/case');
  await page.locator('a[href="#/level/case"]').click();
  await page.getByRole('button', { name: 'Foot by foot' }).click();
  await expect(page).toHaveURL(/#\/level\/case\/front2$/);
  await page.getByRole('button', { name: 'Leave' }).click();
  await expect(page).toHaveURL(/#\/level\/case$/);
  await back();
  await expect(page).toHaveURL(/#\/case\/case$/);

  // everything before it let go ahead, the case stands level
  await page.goto('./#/setup/bench~wcase0level');
  await page.getByRole('button', { name: 'set by the level alone' }).click();
  await page.getByRole('checkbox', { name: 'Cabinet' }).click();
  await expect(page.getByRole('button', { name: 'Undo: Levelled: Cabinet' })).toBeVisible();
});

test('the way in, the wall and the scribe follow what is keyed', async ({ page }) => {
  await openSample(page);
  await page.goto('./#/room/way');
  // 18 1/4 deep and two hands through 20: 1/4 too little
  await typeInto(page, 'On the way 1: clear width, stop to stop', '20');
  await expect(page.getByRole('region', { name: 'Door to the east room' })).toContainText(
    '1/4 too little sideways',
  );
  await page.goto('./#/room/wall');
  await typeInto(page, 'Not here 1: where it begins', '26');
  await expect(page.locator('main')).toContainText('At 27 not: it is in the place from 26 to 33.');
  await page.goto('./#/scribe/case');
  // gaps 1/8, 9/32, 3/16 become 1/8, 3/8, 3/16: compass 3/8, and 1/4 comes off where 3/16 hangs over
  await typeInto(page, 'Left edge 2: from edge to wall', '3/8');
  await expect(page.locator('main')).toContainText('It takes 1/4 of overhang, 1/16 more than there is');
  await expect(blankOf(page, 'How far the left edge hangs over')).toContainText('as drawn');
});

test('a door beside the case: it is drawn, and a case before it is said alike on the room, the case and at home', async ({
  page,
}) => {
  await openSample(page);
  await page.goto('./#/room');
  await expect(page.locator('.plandraw .swing')).toHaveCount(1);
  await expect(page.locator('.inroom')).toContainText('Door to the east room: its leaf keeps');
  await page.goto('./#/room/way');
  // 18 1/4 − 4 stand before it, 1 7/8 off that wall
  await typeInto(page, 'On the way 1: how far from that corner its opening begins', '4');
  const says = 'Door to the east room: the case stands 14 1/4 before its opening';
  await expect(page.getByRole('region', { name: 'Door to the east room' })).toContainText(says);
  for (const at of ['./#/room', './#/case/case']) {
    await page.goto(at);
    await expect(page.locator('.inroom')).toContainText('It cannot stand there: a door is in its way.');
    await expect(page.locator('.inroom')).toContainText(says);
  }
  await page.goto('./#/');
  await expect(page.locator('a[href="#/room"]')).toContainText(says);
});

test('of a new job the room and the things to go in come before any case', async ({ page }) => {
  await page.goto('./#/jobs');
  await page.getByRole('button', { name: 'New job' }).click();
  await page.getByRole('dialog').getByRole('textbox').fill('Shells');
  await page.getByRole('dialog').getByRole('textbox').press('Enter');
  await expect(page.getByRole('heading', { name: 'Shells' })).toBeVisible();
  await expect(page.locator('a[href="#/room"]')).toContainText('Nothing is read yet');
  await page.locator('a[href="#/things"]').click();
  await expect(page.locator('main')).toContainText('What failed last time');
  await page.getByRole('button', { name: 'A thing' }).click();
  await typeInto(page, 'Thing: how tall', '4');
  await expect(page.locator('.thing')).toContainText('nowhere yet');
  await page.goto('./#/');
  await expect(page.locator('a[href="#/things"]')).toContainText('1 thing, 1 not placed yet');
});
