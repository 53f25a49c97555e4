// npm run bench: sizes and times of the app, each beside something as small as it can be, measured in the same run.
// No figure here fails a run: a machine's speed is no fault of the app's.
import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { needBrowser } from '../tools/browser.mjs';
import { installPackages } from '../tools/install.mjs';

installPackages();
const { chain } = await import('./chain.mjs');
const { durable } = await import('./durable.mjs');
const { table } = await import('./figures.mjs');
const { logs } = await import('./logs.mjs');
const { ordering } = await import('./ordering.mjs');
const { phones } = await import('./phone.mjs');
const { reckoning } = await import('./reckoning.mjs');
const { buildApp, buildPage } = await import('./site.mjs');
const { sheetPlans } = await import('./sheets.mjs');
const { sizes } = await import('./sizes.mjs');
const { starts } = await import('./starts.mjs');
const { sticks } = await import('./sticks.mjs');
const { taps } = await import('./taps.mjs');

const work = mkdtempSync(path.join(os.tmpdir(), 'knifeline-bench-'));
const began = performance.now();

const folder = (name) => path.join(work, name);
const say = (what) => console.log(`${what} ...`);

async function all() {
  const phone = phones(work, await needBrowser());
  say('building');
  const app = { folder: folder('app'), output: await buildApp(folder('app')) };
  const bare = { folder: folder('bare'), output: await buildPage('bare', folder('bare')) };
  await buildPage('log', folder('log'));
  say('starting with no network');
  const started = await starts(phone, app, bare);
  say('tapping');
  const tapped = await taps(phone, app, bare);
  say('ticking until it is kept');
  const kept = await durable(phone, app);
  say('a log of 100,000 ticks');
  const logged = await logs(phone, folder('log'));
  say('reckoning');
  const reckoned = await reckoning();
  say('ordering setups, and the whole chain of a large job');
  return [
    ...sizes(app, bare),
    ...started,
    ...tapped,
    ...kept,
    ...logged,
    ...reckoned,
    ...(await ordering()),
    ...(await chain()),
  ];
}

try {
  const rows = await all();
  console.log(`\n${table(rows)}\n`);
  say('sheets of published instances beside the fewest known, 2000 units each');
  console.table(await sheetPlans());
  say('sticks beside published optima, first-fit-decreasing and HiGHS');
  await sticks();
  const [cpu] = os.cpus();
  const machine = `${cpu?.model ?? 'unknown'}, ${os.cpus().length} cores, load ${os.loadavg()[1].toFixed(1)}`;
  console.log(
    '1x, 4x: the processor as it is, and slowed four times. Load above the cores spoils the milliseconds.',
  );
  console.log(`${machine}; ${Math.round((performance.now() - began) / 1000)} s in all.`);
} finally {
  rmSync(work, { recursive: true, force: true, maxRetries: 3 });
}
