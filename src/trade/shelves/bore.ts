import type { Length } from '../../length/length';
import type { Tape } from '../../length/tape';
import type { Face } from '../grooves/layout';

/** What rows of holes are bored with: a drill press and its fence, or a drill by hand in a template. */
export const boredWith = ['template', 'press'] as const;
export type BoredWith = (typeof boredWith)[number];

/** The row near the front edge, or the one behind it. */
export type RowName = 'front' | 'rear';

/** A row of holes in a face of a part. Inches. */
export type Bore = {
  readonly id: string;
  /** Rows of other shelves that lie in the same holes. */
  readonly also?: readonly string[];
  /** The loose shelves it holds; empty where it was added by hand. */
  readonly inside: string;
  readonly row: RowName | 'own';
  readonly face: Face;
  /** The middle of its holes from the front edge, or from `edge`. */
  readonly off: Length;
  /** The edge it stands off, where that is not the front one. */
  readonly edge?: string;
  readonly dia: Length;
  readonly deep: Length;
  readonly pitch: Length;
  /** Holes in millimetres, whatever the tape: a pitch of 32 mm. */
  readonly metric: boolean;
  /** The end they are marked from, where that is not the bottom one. */
  readonly end?: string;
  /** Middles of the holes from the reference end, by number from the bottom up. */
  readonly holes: readonly Hole[];
  /** Numbers left out: too near a groove, here or in the wall it faces. */
  readonly leftOut: readonly number[];
  readonly by: BoredWith;
};

/** A hole by its number in its row, its middle from the reference end. Inches. */
type Hole = { readonly no: number; readonly at: Length };

/** The tape its holes are marked by: holes 32 mm apart are marked in millimetres on any job. */
export const rowTape = ({ metric }: Pick<Bore, 'metric'>, tape: Tape): Tape =>
  metric && tape !== '1 mm' ? '1/2 mm' : tape;
