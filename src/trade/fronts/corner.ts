import type { Length } from '../../length/length';

/**
 * How a box front is joined to its sides where it is not by half-blind dovetails. Stored: no spelling is ever changed.
 */
export const drawerJointIds = ['rabbeted', 'box-joint', 'butted'] as const;

export type DrawerJointId = (typeof drawerJointIds)[number] | 'half-blind';

/**
 * What becomes of the height that whole fingers do not fill: it comes off the top edge, with a finger at both ends
 * (`full`, where nothing is said) or a finger at one and a slot at the other (`any`), or both ends share it (`equal`).
 */
export const fingersHow = ['any', 'equal'] as const;

export type FingersHow = (typeof fingersHow)[number] | 'full';

/** Where a butted front stands, when it is not over the ends of its sides. */
export const frontsAt = ['between'] as const;

/** What the front of a drawer is, when it is not a front of its own fixed to a box: the front of the box. */
export const frontsMade = ['box'] as const;

/** The corner of a box at its front, as decided. What is not said is `undefined`. Inches. */
export type Corner = {
  readonly boxJoint?: (typeof drawerJointIds)[number] | undefined;
  /** How deep the rabbets are that the sides lie in. */
  readonly frontRabbet?: Length | undefined;
  readonly fingers?: (typeof fingersHow)[number] | undefined;
  /** As wide as its cutter, measured in a test slot. */
  readonly finger?: Length | undefined;
  /** From slot to slot, as the sled steps on its pin; how loose a finger is to be in its slot. */
  readonly fingerStep?: Length | undefined;
  readonly fingerPlay?: Length | undefined;
  readonly frontAt?: (typeof frontsAt)[number] | undefined;
  readonly frontIs?: (typeof frontsMade)[number] | undefined;
  /** The dowels at hand; the thickest that goes where nothing is said. */
  readonly dowel?: Length | undefined;
  readonly dowelLong?: Length | undefined;
};

/** Whether the fronts of drawers are those of their boxes. */
export const isOwnFront = ({ frontIs }: Corner): boolean => frontIs === 'box';
