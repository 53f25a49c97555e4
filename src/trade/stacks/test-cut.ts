import {
  absolute,
  half,
  inches,
  isNegative,
  isPositive,
  isZero,
  type Length,
  less,
  subtract,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import type { Stack } from './stack';

/** Farther from what the setting should give than this, it is not the setting. Common practice, no source. */
const farthestFromRecipe = inches(1n, 32n);

/**
 * What a test cut put right:
 * - `stack`: how wide the stack cuts; pieces are added or taken out.
 * - `one-wall`: what stands between fence and blade; the fence moves.
 * - `wood-both-sides`: a tongue or other wood left, cut from both sides by turning the work: each move counts twice.
 * - `slot-both-sides`: a slot cut wider at both walls by turning the work: each move counts twice.
 * - `depth`: depth at the floor.
 */
export type TestCut = 'stack' | 'one-wall' | 'wood-both-sides' | 'slot-both-sides' | 'depth';

type Direction =
  | 'add-to-stack'
  | 'take-from-stack'
  | 'away-from-blade'
  | 'toward-blade'
  | 'take-more'
  | 'take-less'
  | 'deeper'
  | 'shallower';

export type Correction = {
  /** want - got, halved where each move counts twice. Inches, signed. */
  readonly change: Length;
  /** The same without its sign: what to move by. */
  readonly by: Length;
  readonly direction: Direction | 'leave-it';
  /** So far off that a chipper is missing or the sheet is another lot. */
  readonly suspicion?: 'check-the-stack';
};

type TestCutError = { readonly code: 'not-positive'; readonly what: 'want' | 'got' };

/** What a measure too small, and one too great, ask for; and whether each move counts twice. */
const rules: Record<
  TestCut,
  { readonly small: Direction; readonly great: Direction; readonly twice: boolean }
> = {
  stack: { small: 'add-to-stack', great: 'take-from-stack', twice: false },
  'one-wall': { small: 'away-from-blade', great: 'toward-blade', twice: false },
  'wood-both-sides': { small: 'take-less', great: 'take-more', twice: true },
  'slot-both-sides': { small: 'take-more', great: 'take-less', twice: true },
  depth: { small: 'deeper', great: 'shallower', twice: false },
};

/**
 * What to change after a test cut.
 *
 * @param cut what was measured; @param want inches, > 0; @param got as measured, inches, > 0
 * @param expected what the setting should have given, inches; what is wanted when not said
 * @example correct('wood-both-sides', { want: inches(13n, 32n), got: inches(27n, 64n) })
 *   // -1/128, take-more: Example 5 of stacks
 */
export function correct(
  cut: TestCut,
  { want, got, expected = want }: { readonly want: Length; readonly got: Length; readonly expected?: Length },
): Result<Correction, TestCutError> {
  if (!isPositive(want)) return err({ code: 'not-positive', what: 'want' });
  if (!isPositive(got)) return err({ code: 'not-positive', what: 'got' });
  const { small, great, twice } = rules[cut];
  const off = subtract(want, got);
  const change = twice ? half(off) : off;
  const direction = isZero(off) ? 'leave-it' : isNegative(off) ? great : small;
  return ok({
    change,
    by: absolute(change),
    direction,
    ...(isFar(got, expected) ? { suspicion: 'check-the-stack' as const } : {}),
  });
}

const isFar = (got: Length, expected: Length): boolean =>
  less(farthestFromRecipe, absolute(subtract(got, expected)));

/**
 * What a set cuts over its nominal sum, to be kept with the set: "this set cuts +.002".
 *
 * @param stack as it stood on the arbor; @param got width of the test cut, inches, > 0
 * @returns inches, signed; refused when the cut is so far off that the stack is not what it was taken for
 * @example learnCorrection(stack, got) // nominal .7145, got .7165: +.002, Example 7 of stacks
 */
export function learnCorrection(
  stack: Pick<Stack, 'nominal' | 'width'>,
  got: Length,
): Result<Length, { readonly code: 'check-the-stack'; readonly off: Length }> {
  if (isFar(got, stack.width)) return err({ code: 'check-the-stack', off: subtract(got, stack.width) });
  return ok(subtract(got, stack.nominal));
}
