import type { Length } from '../../../length/length';
import type { EndCut } from '../../carcass/part';
import type { Bank } from '../../fronts/bank';
import type { Sum, Term } from '../../sums/sum';
import type { BoxError, BoxPlan, BoxWarning } from '../box-plan';
import type { SideEnd, TailChoice } from '../tail-choice';

/** How a joint lies on the front end of a side: tails one over another, or nothing that is to be laid out. */
export type JointLayout = ({ readonly kind: 'tails' } & TailChoice) | { readonly kind: 'plain' };

/** What is cut at the ends of the pieces; nothing where they meet as they are ripped. */
type JointCuts = { readonly side?: EndCut; readonly front?: EndCut };

/** How the front of a drawer box is joined to its sides. Lengths are inches. */
export type DrawerJoint = {
  /** Length of a side, from the depth of the box. */
  readonly side: (plan: BoxPlan) => Sum;
  /** Length of the box front, from the width of the box and what is clear between its sides. */
  readonly front: (plan: BoxPlan, box: { readonly width: Term; readonly insideWide: Sum }) => Sum;
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
  readonly layOut: (bank: Bank, end: SideEnd) => JointLayout;
  /** In what order they are cut is said by `markedFrom`, which names the part of the side. */
  readonly cuts: (bank: Bank, at: { readonly reach: Length; readonly side: string }) => JointCuts;
};

/** A template without a pitch. */
export type JointProblem = { readonly code: 'pitch-not-positive' };
