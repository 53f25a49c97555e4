// npm run bench: sizes and times of the app, each beside something as small as it can be, measured in the same run.
// No figure here fails a run: a machine's speed is no fault of the app's. A part that breaks off does, at the end.
// --tiny measures so little that only this shows: whether each part still runs.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { needBrowser } from '../tools/browser.mjs';
import { installPackages, root } from '../tools/install.mjs';
import { tiny, whole } from './amounts.mjs';
import { head, planLine, rowLine } from './figures.mjs';
import { once, runParts } from './parts.mjs';

installPackages();
const amounts = process.argv.includes('--tiny') ? tiny : whole;
const work = mkdtempSync(path.join(os.tmpdir(), 'knifeline-bench-'));
const began = performance.now();
const folder = (name) => path.join(work, name);

const phone = once(async () => (await import('./phone.mjs')).phones(work, await needBrowser()));
const app = once(async () => {
  const { buildApp } = await import('./site.mjs');
  return { folder: folder('app'), output: await buildApp(folder('app')) };
});
const page = (name) => async () => {
  const { buildPage } = await import('./site.mjs');
  return { folder: folder(name), output: await buildPage(name, folder(name)) };
};
const bare = once(page('bare'));
const log = once(page('log'));

/** A part is read only when it runs: one that cannot be read at all is one part that failed. */
const part = (name, rows, line = rowLine) => ({ name, rows, line });

const parts = [
  part('bytes', async function* () {
    const { sizes } = await import('./sizes.mjs');
    yield* sizes(await app(), await bare());
  }),
  part('starting with no network', async function* () {
    const { starts } = await import('./starts.mjs');
    yield* starts(await phone(), { app: await app(), bare: await bare() }, amounts.starts);
  }),
  part('tapping', async function* () {
    const { taps } = await import('./taps.mjs');
    yield* taps(await phone(), { app: await app(), bare: await bare() }, amounts.taps);
  }),
  part('ticking until it is kept', async function* () {
    const { durable } = await import('./durable.mjs');
    yield* durable(await phone(), await app(), amounts.durable);
  }),
  part('a long log', async function* () {
    const { logs } = await import('./logs.mjs');
    yield* logs(await phone(), await log(), amounts.logs);
  }),
  part('reckoning', async function* () {
    const { reckoning } = await import('./reckoning.mjs');
    yield* reckoning(amounts.reckoning);
  }),
  part('ordering setups', async function* () {
    const { ordering } = await import('./ordering.mjs');
    yield* ordering(amounts.ordering);
  }),
  part('the whole chain of a job', async function* () {
    const { chain } = await import('./chain.mjs');
    yield* chain(amounts.chain);
  }),
  part('the lists of a large job', async function* () {
    const { lists } = await import('./lists.mjs');
    yield* lists(await phone(), await app(), amounts.lists);
  }),
  part(
    `sheets beside published plans, ${amounts.sheets.effort} units each`,
    async function* () {
      const { sheetPlans } = await import('./sheets.mjs');
      yield* sheetPlans(amounts.sheets);
    },
    planLine,
  ),
  part(
    'sticks beside published optima, first-fit-decreasing and HiGHS',
    async function* () {
      const { sticks } = await import('./sticks.mjs');
      yield* sticks(amounts.sticks);
    },
    planLine,
  ),
];

process.on('exit', () => rmSync(work, { recursive: true, force: true, maxRetries: 3 }));
console.log(head);
const counts = await runParts(parts, (line) => console.log(line));
const [cpu] = os.cpus();
const machine = `${cpu?.model ?? 'unknown'}, ${os.cpus().length} cores, load ${os.loadavg()[1].toFixed(1)}`;
console.log(
  '\n1x, 4x: the processor as it is, and slowed four times. Load above the cores spoils the milliseconds.',
);
console.log(`${machine}; ${Math.round((performance.now() - began) / 1000)} s in all.`);
console.log(`${counts.passed} parts ran, ${counts.failed} failed`);
mkdirSync(path.join(root, 'test-results'), { recursive: true });
writeFileSync(path.join(root, 'test-results', 'bench.json'), JSON.stringify(counts));
process.exit(counts.failed === 0 ? 0 : 1);
