import {
  add,
  inches,
  type Length,
  less,
  longest,
  shortest,
  subtract,
  sum,
  times,
  zero,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Bank } from '../fronts/bank';
import { type HungOn, usualHanging } from '../fronts/hanging';
import type { WorkedFronts } from '../fronts/worked';
import { plus, type Sum, sumOf, type Term } from '../sums/sum';
import { type Box, leastLand } from './box';
import type { BoxPlan } from './box-plan';

/** What the boxes of a bank hang on without slides. Inches. */
export type Hung = {
  readonly how: HungOn;
  /** As measured: it stands so far in from its wall. As high as it is ripped. */
  readonly thick: Length;
  readonly high: Length;
  /** Free at each side of a box and behind it, and between a box and what lies over it. */
  readonly sidePlay: Length;
  readonly backRoom: Length;
  readonly room: Length;
  readonly kickers: boolean;
  /** Of strips: the groove in the sides of a box, its lower wall up from the lower edge. */
  readonly groove?: { readonly up: Length; readonly wide: Length };
  /** Left of a side before the end of its groove; so far a stop block reaches past a side where nothing says. */
  readonly land: Length;
  readonly catches: Length;
};

/** What a stop block that is screwed to the wall reaches past the side of a box. Common practice, no source. */
const usualCatch = inches(1n, 2n);

/** What boxes hang on; nothing where they run on slides. A stuff not measured yet stands for none. */
export function hungOf(bank: Bank, thick: Length = zero): Hung | undefined {
  const { hung, units } = bank;
  if (!hung) return undefined;
  const usual = usualHanging(units, hung);
  const figure = (name: keyof typeof usual): Length => bank[name] ?? usual[name];
  const high = figure('runHigh');
  const own = {
    how: hung,
    thick,
    high,
    sidePlay: figure('sidePlay'),
    backRoom: figure('backRoom'),
    room: figure('kickRoom'),
    kickers: hung === 'runners' && bank.kickers !== undefined,
    land: leastLand(units),
    catches: figureIn(units, usualCatch),
  };
  if (hung === 'runners') return own;
  return { ...own, groove: { up: figure('stripUp'), wide: add(high, figure('stripPlay')) } };
}

/** Lower edge of what carries a box, over the lower edge of the box: a runner lies under it, a strip beside it. */
export const carriesAt = ({ how, high, groove }: Hung): Length =>
  groove && how === 'strips' ? subtract(add(groove.up, groove.wide), high) : subtract(zero, high);

/** What lies over a box of a bank: how high it is, and the air it wants, of which `head` may lie behind a frame. */
function takenOver(hung: Hung, { top, play }: { readonly top: boolean; readonly play: Length }): Length {
  const { how, high, thick, room, kickers } = hung;
  // a runner of the box above, which is the kicker where one is asked for; else a block lies flat over the box
  if (how === 'runners' && !top) return add(high, kickers ? room : play);
  return add(room, kickers ? high : add(thick, top ? zero : room));
}

type Over = {
  /** Front and the gap over it, less the rise of the box under a rail. */
  readonly free: Length;
  readonly top: boolean;
  readonly head: Length;
  readonly play: Length;
};

/** The highest box under what lies over it. Inches; not positive where no box goes in. */
export function hungMost(hung: Hung, { free, top, head, play }: Over): Length {
  const taken = takenOver(hung, { top, play });
  // the air under a rail is wanted in front, where the box passes it
  const under = subtract(add(free, top ? head : zero), taken);
  return hung.how === 'runners' && !top ? under : shortest(subtract(free, play), under);
}

/** A drawer as it hangs. Lengths over what its sticks stand on, or as said. Inches. */
export type HungDrawer = {
  /** Lower edge of a kicker of its own; where the runner over it is the kicker there is none. */
  readonly kicker?: Sum;
  readonly stop: StopBlock;
};

/** How a stop block catches: what it is on, how far in, and what that lets the box come out. Inches. */
type StopBlock = {
  readonly on: 'wall' | 'runner' | 'kicker';
  /** All four of a drawer: so long, and so wide. */
  readonly long: Length;
  readonly wide: Length;
  /** How far those on the back of the box stand over its top edge. */
  readonly rise: Length;
  /** How far one over the box reaches past the inside of its side. */
  readonly catches: Length;
  /** Behind the fronts to its front end; how far the box then comes out. */
  readonly begins: Length;
  readonly out: Length;
};

/** What boxes stand behind: their fronts, and how far over the lower edges of these. Inches. */
type Stand = {
  readonly fronts: Pick<WorkedFronts, 'marks' | 'columns' | 'bank'>;
  readonly slides: { readonly boxUp: Length };
};

type HungAt = Stand & {
  readonly no: number;
  readonly high: Length;
  readonly plan: BoxPlan;
  readonly box: Pick<Box, 'insideDeep'>;
};

/** Lower edge of a box over what its sticks stand on. */
const boxFoot = ({ fronts, slides }: Stand, no: number): readonly Term[] => [
  plus('sill', fronts.columns[0]?.opening.sill.value ?? zero),
  plus('front-lower-edge', fronts.marks.find((each) => each.no === no)?.bottomUp ?? zero),
  plus('box-up', slides.boxUp),
];

/** The same as a figure. Inches. */
export const hungFoot = (at: Stand, no: number): Length => sumOf(...boxFoot(at, no)).value;

/** From the top edge of a box to the runner over it; nothing over the top one, nor where there are no runners. */
export const gapOver = (hung: Hung, { no, high, ...at }: Stand & Pick<HungAt, 'no' | 'high'>) =>
  no > 1 && hung.how === 'runners'
    ? subtract(add(hungFoot(at, no - 1), carriesAt(hung)), add(hungFoot(at, no), high))
    : undefined;

/** A block is no shorter; so much of one on a back lies on it. Common practice, no source. */
const leastBlock = inches(3n);
const onBack = inches(3n, 2n);

/** Kicker and stop blocks of one drawer. */
export function hungDrawer(hung: Hung, at: HungAt): HungDrawer {
  const { high, thick, sidePlay, room, kickers } = hung;
  const { plan, box } = at;
  const { units } = at.fronts.bank;
  const gap = gapOver(hung, at);
  // under a runner there may be no room for a kicker: then the runner is it
  const own = kickers && (!gap || !less(gap, add(room, high)));
  const carried = hung.how === 'runners' && (gap || own);
  const low = carried && gap && !own ? gap : room;
  const rise = carried ? subtract(add(low, high), room) : add(low, thick);
  const past = subtract(times(thick, 2n), add(sidePlay, plan.side));
  const long = longest(figureIn(units, leastBlock), add(rise, figureIn(units, onBack)));
  const begins = add(plan.front, room);
  return {
    ...(own
      ? { kicker: sumOf(...boxFoot(at, at.no), plus('box-height', at.high), plus('kick-room', room)) }
      : {}),
    stop: {
      on: own ? 'kicker' : carried ? 'runner' : 'wall',
      long,
      wide: carried ? high : sum([sidePlay, plan.side, hung.catches]),
      rise,
      catches: carried ? past : hung.catches,
      begins,
      out: subtract(box.insideDeep.value, sum([room, long, thick])),
    },
  };
}
