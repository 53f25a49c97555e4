// The main way through the built app, offline, in browsers other than Chromium. Ends with 1 when a step fails.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { serve } from '../bench/site.mjs';
import { root } from '../tools/install.mjs';
import { findOthers, startScreen } from '../tools/others.mjs';
import { firefoxHand } from './firefox.mjs';
import { secondJob, stepsOf } from './steps.mjs';
import { webkitHand } from './webkit.mjs';

const work = mkdtempSync(path.join(os.tmpdir(), 'knifeline-browsers-'));
const more = path.join(work, 'second-job.json');
writeFileSync(more, secondJob());
const counts = { passed: 0, failed: 0, skipped: 0 };

async function walk(name, hand) {
  const at = await serve(path.join(root, 'dist'));
  const from = performance.now();
  console.log(`\n${name}`);
  let broken = false;
  for (const [says, step] of stepsOf({ hand, at, more })) {
    // a step that fails leaves the next ones nowhere to stand
    const result = !step || broken ? 'skipped' : await step().then(() => 'passed', problem);
    const kind = result.startsWith('failed') ? 'failed' : result;
    counts[kind] += 1;
    broken ||= kind === 'failed';
    console.log(`  ${result === 'passed' ? 'ok     ' : result} ${says}`);
    if (kind === 'failed') console.log(`  on the screen: ${await shown(hand)}`);
  }
  await hand.close();
  await at.stop();
  console.log(`  ${((performance.now() - from) / 1000).toFixed(1)} s`);
}

const shown = (hand) =>
  hand
    .run('location.hash + " " + document.body.innerText.replace(/\\s+/g, " ").slice(0, 400)')
    .catch(problem);

const problem = (error) => `failed (${String(error?.message ?? error).split('\n')[0]})`;

async function lane(name, hand) {
  const folder = mkdtempSync(path.join(work, `${name}-`));
  try {
    await walk(name, await hand(folder));
  } catch (error) {
    counts.failed += 1;
    console.log(`  ${name} did not come up: ${error.message}`);
  }
}

const found = findOthers(['firefox', 'webkit', 'driver', 'xvfb']);
const screen = found.xvfb ? await startScreen(found.xvfb) : undefined;
try {
  if (found.firefox) await lane('firefox', (folder) => firefoxHand({ folder, path: found.firefox }));
  if (found.webkit && found.driver && screen)
    await lane('webkit', (folder) =>
      webkitHand({ folder, path: found.webkit, driver: found.driver, display: screen.display }),
    );
} finally {
  screen?.stop();
  rmSync(work, { recursive: true, force: true, maxRetries: 5 });
}
mkdirSync(path.join(root, 'test-results'), { recursive: true });
writeFileSync(path.join(root, 'test-results', 'browsers.json'), JSON.stringify(counts));
console.log(`\n${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped`);
process.exit(counts.failed === 0 ? 0 : 1);
