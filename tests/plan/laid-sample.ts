import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Change, Entry } from '../../src/job/entry';
import { type JobFile, readJobFile } from '../../src/job/file';
import { jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { inches } from '../../src/length/length';
import { breakdownOf, type PoolView } from '../../src/plan/breakdown';
import { planOf } from '../../src/plan/plan';
import { takePlan } from '../../src/plan/take-plan';
import type { Shop } from '../../src/trade/machines/shop';
import { layProblemOf } from '../../src/trade/sheets/lay-problem';
import { solve } from '../../src/trade/sheets/solve';

const sample = readFileSync(
  path.resolve(import.meta.dirname, '../../demo-data/mineral-and-shell-cabinet.json'),
  'utf8',
);

function openedSample(): JobFile {
  const read = readJobFile(sample);
  if (!read.ok) throw new Error('the sample does not open');
  return read.value;
}

export const opened = openedSample();
export const jobId = opened.job;

/** The sample before anything was laid out. */
export const sampleLog = opened.entries.filter(
  (e) => e.kind !== 'edit' || !/^(sheets|layouts)\//.test(e.path),
);

export const kerf = inches(1n, 8n);
export const shop: Shop = { kerf };

/** The log with more done to it, as one phone would. */
export function withMore(entries: readonly Entry[], changes: readonly Change[]): readonly Entry[] {
  const from = Math.max(0, ...entries.map((e) => e.count));
  return [
    ...entries,
    ...changes.map(
      (change, k): Entry => ({
        ...change,
        job: jobId,
        device: 'test',
        count: from + 1 + k,
        at: '2026-11-02T08:30:00.000Z',
        act: `test.${from + 1}`,
        label: 'test',
      }),
    ),
  ];
}

export function at(entries: readonly Entry[], by: Shop = shop) {
  const folded = fold(entries);
  const job = jobOf(jobId, folded.values);
  const plan = planOf(job, by);
  return { folded, job, plan, found: breakdownOf(plan, by, folded) };
}

export const poolOf = (entries: readonly Entry[], id: string, by: Shop = shop): PoolView => {
  const view = at(entries, by).found.pools.find((v) => v.pool.id === id);
  if (!view) throw new Error(`no pool ${id}`);
  return view;
};

export function searched(view: PoolView, effort = 60, taken = kerf) {
  const problem = layProblemOf(view.toLay, taken);
  const search = solve(problem.two, { seed: 1, effort });
  for (;;) {
    const { value, done } = search.next();
    if (!done) continue;
    if (!value.ok) throw new Error(value.error.code);
    return { laid: value.value, problem };
  }
}

let made = 0;

/** The log with the plan of a stock taken up, as the search finds it. */
export function takenUp(entries: readonly Entry[], id: string, by: Shop = shop): readonly Entry[] {
  const { found, job } = at(entries, by);
  const view = poolOf(entries, id, by);
  const newId = () => {
    made += 1;
    return `s${made}`;
  };
  return withMore(
    entries,
    takePlan(view, searched(view, 60, found.kerf), { job, stocks: found.stocks, newId }),
  );
}
