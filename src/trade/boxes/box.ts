import {
  absolute,
  add,
  half,
  inches,
  isNegative,
  isPositive,
  type Length,
  less,
  negate,
  shortest,
  subtract,
  times,
  zero,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { err, ok, type Result } from '../../length/result';
import type { Rounded } from '../../length/round';
import { markAt, unitsOf } from '../../length/tape';
import type { Units } from '../../length/units';
import { given, minus, plus, type Sum, sumOf } from '../sums/sum';
import type { BoxAllowance, BoxError, BoxPlan, BoxSize, BoxWarning } from './box-plan';
import { halfBlind } from './joints/half-blind';
import type { DrawerJoint } from './joints/joint';

/** A drawer box worked out. Inches, each with its sum. */
export type Box = {
  /** Rounded down: too narrow can be packed, too wide binds. Everything else stands on the mark. */
  readonly width: { readonly sum: Sum; readonly mark: Rounded };
  readonly side: Sum;
  /** How far side and front reach into each other. */
  readonly reach: Length;
  readonly front: Sum;
  readonly back: Sum;
  readonly backHeight: Sum;
  readonly insideWide: Sum;
  readonly insideDeep: Sum;
  readonly bottomWide: Sum;
  readonly bottomDeep: Sum;
  readonly grooveWide: Length;
};

/**
 * The pieces of a drawer box, its front joined to the sides as said. Only the width is rounded; all that stands on it
 * stands on the mark.
 *
 * @param plan inches; sizes > 0, allowances >= 0, groove and back dado less deep than what they are cut in
 * @returns sizes in inches, or what keeps it from being made: the first fault found
 * @example boxOf(plan).value.side.value // Example 1 of boxes: 15 27/32
 */
export function boxOf(plan: BoxPlan, joint: DrawerJoint = halfBlind): Result<Box, BoxError> {
  const wrong = faultOf(plan, joint);
  if (wrong) return err(wrong);
  const box = work(plan, joint);
  if (!isPositive(box.insideWide.value))
    return err({ code: 'inside-gone', by: negate(box.insideWide.value) });
  if (!isPositive(box.insideDeep.value))
    return err({ code: 'inside-depth-gone', by: negate(box.insideDeep.value) });
  const over = subtract(plan.height, add(plan.groove.up, plan.bottom));
  if (!isPositive(over)) return err({ code: 'back-gone', by: negate(over) });
  return ok(box);
}

function faultOf(plan: BoxPlan, joint: DrawerJoint): BoxError | undefined {
  const field = notPositive(plan);
  if (!field) return joint.fault(plan) ?? through(plan);
  // what is left of the front may follow from the joint: it says then what is wrong
  return (field === 'lap' ? joint.fault(plan) : undefined) ?? { code: 'not-positive', field };
}

function notPositive(plan: BoxPlan): BoxSize | BoxAllowance | undefined {
  const { groove } = plan;
  const sizes: readonly (readonly [BoxSize, Length])[] = [
    ...(['opening', 'depth', 'height', 'side', 'front', 'back', 'bottom'] as const).map(
      (f) => [f, plan[f]] as const,
    ),
    ['groove-deep', groove.deep],
    ['groove-up', groove.up],
  ];
  const allowances: readonly (readonly [BoxAllowance, Length])[] = [
    ['clearance', plan.clearance],
    ['lap', plan.lap],
    ['back-dado', plan.backDado],
    ['behind', plan.behind],
    ['groove-fit', groove.fit],
    ['ease', plan.ease],
  ];
  return (sizes.find(([, x]) => !isPositive(x)) ?? allowances.find(([, x]) => isNegative(x)))?.[0];
}

function through(plan: BoxPlan): BoxError | undefined {
  const { deep } = plan.groove;
  const cuts = [
    { which: 'side', deep },
    { which: 'front', deep },
    // A bottom slid in goes under the back, which then has no groove.
    ...(plan.bottomHow === 'captured' ? [{ which: 'back', deep } as const] : []),
    { which: 'side', deep: plan.backDado },
  ] as const;
  const cut = cuts.find((c) => !less(c.deep, plan[c.which]));
  return cut && { code: 'groove-through', ...cut, thickness: plan[cut.which] };
}

function work(plan: BoxPlan, joint: DrawerJoint): Box {
  const { groove } = plan;
  const sum = sumOf(
    plus('opening', plan.opening),
    minus(plan.noSlides ? 'side-plays' : 'side-slides', times(plan.clearance, 2n)),
  );
  const mark = markAt(sum.value, plan.tape, 'floor');
  const width = plus('box-width', mark.value, sum);
  const sanded = minus('sanded-off', times(plan.proud ?? zero, 2n));
  const insideWide = sumOf(width, minus('two-sides', times(plan.side, 2n)), sanded);
  const inside = plus('inside-width', insideWide.value, insideWide);
  return {
    width: { sum, mark },
    side: joint.side(plan),
    reach: joint.reach(plan),
    front: joint.front(plan, { width, insideWide }),
    back: joint.back ? sumOf(inside) : sumOf(inside, plus('back-dadoes', times(plan.backDado, 2n))),
    insideWide,
    bottomWide: sumOf(inside, plus('two-groove-depths', times(groove.deep, 2n)), minus('ease', plan.ease)),
    grooveWide: add(plan.bottom, groove.fit),
    ...frontToBack(plan),
  };
}

function frontToBack(plan: BoxPlan): Pick<Box, 'insideDeep' | 'bottomDeep' | 'backHeight'> {
  const { height, groove, bottom } = plan;
  const insideDeep = sumOf(
    plus('box-depth', plan.depth),
    minus('front', plan.front),
    minus('sanded-off', plan.proud ?? zero),
    minus('back', plan.back),
    minus('behind-back', plan.behind),
  );
  return plan.bottomHow === 'captured'
    ? { insideDeep, bottomDeep: captured(plan, insideDeep), backHeight: given('box-height', height) }
    : {
        insideDeep,
        bottomDeep: slidIn(plan, insideDeep),
        backHeight: sumOf(plus('box-height', height), minus('groove-up', groove.up), minus('bottom', bottom)),
      };
}

const captured = ({ groove, ease }: BoxPlan, inside: Sum): Sum =>
  sumOf(
    plus('inside-depth', inside.value, inside),
    plus('two-groove-depths', times(groove.deep, 2n)),
    minus('ease', ease),
  );

const slidIn = ({ groove, back, behind, ease }: BoxPlan, inside: Sum): Sum =>
  sumOf(
    plus('inside-depth', inside.value, inside),
    plus('front-groove', groove.deep),
    plus('under-back', back),
    plus('behind-back', behind),
    minus('ease', ease),
  );

/**
 * What is worth a look in a box that can be made: what its joint warns of, a groove past half the side. Limits are
 * common practice, no source.
 *
 * @param plan inches
 * @example boxWarnings(plan) // a lap of 3/32: lap-thin
 */
export function boxWarnings(plan: BoxPlan, joint: DrawerJoint = halfBlind): readonly BoxWarning[] {
  const { groove, side } = plan;
  const deep: readonly BoxWarning[] = less(half(side), groove.deep)
    ? [{ code: 'groove-deep', deep: groove.deep, half: half(side) }]
    : [];
  return [...joint.warnings(plan), ...deep, ...dadoWarnings(plan, joint)];
}

/** The dado for the back past half the side, or with a short end of side behind it that breaks off. */
function dadoWarnings(plan: BoxPlan, { dadoFrom }: DrawerJoint): readonly BoxWarning[] {
  const { backDado, side, behind, groove, tape } = plan;
  const deep: readonly BoxWarning[] = less(half(side), backDado)
    ? [{ code: 'dado-deep', deep: backDado, half: half(side) }]
    : [];
  // measured from the front, the dado is wider than the back by as much before it as behind it
  const land = dadoFrom === 'front' ? subtract(behind, half(groove.fit)) : behind;
  const thin = isPositive(behind) && less(land, leastLand(unitsOf(tape)));
  return thin ? [...deep, { code: 'land-thin', land }] : deep;
}

/** Less of a side behind its back breaks off, 3/8 or 10 mm. Common practice, no source. Inches. */
export const leastLand = (units: Units | undefined): Length => figureIn(units, inches(3n, 8n));

/** What a slide leaves free at the back, 1/8 or 3 mm. Common practice, no source. Inches. */
export const slideRoom = (units: Units | undefined): Length => figureIn(units, inches(1n, 8n));

/**
 * Whether a slide goes in: no longer than the room less what it leaves free.
 *
 * @param slide its length, inches, > 0
 * @param room from where its front is screwed to the inside of the back, inches
 * @returns `over`, how much too long it is, inches; 0 or less when it goes in
 * @example slideFits(inches(16n), inches(129n, 8n)) // fits, over 0
 */
export function slideFits(
  slide: Length,
  room: Length,
  units?: Units,
): { readonly fits: boolean; readonly over: Length } {
  const over = subtract(slide, subtract(room, slideRoom(units)));
  return { fits: !isPositive(over), over };
}

/** Front and back of an opening may differ by so much before the slides are packed. Common practice, no source. */
const apart = inches(1n, 32n);
export const packOver = (units: Units | undefined): Length => figureIn(units, apart);

/**
 * The opening a box is made for: the lesser of front and back, and whether the slides want packing first.
 *
 * @param front inches, as measured there; where only one is measured it stands for both; @param back likewise
 * @returns inches; nothing where nothing is measured
 * @example openingFor(inches(545n, 32n), inches(543n, 32n)) // least 16 31/32, off 1/16, pack
 */
export function openingFor(
  front: Length | undefined,
  back: Length | undefined,
  units?: Units,
): { readonly least: Length; readonly off: Length; readonly pack: boolean } | undefined {
  const first = front ?? back;
  if (!first) return undefined;
  const second = back ?? first;
  const off = absolute(subtract(first, second));
  return { least: shortest(first, second), off, pack: less(packOver(units), off) };
}
