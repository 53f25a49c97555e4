import { isNegative, isPositive, type Length, less, over, subtract, times, zero } from '../../length/length';
import { throughOf } from './blade-height';
import { type GrooveNeed, isGroove, lacksOf, type Need, type Reach } from './limits';
import { shopAt } from './own-machine';
import type { OwnMachine, Tool } from './shop';

/** What would do where no machine of the shop can, on which of its own where it is one of those. Inches. */
export type Remedy = Would & { readonly own?: OwnMachine };

type Would =
  /** From either face, half the depth each. */
  | { readonly code: 'both-faces'; readonly each: Length }
  /** On the table saw, turned over between, the same edge on the fence: half the height each. */
  | { readonly code: 'two-passes'; readonly each: Length }
  /** Rough, first, by the circular saw; then by fence or stop. */
  | { readonly code: 'relief-cut' }
  /** The mitre gauge off a block clamped to the fence: the longest piece that makes. */
  | { readonly code: 'block'; readonly longest: Length }
  | { readonly code: 'bit'; readonly most: Length; readonly reach: Length }
  /** The other end on the stop, or the other edge on the fence: so far to the near teeth. */
  | { readonly code: 'other-end'; readonly figure: Length }
  | { readonly code: 'template' };

/**
 * What would make a cut that no machine of the shop makes; never a hand tool.
 *
 * @example remediesFor(groove, shop) // a bit no wider than 7/16 that reaches 15/16: Example 5 of machines
 */
export function remediesFor(need: Need, shop: Reach): readonly Remedy[] {
  const own = (shop.own ?? []).flatMap((one) =>
    would(need, shopAt({}, one))
      .filter(({ code }) => onTool[code] === one.like)
      .map((remedy) => ({ ...remedy, own: one })),
  );
  const usual = would(need, shop);
  // what is done before anything else can be, and what is no machine's, comes last
  const last = usual.filter(({ code }) => !onTool[code]);
  return [...usual.filter(({ code }) => onTool[code]), ...own, ...last];
}

/** The tool that does it. */
const onTool: Readonly<Partial<Record<Would['code'], Tool>>> = {
  'both-faces': 'circular',
  'two-passes': 'fence',
  block: 'fence',
  bit: 'router',
};

function would(need: Need, shop: Reach): readonly Would[] {
  if (need.cut === 'bore') return [{ code: 'template' }];
  if (need.cut === 'slot') return [];
  if (need.cut === 'groove') return grooveRemedies(need, shop);
  if (isGroove(need)) return [...otherEnd(need, shop), { code: 'template' }];
  const each = over(throughOf(need) ?? zero, 2n);
  const faces = inTwo(each, shop.circularDepth) ? [{ code: 'both-faces', each } as const] : [];
  const turned =
    need.cut === 'rip' && inTwo(each, shop.tableHeight) && onlyTooLow(need, shop)
      ? [{ code: 'two-passes', each } as const]
      : [];
  const longest = blockLongest(shop);
  const block =
    need.cut === 'crosscut' && longest && need.length && !less(longest, need.length)
      ? [{ code: 'block', longest } as const]
      : [];
  return [...faces, ...turned, ...block, { code: 'relief-cut' }];
}

/** What half the depth does for, and the whole does not. */
const inTwo = (each: Length, deepest: Length | undefined): boolean =>
  deepest !== undefined && less(deepest, times(each, 2n)) && !less(deepest, each);

/** The fence takes it but for the height of its blade. */
const onlyTooLow = (need: Need, shop: Reach): boolean =>
  lacksOf(need, 'fence', shop).lacks.every((lack) => lack.code === 'short' && lack.field === 'tableHeight');

/** From the other end or edge the fence or stop reaches it, and nothing else is short. */
function otherEnd(need: GrooveNeed, shop: Reach): readonly Would[] {
  const { cut, near, width, length } = need;
  if (!length || cut === 'stopped') return [];
  const figure = subtract(subtract(length, near), width);
  const tool = cut === 'shoulder' ? 'sled' : 'fence';
  const reached = !isNegative(figure) && lacksOf({ ...need, near: figure }, tool, shop).lacks.length === 0;
  return reached ? [{ code: 'other-end', figure }] : [];
}

function grooveRemedies({ width, depth, across }: GrooveNeed, shop: Reach): readonly Would[] {
  const { bit, routerReach: reach, routerGuide: guide } = shop;
  const wanted = depth ?? zero;
  const bitOff = (bit && less(width, bit)) || (reach && less(reach, wanted));
  if (bitOff && guide && across && !less(guide, across)) return [{ code: 'bit', most: width, reach: wanted }];
  return [{ code: 'template' }];
}

/** A gauge with a block clamped to the fence is a sled that reaches what the fence does, less the block. */
function blockLongest({ capacity, block }: Reach): Length | undefined {
  return capacity && block && isPositive(block) ? subtract(capacity, block) : undefined;
}
