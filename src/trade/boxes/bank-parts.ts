import { add, half, type Length, subtract, sum, times, zero } from '../../length/length';
import type { Tape } from '../../length/tape';
import { type Along, type Fitted, type Part, sizeAt } from '../carcass/part';
import type { BoxRole, PartName } from '../carcass/part-name';
import { type Bank, type BankStock, backOf, frontNo } from '../fronts/bank';
import { blankFor } from '../fronts/blank';
import { frontNumbers } from '../fronts/stands';
import { usualBank } from '../fronts/usual-bank';
import type { WorkedColumn, WorkedFronts } from '../fronts/worked';
import { opId } from '../setups/operation';
import { given, minus, plus, type Sum, sumOf } from '../sums/sum';
import { type Drawer, stockOfBank, type WorkedDrawers } from './drawers';
import { hungGroove } from './hung-groove';
import type { DrawerJoint } from './joints/joint';
import { bandOf, type OwnFront, onOwnFront } from './own-front';

export type BankPartsAt = {
  readonly tape: Tape;
  readonly thick: (stock: BankStock) => Length | undefined;
  /** What must be done to the case before its openings can be measured. */
  readonly waits: readonly string[];
  readonly kerf?: Length | undefined;
};

/** Id of a piece of a drawer. @example drawerPart('b1', { column: 1, no: 3 }, 'side') // 'b1~c1d3side' */
export const drawerPart = (
  bank: string,
  { column, no }: { readonly column: number; readonly no: number },
  role: string,
): string => `${bank}~c${column}d${no}${role}`;

/** The pieces of a box, as their part ids end. */
export const boxRoles: readonly BoxRole[] = ['side', 'boxfront', 'boxback', 'boxbottom'];

type New = {
  readonly id: string;
  readonly name: PartName;
  readonly stock: BankStock;
  readonly length: Sum;
  readonly width: Sum;
  /** It must enter: rounded down both ways; else to the nearest. */
  readonly enters?: boolean;
  readonly fitted: Fitted;
  readonly end: string;
};

/** A part of a bank, nothing cut in it yet. */
export function bankPart(fronts: WorkedFronts, at: BankPartsAt, made: New): Part {
  const { bank } = fronts;
  const mode = made.enters ? 'floor' : 'halfExpand';
  return {
    id: made.id,
    of: bank.id,
    name: made.name,
    copies: 1,
    stock: undefined,
    stuff: stockOfBank(bank, made.stock),
    thickness: at.thick(made.stock),
    length: sizeAt(made.length, at.tape, mode),
    width: sizeAt(made.width, at.tape, mode),
    end: made.end,
    stage: 'after-dry-fit',
    fitted: made.fitted,
    rabbets: [],
    notches: [],
    laps: [],
    mates: [],
    strip: false,
    comesOff: false,
    inFrame: false,
    waits: at.waits,
    opening: bank.id,
  };
}

/**
 * The fronts of a bank as parts: as long as they are wide in their opening, ripped to their heights. Out of one blank
 * they come off it one after another, from the top.
 */
export function frontParts(
  fronts: WorkedFronts,
  at: BankPartsAt & { readonly drawers?: WorkedDrawers | undefined },
): readonly Part[] {
  return fronts.columns.flatMap((column) => {
    const blank = fronts.bank.fromBlank ? blankPart(fronts, column, at) : undefined;
    const own = column.heights.map((high, k) => frontPart(fronts, column, { ...at, high, no: k + 1 }));
    return blank ? [blank, ...own.map((p, k) => afterBlank(p, k === 0 ? blank : own[k - 1]))] : own;
  });
}

/** Which column, where there are several. */
const inColumn = ({ bank }: WorkedFronts, column: number) => (bank.across > 1 ? { column } : {});

function frontPart(
  fronts: WorkedFronts,
  column: WorkedColumn,
  at: BankPartsAt & {
    readonly high: Length;
    readonly no: number;
    readonly drawers?: WorkedDrawers | undefined;
  },
): Part {
  const band = times(bandOf(fronts.bank), 2n);
  const banded = (sum: Sum) => sumOf(plus('front', sum.value, sum), minus('end-bands', band));
  const high = subtract(at.high, band);
  const core = (x: Length) => sumOf(plus('share-of-fronts', x), minus('edge-bands', band));
  const made = bankPart(fronts, at, {
    id: drawerPart(fronts.bank.id, { column: column.no, no: at.no }, 'front'),
    name: { role: 'front', no: at.no, ...inColumn(fronts, column.no) },
    stock: 'front',
    length: banded(column.width.sum),
    width: core(at.high),
    enters: fronts.bank.fit === 'inset',
    // a height given, not shared out of the opening, is ripped ahead; what comes off a blank comes off it last
    fitted: fronts.bank.fromBlank || !frontNo(fronts.bank, at.no).high ? 'both' : 'length',
    end: 'left',
  });
  // heights are rounded together, never one by one
  const below = frontNumbers(fronts.bank).filter((no) => no > at.no);
  const mates = fronts.bank.fromBlank
    ? below.map((no) => drawerPart(fronts.bank.id, { column: column.no, no }, 'front'))
    : [];
  const drawer = at.drawers?.drawers.find((d) => d.no === at.no && d.column === column.no);
  return {
    ...made,
    ...(at.drawers && drawer?.own ? ownCuts(at.drawers, drawer, drawer.own) : {}),
    mates,
    width: { ...made.width, mark: { value: high, rest: zero } },
  };
}

/** What is cut in a front that is that of its box: it waits for the width of that, too. */
function ownCuts(worked: WorkedDrawers, drawer: Drawer, own: OwnFront): Partial<Part> {
  const { bank } = worked.fronts;
  const { rabbets = [], dowels, front } = cutsOf(worked, drawer);
  return {
    ...onOwnFront({ rabbets, dowels: dowels?.front ?? [] }, own),
    along: [frontGroove(bank, drawer)],
    endCut: front,
    opening: backOf(bank.id),
  };
}

const cutsOf = ({ fronts: { bank }, joint }: WorkedDrawers, drawer: Drawer) =>
  joint.cuts(bank, {
    reach: drawer.box.reach,
    side: drawerPart(bank.id, drawer, 'side'),
    plan: drawer.plan,
    layout: drawer.joint,
    sideStock: stockOfBank(bank, 'side'),
  });

function blankPart(fronts: WorkedFronts, column: WorkedColumn, at: BankPartsAt): Part | undefined {
  const { bank, reveals } = fronts;
  const blank = blankFor(column.heights, {
    trim: bank.trim ?? usualBank(bank).trim,
    kerf: at.kerf,
    band: bank.band ?? usualBank(bank).band,
    between: reveals.between,
  });
  if (!blank.ok) return undefined;
  return bankPart(fronts, at, {
    id: `${bank.id}~c${column.no}blank`,
    name: { role: 'blank', ...inColumn(fronts, column.no) },
    stock: 'front',
    length: column.width.sum,
    width: given('fronts-kerfs-trims', blank.value.length),
    fitted: 'both',
    end: 'left',
  });
}

/** Cut top to bottom: the first waits for the blank, each for the one above it. */
const afterBlank = (own: Part, before: Part | undefined): Part =>
  before
    ? {
        ...own,
        outOf: before.outOf ?? before.id,
        waits: [...(own.waits ?? []), opId(before.id, before.id.endsWith('blank') ? 'len' : 'rip', '1')],
      }
    : own;

/** The box of every drawer as parts: sides as a pair, front, back, bottom, with their grooves and joints. */
export function boxParts(worked: WorkedDrawers, at: BankPartsAt): readonly Part[] {
  const opening = backOf(worked.fronts.bank.id);
  return worked.drawers.flatMap((drawer) => boxPart(worked, drawer, at).map((p) => ({ ...p, opening })));
}

const bottomGroove = (bank: Bank, { box, plan }: Drawer): Along => ({
  id: 'bottom',
  takes: { part: 'bottom' },
  edge: { at: 'edge', named: 'bottom' },
  near: plan.groove.up,
  width: box.grooveWide,
  depth: plan.groove.deep,
  fits: stockOfBank(bank, 'boxBottom'),
});

/**
 * Where the groove of a box front begins and ends short of both its ends, so that it does not come out at the end of a
 * finger, or of a front that lies over its sides: at the floors of the grooves in the sides. Nothing where it is cut
 * through.
 *
 * @returns inches from each end
 */
export function grooveStop({ plan, joint }: Pick<Drawer, 'plan' | 'joint'>): Length | undefined {
  const shows =
    (joint.kind === 'fingers' && joint.groove.in !== 'side') || (joint.kind === 'doweled' && joint.over);
  if (!shows) return undefined;
  return subtract(add(plan.side, plan.proud ?? zero), plan.groove.deep);
}

function frontGroove(bank: Bank, drawer: Drawer): Along {
  const whole = bottomGroove(bank, drawer);
  const stop = grooveStop(drawer);
  const { left, under, wide } = drawer.own ?? { left: zero, under: zero, wide: drawer.box.front.value };
  const near = add(whole.near, under);
  const from = stop && add(stop, left);
  return from ? { ...whole, near, from, to: subtract(wide, from) } : { ...whole, near };
}

/** Off the back end of a side, or with the room in it shared out off its front end. */
function backDado(bank: Bank, { box, plan }: Drawer, { dadoFrom = 'back' }: DrawerJoint): Along {
  const { fit } = plan.groove;
  const off = sum([plan.behind, plan.back, half(fit)]);
  return {
    id: 'back',
    takes: { part: 'back' },
    edge: { at: 'end', named: dadoFrom },
    near: dadoFrom === 'back' ? plan.behind : subtract(box.side.value, off),
    width: sumOf(plus('back', plan.back), plus('fit', fit)).value,
    depth: plan.backDado,
    fits: stockOfBank(bank, 'boxBack'),
  };
}

/** The groove for the strip a box hangs on. */
const grooveFor = ({ slides, fronts }: WorkedDrawers, drawer: Drawer): readonly Along[] =>
  slides.hung ? hungGroove(slides.hung, drawer, stockOfBank(fronts.bank, 'runner')) : [];

/** It goes in between the sides. */
const entering = { enters: true, end: 'left' } as const;

/** How high a box stands follows from its opening, unless it was given. */
const boxFitted = (bank: Bank, { no }: Drawer): Fitted => (frontNo(bank, no).boxHigh ? 'length' : 'both');

function boxPart(worked: WorkedDrawers, drawer: Drawer, at: BankPartsAt): readonly Part[] {
  const { fronts, joint } = worked;
  const { bank } = fronts;
  const { box, place } = drawer;
  const height = given('box-height', drawer.high);
  const groove = bottomGroove(bank, drawer);
  const id = (role: BoxRole) => drawerPart(bank.id, drawer, role);
  const layout = drawer.joint;
  const cuts = cutsOf(worked, drawer);
  const fitted = boxFitted(bank, drawer);
  const make = (role: BoxRole, own: Omit<New, 'id' | 'name' | 'fitted'> & Partial<Pick<New, 'fitted'>>) =>
    bankPart(fronts, at, { id: id(role), name: { role, ...place }, fitted, ...own });
  const enters = layout.kind === 'doweled' && !layout.over;
  const captured = bank.bottomHow === 'captured';
  const backHigh = captured ? height : box.backHeight;
  return [
    {
      ...make('side', { stock: 'side', length: box.side, width: height, end: 'back' }),
      copies: 2,
      pair: true,
      along: [groove, ...(joint.back ? [] : [backDado(bank, drawer, joint)]), ...grooveFor(worked, drawer)],
      dowels: cuts.dowels?.side ?? [],
      endCut: cuts.side,
    },
    ...(drawer.own
      ? []
      : [
          {
            ...make('boxfront', { stock: 'boxFront', length: box.front, width: height, enters, end: 'left' }),
            along: [frontGroove(bank, drawer)],
            rabbets: cuts.rabbets ?? [],
            dowels: cuts.dowels?.front ?? [],
            endCut: cuts.front,
          },
        ]),
    {
      ...make('boxback', { stock: 'boxBack', length: box.back, width: backHigh, ...entering }),
      along: captured ? [groove] : [],
      dowels: cuts.dowels?.back ?? [],
    },
    make('boxbottom', {
      stock: 'boxBottom',
      length: box.bottomWide,
      width: box.bottomDeep,
      ...entering,
      fitted: 'length',
    }),
  ];
}
