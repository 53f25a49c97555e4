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
    { id: 'own3', name: 'Old sled', like: 'sled', figures: {} },
    { id: 'own4', name: 'Plunge saw', like: 'plunge', figures: {} },
    { id: 'own5', name: 'Router table', like: 'table', figures: {} },
    { id: 'own6', name: 'Loft saw', like: 'sliding', figures: {} },
    { id: 'own7', name: 'Second joiner', like: 'plate', figures: {} },
  ],
  screws: [inches(5n, 4n)],
  ...Object.fromEntries(figuresFor({}, { shelf: {} }).figures),
};

/** Every joint of its cases butted, and held so. */
const heldIn = (job: Job, how: Omit<Job['joins'][number], 'id' | 'of' | 'at'>): Job => ({
  ...job,
  cases: job.cases.map((c) => ({
    ...c,
    bottomJoint: 'butt' as const,
    topJoint: 'over' as const,
    partitionJoint: 'butt' as const,
    shelfJoint: 'butt' as const,
  })),
  joins: job.cases.flatMap((c) =>
    (['bottom', 'top', 'partition', 'shelf'] as const).map((at) => ({
      ...how,
      id: `${c.id}${at}`,
      of: c.id,
      at,
    })),
  ),
});

/** The job as it is, and with every other way to cut it that its keys tell apart. */
const jobs = (): Readonly<Record<string, Job>> => {
  const job = sample();
  const ids = planOf(job, shop).parts.map((part) => part.id);
  const held = (how: Parameters<typeof heldIn>[1]): Job => heldIn(job, how);
  const cutParts = (own: Partial<Job['parts'][string]>, of: Job): Job => ({
    ...of,
    parts: Object.fromEntries(
      ids.map((id) => [id, { pieces: {}, ...job.parts[id], ...own }]),
    ) as Job['parts'],
  });
  const cutOn = (own: Partial<Job['boards'][number] & Job['parts'][string]>): Job => ({
    ...cutParts(own, job),
    boards: job.boards.map((board) => ({ ...board, ...own })),
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
    'half-lapped frame': { ...job, cases: job.cases.map((c) => ({ ...c, frameMeets: 'lap' as const })) },
    rabbeted: { ...job, banks: job.banks.map((bank) => ({ ...bank, boxJoint: 'rabbeted' })) },
    'box joint': { ...job, banks: job.banks.map((bank) => ({ ...bank, boxJoint: 'box-joint' })) },
    'on runners': { ...job, banks: job.banks.map((bank) => ({ ...bank, hung: 'runners', kickers: 'over' })) },
    'saws of its own': cutOn({ ripOn: 'rip', ripBy: 'own1', lengthOn: 'saw', lengthBy: 'own2' }),
    'joints and a plunge saw of its own': cutOn({
      edgeBy: 'own1',
      shoulderBy: 'own3',
      ripOn: 'saw',
      ripBy: 'own4',
    }),
    'grooves along a router table, laps on a sliding saw': {
      ...cutOn({ alongBy: 'own5', shoulderBy: 'own6' }),
      cases: job.cases.map((c) => ({ ...c, frameMeets: 'lap' as const, cleats: 1 })),
    },
    'toe board in notches': {
      ...job,
      cases: job.cases.map((c) => ({ ...c, hasToe: true, toeHow: 'notch' as const })),
    },
    butted: { ...job, banks: job.banks.map((bank) => ({ ...bank, boxJoint: 'butted' })) },
    'butted and held by dowels': held({ by: 'dowel' }),
    'butted and held by biscuits': held({ by: 'biscuit' }),
    'butted and held by slant screws': held({ by: 'slant', seat: inches(21n, 32n), head: inches(11n, 32n) }),
    'slotted by a joiner of its own': cutParts({ slotBy: 'own7' }, held({ by: 'biscuit' })),
    'top in dadoes': {
      ...job,
      cases: job.cases.map((c) => ({ ...c, topJoint: 'dado' as const, sidePast: inches(2n) })),
    },
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

// 1/4 across, 3/8 deep, 2 from the front edge; 5 mm, 10 mm and 37 mm are 25/127, 50/127 and 185/127; 5/8 + 1/32 wide
test.each([
  [{ heldBy: 'pins' }, 'bore~pins~front', 'template~c1d4~h3d8~e2d1~wfront0edge'],
  [{ heldBy: 'pins', bore: 'press' }, 'bore~pins~front', 'press~c1d4~h3d8~b2d1~wfront0edge'],
  [{ heldBy: 'lines' }, 'bore~pins~front', 'template~c25d127~h50d127~e185d127~wfront0edge'],
  [{ heldBy: 'strips' }, 'along~pins~front', 'fence~c21d32~h3d16~r2d1~wfront0edge'],
] as const)('shelves held by %o are cut at %s under %s', (held, cut, key) => {
  const job = sample();
  const strip = { width: inches(5n, 8n), stripThick: inches(3n, 16n), depth: inches(3n, 16n) };
  const row = { first: inches(4n), pitch: inches(2n) };
  const own = {
    id: 'pins',
    kind: 'loose',
    bay: 1,
    ...(held.heldBy === 'strips' ? strip : row),
    ...held,
  } as const;
  const cases = job.cases.map((c) => ({ ...c, inside: [...c.inside, own] }));
  const [side] = job.cases.map(({ id }) => `${id}~left`);
  const found = planOf({ ...job, cases }, shop).operations.find(({ id }) => id === `cut/${side}/${cut}/1`);
  expect(found?.setup.key).toBe(key);
});
