// From one reading to the list of setups: how long the whole chain takes when a large job is opened, and when a sheet
// of it is measured anew or a case is changed, which works out only what depends on that.
// node e2e/bench/chain.mjs runs it alone. The job is drawn from a seed: the same on every machine.
// Figures of Node on the desk. A throttled phone is 4x; that is measured in the browser, elsewhere.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'vite';
import { root } from '../tools/install.mjs';
import { whole as amounts } from './amounts.mjs';
import { listed, median } from './figures.mjs';

/** Numbers from a seed (mulberry32), 0 up to but not including n. */
function dice(seed) {
  let state = seed;
  return (n) => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return Math.floor((((t ^ (t >>> 14)) >>> 0) / 2 ** 32) * n);
  };
}

const modules = {
  edits: 'job/edits',
  job: 'job/job',
  length: 'length/length',
  operations: 'trade/setups/operations',
  order: 'trade/setups/order/order',
  parts: 'plan/parts-of-job',
  plan: 'plan/plan',
  recuts: 'plan/recuts',
};

/** The modules as the app ships them: bundled together, so that no import is looked up in the loops. */
export async function modulesOf() {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'knifeline-chain-'));
  const entry = path.join(folder, 'chain.ts');
  const lines = Object.values(modules).map(
    (name) => `export * from ${JSON.stringify(`${root}/src/${name}.ts`)};`,
  );
  writeFileSync(entry, lines.join('\n'));
  const [{ output }] = await build({
    root: `${root}/src`,
    configFile: false,
    publicDir: false,
    build: { write: false, target: 'es2022', lib: { entry, formats: ['es'], fileName: 'chain' } },
    logLevel: 'error',
  });
  const file = path.join(folder, 'chain.mjs');
  writeFileSync(file, output[0].code);
  try {
    return await import(pathToFileURL(file).href);
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
  }
}

/** A case with what stands in its bays: trays in some, shelves, rails in its frame. */
function caseOf(k, { inches, editCase, editInside }, pick) {
  const id = `c${k}`;
  const partitions = 1 + pick(3);
  const bay = () => 1 + pick(partitions + 1);
  const of = (stock) => `${stock}${pick(3)}`;
  const sheet = of('sheet');
  const trays = k % 6 === 0;
  const things = [
    ...Array.from({ length: 2 + pick(2) }, (_, n) => ['fixed', { at: inches(BigInt(8 + 9 * n)) }]),
    ...Array.from({ length: 1 + pick(3) }, () => ['loose', { count: 1 + pick(2) }]),
    ['rail', { at: inches(BigInt(20 + pick(8))), wide: inches(7n, 4n) }],
    ...(trays
      ? [
          [
            'trays',
            {
              count: 6,
              first: inches(17n, 8n),
              pitch: inches(2n),
              width: inches(13n, 32n),
              depth: inches(3n, 16n),
            },
          ],
        ]
      : []),
  ];
  return [
    ...editCase(id, {
      name: `Case ${k}`,
      width: inches(BigInt(48 * 8 + pick(64)), 8n),
      height: inches(BigInt(60 * 8 + pick(64)), 8n),
      depth: inches(BigInt(12 * 8 + pick(64)), 8n),
      feet: inches(33n, 8n),
      partitions,
      cleats: 2,
      hasBack: true,
      hasFrame: true,
      hasToe: true,
      sideStock: sheet,
      bottomStock: sheet,
      topStock: sheet,
      partitionStock: sheet,
      shelfStock: of('sheet'),
      cleatStock: sheet,
      toeStock: sheet,
      backStock: 'back0',
      trayStock: 'back1',
      frameStock: 'oak0',
    }),
    ...things.flatMap(([kind, more], n) => editInside(id, `i${n}`, { kind, bay: bay(), ...more })),
  ];
}

/** A board laid out by hand, grooved or not. */
function boardOf(k, { inches, editBoard, editRun }, pick) {
  const id = `b${k}`;
  const own = editBoard(id, {
    name: `Board ${k}`,
    length: inches(BigInt(20 * 4 + pick(80)), 4n),
    across: inches(BigInt(6 * 4 + pick(24)), 4n),
    thickness: inches(23n, 32n),
  });
  const count = pick(8);
  if (count === 0) return own;
  const run = {
    spacing: 'pitch',
    count,
    first: inches(BigInt(2 + pick(6)), 2n),
    pitch: inches(2n),
    width: inches(BigInt(12 + pick(3)), 32n),
    depth: inches(3n, 16n),
  };
  return [...own, ...editRun(id, 'r1', run)];
}

const stocks = ['sheet0', 'sheet1', 'sheet2', 'back0', 'back1', 'oak0'];

/** The values of a job of so many cases and boards, by path. */
export function jobOfMany({ cases, boards, seed }, app) {
  const pick = dice(seed);
  const { inches, editJob, editStock } = app;
  const thin = (id) => (id.startsWith('back') ? inches(7n, 32n) : inches(23n, 32n));
  const changes = [
    ...editJob({ name: 'A great many', tape: '1/32' }),
    ...stocks.flatMap((id) => editStock(id, { name: id, readings: [thin(id)], used: thin(id) })),
    ...Array.from({ length: cases }, (_, k) => caseOf(k, app, pick)).flat(),
    ...Array.from({ length: boards }, (_, k) => boardOf(k, app, pick)).flat(),
  ];
  return new Map(changes.map(({ path: at, value }) => [at, value]));
}

/** What the sheet reads, one turn after another: more of them than orders are remembered (solve-once). */
const readings = ['23/32', '90/127', '45/64', '703/1000', '357/500', '18/25', '71/100'];

function timed(work) {
  const from = performance.now();
  const result = work();
  return [performance.now() - from, result];
}

/** The shop of the job: the same in every turn, as in the app. */
const shop = {};

/** Sheet 0 reads so. */
function read(values, reading) {
  values.set('stock/sheet0/used', reading);
  values.set('stock/sheet0/readings', [reading]);
}

const nothing = {};

const whole = (values, app) => app.planOf(app.jobOf('j', values), shop);

/** A reading is accepted, and everything is worked out from it step by step. */
function links(values, app) {
  const [readJob, job] = timed(() => app.jobOf('j', values));
  const [parts, made] = timed(() => app.partsOfJob(job, shop));
  const recuts = (part) => app.recutsOf(job, part);
  const chosen = (part) => job.parts[part] ?? nothing;
  const [ops, operations] = timed(() =>
    app.operationsOf(
      { parts: made.parts, cases: job.cases, hand: job.work, recuts },
      { shop, tape: job.tape, chosen },
    ),
  );
  const steps = operations.map(({ id, setup, after }) => ({
    id,
    build: setup.build,
    setup: setup.key,
    after,
  }));
  const [order, ordered] = timed(() => app.orderSetups(steps));
  if (!ordered.ok) throw new Error(`a ring: ${ordered.error.ring.join(', ')}`);
  return { readJob, parts, ops, order };
}

/**
 * One turn: the job is opened after another one, so that nothing of it is known; then two readings of a sheet and a
 * height of a case are taken, one after the other.
 */
function turn({ values, other }, k, app) {
  whole(other, app);
  const [opened] = timed(() => whole(values, app));
  links(values, app);
  read(values, readings[(2 * k) % readings.length]);
  const found = links(values, app);
  read(values, readings[(2 * k + 1) % readings.length]);
  const [reading] = timed(() => whole(values, app));
  values.set('cases/c1/height', `${121 + 2 * (k % 8)}/2`);
  const [height, plan] = timed(() => whole(values, app));
  const bad = [...plan.worked.values()].find((worked) => !worked.ok);
  if (bad) throw new Error(`a case does not work out: ${bad.error.map(({ code }) => code).join(', ')}`);
  const size = {
    parts: plan.parts.length,
    operations: plan.operations.length,
    runs: plan.order.value.runs.length,
    proved: plan.order.value.proved,
  };
  // the plan itself is let go: plans kept would have the collector at work in every turn
  return { size, times: { opened, ...found, reading, height } };
}

const names = {
  opened: 'opened, jobOf and planOf, whole',
  readJob: 'one reading, jobOf',
  parts: 'one reading, partsOfJob',
  ops: 'one reading, operationsOf',
  order: 'one reading, orderSetups',
  reading: 'one reading, jobOf and planOf, whole',
  height: 'height of one case, jobOf and planOf, whole',
};

export const drawnFor = {
  small: { cases: 3, boards: 0, seed: 1 },
  large: { cases: 11, boards: 200, seed: 1 },
};

/** Each size of job: what is in it, and how long each link of the chain takes, median of several turns. */
async function* chains({ sizes, warmUp, turns }) {
  const app = await modulesOf();
  for (const size of sizes) {
    const jobs = {
      values: jobOfMany(drawnFor[size], app),
      other: jobOfMany({ ...drawnFor[size], seed: 2 }, app),
    };
    const found = Array.from({ length: warmUp + turns }, (_, k) => turn(jobs, k, app));
    const kept = found.slice(warmUp);
    yield {
      ...found[found.length - 1].size,
      times: Object.fromEntries(
        Object.keys(names).map((link) => [link, median(kept.map(({ times }) => times[link]))]),
      ),
    };
  }
}

/** @param amount `{ sizes, warmUp, turns }`: which jobs, and how many readings go before those that count */
export async function* chain(amount) {
  for await (const { parts, operations, times } of chains(amount))
    for (const [link, name] of Object.entries(names)) {
      const what = `${parts} parts, ${operations} operations: ${name}`;
      yield { name: what, app: times[link], unit: 'ms' };
    }
}

function print(found) {
  console.table(
    found.map(({ parts, operations, runs, proved, times }) => ({
      parts,
      operations,
      runs,
      proved,
      ...Object.fromEntries(
        Object.entries(names).map(([link, name]) => [`${name}, ms`, Number(times[link].toFixed(1))]),
      ),
    })),
  );
}

if (process.argv[1] === fileURLToPath(import.meta.url)) print(await listed(chains(amounts.chain)));
