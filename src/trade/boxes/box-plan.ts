import type { Length } from '../../length/length';
import type { Tape } from '../../length/tape';
import type { DowelError, DowelSize, DowelWarning } from '../fasteners/dowels';
import type { FingersHow } from '../fronts/corner';

/** A drawer box as decided: back housed in the sides. Inches, thicknesses as measured. */
export type BoxPlan = {
  /** The least of front and back, and what a slide takes at each side; without slides what is left free there. */
  readonly opening: Length;
  readonly clearance: Length;
  readonly noSlides?: true | undefined;
  readonly tape: Tape;
  readonly depth: Length;
  readonly height: Length;
  readonly side: Length;
  readonly front: Length;
  readonly back: Length;
  readonly bottom: Length;
  /** Left of the front over the side ends, where the joint laps. */
  readonly lap: Length;
  /** How far the back is let into the sides, and how far they run on behind it. */
  readonly backDado: Length;
  readonly behind: Length;
  /** `up` from the lower edge; `fit` over the bottom. */
  readonly groove: { readonly deep: Length; readonly up: Length; readonly fit: Length };
  /** Bottom less than groove floor to groove floor. */
  readonly ease: Length;
  readonly bottomHow: 'captured' | 'slid-in';
  /** How far the joint stands proud of both faces, to be sanded flush; nothing where left out. */
  readonly proud?: Length | undefined;
  /** Dowels at hand, where front and back are butted. */
  readonly dowels?: readonly DowelSize[] | undefined;
  /** Fingers so wide. */
  readonly fingers?: { readonly wide: Length; readonly how: FingersHow } | undefined;
};

/** A corner of a box that is doweled. */
export type DoweledAt = 'front' | 'back';

/** What must be more than nothing. */
export type BoxSize =
  | 'opening'
  | 'depth'
  | 'height'
  | 'side'
  | 'front'
  | 'back'
  | 'bottom'
  | 'groove-deep'
  | 'groove-up'
  | 'front-rabbet';
/** What may be nothing, but not less. With an ease under nothing the bottom is larger than its grooves allow. */
export type BoxAllowance = 'clearance' | 'lap' | 'back-dado' | 'behind' | 'groove-fit' | 'ease';

export type BoxError =
  | { readonly code: 'not-positive'; readonly field: BoxSize | BoxAllowance }
  | { readonly code: 'lap-too-deep'; readonly lap: Length; readonly front: Length }
  /** The rabbet for the sides is as deep as the front is thick: `over` past it, >= 0. */
  | { readonly code: 'rabbet-through'; readonly deep: Length; readonly front: Length; readonly over: Length }
  | { readonly code: 'finger-not-positive' }
  /** No dowel goes into a corner. */
  | { readonly code: 'no-dowels'; readonly at: DoweledAt; readonly why: DowelError }
  /** More than anybody cuts: `most`. */
  | { readonly code: 'fingers-too-many'; readonly most: number }
  /** Under three fingers high: `least` is three. */
  | { readonly code: 'too-low-for-fingers'; readonly height: Length; readonly least: Length }
  /** The groove for the bottom, or the dado for the back, is as deep as what it is cut in. */
  | {
      readonly code: 'groove-through';
      readonly which: 'side' | 'front' | 'back';
      readonly deep: Length;
      readonly thickness: Length;
    }
  /** The front of the box is that of the drawer, and its joint would be seen from in front. */
  | { readonly code: 'own-shows' }
  /** It cannot stand past its box, but comes so much wider than that, or narrower; what room at a side would fit. */
  | {
      readonly code: 'own-not-flush';
      readonly by: Length;
      readonly wider: boolean;
      readonly clearance?: Length;
    }
  /** It is narrower than its box. */
  | { readonly code: 'own-narrow'; readonly by: Length; readonly clearance: Length }
  /** It stands further past its box at one end than at the other, and its dowels are bored alike. */
  | { readonly code: 'own-lopsided'; readonly by: Length }
  /** The box was given so high that it stands over the top edge of its front. */
  | { readonly code: 'own-low'; readonly by: Length; readonly most: Length }
  | { readonly code: 'inside-gone'; readonly by: Length }
  | { readonly code: 'inside-depth-gone'; readonly by: Length }
  /** Bottom and what is under it take the whole height. */
  | { readonly code: 'back-gone'; readonly by: Length };

export type BoxWarning =
  | { readonly code: 'lap-thin'; readonly lap: Length }
  | { readonly code: 'groove-deep'; readonly deep: Length; readonly half: Length }
  /** The dado for the back is past half the side, or little is left of the side behind it. */
  | { readonly code: 'dado-deep'; readonly deep: Length; readonly half: Length }
  | { readonly code: 'land-thin'; readonly land: Length }
  /** The rabbet of the front is under half of its thickness, or over two thirds. */
  | { readonly code: 'rabbet-shallow' | 'rabbet-deep'; readonly deep: Length; readonly limit: Length }
  | { readonly code: 'dowel'; readonly at: DoweledAt; readonly warning: DowelWarning }
  /** A dowel runs into the groove for the bottom: `by` how far. */
  | { readonly code: 'dowel-in-groove'; readonly at: DoweledAt; readonly by: Length }
  /** The groove of the front is deeper than its rabbet: it comes out at its ends. */
  | { readonly code: 'groove-past-rabbet'; readonly by: Length };
