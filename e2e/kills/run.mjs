// Nothing acknowledged is lost: browsers killed, databases wiped, versions mixed. Ends with 1 when anything was.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { needBrowser, needShell } from '../tools/browser.mjs';
import { root } from '../tools/install.mjs';
import { findOthers, startScreen } from '../tools/others.mjs';
import { kills } from './kills.mjs';
import { lanesOf } from './lanes.mjs';
import { site } from './site.mjs';
import { seedOf, sizesOf } from './sizes.mjs';
import { legendOf, tableOf } from './table.mjs';
import { tabs } from './tabs.mjs';
import { wipes } from './wipes.mjs';

const sizes = sizesOf(process.env);
const seed = seedOf(process.env);
const longest = process.env.KNIFELINE_NIGHTLY ? 1500 : 800;
const work = mkdtempSync(path.join(os.tmpdir(), 'knifeline-kills-'));
const began = performance.now();
const cases = []; // { name, verdict, sum }

const flaws = ['lost', 'torn', 'twice', 'setAside', 'shut', 'broken', 'half', 'single'];

/** Without a second copy a wipe has nothing to be healed from: that is no failure of what was built, and no pass. */
function verdictOf(sum) {
  if (sum.twoCopies === 0 && !sum.broken && !sum.shut) return 'ONE COPY';
  return flaws.some((name) => sum[name] > 0) ? 'BAD' : 'good';
}

/** A trial that breaks off is a case that failed, and the others go on. */
async function run(name, times, trials) {
  if (!times) return;
  console.log(`${name} ...`);
  const sum = await trials().catch((error) => ({ broken: 1, why: String(error?.message ?? error) }));
  if (sum.why) console.log(`  broke off: ${sum.why}`);
  cases.push({ name, verdict: verdictOf(sum), sum });
}

const sofar = ({ kills: n, acts, lost, wipes: gone, healed }) =>
  console.log(`  ${n} kills, ${acts} acts, ${lost} lost, ${gone} wipes, ${healed} healed`);

const loud = process.env.KNIFELINE_LOUD !== undefined;
const say = (what, told, row) => {
  if (loud || row.wipes > 0 || flaws.some((name) => row[name] > 0))
    console.log(`  ${what} ${told}${JSON.stringify(row)}`);
};

async function browsers() {
  const wanted = sizes.webkit > 0 ? ['webkit', 'xvfb'] : [];
  const others = findOthers(sizes.firefox > 0 ? [...wanted, 'firefox'] : wanted);
  const chromium = await needBrowser();
  const screen = others.webkit && others.xvfb ? await startScreen(others.xvfb) : undefined;
  // nobody kills these: a wipe and three tabs are the same in the shell, which keeps its databases the same way
  const hand = process.env.KNIFELINE_NIGHTLY ? chromium : await needShell();
  return { hand, screen, lanes: lanesOf({ ...others, chromium, display: screen?.display }) };
}

async function killed(served, lanes, { name, size, pictures }) {
  const lane = lanes.find((one) => one.name === name);
  const title = `kills, ${name}${pictures ? ', pictures' : ''}`;
  if (!lane && size > 0) cases.push({ name: title, verdict: 'SKIPPED', sum: {} });
  const tell = (trial, told, row) => say(trial, told.why ?? told.database?.loss ?? '', row);
  const how = { site: served, lane, work, seed, longest, rest: 60, pictures, say: tell, sofar };
  if (pictures) how.longest *= 2; // one takes its time
  if (lane) await run(title, size, () => kills(how, size));
}

async function all(served, { hand, lanes }) {
  for (const name of ['chromium', 'chromium-sqlite', 'webkit', 'firefox'])
    await killed(served, lanes, { name, size: sizes[name], pictures: false });
  for (const name of ['chromium', 'chromium-sqlite'])
    await killed(served, lanes, { name, size: sizes[`pictures-${name}`], pictures: true });
  const how = { site: served, work, chromium: hand, seed, say: (what, row) => say(what, '', row) };
  await run('three tabs, two versions', sizes.tabs, () => tabs(how, sizes.tabs));
  for (const kind of ['between', 'under', 'damaged', 'long'])
    await run(`wipe, ${kind}`, sizes[kind], () => wipes(how, { kind, times: sizes[kind] }));
}

process.on('exit', () => rmSync(work, { recursive: true, force: true, maxRetries: 5 }));
const served = await site(work);
const found = await browsers();
try {
  console.log(`seed ${seed}`);
  await all(served, found);
  console.log(`\n${tableOf(cases)}\n\n${legendOf(cases)}`);
} finally {
  found.screen?.stop();
  served.stop();
}
const count = (verdict) => cases.filter((one) => one.verdict === verdict).length;
const result = { seed, passed: count('good'), failed: count('BAD'), cases };
mkdirSync(path.join(root, 'test-results'), { recursive: true });
writeFileSync(path.join(root, 'test-results', 'kills.json'), JSON.stringify(result, undefined, 1));
console.log(`${Math.round((performance.now() - began) / 1000)} s`);
process.exit(result.failed === 0 ? 0 : 1);
