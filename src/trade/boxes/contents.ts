import {
  asInches,
  asNumber,
  howMany,
  isPositive,
  type Length,
  less,
  type Ratio,
  ratio,
  subtract,
  sum,
  times,
  zero,
} from '../../length/length';
import { whole } from '../../length/round';
import { product } from '../loads/ratios';

/** What bounds a thing in a drawer. Inches. */
export type Room = {
  /** How high the front is. */
  readonly front: Length;
  /**
   * Gap between the fronts; for the top drawer, or one under a rail, the reveal over it, below 0 where the front
   * covers.
   */
  readonly over: Length;
  readonly underRail: boolean;
  /** Lower edge of the box over that of its front. */
  readonly boxUp: Length;
  /** Groove for the bottom up from the box's lower edge, and how thick the bottom is. */
  readonly grooveUp: Length;
  readonly bottom: Length;
  readonly play: Length;
};

type Fixed = Omit<Room, 'front'>;

/** What is taken of front and gap together: under a rail the box's own rise as well. */
const taken = ({ underRail, boxUp, grooveUp, bottom, play }: Fixed): Length =>
  sum([underRail ? boxUp : zero, grooveUp, bottom, play]);

/**
 * The tallest thing that goes in. The box above moves over it, so it may stand above its own sides.
 *
 * @param room inches, each >= 0 but `over`
 * @returns inches; not positive when nothing does
 * @example tallestIn({ ...under, front: inches(35n, 8n) }) // under the rail of step 6 of the carried cabinet, 1/2 play: 2 53/64
 */
export const tallestIn = (room: Room): Length => subtract(sum([room.front, room.over]), taken(room));

/**
 * The least front for a thing so tall: `tallestIn` turned about.
 *
 * @param tall inches, > 0; @param room what else bounds it, inches
 * @returns inches
 * @example frontFor(inches(67n, 16n), room) // Example 6 of boxes: 5 23/64
 */
export const frontFor = (tall: Length, room: Fixed): Length => subtract(sum([tall, taken(room)]), room.over);

/**
 * The highest box: h + r_m - play under another box; under a rail h + r_t - the box's rise - play.
 *
 * @param room inches, each >= 0 but `over`
 * @returns inches; not positive when no box goes in
 * @example boxHeightMost({ front: inches(35n, 8n), over: inches(5n, 64n), underRail: true, boxUp, play }) // step 6 of the carried cabinet
 */
export const boxHeightMost = (room: Pick<Room, 'front' | 'over' | 'underRail' | 'boxUp' | 'play'>): Length =>
  subtract(sum([room.front, room.over]), sum([room.underRail ? room.boxUp : zero, room.play]));

/** Things of one kind that go into a drawer. Inches. */
export type Thing = {
  readonly id: string;
  readonly name: string;
  readonly tall?: Length;
  readonly long?: Length;
  /** Pounds, one of them; > 0. */
  readonly heavy?: Ratio;
  /** Whole, >= 0. */
  readonly count: number;
};

/** Pounds, and how many things nobody weighed. */
type Load = { readonly contents: Ratio; readonly unweighed: number };

/**
 * What the things of a drawer weigh together; those nobody weighed, and those said to weigh nothing or less, add
 * nothing and are counted.
 *
 * @returns pounds
 * @example loadOf([{ id: 'a', name: 'Quartz', heavy: ratio(5n, 2n), count: 4 }]).contents // 10
 */
export function loadOf(things: readonly Thing[]): Load {
  const isWeighed = ({ heavy }: Thing): boolean => heavy !== undefined && isPositive(asInches(heavy));
  const weighed = things.flatMap((t) => (t.heavy && isWeighed(t) ? [product(t.heavy, whole(t.count))] : []));
  return {
    contents: asNumber(sum(weighed.map(asInches))),
    unweighed: things.filter((t) => !isWeighed(t)).reduce((n, t) => n + t.count, 0),
  };
}

export type LoadSays =
  | { readonly code: 'rating-missing' }
  /** `near`: over three quarters of what the pair carries. `share`: total over rating. */
  | { readonly code: 'within' | 'near' | 'over'; readonly total: Ratio; readonly share: Ratio };

/** Over this share of the rating it is said. Common practice, no source. */
const nearShare = ratio(3n, 4n);

/**
 * A load against what the pair carries, by its maker. A rating not said, or not above 0, is asked for, never assumed.
 *
 * @param total contents, box and front, pounds, >= 0; @param rating of the pair, pounds
 * @example loadSays(ratio(76n), ratio(100n)).code // 'near'
 */
export function loadSays(total: Ratio, rating: Ratio | undefined): LoadSays {
  const most = rating && asInches(rating);
  if (!most || !isPositive(most)) return { code: 'rating-missing' };
  const load = asInches(total);
  const near = less(times(most, nearShare), load) ? 'near' : 'within';
  return { code: less(most, load) ? 'over' : near, total, share: howMany(load, most) };
}

/** Water weighs so much, pounds a cubic inch. Common practice, no source. */
const water = ratio(361n, 10000n);

type Volume = {
  /** Inside of the drawer, inches, > 0. */
  readonly wide: Length;
  readonly deep: Length;
  readonly high: Length;
  /** How much of the volume is stuff, 0 to 1: trays of lumps .2 to .35. Common practice, no source. */
  readonly fill: Ratio;
  /** How many times as heavy as water. */
  readonly gravity: Ratio;
};

/**
 * Pounds in a drawer by volume × fill × specific gravity × .0361. An estimate.
 *
 * @returns pounds
 * @example contentsByFill(at) // Example 9 of boxes: 18.9
 */
export const contentsByFill = ({ wide, deep, high, fill, gravity }: Volume): Ratio =>
  product(asNumber(wide), asNumber(deep), asNumber(high), fill, gravity, water);

/** `by`: how much it is too tall or too long. Inches. */
type NotIn = {
  readonly code: 'too-tall' | 'too-long';
  readonly thing: string;
  readonly by: Length;
};

/**
 * Things that do not go in, and by how much; what was not said of a thing is not checked, nor a size of nothing or
 * less.
 *
 * @param at tallest as `tallestIn` has it; longest: the longer way inside, lying flat. Inches
 * @returns by thing as listed, inches
 * @example whatDoesNotFit([{ id: 'a', name: 'Quartz', tall: inches(4n), count: 1 }], at) // too-tall by 1/8 under 3 7/8
 */
export function whatDoesNotFit(
  things: readonly Thing[],
  at: { readonly tallest: Length; readonly longest: Length },
): readonly NotIn[] {
  const past = (thing: Thing, code: NotIn['code']) => {
    const [size, most] = code === 'too-tall' ? [thing.tall, at.tallest] : [thing.long, at.longest];
    return size && isPositive(size) && less(most, size)
      ? [{ code, thing: thing.id, by: subtract(size, most) }]
      : [];
  };
  return things.flatMap((thing) => [...past(thing, 'too-tall'), ...past(thing, 'too-long')]);
}
