import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { figuresFor } from '../../src/app/sample-figures';
import { readJobFile } from '../../src/job/file';
import { type Job, jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { inches } from '../../src/length/length';
import { planOf } from '../../src/plan/plan';
import type { Shop } from '../../src/trade/machines/shop';

const read = (file: string): string => readFileSync(path.resolve(import.meta.dirname, file), 'utf8');

function sample(): Job {
  const file = readJobFile(read('../../demo-data/mineral-and-shell-cabinet.json'));
  if (!file.ok) throw new Error(file.error.code);
  return jobOf(file.value.job, fold(file.value.entries).values);
}

const shop: Shop = {
  stopReach: inches(60n),
  own: [
    { id: 'own1', name: 'Old saw', like: 'fence', figures: {} },
    { id: 'own2', name: 'Rail saw', like: 'circular', figures: { shoeKeep: inches(5n) } },
  ],
  ...Object.fromEntries(figuresFor({}, { shelf: {} }).figures),
};

/** The job as it is, and with every other way to cut it that its keys tell apart. */
const jobs = (): Readonly<Record<string, Job>> => {
  const job = sample();
  const ids = planOf(job, shop).parts.map((part) => part.id);
  const cutOn = (own: Partial<Job['boards'][number] & Job['parts'][string]>): Job => ({
    ...job,
    boards: job.boards.map((board) => ({ ...board, ...own })),
    parts: Object.fromEntries(
      ids.map((id) => [id, { pieces: {}, ...job.parts[id], ...own }]),
    ) as Job['parts'],
  });
  return {
    'as it is': job,
    fence: cutOn({ machine: 'fence' }),
    router: cutOn({ machine: 'router' }),
    saw: cutOn({ machine: 'saw', guide: 'far' }),
    spacers: cutOn({ machine: 'spacers' }),
    index: cutOn({ machine: 'index' }),
    'other end': cutOn({ against: 'other' }),
    'back in a groove': { ...job, cases: job.cases.map((c) => ({ ...c, backHow: 'groove' as const })) },
    rabbeted: { ...job, banks: job.banks.map((bank) => ({ ...bank, boxJoint: 'rabbeted' })) },
    'box joint': { ...job, banks: job.banks.map((bank) => ({ ...bank, boxJoint: 'box-joint' })) },
    'saws of its own': cutOn({ ripOn: 'rip', ripBy: 'own1', lengthOn: 'saw', lengthBy: 'own2' }),
    'toe board in notches': {
      ...job,
      cases: job.cases.map((c) => ({ ...c, hasToe: true, toeHow: 'notch' as const })),
    },
    butted: { ...job, banks: job.banks.map((bank) => ({ ...bank, boxJoint: 'butted' })) },
    template: { ...job, banks: job.banks.map((bank) => ({ ...bank, tailsHow: 'template' })) },
  };
};

/**
 * Notes to a setup and the place a phone stands at are kept under its key: what it is made of may change, its
 * spelling may not.
 */
test('every setup has the key it had when the first notes were kept under it', () => {
  const keys = Object.fromEntries(
    Object.entries(jobs()).map(([way, job]) => [
      way,
      [...new Set(planOf(job, shop).operations.map(({ setup }) => `${setup.build} ${setup.key}`))].sort(),
    ]),
  );
  expect(keys).toEqual(JSON.parse(read('fixtures/setup-keys.json')));
});
