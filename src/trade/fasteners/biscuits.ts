import {
  add,
  half,
  inches,
  isPositive,
  type Length,
  less,
  longest,
  shortest,
  subtract,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { err, ok, type Result } from '../../length/result';
import type { Units } from '../../length/units';
import { type Schedule, type ScheduleError, screwSchedule } from '../install/schedule';

/** As it is printed on the box. */
export type BiscuitNo = '0' | '10' | '20';

type Biscuit = { readonly no: BiscuitNo; readonly wide: Length; readonly long: Length };

/** Nominal, the largest first. Inches. Source: README of fasteners; others print #20 longer: measure. */
const biscuits: readonly Biscuit[] = [
  { no: '20', wide: inches(15n, 16n), long: inches(9n, 4n) },
  { no: '10', wide: inches(3n, 4n), long: inches(17n, 8n) },
  { no: '0', wide: inches(5n, 8n), long: inches(15n, 8n) },
];

/** Nominal, as the cutter of a plate joiner cuts. Inches. Source: README of fasteners. */
export const biscuitThick = inches(5n, 32n);
/** A joint is so much longer than its biscuit: no slot comes out longer. Common practice, no source. Inches. */
const longer = inches(1n, 2n);
/** A slot is so much deeper than half a biscuit. */
const deeper = inches(1n, 32n);
/** Least wood round a slot. Source: README of fasteners. */
export const leastBesideSlot = inches(3n, 16n);

/** An end or edge joined to the face of another part by biscuits, or edge to edge. Inches. */
type BiscuitPlan = {
  /** How thick the part is whose end or edge is slotted. */
  readonly part: Length;
  /** How thick the part is that is slotted in its face. */
  readonly mate: Length;
  readonly run: Length;
  /** The most from one to the next: 6 in a case, 10 edge to edge. */
  readonly most: Length;
  /** Least wood left under a slot and beside it. */
  readonly leave: Length;
  /** From the reference face of the part to the middle of the slots; half its thickness where left out. */
  readonly from?: Length;
  /** Of the job: its limits are round in them. */
  readonly units?: Units | undefined;
};

/** What a size lacks, by how much: wood under its slot, wood beside it, or length of the joint. Inches. */
export type BiscuitLack = {
  readonly no: BiscuitNo;
  readonly lacks: 'under' | 'beside' | 'run';
  readonly by: Length;
};

export type Biscuits = {
  readonly no: BiscuitNo;
  /** In each of the two. */
  readonly slotDeep: Length;
  /** No slot comes out longer. */
  readonly slotLong: Length;
  /** Middles of the slots along the joint, from the reference end. */
  readonly row: Schedule;
  /** From the reference face of the part to the middle of the slots. */
  readonly from: Length;
  /** Larger sizes, and what they lack. */
  readonly refused: readonly BiscuitLack[];
};

export type BiscuitError =
  | ScheduleError
  | { readonly code: 'no-wood'; readonly what: 'part' | 'mate' | 'leave' }
  | { readonly code: 'no-biscuit'; readonly lacks: readonly BiscuitLack[] };

/** The first slot from the end of the joint, and what is left beside it there. Inches. */
const [first, besideFirst] = [inches(2n), inches(1n, 4n)];

/**
 * Which biscuit, where and how deep its slots: the largest that leaves wood under its slot and beside it, and whose
 * joint is half an inch longer than it.
 *
 * @param plan inches, all > 0
 * @returns inches; the larger sizes with what they lack
 * @example biscuitsFor(plan).value.no // '20': Example 2 of fasteners
 */
export function biscuitsFor(plan: BiscuitPlan): Result<Biscuits, BiscuitError> {
  const none = (['part', 'mate', 'leave'] as const).find((what) => !isPositive(plan[what]));
  if (none) return err({ code: 'no-wood', what: none });
  const lacks = biscuits.map((biscuit) => lackOf(biscuit, plan));
  const k = lacks.indexOf(undefined);
  const refused = lacks.flatMap((lack) => lack ?? []);
  const found = biscuits[k];
  if (!found) return err({ code: 'no-biscuit', lacks: refused });
  const { units } = plan;
  const end = longest(figureIn(units, first), add(half(found.long), figureIn(units, besideFirst)));
  const row = screwSchedule({ run: plan.run, end, most: plan.most, rows: 1 });
  if (!row.ok) return row;
  return ok({
    no: found.no,
    slotDeep: slotOf(found),
    slotLong: add(found.long, figureIn(units, longer)),
    row: row.value,
    from: fromOf(plan),
    refused: lacks.slice(0, k).flatMap((lack) => lack ?? []),
  });
}

const fromOf = ({ part, from = half(part) }: BiscuitPlan): Length => from;

const slotOf = ({ wide }: Biscuit): Length => add(half(wide), deeper);

function lackOf(biscuit: Biscuit, plan: BiscuitPlan): BiscuitLack | undefined {
  const { part, mate, run, leave, units } = plan;
  const from = fromOf(plan);
  const beside = subtract(shortest(from, subtract(part, from)), half(biscuitThick));
  const checks = [
    { lacks: 'under', has: subtract(mate, slotOf(biscuit)), least: leave },
    { lacks: 'beside', has: beside, least: leave },
    { lacks: 'run', has: run, least: add(biscuit.long, figureIn(units, longer)) },
  ] as const;
  const short = checks.find(({ has, least }) => less(has, least));
  return short && { no: biscuit.no, lacks: short.lacks, by: subtract(short.least, short.has) };
}
