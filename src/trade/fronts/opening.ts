import {
  add,
  equals,
  isPositive,
  type Length,
  less,
  longest,
  shortest,
  subtract,
  zero,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { frameOf } from '../carcass/frame';
import type { Worked } from '../carcass/parts';
import type { Sizes } from '../carcass/sizes';
import { usualOf } from '../carcass/usual';
import { given, minus, plus, type Sum, sumOf } from '../sums/sum';
import { type Bank, type Column, columnNo } from './bank';

/** What the fronts of a column stand in. Inches, each with its sum. */
export type Opening = {
  /** In front, where fronts go; and the lesser of front and back, which boxes pass. */
  readonly wide: Sum;
  readonly narrow: Sum;
  /** Clear height at either upright, and the lesser: heights are shared out of it. */
  readonly left: Length;
  readonly right: Length;
  readonly high: Sum;
  /** Lower edge over what the slide sticks stand on. */
  readonly sill: Sum;
  /** What the sticks stand on: the bottom of the case, or a fixed shelf below the opening. */
  readonly stand: 'bottom' | 'shelf';
  /** How far over the upper face of the bottom that lies; nothing on the bottom itself. */
  readonly standUp: Length;
  /** Free over its upper edge, behind a frame: up to a fixed shelf or the top. */
  readonly head?: Length | undefined;
  /** Fixed shelves behind the frame that stand in the opening: no drawer passes them. */
  readonly shelves?: readonly ShelfAcross[];
  /** Face of the frame, or front edges of the case, to the inside of the back. */
  readonly deep: Sum;
  /** How much of case or frame a covering front can lie on. */
  readonly edges: {
    readonly left?: Length | undefined;
    readonly right?: Length | undefined;
    readonly top?: Length | undefined;
    readonly bottom?: Length | undefined;
    /** Stiff between this column and the next: a partition, or a middle stile. */
    readonly between?: Length | undefined;
  };
  /** Whether width and height are readings taken up. */
  readonly measured: boolean;
  /** Whether the back is too: boxes pass the lesser of front and back. */
  readonly backMeasured: boolean;
  /** Front and back as used, for the warning when they differ. */
  readonly front?: Length | undefined;
  readonly back?: Length | undefined;
};

/** A shelf across an opening: where it stands over the lower edge, and which way out is the shorter. Inches. */
export type ShelfAcross = {
  readonly from: Length;
  readonly to: Length;
  /** Out of sight behind the lower or the upper edge with so little moved; nothing for one that stands amid. */
  readonly behind?: { readonly edge: 'lower' | 'upper'; readonly by: Length };
};

/** What keeps an opening from being known. */
export type OpeningProblem =
  | { readonly code: 'missing'; readonly field: 'width' | 'height' | 'depth' }
  /** The case is not worked out yet, or is not in the job. */
  | { readonly code: 'no-case' }
  | { readonly code: 'no-bay'; readonly bay: number; readonly bays: number }
  /** What it stands on is not in that bay. */
  | { readonly code: 'no-floor' }
  | { readonly code: 'closed'; readonly by: Length };

type Planned = Pick<
  Opening,
  'wide' | 'high' | 'sill' | 'stand' | 'standUp' | 'head' | 'shelves' | 'deep' | 'edges'
>;

/**
 * The opening of a column: as planned from the case or as said, then as measured where that is taken up.
 *
 * @param column from the left, 1 the first
 * @param worked the case it stands in
 * @returns sizes in inches, or everything that keeps it from being known
 * @example openingOf(newBank('b'), 1, undefined).error[0].code // missing
 */
export function openingOf(bank: Bank, column: number, worked: Worked | undefined): Found<Opening> {
  const planned = bank.of === undefined ? asSaid(bank) : inCase(bank, column, worked);
  if (!planned.ok) return planned;
  const used = asUsed(planned.value, columnNo(bank, column));
  // what is said of an opening in no case is what was measured
  return ok(bank.of === undefined ? { ...used, measured: true, backMeasured: true } : used);
}

type Found<T> = Result<T, readonly OpeningProblem[]>;

function asSaid(bank: Bank): Found<Planned> {
  const missing = (['width', 'height', 'depth'] as const).filter((f) => !isPositive(bank[f] ?? zero));
  if (missing.length > 0) return err(missing.map((field) => ({ code: 'missing', field })));
  return ok({
    wide: given('opening', bank.width ?? zero),
    high: given('opening', bank.height ?? zero),
    sill: given('lower-edge', bank.sill ?? zero),
    stand: 'bottom',
    standUp: zero,
    deep: given('depth-to-back', bank.depth ?? zero),
    edges: {},
  });
}

function inCase(bank: Bank, column: number, worked: Worked | undefined): Found<Planned> {
  if (!worked) return err([{ code: 'no-case' }]);
  const { sizes } = worked;
  const bay = bank.bay + column - 1;
  const bays = sizes.bays.length;
  if (bay < 1 || bay > bays) return err([{ code: 'no-bay', bay, bays }]);
  const under = floorIn(bank, bay, sizes);
  if (bank.over !== undefined && !under) return err([{ code: 'no-floor' }]);
  const planned = sizes.case.hasFrame ? inFrame(sizes, bay, under?.id) : inCarcass(sizes, bay, under?.id);
  return isPositive(planned.high.value)
    ? ok(planned)
    : err([{ code: 'closed', by: subtract(zero, planned.high.value) }]);
}

/**
 * What the bank stands on in a bay: the rail or shelf said, or one of its kind at the same height in the bays beside.
 */
function floorIn(bank: Bank, bay: number, sizes: Sizes) {
  const said = sizes.case.inside.find((i) => i.id === bank.over);
  if (!said || said.bay !== bank.bay || (said.kind !== 'rail' && said.kind !== 'fixed')) return undefined;
  return sizes.case.inside.find(
    (i) => i.bay === bay && i.kind === said.kind && i.at && said.at && equals(i.at, said.at),
  );
}

/** What stands across a bay, lowest first: from where it is measured its lower edge, and how thick. */
function across(sizes: Sizes, bay: number, kind: 'rail' | 'fixed') {
  return sizes.case.inside
    .filter((i) => i.bay === bay && i.kind === kind && i.at !== undefined)
    .map((i) => ({
      id: i.id,
      low: i.at ?? zero,
      thick: kind === 'rail' ? (i.wide ?? usualOf(sizes.case).rail) : sizes.thick('shelf'),
    }))
    .sort((a, b) => a.low.compare(b.low));
}

function inFrame(sizes: Sizes, bay: number, over: string | undefined): Planned {
  const frame = frameOf(sizes);
  const rails = across(sizes, bay, 'rail');
  const under = rails.find((r) => r.id === over);
  const floor = under ? add(under.low, under.thick) : zero;
  const next = rails.find((r) => floor.compare(r.low) < 0);
  const top = next?.low ?? frame.middles.value;
  const { wide } = frame.openings[bay - 1] ?? { wide: given('frame-opening', zero) };
  const inner = sizes.inner;
  return {
    wide: sumOf(plus('frame-opening', wide.value, wide)),
    high: next
      ? sumOf(plus('rail-to-rail', next.low), minus('rail-under', floor))
      : sumOf(plus('frame-opening-height', top, frame.middles), minus('rail-under', floor)),
    head: headOver(sizes, bay, { top: add(frame.sill.value, top), rail: next?.thick }),
    shelves: shelvesAcross(sizes, bay, [add(frame.sill.value, floor), add(frame.sill.value, top)]),
    ...standIn(sizes, bay, sumOf(plus('sill', frame.sill.value, frame.sill), plus('rail-under', floor))),
    deep: sumOf(plus('frame', sizes.thick('frame')), plus('case-to-back', inner.value, inner)),
    edges: {
      left: bay === 1 ? frame.pieces.stile : frame.pieces.middle,
      right: bay === sizes.bays.length ? frame.pieces.stile : frame.pieces.middle,
      top: next?.thick ?? frame.pieces.top,
      bottom: under?.thick ?? frame.pieces.bottom,
      between: frame.pieces.middle,
    },
  };
}

/** What is free behind a frame over an opening: up to the next shelf or the top, no higher than a rail over it. */
function headOver(
  sizes: Sizes,
  bay: number,
  { top, rail }: { readonly top: Length; readonly rail: Length | undefined },
): Length {
  const shelf = across(sizes, bay, 'fixed').find(({ low }) => !less(low, top));
  const free = longest(zero, subtract(shelf?.low ?? sizes.clearHeight.value, top));
  return rail ? shortest(rail, free) : free;
}

/** The fixed shelves of a bay between the edges of an opening in its frame, over the bottom. */
function shelvesAcross(
  sizes: Sizes,
  bay: number,
  [lower, upper]: readonly [Length, Length],
): readonly ShelfAcross[] {
  return across(sizes, bay, 'fixed').flatMap(({ low, thick }): readonly ShelfAcross[] => {
    const [over, under] = [subtract(add(low, thick), lower), subtract(upper, low)];
    if (!isPositive(over) || !isPositive(under)) return [];
    const [from, to] = [subtract(low, lower), over];
    if (!isPositive(from)) return [{ from, to, behind: { edge: 'lower', by: over } }];
    if (!less(add(low, thick), upper)) return [{ from, to, behind: { edge: 'upper', by: under } }];
    return [{ from, to }];
  });
}

/** In a frame sticks stand on the bottom of the case, or on the highest fixed shelf below the opening. */
function standIn(sizes: Sizes, bay: number, sill: Sum): Pick<Planned, 'sill' | 'stand' | 'standUp'> {
  const below = across(sizes, bay, 'fixed')
    .map((shelf) => add(shelf.low, shelf.thick))
    .filter((top) => !less(sill.value, top));
  const top = below[below.length - 1];
  return top
    ? {
        sill: sumOf(plus('over-bottom', sill.value, sill), minus('shelf-under', top)),
        stand: 'shelf',
        standUp: top,
      }
    : { sill, stand: 'bottom', standUp: zero };
}

function inCarcass(sizes: Sizes, bay: number, over: string | undefined): Planned {
  const { clearHeight, inner, thick, case: c } = sizes;
  const shelves = across(sizes, bay, 'fixed');
  const under = shelves.find((r) => r.id === over);
  const floor = under ? add(under.low, under.thick) : zero;
  const next = shelves.find((r) => floor.compare(r.low) < 0);
  const wide = sizes.real(bay);
  return {
    wide: sumOf(plus('bay', wide.value, wide)),
    high: next
      ? sumOf(plus('bottom-to-shelf', next.low), minus('shelf-under', floor))
      : sumOf(plus('clear-height', clearHeight.value, clearHeight), minus('shelf-under', floor)),
    sill: given(under ? 'on-shelf' : 'on-bottom', zero),
    stand: under ? 'shelf' : 'bottom',
    standUp: floor,
    deep: sumOf(plus('case-to-back', inner.value, inner)),
    edges: {
      left: thick(bay === 1 ? 'side' : 'partition'),
      right: thick(bay === sizes.bays.length ? 'side' : 'partition'),
      top: next?.thick ?? (c.hasTop ? thick('top') : undefined),
      bottom: under?.thick ?? thick('bottom'),
      between: thick('partition'),
    },
  };
}

/**
 * What was measured stands in place of what was planned, where it is taken up: the lesser of front and back, of left
 * and right.
 */
function asUsed(planned: Planned, column: Column): Opening {
  const { usedFront, usedBack, usedLeft, usedRight } = column;
  const wide = usedFront ? given('opening-measured-front', usedFront) : planned.wide;
  const lesser = (a: Length, b: Length | undefined) => (b ? shortest(a, b) : a);
  const left = usedLeft ?? usedRight ?? planned.high.value;
  const right = usedRight ?? usedLeft ?? planned.high.value;
  const narrow = lesser(wide.value, usedBack);
  const low = shortest(left, right);
  return {
    ...planned,
    wide,
    narrow: usedBack && narrow === usedBack ? given('opening-measured-back', narrow) : wide,
    left,
    right,
    high: usedLeft || usedRight ? given('opening-measured-lesser', low) : planned.high,
    measured: usedFront !== undefined && (usedLeft ?? usedRight) !== undefined,
    backMeasured: usedBack !== undefined,
    front: usedFront,
    back: usedBack,
  };
}
