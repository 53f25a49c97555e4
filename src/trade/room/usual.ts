import { fromMillimetres, inches, type Length } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Units } from '../../length/units';

/** What stands in until the user says otherwise. Inches. */
export type UsualRoom = {
  /** Over a case, under the ceiling. */
  readonly ceilingGap: Length;
  /** Room for one hand. */
  readonly hand: Length;
  /** How thick a stud is. */
  readonly stud: Length;
  /** Between a fastener and a zone where none may be. */
  readonly keep: Length;
  /** Left free at either side of a case for the scribe. */
  readonly allow: Length;
  /** Between a fastener and an end of its cleat. */
  readonly end: Length;
  /** Where a tape is started that is read from a burned mark. */
  readonly burned: Length;
};

/**
 * The usual figures of a room: 1/4 under the ceiling, 1 for a hand, studs of 1 1/2, 2 off pipes and wires, 1/2 for the
 * scribe, 2 off the end of a cleat, a tape started at 1. All common practice, no source.
 *
 * @param units of the job: in millimetres 6, 25, 40, 50, 12, 50 and 100
 * @returns inches
 * @example usualRoom('in').hand // 1
 */
export const usualRoom = (units?: Units): UsualRoom => ({
  ceilingGap: figureIn(units, inches(1n, 4n)),
  hand: figureIn(units, inches(1n)),
  stud: figureIn(units, inches(3n, 2n)),
  keep: figureIn(units, inches(2n)),
  allow: figureIn(units, inches(1n, 2n)),
  end: figureIn(units, inches(2n)),
  burned: units === 'mm' ? fromMillimetres(100n) : inches(1n),
});
