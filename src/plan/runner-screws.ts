import { add, inches, type Length, longest, shortest, zero } from '../length/length';
import { figureIn } from '../length/metric-figures';
import { toStored } from '../length/stored';
import type { Units } from '../length/units';
import type { HungDrawer } from '../trade/boxes/hung';
import type { ScrewSchedule } from '../trade/buying/screws';
import type { HungRole } from '../trade/carcass/part-name';
import type { Sizes } from '../trade/carcass/sizes';
import type { Bank } from '../trade/fronts/bank';
import { type Schedule, screwSchedule } from '../trade/install/schedule';
import { biteIn, type Screw, screwFor } from '../trade/install/screw';
import type { BankPlan } from './bank-plan';
import { packingOf } from './packing';
import type { Plan } from './plan';

/** From either end of a runner to its first screw, and the most from one to the next. Common practice, no source. */
const end = inches(3n, 2n);
const most = inches(6n);

const onWall: readonly HungRole[] = ['runner', 'hangstrip', 'kicker'];

/** Screws along a runner, strip or kicker so long, from its front end. Inches. */
export function runnerRow(run: Length, units: Units | undefined): Schedule | undefined {
  const row = screwSchedule({ run, end: figureIn(units, end), most: figureIn(units, most), rows: 1 });
  return row.ok ? row.value : undefined;
}

/** The thinnest wall of the bays of a bank. */
function wallOf({ thick, bays }: Sizes, { bay, across }: Bank): Length {
  const inner = bay > 1 || bay + across - 1 < bays.length;
  return inner ? shortest(thick('side'), thick('partition')) : thick('side');
}

/**
 * The screw through a runner, with what packs it out behind a frame, into the thinnest wall of its bays. Nothing where
 * nobody knows the walls: in no case of the job.
 */
export function runnerScrew(
  { worked }: Pick<Plan, 'worked'>,
  { bank, drawers }: BankPlan,
  lengths: readonly Length[],
): Screw | undefined {
  const found = worked.get(bank.of ?? '');
  const hung = drawers?.ok ? drawers.value.slides.hung : undefined;
  if (!found?.ok || !hung) return undefined;
  const into = wallOf(found.value.sizes, bank);
  const packed = packingOf(worked, bank).flatMap(({ left, right }) => [left, right]);
  const through = add(hung.thick, longest(zero, ...packed));
  return screwFor({ through, into, sunk: zero, ...biteIn(bank.units, 'face'), lengths });
}

/** A block over a box has so many screws; one on its back turns on one. Common practice, no source. */
const inBlock = 2;

type Lengths = readonly Length[];

/**
 * The screw of a stop block over a box, into what carries it or flat into the wall, and of one on its back. Nothing
 * where what they go into is not known.
 */
function blockScrews(found: BankPlan, { stop }: HungDrawer, wall: Length, lengths: Lengths) {
  const made = found.drawers?.ok ? found.drawers.value : undefined;
  const [thick, back] = [made?.slides.hung?.thick, made?.drawers[0]?.plan.back];
  if (!thick || !back) return [];
  const at = { sunk: zero, ...biteIn(found.bank.units, 'face'), lengths };
  const onWall = stop.on === 'wall';
  return [
    {
      each: 2 * inBlock,
      screw: screwFor({ ...at, through: onWall ? stop.wide : thick, into: onWall ? wall : thick }),
    },
    { each: 2, screw: screwFor({ ...at, through: thick, into: back }) },
  ];
}

/** Screws of the stop blocks of a bank, for the list to buy: of those a shelf has. */
function blocksToBuy(
  found: BankPlan,
  name: string,
  wall: Length,
  lengths: Lengths,
): readonly ScrewSchedule[] {
  const drawers = found.drawers?.ok ? found.drawers.value.drawers : [];
  const byLong = new Map<string, ScrewSchedule>();
  for (const { hung } of drawers) {
    for (const { each, screw } of hung ? blockScrews(found, hung, wall, lengths) : []) {
      const long = screw.pick;
      if (!long) continue;
      const key = toStored(long);
      const before = byLong.get(key)?.each ?? 0;
      byLong.set(key, { bank: `${name}, stop blocks`, long, pieces: 1, each: before + each, along: true });
    }
  }
  return [...byLong.values()];
}

/** Screws of what the boxes of a bank hang on, for the list to buy. */
export function runnerScrewsToBuy(
  plan: Pick<Plan, 'worked'>,
  bank: BankPlan,
  name: string,
  lengths: readonly Length[],
): readonly ScrewSchedule[] {
  const long = runnerScrew(plan, bank, lengths)?.pick;
  const each = bank.parts
    .filter((part) => onWall.some((role) => role === part.name.role))
    .reduce(
      (n, { length, copies }) => n + copies * (runnerRow(length.mark.value, bank.bank.units)?.count ?? 0),
      0,
    );
  const found = plan.worked.get(bank.bank.of ?? '');
  const blocks = found?.ok ? blocksToBuy(bank, name, wallOf(found.value.sizes, bank.bank), lengths) : [];
  return long && each > 0
    ? [{ bank: `${name}, runners`, long, pieces: 1, each, along: true }, ...blocks]
    : blocks;
}
