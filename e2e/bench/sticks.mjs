// Filling sticks from published instances: how often with the fewest, how often proved, and how long it took, beside
// plain first-fit-decreasing, and beside HiGHS where all sticks can be listed (3000 at most, 2 s at most). node
// e2e/bench/sticks.mjs runs it alone. KNIFELINE_PACKING names a folder of 1d_*.json files, else the subset the tests
// keep. KNIFELINE_EFFORT is the work an instance may cost (about a millisecond each; else 1000, Hard28 2000),
// KNIFELINE_SEED the seed, KNIFELINE_SET a part of a file's name, KNIFELINE_EVERY takes each n-th instance,
// KNIFELINE_SAY names those short of the optimum, unproved or slow.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import highs from 'highs';
import { build } from 'vite';
import { root } from '../tools/install.mjs';
import { whole } from './amounts.mjs';
import { listed } from './figures.mjs';

const folder = process.env.KNIFELINE_PACKING ?? path.join(root, 'tests/published/data');
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

const files = () =>
  readdirSync(folder)
    .filter((f) => /^1d[_-].*\.json$/.test(f) && f.includes(only))
    .sort();

/** One instance worked through, checked, and how long the longest it kept anything waiting. */
function filled(fillSticks, problem, effort) {
  const from = performance.now();
  const run = fillSticks(problem, { seed, effort });
  let last = from;
  let pause = 0;
  let step;
  do {
    step = run.next();
    const now = performance.now();
    pause = Math.max(pause, now - last);
    last = now;
  } while (!step.done);
  check(problem, step.value);
  return { plan: step.value, ms: last - from, pause };
}

/** Nothing below the fewest known, and no bound above it: either would be a mistake of ours. */
function compared(name, { plan, other, optimum }) {
  if (plan.bound > optimum) throw new Error(`${name}: a false bound`);
  if (plan.sticks.length < optimum) throw new Error(`${name}: below the fewest known`);
  if (other?.proved && Math.round(other.value) !== optimum)
    throw new Error(`${name}: HiGHS finds ${other.value}`);
}

function one(fillSticks, { name, capacity, items, kerf = 0, optimum_bins: optimum }, effort) {
  const problem = {
    capacity: capacity + kerf,
    items: items.map((i) => ({ size: i.length + kerf, count: i.count })),
  };
  const { plan, ms, pause } = filled(fillSticks, problem, effort);
  const other = ms < 2000 ? reference(problem) : undefined;
  compared(name, { plan, other, optimum });
  const over = plan.sticks.length - optimum;
  if (process.env.KNIFELINE_SAY && (over > 0 || ms > 300 || !plan.proved))
    console.log(name, 'over', over, 'bound', plan.bound, ms.toFixed(0));
  return { over, proved: plan.proved, ms, pause, other, plain: firstFitDecreasing(problem) === optimum };
}

const count = (list, of) => list.filter(of).length;
const mean = (list, of) =>
  list.length === 0 ? undefined : list.reduce((sum, x) => sum + of(x), 0) / list.length;
const most = (list, of) => Math.max(...list.map(of));

/**
 * Per set: how ours comes out, plain first-fit-decreasing, and HiGHS on those whose sticks can all be listed.
 *
 * @param effort units an instance, undefined for the set's own @param every takes each so many-th instance
 */
export async function* sticks({ effort, every }) {
  const { fillSticks } = await shipped(`${root}/src/trade/sheets/one-d/fill-sticks.ts`);
  for (const file of files()) {
    const { set, instances } = JSON.parse(readFileSync(path.join(folder, file), 'utf8'));
    const own = effort ?? (/hard28/i.test(set) ? 2000 : 1000);
    const some = instances.filter((_, k) => k % every === 0);
    const all = some.map((instance) => one(fillSticks, instance, own));
    const beside = all.filter(({ other }) => other);
    yield {
      name: set,
      instances: all.length,
      'at optimum': count(all, ({ over }) => over === 0),
      proved: count(all, ({ proved }) => proved),
      'mean gap': mean(all, ({ over }) => over),
      'mean ms': mean(all, ({ ms }) => ms),
      'most ms': most(all, ({ ms }) => ms),
      'longest pause ms': most(all, ({ pause }) => pause),
      'first-fit-decreasing at optimum': count(all, ({ plain }) => plain),
      'beside HiGHS': beside.length,
      'ours there, mean ms': mean(beside, ({ ms }) => ms),
      'HiGHS, mean ms': mean(beside, ({ other }) => other.ms),
      'ours there proved': count(beside, ({ proved }) => proved),
      'HiGHS proved': count(beside, ({ other }) => other.proved),
    };
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { KNIFELINE_EFFORT: effort, KNIFELINE_EVERY: every } = process.env;
  const amount = { effort: effort && Number(effort), every: Number(every ?? whole.sticks.every) };
  console.table(await listed(sticks(amount)));
}
