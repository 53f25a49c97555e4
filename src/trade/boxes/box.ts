import {
  absolute,
  add,
  half,
  inches,
  isPositive,
  type Length,
  less,
  negate,
  shortest,
  subtract,
  times,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import type { Rounded } from '../../length/round';
import { markAt, type Tape } from '../../length/tape';
import { given, minus, plus, type Sum, sumOf } from '../carcass/sum';

/** A drawer box as decided: half-blind front, back housed in the sides. Inches, thicknesses as measured. */
export type BoxPlan = {
  /** The least of front and back, and what a slide takes at each side. */
  readonly opening: Length;
  readonly clearance: Length;
  readonly tape: Tape;
  readonly depth: Length;
  readonly height: Length;
  readonly side: Length;
  readonly front: Length;
  readonly back: Length;
  readonly bottom: Length;
  /** Left of the front over the side ends. */
  readonly lap: Length;
  /** How far the back is let into the sides, and how far they run on behind it. */
  readonly backDado: Length;
  readonly behind: Length;
  /** `up` from the lower edge; `fit` over the bottom. */
  readonly groove: { readonly deep: Length; readonly up: Length; readonly fit: Length };
  /** Bottom less than groove floor to groove floor. */
  readonly ease: Length;
  readonly bottomHow: 'captured' | 'slid-in';
};

/** A drawer box worked out. Inches, each with its sum. */
export type Box = {
  /** Rounded down: too narrow can be packed, too wide binds. Everything else stands on the mark. */
  readonly width: { readonly sum: Sum; readonly mark: Rounded };
  readonly side: Sum;
  /** How far the tails reach. */
  readonly tail: Length;
  readonly front: Sum;
  readonly back: Sum;
  readonly backHeight: Sum;
  readonly insideWide: Sum;
  readonly insideDeep: Sum;
  readonly bottomWide: Sum;
  readonly bottomDeep: Sum;
  readonly grooveWide: Length;
};

export type BoxError =
  | { readonly code: 'not-positive'; readonly field: 'opening' | 'depth' | 'height' }
  | { readonly code: 'lap-too-deep'; readonly lap: Length; readonly front: Length }
  | {
      readonly code: 'groove-through';
      readonly which: 'side' | 'front';
      readonly deep: Length;
      readonly thickness: Length;
    }
  | { readonly code: 'inside-gone'; readonly by: Length }
  | { readonly code: 'inside-depth-gone'; readonly by: Length }
  | { readonly code: 'back-gone'; readonly by: Length };

/**
 * C7.1–7.4: the pieces of a drawer box.
 *
 * @returns sizes in inches, or what keeps it from being made
 * @example boxOf(plan).value.side.value // EX 7a: 15 27/32
 */
export function boxOf(plan: BoxPlan): Result<Box, BoxError> {
  const wrong = faultOf(plan);
  if (wrong) return err(wrong);
  const box = work(plan);
  if (!isPositive(box.insideWide.value))
    return err({ code: 'inside-gone', by: negate(box.insideWide.value) });
  if (!isPositive(box.insideDeep.value))
    return err({ code: 'inside-depth-gone', by: negate(box.insideDeep.value) });
  if (!isPositive(box.backHeight.value)) return err({ code: 'back-gone', by: negate(box.backHeight.value) });
  return ok(box);
}

function faultOf(plan: BoxPlan): BoxError | undefined {
  const field = (['opening', 'depth', 'height'] as const).find((f) => !isPositive(plan[f]));
  if (field) return { code: 'not-positive', field };
  if (!less(plan.lap, plan.front)) return { code: 'lap-too-deep', lap: plan.lap, front: plan.front };
  const { deep } = plan.groove;
  const which = (['side', 'front'] as const).find((f) => !less(deep, plan[f]));
  return which && { code: 'groove-through', which, deep, thickness: plan[which] };
}

function work(plan: BoxPlan): Box {
  const { groove } = plan;
  const sum = sumOf(plus('opening', plan.opening), minus('a slide at each side', times(plan.clearance, 2n)));
  const mark = markAt(sum.value, plan.tape, 'floor');
  const insideWide = sumOf(plus('box width', mark.value, sum), minus('two sides', times(plan.side, 2n)));
  const insideDeep = sumOf(
    plus('box depth', plan.depth),
    minus('front', plan.front),
    minus('back', plan.back),
    minus('behind the back', plan.behind),
  );
  const slid = plan.bottomHow === 'slid-in';
  const full = given('box height', plan.height);
  return {
    width: { sum, mark },
    side: sumOf(plus('box depth', plan.depth), minus('lap of the front', plan.lap)),
    tail: subtract(plan.front, plan.lap),
    front: sumOf(plus('box width', mark.value, sum)),
    back: sumOf(
      plus('inside width', insideWide.value, insideWide),
      plus('into both sides', times(plan.backDado, 2n)),
    ),
    backHeight: slid
      ? sumOf(plus('box height', plan.height), minus('groove up', groove.up), minus('bottom', plan.bottom))
      : full,
    insideWide,
    insideDeep,
    bottomWide: sumOf(
      plus('inside width', insideWide.value, insideWide),
      plus('two groove depths', times(groove.deep, 2n)),
      minus('ease', plan.ease),
    ),
    bottomDeep: slid ? slidIn(plan, insideDeep) : captured(plan, insideDeep),
    grooveWide: add(plan.bottom, groove.fit),
  };
}

const captured = ({ groove, ease }: BoxPlan, inside: Sum): Sum =>
  sumOf(
    plus('inside depth', inside.value, inside),
    plus('two groove depths', times(groove.deep, 2n)),
    minus('ease', ease),
  );

const slidIn = ({ groove, back, behind, ease }: BoxPlan, inside: Sum): Sum =>
  sumOf(
    plus('inside depth', inside.value, inside),
    plus('groove in the front', groove.deep),
    plus('under the back', back),
    plus('behind the back', behind),
    minus('ease', ease),
  );

export type BoxWarning =
  | { readonly code: 'lap-thin'; readonly lap: Length }
  | { readonly code: 'groove-deep'; readonly deep: Length; readonly half: Length };

/** A lap under this is thin. Common practice, no source. Inches. */
export const leastLap = inches(1n, 8n);

/** What is worth a look in a box. Limits are common practice, no source. */
export function boxWarnings({ lap, groove, side }: BoxPlan): readonly BoxWarning[] {
  const thin: readonly BoxWarning[] = less(lap, leastLap) ? [{ code: 'lap-thin', lap }] : [];
  const deep: readonly BoxWarning[] = less(half(side), groove.deep)
    ? [{ code: 'groove-deep', deep: groove.deep, half: half(side) }]
    : [];
  return [...thin, ...deep];
}

/** What a slide leaves free at the back. Common practice, no source. Inches. */
export const slideRoom = inches(1n, 8n);

/**
 * Whether a slide goes in: no longer than the room less an eighth.
 *
 * @param room from where its front is screwed to the inside of the back, inches
 * @returns `over`, how much too long it is, inches; 0 or less when it goes in
 */
export function slideFits(slide: Length, room: Length): { readonly fits: boolean; readonly over: Length } {
  const over = subtract(slide, subtract(room, slideRoom));
  return { fits: !isPositive(over), over };
}

/** Front and back of an opening may differ by so much before the slides are packed. Common practice, no source. */
export const packOver = inches(1n, 32n);

/**
 * The opening a box is made for: the lesser of front and back, and whether the slides want packing first.
 *
 * @example openingFor(inches(545n, 32n), inches(543n, 32n)) // least 16 31/32, off 1/16, pack
 */
export function openingFor(
  front: Length | undefined,
  back: Length | undefined,
): { readonly least: Length; readonly off: Length; readonly pack: boolean } | undefined {
  const first = front ?? back;
  if (!first) return undefined;
  const second = back ?? first;
  const off = absolute(subtract(first, second));
  return { least: shortest(first, second), off, pack: less(packOver, off) };
}
