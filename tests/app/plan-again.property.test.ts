import { readFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import type { Json } from '../../src/job/entry';
import { jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { inches } from '../../src/length/length';
import { planOnce } from '../../src/plan/plan-once';
import type { Shop } from '../../src/trade/machines/shop';
import { runs } from '../runs';

// What was worked out before is taken again where nothing of it changed. From scratch is what modules find that were
// only now read in, and never saw a job.
async function fromScratch(values: ReadonlyMap<string, Json>, shop: Shop) {
  vi.resetModules();
  const { jobOf: read } = await import('../../src/job/job');
  const { planOf: plan } = await import('../../src/plan/plan');
  return plan(read('j', values), shop);
}

/** All that is said, a map with its order; a function says nothing. */
function said(thing: unknown): unknown {
  if (typeof thing === 'function') return 'function';
  if (thing instanceof Map) return [...thing].map(([key, value]) => [key, said(value)]);
  if (typeof thing !== 'object' || thing === null) return thing;
  if (Array.isArray(thing)) return thing.map(said);
  return Object.fromEntries(Object.entries(thing).map(([key, value]) => [key, said(value)]));
}

const file = path.resolve(import.meta.dirname, '../../demo-data/mineral-and-shell-cabinet.json');
const sample: ReadonlyMap<string, Json> = fold(JSON.parse(readFileSync(file, 'utf8')).entries).values;
const all = [...sample.keys()];
const fieldOf = (at: string): string => at.slice(at.lastIndexOf('/'));
const pickOf = <T>(list: readonly T[], n: number): T => list[n % list.length] as T;

/** Of which parts something is kept: roles of parts that a case has, whatever its case is. */
const roles = ['left', 'right', 'bottom', 'top', 'back', 'partition'];
const cases = [...new Set(all.flatMap((at) => (at.startsWith('cases/') ? [at.split('/')[1] ?? ''] : [])))];
const kept: readonly (readonly [string, Json])[] = [
  ['mark', '85/2'],
  ['alike', 'apart'],
  ['ripOn', 'saw'],
  ['pieces/1/spoils/g1/spoiled', true],
  ['pieces/left/spoils/g1/spoiled', true],
];
/** Other ways to build than the sample has. */
const banks = [...new Set(all.flatMap((at) => (at.startsWith('banks/') ? [at.split('/')[1] ?? ''] : [])))];
const ways: readonly (readonly [string, Json])[] = [
  ...cases.flatMap((id): readonly (readonly [string, Json])[] => [
    [`cases/${id}/bottomJoint`, 'tongue'],
    [`cases/${id}/topJoint`, 'over'],
    [`cases/${id}/shelfJoint`, 'butt'],
    [`cases/${id}/backHow`, 'groove'],
    [`cases/${id}/backHow`, 'applied'],
    [`cases/${id}/hasPlinth`, true],
    [`cases/${id}/inside/pins/kind`, 'loose'],
    [`cases/${id}/inside/pins/heldBy`, 'pins'],
  ]),
  ...banks.map((id) => [`banks/${id}/corner/joint/how`, 'box-joint'] as const),
  ['joints/x/part', `${cases[0]}~left`],
  ['joints/x/width', '1/4'],
  ['joints/x/depth', '1/4'],
];
const shops: readonly Shop[] = [
  {},
  { single: inches(1n, 10n) },
  { kerf: inches(1n, 8n), shoeKeep: inches(4n) },
];

type Edit = { readonly does: string; readonly at: number; readonly to: number };

const edit: fc.Arbitrary<Edit> = fc.record({
  does: fc.constantFrom(
    'drop',
    'bring back',
    'as elsewhere',
    'read',
    'marks',
    'part',
    'way',
    'shop',
    'nothing',
  ),
  at: fc.nat(100_000),
  to: fc.nat(100_000),
});

/** One edit of the values; a field is written with what stands in the same field of another thing. */
function done(values: Map<string, Json>, { does, at, to }: Edit): void {
  const path = pickOf(all, at);
  const own = sample.get(path) ?? null;
  const like = pickOf(
    all.filter((one) => fieldOf(one) === fieldOf(path)),
    to,
  );
  if (does === 'drop') values.delete(path);
  if (does === 'bring back') values.set(path, own);
  if (does === 'as elsewhere') values.set(path, sample.get(like) ?? own);
  if (does === 'way') values.set(...pickOf(ways, at));
  if (does === 'marks') values.set('tape', pickOf(['1/32', '1/64', 'mm'], to));
  if (does === 'read') {
    const stocks = all.filter((one) => /^stock\/\w+\/name$/.test(one));
    values.set(pickOf(stocks, at).replace('name', 'used'), pickOf(['23/32', '90/127', '3/4', '7/32'], to));
  }
  if (does === 'part') {
    const [field, value] = pickOf(kept, to);
    values.set(`parts/${pickOf(cases, at)}~${pickOf(roles, at)}/${field}`, value);
  }
}

test('after any edits everything comes to what it comes to from scratch', { timeout: 120_000 }, async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(edit, { minLength: 3, maxLength: 8 }), async (edits) => {
      const values = new Map(sample);
      let shop = shops[0] as Shop;
      let last = planOnce(jobOf('j', values), shop);
      for (const one of edits) {
        done(values, one);
        if (one.does === 'shop') shop = pickOf(shops, one.to);
        last = planOnce(jobOf('j', values), shop);
      }
      expect(said(last)).toEqual(said(await fromScratch(values, shop)));
    }),
    { numRuns: runs(20) },
  );
});
