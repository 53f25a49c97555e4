// From a tap to the frame that shows it, on a slowed processor.
import { median, p95 } from './figures.mjs';
import { slowed } from './phone.mjs';
import { serve } from './site.mjs';

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

async function tapped(phone, folder, { at, ...how }) {
  const served = await serve(folder);
  const context = await phone.open(phone.profile());
  const page = await slowed(context, slow);
  await page.goto(served.url + at);
  await page.locator(how.on).first().waitFor();
  await page.waitForTimeout(500);
  const took = await page.evaluate(tapMany, { ...how, times: 40 });
  await context.close();
  await served.stop();
  return took;
}

/** Digits 7 to 9, 4 to 6, 1 to 3, 0: the keys with no name but what is on them. */
const digits = '.keys .key[data-quick]:not(.op, .word, [aria-label])';

/** @param app and bare: `{ folder }`, built in this run */
export async function taps(phone, app, bare) {
  const ours = await tapped(phone, app.folder, { at: '#/figure', on: digits, back: '[aria-label="erase"]' });
  const least = await tapped(phone, bare.folder, { at: '', on: '.count' });
  return [
    {
      name: 'digit key to its frame, 4x, median; a counting button',
      app: median(ours),
      beside: median(least),
      unit: 'ms',
    },
    { name: 'digit key to its frame, 4x, 95th of 100', app: p95(ours), beside: p95(least), unit: 'ms' },
  ];
}
