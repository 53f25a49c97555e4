import { isNegative, type Length } from '../../length/length';
import type { Part } from '../carcass/part';
import type { PartName } from '../carcass/part-name';
import type { Side } from '../setups/on';

export type EdgeName = 'back' | 'front' | 'bottom' | 'top' | 'left' | 'right';

/** Where the faces of a part look, where it stands in the case: to the front and back, left and right, up and down. */
type Stands = 'across' | 'along' | 'flat';

const across: readonly PartName['role'][] = [
  'back',
  'cleat',
  'stile',
  'middle',
  'railtop',
  'railbottom',
  'toe',
  'edgefront',
  'nailer',
  'plinthrail',
  'fillerleft',
  'fillerright',
  'shelfedge',
  'front',
  'boxfront',
  'boxback',
  'blank',
];
const along: readonly PartName['role'][] = [
  'left',
  'right',
  'partition',
  'side',
  'plinthcross',
  'edgeleft',
  'edgeright',
];

export function standsIn(name: PartName): Stands {
  if (name.role === 'inside') return name.kind === 'rail' || name.kind === 'stop' ? 'across' : 'flat';
  return across.includes(name.role) ? 'across' : along.includes(name.role) ? 'along' : 'flat';
}

/** The two sides of it that lie across its ends, that its cuts are set from as a rule first. */
const pairs = {
  sides: ['left', 'right'],
  depth: ['back', 'front'],
  height: ['bottom', 'top'],
} as const satisfies Readonly<Record<string, readonly [EdgeName, EdgeName]>>;

/**
 * What the two long edges of a part are called where it stands: those of a drawer side bottom and top, of a stile left
 * and right. A board laid out by hand has a back and a front one.
 *
 * @example edgesOf(boxSide) // ['bottom', 'top']: its ends are front and back
 */
export function edgesOf({ name, end }: Pick<Part, 'name' | 'end'>): readonly [EdgeName, EdgeName] {
  if (name.role === 'board') return pairs.depth;
  const stands = standsIn(name);
  const between =
    pairs[
      end === 'left' || end === 'right' ? 'sides' : end === 'front' || end === 'back' ? 'depth' : 'height'
    ];
  if (stands === 'across') return between === pairs.sides ? pairs.height : pairs.sides;
  if (stands === 'along') return between === pairs.depth ? pairs.height : pairs.depth;
  return between === pairs.sides ? pairs.depth : pairs.sides;
}

/**
 * The edge that rows of holes stand off: the front one, of a part without one that its cuts are set from as a rule.
 *
 * @example rowEdgeOf(boxSide) // 'bottom'
 */
export function rowEdgeOf(part: Pick<Part, 'name' | 'end'>): EdgeName {
  const [first, second] = edgesOf(part);
  return second === 'front' ? second : first;
}

const opposite: Readonly<Record<string, string>> = {
  bottom: 'top',
  top: 'bottom',
  left: 'right',
  right: 'left',
  front: 'back',
  back: 'front',
};

/** The end that is not measured from. @example otherEnd({ end: 'bottom' }) // 'top' */
export const otherEnd = ({ end }: Pick<Part, 'end'>): string => opposite[end] ?? 'other';

/** What something is moved toward along a part or across it; below zero to where it is reckoned from. */
export function movedToward(part: Pick<Part, 'name' | 'end'>, way: 'along' | 'across', move: Length): Side {
  if (way === 'along') return { at: 'end', named: isNegative(move) ? part.end : otherEnd(part) };
  const [first, second] = edgesOf(part);
  const edge = rowEdgeOf(part);
  return { at: 'edge', named: isNegative(move) ? edge : edge === first ? second : first };
}
