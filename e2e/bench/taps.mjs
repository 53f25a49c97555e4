// From a tap to the frame that shows it, on a slowed processor.
import { listed, median, p95 } from './figures.mjs';
import { onPage, slowed } from './phone.mjs';

const slow = 4;

/**
 * Runs in the page: taps and waits for the change and the frame after it is painted; milliseconds of each tap.
 * `back`, where there is one, is tapped between and not counted.
 */
async function tapMany({ on, back, times }) {
  const pause = () => new Promise((done) => setTimeout(done, 40));
  const frame = () => new Promise(requestAnimationFrame);
  const changed = () =>
    new Promise((done) => {
      const watching = new MutationObserver(() => {
        watching.disconnect();
        done();
      });
      watching.observe(document.body, {
        subtree: true,
        childList: true,
        characterData: true,
        attributes: true,
      });
    });
  const took = [];
  for (let k = 0; k < times; k += 1) {
    const buttons = document.querySelectorAll(on);
    const change = changed();
    const from = performance.now();
    buttons[k % buttons.length].click();
    await change;
    await frame();
    await frame();
    took.push(performance.now() - from);
    await pause();
    if (back) document.querySelector(back).click();
    await pause();
  }
  return took;
}

const tapped = (phone, folder, { at, ready, ...how }) =>
  listed(
    onPage(phone, folder, async function* ({ context, page, url }) {
      await slowed(context, slow);
      await page.goto(url + at);
      await page.locator(how.on).first().waitFor();
      if (ready) await page.locator(ready).waitFor({ state: 'attached' }); // nothing is fetched any more
      yield* await page.evaluate(tapMany, how);
    }),
  );

/** Digits 7 to 9, 4 to 6, 1 to 3, 0: the keys with no name but what is on them. */
const digits = '.keys .key[data-quick]:not(.op, .word, [aria-label])';

/** What stands once the app has its second script too. */
const ready = '.caliper-line';

/** @param app and bare: `{ folder }`, built in this run @param times how many taps */
export async function* taps(phone, { app, bare }, { times }) {
  const key = { at: '#/figure', ready, on: digits, back: '[aria-label="erase"]', times };
  const ours = await tapped(phone, app.folder, key);
  const least = await tapped(phone, bare.folder, { at: '', on: '.count', times });
  const row = (what, of) => ({
    name: `digit key to its frame, ${slow}x, ${what}; a counting button`,
    app: of(ours),
    beside: of(least),
    unit: 'ms',
  });
  yield row('median', median);
  yield row('95th of 100', p95);
}
