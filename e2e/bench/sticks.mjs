// Filling sticks from published instances: how often with the fewest, how often proved, and how long it took, beside
// plain first-fit-decreasing, and beside HiGHS where all sticks can be listed. node e2e/bench/sticks.mjs runs it alone.
// KNIFELINE_PACKING names a folder of 1d_*.json files, else the subset the tests keep. KNIFELINE_EFFORT is the work an
// instance may cost (about a millisecond each; else 1000, Hard28 2000), KNIFELINE_SEED the seed, KNIFELINE_SET a part of
// a file's name, KNIFELINE_EVERY takes each n-th instance, KNIFELINE_SAY names those short of the optimum, unproved or slow.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import highs from 'highs';
import { build } from 'vite';
import { root } from '../tools/install.mjs';

const folder = process.env.KNIFELINE_PACKING ?? path.join(root, 'tests/published/data');
const every = Number(process.env.KNIFELINE_EVERY ?? 1);
const effort = Number(process.env.KNIFELINE_EFFORT ?? 0);
const only = process.env.KNIFELINE_SET ?? '';
const seed = Number(process.env.KNIFELINE_SEED ?? 1);

async function shipped(entry) {
  const [{ output }] = await build({
    root: `${root}/src`,
    configFile: false,
    publicDir: false,
    build: {
      write: false,
      target: 'es2022',
      minify: false,
      lib: { entry, formats: ['es'], fileName: 'sticks' },
    },
    logLevel: 'error',
  });
  return import(`data:text/javascript;base64,${Buffer.from(output[0].code).toString('base64')}`);
}

function firstFitDecreasing({ capacity, items }) {
  const sizes = items
    .flatMap(({ size, count }) => Array.from({ length: count }, () => size))
    .sort((a, b) => b - a);
  const room = [];
  for (const size of sizes) {
    const at = room.findIndex((r) => r >= size);
    if (at < 0) room.push(capacity - size);
    else room[at] -= size;
  }
  return room.length;
}

function check({ capacity, items }, { sticks, bound, proved }) {
  const left = items.map((i) => i.count);
  for (const { items: stick } of sticks) {
    let sum = 0;
    for (const k of stick) {
      sum += items[k].size;
      left[k] -= 1;
    }
    if (sum > capacity) throw new Error('a stick over its capacity');
  }
  if (left.some((n) => n !== 0)) throw new Error('not every piece once');
  if (bound > sticks.length || proved !== (bound === sticks.length))
    throw new Error('a bound that cannot be');
}

/** Every stick with no room for one piece more; undefined above so many. */
function patterns({ capacity, items }, most) {
  const found = [];
  const counts = items.map(() => 0);
  const go = (from, room) => {
    if (items.every(({ size, count }, k) => counts[k] >= count || size > room)) found.push([...counts]);
    for (let k = from; k < items.length && found.length <= most; k += 1) {
      if (items[k].size > room || counts[k] >= items[k].count) continue;
      counts[k] += 1;
      go(k, room - items[k].size);
      counts[k] -= 1;
    }
  };
  go(0, capacity);
  return found.length <= most ? found : undefined;
}

function model({ items }, full) {
  const names = full.map((_, p) => `x${p}`);
  const rows = items.map(({ count }, k) => {
    const terms = full.flatMap((counts, p) => (counts[k] > 0 ? [`${counts[k]} x${p}`] : []));
    return ` c${k}: ${terms.join('\n + ')} >= ${count}`;
  });
  return `Minimize\n obj: ${names.join('\n + ')}\nSubject To\n${rows.join('\n')}\nGeneral\n ${names.join('\n ')}\nEnd\n`;
}

const solver = await highs();

/** HiGHS (MIT, Huangfu and Hall 2018) on the whole-number programme of all sticks, where they are few. */
function reference(problem) {
  const full = patterns(problem, 3000);
  if (!full) return undefined;
  const from = performance.now();
  const { Status, ObjectiveValue } = solver.solve(model(problem, full), { time_limit: 2 });
  return {
    sticks: full.length,
    ms: performance.now() - from,
    proved: Status === 'Optimal',
    value: ObjectiveValue,
  };
}

/** Prints both tables. */
export async function sticks() {
  const beside = [];
  const { fillSticks } = await shipped(`${root}/src/trade/sheets/one-d/fill-sticks.ts`);
  const rows = [];
  for (const file of readdirSync(folder)
    .filter((f) => /^1d[_-].*\.json$/.test(f) && f.includes(only))
    .sort()) {
    const { set, instances } = JSON.parse(readFileSync(path.join(folder, file), 'utf8'));
    const hard = /hard28/i.test(set);
    const row = {
      set,
      n: 0,
      optimum: 0,
      proved: 0,
      'mean gap': 0,
      'mean ms': 0,
      'max ms': 0,
      'max pause ms': 0,
      'FFD optimum': 0,
    };
    for (const { name, capacity, items, kerf = 0, optimum_bins: optimum } of instances.filter(
      (_, k) => k % every === 0,
    )) {
      const problem = {
        capacity: capacity + kerf,
        items: items.map((i) => ({ size: i.length + kerf, count: i.count })),
      };
      const from = performance.now();
      const run = fillSticks(problem, { seed, effort: effort || (hard ? 2000 : 1000) });
      let last = from;
      let step;
      do {
        step = run.next();
        const now = performance.now();
        row['max pause ms'] = Math.max(row['max pause ms'], now - last);
        last = now;
      } while (!step.done);
      const ms = last - from;
      check(problem, step.value);
      const got = step.value.sticks.length;
      if (step.value.bound > optimum) throw new Error(`${name}: a false bound`);
      if (got < optimum) throw new Error(`${name}: below the fewest known`);
      if (process.env.KNIFELINE_SAY && (got > optimum || ms > 300 || !step.value.proved))
        console.log(name, 'got', got, 'opt', optimum, 'bound', step.value.bound, ms.toFixed(0));
      const other = ms < 2000 ? reference(problem) : undefined;
      if (other?.proved && Math.round(other.value) !== optimum)
        throw new Error(`${name}: HiGHS finds ${other.value}`);
      if (other)
        beside.push({
          set,
          ours: ms,
          HiGHS: other.ms,
          'ours proved': step.value.proved,
          'HiGHS proved': other.proved,
        });
      row.n += 1;
      row.optimum += got === optimum ? 1 : 0;
      row.proved += step.value.proved ? 1 : 0;
      row['mean gap'] += got - optimum;
      row['mean ms'] += ms;
      row['max ms'] = Math.max(row['max ms'], ms);
      row['FFD optimum'] += firstFitDecreasing(problem) === optimum ? 1 : 0;
    }
    row['mean gap'] = Number((row['mean gap'] / row.n).toFixed(3));
    for (const k of ['mean ms']) row[k] /= row.n;
    for (const k of ['mean ms', 'max ms', 'max pause ms']) row[k] = Number(row[k].toFixed(1));
    rows.push(row);
  }
  console.table(rows);
  const sets = [...new Set(beside.map((b) => b.set))];
  const mean = (list) => Number((list.reduce((s, n) => s + n, 0) / list.length).toFixed(1));
  console.log(
    'where all sticks can be listed (3000 at most): ours beside HiGHS, whole-number programme, 2 s at most',
  );
  console.table(
    sets.map((set) => {
      const of = beside.filter((b) => b.set === set);
      return {
        set,
        n: of.length,
        'ours mean ms': mean(of.map((b) => b.ours)),
        'HiGHS mean ms': mean(of.map((b) => b.HiGHS)),
        'ours proved': of.filter((b) => b['ours proved']).length,
        'HiGHS proved': of.filter((b) => b['HiGHS proved']).length,
      };
    }),
  );
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await sticks();
