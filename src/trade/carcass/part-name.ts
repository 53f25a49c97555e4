import type { Face } from '../grooves/layout';
import type { Inside, StockRole } from './case';

type Hand = 'left' | 'right';

/** The end of a part's id, where that says what it is: there is one of its kind, or its pieces are numbered. */
export type SingleRole =
  | Hand
  | 'bottom'
  | 'top'
  | 'back'
  | 'cleat'
  | 'stile'
  | 'middle'
  | 'railtop'
  | 'railbottom'
  | 'toe'
  | 'loose'
  | 'edgefront'
  | 'edgeleft'
  | 'edgeright'
  | 'baserail'
  | 'basecross'
  | 'nailer'
  | 'plinthrail'
  | 'plinthcross'
  | 'fillerleft'
  | 'fillerright';

/** A piece of a drawer's box, as its id ends. */
export type BoxRole = 'side' | 'boxfront' | 'boxback' | 'boxbottom';

/** What boxes hang on where that is no slide, as its id ends: what carries a box, what lies over it, what stops it. */
export type HungRole = 'runner' | 'hangstrip' | 'kicker' | 'stopblock';

/** A drawer by its number from the top; its column where there are several. */
export type DrawerPlace = { readonly no: number; readonly column?: number };

/** What a part is, as a code: what is said of it stands in the screens. */
export type PartName =
  | { readonly role: SingleRole }
  /** From the left; the only one has no number. */
  | { readonly role: 'partition'; readonly no?: number }
  /** What stands in a bay; the only bay has no number. `no`: which of its kind there, from the bottom up. */
  | { readonly role: 'inside'; readonly kind: Inside['kind']; readonly bay?: number; readonly no?: number }
  /** Edging on the front of loose shelves: their bay and number. */
  | { readonly role: 'shelfedge'; readonly bay?: number; readonly no?: number }
  | (DrawerPlace & { readonly role: 'front' | BoxRole | HungRole })
  /** What the fronts of a column are cut out of. */
  | { readonly role: 'blank'; readonly column?: number }
  /** A board laid out by hand, as the user calls it. */
  | { readonly role: 'board'; readonly named: string };

/** Which of the pieces of a part: of a pair its hand, else its number. A partition's faces are told apart. */
export type CopyName = Hand | Face | number;

/** One piece of a part: which copy where there are several, and whether it takes the place of a spoiled one. */
export type PieceName = {
  readonly of: PartName;
  readonly copy?: CopyName | undefined;
  readonly recut?: boolean;
};

/** What else is worked on: the drawer as a whole, a slide of it, a case, scrap for a test cut, the job as a whole. */
export type Thing =
  | PartName
  | (DrawerPlace & { readonly role: 'drawer' })
  /** A slide of it, or what is there in place of one. */
  | (DrawerPlace & {
      readonly role: 'slide';
      readonly hand: Hand;
      readonly as?: Extract<HungRole, 'runner' | 'hangstrip' | 'kicker'>;
    })
  | { readonly role: 'case'; readonly named: string }
  | { readonly role: 'scrap' | 'job' };

/** What an operation is done to. */
export type WorkName = Omit<PieceName, 'of'> & {
  readonly of: Thing;
  /** Its grooves: where the same setting cuts several, its copy stands apart. */
  readonly grooved?: true;
};

/** A part of the case that lies in a rabbet, notch or groove; of several cleats, which; a strip that holds shelves. */
export type TakesPart = {
  readonly part: StockRole | 'strip' | 'runner' | 'kicker';
  readonly no?: number | undefined;
};

/** What lies in one; in one that was added by hand what was said of it. */
export type Takes =
  | (TakesPart & { readonly said?: never })
  | { readonly said: string; readonly part?: never };
