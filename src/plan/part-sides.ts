import type { Part } from '../trade/carcass/part';
import { type FaceName, placingOf } from '../trade/setups/placing';
import { workOn } from './part-work';
import type { Plan } from './plan';

/** What tells how a part lies: its reference end, a face and an edge it is laid by, the end that is up. */
export type PartSides = {
  readonly end: string;
  readonly face?: FaceName | undefined;
  readonly edge?: string | undefined;
  readonly up?: string | undefined;
  /** Looking at that face with that edge up, where the reference end is; nothing where their names do not tell. */
  readonly endAt?: 'left' | 'right' | undefined;
};

/** The one of two edges a label names, so that pieces that mirror each other are told alike. */
const named: Readonly<Record<string, string>> = { back: 'front', top: 'bottom', right: 'left' };

/** @param plan its operations say by which faces and edges the part is laid */
export function partSides(plan: Plan, part: Part): PartSides {
  const laid = workOn(plan, part.id).map(placingOf);
  const laidOn = laid.flatMap((one) => (one.face && one.face.named !== 'good' ? [one.face.named] : []));
  const face = laidOn.find((one) => looks(part, one)) ?? laidOn[0];
  const edges = laid
    .flatMap(({ onFence, leads, toYou }) => [onFence, leads, toYou])
    .flatMap((side) => (side?.at === 'edge' ? [named[side.named] ?? side.named] : []));
  const edge = edges.find((one) => one in ways);
  const { end } = part;
  return {
    end,
    face,
    edge,
    ...(end === 'bottom' ? { up: 'top' } : {}),
    endAt: endAt(part, { face, edge, end }),
  };
}

type Way = readonly [x: number, y: number, z: number];

/** Right, up, and toward whoever stands before the case. */
const ways: Readonly<Record<string, Way>> = {
  ...{
    left: [-1, 0, 0],
    right: [1, 0, 0],
    bottom: [0, -1, 0],
    top: [0, 1, 0],
    back: [0, 0, -1],
    front: [0, 0, 1],
  },
};
const faces: Partial<Record<FaceName, Way>> = {
  ...{ left: [-1, 0, 0], right: [1, 0, 0], upper: [0, 1, 0], under: [0, -1, 0] },
};

/** Where a face looks: the inside of a side looks to the other one. */
function looks({ name: { role } }: Part, face: FaceName): Way | undefined {
  if (face !== 'inside' && face !== 'outside') return faces[face];
  const inward = role === 'left' ? 1 : role === 'right' ? -1 : 0;
  return inward === 0 ? undefined : [face === 'inside' ? inward : -inward, 0, 0];
}

/**
 * Looking at a face with an edge up, what is at the right is the edge's way across what the face looks to.
 *
 * @example the inside of the left side looks right (1, 0, 0), front up (0, 0, 1): the right is (0, 1, 0), its top
 */
function endAt(
  part: Part,
  { face, edge, end }: Pick<PartSides, 'face' | 'edge' | 'end'>,
): 'left' | 'right' | undefined {
  const [out, up, to] = [face && looks(part, face), edge && ways[edge], ways[end]];
  if (!out || !up || !to) return undefined;
  const right = cross(up, out);
  const along = right[0] * to[0] + right[1] * to[1] + right[2] * to[2];
  return along === 0 ? undefined : along > 0 ? 'right' : 'left';
}

const cross = ([a, b, c]: Way, [x, y, z]: Way): Way => [b * z - c * y, c * x - a * z, a * y - b * x];
