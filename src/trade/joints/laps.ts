import {
  absolute,
  add,
  half,
  howMany,
  inches,
  isNegative,
  isPositive,
  type Length,
  less,
  over,
  subtract,
  times,
  zero,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { wholePart } from '../../length/round';

/** Faces that step by more than this are put right before the glue. Common practice, no source. */
const mostStep = inches(1n, 64n);

type LapError =
  | { readonly code: 'not-positive'; readonly what: 'thickness' | 'depth' | 'width' }
  /** The lap goes through, or leaves nothing: by how much it is too deep. */
  | { readonly code: 'depth-through'; readonly part: 'under' | 'over' | 'both'; readonly by: Length };

export type LapPair = {
  /** Thickness left under the lap. */
  readonly left: Length;
  /** What the faces step by, t - 2d: > 0 laps too shallow, < 0 too deep. */
  readonly step: Length;
  /** Both sets still uncut: deepen each by this (< 0: make shallower), to `evenDepth`. */
  readonly deepenEach: Length;
  readonly evenDepth: Length;
  /** One set already cut at this depth: the other takes all of the step, to this depth. */
  readonly otherDepth: Length;
  readonly warn: boolean;
};

/**
 * A half-lap pair of one thickness, both cut to one depth: step t - 2d, and how it is put right.
 *
 * @param thickness of both, inches, > 0; @param depth of the laps as cut or set, inches, > 0, < thickness
 * @example lapPair(inches(49n, 32n), inches(3n, 4n)) // step 1/32, both 1/64 deeper: Example 1 of joints
 */
export function lapPair(thickness: Length, depth: Length): Result<LapPair, LapError> {
  if (!isPositive(thickness)) return err({ code: 'not-positive', what: 'thickness' });
  if (!isPositive(depth)) return err({ code: 'not-positive', what: 'depth' });
  const left = subtract(thickness, depth);
  if (!isPositive(left)) return err({ code: 'depth-through', part: 'both', by: subtract(zero, left) });
  const step = subtract(left, depth);
  return ok({
    left,
    step,
    deepenEach: half(step),
    evenDepth: half(thickness),
    otherDepth: left,
    warn: less(mostStep, absolute(step)),
  });
}

/** A member as measured, never nominal. Inches, > 0. */
type Member = { readonly thickness: Length; readonly width: Length };

type FlushLap = {
  readonly depthUnder: Length;
  readonly depthOver: Length;
  /** How long the lap is along each member: the width of the other. */
  readonly longUnder: Length;
  readonly longOver: Length;
  /**
   * What the back of the under member stands out past the other (< 0: stands back). Not 0: measure from the show
   * face.
   */
  readonly backStep: Length;
};

/**
 * Half-laps flush on the show face: the two depths make the thickness of the member that lies over.
 *
 * @param under cut into its show face; @param over cut into its back
 * @param depthUnder depth in the under member, inches, where it is given or already cut; half of `over` when not
 * @returns inches, or which member would be cut through
 * @example flushLaps({ under, over }) // 1 17/32 under 1 1/2, both 3/4: Example 5 of joints
 */
export function flushLaps({
  under,
  over,
  depthUnder = half(over.thickness),
}: {
  readonly under: Member;
  readonly over: Member;
  readonly depthUnder?: Length;
}): Result<FlushLap, LapError> {
  if (![under, over].every((m) => isPositive(m.thickness)))
    return err({ code: 'not-positive', what: 'thickness' });
  if (![under, over].every((m) => isPositive(m.width))) return err({ code: 'not-positive', what: 'width' });
  if (!isPositive(depthUnder)) return err({ code: 'not-positive', what: 'depth' });
  const depthOver = subtract(over.thickness, depthUnder);
  // Nothing left to cut in the over member: the under one is let in whole, which is no lap.
  if (!isPositive(depthOver))
    return err({ code: 'depth-through', part: 'over', by: subtract(zero, depthOver) });
  if (!less(depthUnder, under.thickness))
    return err({ code: 'depth-through', part: 'under', by: subtract(depthUnder, under.thickness) });
  return ok({
    depthUnder,
    depthOver,
    longUnder: over.width,
    longOver: under.width,
    backStep: subtract(under.thickness, over.thickness),
  });
}

/** A frame of two rails and cross members lapped into them, the outer two flush with the rails' ends. Inches. */
export type LappedFramePlan = {
  /** Along the rails, which run full length. */
  readonly long: Length;
  /** Across, outside to outside of the rails. */
  readonly deep: Length;
  /** Width of a cross member. */
  readonly cross: Length;
  /** How many, the two at the ends with them. */
  readonly count: number;
  /** Width of a rail; that of a cross member when not said. */
  readonly rail?: Length;
  /** What a cross member stops short of the outside at each end; 0 when not said. */
  readonly setBack?: Length;
};

type LappedFrame = {
  /** Between two cross members. */
  readonly clear: Length;
  /** Near edges along the rails, exact. The lap runs from here for the width of the cross member. */
  readonly nears: readonly Length[];
  readonly crossLength: Length;
  /** Between the shoulders of a cross member, whatever it is set back. */
  readonly shoulders: Length;
};

type FrameError =
  | { readonly code: 'count-not-whole' }
  | { readonly code: 'not-positive'; readonly what: 'long' | 'deep' | 'cross' | 'rail' }
  /** The cross members take more than the rails are long. */
  | { readonly code: 'crosses-overlap'; readonly by: Length; readonly fit: number }
  | { readonly code: 'rails-meet'; readonly by: Length }
  /** Set back so far that nothing laps, or not back at all. */
  | { readonly code: 'set-back'; readonly most: Length };

const mostCrosses = 1000;

/**
 * A lapped frame: clear = (long - n cross)/(n - 1), near edges k (clear + cross). The rails are marked clamped
 * together.
 *
 * @param frame lengths in inches, > 0; count whole, 2 to 1000; setBack >= 0, < rail
 * @returns inches, exact; or by how much the cross members overlap, and how many fit
 * @example lappedFrame(frame) // clear 9 7/24, shoulders 12 1/4: Example 4 of joints
 */
export function lappedFrame(frame: LappedFramePlan): Result<LappedFrame, FrameError> {
  const { long, deep, cross, count, rail = cross, setBack = zero } = frame;
  const refused = frameRefusal({ long, deep, cross, count, rail, setBack });
  if (refused) return err(refused);
  const clear = over(subtract(long, times(cross, BigInt(count))), BigInt(count - 1));
  const pitch = add(clear, cross);
  return ok({
    clear,
    nears: Array.from({ length: count }, (_, k) => times(pitch, BigInt(k))),
    crossLength: subtract(deep, times(setBack, 2n)),
    shoulders: subtract(deep, times(rail, 2n)),
  });
}

function frameRefusal({
  long,
  deep,
  cross,
  count,
  rail,
  setBack,
}: Required<LappedFramePlan>): FrameError | undefined {
  for (const [what, x] of [
    ['long', long],
    ['deep', deep],
    ['cross', cross],
    ['rail', rail],
  ] as const)
    if (!isPositive(x)) return { code: 'not-positive', what };
  if (!Number.isInteger(count) || count < 2 || count > mostCrosses) return { code: 'count-not-whole' };
  const taken = times(cross, BigInt(count));
  const fit = Number(wholePart(howMany(long, cross)));
  if (less(long, taken)) return { code: 'crosses-overlap', by: subtract(taken, long), fit };
  const rails = times(rail, 2n);
  if (!less(rails, deep)) return { code: 'rails-meet', by: subtract(rails, deep) };
  return isNegative(setBack) || !less(setBack, rail) ? { code: 'set-back', most: rail } : undefined;
}
