import type { Length } from '../../../length/length';
import type { EndCut, Rabbet } from '../../carcass/part';
import type { Dowels } from '../../fasteners/dowels';
import type { Bank } from '../../fronts/bank';
import type { Sum, Term } from '../../sums/sum';
import type { BoxError, BoxPlan, BoxWarning } from '../box-plan';
import type { DowelRow } from '../dowel-rows';
import type { Fingers, GrooveAmong } from '../fingers';
import type { SideEnd, TailChoice } from '../tail-choice';

/**
 * How a joint lies on the front end of a side: tails one over another, fingers and the groove among them, or nothing
 * that is to be laid out up it (`corner`).
 */
export type JointLayout =
  | ({ readonly kind: 'tails' } & TailChoice)
  | { readonly kind: 'fingers'; readonly fingers: Fingers; readonly groove: GrooveAmong }
  | ({ readonly kind: 'doweled' } & Doweled)
  | { readonly kind: 'corner' };

/** The dowels of front and back, and whether the front stands over the ends of the sides. */
type Doweled = { readonly front: Dowels; readonly back: Dowels; readonly over: boolean };

/** What is cut at the ends of the pieces; nothing where they meet as they are ripped. */
type JointCuts = {
  readonly side?: EndCut;
  readonly front?: EndCut;
  /** Rabbets across the ends of the front. */
  readonly rabbets?: readonly Rabbet[];
  /** Holes for dowels, by the piece they are bored in. */
  readonly dowels?: Readonly<Record<'side' | 'front' | 'back', readonly DowelRow[]>>;
};

/** What its pieces are joined at: how far they reach into each other, their thicknesses, and the part of the side. */
export type JointAt = {
  readonly reach: Length;
  readonly side: string;
  readonly plan: BoxPlan;
  readonly layout: JointLayout;
  readonly sideStock: string | undefined;
};

/** How the front of a drawer box is joined to its sides. Lengths are inches. */
export type DrawerJoint = {
  /** What of the plan follows from the joint; as it is where left out. */
  readonly planned?: (bank: Bank, plan: BoxPlan) => BoxPlan;
  /** The back stands between the sides, flush with their ends; in dadoes of them where left out. */
  readonly back?: 'between';
  /** The end of a side the dado for the back is measured from; `back` where left out. */
  readonly dadoFrom?: 'front' | 'back';
  /** Length of a side, from the depth of the box. */
  readonly side: (plan: BoxPlan) => Sum;
  /** Length of the box front, from the width of the box and what is clear between its sides. */
  readonly front: (plan: BoxPlan, box: { readonly width: Term; readonly insideWide: Sum }) => Sum;
  /**
   * Where the front of the box is that of the drawer: whether it may stand past the sides of the box, or is as wide as
   * that is; not at all where the joint would be seen from in front.
   */
  readonly ownFront?: (plan: BoxPlan) => 'past' | 'flush' | undefined;
  /** How far side and front reach into each other. */
  readonly reach: (plan: BoxPlan) => Length;
  /** Why it cannot be made in these thicknesses. */
  readonly fault: (plan: BoxPlan) => BoxError | undefined;
  /** What is worth a look where it can. */
  readonly warnings: (plan: BoxPlan) => readonly BoxWarning[];
  /** What of its layout is said so that nothing can be made. */
  readonly problems: (bank: Bank) => readonly JointProblem[];
  /** The greatest height it can be cut at that is no more than this. */
  readonly height: (bank: Bank, most: Length) => Length;
  /** A height that was given comes to that as well. */
  readonly trims?: true;
  readonly layOut: (bank: Bank, end: SideEnd, plan: BoxPlan) => JointLayout;
  /** In what order they are cut is said by `markedFrom`, which names the part of the side. */
  readonly cuts: (bank: Bank, at: JointAt) => JointCuts;
};

/** A template without a pitch. */
export type JointProblem = { readonly code: 'pitch-not-positive' };
