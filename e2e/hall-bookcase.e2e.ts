import { expect, type Page, test } from '@playwright/test';
import {
  blankOf,
  choose,
  fillBlank,
  makeReady,
  pastBounce,
  readyOffline,
  standing,
  ticksHere,
  typed,
  typeInto,
} from './app';
import { withWorker } from './browser';

test.describe.configure({ mode: 'parallel' });

test.use(withWorker);

const part = (page: Page, name: RegExp) => page.locator('main .nextset').filter({ hasText: name }).first();

async function measured(page: Page, blank: RegExp, size: string, back: string): Promise<void> {
  await pastBounce(page);
  await blankOf(page, blank).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Measure a sheet' }).click();
  await page.getByRole('button', { name: 'First reading' }).click();
  await typed(page, size);
  await page.getByRole('button', { name: back }).click();
}

/**
 * A bookcase for a hall, 40 1/2 × 72 × 12 of 3/4 sheet, two bays: bottom, top and partition butted, the top over the
 * sides, a back of 1/4 in grooves, pins in one bay, drawers with box joints in the other. Between the sides it is
 * 40 1/2 − 1 1/2 = 39 wide, a bay (39 − 3/4) ÷ 2 = 19 1/8, 72 − 4 − 3/4 − 3/4 = 66 1/2 high.
 */
async function theCase(page: Page): Promise<void> {
  await page.goto('./');
  await readyOffline(page);
  await page.context().setOffline(true);
  await page.getByRole('button', { name: 'Work out a case' }).click();
  await fillBlank(page, /Outside width/, '40 1/2');
  await fillBlank(page, /Outside height/, '72');
  await fillBlank(page, /Depth, without a face frame/, '12');
  await measured(page, /What the sides are of/, '.75', 'Back to case');
  await fillBlank(page, /How many partitions/, '1');
  await choose(page, /How the bottom meets the sides/, 'butted between the sides');
  await choose(page, /How the top meets the sides/, 'over the sides');
  await choose(page, /How partitions meet bottom and top/, 'butted');
  await page.getByRole('button', { name: '+ A back' }).click();
  await measured(page, /What the back is of/, '.25', 'Back to case');
  await choose(page, /How the back is held/, 'in a groove');
  await fillBlank(page, /Floor to the underside/, '4');
  await page.getByRole('button', { name: '+ A plinth' }).click();
  await pastBounce(page);
  await page
    .getByRole('button', { name: /loose shelves/i })
    .first()
    .click();
  await page.getByRole('dialog').getByRole('button', { name: '3', exact: true }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
  await choose(page, /What holds the loose shelves/, 'pins in rows of holes');
  await typeInto(page, /First hole over the bottom/, '6');
  await typeInto(page, /Hole to hole/, '2');
}

async function theDrawers(page: Page): Promise<void> {
  await page.goto('./#/');
  await page.getByRole('button', { name: 'New drawers' }).click();
  await page.getByRole('button', { name: /What the drawers go into/ }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Case', exact: true }).click();
  // its bay with no shelves is taken by itself
  await expect(blankOf(page, /Which bay/)).toContainText('2');
  await page.getByRole('button', { name: 'Next: boxes and slides' }).click();
  await typeInto(page, /How deep the boxes are/, '10');
  await pastBounce(page);
  await page.getByRole('button', { name: 'Next: wood and joints' }).click();
  await measured(page, /What the fronts are of/, '.75', 'Back to drawers');
  await measured(page, /What the box sides are of/, '.5', 'Back to drawers');
  await measured(page, /What the box bottoms are of/, '.25', 'Back to drawers');
  await choose(page, /How box front and sides are joined/, 'a box joint');
  await typeInto(page, /How wide a finger is/, '1/2');
}

test('a hall bookcase with no network: butted, on pins, its back in grooves, its drawers with box joints', async ({
  page,
}) => {
  test.setTimeout(100_000);
  await theCase(page);
  // the top lies over: sides 72 − 4 − 3/4; between them bottom 39; the shelf of a bay 19 1/8 less an eighth of play
  await page.getByRole('button', { name: 'Parts', exact: true }).click();
  await expect(part(page, /^Left side/)).toContainText('67 and 1/4');
  await expect(part(page, /^Bottom/)).toContainText('39');
  await expect(part(page, /^Top/)).toContainText('40 and 1/2');
  await expect(part(page, /^Loose shel/)).toContainText('19');

  await theDrawers(page);

  // every way of building has its cards
  await page.goto('./#/cuts');
  const cuts = page.locator('main');
  for (const card of [/Plinth rail/, /Row from the front edge/, /back edge on fence/, /First slot at/])
    await expect(cuts.getByRole('button', { name: card }).first()).toBeAttached();
  await expect(cuts).toContainText('the back into its grooves');
  await expect(cuts).not.toContainText('rabbet');
  await cuts
    .getByRole('button', { name: /^Rip|Rip fence/ })
    .first()
    .click();
  await makeReady(page);
  await expect(standing(page)).toBeVisible();
  await pastBounce(page);
  await page.locator('.saw [role="checkbox"]').first().click();
  await expect(ticksHere(page)).toHaveCount(1);
  // and it is all there after a start with no network
  await page.reload();
  await expect(ticksHere(page)).toHaveCount(1);
});

/** Ticks all that can be ticked at the setting in hand, one after another; how many that were. */
const tickAll = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const boxes = (checked: boolean) =>
      document.querySelectorAll<HTMLElement>(`.saw [role="checkbox"][aria-checked="${checked}"]`);
    for (let ticked = 0; ; ticked += 1) {
      const [open] = boxes(false);
      if (!open) return ticked;
      const before = boxes(true).length;
      open.click();
      // the box of a test cut that fits is gone once it is ticked
      for (let wait = 0; open.isConnected && boxes(true).length <= before; wait += 1) {
        if (wait > 1000) throw new Error(`not ticked: ${open.textContent}`);
        await new Promise((done) => setTimeout(done, 10));
      }
    }
  });

/** The opening as it was planned, read at its four places and taken up. */
async function measureOpening(page: Page): Promise<void> {
  const places = page.locator('.place-chip');
  for (const [place, figure] of [
    [/high, at the left/, '66 1/2'],
    [/high, at the right/, '66 1/2'],
    [/wide, in front/, '19 1/8'],
    [/wide, at the back/, '19 1/8'],
  ] as const) {
    await places.filter({ hasText: place }).click();
    await typed(page, figure);
  }
  await page.getByRole('button', { name: 'Use it for what is not cut' }).click();
  await expect(places.filter({ hasText: 'in use' })).toHaveCount(4);
}

test('the same from its first rip to loaded, labelled and looked back on: nothing is a dead end, with no network', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await theCase(page);
  await theDrawers(page);
  await page.goto('./#/cuts');
  const cuts = () => page.locator('main').getByRole('button', { name: /Rip fence/ });
  await cuts().first().click();
  const bar = page.locator('.knuckle .main');
  const seen: string[] = [];
  let openings = 0;
  // no way on from a setting leads back to one that can do no more than it could
  for (let k = 0; k < 200; k += 1) {
    await expect(bar).toBeVisible();
    const says = (await bar.textContent()) ?? '';
    seen.push(says);
    if (says.startsWith('All cut')) break;
    if (says.startsWith('Measure the opening first')) {
      openings += 1;
      await bar.click();
      await measureOpening(page);
      await page.goto('./#/');
      await page.getByRole('button', { name: /^Pick up/ }).click();
    } else if (/^(It is set|Set and tested|Next: )/.test(says)) {
      await bar.click();
      await pastBounce(page);
    } else expect(await tickAll(page), says).toBeGreaterThan(0);
  }
  expect(seen.at(-1)).toBe('All cut. Back');
  // it is asked for once, and not before all that does not wait for it is done
  expect(openings).toBe(1);
  const at = (says: RegExp) => seen.findIndex((x) => says.test(x));
  const order = [
    /^Dry-fit/,
    /^Glue up: /,
    /^Measure the opening/,
    /^Drawer 1, .* is glued up|^Glue up the boxes/,
  ];
  expect(order.map(at).every((place, k, all) => place >= 0 && (k === 0 || place > (all[k - 1] ?? 0)))).toBe(
    true,
  );
  const put = [
    /^Carry in/,
    /^Level/,
    /^Anchor/,
    /^Fit the fronts/,
    /^Finish: /,
    /^Let it cure/,
    /^Load/,
    /^Label/,
    /^Look back/,
  ];
  expect(put.map(at).every((place, k, all) => place > (k === 0 ? 0 : (all[k - 1] ?? 0)))).toBe(true);

  await page.goto('./#/cuts');
  const whole = page.locator('.bar .sub');
  const done = /^(\d+) of (\d+) cut/;
  await expect(whole).toHaveText(done);
  const all = async () => done.exec((await whole.textContent()) ?? '') ?? [];
  const [, cut, of] = await all();
  expect(cut).toBe(of);
  expect(Number(of)).toBeGreaterThan(100);
  // and so it is after a start with no network
  await page.reload();
  await expect(whole).toHaveText(done);
  expect((await all())[1]).toBe(of);
});
