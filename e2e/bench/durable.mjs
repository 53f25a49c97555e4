// From the thumb leaving a box to the mark that says it is kept: the whole way to the phone's storage and back.
import { median, p95 } from './figures.mjs';
import { slowed } from './phone.mjs';
import { serve } from './site.mjs';

const box = '.tick';
const taps = 40;

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

async function tapAll(page) {
  const boxes = page.locator(box);
  const many = await boxes.count();
  for (let k = 0; k < taps; k += 1) {
    await boxes.nth(k % many).tap();
    await page.waitForFunction((least) => globalThis.kept.length >= least, k + 1);
    await page.waitForTimeout(400); // a second touch sooner is glove bounce
  }
  return page.evaluate(() => globalThis.kept);
}

/** @param app `{ folder }`, built in this run @returns rows for the table, with nothing beside them */
export async function durable(phone, app) {
  const served = await serve(app.folder);
  const context = await phone.open(phone.profile());
  const page = await slowed(context, 1);
  await page.goto(served.url);
  await page.getByRole('button', { name: 'Open the sample job' }).click();
  await page.getByRole('heading', { name: 'Mineral and shell cabinet' }).waitFor();
  const rows = [];
  for (const times of [1, 4, 6]) {
    await slowed(context, times);
    await page.goto(`${served.url}#/stops/shellcase`);
    await page.reload();
    await page.locator(box).first().waitFor();
    await page.evaluate(watchMarks, box);
    const took = await tapAll(page);
    const row = (what, app) =>
      rows.push({ name: `thumb up from a box to “kept”, ${times}x, ${what}`, app, unit: 'ms' });
    row('median', median(took));
    row('95th of 100', p95(took));
  }
  await context.close();
  await served.stop();
  return rows;
}
