import type { Length } from '../../length/length';
import type { Rounded, Rounding } from '../../length/round';
import { markAt, type Tape } from '../../length/tape';
import type { DowelRow } from '../boxes/dowel-rows';
import type { FastenerRow } from '../fasteners/row';
import type { Board } from '../grooves/board';
import type { Face } from '../grooves/layout';
import type { Gauge } from '../machines/gauges';
import type { MachineId } from '../machines/machines';
import type { On, Side } from '../setups/on';
import type { What } from '../setups/operation';
import type { FaceName } from '../setups/placing';
import type { Toward } from '../setups/turn';
import type { Bore } from '../shelves/bore';
import type { Sum } from '../sums/sum';
import type { StockRole } from './case';
import type { PartName, Takes, TakesPart } from './part-name';

/** A size of a part: exact, with its sum, and the mark it is cut to. */
export type Size = {
  readonly sum: Sum;
  readonly mark: Rounded;
  /** `floor`: it must enter an opening. `halfExpand`: a flush fit. */
  readonly mode: Rounding;
  readonly spans?: Span;
  /** It equals a size of unlike stock or grain, and one mark for both is not what each would have: what was said. */
  readonly unlike?: Shares | 'asked';
};

/** Whether equals of unlike stock or grain share a mark. */
export type Shares = 'together' | 'apart';

/** The opening of its case a size goes across: equal lengths of one opening share a mark, that of what sets it. */
type Span = { readonly opening: string; readonly sets: boolean };

/** A rabbet: `width` across the face from the edge or end, `depth` into it. Inches. */
export type Rabbet = {
  readonly id: string;
  readonly takes: Takes;
  readonly along: Side;
  /** The stock that lies in it: its width wants that measured. */
  readonly fits?: string | undefined;
  readonly width: Length;
  readonly depth: Length;
  /** Stopped: where it begins and ends, from the reference end; the whole edge when not said. */
  readonly from?: Length | undefined;
  readonly to?: Length | undefined;
};

/**
 * A notch in the back edge, or the first of `edgesOf` where a part has none: from the reference end to its near side,
 * long along the part, deep into it. Inches.
 */
export type Notch = {
  readonly id: string;
  readonly near: Length;
  readonly long: Length;
  readonly deep: Length;
  readonly fits?: string | undefined;
  /** What lies in it, where that is no cleat. */
  readonly takes?: Takes;
};

/** A lap: near shoulder from the reference end, long along the part, deep into the face. Inches. */
export type Lap = Notch;

/** Where a part stands with nothing cut for it: its near face, from the reference end; on which face. Inches. */
export type Line = {
  readonly id: string;
  readonly takes: TakesPart;
  readonly near: Length;
  readonly face?: Face;
};

/** A groove along an edge or end: its near wall from that edge, so wide, so deep. Inches. */
export type Along = {
  readonly id: string;
  /** Grooves of other shelves that are this one. */
  readonly also?: readonly string[];
  readonly takes: Takes;
  /** Of a partition, which. */
  readonly face?: Face;
  /** It is cut in the face that lies outside, not in that of the other grooves. */
  readonly outside?: true;
  readonly edge: Side;
  readonly near: Length;
  readonly width: Length;
  readonly depth: Length;
  readonly fits?: string | undefined;
  /** Stopped: where it begins and ends, from the reference end; the whole edge when not said. */
  readonly from?: Length | undefined;
  readonly to?: Length | undefined;
};

/** A tongue at an end of a part: so long, what is cut away beside it, and the face that is cut. Inches. */
export type Tongue = {
  readonly end: string;
  readonly long: Length;
  readonly shoulder: Length;
  readonly face: { readonly named: FaceName; readonly toward: Toward };
};

/** What is cut at an end of a part to join it, all of it at one setup: so deep into it, inches. */
export type EndCut = {
  readonly what: What;
  readonly machine: MachineId;
  readonly height: Length;
  /** How far in from the end it lies. */
  readonly along: Length;
  /** What cuts it, and what is set to what, where that is more than a height. */
  readonly cutter?: Length | undefined;
  readonly sets?: Gauge | undefined;
  readonly figure?: Length | undefined;
  readonly on: On;
  /** The part whose own end is cut first: this one is marked from it. */
  readonly markedFrom?: string | undefined;
};

/** A notch out of the lower end of the front edge of an upright: so deep into it, so high up. Inches. */
export type Corner = { readonly id: string; readonly deep: Length; readonly high: Length };

/** When a part is cut: for the dry-fit, fitted to what the dry-fit shows, or whenever it suits. */
type Stage = 'carcass' | 'after-dry-fit' | 'any-time';

/** What of a part is fitted to an opening as built: its length alone, or its width as well. */
export type Fitted = 'length' | 'both';

/** A part of the job, and everything cut in it. Inches. */
export type Part = {
  /** Where it comes from: stable whatever its size. */
  readonly id: string;
  readonly of: string;
  readonly name: PartName;
  /** How many alike; a part that has its own name stands alone. */
  readonly copies: number;
  readonly stock: StockRole | undefined;
  readonly stuff: string | undefined;
  readonly thickness: Length | undefined;
  readonly length: Size;
  readonly width: Size;
  /** The end everything is measured from. */
  readonly end: string;
  readonly stage: Stage;
  /** Where something must come before: the last cut waits, and the rip only where its width is fitted too. */
  readonly fitted?: Fitted;
  /** Grooves across it, laid out as a board. */
  readonly board?: Board | undefined;
  readonly rabbets: readonly Rabbet[];
  readonly notches: readonly Notch[];
  readonly laps: readonly Lap[];
  /** They are cut in the face that is not seen: it lies over what it is lapped with. */
  readonly lapsFromBack?: boolean;
  /** Its ends that are mitred, square to its faces; it is as long as its long points are apart. */
  readonly mitres?: readonly string[];
  /** Tongues at its ends. */
  readonly tongues?: readonly Tongue[];
  /** Where parts stand against it with nothing cut for them. */
  readonly lines?: readonly Line[];
  /** Grooves along its edges, cut off a fence before any end. */
  readonly along?: readonly Along[];
  readonly corner?: Corner | undefined;
  readonly endCut?: EndCut | undefined;
  /** Rows of holes bored in its faces. */
  readonly bores?: readonly Bore[];
  /** Holes for dowels, a row across an end or beside one. */
  readonly dowels?: readonly DowelRow[];
  /** Rows of holes for what holds it where it is butted. */
  readonly fasteners?: readonly FastenerRow[];
  /** Its two copies are a left and a right one. */
  readonly pair?: boolean;
  /** Operations of others that come before its first fitted cut. */
  readonly waits?: readonly string[];
  /** The opening it must pass, by its bank: not cut to fit before that is measured. */
  readonly opening?: string;
  /** The part whose piece it is cut out of: it needs none of its own. */
  readonly outOf?: string;
  /** The part it is mirrored by, or cut with. */
  readonly mates: readonly string[];
  /** Edging with mitred ends: to the long points. */
  readonly longPoint?: Sum;
  /** A strip ripped from solid stuff, not from a sheet. */
  readonly strip: boolean;
  /** Held by screws alone, to come off again. */
  readonly comesOff: boolean;
  /** A piece of the face frame. */
  readonly inFrame: boolean;
};

/** A size at the tape. @example sizeAt(sum, '1/32', 'floor').mark.value */
export const sizeAt = (sum: Sum, tape: Tape, mode: Rounding = 'halfExpand'): Size => ({
  sum,
  mark: markAt(sum.value, tape, mode),
  mode,
});
