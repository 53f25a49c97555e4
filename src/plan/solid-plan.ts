import { usualIn } from '../job/in-units';
import type { Job, Stock } from '../job/job';
import { add, inches, type Length, type Ratio, times } from '../length/length';
import { figureIn } from '../length/metric-figures';
import { err, ok, type Result } from '../length/result';
import { grainOf } from '../length/tape';
import type { Case } from '../trade/carcass/case';
import type { Part } from '../trade/carcass/part';
import { usualBank } from '../trade/fronts/usual-bank';
import { moistureInAir } from '../trade/movement/air';
import { changeOf } from '../trade/movement/change';
import { frontLimits, solidFront } from '../trade/movement/front';
import { type Season, usualYear } from '../trade/movement/season';
import { slotOf } from '../trade/movement/slot';
import { coefficientOf, species } from '../trade/movement/species';
import type { Plan } from './plan';
import {
  type BottomPanel,
  bottomPanel,
  type Crossing,
  crossingsOf,
  isSolid,
  type Moving,
} from './solid-fixed';

/** Where the least or the greatest moisture of the year comes from. */
type From = 'meter' | 'air' | 'usual';

/** The year of the job, percent; `now` is never assumed. */
export type Year = {
  readonly low: Ratio;
  readonly high: Ratio;
  readonly lowFrom: From;
  readonly highFrom: From;
  readonly season: Result<Season, YearError>;
};

export type YearError =
  | { readonly code: 'now-missing' }
  | { readonly code: 'below-low' | 'above-high'; readonly by: Ratio }
  /** Air drier or damper than the table: a meter is asked for. */
  | { readonly code: 'too-dry' | 'too-damp'; readonly by: Ratio; readonly limit: Ratio };

/** A meter goes first, then the air of the room, then a heated room that nobody knows. */
export function yearOf({ year }: Pick<Job, 'year'>): Year {
  const low = end(year.woodLow, year.airLow, usualYear.low);
  const high = end(year.woodHigh, year.airHigh, usualYear.high);
  const bad = [low, high].find((x) => x.error)?.error;
  const season = bad ? err(bad) : seasonOf(low.value, year.woodNow, high.value);
  return { low: low.value, high: high.value, lowFrom: low.from, highFrom: high.from, season };
}

type End = { readonly value: Ratio; readonly from: From; readonly error?: YearError };

function end(wood: Ratio | undefined, air: Ratio | undefined, usual: Ratio): End {
  if (wood) return { value: wood, from: 'meter' };
  if (!air) return { value: usual, from: 'usual' };
  const found = moistureInAir(air);
  return found.ok ? { value: found.value, from: 'air' } : { value: usual, from: 'air', error: found.error };
}

function seasonOf(low: Ratio, now: Ratio | undefined, high: Ratio): Result<Season, YearError> {
  if (!now) return err({ code: 'now-missing' });
  if (now.lt(low)) return err({ code: 'below-low', by: low.sub(now) as Ratio });
  if (high.lt(now)) return err({ code: 'above-high', by: now.sub(high) as Ratio });
  return ok({ low, now, high });
}

/** A part of solid wood across its grain. Inches. */
export type SolidPart = {
  readonly part: Part;
  readonly stock: Stock;
  /** None: nobody said the species, and it is asked for. */
  readonly coefficient: Ratio | undefined;
  /** Across the grain. */
  readonly across: Length;
  readonly shrinks?: ReturnType<typeof changeOf>;
  readonly grows?: ReturnType<typeof changeOf>;
  /** A loose top: its slot. */
  readonly slot?: ReturnType<typeof slotOf>;
  /** What it is fixed to across its grain, and what that would ask of it. */
  readonly crossings?: readonly Crossing[];
  /** The bottom of a drawer, in its grooves. */
  readonly bottom?: BottomPanel;
  /** A drawer front: its height and its gaps. */
  readonly front?: ReturnType<typeof solidFront>;
};

/** Left at either end of a slot; what a #8 screw measures in its shank. Common practice, no source. Inches. */
export const usualSlot = { margin: inches(1n, 32n), shank: inches(164n, 1000n) };

/** Parts of a case and of its drawers that are cut of solid wood. */
export function solidParts(plan: Plan, of: Case): readonly SolidPart[] {
  const { job } = plan;
  const banks = job.banks.filter((bank) => bank.of === of.id).map(({ id }) => id);
  const own = plan.parts.filter((part) => part.of === of.id || banks.includes(part.of));
  return own.flatMap((part) => {
    const stock = job.stock.find((s) => s.id === part.stuff);
    const solid = stock && isSolid(stock) && part.name.role !== 'blank';
    return solid ? [solidPart(plan, { part, stock, of })] : [];
  });
}

type Own = { readonly part: Part; readonly stock: Stock; readonly of: Case };

function solidPart(plan: Plan, { part, stock, of }: Own): SolidPart {
  const { job } = plan;
  const own = species.find((x) => x === stock.species);
  const coefficient = own && coefficientOf(own, stock.quartersawn ? 'quarter' : 'flat');
  const across = part.width.sum.value;
  const base = { part, stock, coefficient, across };
  const { season } = yearOf(job);
  if (!coefficient || !season.ok) return base;
  const { low, now, high } = season.value;
  const moved = (to: Ratio) => changeOf({ size: across, way: 'across', coefficient, from: now, to });
  const at = { season: season.value, coefficient, grain: grainOf(job.tape), units: usualIn(job) };
  const bottom = bottomPanel(plan, part, at);
  return {
    ...base,
    shrinks: moved(low),
    grows: moved(high),
    ...(part.name.role === 'loose' ? slotIn(job, part, at) : {}),
    crossings: crossingsOf(plan, part, { ...at, of }),
    ...(bottom ? { bottom } : {}),
    ...frontOf(job, part, at),
  };
}

/** The height and the gaps of an inset front. */
function frontOf(job: Job, part: Part, at: Moving): Pick<SolidPart, 'front'> {
  const bank = job.banks.find(({ id }) => id === part.of);
  if (part.name.role !== 'front' || bank?.fit !== 'inset') return {};
  const opening = add(part.width.sum.value, times(bank.between ?? usualBank(bank).reveal, 2n));
  return { front: solidFront({ opening, least: frontLimits(at.units).least, ...at }) };
}

/** A loose top is held along its front; a screw far back goes through a slot. */
function slotIn(job: Job, part: Part, at: Moving): Pick<SolidPart, 'slot'> {
  const { reach, shank = usualSlot.shank } = job.solid[part.id] ?? {};
  const margin = figureIn(usualIn(job), usualSlot.margin);
  return reach ? { slot: slotOf({ reach, shank, margin, ...at }) } : {};
}
