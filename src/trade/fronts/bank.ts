import type { Length, Ratio } from '../../length/length';
import type { Units } from '../../length/units';
import type { Corner } from './corner';
import type { Hanging } from './hanging';

/** A front of a bank, 1 the top one, as decided. Inches. */
type Front = {
  /** Height given: never altered. */
  readonly high?: Length | undefined;
  /** `weights`: its share beside the others; 1 when not said. */
  readonly weight?: Ratio | undefined;
  /** Height of its box; as high as may be when not said. */
  readonly boxHigh?: Length | undefined;
  /** What the stick measured that its slides stood on. */
  readonly stick?: Length | undefined;
};

/** A front of one column as measured. Distances from the edge the fitting began at to its far edge. Inches. */
export type Fitted = {
  readonly left?: Length | undefined;
  readonly right?: Length | undefined;
  /** Taken up: what comes after is reckoned from it. */
  readonly usedLeft?: Length | undefined;
  readonly usedRight?: Length | undefined;
  /** It keeps this height whatever the opening measures: the fitting has begun, or it was cut already. */
  readonly held?: Length | undefined;
  /** What came off it since, to keep the gaps; negative: it was made so much taller. */
  readonly trim?: Length | undefined;
};

/** One column of a bank: its opening as measured, what is used of it, and its fronts as fitted. Inches. */
export type Column = {
  readonly front?: Length | undefined;
  readonly back?: Length | undefined;
  readonly left?: Length | undefined;
  readonly right?: Length | undefined;
  readonly usedFront?: Length | undefined;
  readonly usedBack?: Length | undefined;
  readonly usedLeft?: Length | undefined;
  readonly usedRight?: Length | undefined;
  readonly fitted: Readonly<Record<number, Fitted>>;
};

/** What a piece of a drawer is of; what its box hangs on. */
export type BankStock = 'front' | 'side' | 'boxFront' | 'boxBack' | 'boxBottom' | 'runner';

/**
 * A bank of drawers as decided. What is not said is `undefined`: a usual figure stands in, or it is asked for.
 * Inches.
 */
export type Bank = Corner &
  Hanging & {
    readonly id: string;
    /** The unit system of its job; inches when not said. */
    readonly units?: Units | undefined;
    readonly name: string;
    /**
     * The case it stands in, its first bay from the left, and what it stands on there: a middle rail or a fixed shelf.
     */
    readonly of?: string | undefined;
    readonly bay: number;
    readonly over?: string | undefined;
    /** Columns side by side, one a bay. */
    readonly across: number;
    /** An opening in no case of the job: wide, high, deep, and its lower edge over what the sticks stand on. */
    readonly width?: Length | undefined;
    readonly height?: Length | undefined;
    readonly depth?: Length | undefined;
    readonly sill?: Length | undefined;
    readonly fit: 'inset' | 'overlay';
    readonly count: number;
    /**
     * Reveals. Overlay: `top`, `bottom` and `side` are how far the front covers, `gap` between fronts over a partition.
     */
    readonly top?: Length | undefined;
    readonly between?: Length | undefined;
    readonly bottom?: Length | undefined;
    readonly side?: Length | undefined;
    readonly gap?: Length | undefined;
    readonly share: 'equal' | 'step' | 'ratio' | 'weights';
    readonly step?: Length | undefined;
    readonly ratio?: Ratio | undefined;
    /** Equal fronts cut all alike; the left-over goes into the gaps. */
    readonly alike: boolean;
    /** No front less than what goes into its drawer asks for. */
    readonly contentsFirst: boolean;
    readonly order: 'down' | 'up';
    /** Where the difference goes once fronts are fitted. */
    readonly goes: 'fronts' | 'gaps' | 'last';
    /** Fronts of a column out of one blank, grain running through. */
    readonly fromBlank: boolean;
    readonly trim?: Length | undefined;
    readonly band?: Length | undefined;
    readonly stocks: Partial<Readonly<Record<BankStock, string>>>;
    /** Slides: long, high, room at each side, their centre up the box, the box over the lower edge of the front. */
    readonly slideLong?: Length | undefined;
    readonly slideHigh?: Length | undefined;
    readonly clearance?: Length | undefined;
    readonly centre?: Length | undefined;
    readonly boxUp?: Length | undefined;
    /** What a pair carries, pounds, by the maker's word. */
    readonly rating?: Ratio | undefined;
    /** Boxes. */
    readonly boxDeep?: Length | undefined;
    readonly lap?: Length | undefined;
    readonly backDado?: Length | undefined;
    readonly behind?: Length | undefined;
    readonly grooveDeep?: Length | undefined;
    readonly grooveUp?: Length | undefined;
    readonly grooveFit?: Length | undefined;
    readonly ease?: Length | undefined;
    readonly play?: Length | undefined;
    readonly bottomHow: 'captured' | 'slid-in';
    readonly tailsHow: 'free' | 'template';
    /** How many; 0: worked out from the height and the groove. */
    readonly tails: number;
    readonly halfPin?: Length | undefined;
    readonly pin?: Length | undefined;
    readonly slope?: Ratio | undefined;
    readonly pitch?: Length | undefined;
    /** Pulls on each front: none, one or two; between their screws, from the ends, down from the top edge. */
    readonly pulls: number;
    /** Screws that hold one front from inside its box. */
    readonly frontScrews: number;
    readonly centres?: Length | undefined;
    readonly fromEnd?: Length | undefined;
    readonly fromTop?: Length | undefined;
    /** By number from the top, 1 the first. */
    readonly fronts: Readonly<Record<number, Front>>;
    /** By number from the left, 1 the first. */
    readonly columns: Readonly<Record<number, Column>>;
  };

/** A bank before anything is said of it. @example newBank('b1').count // 4 */
export const newBank = (id: string): Bank => ({
  id,
  name: '',
  bay: 1,
  across: 1,
  fit: 'inset',
  count: 4,
  share: 'equal',
  alike: false,
  contentsFirst: false,
  order: 'down',
  goes: 'gaps',
  fromBlank: false,
  stocks: {},
  bottomHow: 'captured',
  tailsHow: 'free',
  tails: 0,
  pulls: 0,
  frontScrews: 4, // two near each end: common practice, no source
  fronts: {},
  columns: {},
});

/** A front as decided; nothing said of it yet is an empty one. */
export const frontNo = (bank: Bank, no: number): Front => bank.fronts[no] ?? {};

/** A column as measured; nothing measured yet is an empty one. */
export const columnNo = (bank: Bank, no: number): Column => bank.columns[no] ?? { fitted: {} };

/** A front of a column as fitted; not fitted is empty. */
export const fittedNo = (column: Column, no: number): Fitted => column.fitted[no] ?? {};

/** What boxes wait for beside the front of the opening: its width at the back. @example backOf('b1') // 'b1~back' */
export const backOf = (bank: string): string => `${bank}~back`;
