// From the thumb leaving a box to the mark that says it is kept: the whole way to the phone's storage and back.
import { median, p95 } from './figures.mjs';
import { onPage, slowed } from './phone.mjs';

const box = '.tick';

/** Runs in the page: milliseconds from each `pointerup` on a box to the change of its own mark. */
function watchMarks(what) {
  globalThis.kept = [];
  const watch = ({ target, timeStamp }) => {
    const tapped = target.closest(what);
    if (!tapped) return;
    const watching = new MutationObserver(() => {
      watching.disconnect();
      globalThis.kept.push(performance.now() - timeStamp);
    });
    watching.observe(tapped, { attributeFilter: ['aria-checked'] });
  };
  document.addEventListener('pointerup', watch, true);
}

/** Runs in the page: lets milliseconds go by on its own clock. */
async function goBy(wait) {
  const until = performance.now() + wait;
  for (let left = wait; left > 0; left = until - performance.now())
    await new Promise((done) => setTimeout(done, left));
}

/** The stack of the shell case is set and both its sides are cut to length: its grooves can be ticked. */
async function makeReady(page, url) {
  await page.goto(`${url}#/saw/shellcase`);
  await page.getByRole('button', { name: /^Set and tested/ }).tap();
  for (const left of [2, 1]) {
    await page.waitForFunction((n) => document.querySelectorAll('.mblocked').length === n, left);
    await page.getByRole('button', { name: 'The length is done already' }).first().tap();
  }
  await page.waitForFunction(() => !document.querySelector('.mblocked'));
}

async function tapAll(page, taps) {
  const boxes = page.locator(box);
  const many = await boxes.count();
  for (let k = 0; k < taps; k += 1) {
    await boxes.nth(k % many).tap();
    await page.waitForFunction((least) => globalThis.kept.length >= least, k + 1);
    await page.evaluate(goBy, 400); // a second touch sooner is glove bounce
  }
  return page.evaluate(() => globalThis.kept);
}

/**
 * Nothing stands beside these.
 *
 * @param app `{ folder }`, built in this run
 * @param amount taps at each speed, and how many times slower the processor is at each
 */
export const durable = (phone, app, { times: taps, speeds }) =>
  onPage(phone, app.folder, async function* ({ context, page, url }) {
    await page.goto(url);
    await page.getByRole('button', { name: 'Open the sample job' }).click();
    await page.getByRole('heading', { name: 'Mineral and shell cabinet' }).waitFor();
    await makeReady(page, url);
    for (const times of speeds) {
      await slowed(context, times);
      await page.goto(`${url}#/stops/shellcase`);
      await page.reload();
      await page.locator(`${box}:not([aria-disabled="true"])`).first().waitFor();
      await page.evaluate(watchMarks, box);
      const took = await tapAll(page, taps);
      const name = `thumb up from a box to “kept”, ${times}x`;
      yield { name: `${name}, median`, app: median(took), unit: 'ms' };
      yield { name: `${name}, 95th of 100`, app: p95(took), unit: 'ms' };
    }
  });
