import type { Length } from '../../length/length';
import type { WorkName } from '../carcass/part-name';
import { machineAt } from '../machines/machines';
import type { ShopField } from '../machines/shop';
import type { Placing } from './placing';
import type { Setup } from './setup';
import type { Which } from './which';

/** What is cut, bored or sawn. */
type Cutting =
  | 'rip'
  | 'length'
  | 'groove'
  | 'rabbet'
  | 'notch'
  | 'lap'
  | 'mitre'
  | 'along'
  | 'corner'
  | 'tails'
  | 'pins'
  | 'bore'
  | 'slot'
  | 'fingers'
  | 'test'
  | 'hand';

/** What is done at the bench and on site. */
export type Doing =
  | 'dry-fit'
  | 'finish-inside'
  | 'glue-up'
  | 'frame-on'
  | 'marks'
  | 'box-up'
  | 'slide'
  | 'runner'
  | 'hang'
  | 'stop-block'
  | 'carry-in'
  | 'level'
  | 'scribe'
  | 'filler'
  | 'cleat'
  | 'anchor'
  | 'check-again'
  | 'front-on'
  | 'pulls'
  | 'finish'
  | 'cure'
  | 'load'
  | 'label'
  | 'look-back';

/** What is done to a part. */
export type What = Cutting | Doing;

/** Where the cleat of a case is: in the case, or on the wall before the case stands there. */
export type CleatOn = 'case' | 'wall';

/** One cut one piece needs at one setup. */
export type Operation = {
  /** Its tick: made of the part, the cut and the copy, never of a size. */
  readonly id: string;
  /** Ids of cuts that this one is as well: a tick of any stands for it. */
  readonly also?: readonly string[] | undefined;
  readonly part: string;
  readonly copy: string;
  readonly name: WorkName;
  readonly what: What;
  /** Nothing where its kind says it all. */
  readonly which?: Which | undefined;
  readonly setup: Setup;
  /** What a tick keeps: the figure it was cut to. Inches. */
  readonly figure: Length;
  /** Operations that come first. */
  readonly after: readonly string[];
  /** Stock that must be measured first: the cut is made to its thickness. */
  readonly fits?: string | undefined;
  /** How wide the groove is cut for it. Inches. */
  readonly width?: Length | undefined;
  /** The opening, by its bank, that must be measured first. */
  readonly opening?: string | undefined;
  /** It cannot be set yet: its layout, or a figure of the shop, is missing. */
  readonly cannot?: boolean | undefined;
  /** The figure of the shop without which it cannot be set. */
  readonly asks?: ShopField | undefined;
  /** It joins an end: cut after that of the part it is marked from. */
  readonly end?: { readonly markedFrom?: string | undefined } | undefined;
  /** A groove laid out on a board: where its mark stands, its near teeth from the reference end. Inches. */
  readonly groove?: { readonly board: string; readonly setting: string; readonly teeth: Length } | undefined;
  /** A row of holes: its first and its last as marked, from the reference end. Inches. */
  readonly row?: { readonly first: Length; readonly last: Length } | undefined;
  /** What anchors a case: a cleat in it, or one that is on the wall before it. */
  readonly cleat?: CleatOn | undefined;
  /** How the piece lies on the machine: see `placingOf`. */
  readonly placing?: Placing | undefined;
};

/** A step at the bench: nothing is cut at it. */
export const isStep = ({ setup }: Operation): boolean => machineAt(setup.machine).cuts === 'none';

/** Every id a tick of an operation may be kept under, its own first. */
export const idsOf = ({ id, also = [] }: Pick<Operation, 'id' | 'also'>): readonly string[] => [id, ...also];

/** Id of an operation. @example opId('c1~left', 'rip', '1') // 'cut/c1~left/rip/1' */
export const opId = (part: string, cut: string, copy: string): string => `cut/${part}/${cut}/${copy}`;
