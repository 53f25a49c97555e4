import type { Length } from '../../length/length';
import type { Units } from '../../length/units';
import type { BoredWith } from '../shelves/bore';

/** A sheet or board of stock as the parts are worked out from it. Inches. */
export type Stuff = {
  readonly id: string;
  readonly name: string;
  /** The thickness the parts are reckoned with: the greatest reading once it is used, the planned figure before. */
  readonly thickness: Length;
  /** Whether that is a reading. */
  readonly measured: boolean;
};

/** What a piece is of: each may come out of a sheet of its own. */
export type StockRole =
  | 'side'
  | 'bottom'
  | 'top'
  | 'partition'
  | 'shelf'
  | 'tray'
  | 'back'
  | 'cleat'
  | 'frame'
  | 'loose'
  | 'edging'
  | 'toe'
  | 'base'
  | 'cross'
  | 'filler'
  | 'nailer'
  | 'stop'
  | 'shelfedge';

/**
 * What stands in a bay, as you face the case, bays counted from the left.
 * - `trays`: a run of grooves on both walls, loose trays in them, laid out from the case bottom.
 * - `fixed`: a shelf in dadoes; `at` is its lower face, up from the case bottom.
 * - `loose`: shelves that lie on pins or strips.
 * - `rail`: a rail of the face frame; `at` is the clear opening under it.
 * - `stop`: a strip between the walls that fronts or doors close on; `at` is its lower edge, up from the case bottom.
 */
export type Inside = {
  readonly id: string;
  readonly kind: 'trays' | 'fixed' | 'loose' | 'rail' | 'stop';
  readonly bay: number;
  readonly count?: number | undefined;
  readonly at?: Length | undefined;
  /** `trays`: first near edge, pitch and the room left at the top, as in a run of grooves that fills its span. */
  readonly first?: Length | undefined;
  readonly pitch?: Length | undefined;
  readonly endRoom?: Length | undefined;
  /** `trays`: groove width and depth, and how much narrower than groove floor to groove floor the tray is. */
  readonly width?: Length | undefined;
  readonly depth?: Length | undefined;
  readonly slack?: Length | undefined;
  /** `rail`, `stop`: how wide; of a stop `front` is how far back its face stands, `play` what is clear at each end. */
  readonly wide?: Length | undefined;
  /**
   * `loose`: rows of pins, rows of pins 32 mm apart, or metal strips let in; with nothing said nothing is laid out. Of
   * a row `first`, `pitch` and `endRoom` as for trays, hole to hole; of its holes `width` and `depth`. Of strips
   * `width` of one, `depth` of its groove, and `endRoom` it is short of the clear height.
   */
  readonly heldBy?: HeldBy | undefined;
  /** Rows from the front edge and from the back; what they are bored with. */
  readonly front?: Length | undefined;
  readonly behind?: Length | undefined;
  readonly bore?: BoredWith | undefined;
  /** How thick a metal strip is, and how much wider its groove. */
  readonly stripThick?: Length | undefined;
  readonly stripRoom?: Length | undefined;
  /** `width`, `depth` and `endRoom` as said of holes while strips hold the shelves, of strips while pins do. */
  readonly asideWidth?: Length | undefined;
  readonly asideDepth?: Length | undefined;
  readonly asideRoom?: Length | undefined;
  /** How long a strip is as it is sold; pins or clips bought over the four of each shelf. */
  readonly stripSold?: Length | undefined;
  readonly spares?: number | undefined;
  /** A template: how long, its first hole from its end, how many holes, how far one is out, how loose on its pin. */
  readonly templateLong?: Length | undefined;
  readonly templateFirst?: Length | undefined;
  readonly templateHoles?: number | undefined;
  readonly templateError?: Length | undefined;
  readonly templatePlay?: Length | undefined;
  /** At each end of a shelf the room its pins take, and its play; room in front and behind; edging on its front. */
  readonly flange?: Length | undefined;
  readonly play?: Length | undefined;
  readonly frontPlay?: Length | undefined;
  readonly backPlay?: Length | undefined;
  readonly band?: Length | undefined;
};

/** What holds loose shelves: each spelling stands in jobs. */
export const heldBys = ['pins', 'lines', 'strips'] as const;
type HeldBy = (typeof heldBys)[number];

/** Where an opening of the case was measured, and what is used of it. Inches. */
export type Built = {
  readonly frontA?: Length | undefined;
  readonly frontB?: Length | undefined;
  readonly backA?: Length | undefined;
  readonly backB?: Length | undefined;
  /** Accepted: what is not yet cut is reckoned from it. */
  readonly used?: Length | undefined;
};

/** How a back is held: let into rabbets, standing in grooves, or laid on the back edges of the case. */
export type BackHow = 'rabbet' | 'groove' | 'applied';

/** By which joint an end meets another part. `over`: it lies over the end of the other. Spelled as stored. */
export type CaseJoint = 'dado' | 'rabbet' | 'butt' | 'over' | 'tongue' | 'mitre';

/** At which face of a part its tongue lies: the one nearer the reference end of what it goes into, or the other. */
export type Hugs = 'near' | 'far';

/** How a plinth comes level: shimmed up, or scribed to the floor. Shimmed while nothing is said. */
type PlinthHow = 'shimmed' | 'scribed';

/** How far down a face frame runs: to the lower end of the case, or its stiles to the floor. */
type FrameHow = 'case' | 'floor';

/** How stiles and rails of a face frame meet: rails butted between stiles, or half-lapped. */
type FrameMeets = 'butt' | 'lap';

/** How a toe board stands: between the sides, or in notches of them. */
type ToeHow = 'between' | 'notch';

/** A case as decided. What is not said is `undefined`: a usual figure stands in, or it is asked for. Inches. */
export type Case = {
  readonly id: string;
  /** The unit system of its job: what stands in while nothing is said is round in it. Inches when not said. */
  readonly units?: Units | undefined;
  readonly name: string;
  /** What stays when the stuff measures thin: the outside sizes, or the openings. */
  readonly hold: 'outside' | 'openings';
  /** Outside, as you face it; depth without the face frame. */
  readonly width?: Length | undefined;
  readonly height?: Length | undefined;
  readonly depth?: Length | undefined;
  /** `openings` held: each bay, and the clear height. */
  readonly opening?: Length | undefined;
  readonly clear?: Length | undefined;
  /** Floor to the underside of the bottom. */
  readonly feet?: Length | undefined;
  readonly partitions: number;
  /** Clear widths given for single bays, from the left; the others share the rest. */
  readonly bays: readonly (Length | undefined)[];
  /** Which stock each piece is of. */
  readonly stocks: Partial<Readonly<Record<StockRole, string>>>;
  readonly hasTop: boolean;
  readonly hasBack: boolean;
  readonly hasFrame: boolean;
  readonly hasLooseTop: boolean;
  readonly hasEdging: boolean;
  readonly hasToe: boolean;
  readonly hasBase: boolean;
  /**
   * Dado depth in the sides, in bottom and top for partitions (and in partition faces for shelves), rabbet for the
   * top.
   */
  readonly dado?: Length | undefined;
  readonly partitionDado?: Length | undefined;
  readonly bottomRabbet?: Length | undefined;
  readonly topRabbet?: Length | undefined;
  /** By which joint bottom and top meet the sides, partitions bottom and top, fixed shelves their walls. */
  readonly bottomJoint?: CaseJoint | undefined;
  readonly topJoint?: CaseJoint | undefined;
  /** Their right ends, where these meet the side otherwise than the left. */
  readonly bottomRightJoint?: CaseJoint | undefined;
  readonly topRightJoint?: CaseJoint | undefined;
  readonly partitionJoint?: CaseJoint | undefined;
  readonly shelfJoint?: CaseJoint | undefined;
  /** How far a bottom or top that lies over the sides stands past each. */
  readonly bottomPast?: Length | undefined;
  readonly topPast?: Length | undefined;
  /** How far the sides run past the upper face of a top that is let into them, or butted between them. */
  readonly sidePast?: Length | undefined;
  /** Tongues: how thick, and the room under them in their grooves; at which face they lie. */
  readonly tongue?: Length | undefined;
  readonly tongueRoom?: Length | undefined;
  readonly bottomHugs?: Hugs | undefined;
  readonly partitionHugs?: Hugs | undefined;
  readonly shelfHugs?: Hugs | undefined;
  readonly backDeep?: Length | undefined;
  readonly backWide?: Length | undefined;
  /** In rabbets while nothing is said. */
  readonly backHow?: BackHow | undefined;
  /** A groove for the back: what is left behind it, how deep and how wide it is. */
  readonly backLand?: Length | undefined;
  readonly backGroove?: Length | undefined;
  readonly backGrooveWide?: Length | undefined;
  /** A back laid on: how far in from the outside it ends, each way. */
  readonly backInset?: Length | undefined;
  /** Room round the back, and over a cleat in its notch. */
  readonly ease?: Length | undefined;
  /** Over the stuff in a glued dado. */
  readonly fit?: Length | undefined;
  readonly cleats: number;
  readonly cleatWide?: Length | undefined;
  readonly cleatRabbet?: Length | undefined;
  readonly cleatRabbetWide?: Length | undefined;
  readonly notchDeep?: Length | undefined;
  /** Face frame: past the sides, and how wide its pieces are. */
  readonly overhang?: Length | undefined;
  readonly stile?: Length | undefined;
  readonly middle?: Length | undefined;
  readonly topRail?: Length | undefined;
  readonly bottomRail?: Length | undefined;
  /** Its rails butted between its stiles while nothing is said. */
  readonly frameMeets?: FrameMeets | undefined;
  /**
   * Its stiles to the floor: so far clear of it, its bottom rail from so far over the bottom down to so far off the
   * floor.
   */
  readonly frameHow?: FrameHow | undefined;
  readonly frameClear?: Length | undefined;
  readonly frameSill?: Length | undefined;
  readonly frameToe?: Length | undefined;
  /** Frame pieces held by screws alone, to come off again. */
  readonly stilesOff: boolean;
  readonly middleOff: boolean;
  /** Loose top: past the front, past each side. */
  readonly looseFront?: Length | undefined;
  readonly looseSide?: Length | undefined;
  /** Edging hangs so far below what it covers; mitred ends. */
  readonly lip?: Length | undefined;
  readonly mitres: number;
  /** Toe board: how far back, and between the sides while nothing is said, or in notches of them. */
  readonly toeBack?: Length | undefined;
  readonly toeHow?: ToeHow | undefined;
  /** In notches: what stands before the sides, a frame or fronts, and how far the board stays clear of the floor. */
  readonly frontOver?: Length | undefined;
  readonly toeClear?: Length | undefined;
  /** Nailers: strips between the sides; so many, so wide. */
  readonly hasNailers: boolean;
  readonly nailers?: number | undefined;
  readonly nailerWide?: Length | undefined;
  /** How deep they are let into the sides: with nothing said they butt against them. */
  readonly nailerDeep?: Length | undefined;
  /** A plinth the case stands on, as high as the case is off the floor: how far in from front, ends and back. */
  readonly hasPlinth: boolean;
  readonly plinthHow?: PlinthHow | undefined;
  readonly plinthFront?: Length | undefined;
  readonly plinthLeft?: Length | undefined;
  readonly plinthRight?: Length | undefined;
  readonly plinthBack?: Length | undefined;
  readonly plinthCrosses?: number | undefined;
  /** Base frame: so many cross members, so wide; rails as wide. */
  readonly crosses: number;
  readonly crossWide?: Length | undefined;
  readonly inside: readonly Inside[];
  /** As built, by opening: `bay1`, `clear`, `frame1w`, … */
  readonly built: Readonly<Record<string, Built>>;
};

/** A case before anything is said of it. */
export const newCase = (id: string): Case => ({
  id,
  name: '',
  hold: 'outside',
  partitions: 0,
  bays: [],
  stocks: {},
  hasTop: true,
  hasBack: false,
  hasFrame: false,
  hasLooseTop: false,
  hasEdging: false,
  hasToe: false,
  hasBase: false,
  hasPlinth: false,
  hasNailers: false,
  cleats: 0,
  stilesOff: false,
  middleOff: false,
  mitres: 2,
  crosses: 2,
  inside: [],
  built: {},
});
