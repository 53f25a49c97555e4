// Runs in the browser: a log of many ticks in a database of its own, opened and ticked by the app's own store.
import { extend, fold } from '../../../src/store/log';
import { openStore } from '../../../src/store/store';

const job = 'longlog';

async function open(size) {
  const options = {
    name: `bench-${size}`,
    randomId: () => 'benchphone',
    now: () => new Date().toISOString(),
  };
  const store = await openStore(options);
  if (!store.ok) throw new Error(store.error.code);
  return store.value;
}

/** Operations that all differ: board, groove, pass, copy. */
const op = (k) => `cut/b${k % 50}/r1~${Math.floor(k / 100)}~p1/${1 + (Math.floor(k / 50) % 2)}`;

const tick = (k) => ({
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

/** Fills the database with `size` ticks; says how many were taken in. */
async function fill(size) {
  const store = await open(size);
  const ticks = Array.from({ length: size }, (_, k) => tick(k));
  const done = await store.addEntries(job, ticks);
  store.close();
  if (!done.ok) throw new Error(done.error.code);
  return done.value;
}

/** Opens the job `times` times: milliseconds of each. */
async function openings(size, times) {
  const store = await open(size);
  const took = [];
  for (let k = 0; k < times; k += 1) {
    const from = performance.now();
    const loaded = await store.load(job);
    const ticked = fold(loaded.entries).ticks.size;
    took.push(performance.now() - from);
    if (loaded.setAside > 0 || ticked < size) throw new Error(`${ticked} of ${size} ticks came back`);
  }
  store.close();
  return took;
}

/** Ticks `times` times on the opened log: milliseconds of each, until it is kept and folded in. */
async function ticks(size, times) {
  const store = await open(size);
  let folded = fold((await store.load(job)).entries);
  const took = [];
  for (let k = 0; k < times; k += 1) {
    const changes = [{ kind: 'tick', op: op(size + folded.last.count), figure: '47/64' }];
    const from = performance.now();
    const done = await store.append({ job, label: 'Cut: left, shelf 4', changes });
    const next = done.ok ? extend(folded, done.value) : undefined;
    took.push(performance.now() - from);
    if (!next) throw new Error('a tick was not kept');
    folded = next;
  }
  store.close();
  return took;
}

globalThis.longLog = { fill, openings, ticks };
