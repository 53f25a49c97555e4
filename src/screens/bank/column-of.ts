import { editFitted, tickOf } from '../../job/edits';
import type { Change } from '../../job/entry';
import { add, isPositive, type Length, less, longest, negate, subtract, zero } from '../../length/length';
import type { BankPlan } from '../../plan/bank-plan';
import { jobWith } from '../../plan/job-with';
import { partsOfJob } from '../../plan/parts-of-job';
import type { Plan } from '../../plan/plan';
import { recutsOf } from '../../plan/recuts';
import { drawerPart } from '../../trade/boxes/bank-parts';
import type { Bank } from '../../trade/fronts/bank';
import { columnNo, type Fitted, fittedNo } from '../../trade/fronts/bank';
import { revealsOf } from '../../trade/fronts/reveals';
import { fitOrder } from '../../trade/fronts/stands';
import { type Trims, trimsFor } from '../../trade/fronts/trims';
import type { WorkedColumn } from '../../trade/fronts/worked';
import { copyId } from '../../trade/grooves/copies';
import { opId } from '../../trade/setups/operation';
import type { Bench } from '../bench';
import { type Waits, waitsOf } from './waits';

/** A bank of the job in hand, worked out. */
export function bankIn(plan: Plan | undefined, id: string): BankPlan | undefined {
  return plan?.banks.get(id);
}

const columnIn = (bank: BankPlan | undefined, no: number): WorkedColumn | undefined =>
  bank?.fronts.ok ? bank.fronts.value.columns.find((c) => c.no === no) : undefined;

/** The front to go on next in a column; undefined when all are on. */
export const nextFront = (bank: Bank, column: WorkedColumn): number | undefined =>
  fitOrder(bank)[column.fitted];

/** Whether a front is ripped to its height. */
export function frontIsCut(
  bench: Bench,
  bank: Bank,
  at: { readonly column: number; readonly no: number },
): boolean {
  const job = bench.job.value;
  const part = drawerPart(bank.id, at, 'front');
  const again = job ? (recutsOf(job, part)['1'] ?? 0) : 0;
  return bench.folded.value.ticks.has(opId(part, 'rip', copyId('1', again)));
}

/** Where a front is read, and what it read. Inches. */
export type Reading = { readonly left?: Length | undefined; readonly right?: Length | undefined };

export const readingOf = (bank: Bank, column: number, no: number): Reading =>
  fittedNo(columnNo(bank, column), no);

type Refusing = { readonly column: WorkedColumn; readonly no: number; readonly trims: Trims };

/** A figure typed wrong is told apart from fronts that bind: it lies past the opening, or behind the front before. */
function refusalOf(bank: Bank, { column, no, trims }: Refusing): Taken['refused'] {
  const order = fitOrder(bank);
  const prior = order[order.indexOf(no) - 1];
  const over = bank.fit === 'overlay' ? revealsOf(bank) : undefined;
  const cover = over ? longest(negate(over.top), negate(over.bottom)) : zero;
  for (const side of ['left', 'right'] as const) {
    const far = plannedReach(bank, column, { no, side });
    if (less(add(column.opening[side], cover), far)) return 'past-the-end';
    const last = prior === undefined ? negate(cover) : plannedReach(bank, column, { no: prior, side });
    if (!less(last, far)) return 'behind';
  }
  const gone = bank.goes === 'fronts' && [...trims.heights.values()].some((h) => !isPositive(h));
  return gone ? 'no-front' : undefined;
}

/** Where the far edge of a front stands, or is to come, from where the fitting began. */
export function plannedReach(
  bank: Bank,
  column: WorkedColumn,
  at: { readonly no: number; readonly side: 'left' | 'right' },
): Length {
  const stands = column[at.side][at.no - 1];
  const opening = column.opening[at.side];
  if (!stands) return opening;
  return bank.order === 'down' ? stands.bottom : subtract(opening, stands.top);
}

/** What takes a front off again: its measure, and the tick that it is on. */
export const takenOff = (
  bank: Bank,
  at: { readonly column: number; readonly no: number },
): readonly Change[] => [
  ...editFitted(
    { bank: bank.id, column: at.column, front: at.no },
    { left: undefined, right: undefined, usedLeft: undefined, usedRight: undefined },
  ),
  { kind: 'untick', op: opId(`${bank.id}~bench`, 'fronton', `c${at.column}d${at.no}`) },
];

/** A front's height is held from the first one fitted on; what came off since is kept apart. */
const hold = (
  at: { readonly bank: string; readonly column: number; readonly front: number },
  height: Length,
  { held }: Fitted,
): readonly Change[] => (held ? [] : editFitted(at, { held: height }));

/** What taking a reading up comes to: the column as it would be, who gives how much, and the edits. */
export type Taken = {
  /** It cannot be: past the opening, behind the front before it, or a trim that leaves no front. */
  readonly refused: 'past-the-end' | 'behind' | 'no-front' | undefined;
  readonly column: WorkedColumn;
  readonly trims: Trims;
  readonly changes: readonly Change[];
  /** Why the front is not ticked as on, where the machine's screen holds that back. */
  readonly held: ReturnType<Waits>;
};

/**
 * A fitted front's measure taken up: it and all that are on keep their heights; those still to go keep theirs or
 * give, as chosen; the front counts as on, and is ticked where the machine's screen would tick it.
 */
export function takenUp(
  bench: Bench,
  bank: Bank,
  at: { readonly column: number; readonly no: number },
): Taken | undefined {
  const before = columnIn(bankIn(bench.plan.value, bank.id), at.column);
  const { left, right } = readingOf(bank, at.column, at.no);
  const job = bench.job.value;
  if (!before || !job || !(left ?? right)) return undefined;
  const own = columnNo(bank, at.column);
  const front = (no: number) => ({ bank: bank.id, column: at.column, front: no });
  const used = [
    ...editFitted({ bank: bank.id, column: at.column, front: at.no }, { usedLeft: left, usedRight: right }),
    ...before.heights.flatMap((height, k) => hold(front(k + 1), height, fittedNo(own, k + 1))),
  ];
  const found = partsOfJob(jobWith(bench.folded.value, job.id, used), bench.shop.value).banks.get(bank.id);
  const column = columnIn(found, at.column);
  if (!column) return undefined;
  const open = fitOrder(bank).slice(column.fitted);
  const trims = trimsFor(
    column.ahead?.trim ?? zero,
    [...open]
      .sort((a, b) => a - b)
      .map((no) => ({
        no,
        height: column.heights[no - 1] ?? zero,
        cut: frontIsCut(bench, bank, { column: at.column, no }),
      })),
    bank.units,
  );
  const given =
    bank.goes === 'fronts'
      ? [...trims.off].flatMap(([no, off]) =>
          editFitted(front(no), { trim: add(fittedNo(own, no).trim ?? zero, off) }),
        )
      : [];
  const op = opId(`${bank.id}~bench`, 'fronton', `c${at.column}d${at.no}`);
  const ticked = bench.folded.value.ticks.has(op);
  const held = ticked ? undefined : waitsOf(bench)({ op });
  const on = ticked || held ? [] : tickOf(op, zero);
  const refused = refusalOf(bank, { column, no: at.no, trims });
  return { column, trims, refused, changes: [...used, ...given, ...on], held };
}
