import { bandOf } from '../../length/bands';
import { isPositive, type Length, less, negate, over, subtract } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import type { Units } from '../../length/units';

/** A board measured across before it is cut, and what it then is. Inches, > 0. */
type KerfTest = {
  readonly before: Length;
  /** Cuts of one blade in it, one after the other: one piece each comes off. */
  readonly cuts: number;
  /** The pieces that came off, side by side. */
  readonly pieces: Length;
  /** What is left of the board. */
  readonly rest: Length;
};

export type KerfTestError =
  | { readonly code: 'no-cut' }
  | { readonly code: 'not-positive'; readonly what: 'before' | 'pieces' | 'rest' }
  /** Pieces and rest come to as much as the board, or to so much more: nothing was cut away. */
  | { readonly code: 'nothing-lost'; readonly by: Length }
  /** No blade cuts so narrow, or so wide: by so much a cut beyond what one can. */
  | {
      readonly code: 'too-narrow' | 'too-wide';
      readonly kerf: Length;
      readonly by: Length;
      readonly limit: Length;
    };

/**
 * The kerf a test found: what the board lost, shared over its cuts.
 *
 * @param test inches; @param units of the job: each system has limits of its own
 * @returns inches; `KerfTestError` where it cannot be the kerf of a blade
 * @example kerfFound({ before: inches(6n), cuts: 1, pieces: inches(2n), rest: inches(31n, 8n) }) // 1/8
 */
export function kerfFound(test: KerfTest, units: Units = 'in'): Result<Length, KerfTestError> {
  for (const what of ['before', 'pieces', 'rest'] as const)
    if (!isPositive(test[what])) return err({ code: 'not-positive', what });
  if (test.cuts < 1) return err({ code: 'no-cut' });
  const lost = subtract(subtract(test.before, test.pieces), test.rest);
  if (!isPositive(lost)) return err({ code: 'nothing-lost', by: negate(lost) });
  const kerf = over(lost, BigInt(test.cuts));
  const { least, most } = bandOf('kerf', units);
  if (less(kerf, least)) return err({ code: 'too-narrow', kerf, by: subtract(least, kerf), limit: least });
  if (less(most, kerf)) return err({ code: 'too-wide', kerf, by: subtract(kerf, most), limit: most });
  return ok(kerf);
}
