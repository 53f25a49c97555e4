import type { Length } from '../length/length';
import type { Bank } from '../trade/fronts/bank';
import { type Corner, drawerJointIds, fingersHow, frontsAt, frontsMade } from '../trade/fronts/corner';
import { edits } from './edits';
import type { Job } from './job';
import { saidFields } from './said-fields';
import { children, named, pick, type Tree } from './tree';

/** What each thing said of a joint is kept under. Stored: no spelling is ever changed. */
const keptAs: Readonly<Record<keyof Corner, string>> = {
  boxJoint: 'joint',
  frontRabbet: 'rabbet',
  fingers: 'ends',
  finger: 'finger',
  fingerStep: 'step',
  fingerPlay: 'play',
  frontAt: 'front',
  frontIs: 'is',
  dowel: 'dowel',
  dowelLong: 'dowellong',
};

const oneOf = <T extends string>(words: readonly T[], said: string | undefined): T | undefined =>
  words.find((word) => word === said);

/** A bank with what is said of its joint, which later screens alone ask for. */
export function withBoxJoint({ tree }: Pick<Job, 'tree'>, bank: Bank): Bank {
  const own: Tree | undefined = children(tree, 'banks').find(([id]) => id === bank.id)?.[1];
  const said = own && children(own, 'corner');
  return said && said.length > 0 ? { ...bank, ...cornerIn(said) } : bank;
}

function cornerIn(said: readonly (readonly [string, Tree])[]): Corner {
  const found = named(said, (node) => pick(saidFields, node));
  const size = (name: keyof Corner): Length | undefined => found[keptAs[name]]?.size;
  return {
    boxJoint: oneOf(drawerJointIds, found[keptAs.boxJoint]?.how),
    fingers: oneOf(fingersHow, found[keptAs.fingers]?.how),
    frontRabbet: size('frontRabbet'),
    finger: size('finger'),
    fingerStep: size('fingerStep'),
    fingerPlay: size('fingerPlay'),
    frontAt: oneOf(frontsAt, found[keptAs.frontAt]?.how),
    frontIs: oneOf(frontsMade, found[keptAs.frontIs]?.how),
    dowel: size('dowel'),
    dowelLong: size('dowelLong'),
  };
}

/** Whether a field of a bank is one of its joint. */
export const isOfJoint = (field: string): field is keyof Corner => Object.hasOwn(keptAs, field);

/** What is kept as a word; all else is a size. */
const words: readonly (keyof Corner)[] = ['boxJoint', 'fingers', 'frontAt', 'frontIs'];

/** The edits that change how box fronts are joined to their sides; `undefined` takes a value away. */
export const editBoxJoint = (bank: string, patch: Corner) =>
  Object.entries(patch).flatMap(([name, value]) => {
    const word = words.includes(name as keyof Corner);
    const at = `banks/${bank}/corner/${keptAs[name as keyof Corner]}/`;
    return edits(at, saidFields, word ? { how: value as string } : { size: value as Length });
  });
