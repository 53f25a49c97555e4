// Putting a job's operations in order with the fewest setups: how long it takes, and how far from the bound it ends.
// node e2e/bench/ordering.mjs runs it alone. The jobs are drawn from a seed: the same on every machine.
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { root } from '../tools/install.mjs';
import { whole } from './amounts.mjs';
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

const rip = (width) => ({ build: 'saw', setup: `rip ${width}` });
const cut = (length) => ({ build: 'crosscut', setup: `length ${length}` });
const rabbet = (depth) => ({ build: 'sacrificial fence', setup: `rabbet ${depth}` });
const groove = (stack, stop) => ({ build: `stack ${stack}`, setup: `stack ${stack}, stop ${stop}` });

/**
 * A job of so many parts: rip, length, grooves in any order, a rabbet after them; most parts before the dry fit, the
 * others after it, as built, and partly at the same fences again. Harder, and rarer in a shop:
 * `crossed`: some parts are ripped from what is left of others already cut to length, or once more at the end;
 * `tangled`: the grooves of each part are in a fixed order besides, each part another.
 */
function job({ parts, seed, kind = 'plain' }) {
  const crossed = kind !== 'plain';
  const tangled = kind === 'tangled';
  const pick = dice(seed);
  const widths = Math.ceil(parts / 6) + 3;
  const lengths = Math.ceil(parts / 5) + 3;
  const stops = Math.ceil(parts / 8) + 2;
  const steps = [];
  const cutTo = [];
  const add = (id, { build, setup }, after) => {
    steps.push({ id, build, setup, after });
    return id;
  };
  const part = (k, first) => {
    const from = crossed && pick(12) === 0 && cutTo.length > 0 ? [cutTo[pick(cutTo.length)]] : [];
    const ripped = add(`${k} rip`, rip(pick(widths)), [...first, ...from]);
    const toLength = add(`${k} length`, cut(pick(lengths)), [ripped]);
    cutTo.push(toLength);
    const stack = pick(4);
    let ends = [toLength];
    for (let g = pick(6); g > 0; g -= 1) {
      const done = add(`${k} groove ${g}`, groove(stack, pick(stops)), tangled ? ends : [toLength]);
      ends = tangled || ends[0] === toLength ? [done] : [...ends, done];
    }
    if (pick(4) === 0) ends = [add(`${k} rabbet`, rabbet(pick(3)), ends)];
    if (crossed && pick(15) === 0) ends = [add(`${k} last rip`, rip(pick(widths)), ends)];
    return ends;
  };
  const early = Math.round(parts * 0.7);
  const ends = Array.from({ length: early }, (_, k) => part(k, []));
  const carcass = ends.filter(() => pick(10) < 6).flat();
  const fit = add('dry fit', { build: 'bench', setup: 'dry fit' }, carcass);
  for (let k = early; k < parts; k += 1) part(k, [fit]);
  return steps;
}

/** More jobs of one to six steps than orders are remembered (solve-once): asked between, none is found again. */
const others = Array.from({ length: 6 }, (_, most) =>
  Array.from({ length: most + 1 }, (_, k) => ({ id: `${k}`, ...rip(k), after: [] })),
);

function measure(orderSetups, steps, turns) {
  const times = [];
  let order;
  for (let k = 0; k < turns; k += 1) {
    for (const other of others) orderSetups(other);
    const from = performance.now();
    const result = orderSetups(steps);
    times.push(performance.now() - from);
    if (!result.ok) throw new Error(`a ring: ${result.error.ring.join(', ')}`);
    order = result.value;
  }
  return { order, first: times[0], time: median(times) };
}

const jobs = [
  ...[20, 100, 400].flatMap((parts) => [1, 2, 3].map((seed) => ({ parts, seed, kind: 'plain' }))),
  ...[20, 100, 400].map((parts) => ({ parts, seed: 1, kind: 'crossed' })),
  ...[100, 400].map((parts) => ({ parts, seed: 1, kind: 'tangled' })),
];

/** The module as the app ships it: bundled, so that no import is looked up in the loops. */
async function shipped(entry) {
  const [{ output }] = await build({
    root: `${root}/src`,
    configFile: false,
    publicDir: false,
    build: { write: false, target: 'es2022', lib: { entry, formats: ['es'], fileName: 'order' } },
    logLevel: 'error',
  });
  return import(`data:text/javascript;base64,${Buffer.from(output[0].code).toString('base64')}`);
}

/** Each job drawn: its size, the order found, and how long it took the first time and in the middle of several. */
async function* orderings({ parts: wanted, turns }) {
  const { orderSetups } = await shipped(`${root}/src/trade/setups/order/order.ts`);
  for (const drawn of jobs.filter(({ parts }) => wanted.includes(parts))) {
    const steps = job(drawn);
    const setups = new Set(steps.map((s) => s.setup)).size;
    const name = `${drawn.kind} ${drawn.seed}`;
    yield { parts: drawn.parts, name, steps: steps.length, setups, ...measure(orderSetups, steps, turns) };
  }
}

/** @param amount `{ parts, turns }`: jobs of how many parts, and how often each is put in order */
export async function* ordering(amount) {
  for await (const { parts, name: drawn, steps, order, time } of orderings(amount)) {
    const name = `order ${parts} parts, ${steps} steps, ${drawn}`;
    const proof = order.proved ? 'proved' : `gap ${order.runs.length - order.leastRuns}`;
    yield { name: `${name}, median`, app: time, unit: 'ms' };
    const [app, beside] = [order.runs.length, order.leastRuns];
    yield { name: `${name}, ${proof}; bound`, app, beside, unit: 'setups' };
  }
}

function print(found) {
  console.table(
    found.map(({ parts, name, steps, setups, order, first, time }) => ({
      parts,
      job: name,
      steps,
      setups,
      'first ms': Number(first.toFixed(1)),
      'median ms': Number(time.toFixed(1)),
      builds: order.builds,
      'builds bound': order.leastBuilds,
      runs: order.runs.length,
      'runs bound': order.leastRuns,
      gap: order.runs.length - order.leastRuns,
      proved: order.proved,
    })),
  );
}

if (process.argv[1] === fileURLToPath(import.meta.url)) print(await listed(orderings(whole.ordering)));
