// Exact arithmetic beside the machine's own: reading, rounding, laying out a board.
import { readFileSync } from 'node:fs';
import { createServer } from 'vite';
import { root } from '../tools/install.mjs';

const texts = [
  '23/32',
  '18-7/64',
  '38.375',
  '18 mm',
  '0,7085',
  `3' 2 3/8"`,
  '64 1/4',
  '12',
  '1 1/2 in',
  '146 mm',
  '5 5/8',
  '0.503',
];

const cpuSeconds = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};

/**
 * How often in a second of processor time, which a busy machine does not spoil: warmed up, then for so many `seconds`.
 * `per` is how many things one call does.
 */
function perSecond(work, { warmUp, seconds }, per = 1) {
  const run = (most) => {
    const from = cpuSeconds();
    let calls = 0;
    while (cpuSeconds() - from < most) {
      for (let k = 0; k < 20; k += 1) work();
      calls += 20;
    }
    return (calls * per) / (cpuSeconds() - from);
  };
  if (warmUp > 0) run(warmUp);
  return run(seconds);
}

let sink; // what was worked out goes somewhere, so that nothing is left out of the work

function each(items, work) {
  return () => {
    for (const item of items) sink = work(item);
  };
}

/** The 30-groove board of the sample job and what it takes to lay it out. */
async function sampleBoard(from) {
  const { readJobFile } = await from('job/file');
  const { fold } = await from('job/log');
  const { jobOf } = await from('job/job');
  const text = readFileSync(`${root}/demo-data/mineral-and-shell-cabinet.json`, 'utf8');
  const file = readJobFile(text);
  if (!file.ok) throw new Error(file.error.code);
  const { partsOfJob } = await from('plan/parts-of-job');
  const job = jobOf(file.value.job, fold(file.value.entries).values);
  return { tape: job.tape, board: partsOfJob(job, {}).parts.find((p) => p.id === 'case~left').board };
}

async function laidOut(from, amount) {
  const { tape, board } = await sampleBoard(from);
  const { layOut } = await from('trade/grooves/lay-out');
  const { marksOf } = await from('trade/grooves/marks');
  const { settingsFor } = await from('trade/grooves/settings');
  const all = () => {
    const side = { ...board }; // another board each time: what the same one comes to is kept
    const layout = layOut(side);
    sink = [marksOf(side, layout, tape), settingsFor(layout, { board: side, shop: {}, tape })];
    return layout.grooves.length;
  };
  return { grooves: all(), rate: perSecond(all, amount) };
}

/** @param amount `{ warmUp, seconds }` of processor time for each figure */
export async function* reckoning(amount) {
  const server = await createServer({
    root: `${root}/src`,
    configFile: false,
    server: { middlewareMode: true, hmr: false, ws: false },
    optimizeDeps: { noDiscovery: true },
    logLevel: 'error',
  });
  try {
    yield* rates((name) => server.ssrLoadModule(`/${name}.ts`), amount);
  } finally {
    await server.close();
  }
  if (sink === undefined) throw new Error('nothing was worked out');
}

async function* rates(from, amount) {
  const { readLength } = await from('length/read');
  const { markAt } = await from('length/tape');
  const lengths = texts.map((text) => readLength(text).value.value);
  const floats = lengths.map((x) => x.valueOf());
  const row = (name, app, beside) => ({ name, app, beside, unit: 'a CPU second' });
  const rate = (items, work) => perSecond(each(items, work), amount, items.length);
  yield row(
    `read a length, ${texts.length} texts; Number.parseFloat`,
    rate(texts, (text) => readLength(text)),
    rate(texts, Number.parseFloat),
  );
  yield row(
    'round to a 32nd; Math.round',
    rate(lengths, (x) => markAt(x, '1/32')),
    rate(floats, (x) => Math.round(x * 32) / 32),
  );
  const board = await laidOut(from, amount);
  yield row(`lay out, mark and set a board of ${board.grooves} grooves`, board.rate);
}
