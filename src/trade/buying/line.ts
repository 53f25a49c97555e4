import type { Length, Ratio } from '../../length/length';
import type { PartName } from '../carcass/part-name';
import type { BiscuitNo } from '../fasteners/biscuits';
import type { DowelSize } from '../fasteners/dowels';
import type { SheetNeed } from './need';

/** Where a line of the list stands, in the order of the list. */
export const groups = [
  'sheets',
  'sticks',
  'solid',
  'fillers',
  'edging',
  'pins',
  'clips',
  'strips',
  'slides',
  'screws',
  'dowels',
  'biscuits',
] as const;
export type Group = (typeof groups)[number];

export type Unit =
  | 'sheet'
  | 'stick'
  | 'board-foot'
  | 'foot'
  | 'pair'
  | 'screw'
  | 'strip'
  | 'dowel'
  | 'biscuit'
  | 'pin'
  | 'clip';

/** Solid parts of one stock by the board foot. */
export type BoardFeet = {
  readonly pieces: number;
  /** What the parts hold; what to buy, waste in it, up to a tenth. Board feet. */
  readonly net: Ratio;
  readonly buy: Ratio;
  /** Share bought over what the parts hold. */
  readonly waste: Ratio;
  /** Thickness reckoned with, inches, and where it comes from. */
  readonly thick: Length;
  readonly as: 'rough' | 'measured' | 'planned';
};

/** So many boxes of a hundred screws, and of fifty. */
export type Boxes = { readonly hundreds: number; readonly fifties: number };

/** Why so many: data for one sentence. Lengths in inches. */
export type Why =
  /** Taken by the layout, less those at hand; `solid`: the same wood by the board foot. */
  | { readonly code: 'layout'; readonly need: SheetNeed; readonly solid?: BoardFeet }
  /** One part's worth for test cuts: nothing left that holds one. */
  | { readonly code: 'tests' }
  | { readonly code: 'board-feet'; readonly solid: BoardFeet }
  /** A strip that closes a case to the wall beside it, as ripped. */
  | {
      readonly code: 'filler';
      readonly side: 'left' | 'right';
      readonly wide: Length;
      readonly long: Length;
    }
  /**
   * `around`: every front's four edges and every shelf's front edge together; `more`: share bought over that; `thick`
   * and `wide`: of the band.
   */
  | {
      readonly code: 'band';
      readonly fronts: number;
      readonly shelves: number;
      readonly around: Length;
      readonly more: Ratio;
      readonly thick: Length;
      readonly wide: Length;
    }
  /** `tooLong`: so much over what the case allows, by drawers that stand in it. */
  | {
      readonly code: 'slides';
      readonly long: Length;
      readonly drawers: number;
      readonly banks: readonly string[];
      readonly tooLong?: Length;
    }
  | {
      readonly code: 'screws';
      readonly long: Length;
      readonly gauge?: 6 | 8 | 10;
      readonly count: number;
      readonly uses: readonly {
        readonly bank: string;
        readonly pieces: number;
        readonly each: number;
        readonly along?: true;
      }[];
      readonly boxes: Boxes;
    }
  | { readonly code: 'dowels'; readonly size: DowelSize; readonly uses: readonly Use[] }
  | { readonly code: 'biscuits'; readonly no: BiscuitNo; readonly uses: readonly Use[] }
  /** Four a shelf, and spares; of pins how wide their holes are, where they are laid out. */
  | { readonly code: 'pins'; readonly dia?: Length; readonly uses: readonly Use[]; readonly spares: number }
  | { readonly code: 'clips'; readonly width: Length; readonly uses: readonly Use[]; readonly spares: number }
  /** `pieces`: the longest of each, and so many alike; `from`: as sold, and what is left of those of one groove. */
  | {
      readonly code: 'strips';
      readonly width: Length;
      readonly thick: Length;
      readonly pieces: readonly Length[];
      readonly each: number;
      readonly from?: { readonly sold: Length; readonly cut: Length; readonly left: readonly Length[] };
    };

/** How many, and where: pieces, or shelves. */
type Use = { readonly place: string; readonly count: number };

/** A line of the list. */
export type BuyingLine = {
  /** Two words joined by a stroke, made of what it is and never of how many: its tick stays when the count changes. */
  readonly id: string;
  readonly group: Group;
  /** Name of the stock, or of what it is for. */
  readonly name: string;
  /** What to buy, > 0, in its unit. */
  readonly amount: Ratio;
  readonly unit: Unit;
  readonly why: Why;
};

/** What the job asks for and the list cannot count. Lengths in inches. */
export type NotListed =
  /** Sheet parts of a stock nobody handed a layout or a bound for. */
  | { readonly code: 'not-laid-out'; readonly name: string; readonly pieces: number }
  /** Parts of no stock. */
  | { readonly code: 'no-stock'; readonly pieces: number; readonly names: readonly PartName[] }
  /** Its fronts do not work out, so neither slides nor band are counted. */
  | { readonly code: 'bank-not-worked'; readonly name: string }
  /** Nobody said how long its slides are. */
  | { readonly code: 'slides-not-said'; readonly name: string; readonly drawers: number };

/** A length as a word of an id. @example idOf(inches(5n, 4n)) // '5~4' */
export const idOf = (x: Length): string => (x.d === 1n ? `${x.n}` : `${x.n}~${x.d}`);
