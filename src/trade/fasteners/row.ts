import type { Length } from '../../length/length';
import type { TakesPart } from '../carcass/part-name';
import type { Face } from '../grooves/layout';
import type { BiscuitNo } from './biscuits';

/**
 * The reference face of a part that is butted: that which lies toward the end its mate is measured from. Slant screws
 * go into a side from `inside`, where they are not seen.
 */
export type ReferenceFace = 'outside' | 'inside' | 'under' | 'upper' | 'left';

/** Bored in one end of a part or in both, its middle off the face named. */
type InEnds = { readonly at: 'ends'; readonly named: readonly string[]; readonly off: ReferenceFace };

/** Bored across the face of a part, its middle off the end named; of a partition, which face. */
type InFace = { readonly at: 'face'; readonly off: string; readonly face?: Face };

/** Holes slanted back from the end into the face named, for screws. Inches. */
type SlantHoles = {
  /** From the end back to the seat of the head, along the screw. */
  readonly seat: Length;
  /** The same square to the end, and how far back the line of the screw meets the face. */
  readonly seatBack: Length;
  readonly meets: Length;
};

/** A row of holes or slots for what holds a butted joint of a case, cut in a part at one setting. Inches. */
export type FastenerRow = {
  /** Its own on that part, whatever its size. */
  readonly id: string;
  /** What ends there. */
  readonly holds: TakesPart;
  readonly in: InEnds | InFace;
  /** How wide a hole is, or how thick a slot; of slant screws their heads. */
  readonly thick: Length;
  /** How long a slot is along the row; as long as wide where left out. */
  readonly long?: Length;
  /** Into the face or the end; of slanted holes square to the end. */
  readonly deep: Length;
  /** Slots, for biscuits of that number. */
  readonly biscuit?: BiscuitNo;
  readonly slant?: SlantHoles;
  /** To the middle of the row. */
  readonly from: Length;
  /** Middles from the front edge. */
  readonly marks: readonly Length[];
};
