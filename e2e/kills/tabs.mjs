// Three pages of one phone at one job, one of them of a newer version that takes the database up in the middle of it.
import { mkdtempSync } from 'node:fs';
import path from 'node:path';
import { plus } from './ledger.mjs';
import { chance } from './page/chance.js';
import { openProfile, phone } from './pages.mjs';

const shelves = ['bit', 'block', 'single']; // each page its own figure, or the last one's word would hide the others'
const each = 60;
const patience = 20_000;

const wait = (ms) => new Promise((done) => setTimeout(done, ms));

async function until(acts, least) {
  for (let k = 0; k < 1000 && acts.told < least; k += 1) await wait(5);
}

/**
 * What may befall an old page once the newer one has come: it goes on, starts again as either version, or is closed.
 *
 * @returns the visits that are still to end
 */
async function befall({ at, tab, pick, visit }, query) {
  const what = pick(4);
  if (what < 2) return [await at.visit(tab, what === 0 ? 'next' : 'now', query)];
  if (what === 2) await tab.close();
  return what === 2 ? [] : [visit];
}

/** One phone: two old pages write, a newer one opens among them; then all is read by the newer version. */
async function round({ context, site, pick }, name) {
  const at = phone({ site, name });
  const tabs = await Promise.all(shelves.map(() => context.newPage()));
  const query = (k) => `acts=${each}&seed=${pick(1 << 30)}&shelf=${shelves[k]}`;
  const old = await Promise.all([0, 1].map((k) => at.visit(tabs[k], 'now', query(k))));
  await until(old[pick(2)].acts, 1 + pick(each));
  const from = performance.now();
  const newer = await at.visit(tabs[2], 'next', query(2));
  const told = await newer.opened;
  const opening = performance.now() - from;
  await wait(pick(80));
  const lasting = await befall({ at, tab: tabs[0], pick, visit: old[0] }, query(0));
  await Promise.all([newer, old[1], ...lasting].map(({ done }) => Promise.race([done, wait(patience)])));
  for (const tab of tabs) await tab.close();
  const end = await lookAt({ context, at });
  const shut = told.what === 'opened' ? 0 : 1;
  return { ...end, shut: shut + end.shut, acts: at.ledger.acts(), refused: at.ledger.refusals(), opening };
}

async function lookAt({ context, at }) {
  const page = await context.newPage();
  const told = await (await at.visit(page, 'next', 'acts=0')).opened;
  await page.close();
  return told.what === 'opened' ? { ...at.ledger.compare(told), shut: 0 } : { shut: 1 };
}

/**
 * @param how `{ site, work, chromium, seed, say }`
 * @param acts how many acts at least, acknowledged or refused
 * @returns the sums, and the slowest opening of the newer version, milliseconds
 */
export async function tabs(how, acts) {
  const pick = chance(how.seed);
  const context = await openProfile(mkdtempSync(path.join(how.work, 'tabs-')), how.chromium);
  const sum = { acts: 0, refused: 0, rounds: 0, slowest: 0 };
  while (sum.acts + sum.refused < acts) {
    const { opening, ...row } = await round({ context, site: how.site, pick }, `t${sum.rounds}`);
    how.say(`tabs ${sum.rounds}`, row);
    plus(sum, { ...row, rounds: 1 });
    sum.slowest = Math.max(sum.slowest, opening);
  }
  await context.close();
  return sum;
}
