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

/** How often a second: warmed up, then for half a second. `per` is how many things one call does. */
function perSecond(work, per = 1) {
  const run = (ms) => {
    const from = performance.now();
    let calls = 0;
    while (performance.now() - from < ms) {
      work();
      calls += 1;
    }
    return (calls * per * 1000) / (performance.now() - from);
  };
  run(200);
  return run(500);
}

let sink; // what was worked out goes somewhere, so that nothing is left out of the work

function each(items, work) {
  return () => {
    for (const item of items) sink = work(item);
  };
}

/** The 30-groove board of the sample job and what it takes to lay it out. */
async function board(from) {
  const { readJobFile } = await from('store/file');
  const { fold } = await from('store/log');
  const { jobOf } = await from('store/job');
  const text = readFileSync(`${root}/demo-data/mineral-and-shell-cabinet.json`, 'utf8');
  const file = readJobFile(text);
  if (!file.ok) throw new Error(file.error.code);
  const job = jobOf(file.value.job, fold(file.value.entries).values);
  return { tape: job.tape, board: job.boards.find((b) => b.id === 'leftside') };
}

async function laidOut(from) {
  const { tape, board: side } = await board(from);
  const { layOut } = await from('trade/grooves/lay-out');
  const { marksOf } = await from('trade/grooves/marks');
  const { settingsFor } = await from('trade/grooves/settings');
  const all = () => {
    const layout = layOut(side);
    sink = [marksOf(side, layout, tape), settingsFor(layout, { board: side, shop: {}, tape })];
    return layout.grooves.length;
  };
  return { grooves: all(), rate: perSecond(all) };
}

export async function reckoning() {
  const server = await createServer({
    root: `${root}/src`,
    configFile: false,
    server: { middlewareMode: true, hmr: false, ws: false },
    optimizeDeps: { noDiscovery: true },
    logLevel: 'error',
  });
  const from = (name) => server.ssrLoadModule(`/${name}.ts`);
  const { readLength } = await from('length/read');
  const { markAt } = await from('length/tape');
  const lengths = texts.map((text) => readLength(text).value.value);
  const floats = lengths.map((x) => x.valueOf());
  const { grooves, rate } = await laidOut(from);
  const rows = [
    {
      name: `read a length, ${texts.length} texts; Number.parseFloat`,
      app: perSecond(
        each(texts, (text) => readLength(text)),
        texts.length,
      ),
      beside: perSecond(each(texts, Number.parseFloat), texts.length),
      unit: 'a second',
    },
    {
      name: 'round to a 32nd; Math.round',
      app: perSecond(
        each(lengths, (x) => markAt(x, '1/32')),
        lengths.length,
      ),
      beside: perSecond(
        each(floats, (x) => Math.round(x * 32) / 32),
        floats.length,
      ),
      unit: 'a second',
    },
    {
      name: `lay out, mark and set a board of ${grooves} grooves`,
      app: rate,
      beside: undefined,
      unit: 'a second',
    },
  ];
  await server.close();
  if (sink === undefined) throw new Error('nothing was worked out');
  return rows;
}
