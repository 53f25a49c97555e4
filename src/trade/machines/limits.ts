import { add, isPositive, type Length, less, shortest, subtract, zero } from '../../length/length';
import type { Units } from '../../length/units';
import { passesFor } from '../grooves/wall-passes';
import { throughOf } from './blade-height';
import { depthPasses, usualOverlap } from './depths';
import { shopAt, type Taker } from './own-machine';
import { type SlotNeed, slotWants } from './plate';
import type { OwnMachine, Shop, ShopField, Tool } from './shop';

/** What a cut wants of a machine. What is not said of a piece puts no limit to it. Inches. */
export type Need =
  /** Along the rip fence; `rest` is what its other edge would be set to, kerf off, while the sheet is whole. */
  | (Piece & { readonly cut: 'rip' })
  /** Off a stop; `rest` is the other piece, kerf off, where that may be on the stop instead. */
  | (Piece & { readonly cut: 'crosscut' })
  | {
      /**
       * Across a board, off either end; along an edge by the fence, a rabbet or, `along`, a groove; the same stopped,
       * let down on the bit of a router table; from shoulder to shoulder off a stop: a notch, a lap.
       */
      readonly cut: 'groove' | 'edge' | 'along' | 'stopped' | 'shoulder';
      /** Near wall from the end that is brought to stop or fence. */
      readonly near: Length;
      readonly width: Length;
      readonly depth?: Length | undefined;
      /** The part along which it is laid out, and across: what lies along a fence. */
      readonly length?: Length | undefined;
      readonly across?: Length | undefined;
      /** How high it stands where it is cut on edge. */
      readonly stands?: Length | undefined;
      /** What the fence scale reads over the distance from teeth to work: a block, a stack that grows. */
      readonly rides?: Length | undefined;
      /** Of the job. */
      readonly units?: Units | undefined;
    }
  /** Holes at a drill press: their middle from the edge at its fence, how deep, how wide. */
  | { readonly cut: 'bore'; readonly off: Length; readonly depth: Length; readonly dia: Length }
  | SlotNeed;

type Piece = {
  readonly length?: Length | undefined;
  readonly width?: Length | undefined;
  readonly thickness?: Length | undefined;
  readonly rest?: Length | undefined;
  /** Of the job. */
  readonly units?: Units | undefined;
};

/** The shop's figures, and the most its arbor carries. */
export type Reach = Shop & { readonly arbor?: Length | undefined };

/** What a machine lacks for a cut, by how much. Inches. */
export type Lack =
  /** A figure of the shop is less than the cut wants. */
  | { readonly code: 'short'; readonly field: ShopField; readonly by: Length; readonly onEdge?: true }
  | { readonly code: 'cutter-too-wide'; readonly by: Length }
  /** Stopped at both ends in one pass, it wants a bit as wide as it is. */
  | { readonly code: 'cutter-too-narrow'; readonly by: Length }
  /** The board lies shorter along the fence than its far teeth stand from it: it turns. */
  | { readonly code: 'unsteady'; readonly by: Length }
  /** Nothing says that its arbor takes a stack. */
  | { readonly code: 'no-stack' };

/** A figure of the shop that is blank, and what the cut wants of it. Inches. */
export type Ask = { readonly field: ShopField; readonly wants: Length };

/** How a machine would make a cut: what it lacks, and what is not known of it and must be asked. */
export type Way = {
  readonly tool: Tool;
  /** The machine of the shop's own that works like it; the tool every shop has where left out. */
  readonly own?: OwnMachine;
  /** Off which end or edge; the other of a rip or a crosscut is that of the rest. */
  readonly from: 'reference' | 'other';
  /** Fence or stop, to the near teeth; nothing under a guide. */
  readonly figure?: Length | undefined;
  readonly lacks: readonly Lack[];
  readonly asks: readonly Ask[];
  /** Passes side by side, and one below the other. */
  readonly lines: number;
  readonly depths: number;
};

type Found = { readonly lacks: readonly Lack[]; readonly asks: readonly Ask[] };
const none: Found = { lacks: [], asks: [] };

const all = (found: readonly Found[]): Found => ({
  lacks: found.flatMap((f) => f.lacks),
  asks: found.flatMap((f) => f.asks),
});

/** A blank figure is asked, never assumed. */
function within(shop: Reach, field: ShopField, wants: Length | undefined): Found {
  if (!wants) return none;
  const has = shop[field];
  if (!has) return isPositive(wants) ? { lacks: [], asks: [{ field, wants }] } : none;
  return less(has, wants) ? { lacks: [{ code: 'short', field, by: subtract(wants, has) }], asks: [] } : none;
}

/**
 * What a machine lacks for a cut, set from the end or edge that lacks least.
 *
 * @param need of the cut; @param taker a tool, or a machine of the shop's own, held against its own figures
 * @param shop its figures: a blank one is asked
 * @example lacksOf(rip34off48, 'fence', shop).figure // 13 7/8, off the other edge: Example 4 of machines
 */
export function lacksOf(need: Need, taker: Taker, shop: Reach): Way {
  // nothing is kept of a router table that is not the shop's own
  if (taker === 'table') return { tool: taker, from: 'reference', lines: 1, depths: 1, ...none };
  if (typeof taker === 'string') return lacksAt(need, taker, shop);
  return { ...lacksAt(need, taker.like, shopAt(shop, taker)), own: taker };
}

function lacksAt(need: Need, tool: Tool, shop: Reach): Way {
  const ways = (
    [
      ['reference', false],
      ['other', true],
    ] as const
  ).flatMap(([from, other]) => {
    const way = wayFrom(need, { tool, shop, other });
    return way ? [{ tool, from, lines: 1, depths: 1, ...way }] : [];
  });
  const [first, second] = ways;
  if (!first) return { tool, from: 'reference', lines: 1, depths: 1, ...none };
  return second && lacksLess(second, first) ? second : first;
}

type At = { readonly tool: Tool; readonly shop: Reach; readonly other: boolean };
type Own = Found & Partial<Pick<Way, 'figure' | 'lines' | 'depths'>>;

function wayFrom(need: Need, at: At): Own | undefined {
  if (need.cut === 'bore') return at.other ? undefined : bored(need, at.shop);
  if (need.cut === 'slot')
    return at.other ? undefined : all(slotWants(need, at.shop).map((want) => within(at.shop, ...want)));
  if (need.cut === 'groove') return grooveWay(need, at);
  if (isGroove(need)) return at.other ? undefined : offOneEdge(need, at);
  if (at.tool === 'circular' || at.tool === 'plunge')
    return at.other ? undefined : circularWay(need, at.shop);
  const figure = at.other ? need.rest : need.cut === 'rip' ? need.width : need.length;
  if (at.other && !(figure && isPositive(figure))) return undefined;
  return { figure, ...(need.cut === 'rip' ? ripped(need, figure, at.shop) : crosscut(need, figure, at)) };
}

const ripped = (piece: Piece, figure: Length | undefined, shop: Reach): Found =>
  all([within(shop, 'capacity', figure), within(shop, 'tableHeight', throughOf(piece))]);

function crosscut(piece: Piece, figure: Length | undefined, { tool, shop }: At): Found {
  const { width, thickness } = piece;
  return tool === 'sliding'
    ? all([
        within(shop, 'slidingCross', width),
        within(shop, 'slidingStop', figure),
        within(shop, 'slidingHeight', thickness),
      ])
    : all([
        within(shop, 'sledCross', width),
        within(shop, 'stopReach', figure),
        within(shop, 'tableHeight', throughOf(piece)),
      ]);
}

function circularWay(piece: Piece & { readonly cut: string }, shop: Reach): Found {
  const { cut, length, width } = piece;
  return all([
    within(shop, 'circularGuide', cut === 'rip' ? length : width),
    within(shop, 'circularDepth', throughOf(piece)),
  ]);
}

const bored = ({ off, depth, dia }: Need & { readonly cut: 'bore' }, shop: Reach): Found =>
  all([within(shop, 'pressThroat', off), within(shop, 'pressStroke', depth), within(shop, 'pressBit', dia)]);

export type GrooveNeed = Extract<Need, { readonly near: Length }>;
export const isGroove = (need: Need): need is GrooveNeed => 'near' in need;

/** What is set off one edge or end alone: its card says off which. */
function offOneEdge(need: GrooveNeed, { tool, shop }: At): Own {
  const { cut, near, width, depth, across } = need;
  // one setting, so one pass
  if (cut === 'stopped' || tool === 'table') {
    const way = alongBit(need, near, shop);
    const narrow = shop.bit && less(shop.bit, width) ? subtract(width, shop.bit) : undefined;
    return { ...way, lines: 1, lacks: narrow ? [...way.lacks, tooNarrow(narrow)] : way.lacks };
  }
  if (cut === 'shoulder') return { figure: near, ...offStop(need, { tool, shop }) };
  const high = within(shop, 'tableHeight', depth);
  const turns = turning(add(near, width), across);
  return {
    ...(isPositive(near) ? { figure: near } : {}),
    ...all([within(shop, 'capacity', near), high, turns]),
    ...stacked(width, shop.arbor, shop),
  };
}

/** From shoulder to shoulder off the stop of a sled, or of a sliding saw where its arbor takes a stack. */
function offStop(
  { near, depth, across, stands }: GrooveNeed,
  { tool, shop }: Pick<At, 'tool' | 'shop'>,
): Found {
  const above = tool === 'sliding';
  const [cross, stop, height] = above ? ofSliding : ofSled;
  const bare: Found = above && !shop.slidingStack ? { lacks: [{ code: 'no-stack' }], asks: [] } : none;
  const fits = all([within(shop, cross, across), within(shop, stop, near), bare]);
  if (!above || !stands) return all([fits, within(shop, height, depth)]);
  // what cuts comes down on the edge that is up
  const high = within(shop, height, stands);
  return all([fits, { ...high, lacks: high.lacks.map((lack) => ({ ...lack, onEdge: true })) }]);
}

const ofSled = ['sledCross', 'stopReach', 'tableHeight'] as const;
const ofSliding = ['slidingCross', 'slidingStop', 'slidingHeight'] as const;

const tooNarrow = (by: Length): Lack => ({ code: 'cutter-too-narrow', by });

function grooveWay(need: GrooveNeed, { tool, shop, other }: At): Own | undefined {
  const { near, width, depth, length, across, rides = zero } = need;
  if (tool === 'router') return other ? undefined : routed(need, shop);
  if (tool === 'circular' || tool === 'plunge')
    return other
      ? undefined
      : all([within(shop, 'circularDepth', depth), within(shop, 'circularGuide', across)]);
  if (other && !length) return undefined;
  const from = other && length ? subtract(subtract(length, near), width) : near;
  if (tool === 'table') return alongBit(need, from, shop);
  if (tool === 'fence') {
    const figure = add(from, rides);
    const turns = turning(add(from, width), across);
    const rest = all([within(shop, 'capacity', figure), within(shop, 'tableHeight', depth), turns]);
    return { figure, ...rest, ...stacked(width, shop.arbor, shop) };
  }
  const [cross, stop, height] = tool === 'sled' ? ofSled : ofSliding;
  const arbor = tool === 'sled' ? shop.arbor : shop.slidingStack;
  const bare: Found = tool === 'sliding' && !arbor ? { lacks: [{ code: 'no-stack' }], asks: [] } : none;
  const rest = all([
    within(shop, cross, across),
    within(shop, stop, from),
    within(shop, height, depth),
    bare,
  ]);
  return { figure: from, ...rest, ...stacked(width, arbor, shop) };
}

/** Along the fence of a router table, its bit from below: a board lies along it no less than its far wall stands. */
function alongBit(need: GrooveNeed, from: Length, shop: Reach): Own {
  const { width, across } = need;
  const { lacks, asks, lines, depths } = routed({ ...need, across: undefined }, shop);
  return {
    figure: from,
    ...all([within(shop, 'capacity', from), turning(add(from, width), across), { lacks, asks }]),
    lines,
    depths,
  };
}

/** A board turns where less of it lies along a fence than its far teeth stand from that. */
function turning(far: Length, across: Length | undefined): Found {
  const off = across ? subtract(far, across) : zero;
  return isPositive(off) ? { lacks: [{ code: 'unsteady', by: off }], asks: [] } : none;
}

/** A groove wider than the arbor carries is cut in passes. */
function stacked(width: Length, arbor: Length | undefined, shop: Reach): Pick<Way, 'lines'> {
  const passes = arbor && isPositive(arbor) ? linesOf(width, shortest(width, arbor), shop) : 1;
  return { lines: passes };
}

function linesOf(width: Length, cutter: Length, { overlap = usualOverlap.in }: Reach): number {
  const passes = passesFor(width, cutter, overlap);
  return passes.ok ? passes.value.length : 1;
}

function routed(
  { width, depth, across, units }: GrooveNeed,
  shop: Reach,
): Found & Required<Pick<Way, 'lines' | 'depths'>> {
  const { bit } = shop;
  const wide: Found = !bit
    ? { lacks: [], asks: [{ field: 'bit', wants: width }] }
    : less(width, bit)
      ? { lacks: [{ code: 'cutter-too-wide', by: subtract(bit, width) }], asks: [] }
      : none;
  return {
    ...all([wide, within(shop, 'routerReach', depth), within(shop, 'routerGuide', across)]),
    lines: bit && isPositive(bit) && !less(width, bit) ? linesOf(width, bit, shop) : 1,
    depths: depth ? depthPasses(depth, shop.routerPass, units).count : 1,
  };
}

/** Fewer things lacking; of as many, less of them in all. */
function lacksLess(a: Way, b: Way): boolean {
  if (a.lacks.length !== b.lacks.length) return a.lacks.length < b.lacks.length;
  return less(missing(a), missing(b));
}
const missing = ({ lacks }: Way): Length =>
  lacks.reduce((by, lack) => (lack.code === 'no-stack' ? by : add(by, lack.by)), zero);

/** Nothing is lacking and nothing is left to ask. */
export const isClear = ({ lacks, asks }: Way): boolean => lacks.length === 0 && asks.length === 0;
