// Laying pieces of published instances on sheets: sheets in all beside the fewest known, how often they are met, how
// often proved, the mean gap and the time; and beside a plain first-fit-decreasing packer in shelves. node
// e2e/bench/sheets.mjs runs it alone. KNIFELINE_PACKING names a folder with more instances of the same form;
// otherwise those of tests/published/data, whose `evidence` says which of the fewest known are published and which
// were found when the instances were gathered. KNIFELINE_EFFORT: units each (2000), KNIFELINE_EACH: only every so
// many-th instance. Two classes are drawn from a seed beside them (drawn-sheets.mjs): so many sheets as were cut up.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { root } from '../tools/install.mjs';
import { whole } from './amounts.mjs';
import { drawnSheets } from './drawn-sheets.mjs';
import { listed } from './figures.mjs';

const folder = process.env.KNIFELINE_PACKING ?? `${root}/tests/published/data`;

/** The module as the app ships it: bundled, so that no import is looked up in the loops. */
async function shipped(entry) {
  const [{ output }] = await build({
    root: `${root}/src`,
    configFile: false,
    publicDir: false,
    build: { write: false, target: 'es2022', lib: { entry, formats: ['es'], fileName: 'sheets' } },
    logLevel: 'error',
  });
  return import(`data:text/javascript;base64,${Buffer.from(output[0].code).toString('base64')}`);
}

function problemOf({ sheet, items, rotation, kerf = 0, trim = 0 }) {
  const all = kerf - 2 * trim;
  return {
    sheets: [{ w: sheet.w + all, h: sheet.h + all, cost: 1 }],
    pieces: items.map(({ w, h, count, rotate = rotation }) => ({
      w: w + kerf,
      h: h + kerf,
      count,
      turn: rotate,
    })),
  };
}

/** First fit decreasing in shelves: the highest first, on the first shelf with room; sheets filled shelf by shelf. */
function shelves({ sheets: [sheet], pieces }) {
  const lying = ({ w, h, turn, count }) => {
    const flat = turn && h > w && h <= sheet.w && w <= sheet.h;
    return Array.from({ length: count }, () => (flat ? { w: h, h: w } : { w, h }));
  };
  const used = [];
  for (const { w, h } of pieces.flatMap(lying).sort((a, b) => b.h - a.h || b.w - a.w)) {
    const shelf = used.flatMap((s) => s.shelves).find((s) => s.h >= h && s.left >= w);
    if (shelf) {
      shelf.left -= w;
      continue;
    }
    let on = used.find((s) => s.left >= h);
    if (!on) {
      on = { left: sheet.h, shelves: [] };
      used.push(on);
    }
    on.left -= h;
    on.shelves.push({ h, left: sheet.w - w });
  }
  return used.length;
}

function laid(laySheets, problem, effort) {
  const from = performance.now();
  const all = laySheets(problem, { seed: 1, effort });
  let first;
  for (;;) {
    const { done, value } = all.next();
    if (value) first ??= performance.now() - from;
    if (!done) continue;
    if (!value.ok) throw new Error(value.error.code);
    return { plan: value.value, first, time: performance.now() - from };
  }
}

function files(each) {
  return readdirSync(folder)
    .filter((name) => name.startsWith('2d') && name.endsWith('.json'))
    .flatMap((name) => {
      const { instances } = JSON.parse(readFileSync(path.join(folder, name), 'utf8'));
      const some = instances.filter((i) => i.objective === 'bins');
      return [false, true].map((rotation) => ({
        name: `${name.replace('.json', '')} ${rotation ? 'turned' : 'fixed'}`,
        instances: some.filter((i, k) => i.rotation === rotation && Math.floor(k / 2) % each === 0),
      }));
    })
    .filter(({ instances }) => instances.length > 0);
}

const sum = (list, of) => list.reduce((all, x) => all + of(x), 0);

/**
 * Per class: what the planner comes to, the fewest known, and the plain shelf packer.
 *
 * @param effort units each @param each only every so many-th instance
 */
export async function* sheetPlans({ effort, each }) {
  const { laySheets } = await shipped(`${root}/src/trade/sheets/two-d/lay-sheets.ts`);
  for (const { name, instances } of [...files(each), ...drawnSheets(each)]) {
    const found = instances.map((instance) => {
      const problem = problemOf(instance);
      return { known: instance.best_known, shelves: shelves(problem), ...laid(laySheets, problem, effort) };
    });
    yield {
      name,
      instances: found.length,
      'at fewest known': found.filter((f) => f.plan.cost <= f.known).length,
      proved: found.filter((f) => f.plan.proved).length,
      sheets: sum(found, (f) => f.plan.cost),
      'fewest known': sum(found, (f) => f.known),
      shelves: sum(found, (f) => f.shelves),
      'mean gap %': Number(((100 * sum(found, (f) => f.plan.cost / f.known - 1)) / found.length).toFixed(2)),
      'worst first ms': Number(Math.max(...found.map((f) => f.first)).toFixed(1)),
      'mean ms': Math.round(sum(found, (f) => f.time) / found.length),
    };
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { KNIFELINE_EFFORT: effort, KNIFELINE_EACH: each } = process.env;
  const amount = { effort: Number(effort ?? whole.sheets.effort), each: Number(each ?? 1) };
  console.table(await listed(sheetPlans(amount)));
}
