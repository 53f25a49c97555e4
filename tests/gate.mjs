// npm test: everything that must hold before a change lands. --fast leaves out the build and the browser.
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { needBrowser, needShell } from '../e2e/tools/browser.mjs';
import { installPackages, root, runBeside, shownFrom, tool } from '../e2e/tools/install.mjs';

const fast = process.argv.includes('--fast');
const reports = path.join(root, 'test-results');
let passed = 0;
let failed = 0;

function step(name, args, env) {
  console.log(`\n== ${name}`);
  const good = tool(args[0], args.slice(1), env) === 0;
  if (good) passed += 1;
  else failed += 1;
  return good;
}

function read(file) {
  try {
    return JSON.parse(readFileSync(path.join(reports, file), 'utf8'));
  } catch {
    return undefined;
  }
}

/** Counts the cases of a finished run in place of the run as one step. */
function tally(good, ok, bad) {
  passed += ok - (good ? 1 : 0);
  failed += good ? 0 : Math.max(bad, 1) - 1;
}

function unit() {
  const only = fast ? ['--exclude', 'tests/built/**'] : [];
  const out = path.join(reports, 'unit.json');
  const good = step('unit and published checks', [
    'vitest',
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${out}`,
    ...only,
  ]);
  const report = read('unit.json');
  tally(good, report?.numPassedTests ?? 0, report?.numFailedTests ?? 0);
}

async function browser() {
  const out = path.join(reports, 'e2e.json');
  const env = {
    CHROMIUM_PATH: await needShell(),
    WHOLE_CHROMIUM_PATH: await needBrowser(),
    PLAYWRIGHT_JSON_OUTPUT_NAME: out,
  };
  console.log('\n== in the browser');
  const args = ['test', '-c', 'e2e/playwright.config.ts', '--reporter=list,json'];
  const good = (await shownFrom('playwright', args, env)) === 0;
  if (good) passed += 1;
  else failed += 1;
  const stats = read('e2e.json')?.stats;
  tally(good, stats?.expected ?? 0, (stats?.unexpected ?? 0) + (stats?.flaky ?? 0));
}

/** A script of e2e/ that counts its own cases; what it skips is neither passed nor failed. */
async function script(name, file, ...args) {
  const { code, text } = await runBeside('node', [`e2e/${file}/run.mjs`, ...args]);
  console.log(`\n== ${name}\n${text}`);
  const report = read(`${file}.json`);
  passed += report?.passed ?? 0;
  failed += code === 0 ? 0 : Math.max(report?.failed ?? 1, 1);
}

/** On a new machine the browsers come while the unit tests run. */
async function everything() {
  const getting = runBeside('node', ['e2e/tools/get.mjs']);
  unit();
  console.log((await getting).text);
  // each waits for its browsers most of the time; the bench shows only that each of its parts still runs
  await Promise.all([
    browser(),
    script('kills', 'kills'),
    script('other browsers', 'browsers'),
    script('bench, tiny', 'bench', '--tiny'),
  ]);
}

/** The app is built while it is read for faults: neither needs the other. */
const building = () => runBeside('node', ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn']);

async function isBuilt(build) {
  const { code, text } = await build;
  console.log(`\n== build\n${text}`);
  if (code === 0) passed += 1;
  else failed += 1;
  return code === 0;
}

installPackages();
rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });
const build = fast ? undefined : building();
step('format and lint', ['biome', 'check', '.']);
step('types and layers', ['tsc', '-b']);
if (fast) unit();
else if (await isBuilt(build)) await everything();
console.log(`\n${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
