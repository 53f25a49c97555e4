import type { Length } from '../../length/length';
import type { Rounded } from '../../length/round';
import type { DowelRow } from '../boxes/dowel-rows';
import type { Takes } from '../carcass/part-name';
import type { FastenerRow } from '../fasteners/row';
import type { Face } from '../grooves/layout';
import type { Wall } from '../grooves/wall-passes';
import type { Way } from '../machines/limits';
import type { Bore } from '../shelves/bore';

/** What stands in a groove; one of a run has its number, a shelf where there are several. */
export type Seat =
  | { readonly in: 'run' | 'partition'; readonly no: string }
  | { readonly in: 'bottom' | 'top' | 'shelf'; readonly no?: string }
  /** In one that was added by hand: as whoever added it said. */
  | { readonly in: 'said'; readonly said: string; readonly no?: never };

/** Which of its kind an operation is on its part, as a code: what is said of it stands in the screens. Inches. */
export type Which =
  /** Grooves that cannot be set yet stand as one. */
  | { readonly is: 'not-set-out' }
  /** `wall` where it is cut in passes; `face` of a partition. */
  | { readonly is: 'groove'; readonly seat: Seat; readonly wall?: Wall; readonly face?: Face }
  /** What lies in a rabbet, notch or groove; stopped, its ends as marked from the `end` of the part. */
  | {
      readonly is: 'takes';
      readonly takes: Takes;
      readonly stopped?: { readonly from: Length; readonly to: Length; readonly end: string };
    }
  /**
   * A row of holes, `face` of a partition; `short`: the drill press that was said does not reach it by so much,
   * `passed`: what else presses lack for it.
   */
  | {
      readonly is: 'row';
      readonly bore: Bore;
      readonly face?: Face;
      readonly short?: Length;
      readonly passed?: readonly Way[];
    }
  /** Holes for the dowels of front or back, as marked from the top edge; beside one end or both. */
  | { readonly is: 'dowels'; readonly row: DowelRow; readonly marks: readonly Length[] }
  /** Holes for what holds a butted joint. */
  | { readonly is: 'fasteners'; readonly row: FastenerRow }
  /** Cut away beside a tongue, at that end of the part. */
  | { readonly is: 'tongue'; readonly end: string }
  | { readonly is: 'lap'; readonly no: number }
  /** A notch at the end of an edge, so high up from the `end`. */
  | { readonly is: 'corner'; readonly high: Rounded; readonly end: string }
  /** A mitre; of a part cut to length already, at which ends. */
  | { readonly is: 'long-points'; readonly ends?: readonly string[] }
  | { readonly is: 'scrap' }
  /** As whoever added it by hand called it. */
  | { readonly is: 'own'; readonly said: string }
  /** An edge on the story stick, as marked from its `end`; below 0 it stands past it. */
  | {
      readonly is: 'edge';
      readonly edge: 'top' | 'bottom';
      readonly at: Length;
      readonly end: 'top' | 'bottom';
    }
  /** A step of putting up where no drawers stand: nothing of them is minded in it. */
  | { readonly is: 'no-drawers'; readonly trays: boolean }
  /** A back in grooves is put in as its case is glued up: which is the last part on, or that it slides in after. */
  | { readonly is: 'back-in'; readonly last: 'side' | 'back' }
  /** A box that runs in wood, not on slides. */
  | { readonly is: 'in-wood' }
  /** Holes for a pull, so far down as marked; from both ends or from one. */
  | { readonly is: 'holes'; readonly down: Rounded; readonly bothEnds: boolean };
