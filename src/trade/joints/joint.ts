import type { Length } from '../../length/length';
import type { Hugs, StockRole } from '../carcass/case';
import type { Along, Lap, Line, Notch, Rabbet } from '../carcass/part';
import type { Wide } from '../grooves/board';
import type { Face } from '../grooves/layout';
import type { Side } from '../setups/on';

/** A place of a part that another goes into. Inches. */
export type Seat = {
  readonly id: string;
  /** What goes in: which part, of several its number, its stock, and how thick it lies along the part. */
  readonly called: StockRole;
  readonly no?: number | undefined;
  readonly fits?: string | undefined;
  readonly thick: Length;
  /** So much wider than that it is cut; nothing where left out. */
  readonly room?: Length;
  readonly depth: Length;
  /** What goes in is a tongue at one of its faces, so thick: the groove is for that alone. */
  readonly tongue?: { readonly thick: Length; readonly hugs: Hugs };
  readonly face?: Face;
  /** Its near face, from the datum of the part; of a groove along an edge, from that edge. */
  readonly near?: Length;
  /** The end or edge that it lies flush with; that a groove runs along. */
  readonly flush?: Side;
  /** Stopped: where it begins and ends along that edge; the whole edge where left out. */
  readonly from?: Length;
  readonly to?: Length;
};

/** What is cut in the part that another goes into. */
type JointCut = {
  readonly wides?: readonly Wide[];
  readonly rabbets?: readonly Rabbet[];
  readonly notches?: readonly Notch[];
  readonly laps?: readonly Lap[];
  readonly along?: readonly Along[];
  /** Nothing is cut: where it stands is marked. */
  readonly lines?: readonly Line[];
};

/** What an end is joined to: how thick it is, how far past its outer face the end stands, room under it. Inches. */
type Mate = { readonly thick: Length; readonly past: Length; readonly room: Length };

/** How one part goes into another. */
export type Joint = {
  /** How far what goes in reaches past the face of the other, inches: so much longer it is at that end. */
  readonly reach: (depth: Length, mate?: Mate) => Length;
  readonly cut: (seat: Seat) => JointCut;
  /** What reaches in is seen from the front. */
  readonly seen: boolean;
  /** It comes out at the other face of a part so thick: it cannot be cut. */
  readonly goesThrough: (depth: Length, thickness: Length) => boolean;
  /** It can be cut, but begins to weaken a part so thick. */
  readonly weakens: (depth: Length, thickness: Length) => boolean;
};

/** A seat, and the joint it is cut for. */
export type Met = { readonly joint: Joint; readonly seat: Seat };

/**
 * Everything that is cut in a part for what goes into it, kind by kind, in the order of the seats.
 *
 * @param met its seats with their joints
 * @example cutsFor([{ joint: rabbet, seat }]).rabbets.length // 1
 */
export const cutsFor = (met: readonly Met[]): Required<JointCut> => {
  const cuts = met.map(({ joint, seat }) => joint.cut(seat));
  return {
    wides: cuts.flatMap((cut) => cut.wides ?? []),
    rabbets: cuts.flatMap((cut) => cut.rabbets ?? []),
    notches: cuts.flatMap((cut) => cut.notches ?? []),
    laps: cuts.flatMap((cut) => cut.laps ?? []),
    along: cuts.flatMap((cut) => cut.along ?? []),
    lines: cuts.flatMap((cut) => cut.lines ?? []),
  };
};
