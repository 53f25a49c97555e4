import {
  add,
  isNegative,
  type Length,
  less,
  negate,
  over,
  ratio,
  subtract,
  sum,
  zero,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import type { Rounded } from '../../length/round';
import { grainOf, markAt, type Tape } from '../../length/tape';
import type { Worked } from '../carcass/parts';
import type { Sum } from '../sums/sum';
import { type Bank, columnNo, fittedNo, frontNo } from './bank';
import { alike, fairRound } from './fair';
import { bothAhead, type Gaps } from './fitted';
import { type HeightsError, heightsOf, isCountOfFronts, type Share } from './heights';
import { type FrontMark, frontMarksOf } from './marks';
import { type Opening, type OpeningProblem, openingOf } from './opening';
import { frontsTotal, type Reveals, revealsOf } from './reveals';
import { aheadOf, fittedIn, frontNumbers, type Stands, standing } from './stands';
import { usualBank } from './usual-bank';
import { type Edge, frontWidth, type WidthError, type WidthWarning } from './width';

/** The fronts of one column. Inches. */
export type WorkedColumn = {
  readonly no: number;
  readonly opening: Opening;
  readonly width: { readonly sum: Sum; readonly mark: Rounded };
  /** How far it covers the case at either side; negative: stands short of it. */
  readonly covers: { readonly left: Length; readonly right: Length };
  readonly warnings: readonly WidthWarning[];
  /** From the top; one that is held keeps its own. */
  readonly heights: readonly Length[];
  /** Before anything came off to keep the gaps: boxes and slides stand on these. */
  readonly untrimmed: readonly Length[];
  /** So many are fitted and measured, in the order they are fitted. */
  readonly fitted: number;
  readonly left: readonly Stands[];
  readonly right: readonly Stands[];
  /** What is left for the gaps of the fronts still to go, once one is fitted. */
  readonly ahead?: {
    readonly left: Gaps | undefined;
    readonly right: Gaps | undefined;
    readonly taper: Length;
    readonly trim: Length;
  };
};

/** The fronts of a bank worked out. Inches. */
export type WorkedFronts = {
  readonly bank: Bank;
  readonly reveals: Reveals;
  readonly total: Sum;
  /** Exact heights from the top, and the heights they are cut to. */
  readonly exact: readonly Length[];
  readonly heights: readonly Length[];
  /** What rounding together left: in the bottom reveal, or in the gaps when all are cut alike. */
  readonly left: Length;
  /** Edges on the story stick, rows as planned. */
  readonly marks: readonly FrontMark[];
  readonly columns: readonly WorkedColumn[];
};

export type FrontsProblem =
  /** Fronts would stand in each other, or inset ones in the case. */
  | { readonly code: 'gap-negative'; readonly gap: Length }
  /** A figure of the bank that may be nothing, but not less. */
  | { readonly code: 'bank-negative'; readonly field: BankRoom; readonly by: Length }
  | OpeningProblem
  | HeightsError
  | ({ readonly column: number } & WidthError);

/** Also what a covering front covers: less than nothing would stand off its edge. */
const bankRooms = [
  'top',
  'bottom',
  'side',
  'gap',
  'trim',
  'band',
  'slideLong',
  'slideHigh',
  'centre',
  'boxUp',
  'play',
] as const satisfies readonly (keyof Bank)[];
type BankRoom = (typeof bankRooms)[number];

type FrontsAt = {
  readonly worked: Worked | undefined;
  readonly tape: Tape;
  /** Least heights by front, from what goes into the drawers; used when contents come first. */
  readonly least?: readonly (Length | undefined)[];
};

/**
 * The fronts of a bank from its opening: heights shared and rounded together, widths, and where each stands, as planned
 * and as fitted.
 *
 * @returns or everything that keeps it from being worked out
 */
export function frontsOf(bank: Bank, at: FrontsAt): Result<WorkedFronts, readonly FrontsProblem[]> {
  if (!isCountOfFronts(bank.count)) return err([{ code: 'count-not-whole' }]);
  const below = bankRooms.find((field) => isNegative(bank[field] ?? zero));
  if (below) return err([{ code: 'bank-negative', field: below, by: negate(bank[below] ?? zero) }]);
  const found = columnNumbers(bank).map((no) => openingOf(bank, no, at.worked));
  const openings = found.flatMap((f) => (f.ok ? [f.value] : []));
  const [first, ...rest] = openings;
  if (!first || openings.length < found.length)
    return err(found.flatMap((f) => (f.ok ? [] : f.error)).slice(0, 3));
  const reveals = revealsOf(bank);
  const under = negativeGap(bank, reveals);
  if (under) return err([{ code: 'gap-negative', gap: under }]);
  const least = rest.reduce((a, b) => (less(b.high.value, a.high.value) ? b : a), first);
  const total = frontsTotal(least.high, bank.count, reveals);
  const rows = rowsOf(bank, total.value, at);
  if (!rows.ok) return err([rows.error]);
  const made = { reveals, ...rows.value };
  const columns = openings.map((opening, k) => columnOf(bank, { opening, no: k + 1, ...made }, at.tape));
  const wrong = columns.flatMap((c) => (c.ok ? [] : [c.error]));
  if (wrong.length > 0) return err(wrong);
  const marks = frontMarksOf(rows.value.heights, {
    opening: least.high.value,
    ...spread(bank, reveals, rows.value.left),
  });
  return ok({ bank, total, ...made, marks, columns: columns.flatMap((c) => (c.ok ? [c.value] : [])) });
}

/** Where the story stick begins and how far its fronts stand apart: cut alike, what is left over is in the gaps. */
function spread(
  bank: Bank,
  reveals: Reveals,
  left: Length,
): { readonly top: Length; readonly between: Length } {
  const { top, between, endsHeld } = reveals;
  if (bank.alike && bank.share === 'equal') {
    const gaps = endsHeld ? bank.count - 1 : bank.count + 1;
    const more = gaps > 0 ? over(left, BigInt(gaps)) : zero;
    return { top: endsHeld ? top : add(top, more), between: add(between, more) };
  }
  return { top: bank.order === 'up' ? add(top, left) : top, between };
}

/** A gap under nothing; a front that covers has reveals under nothing at its ends. */
function negativeGap(bank: Bank, { top, between, bottom, side, gap }: Reveals): Length | undefined {
  const inset = bank.fit === 'inset' ? [top, bottom, side] : [gap];
  return [between, ...inset].find(isNegative);
}

const columnNumbers = (bank: Bank): readonly number[] =>
  Array.from({ length: Math.max(1, bank.across) }, (_, k) => k + 1);

type Rows = Pick<WorkedFronts, 'exact' | 'heights' | 'left'>;

const heldIn = (bank: Bank, no: number): Length | undefined =>
  columnNumbers(bank)
    .map((c) => fittedNo(columnNo(bank, c), no).held)
    .find(Boolean);

/** Heights row by row: columns side by side keep one line. A front that is held or given is not shared. */
function rowsOf(bank: Bank, total: Length, at: FrontsAt): Result<Rows, HeightsError> {
  const numbers = frontNumbers(bank);
  const held = numbers.map((no) => heldIn(bank, no));
  const fixed = numbers.map((no, k) => held[k] ?? frontNo(bank, no).high);
  const all = fixed.flatMap((x) => x ?? []);
  if (all.length === bank.count && held.some(Boolean))
    return ok({ exact: all, heights: all, left: subtract(total, sum(all)) });
  const grain = grainOf(at.tape);
  const least = bank.contentsFirst ? at.least : undefined;
  const exact = heightsOf({
    total,
    count: bank.count,
    share: shareOf(bank),
    given: fixed,
    ...(least ? { least } : {}),
  });
  if (!exact.ok) return exact;
  if (bank.alike && bank.share === 'equal' && all.length === 0 && !least) {
    const { each, left } = alike(total, bank.count, grain);
    return ok({ exact: exact.value, heights: numbers.map(() => each), left });
  }
  const cut = fairRound(exact.value, {
    total,
    grain,
    given: fixed.map(Boolean),
    ...(least ? { least } : {}),
  });
  return ok({ exact: exact.value, ...cut });
}

function shareOf(bank: Bank): Share {
  switch (bank.share) {
    case 'step':
      return { kind: 'step', step: bank.step ?? usualBank(bank).step };
    case 'ratio':
      return { kind: 'ratio', ratio: bank.ratio ?? usualBank(bank).ratio };
    case 'weights':
      return {
        kind: 'weights',
        weights: frontNumbers(bank).map((no) => frontNo(bank, no).weight ?? ratio(1n)),
      };
    default:
      return { kind: 'equal' };
  }
}

type Making = Rows & { readonly no: number; readonly opening: Opening; readonly reveals: Reveals };

function columnOf(
  bank: Bank,
  making: Making,
  tape: Tape,
): Result<WorkedColumn, { readonly column: number } & WidthError> {
  const { no, opening, reveals } = making;
  const width = frontWidth(opening.wide.value, edgeOf(bank, making, 'left'), edgeOf(bank, making, 'right'));
  if (!width.ok) return err({ column: no, ...width.error });
  const own = columnNo(bank, no);
  const untrimmed = making.heights.map((h, k) => fittedNo(own, k + 1).held ?? h);
  const heights = untrimmed.map((h, k) => subtract(h, fittedNo(own, k + 1).trim ?? zero));
  const fitted = fittedIn(bank, no);
  const at = { bank, no, heights, fitted, reveals, opening };
  const sides = { left: standing({ ...at, side: 'left' }), right: standing({ ...at, side: 'right' }) };
  const mark = markAt(width.value.width.value, tape, bank.fit === 'inset' ? 'floor' : 'halfExpand');
  const { left, right } = width.value;
  return ok({
    no,
    opening,
    width: { sum: width.value.width, mark },
    covers: { left, right },
    warnings: width.value.warnings,
    heights,
    untrimmed,
    fitted: fitted.length,
    ...sides,
    ...(fitted.length > 0
      ? {
          ahead: bothAhead(
            aheadOf({ ...at, side: 'left' }),
            aheadOf({ ...at, side: 'right' }),
            reveals.between,
          ),
        }
      : {}),
  });
}

function edgeOf(bank: Bank, { no, opening, reveals }: Making, side: 'left' | 'right'): Edge {
  if (bank.fit === 'inset') return { kind: 'inset', reveal: reveals.side };
  const inner = side === 'left' ? no > 1 : no < Math.max(1, bank.across);
  const { between } = opening.edges;
  if (inner && between) return { kind: 'shared', partition: between, gap: reveals.gap };
  const edge = opening.edges[side];
  return { kind: 'overlay', over: reveals.side, ...(edge ? { edge } : {}) };
}
