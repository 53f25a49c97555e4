import type { Bank } from '../../fronts/bank';
import type { DrawerJointId } from '../../fronts/corner';
import { boxJoint } from './box-joint';
import { butted } from './butted';
import { halfBlind } from './half-blind';
import type { DrawerJoint } from './joint';
import { rabbeted } from './rabbeted';

const drawerJoints: Readonly<Record<DrawerJointId, DrawerJoint>> = {
  'half-blind': halfBlind,
  rabbeted,
  'box-joint': boxJoint,
  butted,
};

/** The joint of a bank as it is said; half-blind dovetails where nothing is. */
export const drawerJointOf = ({ boxJoint: said }: Pick<Bank, 'boxJoint'>): DrawerJoint =>
  drawerJoints[said ?? 'half-blind'];
