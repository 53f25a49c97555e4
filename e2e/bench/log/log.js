// Runs in the browser: a log of many ticks in a database of its own, opened and ticked by the app's own store.
import { extend, fold, over } from '../../../src/job/log';
import { openStore } from '../../../src/store/store';

/** No file has more. */
const atOnce = 10_000;

async function open(name) {
  const options = {
    name: `bench-${name}`,
    randomId: () => 'benchphone',
    now: () => new Date().toISOString(),
  };
  const store = await openStore(options);
  if (!store.ok) throw new Error(store.error.code);
  return store.value;
}

/** Operations that all differ: board, groove, pass, copy. */
const op = (k) => `cut/b${k % 50}/r1~${Math.floor(k / 100)}~p1/${1 + (Math.floor(k / 50) % 2)}`;

const tick = (job, k) => ({
  job,
  device: 'benchphone',
  count: k + 1,
  at: '2026-11-02T08:30:00.000Z',
  act: `benchphone.${k + 1}`,
  label: 'Cut: left, shelf 4',
  kind: 'tick',
  op: op(k),
  figure: `${2 * k + 1}/64`,
});

/** Jobs of one database: how many there are, and the ticks of each. */
const namesOf = (jobs) => Array.from({ length: jobs }, (_, k) => `longlog${k}`);

/** Fills a database of `jobs` jobs with `size` ticks each, and packs them as a start does. */
async function fill({ jobs, size }) {
  const store = await open(`${jobs}-${size}`);
  for (const job of namesOf(jobs)) {
    const ticks = Array.from({ length: size }, (_, k) => tick(job, k));
    for (let k = 0; k < size; k += atOnce) {
      const done = await store.addEntries(job, ticks.slice(k, k + atOnce));
      if (!done.ok) throw new Error(done.error.code);
    }
  }
  await store.pack();
  store.close();
}

/** The list of jobs read and the last one opened, `opens` times, then ticked `ticks` times: milliseconds of each. */
async function measure({ jobs, size, opens, ticks }) {
  const store = await open(`${jobs}-${size}`);
  const job = namesOf(jobs)[jobs - 1];
  const opened = [];
  let folded;
  for (let k = 0; k < opens; k += 1) {
    folded = undefined;
    const from = performance.now();
    await store.jobs();
    const loaded = await store.load(job);
    folded = fold(loaded.entries);
    opened.push(performance.now() - from);
    if (loaded.setAside > 0 || folded.ticks.size < size)
      throw new Error(`${folded.ticks.size} of ${size} ticks came back`);
  }
  const ticked = [];
  for (let k = 0; k < ticks; k += 1) {
    const from = performance.now();
    folded = await tickOne(store, job, folded);
    ticked.push(performance.now() - from);
  }
  store.close();
  return { opened, ticked };
}

/** Opens a job and keeps it in hand, so that what it takes in memory can be weighed. */
async function hold({ jobs, size }) {
  const store = await open(`${jobs}-${size}`);
  const { entries } = await store.load(namesOf(jobs)[jobs - 1]);
  globalThis.held = { entries, folded: fold(entries) };
  store.close();
}

/** One more operation done: kept on the disk, then added to what the log comes to. */
async function tickOne(store, job, folded) {
  const changes = over(folded, [{ kind: 'tick', op: op(folded.last.count), figure: '47/64' }]);
  const done = await store.append({ job, label: 'Cut: left, shelf 4', changes });
  const next = done.ok ? extend(folded, done.value) : undefined;
  if (!next) throw new Error('a tick was not kept');
  return next;
}

globalThis.longLog = { fill, measure, hold };
