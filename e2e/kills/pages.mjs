// A browser driven by hand: many origins in one profile, each as good as a phone of its own.
import { chromium } from 'playwright-core';
import { newLedger } from './ledger.mjs';

const args = ['--no-sandbox', '--disable-gpu', '--disable-background-networking'];

export const openProfile = (folder, executablePath) =>
  chromium.launchPersistentContext(folder, { executablePath, args });

/**
 * An origin of its own and what was acknowledged there.
 *
 * @param at `{ site, name }`, a name no other phone of this run has
 */
export function phone({ site, name }) {
  const ledger = newLedger();
  let runs = 0;
  const origin = `http://${name}.localhost:${site.port}`;
  return {
    origin,
    ledger,
    /** Opens the writing page; resolves with `opened` and `done`, promises of what it tells, and `acts` so far. */
    visit: async (page, version, query) => {
      runs += 1;
      const run = `${name}r${runs}`;
      const here = listening({ site, run, ledger });
      await page.goto(`${origin}/${version}/?run=${run}&${query}`);
      return here;
    },
  };
}

function listening({ site, run, ledger }) {
  const waiting = { opened: undefined, done: undefined };
  const acts = { told: 0 };
  const promise = (what) =>
    new Promise((resolve) => {
      waiting[what] = resolve;
    });
  const [opened, done] = [promise('opened'), promise('done')];
  site.hear(run, (told) => {
    if (told.what === 'acts') {
      acts.told += told.acts.length;
      for (const act of told.acts) ledger.note(act);
    } else if (told.what === 'opened') waiting.opened(told);
    else {
      waiting.opened(told); // shut or broken: it will not open any more
      waiting.done(told);
    }
  });
  return { opened, done, acts };
}
