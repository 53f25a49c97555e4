import type { Bank } from '../../fronts/bank';
import { halfBlind } from './half-blind';
import type { DrawerJoint } from './joint';

/** Every drawer joint. Once a bank may choose, its id is stored: no spelling is ever changed. */
const drawerJoints = { 'half-blind': halfBlind } as const satisfies Readonly<Record<string, DrawerJoint>>;

/** The joint of a bank: there is one so far, so nothing says which. */
export const drawerJointOf = (_: Bank): DrawerJoint => drawerJoints['half-blind'];
