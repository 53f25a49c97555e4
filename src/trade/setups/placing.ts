import type { Length } from '../../length/length';
import type { Side } from './on';
import { opposite, towardOf } from './turn';

/**
 * A face of a part. `show` and `good` are the one that is seen, `grooved` that of a board that is told by nothing
 * else; a partition of a case has a left and a right one, one laid out by hand A and B.
 */
export type FaceName =
  | 'inside'
  | 'outside'
  | 'upper'
  | 'under'
  | 'left'
  | 'right'
  | 'A'
  | 'B'
  | 'grooved'
  | 'show'
  /** The one that is cut into, whichever that is. */
  | 'cut'
  | 'good'
  /** The one that holes are marked on, where it is told by nothing else. */
  | 'marked';

export type Hand = 'left' | 'right';

/**
 * How a piece lies on its machine, as its codes; what does not apply is left out. `edge true` is the edge trued first,
 * `end squared` the end squared first.
 */
export type Placing = {
  /** `in` and `out` in an upright clamp: toward the work bench or template, or toward you. */
  readonly face?: { readonly named: FaceName; readonly lies: 'down' | 'up' | 'in' | 'out' };
  /** The edge it is stood on, where it lies on no face. */
  readonly stands?: Side;
  /** What lies against the fence: of a sled its own fence, else the rip fence, sacrificial or not. */
  readonly onFence?: Side;
  /** What goes into the cut first. */
  readonly leads?: Side;
  /** What is on the stop, or brought to the pencil mark. */
  readonly toStop?: Side;
  /** What is toward the pin of a sled. */
  readonly toPin?: Side;
  /** Under a guide: the end the guide is measured from, and the edge that is toward you. */
  readonly measured?: Side;
  readonly toYou?: Side;
  /** The end that marks on it are measured from: at `stop` as you stand. */
  readonly marked?: Side;
  /** The stop, the rip fence or the measured end, as you stand: left or right of the cut. */
  readonly stop?: Hand;
  /** The fence of a sled: at your side or the far one. */
  readonly fence?: 'near' | 'far';
  /** The cut stops so far short of the front edge, inches. It begins there where that edge leads. */
  readonly stopped?: Length;
};

/**
 * How the piece of an operation lies on its machine: one answer for the card, its picture, the list and the print.
 *
 * @example placingOf(groove).onFence // { at: 'edge', named: 'front' }: left side, stop left, inside face down
 */
export const placingOf = ({ placing }: { readonly placing?: Placing | undefined }): Placing => placing ?? {};

/** The same piece with the stop at the other side of the cut: it is turned half round, so its edges change places. */
export function withStopAt(placing: Placing, stop: Hand): Placing {
  const { toStop, onFence, leads } = placing;
  if (!toStop || !placing.stop || placing.stop === stop) return placing;
  return {
    ...placing,
    stop,
    ...(onFence ? { onFence: turned(onFence) } : {}),
    ...(leads ? { leads: turned(leads) } : {}),
  };
}

const turned = ({ at, named }: Side): Side => {
  const toward = towardOf(named);
  return { at, named: toward ? opposite(toward) : named };
};
