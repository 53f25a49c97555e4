import {
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
import { given, minus, plus, type Sum, sharedBy, sumOf } from '../sums/sum';
import type { Case, StockRole, Stuff } from './case';
import { jointFields, meetings } from './meetings';
import type { CaseField, CaseProblem } from './problems';
import { type Joints, jointsOf } from './usual';

/** What every part of a case is worked out from. Inches, each with its sum. */
export type Sizes = {
  readonly case: Case;
  readonly thick: (stock: StockRole) => Length;
  readonly joints: Joints;
  readonly width: Sum;
  readonly height: Sum;
  readonly depth: Sum;
  /** Depth in front of the back. */
  readonly inner: Sum;
  readonly clearWidth: Sum;
  readonly clearHeight: Sum;
  /** Clear bays from the left, as planned. */
  readonly bays: readonly Sum[];
  /** The same, as built where a measure is used. */
  readonly real: (bay: number) => Sum;
  /** Floor to the upper face of the bottom: the datum of everything inside. */
  readonly datum: Sum;
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
};

/** Whether a piece is of the stock of another where none is said. @example follows('back') // false */
export const follows = (stock: StockRole): boolean => likewise[stock] !== undefined;

/** Which stock a piece is of: its own, else that of the piece it follows. @example stockOf(c, 'bottom') */
export function stockOf(c: Case, stock: StockRole): string | undefined {
  const next = likewise[stock];
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
  const sizes = work(c, thick);
  const closed = [...noOpening(sizes), ...baysOff(sizes), ...through(sizes)];
  return closed.length > 0 ? err(closed) : ok(sizes);
}

function work(c: Case, thick: Sizes['thick']): Sizes {
  const joints = jointsOf(c, thick('side'), c.hasBack ? thick('back') : undefined);
  const across = c.hold === 'outside' ? acrossFromOutside(c, thick) : acrossFromOpenings(c, thick);
  const up = c.hold === 'outside' ? upFromOutside(c, thick) : upFromOpenings(c, thick);
  const depth = given('case-depth', c.depth ?? zero);
  const inner = c.hasBack
    ? sumOf(plus('case-depth', depth.value), minus('back-rabbet', joints.backWide))
    : depth;
  const datum = sumOf(plus('floor-to-case', c.feet ?? zero), plus('bottom', thick('bottom')));
  const real = (bay: number): Sum => {
    const used = c.built[`bay${bay}`]?.used;
    return used ? given('bay-as-built', used) : (across.bays[bay - 1] ?? given('bay', zero));
  };
  return { case: c, thick, joints, depth, inner, datum, real, ...across, ...up };
}

type Across = Pick<Sizes, 'width' | 'clearWidth' | 'bays'>;

function acrossFromOutside(c: Case, thick: Sizes['thick']): Across {
  const width = given('outside-width', c.width ?? zero);
  const clearWidth = sumOf(plus('outside-width', width.value), minus('two-sides', times(thick('side'), 2n)));
  return { width, clearWidth, bays: baysOf(c, thick, clearWidth) };
}

function acrossFromOpenings(c: Case, thick: Sizes['thick']): Across {
  const one = given('bay-held', c.opening ?? zero);
  const bays = Array.from({ length: c.partitions + 1 }, (_, k) => {
    const own = c.bays[k];
    return own ? given('bay-given', own) : one;
  });
  const all = sum(bays.map((b) => b.value));
  const partitions = times(thick('partition'), BigInt(c.partitions));
  const clearWidth = sumOf(
    plus('bays-together', all),
    plus({ code: 'partitions', count: c.partitions }, partitions),
  );
  const width = sumOf(
    plus('clear-width', clearWidth.value, clearWidth),
    plus('two-sides', times(thick('side'), 2n)),
  );
  return { width, clearWidth, bays };
}

/** Bays not given share what is left of the clear width. */
function baysOf(c: Case, thick: Sizes['thick'], clearWidth: Sum): readonly Sum[] {
  const n = c.partitions + 1;
  const own = c.bays.slice(0, n).filter((b) => b !== undefined);
  const rest = sharedBy(
    Math.max(1, n - own.length),
    plus('clear-width', clearWidth.value, clearWidth),
    minus({ code: 'partitions', count: c.partitions }, times(thick('partition'), BigInt(n - 1))),
    minus('bays-given', sum(own)),
  );
  return Array.from({ length: n }, (_, k) => {
    const fixed = c.bays[k];
    return fixed ? given('bay-given', fixed) : rest;
  });
}

const topOf = (c: Case, thick: Sizes['thick']): Length => (c.hasTop ? thick('top') : zero);

function upFromOutside(c: Case, thick: Sizes['thick']): Pick<Sizes, 'height' | 'clearHeight'> {
  const height = given('outside-height', c.height ?? zero);
  const clearHeight = sumOf(
    plus('outside-height', height.value),
    minus('top', topOf(c, thick)),
    minus('floor-to-case', c.feet ?? zero),
    minus('bottom', thick('bottom')),
  );
  return { height, clearHeight };
}

function upFromOpenings(c: Case, thick: Sizes['thick']): Pick<Sizes, 'height' | 'clearHeight'> {
  const clearHeight = given('clear-height-held', c.clear ?? zero);
  const height = sumOf(
    plus('clear-height-held', clearHeight.value),
    plus('top', topOf(c, thick)),
    plus('bottom', thick('bottom')),
    plus('floor-to-case', c.feet ?? zero),
  );
  return { height, clearHeight };
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

/** The stock a case cannot do without, in the order it is asked for. */
function wanted(c: Case): readonly StockRole[] {
  const kinds = new Set(c.inside.map((i) => i.kind));
  return [
    'side',
    ...(c.hasBack ? (['back'] as const) : []),
    ...(kinds.has('trays') ? (['tray'] as const) : []),
    ...(c.hasFrame || kinds.has('rail') ? (['frame'] as const) : []),
    ...(c.hasEdging ? (['edging'] as const) : []),
  ];
}

const missingStock = (c: Case, thick: Sizes['thick']): readonly CaseProblem[] =>
  wanted(c)
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
  'topRabbet',
  'backDeep',
  'backWide',
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
  'toeBack',
];

function negative(c: Case): readonly CaseProblem[] {
  const own = roomsThatCount.flatMap((field): readonly CaseProblem[] => {
    const value = c[field];
    return value && isNegative(value) ? [{ code: 'negative', field, by: negate(value) }] : [];
  });
  const inside = c.inside.flatMap((i) =>
    (['at', 'endRoom', 'slack', 'wide'] as const).flatMap((field): readonly CaseProblem[] => {
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

/** Joints that would come out at the other face, and a back rabbet that takes the whole depth. */
function through({ case: c, thick, joints, depth }: Sizes): readonly CaseProblem[] {
  const found: CaseProblem[] = jointFields(c).flatMap((field) => {
    const { joint, into } = meetings[field];
    const [cut, thickness] = [joints[field], thick(into)];
    return joint.goesThrough(cut, thickness) ? [{ code: 'through', field, depth: cut, thickness }] : [];
  });
  const wide = joints.backWide;
  return c.hasBack && !less(wide, depth.value)
    ? [...found, { code: 'back-too-wide', wide, depth: depth.value }]
    : found;
}

/** Left edge of a bay from the inner face of the left side, planned. @example bayStart(sizes, 2) */
export function bayStart({ bays, thick }: Sizes, bay: number): Length {
  const before = bays.slice(0, bay - 1).map((b) => b.value);
  return sum([...before, times(thick('partition'), BigInt(bay - 1))]);
}
