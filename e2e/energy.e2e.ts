import { expect, type Page, test } from '@playwright/test';
import { openSample } from './app';

/** What a page does by itself costs the battery of a phone that is propped on the saw with its screen on. */
const work =
  /^(FunctionCall|EvaluateScript|TimerFire|TimerInstall|FireAnimationFrame|FireIdleCallback|UpdateLayoutTree|Layout|Paint|Commit|Animation)$/;

/** What the page did by itself in so many milliseconds in which nobody touched it, from a trace of the browser. */
async function doneIn(page: Page, milliseconds: number): Promise<readonly string[]> {
  const cdp = await page.context().newCDPSession(page);
  const names: string[] = [];
  cdp.on('Tracing.dataCollected', ({ value }) => {
    names.push(...value.map((event) => `${(event as { readonly name?: unknown }).name}`));
  });
  await cdp.send('Tracing.start', { transferMode: 'ReportEvents', categories: 'devtools.timeline' });
  await page.waitForTimeout(milliseconds);
  const complete = new Promise((done) => cdp.once('Tracing.tracingComplete', done));
  await cdp.send('Tracing.end');
  await complete;
  await cdp.detach();
  return names.filter((name) => work.test(name));
}

const places = ['#/saw/shellcase', '#/level/case', '#/'];

test('a screen that nobody touches does nothing: no timer, no animation, no script', async ({ page }) => {
  await openSample(page);
  for (const place of places) {
    await page.evaluate((at) => location.assign(at), place);
    // what the way there began has come to its end: one second with nothing in it
    await expect.poll(() => doneIn(page, 1000), { message: place, timeout: 60_000 }).toEqual([]);
    expect(await doneIn(page, 4000), place).toEqual([]);
  }
});

test('the trace sees a clock that ticks', async ({ page }) => {
  await openSample(page);
  await page.evaluate(() => {
    setInterval(() => undefined, 500);
  });
  expect(await doneIn(page, 2000)).toContain('TimerFire');
});
