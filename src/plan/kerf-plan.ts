import { usualIn } from '../job/in-units';
import type { KerfRead } from '../job/install';
import type { Job, PlanSheet } from '../job/job';
import { isZero, type Length, subtract, times } from '../length/length';
import type { Result } from '../length/result';
import { type KerfTestError, kerfFound } from '../trade/machines/kerf-test';
import { ownFields } from '../trade/machines/own-machine';
import type { OwnMachine, Shop } from '../trade/machines/shop';
import type { Branch, Way } from '../trade/sheets/tree';

/** A single blade whose kerf the shop keeps: of the circular saw, and of the table saw. */
export type Blade = 'kerf' | 'single';

export const blades: readonly Blade[] = ['kerf', 'single'];

/** The kerf of one blade as a test cut of the job found it, beside the shop's. Inches. */
export type KerfTested = {
  /** What its test is kept under: its blade, or the machine of the shop's own it is in. */
  readonly id: string;
  readonly blade: Blade;
  readonly own?: OwnMachine;
  readonly read: KerfRead;
  /** Once board, pieces and rest are read. */
  readonly found?: Result<Length, KerfTestError>;
  readonly now: Length | undefined;
  /** What it differs from the shop's by; nothing where they are alike, or the shop has none. */
  readonly off?: Length;
  /** What that comes to where most cuts of the job lie side by side. */
  readonly adds?: { readonly cuts: number; readonly by: Length };
};

/** How many kerfs a straight line across a sheet meets at most, between edges that cuts of one way part. */
function kerfsOn(branch: Branch, way: Way): number {
  if (branch.is !== 'cut') return 0;
  const [near, far] = [kerfsOn(branch.near, way), kerfsOn(branch.far, way)];
  return branch.way === way ? 1 + near + far : Math.max(near, far);
}

const mostKerfs = (sheets: readonly PlanSheet[]): number =>
  Math.max(0, ...sheets.flatMap(({ tree }) => [kerfsOn(tree, 'rip'), kerfsOn(tree, 'cross')]));

function foundOf({ before, cuts = 1, pieces, rest }: KerfRead, job: Job) {
  return before && pieces && rest ? kerfFound({ before, cuts, pieces, rest }, usualIn(job)) : undefined;
}

type Test = Pick<KerfTested, 'id' | 'blade' | 'own'>;

/** The blades of every shop, and those in saws of the shop's own. */
const testsOf = ({ own = [] }: Shop): readonly Test[] => [
  ...blades.map((blade) => ({ id: blade, blade })),
  ...own.flatMap((one) =>
    blades
      .filter((blade) => ownFields[one.like].includes(blade))
      .map((blade) => ({ id: one.id, blade, own: one })),
  ),
];

/** The kerf of each blade as this job found it, or what is still to be read. */
export function kerfsTested(job: Job, shop: Shop): readonly KerfTested[] {
  const most = mostKerfs(job.sheets.filter(({ gone }) => !gone));
  return testsOf(shop).map(({ id, blade, own }) => {
    const [read, now] = [job.kerfTests[id] ?? {}, own ? own.figures[blade] : shop[blade]];
    const found = foundOf(read, job);
    const off = found?.ok && now ? subtract(found.value, now) : undefined;
    const cuts = own && ![job.guideSaw, job.fenceSaw].includes(own.id) ? 0 : most;
    return {
      id,
      blade,
      ...(own && { own }),
      read,
      ...(found && { found }),
      now,
      ...(off && !isZero(off) && { off }),
      ...(off && !isZero(off) && cuts > 0 && { adds: { cuts, by: times(off, BigInt(cuts)) } }),
    };
  });
}
