import {
  add,
  half,
  isPositive,
  type Length,
  less,
  longest,
  negate,
  subtract,
  times,
  zero,
} from '../../length/length';
import { given, minus, plus, type Sum, sumOf } from '../sums/sum';
import type { Case } from './case';
import { pastTop } from './meetings';
import type { CaseProblem, CaseWarning } from './problems';
import type { Sizes } from './sizes';
import { framedToFloor, saidSill, stilesDown, stilesProblems, type UpAndDown } from './stiles-down';
import { usualOf } from './usual';

/** The face frame of a case. Inches, each with its sum. */
export type FaceFrame = UpAndDown & {
  readonly width: Sum;
  readonly rails: Sum;
  /** How long a middle stile is: from rail to rail, half-lapped over both. */
  readonly uprights: Sum;
  /** Clear opening of each bay in the frame, from the left, and what the frame covers of it at either side. */
  readonly openings: readonly { readonly wide: Sum; readonly left: Sum; readonly right: Sum }[];
  /** Upper edge of the bottom rail over the case bottom: every drawer height starts there. */
  readonly sill: Sum;
  readonly head: Sum;
  readonly pieces: {
    readonly stile: Length;
    readonly middle: Length;
    readonly top: Length;
    readonly bottom: Length;
  };
};

/** Whether stiles and rails of the face frame are half-lapped: with nothing said rails are butted between stiles. */
export const frameLapped = (c: Case): boolean => c.hasFrame && c.frameMeets === 'lap';

/**
 * The face frame: W + 2 overhang wide, H less the feet high; rails butted between full stiles, or half-lapped and as
 * long as it is wide.
 *
 * @param sizes of a case with a frame
 * @example frameOf(sizes).rails.value // 35 3/8: Example 6 of carcass
 */
export function frameOf(sizes: Sizes): FaceFrame {
  const { case: c, thick } = sizes;
  const over = c.overhang ?? usualOf(c).overhang;
  const pieces = framePieces(c);
  const { stile, top } = pieces;
  const width = sumOf(
    plus('outside-width', sizes.width.value, sizes.width),
    plus('two-overhangs', times(over, 2n)),
  );
  const [down, lapped] = [stilesDown(c), frameLapped(c)];
  const up = down ? framedToFloor(sizes) : framedToCase(sizes);
  const bottom = up.bottomRail;
  return {
    width,
    ...up,
    rails: sumOf(
      plus('frame-width', width.value, width),
      ...(lapped ? [] : [minus('two-stiles', times(stile, 2n))]),
    ),
    uprights: lapped ? overRails(up, top) : up.middles,
    openings: frameOpenings(sizes, over, pieces),
    sill: down
      ? saidSill(c)
      : sumOf(plus('bottom-rail', bottom.value), minus('case-bottom', thick('bottom'))),
    head: sumOf(
      plus('top-rail', top),
      minus('sides-past-top', pastTop(c)),
      minus('case-top', c.hasTop ? thick('top') : zero),
    ),
    pieces: { ...pieces, bottom: bottom.value },
  };
}

/** From outer edge to outer edge of the rails. */
const overRails = ({ middles, bottomRail }: UpAndDown, top: Length): Sum =>
  sumOf(
    plus('frame-opening-height', middles.value, middles),
    plus('bottom-rail', bottomRail.value, bottomRail),
    plus('top-rail', top),
  );

/** A frame as high as the case off its feet. */
function framedToCase({ case: c, height: outside }: Sizes): UpAndDown {
  const { top, bottom } = framePieces(c);
  const feet = c.feet ?? zero;
  const height = sumOf(plus('outside-height', outside.value, outside), minus('floor-to-case', feet));
  return {
    lowEnd: feet,
    railLow: feet,
    height,
    middles: sumOf(
      plus('frame-height', height.value, height),
      minus('top-rail', top),
      minus('bottom-rail', bottom),
    ),
    bottomRail: given('bottom-rail', bottom),
  };
}

const framePieces = (c: Case): FaceFrame['pieces'] => ({
  stile: c.stile ?? usualOf(c).stile,
  middle: c.middle ?? usualOf(c).stile,
  top: c.topRail ?? usualOf(c).rail,
  bottom: c.bottomRail ?? usualOf(c).rail,
});

/** What is left of each bay between the stiles: as built where that is taken up. */
function frameOpenings(
  sizes: Sizes,
  over: Length,
  { stile, middle }: FaceFrame['pieces'],
): FaceFrame['openings'] {
  const { case: c, thick } = sizes;
  const side = sumOf(plus('stile', stile), minus('overhang', over), minus('side', thick('side')));
  const between = {
    value: half(subtract(middle, thick('partition'))),
    terms: [plus('middle-stile', middle), minus('partition', thick('partition'))],
    shares: 2,
  };
  return sizes.bays.map((_, k) => {
    const [left, right] = [k === 0 ? side : between, k === c.partitions ? side : between];
    const bay = sizes.real(k + 1);
    const built = c.built[`frame${k + 1}w`]?.used;
    const reckoned = sumOf(
      plus('bay', bay.value, bay),
      minus('covered-left', left.value, left),
      minus('covered-right', right.value, right),
    );
    return { left, right, wide: built ? given('frame-opening-as-built', built) : reckoned };
  });
}

/** A frame that leaves no opening, or that cannot stand as said. */
export function frameProblems(sizes: Sizes): readonly CaseProblem[] {
  const frame = frameOf(sizes);
  const high = frame.middles.value;
  const least = pastTop(sizes.case);
  const open = subtract(least, frame.pieces.top);
  return [
    ...frame.openings.flatMap(({ wide }, k) =>
      isPositive(wide.value) ? [] : [{ code: 'frame-closed', bay: k + 1, by: negate(wide.value) } as const],
    ),
    ...(isPositive(high) ? [] : [{ round: 'front', code: 'frame-shut', by: negate(high) } as const]),
    ...(isPositive(open) ? [{ round: 'front', code: 'rail-over-top', by: open, least } as const] : []),
    ...stilesProblems(sizes, frame.bottomRail),
  ];
}

/**
 * Where there are drawers the sill over the bottom, a top that hangs into the opening, and packing under slides where
 * the frame stands into a bay.
 */
export function frameWarnings(
  sizes: Sizes,
  frame: FaceFrame,
  drawers: ReadonlySet<number>,
): readonly CaseWarning[] {
  const sill: readonly CaseWarning[] =
    drawers.size > 0 && isPositive(frame.sill.value) ? [{ code: 'sill', sill: frame.sill.value }] : [];
  const packing = frame.openings.flatMap(({ left, right }, k): readonly CaseWarning[] =>
    drawers.has(k + 1) && (less(zero, left.value) || less(zero, right.value))
      ? [{ code: 'packing', bay: k + 1, left: left.value, right: right.value }]
      : [],
  );
  const low = negate(frame.head.value);
  const head: readonly CaseWarning[] =
    drawers.size > 0 && isPositive(low)
      ? [{ code: 'top-in-opening', by: low, least: add(frame.pieces.top, low) }]
      : [];
  return [...sill, ...head, ...packing, ...lockedTrays(sizes, frame)];
}

/**
 * A tray is wider than its bay: a frame piece may stand no farther in than the groove floor, at each side, and the
 * frame's opening must pass the tray.
 */
function lockedTrays(sizes: Sizes, frame: FaceFrame): readonly CaseWarning[] {
  const { case: c, thick } = sizes;
  const over = c.overhang ?? usualOf(c).overhang;
  return c.inside
    .filter((i) => i.kind === 'trays' && i.depth)
    .flatMap((i) => {
      const depth = i.depth ?? zero;
      const opening = frame.openings[i.bay - 1];
      if (!opening) return [];
      const atSide = subtract(add(over, thick('side')), depth);
      const beside = grooveBeside(sizes, i.bay);
      const walls = [
        { side: 'left', outer: i.bay === 1, other: beside.left },
        { side: 'right', outer: i.bay === c.partitions + 1, other: beside.right },
      ] as const;
      return walls.flatMap(({ side, outer, other }): readonly CaseWarning[] => {
        // the frame centres its middle stiles; set off centre one may be wider
        const widest = outer ? atSide : subtract(thick('partition'), times(longest(depth, other), 2n));
        const free = outer ? undefined : subtract(subtract(thick('partition'), depth), other);
        const wide = outer ? frame.pieces.stile : frame.pieces.middle;
        if (!less(widest, wide)) return [];
        return [
          {
            code: 'trays-locked',
            stile: outer ? side : 'middle',
            bay: i.bay,
            widest,
            ...(free ? { free } : {}),
            wide,
            comesOff: outer ? c.stilesOff : c.middleOff,
          },
        ];
      });
    });
}

/** Groove depth in the far face of the partitions at either side of a bay: what a middle stile must clear as well. */
function grooveBeside({ case: c }: Sizes, bay: number): { readonly left: Length; readonly right: Length } {
  const deep = (b: number) => c.inside.find((i) => i.kind === 'trays' && i.bay === b)?.depth ?? zero;
  return { left: deep(bay - 1), right: deep(bay + 1) };
}
