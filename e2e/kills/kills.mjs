// A browser killed in the middle of writing, again and again on one profile, and what is there afterwards.
import { mkdtempSync, rmSync } from 'node:fs';
import path from 'node:path';
import { newLedger, plus } from './ledger.mjs';
import { chance } from './page/chance.js';
import { killBrowser, startBrowser } from './process.mjs';

/** Kills on one profile before a new one: damage of one kill may show only at the second opening after it. */
const chain = 10;
const patience = 45_000;

const wait = (ms) => new Promise((done) => setTimeout(done, ms));

/**
 * Opens the page on a profile; resolves once the store is open with what it has. Acts go to the ledger as they come.
 */
async function launch({ site, lane, ledger }, { folder, run, query }) {
  let heardAll;
  const opened = new Promise((resolve) => {
    heardAll = resolve;
  });
  site.hear(run, (told) => {
    if (told.what === 'acts') for (const act of told.acts) ledger.note(act);
    else heardAll(told);
  });
  const browser = startBrowser(lane.start(folder, `http://localhost:${site.port}/now/?run=${run}&${query}`));
  const late = wait(patience).then(() => ({ what: 'late', why: browser.said() }));
  return { browser, told: await Promise.race([opened, late]) };
}

/** What one opening showed, for the table. */
function seen(ledger, told) {
  if (told.what !== 'opened') return { shut: 1 };
  const wiped = told.database.made && ledger.acts() > 0 ? 1 : 0;
  const found = ledger.compare(told);
  if (found.lost > 0 || found.changed > 0) ledger.settle(told);
  const { restored, half, single } = told;
  const healed = wiped === 1 && found.lost === 0 && !half ? 1 : 0;
  return { ...found, wipes: wiped, healed, restored, ...(half === undefined ? {} : { half, single }) };
}

/** One profile, killed `times` times. */
async function killed(how, { name, times, pick }) {
  const folder = mkdtempSync(path.join(how.work, `${name}-`));
  const ledger = newLedger();
  const sum = {};
  try {
    for (let k = 0; k <= times; k += 1) {
      const last = k === times; // only looks
      const acts = last ? 'acts=0' : `acts=1000000&seed=${pick(1 << 30)}`;
      const query = how.pictures ? `${acts}&pictures` : acts;
      const run = `${name}x${k}`;
      const { browser, told } = await launch({ ...how, ledger }, { folder, run, query });
      const row = seen(ledger, told);
      how.say(run, told, row);
      plus(sum, row);
      if (!last) await wait(100 + pick(how.longest));
      await killBrowser(folder, browser);
      await wait(how.rest); // what was told before the end is still on its way
      how.site.deaf(run);
      if (!last) plus(sum, { kills: 1 });
    }
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
  return plus(sum, { acts: ledger.acts(), ...(how.pictures ? { pictures: ledger.pictures() } : {}) });
}

/**
 * @param how `{ site, lane, work, seed, longest, rest, pictures, say, sofar }`: milliseconds of writing before a
 * kill at most `longest`; whether pictures are taken in beside it
 * @returns the sums of all kills of a lane
 */
export async function kills(how, times) {
  const pick = chance(how.seed);
  const sum = { kills: 0 };
  for (let done = 0; done < times; done += chain) {
    const name = `${how.lane.tag}${done}`;
    plus(sum, await killed(how, { name, times: Math.min(chain, times - done), pick }));
    how.sofar(sum); // a run that is broken off has said what it found
  }
  return sum;
}
