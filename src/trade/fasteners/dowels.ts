import {
  add,
  atMost,
  fromMillimetres,
  half,
  inches,
  isPositive,
  type Length,
  less,
  longest,
  over,
  shortest,
  subtract,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { err, ok, type Result } from '../../length/result';
import type { Units } from '../../length/units';
import { type Schedule, type ScheduleError, screwSchedule } from '../install/schedule';

/** Dowels of one thickness on the shelf. Inches. */
export type DowelSize = { readonly thick: Length; readonly long: Length };

/** A shelf that says none has dowels as thick and as long as they are sold. Common practice, no source. */
const sold: Readonly<Record<Units, readonly DowelSize[]>> = {
  in: [4n, 5n, 6n, 8n].map((sixteenths) => ({ thick: inches(sixteenths, 16n), long: inches(3n, 2n) })),
  mm: [6n, 8n, 10n, 12n].map((thick) => ({ thick: fromMillimetres(thick), long: fromMillimetres(40n) })),
};

/** Dowels on a shelf that says none, by the unit of the job. */
export const usualDowels = (units: Units = 'in'): readonly DowelSize[] => sold[units];

/** An end or edge doweled to the face of another part, or edge to edge. Inches. */
type DowelPlan = {
  /** How thick the part is whose end or edge is bored. */
  readonly part: Length;
  /** How thick the part is that is bored in its face. */
  readonly mate: Length;
  /** How long they meet. */
  readonly run: Length;
  /** From either end of the joint to the first dowel. */
  readonly end: Length;
  /** The most from one dowel to the next. */
  readonly most: Length;
  /** From the reference face of the part to the middle of the dowels; half its thickness where left out. */
  readonly from?: Length;
  readonly sizes: readonly DowelSize[];
  /** Of the job: its limits are round in them. */
  readonly units?: Units | undefined;
};

export type Dowels = {
  readonly size: DowelSize;
  /** Middles of the dowels along the joint, from the reference end. */
  readonly row: Schedule;
  /** From the reference face of the part to the middles. */
  readonly from: Length;
  readonly inFace: Length;
  readonly inEdge: Length;
  readonly warnings: readonly DowelWarning[];
};

/** `turns`: one dowel alone. `thin-wall`: so much stays beside the hole, less than half of the dowel. */
export type DowelWarning =
  | { readonly code: 'turns' }
  | { readonly code: 'near-end'; readonly end: Length; readonly least: Length }
  | { readonly code: 'thin-wall'; readonly wall: Length; readonly least: Length };

export type DowelError =
  | ScheduleError
  | { readonly code: 'no-wood'; readonly what: 'part' | 'mate' }
  /** No dowel on the shelf is between a third and a half of the thinner part. */
  | { readonly code: 'no-dowel'; readonly least: Length; readonly most: Length }
  /** The hole in the face would come out: the mate is so much too thin. */
  | { readonly code: 'mate-thin'; readonly by: Length }
  | { readonly code: 'off-the-part'; readonly by: Length };

/** Left under a hole in a face: 1/8. Common practice, no source. */
const leave = inches(1n, 8n);
/** A hole is so much deeper than its share of the dowel: 1/16 in all over half. Source: README of fasteners. */
const room = inches(1n, 16n);
/** The first dowel stands no nearer to an end. Source: README of fasteners. */
const leastDowelEnd = inches(1n);
export const mostDowelSpacing = inches(6n);

/**
 * Which dowel, where and how deep: the thickest between a third and a half of the thinner part, a third of it in the
 * face, the rest in the end or edge.
 *
 * @param plan inches, all > 0
 * @returns inches, or why none can be set
 * @example dowelsFor(plan).value.inFace // 9/16: Example 1 of fasteners
 */
export function dowelsFor(plan: DowelPlan): Result<Dowels, DowelError> {
  const { part, mate, from = half(part) } = plan;
  const none = (['part', 'mate'] as const).find((what) => !isPositive(plan[what]));
  if (none) return err({ code: 'no-wood', what: none });
  const row = screwSchedule({ ...plan, rows: 1 });
  if (!row.ok) return row;
  const thin = shortest(part, mate);
  const [least, most] = [over(thin, 3n), half(thin)];
  const size = thickest(plan.sizes.filter(({ thick }) => atMost(least, thick) && atMost(thick, most)));
  if (!size) return err({ code: 'no-dowel', least, most });
  const [under, more] = [figureIn(plan.units, leave), figureIn(plan.units, room)];
  const depth = subtract(subtract(mate, under), more);
  if (!isPositive(depth)) return err({ code: 'mate-thin', by: subtract(add(under, more), mate) });
  const edge = shortest(from, subtract(part, from));
  const wall = subtract(edge, half(size.thick));
  if (!isPositive(wall)) return err({ code: 'off-the-part', by: subtract(half(size.thick), edge) });
  const share = shortest(over(size.long, 3n), depth);
  return ok({
    size,
    row: row.value,
    from,
    inFace: add(share, more),
    inEdge: add(subtract(size.long, share), more),
    warnings: warningsOf(plan, { wall, size, count: row.value.marks.length }),
  });
}

type Found = { readonly wall: Length; readonly size: DowelSize; readonly count: number };

function warningsOf({ end, units }: DowelPlan, { wall, size, count }: Found): readonly DowelWarning[] {
  const [least, leastEnd] = [half(size.thick), figureIn(units, leastDowelEnd)];
  return [
    ...(count === 1 ? [{ code: 'turns' } as const] : []),
    ...(count > 1 && less(end, leastEnd) ? [{ code: 'near-end', end, least: leastEnd } as const] : []),
    ...(less(wall, least) ? [{ code: 'thin-wall', wall, least } as const] : []),
  ];
}

/** Of several as thick the longest. */
function thickest(sizes: readonly DowelSize[]): DowelSize | undefined {
  const [first, ...rest] = sizes;
  if (!first) return undefined;
  const thick = longest(first.thick, ...rest.map((size) => size.thick));
  const most = sizes.filter((size) => atMost(thick, size.thick));
  return most.reduce((a, b) => (less(a.long, b.long) ? b : a));
}
