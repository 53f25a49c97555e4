import { expect, type Page, test } from '@playwright/test';
import { choose, pastBounce, sampleOnPhone, typed, typeInto } from './app';
import { offlineTest } from './browser';
import { keptHere } from './kept';
import { firstPage, newProfile } from './profile';
import { serve } from './serve';

/** Types a reading, as calipers do, over one that may stand there. */
async function read(page: Page, blank: string | RegExp, figure: string): Promise<void> {
  await pastBounce(page);
  await typeInto(page, blank, figure);
}

/** A front measured at both sides, and its measure used. */
async function fitted(page: Page, no: number, at: string): Promise<void> {
  const panel = page.getByRole('region', { name: `Front ${no}, as built` });
  await expect(panel).toBeVisible();
  await read(page, /^Left (?!upright)/, at);
  await read(page, /^Right (?!upright)/, at);
}

/** What the machine's screen holds back is not ticked one at a time either: there it is said to be done, and back. */
async function sayWhatIsFirst(page: Page, says: string): Promise<void> {
  await expect(page.getByText(/^Blocked: .* comes first/)).toBeVisible();
  const figure = await page.locator('.giant .sr').first().textContent();
  await page.locator('.knuckle').getByRole('button', { name: 'See what comes first' }).click();
  await page.getByRole('button', { name: says }).first().click();
  await expect(page.locator('.mpiece:not(.waits)').first()).toBeVisible();
  await page.getByRole('button', { name: 'Leave' }).click();
  await expect(page.locator('.giant .sr').first()).toHaveText(figure ?? '');
  await expect(page.locator('.knuckle .main')).toContainText('is on');
}

const heights = (page: Page) =>
  page
    .locator('.bankfront')
    .evaluateAll((list) => list.map((el) => el.textContent?.replace(/\s+/g, ' ') ?? ''));

offlineTest(
  'an opening measured out of square, five fronts, three fitted, what is left shared, sticks; offline, killed midway',
  async () => {
    const server = await serve();
    const profile = newProfile();
    try {
      let context = await profile.open();
      let page = await firstPage(context);
      await sampleOnPhone(page, server.url);
      await server.stop(); // from here on there is no network at all

      // as planned: the five fronts of step 3 of the carried cabinet
      await page.getByRole('button', { name: /Mineral drawers/ }).click();
      expect((await heights(page)).map((x) => /Front \d: /.test(x))).toEqual([true, true, true, true, true]);
      await expect(page.locator('.bankfront').nth(2)).toContainText('5 and 25/32 inches');

      // measured: higher at the left, wider in front
      await page.getByRole('button', { name: 'Measure the opening' }).first().click();
      await read(page, /high, at the left/, '29 11/32');
      await read(page, /high, at the right/, '29 9/32');
      await read(page, /wide, in front/, '17 1/32');
      await read(page, /wide, at the back/, '16 31/32');
      await expect(page.getByText('Out of square by 1/16')).toBeVisible();
      await expect(page.getByText('Front and back differ by 1/16')).toBeVisible();
      await page.getByRole('button', { name: 'See what this would change' }).click();
      await expect(page.locator('.changes')).toContainText('Front 3, rip');
      await page.getByRole('button', { name: 'Use it for what is not cut' }).click();
      await page.getByRole('button', { name: 'Fronts', exact: true }).click();
      await expect(page.locator('.bankfront').nth(2)).toContainText('5 and 3/4 inches');
      await expect(page.getByRole('heading', { name: 'Out of square by 1/16' })).toBeVisible();

      // the first goes on, one number at a time, then measured
      await page.getByRole('button', { name: 'Fit one at a time' }).click();
      await expect(page.locator('.giant .sr').first()).toContainText('4 and 15/32 inches');
      await sayWhatIsFirst(page, 'All that is done already');
      await page.locator('.knuckle .main').click();
      await expect(page.locator('.knuckle .main')).toHaveText('Measure it');
      await pastBounce(page);
      await page.locator('.knuckle .main').click();
      await fitted(page, 1, '4 29/64');
      await page.getByRole('button', { name: 'Use it, next front' }).click();
      await expect(page.locator('.bankfront.fitted')).toHaveCount(1);

      // two more; the phone dies with the third read and not used
      await fitted(page, 2, '9 19/32');
      await page.getByRole('button', { name: 'Use it, next front' }).click();
      await expect(page.locator('.bankfront.fitted')).toHaveCount(2);
      await fitted(page, 3, '15 1/2');
      await expect(page.getByText(/3 gaps to go/)).toBeVisible();
      await keptHere(page);
      await profile.kill();

      context = await profile.open();
      page = await firstPage(context);
      await page.goto(server.url);
      await expect(page.locator('.bankfront.fitted')).toHaveCount(2);
      await expect(page.getByRole('region', { name: 'Front 3, as built' })).toContainText(
        '15 and 1/2 inches',
      );

      // tight at the right: the fronts left give, the larger share off the lower one
      await expect(page.getByText(/3 gaps to go/)).toContainText('tight');
      await choose(page, /Difference goes to/, 'the other fronts');
      await expect(page.getByText('Take 1/32 off front 4')).toBeVisible();
      await expect(page.getByText('Take 3/64 off front 5')).toBeVisible();
      await page.getByRole('button', { name: 'Use it, next front' }).click();
      await expect(page.locator('.bankfront.fitted')).toHaveCount(3);
      await expect(page.locator('.bankfront').nth(3)).toContainText('6 and 7/16 inches');
      await expect(page.locator('.bankfront').nth(0)).toContainText('4 and 3/8 inches');

      // undo takes it back by name, and what was fitted stays
      await pastBounce(page);
      await page.getByRole('button', { name: /^Undo: Front fitted/ }).click();
      await expect(page.locator('.bankfront.fitted')).toHaveCount(2);
      await expect(page.locator('.bankfront').nth(3)).toContainText('6 and 15/32 inches');

      // sticks stand where the opening put them, longest first; what comes off is reckoned from what stays
      await page.getByRole('button', { name: 'Boxes, slides, pulls' }).click();
      await expect(page.getByText('too short to hold at a saw')).toBeVisible();
      await page.getByRole('button', { name: 'Hang slides one at a time' }).click();
      await expect(page.locator('.giant .sr').first()).toContainText('26 and 27/32 inches');
      await expect(page.locator('.bigtick.blocked')).toHaveCount(2);
      await sayWhatIsFirst(page, 'Frame on is done already');
      await expect(page.locator('.bigtick.blocked')).toHaveCount(0);
      await read(page, /This stick measures/, '26 7/8');
      await page.locator('.knuckle .main').click();
      await expect(page.locator('.bigtick[aria-checked="true"]')).toHaveCount(1);
      await pastBounce(page);
      await page.locator('.knuckle .main').click();
      await expect(page.locator('.knuckle .main')).toHaveText('Next');
      await pastBounce(page);
      await page.locator('.knuckle .main').click();
      await expect(page.locator('.giant .sr').first()).toContainText('21 and 23/32 inches');

      // the same ticks in Cuts: a front and two slides; and what was said to be done before them, the rip and the
      // length of the first front, the case checked again once anchored, the frame on. The second front is used as
      // measured, and not ticked as on: its rip and its length are not
      await page.goto(`${server.url}#/cuts`);
      await expect(page.locator('.bar .sub')).toHaveText(/^7 of \d+ cut/);
    } finally {
      await profile.kill();
      profile.remove();
      await server.stop().catch(() => undefined);
    }
  },
);

test('drawers in an opening of their own: asked for one thing at a time, said wrong, said right', async ({
  page,
}) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'Work out a case' }).click();
  await page.getByRole('button', { name: 'Job', exact: true }).click();
  await page.getByRole('button', { name: 'New drawers' }).click();
  await choose(page, /What the drawers go into/, 'a measured opening');
  await expect(page.getByText('Say how wide the opening is.')).toBeVisible();
  await read(page, /How wide the opening is/, '18');
  await read(page, /How high the opening is/, '24');
  await read(page, /How deep it is/, '20');
  await choose(page, /How the heights are shared/, 'by a step');
  await read(page, /How much higher each is/, '12');
  await expect(page.getByText(/With that step a front comes to nothing/)).toBeVisible();
  await read(page, /How much higher each is/, '1/2');
  await expect(page.locator('.problems')).toHaveCount(0);
  await page.getByRole('button', { name: 'Next: boxes and slides' }).click();
  await expect(page.getByText('Say how long the slides are, or how deep the boxes.')).toBeVisible();
  await read(page, /How long the slides are/, '18');
  await expect(page.locator('.problems')).toHaveCount(0);
  await pastBounce(page);
  await page.getByRole('button', { name: 'Next: wood and joints' }).click();
  await expect(page.getByText('Say what the fronts are of, and how thick.')).toBeVisible();
  await pastBounce(page);
  await page.getByRole('button', { name: 'To the fronts' }).click();
  // the bank stands there all the same; the one thing asked for next leads to its blank
  await expect(page.locator('.bankfront')).toHaveCount(4);
  await expect(page.locator('.nextblank')).toHaveCount(1);
  await page.getByRole('button', { name: 'Say what the fronts are of, and how thick.' }).click();
  // a sheet is measured from the tray, and the page comes back
  await page.getByRole('button', { name: /What the fronts are of/ }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Measure a sheet' }).click();
  await page.getByRole('button', { name: 'First reading' }).click();
  await typed(page, '.71');
  await page.getByRole('button', { name: 'Back to drawers' }).click();
  await expect(page.getByRole('button', { name: /What the fronts are of/ })).toContainText('Sheet A');
  await expect(page.getByText('Say what the box sides are of, and how thick.')).toBeVisible();
});
