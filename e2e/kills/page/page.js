// Opens the store, says what is in it, then acts as fast as it is acknowledged and tells each act after it was.
import { actor, everything } from './acts';
import { chance } from './chance';
import { database, openKept, restoredBy } from './open';
import { flawed, taker } from './pictures';

const asked = new URLSearchParams(location.search);
const run = asked.get('run') ?? 'none';
const most = Number(asked.get('acts') ?? 0);
const fill = Number(asked.get('fill') ?? 0);
const pictured = asked.has('pictures');

const post = (told) => fetch(`/told?run=${run}`, { method: 'POST', body: JSON.stringify(told) });

// acts that end while the last lot is on its way go with the next: the wire never holds the writing up for long
const waiting = [];
let sending;
function tell(act) {
  waiting.push(act);
  sending ??= (async () => {
    while (waiting.length > 0) await post({ what: 'acts', acts: waiting.splice(0) });
    sending = undefined;
  })();
}

async function act(store, figures) {
  const pick = chance(Number(asked.get('seed') ?? 1));
  const shelf = asked.get('shelf') ?? 'bit';
  const next = actor(store, { name: run, pick, shelf, from: figures[`shop ${shelf}`] ?? 0 });
  const take = pictured ? taker(store, { name: run, pick }) : undefined;
  for (let k = 0; k < most; k += 1) {
    // as the app does once a start, here in the middle of writing
    if (k % 50 === 10) void store.pack().catch(() => undefined);
    const together = pick(12) === 0 ? 3 : 1; // now and then a second thumb
    const acts = Array.from({ length: together }, () => next().then(tell));
    await Promise.all(take ? [...acts, take().then(tell)] : acts);
  }
  while (sending) await sending;
}

/** A long log at one go, as from a file. */
async function fillWith(store, size) {
  const stamp = { job: 'longjob', device: 'longphone', at: '2026-11-02T08:30:00.000Z' };
  const entries = Array.from({ length: size }, (_, k) => ({
    ...stamp,
    count: k + 1,
    act: `longphone.${k + 1}`,
    label: `long.${k}/1`,
    kind: 'tick',
    op: `cut/b${k % 50}/r1~${Math.floor(k / 100)}~p1/1`,
    figure: `${2 * k + 1}/64`,
  }));
  const done = await store.addEntries('longjob', entries);
  tell(done.ok ? { label: 'long', entries } : { label: 'long', refused: done.error.code });
}

async function start() {
  const began = performance.now();
  const opened = await openKept(() => tell({ label: 'gone', refused: 'gone' }));
  if (!opened.store) return post({ what: 'shut', why: opened.why });
  const { store, twoCopies } = opened;
  const took = performance.now() - began; // reading it all out for the comparison is ours, not the app's
  const shown = await everything(store);
  const restored = await restoredBy(store);
  const whole = performance.now() - began;
  const has = await everything(store);
  const flaws = pictured ? await flawed(store, has.entries) : {};
  await post({ what: 'opened', database, restored, twoCopies, took, whole, shown, ...has, ...flaws });
  if (fill > 0) await fillWith(store, fill);
  await act(store, has.figures);
  // a journal busy with a very long log may answer too late: the store then says so, and is asked to even the two out
  if (fill > 0) await store.secure();
  return post({ what: 'done' });
}

start().catch((error) => post({ what: 'broke', why: `${error?.name}: ${error?.message}` }));
