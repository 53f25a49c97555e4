// From nothing to the first figure, on a browser just started, with no server: the app beside a bare page, both out of
// the same service worker.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
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
  return served.url; // the bare address, as a phone starts it: the app goes to where it was left
}

/** The bare page kept by the app's own worker, with the bare page's files for the app's. */
function keepByWorker(app, bare) {
  const urls = readdirSync(bare.folder, { recursive: true, withFileTypes: true })
    .filter((file) => file.isFile() && file.name !== 'sw.js')
    .map((file) => path.relative(bare.folder, path.join(file.parentPath, file.name)));
  const list = JSON.stringify(urls.map((url) => ({ revision: null, url })));
  const worker = readFileSync(path.join(app.folder, 'sw.js'), 'utf8');
  writeFileSync(
    path.join(bare.folder, 'sw.js'),
    worker.replace(/\[\{"revision".*?\}\]/s, () => list),
  );
}

/** Opens the bare page once and waits until its worker holds it. Returns the address, no longer served. */
async function visitBare(phone, profile, folder) {
  const served = await serve(folder);
  const context = await phone.open(profile);
  const page = await slowed(context, 1);
  await page.goto(served.url);
  await page.evaluate(async () => {
    await navigator.serviceWorker.register('./sw.js');
    await navigator.serviceWorker.ready;
  });
  await leave(page);
  await context.close();
  await served.stop();
  return served.url;
}

/**
 * Runs in the page: says when the thing is on the screen, one frame after it is found there. Said to the console, so
 * that nothing of the driver is read in and compiled in the page in the middle of its start.
 */
function watch(what) {
  const look = () => {
    if (!document.querySelector(what)?.getClientRects().length) requestAnimationFrame(look);
    else requestAnimationFrame((now) => console.debug(`shown ${now}`));
  };
  requestAnimationFrame(look);
}

/** Left as a user leaves it, and what that notes is written: a start killed on its way is not gone into again. */
async function leave(page) {
  await page.waitForTimeout(1000);
  await page.goto('about:blank');
  await page.waitForTimeout(500);
}

/**
 * Milliseconds from the start of the navigation, in a browser started for it. Nothing of the browser is switched off:
 * there is no server, so all comes from the worker, and what the browser has compiled of it before is kept with it, as
 * on a phone.
 */
async function start(phone, { profile, url, what, stands = what, times }) {
  const context = await phone.open(profile);
  const page = await slowed(context, times);
  await page.addInitScript(watch, what);
  const said = page.waitForEvent('console', (one) => one.text().startsWith('shown '));
  await page.goto(url);
  const shown = Number((await said).text().slice('shown '.length));
  await page.locator(stands).first().waitFor();
  await leave(page);
  await context.close();
  return shown;
}

/** The figure stands, as it stood last or by now. */
const painted = '#picture, .giant .mx';
/** The app stands. */
const live = ':root:not(:has(#picture)) .giant .mx';
/** A tap is taken: the picture is what the database holds, or the app stands. */
const takesTap = `#picture[data-clear], ${live}`;

async function several(phone, how, rounds) {
  const took = [];
  for (let k = 0; k < rounds; k += 1) took.push(await start(phone, how));
  return median(took);
}

/**
 * @param app and bare: `{ folder }`, built in this run
 * @param amount how often each is started, and how many times slower the processor
 */
export async function* starts(phone, { app, bare }, { rounds, speeds }) {
  const profile = phone.profile();
  const ours = { profile, stands: live };
  ours.url = await visit(phone, profile, app.folder);
  keepByWorker(app, bare);
  const least = { profile: phone.profile(), what: '.count' };
  least.url = await visitBare(phone, least.profile, bare.folder);
  if (rounds > 1) await start(phone, { ...least, times: 1 }); // a profile's first start is slower than any after it
  for (const times of speeds) {
    const beside = await several(phone, { ...least, times }, rounds);
    const row = (what, app) => ({
      name: `cold start at the saw, no network, ${what}, ${times}x; a bare page, no network`,
      app,
      beside,
      unit: 'ms',
    });
    yield row('to the figure', await several(phone, { ...ours, what: painted, times }, rounds));
    yield row('to the first tick', await several(phone, { ...ours, what: takesTap, times }, rounds));
    yield row('to the app itself', await several(phone, { ...ours, what: live, times }, rounds));
  }
}
