import { add, isNegative, isPositive, isZero, type Length, less, subtract, zero } from '../../length/length';
import { markAt } from '../../length/tape';
import { lengthMark } from '../grooves/marks';
import type { CutContext, Figures, GrooveMachine } from './machine';

/** A setting that its machine cannot be set to. Inches. */
export type OutOfReach =
  | {
      readonly code: 'beyond-fence';
      readonly figure: Length;
      readonly capacity: Length;
      /** The same cut set off the end not on the fence now, when that is within reach. */
      readonly fromOther?: Length;
    }
  | { readonly code: 'behind-fence'; readonly figure: Length }
  | {
      readonly code: 'guide-off-board';
      readonly figure: Length;
      /** Where it goes on the other side, when that is on the board. */
      readonly otherSide?: Length;
      /** Off the board on the other side too: the guide needs something laid beside the board to lie on. */
      readonly neither: boolean;
    };

type On = {
  readonly machine: GrooveMachine;
  readonly cutter: Length;
  /** What the near mark of the groove left. Inches. */
  readonly rest: Length;
  readonly job: CutContext;
};

/**
 * Whether what holds the board can stand where a setting wants it: a stop or fence within its reach, a guide on the
 * board.
 *
 * @param s figures of the setting; @param on its machine and the width of the cutter, inches
 * @returns undefined when it can
 */
export function outOfReach(s: Figures, on: On): OutOfReach | undefined {
  const { machine, job } = on;
  if (machine.holds === 'guide') return offTheBoard(s, job.board.length ?? zero);
  // one stop for all the spacers, standing for the farthest cut, the one without
  const spaced = machine.still === 'spacers';
  if (spaced && !isZero(s.figure.value)) return undefined;
  const figure = spaced ? s.nearTeeth.value : s.figure.value;
  const capacity = reachOf(machine, job.shop);
  if (isNegative(figure)) return { code: 'behind-fence', figure };
  if (!capacity || !less(capacity, figure)) return undefined;
  const other = spaced ? undefined : fromOther(s, on);
  const fits = other && isPositive(other) && !less(capacity, other);
  return { code: 'beyond-fence', figure, capacity, ...(fits ? { fromOther: other } : {}) };
}

function reachOf({ holds, above }: GrooveMachine, shop: CutContext['shop']): Length | undefined {
  if (holds === 'fence') return shop.capacity;
  return above ? shop.slidingStop : shop.stopReach;
}

function offTheBoard({ figure: { value: figure }, otherGuide }: Figures, length: Length) {
  const off = (x: Length) => isNegative(x) || less(length, x);
  if (!off(figure)) return undefined;
  const other = otherGuide?.value;
  const neither = other !== undefined && off(other);
  return {
    code: 'guide-off-board',
    figure,
    neither,
    ...(other && !neither ? { otherSide: other } : {}),
  } as const;
}

/** The same cut set off the end not on the stop or fence now. */
function fromOther(s: Figures, { machine, cutter, rest, job }: On): Length {
  if (isOtherEndOn(machine, job.board)) return s.nearTeeth.value;
  const { board, tape } = job;
  const far = subtract(add(s.farTeeth.value, s.farTeeth.rest), rest);
  const teeth = subtract(lengthMark(board, tape).value, far);
  return markAt(add(teeth, machine.rides?.(cutter, job) ?? zero), tape).value;
}

/** The end that is not the reference end is on the stop. */
export const isOtherEndOn = (
  { eitherEnd }: Pick<GrooveMachine, 'eitherEnd'>,
  { against }: Pick<CutContext['board'], 'against'>,
): boolean => eitherEnd === true && against === 'other';
