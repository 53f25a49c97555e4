import type { Length } from '../../length/length';
import type { TakesPart } from '../carcass/part-name';
import type { Face } from '../grooves/layout';

/** The reference face of a part that is butted: that which lies toward the end its mate is measured from. */
export type ReferenceFace = 'outside' | 'under' | 'upper' | 'left';

/** Bored in one end of a part or in both, its middle off the face named. */
type InEnds = { readonly at: 'ends'; readonly named: readonly string[]; readonly off: ReferenceFace };

/** Bored across the face of a part, its middle off the end named; of a partition, which face. */
type InFace = { readonly at: 'face'; readonly off: string; readonly face?: Face };

/** A row of holes for what holds a butted joint of a case, bored in a part at one setting. Inches. */
export type FastenerRow = {
  /** Its own on that part, whatever its size. */
  readonly id: string;
  /** What ends there. */
  readonly holds: TakesPart;
  readonly in: InEnds | InFace;
  readonly thick: Length;
  readonly deep: Length;
  /** To the middle of the row. */
  readonly from: Length;
  /** Middles from the front edge. */
  readonly marks: readonly Length[];
};
