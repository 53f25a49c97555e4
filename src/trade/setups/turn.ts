/** Toward what a face, an edge or an end of a part looks when the case stands. */
const axes = {
  left: [0, -1],
  right: [0, 1],
  front: [1, -1],
  back: [1, 1],
  bottom: [2, -1],
  top: [2, 1],
} as const;

export type Toward = keyof typeof axes;

const towards = Object.keys(axes) as readonly Toward[];

/** An end or edge by the name it has in the case; none where somebody called it otherwise. */
export const towardOf = (named: string): Toward | undefined => towards.find((t) => t === named);

const at = (axis: number, sign: number): Toward | undefined =>
  towards.find((t) => axes[t][0] === axis && axes[t][1] === sign);

/** @example opposite('bottom') // 'top' */
export const opposite = (toward: Toward): Toward => at(axes[toward][0], -axes[toward][1]) ?? toward;

/** A piece on a machine as you stand at it: which face, up or down, and what of it is at your left or right. */
type Turned = {
  readonly face: Toward;
  readonly lies: 'up' | 'down';
  readonly end: Toward;
  readonly endAt: 'left' | 'right';
};

/**
 * What of a piece is at the far side, away from you. Right, away and up are as left to right, front to back and bottom
 * to top of the case: a piece can be turned, but never into its mirror image. So away is up × right: the face (turned
 * over if it lies down) times the end (turned about if it is at the left).
 *
 * @returns nothing where face and end are not square to each other
 * @example farSide({ face: 'right', lies: 'down', end: 'bottom', endAt: 'left' }) // 'back': left side of a case
 */
export function farSide({ face, lies, end, endAt }: Turned): Toward | undefined {
  const [i, p] = axes[face];
  const [j, q] = axes[end];
  if (i === j) return undefined;
  const turn = (j - i + 3) % 3 === 1 ? 1 : -1;
  const over = lies === 'up' ? 1 : -1;
  const about = endAt === 'right' ? 1 : -1;
  return at(3 - i - j, p * q * turn * over * about);
}
