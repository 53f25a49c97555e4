import type { Stock } from '../job/job';
import { half, inches, type Length, type Ratio, shortest } from '../length/length';
import { figureIn } from '../length/metric-figures';
import type { Units } from '../length/units';
import { backHow } from '../trade/carcass/back-how';
import type { Case } from '../trade/carcass/case';
import type { Part } from '../trade/carcass/part';
import { crossGrain } from '../trade/movement/cross';
import { panelOf } from '../trade/movement/panel';
import type { Season } from '../trade/movement/season';
import type { Plan } from './plan';
import { kindOf } from './stuff-of';

/** The year, how much the stock moves, and the mark it is cut to. */
export type Moving = {
  readonly season: Season;
  readonly coefficient: Ratio;
  readonly grain: Length;
  readonly units: Units;
};

/**
 * What a part of solid wood is fixed to that does not move with it: screwed front and back; edging along its ends;
 * sides, or rabbets at both, that it lies between; the back edges it is laid on; cross members of a base; the box
 * behind a front.
 */
export type FixedTo = 'front-and-back' | 'edging' | 'sides' | 'rabbets' | 'back-edges' | 'base' | 'box-front';

export type Crossing = { readonly to: FixedTo; readonly cross: ReturnType<typeof crossGrain> };

export const isSolid = (stock: Stock): boolean => ['hardwood', 'softwood'].includes(kindOf(stock));

/** Everything a solid part of a case is fixed to across its grain, and what that asks of it in a year. */
export function crossingsOf(plan: Plan, part: Part, at: Moving & { readonly of: Case }): readonly Crossing[] {
  return fixedTo(plan, part, at.of).map(({ to, length }) => ({ to, cross: crossGrain({ ...at, length }) }));
}

type Fixed = { readonly to: FixedTo; readonly length: Length };

function fixedTo(plan: Plan, part: Part, of: Case): readonly Fixed[] {
  const own = part.width.sum.value;
  const { name } = part;
  const all = (to: FixedTo, is: boolean): readonly Fixed[] => (is ? [{ to, length: own }] : []);
  const edged = of.hasEdging && of.mitres > 0;
  const onSheet = !isOfSolid(plan, `${of.id}~left`);
  switch (name.role) {
    case 'loose':
      return [...all('front-and-back', true), ...all('edging', edged)];
    case 'top':
      return [...all('sides', onSheet), ...all('edging', edged && !of.hasLooseTop)];
    case 'bottom':
      return [...all('sides', onSheet), ...all('base', of.hasBase)];
    case 'inside':
      return all('sides', onSheet && name.kind === 'fixed');
    case 'back':
      return [...all('rabbets', backHow(of) === 'rabbet'), ...all('back-edges', backHow(of) === 'applied')];
    case 'front':
      return behind(plan, part);
    default:
      return [];
  }
}

/** A front screwed to the front of its box, as far as that is tall; one of solid wood moves with it. */
function behind({ job, parts }: Plan, front: Part): readonly Fixed[] {
  const { name } = front;
  if (name.role !== 'front') return [];
  const box = parts.find(
    ({ of, name: x }) =>
      of === front.of && x.role === 'boxfront' && x.no === name.no && (x.column ?? 1) === (name.column ?? 1),
  );
  if (!box || isOfSolid({ job, parts }, box.id)) return [];
  return [{ to: 'box-front', length: shortest(box.width.sum.value, front.width.sum.value) }];
}

/** Whether a part is of solid wood, its grain along it. */
function isOfSolid({ job, parts }: Pick<Plan, 'job' | 'parts'>, id: string): boolean {
  const stuff = parts.find((part) => part.id === id)?.stuff;
  return job.stock.some((stock) => stock.id === stuff && isSolid(stock));
}

/** Left at the floor of each groove when the panel is widest. Common practice, no source. Inches. */
const usualTip = inches(1n, 32n);

export type BottomPanel = {
  readonly panel: ReturnType<typeof panelOf>;
  /** No groove is cut deeper than half through what it is in. Common practice, no source. */
  readonly deepest: Length;
};

/** The bottom of a drawer, held in grooves of front and back: nothing where it is slid in, and can move. */
export function bottomPanel(plan: Plan, part: Part, at: Moving): BottomPanel | undefined {
  const { drawers, bank } = plan.banks.get(part.of) ?? {};
  const { name } = part;
  if (name.role !== 'boxbottom' || bank?.bottomHow !== 'captured' || !drawers?.ok) return undefined;
  const own = drawers.value.drawers.find(
    ({ place }) => place.no === name.no && (place.column ?? 1) === (name.column ?? 1),
  );
  if (!own) return undefined;
  const tip = figureIn(at.units, usualTip);
  const { groove, front, back } = own.plan;
  const panel = panelOf({ ...at, opening: own.box.insideDeep.value, groove: groove.deep, tip });
  return { panel, deepest: half(shortest(front, back)) };
}
