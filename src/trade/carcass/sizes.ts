import {
  add,
  equals,
  isNegative,
  isPositive,
  isZero,
  type Length,
  less,
  negate,
  subtract,
  sum,
  times,
  zero,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { markAt, type Tape } from '../../length/tape';
import { given, plus, type Sum, sumOf } from '../sums/sum';
import { backHow, beforeBack, innerOf } from './back-how';
import type { Case, StockRole, Stuff } from './case';
import { reachTerms, sideLong } from './ends';
import { heldOf, type Over } from './held';
import { jointProblems } from './joint-problems';
import { keptOff } from './kept-off';
import { type CaseField, type CaseProblem, neverLess } from './problems';
import { type Joints, jointsOf } from './usual';
import { wantedStock } from './wanted-stock';

/** What every part of a case is worked out from. Inches, each with its sum. */
export type Sizes = {
  readonly case: Case;
  readonly thick: (stock: StockRole) => Length;
  readonly joints: Joints;
  readonly width: Sum;
  readonly height: Sum;
  readonly depth: Sum;
  /** Depth in front of the back, and what nailers leave of it. */
  readonly before: Sum;
  readonly inner: Sum;
  readonly clearWidth: Sum;
  readonly clearHeight: Sum;
  /** Clear bays from the left, as planned. */
  readonly bays: readonly Sum[];
  /** The same, as built where a measure is used. */
  readonly real: (bay: number) => Sum;
  /** Floor to the upper face of the bottom: the datum of everything inside. */
  readonly datum: Sum;
  /** How high the plinth is that the case stands on: its sizes here are its own, from its own lower end. */
  readonly plinth: Length;
  /** What the marks of bottom and sides add to the drawing. */
  readonly over: Over;
  /** The same by the drawing, where they add something. */
  readonly drawn?: Sizes;
};

/** The stock a piece falls back on when none is said for it. */
const likewise: Partial<Record<StockRole, StockRole>> = {
  bottom: 'side',
  top: 'side',
  partition: 'side',
  shelf: 'side',
  cleat: 'side',
  loose: 'side',
  toe: 'side',
  base: 'side',
  cross: 'base',
  nailer: 'side',
  stop: 'side',
};

/** Whether a piece is of the stock of another where none is said. @example follows('back') // false */
export const follows = (stock: StockRole): boolean => stock === 'filler' || likewise[stock] !== undefined;

/** Which piece another is like where nothing is said: a filler strip like the face frame it stands beside. */
export const likeOf = (c: Case, stock: StockRole): StockRole | undefined =>
  stock === 'filler' ? (c.hasFrame ? 'frame' : 'side') : likewise[stock];

/** Which stock a piece is of: its own, else that of the piece it follows. @example stockOf(c, 'bottom') */
export function stockOf(c: Case, stock: StockRole): string | undefined {
  const next = likeOf(c, stock);
  return c.stocks[stock] ?? (next ? stockOf(c, next) : undefined);
}

/**
 * Sizes of a case before its parts, or everything that keeps it from being worked out.
 *
 * @param stuff the sheets and boards of the job
 * @example sizesOf(c, stuff) // clear 36 15/16, bays 18 7/64: Example 1 of carcass
 */
export function sizesOf(c: Case, stuff: readonly Stuff[]): Result<Sizes, readonly CaseProblem[]> {
  const thick = (stock: StockRole): Length =>
    stuff.find((s) => s.id === stockOf(c, stock))?.thickness ?? zero;
  const problems = [...missingFields(c), ...missingStock(c, thick), ...notPositive(c), ...negative(c)];
  if (problems.length > 0) return err(problems);
  const plinth = c.hasPlinth ? (c.feet ?? zero) : zero;
  const sizes = work(c.hasPlinth ? { ...c, feet: zero } : c, { thick, plinth });
  const closed = [...noOpening(sizes), ...baysOff(sizes), ...jointProblems(sizes), ...tooMuch(sizes)];
  return closed.length > 0 ? err(closed) : ok(sizes);
}

const none: Over = { across: zero, up: zero, deep: zero };

function work(c: Case, { thick, plinth }: Pick<Sizes, 'thick' | 'plinth'>, over: Over = none): Sizes {
  const joints = jointsOf(c, thick('side'), c.hasBack ? thick('back') : undefined);
  const { across, up } = heldOf(c, thick, { ...over, plinth });
  const depth = sumOf(plus('case-depth', c.depth ?? zero), plus('side-mark', over.deep));
  const before = beforeBack(c, joints, depth);
  const inner = innerOf(c, joints, { before, thick: thick('nailer') });
  const datum = sumOf(plus('floor-to-case', c.feet ?? zero), plus('bottom', thick('bottom')));
  const real = (bay: number): Sum => {
    const used = c.built[`bay${bay}`]?.used;
    return used ? given('bay-as-built', used) : (across.bays[bay - 1] ?? given('bay', zero));
  };
  return { case: c, thick, plinth, before, joints, over, depth, inner, datum, real, ...across, ...up };
}

/** The bottom, which sets the case across: clear width, and what it reaches past that at either end. */
export const bottomLong = (sizes: Sizes): Sum =>
  sumOf(plus('clear-width', sizes.clearWidth.value, sizes.clearWidth), ...reachTerms(sizes, 'bottom'));

/**
 * The sizes as they follow from the marks of the bottom, across, and of the sides, up: what stands on a mark is
 * reckoned from the mark, not from the drawing.
 *
 * @param drawn as `sizesOf` gives them; @param marks where one of them is cut already, or was: its length, inches
 * @returns the same where both stand on their marks
 * @example onMarks(sizes, '1/32').width.value // 43 5/8 strong by .0111: Example 14 of carcass
 */
export function onMarks(drawn: Sizes, tape: Tape, marks: SetMarks = {}): Sizes {
  const { case: c, depth } = drawn;
  const added = (exact: Length, kept: Length | undefined) =>
    keptOff(exact, kept) ?? subtract(markAt(exact, tape).value, exact);
  const over = {
    across: added(bottomLong(drawn).value, marks.across),
    up: added(sideLong(drawn).value, marks.up),
    deep: keptOff(depth.value, marks.deep) ?? zero,
  };
  return Object.values(over).every(isZero) ? drawn : { ...work(c, drawn, over), drawn };
}

/** Marks of what sets a case across, up and deep, where they are not the nearest. Inches. */
export type SetMarks = { readonly [K in keyof Over]?: Length };

/** The ways a case is set from a mark whatever its sides and bottom come to. */
type Way = 'across' | 'up';

/** A length of what sets a case, and the mark it is cut to. Inches. */
type SetBy = { readonly exact: Length; readonly mark: Length };

/** What sets a case across, and what sets it up. */
export function setBy(sizes: Sizes, way: Way): SetBy {
  const by = sizes.drawn ?? sizes;
  const exact = way === 'across' ? bottomLong(by).value : sideLong(by).value;
  return { exact, mark: add(exact, sizes.over[way]) };
}

/**
 * A length across or up a case. One that by the drawing is as long as what sets the case there has its sum, and
 * shares its mark with what that leaves; any other follows from the mark.
 */
export function lengthIn(sizes: Sizes, way: Way, of: (sizes: Sizes) => Sum): Sum {
  const own = sizes.drawn && of(sizes.drawn);
  return own && equals(own.value, setBy(sizes, way).exact) ? own : of(sizes);
}

function missingFields(c: Case): readonly CaseProblem[] {
  const held: readonly CaseField[] =
    c.hold === 'outside'
      ? ['width', 'height', 'depth']
      : c.bays.filter(Boolean).length > c.partitions
        ? ['clear', 'depth']
        : ['opening', 'clear', 'depth'];
  return held.filter((field) => c[field] === undefined).map((field) => ({ code: 'missing', field }));
}

const missingStock = (c: Case, thick: Sizes['thick']): readonly CaseProblem[] =>
  wantedStock(c)
    .filter((stock) => !isPositive(thick(stock)))
    .map((stock) => ({ code: 'missing-stock', stock }));

const sizesThatCount: readonly CaseField[] = [
  'width',
  'height',
  'depth',
  'opening',
  'clear',
  'dado',
  'partitionDado',
  'bottomRabbet',
  'tongue',
  'topRabbet',
  'backDeep',
  'backWide',
  'backGroove',
  'backGrooveWide',
  'cleatWide',
  'cleatRabbet',
  'stile',
  'middle',
  'topRail',
  'bottomRail',
  'crossWide',
];

const notPositive = (c: Case): readonly CaseProblem[] =>
  sizesThatCount
    .filter((field) => {
      const value = c[field];
      return value !== undefined && !isPositive(value);
    })
    .map((field) => ({ code: 'not-positive', field }));

/** These may be nothing, but not less. */
const roomsThatCount: readonly CaseField[] = [
  'feet',
  'ease',
  'fit',
  'cleatRabbetWide',
  'notchDeep',
  'looseFront',
  'looseSide',
  'lip',
  'backLand',
  'backInset',
  'toeBack',
  'bottomPast',
  'tongueRoom',
  'topPast',
  'sidePast',
  'nailerWide',
  'nailerDeep',
  'plinthFront',
  'plinthLeft',
  'plinthRight',
  'plinthBack',
  'frontOver',
  'toeClear',
  'frameClear',
  'frameToe',
];

function negative(c: Case): readonly CaseProblem[] {
  const own = roomsThatCount.flatMap((field): readonly CaseProblem[] => {
    const value = c[field];
    return value && isNegative(value) ? [{ code: 'negative', field, by: negate(value) }] : [];
  });
  const inside = c.inside.flatMap((i) =>
    neverLess.flatMap((field): readonly CaseProblem[] => {
      const value = i[field];
      return value && isNegative(value)
        ? [{ code: 'negative-inside', in: i.id, field, by: negate(value) }]
        : [];
    }),
  );
  return [...own, ...inside];
}

/** With every bay given they must make the clear width between them. */
function baysOff({ case: c, bays, clearWidth, thick }: Sizes): readonly CaseProblem[] {
  const between = times(thick('partition'), BigInt(c.partitions));
  const by = subtract(sum([...bays.map((b) => b.value), between]), clearWidth.value);
  return isZero(by) ? [] : [{ code: 'bays-off', by }];
}

function noOpening({ bays, clearHeight }: Sizes): readonly CaseProblem[] {
  const narrow = bays.find((bay) => !isPositive(bay.value));
  const across: readonly CaseProblem[] = narrow
    ? [{ code: 'no-opening', across: true, by: times(negate(narrow.value), BigInt(narrow.shares ?? 1)) }]
    : [];
  if (isPositive(clearHeight.value)) return across;
  return [...across, { code: 'no-opening', across: false, by: negate(clearHeight.value) }];
}

/** A toe board behind its case, and a back that room on one side leaves outside its rabbet. */
function tooMuch({ case: c, thick, joints, depth }: Sizes): readonly CaseProblem[] {
  const toeMost = subtract(depth.value, thick('toe'));
  return [
    ...(c.hasToe && c.toeBack && c.toeHow !== 'notch' ? pastMost('toeBack', c.toeBack, toeMost) : []),
    ...(backHow(c) === 'rabbet' ? pastMost('ease', joints.ease, joints.backDeep) : []),
  ];
}

const pastMost = (field: CaseField, value: Length, most: Length): readonly CaseProblem[] =>
  less(most, value) ? [{ code: 'too-much', field, by: subtract(value, most), most }] : [];

/** Left edge of a bay from the inner face of the left side, planned. @example bayStart(sizes, 2) */
export function bayStart({ bays, thick }: Sizes, bay: number): Length {
  const before = bays.slice(0, bay - 1).map((b) => b.value);
  return sum([...before, times(thick('partition'), BigInt(bay - 1))]);
}
