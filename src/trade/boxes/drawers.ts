import { add, type Length, less, longest, subtract, zero } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { markAt, type Tape } from '../../length/tape';
import type { DrawerPlace } from '../carcass/part-name';
import { type Bank, type BankStock, frontNo } from '../fronts/bank';
import { isOwnFront } from '../fronts/corner';
import { type HungOn, usualHanging } from '../fronts/hanging';
import { usualBank } from '../fronts/usual-bank';
import type { WorkedColumn, WorkedFronts } from '../fronts/worked';
import type { Shop } from '../machines/shop';
import { minus, plus, type Sum, sumOf } from '../sums/sum';
import { type Box, boxOf } from './box';
import type { BoxError, BoxPlan } from './box-plan';
import { boxHeightMost } from './contents';
import { type Hung, type HungDrawer, hungDrawer, hungMost, hungOf } from './hung';
import { boxHungFault, type HungError, type HungWarning, hungFault, stopFault } from './hung-faults';
import { drawerJointOf } from './joints/drawer-joints';
import type { DrawerJoint, JointLayout, JointProblem } from './joints/joint';
import { type OwnFront, ownFrontOf, underFront } from './own-front';
import { type Stick, type StickError, type StickPlan, setBack, sticksOf, withKickers } from './sticks';

/** One drawer of a bank: its box, and how high that may be. Inches. */
export type Drawer = {
  readonly no: number;
  readonly column: number;
  /** How it is told from the others. */
  readonly place: DrawerPlace;
  readonly front: Length;
  /** The highest its box may be under what is over it; the height it is cut to. */
  readonly most: Length;
  readonly high: Length;
  /** What a height that was given loses at the top edge for its joint. */
  readonly trim: Length;
  readonly plan: BoxPlan;
  readonly box: Box;
  /** Its joint as it lies on the front end of a side. */
  readonly joint: JointLayout;
  /** Where the front of its box is that of the drawer: how it stands about the box. */
  readonly own?: OwnFront;
  /** Where it hangs on no slides: what lies over it, and what keeps it from falling out. */
  readonly hung?: HungDrawer;
};

/** The figures of the slides of a bank: its own, else the shop's, else the usual. Inches. */
type Slides = {
  readonly long?: Length | undefined;
  readonly high: Length;
  readonly clearance: Length;
  readonly centre: Length;
  readonly boxUp: Length;
  /** From where the slides' fronts are screwed to the inside of the back. */
  readonly room: Length;
  readonly setBack: Length;
  /** What the boxes hang on where there are no slides, and how deep they are then. */
  readonly hung?: Hung | undefined;
  readonly deep?: Sum | undefined;
};

export type WorkedDrawers = {
  readonly fronts: WorkedFronts;
  readonly joint: DrawerJoint;
  readonly drawers: readonly Drawer[];
  readonly slides: Slides;
  readonly sticks: Result<readonly Stick[], StickError>;
};

export type DrawersProblem =
  | { readonly code: 'missing-stock'; readonly stock: BankStock }
  /** How deep the box is: neither said nor known from the slides. */
  | { readonly code: 'missing-depth' }
  | JointProblem
  /** Nothing is left for a box behind this front: `by` how much. */
  | { readonly code: 'no-box'; readonly drawer: number; readonly by: Length }
  | ({ readonly drawer: number } & (BoxError | HungError));

export type DrawersAt = {
  readonly thick: (stock: BankStock) => Length | undefined;
  readonly shop: Shop;
  readonly tape: Tape;
};

/** Which stock a piece of a drawer follows when none is said for it. */
const likewise: Partial<Record<BankStock, BankStock>> = { boxFront: 'side', boxBack: 'side' };

/** Id of the stock a piece of a drawer is of. @example stockOfBank(bank, 'boxBack') */
export function stockOfBank(bank: Bank, stock: BankStock): string | undefined {
  const next = likewise[stock];
  return bank.stocks[stock] ?? (next ? stockOfBank(bank, next) : undefined);
}

/** How far a box stands over the lower edge of its front: clear of what a covering front covers, where none is said. */
export function boxUpOf(bank: Bank): Length {
  if (bank.boxUp) return bank.boxUp;
  const least = boxUpOnSlides(bank);
  // a runner lies under its box, and over what the lowest one stands on
  if (bank.hung !== 'runners') return least;
  return longest(least, bank.runHigh ?? usualHanging(bank.units).runHigh);
}

function boxUpOnSlides(bank: Bank): Length {
  if (bank.fit === 'inset') return isOwnFront(bank) ? zero : usualBank(bank).boxUp;
  return longest(usualBank(bank).boxUp, add(bank.bottom ?? usualBank(bank).overlay, usualBank(bank).play));
}

/** What is left of a front over the ends of the sides, where it is that of the drawer: their slides begin behind it. */
function ownLap(bank: Bank, at: DrawersAt): Length {
  const plan = fixedPlan(bank, at);
  return (drawerJointOf(bank).planned?.(bank, plan) ?? plan).lap;
}

/** What the boxes and slides of a bank stand on. */
function slidesOf({ bank, columns }: WorkedFronts, at: DrawersAt): Slides {
  const front = isOwnFront(bank) ? ownLap(bank, at) : (at.thick('front') ?? zero);
  const back = setBack(bank.fit, front);
  const opening = columns[0]?.opening.deep;
  const deep = opening?.value ?? zero;
  const hung = hungOf(bank, at.thick('runner'));
  const own = isOwnFront(bank) ? front : zero;
  return {
    ...(hung && {
      hung,
      deep: sumOf(
        plus('depth-to-back', deep, opening),
        minus('front', back),
        minus('behind-box', hung.backRoom),
        plus('front-lap', own),
      ),
    }),
    long: hung ? undefined : (bank.slideLong ?? at.shop.slideLength),
    high: bank.slideHigh ?? at.shop.slideHeight ?? usualBank(bank).slideHigh,
    clearance: hung?.sidePlay ?? bank.clearance ?? at.shop.slideThickness ?? usualBank(bank).clearance,
    centre: bank.centre ?? usualBank(bank).centre,
    boxUp: boxUpOf(bank),
    room: subtract(deep, back),
    setBack: back,
  };
}

/**
 * The boxes of a bank from its fronts: width from the least opening, height under what is over it, the joint round the
 * groove, sticks from the front bottoms.
 *
 * @returns or everything that keeps them from being cut, one line for each kind
 */
export function drawersOf(
  fronts: WorkedFronts,
  at: DrawersAt,
  joint: DrawerJoint = drawerJointOf(fronts.bank),
): Result<WorkedDrawers, readonly DrawersProblem[]> {
  const { bank } = fronts;
  const slides = slidesOf(fronts, at);
  const { hung } = slides;
  const wanted = ['front', 'side', 'boxBottom', ...(hung ? (['runner'] as const) : [])] as const;
  const missing = wanted.filter((stock) => !at.thick(stock));
  const fault = hung && hungFault(hung, bank);
  const problems: readonly DrawersProblem[] = [
    ...missing.map((stock) => ({ code: 'missing-stock', stock }) as const),
    ...((bank.boxDeep ?? slides.long ?? hung) ? [] : [{ code: 'missing-depth' } as const]),
    ...(fault ? [{ ...fault, drawer: 1 }] : []),
    ...joint.problems(bank),
  ];
  if (problems.length > 0) return err(problems);
  const made = fronts.columns.flatMap((column) =>
    column.untrimmed.map((_, k) => drawerOf({ fronts, joint, column, slides, no: k + 1 }, at)),
  );
  const wrong = made.flatMap((d) => (d.ok ? [] : [d.error]));
  if (wrong.length > 0) return err(wrong.filter((p, k) => wrong.findIndex((q) => q.code === p.code) === k));
  const drawers = made.flatMap((d) => (d.ok ? [d.value] : []));
  const kickers = new Map(
    drawers.flatMap(({ no, hung: own }) => (own?.kicker ? [[no, own.kicker] as const] : [])),
  );
  const sticks = withKickers(sticksOf(stickPlan(fronts, slides)), kickers);
  return ok({ fronts, joint, drawers, slides, sticks });
}

const stickPlan = (fronts: WorkedFronts, slides: Slides): StickPlan => ({
  bottoms: fronts.marks.map((mark) => mark.bottomUp),
  sill: fronts.columns[0]?.opening.sill.value ?? zero,
  boxUp: slides.boxUp,
  centre: slides.centre,
  slide: slides.high,
  ...(slides.hung ? { hung: slides.hung } : {}),
});

type Making = {
  readonly fronts: WorkedFronts;
  readonly joint: DrawerJoint;
  readonly column: WorkedColumn;
  readonly slides: Slides;
  readonly no: number;
};

/** What is over a drawer: another front's gap, or the reveal under a rail for the top one. */
export const overDrawer = ({ reveals }: WorkedFronts, no: number) =>
  ({ over: no === 1 ? reveals.top : reveals.between, underRail: no === 1 }) as const;

function drawerOf(making: Making, at: DrawersAt): Result<Drawer, DrawersProblem> {
  const { fronts, joint, column, slides, no } = making;
  const { bank } = fronts;
  const front = column.untrimmed[no - 1] ?? zero;
  const air = { boxUp: slides.boxUp, play: bank.play ?? usualBank(bank).play };
  const clear = clearOver(making, { front, ...overDrawer(fronts, no), ...air });
  const most = underFront(bank, clear, { high: front, up: slides.boxUp });
  if (!less(zero, most)) return err({ code: 'no-box', drawer: no, by: subtract(zero, most) });
  const { boxHigh } = frontNo(bank, no);
  const fits = joint.height(bank, boxHigh ?? markAt(most, at.tape, 'floor').value);
  const high = joint.trims ? fits : (boxHigh ?? fits);
  const planned = planFor(making, { ...at, high });
  const plan = joint.planned?.(bank, planned) ?? planned;
  const box = boxOf(plan, joint);
  if (!box.ok) return err({ drawer: no, ...box.error });
  const hung = slides.hung && hungDrawer(slides.hung, { fronts, slides, no, high, plan, box: box.value });
  const hangs = hung && slides.hung && (boxHungFault(slides.hung, plan) ?? stopFault(hung, bank));
  if (hangs) return err({ drawer: no, ...hangs });
  const own = isOwnFront(bank)
    ? ownFrontOf({ bank, column, joint, plan, box: box.value, high: front, up: slides.boxUp, tape: at.tape })
    : undefined;
  if (own && !own.ok) return err({ drawer: no, ...own.error });
  const laid = joint.layOut(
    bank,
    {
      height: high,
      reach: box.value.reach,
      groove: { up: plan.groove.up, wide: box.value.grooveWide },
    },
    plan,
  );
  const place = bank.across > 1 ? { no, column: column.no } : { no };
  const trim = boxHigh ? subtract(boxHigh, high) : zero;
  const made = { no, column: column.no, place, front, most, high, trim, plan, box: box.value, joint: laid };
  return ok({ ...made, ...(own ? { own: own.value } : {}), ...(hung ? { hung } : {}) });
}

/** How high a box may be: with no slides, under what lies over it. */
function clearOver({ column, slides: { hung } }: Making, room: Parameters<typeof boxHeightMost>[0]): Length {
  if (!hung) return boxHeightMost(room);
  const { front, over, underRail: top, boxUp, play } = room;
  const free = subtract(add(front, over), top ? boxUp : zero);
  return hungMost(hung, { free, top, head: column.opening.head ?? zero, play });
}

function planFor({ fronts, column, slides }: Making, at: DrawersAt & { readonly high: Length }): BoxPlan {
  const { bank } = fronts;
  // its slides are as long as its sides, which begin behind what is left of the front
  const front = isOwnFront(bank) ? ownLap(bank, at) : zero;
  return {
    ...fixedPlan(bank, at),
    opening: column.opening.narrow.value,
    clearance: slides.clearance,
    ...(slides.hung ? { noSlides: true as const } : {}),
    depth: bank.boxDeep ?? slides.deep?.value ?? add(slides.long ?? zero, front),
    height: at.high,
  };
}

/** What of a box is the same in all drawers of a bank, whatever they stand in. */
function fixedPlan(bank: Bank, at: DrawersAt): BoxPlan {
  const side = at.thick('side') ?? zero;
  return {
    opening: zero,
    clearance: zero,
    depth: zero,
    height: zero,
    tape: at.tape,
    side,
    front: at.thick(isOwnFront(bank) ? 'front' : 'boxFront') ?? side,
    back: at.thick('boxBack') ?? side,
    bottom: at.thick('boxBottom') ?? zero,
    lap: bank.lap ?? usualBank(bank).lap,
    backDado: bank.backDado ?? usualBank(bank).backDado,
    behind: bank.behind ?? usualBank(bank).behind,
    groove: {
      deep: bank.grooveDeep ?? usualBank(bank).grooveDeep,
      up: bank.grooveUp ?? usualBank(bank).grooveUp,
      fit: bank.grooveFit ?? usualBank(bank).grooveFit,
    },
    ease: bank.ease ?? usualBank(bank).ease,
    bottomHow: bank.bottomHow,
  };
}

/** What is worth a look in the drawers. Limits are common practice, no source. Inches. */
export type DrawersWarning =
  /** A box given higher than what is over it leaves room for. */
  | { readonly code: 'box-strikes'; readonly drawer: number; readonly by: Length; readonly most: Length }
  | { readonly code: 'slide-too-long'; readonly slide: Length; readonly over: Length }
  | { readonly code: 'box-too-deep'; readonly deep: Length; readonly over: Length }
  /** The lowest box would stand in the bottom, or scrape on it. */
  | { readonly code: 'box-low'; readonly by: Length; readonly least: Length }
  /** Columns of different height keep one line from the top: the higher one's slides stand so much higher. */
  | { readonly code: 'columns-differ'; readonly column: number; readonly by: Length }
  | { readonly code: 'pack-slides'; readonly column: number; readonly off: Length; readonly hung?: HungOn }
  | HungWarning;
