// From nothing to the first figure: the app with no server, on a browser just started; a bare page from a live server.
import { median } from './figures.mjs';
import { slowed } from './phone.mjs';
import { serve } from './site.mjs';

/** Opens the sample job once and waits until the phone holds everything. Returns the address, no longer served. */
async function visit(phone, profile, folder) {
  const served = await serve(folder);
  const context = await phone.open(profile);
  const page = await slowed(context, 1);
  await page.goto(served.url);
  await page.getByRole('button', { name: 'Open the sample job' }).click();
  await page.getByRole('heading', { name: 'Mineral and shell cabinet' }).waitFor();
  await page.goto(`${served.url}#/saw/shellcase`);
  await page.locator('.giant .mx').first().waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready);
  await leave(page);
  await context.close();
  await served.stop();
  return `${served.url}#/saw/shellcase`;
}

/** Runs in the page: notes when the thing is on the screen, one frame after it is found there. */
function watch(what) {
  const look = () => {
    if (!document.querySelector(what)?.getClientRects().length) requestAnimationFrame(look);
    else
      requestAnimationFrame((now) => {
        globalThis.shownAt = now;
      });
  };
  requestAnimationFrame(look);
}

/** Left as a user leaves it, and what that notes is written: a start killed on its way is not gone into again. */
async function leave(page) {
  await page.waitForTimeout(1000);
  await page.goto('about:blank');
  await page.waitForTimeout(500);
}

/** Milliseconds from the start of the navigation, in a browser started for it; nothing from its own cache. */
async function start(phone, { profile, url, what, times }) {
  const context = await phone.open(profile);
  const page = await slowed(context, times);
  const cdp = await context.newCDPSession(page);
  await cdp.send('Network.enable');
  await cdp.send('Network.setCacheDisabled', { cacheDisabled: true });
  await page.addInitScript(watch, what);
  await page.goto(url);
  await page.locator(what).first().waitFor();
  const shown = await page.evaluate(async () => {
    while (globalThis.shownAt === undefined) await new Promise(requestAnimationFrame);
    return globalThis.shownAt;
  });
  await leave(page);
  await context.close();
  return shown;
}

async function several(phone, how, rounds) {
  const took = [];
  for (let k = 0; k < rounds; k += 1) took.push(await start(phone, how));
  return median(took);
}

/** @param app and bare: `{ folder }`, built in this run @param rounds how often each is started */
export async function* starts(phone, { app, bare }, { rounds }) {
  const profile = phone.profile();
  const url = await visit(phone, profile, app.folder);
  const served = await serve(bare.folder);
  const least = { profile: phone.profile(), url: served.url, what: '.count' };
  try {
    await start(phone, { ...least, times: 1 }); // a profile's first start is slower than any after it
    for (const times of [1, 4]) {
      yield {
        name: `cold start, no network, to the figure at the saw, ${times}x; a bare page from a live server`,
        app: await several(phone, { profile, url, what: '.giant .mx', times }, rounds),
        beside: await several(phone, { ...least, times }, rounds),
        unit: 'ms',
      };
    }
  } finally {
    await served.stop();
  }
}
