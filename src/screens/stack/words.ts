// What a stack's page says. What is said of stacks elsewhere too stands in `shared/stack-words.ts`.

export const title = 'Stack';
export const back = 'Back';
export const notWanted = 'No cut needs this stack any more.';
export const inTheBox = 'What lies in the box';
export const shimsForGap = 'Shims for a gap';

export const wanted = 'wanted';
export const nearest = 'Nearest';
export const closest = 'Closest';

/** The stack of the fewest pieces: the only one shown, unless another comes closer. */
export const fewest = (closerToo: boolean): string => (closerToo ? 'Fewest pieces' : 'Between the outers');
export const cuts = (width: string, error: string): string => `cuts ${width}, ${error}`;
export const outersAlone = 'The two outers alone';
export const outer = 'outer';
export const onArbor = 'On the arbor, from one outer to the other';
export const ridges = (gaps: readonly number[]): string =>
  `More than about .020 in one gap may leave a ridge: gap ${gaps.join(' and ')}.`;
export const keep = 'This one is on the arbor';
export const kept = 'Stack kept as the recipe';

/** The stack kept as the recipe, its pieces in a row. */
export const recipe = (pieces: readonly string[]): string =>
  `Recipe kept: ${pieces.join(' + ') || 'the outers alone'}.`;

// The test cut.

export const testCut = 'Test cut';
export const inScrap = 'Test cut in scrap of the same sheet';
export const measuredWhat = 'What was measured';
export const testCuts = {
  stack: 'Width',
  'one-wall': 'One wall',
  'slot-both-sides': 'Slot, both',
  'wood-both-sides': 'Tongue, both',
  depth: 'Depth',
} as const;
export const want = 'Want';
export const measures = 'It measures';
export const notMeasured = 'not measured';
export const asked = { got: 'The test cut measures', want: 'What is wanted' } as const;
export const measured = 'Test cut measured';
export const reckoned = (by: string): string => `This set cuts ${by}: every stack allows for it.`;
export const remember = (by: string): string => `Remember: this set cuts ${by}`;

// A pile of shims for a gap, and a half-lap put right.

export const shimsTitle = 'Shims and laps';
export const asks = { gap: 'The gap', thick: 'Thickness of both', deep: 'Depth as cut' } as const;

type Pile = {
  readonly pieces: readonly string[];
  /** What the pile lacks of the gap; undefined when it fills it. */
  readonly short: string | undefined;
  readonly within: boolean;
};

/** A pile of shims, and what it lacks. */
export function pile({ pieces, short, within }: Pile): string {
  const exact = short === undefined ? 'exactly' : `short by ${short}`;
  const nearer = within ? '' : ': no pile of these comes nearer without going over';
  return `${pieces.join(' + ') || 'No shim goes in'}, ${exact}${nearer}.`;
}
export const shims = (count: number, size: string): string => `${count} × ${size}`;

export const halfLap = 'Half-lap, faces step';
export const flush = 'The faces are flush.';
export const goesThrough = 'That depth goes right through: make it less than the thickness.';

type Step = {
  readonly by: string;
  readonly felt: boolean;
  /** Whether both are to be cut deeper, or less deep, and by how much. */
  readonly deepen: boolean;
  readonly each: string;
  /** Depth of the other, where one set is cut. */
  readonly other: string;
};

/** Faces of a half-lap that step, and what puts them right. */
export const step = ({ by, felt, deepen, each, other }: Step): string =>
  `The faces step by ${by}${felt ? ', enough to feel' : ''}. Both still uncut: ${deepen ? 'deepen' : 'make shallower'} each by ${each}. One set cut: the other to ${other}.`;
