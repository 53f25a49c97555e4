// The database taken away behind the app's back: what is there at the next opening.
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { plus } from './ledger.mjs';
import { chance } from './page/chance.js';
import { openProfile, phone } from './pages.mjs';

/** Entries of the long log that is timed. */
const long = process.env.KNIFELINE_NIGHTLY ? 100_000 : 10_000;

const clear = async (context, page, origin) => {
  const cdp = await context.newCDPSession(page);
  await cdp.send('Storage.clearDataForOrigin', { origin, storageTypes: 'indexeddb' });
  await cdp.detach();
};

/** Opens again, compares; one row of the table. */
async function look(page, at) {
  const { opened } = await at.visit(page, 'now', 'acts=0');
  const told = await opened;
  if (told.what !== 'opened') return { wipes: 1, shut: 1 };
  const found = at.ledger.compare(told);
  const healed = found.lost + found.changed === 0 ? 1 : 0;
  const { restored, took, whole, twoCopies } = told;
  const unshown = at.ledger.compare(told.shown).lost;
  return { ...found, wipes: 1, healed, unshown, restored, took, whole, twoCopies };
}

/** Cleared between two visits. */
async function between({ context, page, at }, query) {
  const { done } = await at.visit(page, 'now', query);
  await done;
  await page.goto('about:blank');
  await clear(context, page, at.origin);
  return look(page, at);
}

/** Cleared under a page that goes on writing: it may refuse, and what it acknowledges counts. */
async function under({ context, page, at, pick }) {
  const { done, acts } = await at.visit(page, 'now', `acts=120&seed=${pick(1 << 30)}`);
  const soon = 5 + pick(60);
  while (acts.told < soon) await new Promise((again) => setTimeout(again, 5));
  await clear(context, page, at.origin);
  await done;
  await page.goto('about:blank');
  return look(page, at);
}

/** One byte turned over in each log file of the database, the browser closed. */
function damage(folder, pick) {
  const all = path.join(folder, 'Default', 'IndexedDB');
  const logs = readdirSync(all, { recursive: true, encoding: 'utf8' }).filter((name) =>
    /\d+\.log$/.test(name),
  );
  let hurt = 0;
  for (const name of logs) {
    const bytes = readFileSync(path.join(all, name));
    if (bytes.length < 200) continue;
    const at = 20 + pick(Math.floor(bytes.length / 2));
    bytes[at] ^= 255;
    writeFileSync(path.join(all, name), bytes);
    hurt += 1;
  }
  if (hurt === 0) throw new Error('no log file to damage: the database lies elsewhere');
}

async function damaged(how, { name, pick }) {
  const folder = mkdtempSync(path.join(how.work, `${name}-`));
  const at = phone({ site: how.site, name });
  try {
    const first = await openProfile(folder, how.chromium);
    const { done } = await at.visit(first.pages()[0], 'now', `acts=60&seed=${pick(1 << 30)}`);
    await done;
    await first.close();
    damage(folder, pick);
    const again = await openProfile(folder, how.chromium);
    const row = await look(again.pages()[0], at);
    await again.close();
    return row;
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}

const kinds = {
  between: (how, k) => between(how.hand(`wb${k}`), `acts=${20 + how.pick(60)}&seed=${how.pick(1 << 30)}`),
  under: (how, k) => under(how.hand(`wu${k}`)),
  damaged: (how, k) => damaged(how, { name: `wd${k}`, pick: how.pick }),
  long: (how, k) => between(how.hand(`wl${k}`), `acts=5&fill=${long}`),
};

/**
 * @param how `{ site, work, chromium, seed, say }`
 * @param of `{ kind, times }`: `between` two visits, `under` a page that writes, `damaged` log file, a `long` log
 * @returns the sums of the trials, the `slowest` opening after a wipe and the `slowest fill` behind it in
 * milliseconds, and whether there were two copies
 */
export async function wipes(how, { kind, times }) {
  const pick = chance(how.seed);
  const context = await openProfile(mkdtempSync(path.join(how.work, 'wipes-')), how.chromium);
  const page = context.pages()[0];
  const hand = (name) => ({ context, page, pick, at: phone({ site: how.site, name }) });
  const sum = { wipes: 0, slowest: 0, 'slowest fill': 0, twoCopies: 0 };
  for (let k = 0; k < times; k += 1) {
    const { took, whole, twoCopies, ...row } = await kinds[kind]({ ...how, hand, pick }, k);
    how.say(`${kind} ${k}`, row);
    plus(sum, row);
    sum.slowest = Math.max(sum.slowest, took ?? 0);
    sum['slowest fill'] = Math.max(sum['slowest fill'], whole ?? 0);
    sum.twoCopies += twoCopies ? 1 : 0;
  }
  await context.close();
  return sum;
}
