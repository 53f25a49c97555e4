import type { Part } from '../carcass/part';
import type { PartName } from '../carcass/part-name';

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

function standsIn(name: PartName): Stands {
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
