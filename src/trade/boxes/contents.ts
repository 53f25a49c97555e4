import {
  howMany,
  inches,
  type Length,
  less,
  numerator,
  type Ratio,
  ratio,
  subtract,
  sum,
  zero,
} from '../../length/length';

/** What bounds a thing in a drawer. Inches. */
export type Room = {
  readonly front: Length;
  /** Gap between the fronts; for the top drawer, or one under a rail, the reveal over it. */
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
 * C7.7: the tallest thing that goes in. The box above moves over it, so it may stand above its own sides.
 *
 * @returns inches; not positive when nothing does
 */
export const tallestIn = (room: Room): Length => subtract(sum([room.front, room.over]), taken(room));

/** The least front for a thing so tall. @example frontFor(inches(67n, 16n), room) // EX 7d: 5 23/64 */
export const frontFor = (tall: Length, room: Fixed): Length => subtract(sum([tall, taken(room)]), room.over);

/**
 * The highest box: h + r_m - play under another box; under a rail h + r_t - the box's rise - play.
 *
 * @example boxHeightMost({ front: inches(35n, 8n), over: inches(5n, 64n), underRail: true, boxUp, play }) // H.6
 */
export const boxHeightMost = (room: Pick<Room, 'front' | 'over' | 'underRail' | 'boxUp' | 'play'>): Length =>
  subtract(sum([room.front, room.over]), sum([room.underRail ? room.boxUp : zero, room.play]));

/** A thing that goes into a drawer; `heavy` is pounds, one of them. Inches. */
export type Thing = {
  readonly id: string;
  readonly name: string;
  readonly tall?: Length;
  readonly long?: Length;
  readonly heavy?: Ratio;
  readonly count: number;
};

/** Pounds, and how many things nobody weighed. */
export type Load = { readonly contents: Ratio; readonly unweighed: number };

/** What the things of a drawer weigh together. @example loadOf([{ heavy: ratio(6n), count: 4, … }]).contents // 24 */
export function loadOf(things: readonly Thing[]): Load {
  const weighed = things.map((t) => (t.heavy ? (t.heavy.mul(BigInt(t.count)) as Ratio) : ratio(0n)));
  return {
    contents: weighed.reduce((a, b) => a.add(b) as Ratio, ratio(0n)),
    unweighed: things.filter((t) => !t.heavy).reduce((n, t) => n + t.count, 0),
  };
}

export type LoadSays =
  | { readonly code: 'rating-missing' }
  /** `near`: over three quarters of what the pair carries. `share`: total over rating. */
  | { readonly code: 'within' | 'near' | 'over'; readonly total: Ratio; readonly share: Ratio };

/** Over this share of the rating it is said. Common practice, no source. */
const nearShare = ratio(3n, 4n);

/** A load against what the pair carries, by its maker; the rating is never assumed. Pounds. */
export function loadSays(total: Ratio, rating: Ratio | undefined): LoadSays {
  if (!rating || numerator(rating) <= 0n) return { code: 'rating-missing' };
  const share = total.div(rating) as Ratio;
  const code = share.gt(1n) ? 'over' : share.gt(nearShare) ? 'near' : 'within';
  return { code, total, share };
}

/** Water weighs so much, pounds a cubic inch. Common practice, no source. */
const water = ratio(361n, 10000n);

type Volume = {
  readonly wide: Length;
  readonly deep: Length;
  readonly high: Length;
  /** How much of the volume is stuff: trays of lumps .2 to .35. */
  readonly fill: Ratio;
  readonly gravity: Ratio;
};

const bare = (x: Length): Ratio => howMany(x, inches(1n));

/**
 * Pounds in a drawer by volume × fill × specific gravity × .0361. An estimate.
 *
 * @example contentsByFill(at) // EX 10e: 18.9
 */
export const contentsByFill = ({ wide, deep, high, fill, gravity }: Volume): Ratio =>
  bare(wide).mul(bare(deep)).mul(bare(high)).mul(fill).mul(gravity).mul(water) as Ratio;

/** Birch ply 23/32 thick weighs 2.2 pounds a square foot, thinner in proportion. Common practice, no source. */
const perFoot = ratio(22n, 10n);
const atThick = inches(23n, 32n);

/** Pounds of a piece of sheet. @example sheetWeight({ long: inches(12n), wide: inches(12n), thick: inches(23n, 32n) }) // 2.2 */
export const sheetWeight = (at: {
  readonly long: Length;
  readonly wide: Length;
  readonly thick: Length;
}): Ratio => bare(at.long).mul(bare(at.wide)).div(144n).mul(perFoot).mul(howMany(at.thick, atThick)) as Ratio;

export type NotIn = {
  readonly code: 'too-tall' | 'too-long';
  readonly thing: string;
  readonly by: Length;
};

/** Things that do not go in, and by how much. Inches. */
export function whatDoesNotFit(
  things: readonly Thing[],
  at: { readonly tallest: Length; readonly longest: Length },
): readonly NotIn[] {
  const past = (thing: Thing, code: NotIn['code']) => {
    const [size, most] = code === 'too-tall' ? [thing.tall, at.tallest] : [thing.long, at.longest];
    return size && less(most, size) ? [{ code, thing: thing.id, by: subtract(size, most) }] : [];
  };
  return things.flatMap((thing) => [...past(thing, 'too-tall'), ...past(thing, 'too-long')]);
}
