import { usualIn } from '../job/in-units';
import type { Job } from '../job/job';
import { type FootRead, footId, type Stand, standIn } from '../job/room';
import { add, isPositive, type Length } from '../length/length';
import type { Result } from '../length/result';
import { type FeetError, type FootPlace, type LevelFeet, levelFeet } from '../trade/room/feet';
import { type FeetSet, feetSet, type TravelError } from '../trade/room/travel';
import { type WedgeError, wedgeIn } from '../trade/room/wedge';
import { feetPlaces } from './feet-places';

/** What is still to be said of feet that screw. */
export type FootAsk = 'footShort' | 'footLong' | 'footHigh';

/** The feet of a case, levelled as far as they were read. Inches. */
export type LevelPlan = {
  /** Every foot the case has, front row first, from the left. */
  readonly places: readonly FootPlace[];
  readonly read: readonly FootRead[];
  /** From the drops that were read; all of them must be. */
  readonly found?: Result<LevelFeet, FeetError>;
  /** How many are not read yet. */
  readonly missing: number;
  readonly asks: readonly FootAsk[];
  /** Feet that screw: how long each stands. */
  readonly sets?: Result<FeetSet, TravelError>;
  /** How high its plinth is, where that is scribed to the floor: nothing is shimmed. */
  readonly scribed?: Length;
  /** By foot: how far a wedge goes in. */
  readonly wedges: Readonly<Record<string, Result<Length, WedgeError>>>;
};

function wedgesOf({ wedgeThin, wedgeThick, wedgeLong }: Stand, { shims }: LevelFeet): LevelPlan['wedges'] {
  if (!wedgeThin || !wedgeThick || !wedgeLong) return {};
  const wedge = { thin: wedgeThin, thick: wedgeThick, long: wedgeLong };
  return Object.fromEntries(
    shims.flatMap((foot) =>
      isPositive(foot.shim) ? [[footId(foot), wedgeIn(wedge, foot.shim)] as const] : [],
    ),
  );
}

function setsOf(stand: Stand, levelled: LevelFeet): LevelPlan['sets'] {
  const { footHow, footShort, footLong, footHigh } = stand;
  if (footHow !== 'screw' || !footShort || !footLong || !footHigh) return undefined;
  return feetSet(levelled, { high: footHigh, travel: { shortest: footShort, longest: footLong } });
}

/** A plinth that is scribed to the floor, by the case as decided. */
function scribedPlinth({ cases }: Job, id: string): Length | undefined {
  const c = cases.find((each) => each.id === id);
  const isScribed = c?.hasPlinth && c.plinthHow === 'scribed' && c.feet && isPositive(c.feet);
  return isScribed ? c.feet : undefined;
}

/**
 * The shims or lengths of the feet of a case, from one level line.
 *
 * @param id of the case
 * @returns inches; nothing is found until every foot is read
 */
export function levelPlanOf(job: Job, id: string): LevelPlan {
  const stand = standIn(job, id);
  const scribed = scribedPlinth(job, id);
  const places = feetPlaces(stand);
  const read = places.flatMap((place) => stand.feet.find((foot) => footId(foot) === footId(place)) ?? []);
  const missing = places.length - read.length;
  const asks = (['footShort', 'footLong', 'footHigh'] as const).filter((field) => !stand[field]);
  const found = missing === 0 ? levelFeet(read, usualIn(job)) : undefined;
  const sets = found?.ok && !scribed ? setsOf(stand, found.value) : undefined;
  return {
    places,
    read,
    missing,
    asks: stand.footHow === 'screw' && !scribed ? asks : [],
    wedges: found?.ok && !scribed && stand.footHow !== 'screw' ? wedgesOf(stand, found.value) : {},
    ...(found && { found }),
    ...(sets && { sets }),
    ...(scribed && { scribed }),
  };
}

/**
 * What a foot is set to, by foot: how high a plinth scribed to the floor stands there, how long one that screws stands,
 * else its shim; nothing while what is said of feet that screw does not say it. Inches.
 */
export function footFigures({ found, sets, asks, scribed }: LevelPlan): ReadonlyMap<string, Length> {
  const isSaid = sets ? sets.ok : asks.length === 0;
  const feet = found?.ok && isSaid ? found.value.shims : [];
  const long = sets?.ok ? sets.value.feet : [];
  return new Map(
    feet.map((foot) => {
      const key = footId(foot);
      if (scribed) return [key, add(scribed, foot.shim)];
      return [key, long.find((each) => footId(each) === key)?.set ?? foot.shim];
    }),
  );
}

/** Shims over what is sound, by foot; feet that screw have none, nor has a plinth that is scribed. */
export const overOf = ({ found, sets, asks, scribed }: LevelPlan): LevelFeet['over'] =>
  found?.ok && !scribed && !sets && asks.length === 0 ? found.value.over : [];
