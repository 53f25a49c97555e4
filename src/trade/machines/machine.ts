import type { Length } from '../../length/length';
import type { Rounded } from '../../length/round';
import type { Tape } from '../../length/tape';
import type { Pass } from '../grooves/wall-passes';
import type { GrooveGauge } from './gauges';
import type { Shop, ShopField } from './shop';

/**
 * What cuts, and how wide:
 * - `blade`: a single blade, as wide as the shop's kerf.
 * - `stack`: a dado stack built for the groove; a test cut comes before its first.
 * - `shoulders`: a stack moved from shoulder to shoulder: as wide as the cut is long, and tested like one.
 * - `bit`: a bit of a fixed width, the shop's own where the board names none.
 * - `tool`: whatever is at hand; its width enters no figure.
 * - `none`: a step at the bench, at which nothing is cut.
 */
export type Cuts = 'blade' | 'stack' | 'shoulders' | 'bit' | 'tool' | 'none';

/** A machine as it stands ready for a setup. Its id is its name in the registry. */
export type Machine = {
  readonly cuts: Cuts;
  /** The machine whose caution is said at it; its own where left out. */
  readonly caution?: string;
  /** It is offered for work that is added by hand. */
  readonly forHandWork?: true;
  /** Nothing is found out at it: no recipe is kept. */
  readonly noRecipe?: true;
};

/** What of a board a machine is concerned with: its size, and how it is held. Inches. */
export type Held = {
  readonly length?: Length | undefined;
  /** Its length as it is cut, where that is not the nearest mark. */
  readonly lengthMark?: Rounded | undefined;
  /** How wide the board is across the grooves: what rides along a fence. */
  readonly across?: Length | undefined;
  /** Which end touches the stop or fence, as the user calls it: bottom, top, left, right, front, back. */
  readonly end: string;
  /** Machines with `eitherEnd`: which end is on the stop. */
  readonly against: 'reference' | 'other';
  /** Which side of the blade the stop stands. */
  readonly stopSide: 'left' | 'right';
  /** Which way the stack grows from the standing arbor face, along the work. */
  readonly grows: 'toward' | 'away';
  /** Machines that hold by a guide: which side of the groove it lies on. */
  readonly guide: 'reference' | 'far';
  /** Width of stack or bit; the groove width when not said. */
  readonly cutter?: Length | undefined;
};

/** What a setting is worked out for: the board as held, the shop's own figures, the marks of the job. */
export type CutContext = { readonly board: Held; readonly shop: Shop; readonly tape: Tape };

/** A groove to be cut: its near edge, its width and that of its cutter, inches. */
export type Place = { readonly near: Length; readonly width: Length; readonly cutter: Length };

/** One pass of one groove to be set, among all grooves of its board. */
export type Cut = Place & {
  /** Near teeth of this pass, from the reference end, inches. */
  readonly teeth: Length;
  readonly pass: Pass;
  readonly all: readonly Place[];
  /** The length of the board, inches. */
  readonly length: Length;
  readonly job: CutContext;
};

/** What is set: a figure on a gauge, inches. */
export type SetTo = {
  readonly measures: GrooveGauge;
  readonly figure: Length;
  /** Laid between guide and base; 0 when out. */
  readonly strip?: Length;
  /** Where the guide's edge goes if it lies on the other side of the groove. */
  readonly otherGuide?: Length;
};

/** The figures of a setting at the tape. */
export type Figures = {
  readonly measures: GrooveGauge;
  /** The number to set. */
  readonly figure: Rounded;
  /** Teeth of this pass from the reference end. */
  readonly nearTeeth: Rounded;
  readonly farTeeth: Rounded;
  /** Near teeth from the other end. */
  readonly otherEnd: Rounded;
  /** Strip between guide and base; 0 when out. */
  readonly strip?: Length;
  /** Where the guide's edge goes instead if it lies on the other side of the cut. */
  readonly otherGuide?: Rounded;
};

/** A machine that cuts the grooves of a board. */
export type GrooveMachine = Machine & {
  /** What the end of the board is brought to: a stop or a fence within its reach, or a guide on the board. */
  readonly holds: 'stop' | 'fence' | 'guide';
  /** Either end may be on the stop: `Held.against` counts. */
  readonly eitherEnd?: true;
  /** It cuts from above: the grooved face is up, and the fence at the far side. */
  readonly above?: true;
  /** Its fence stands at the far side, and the board is fed to the left. */
  readonly farFence?: true;
  /** Nothing is moved between cuts: spacers at one stop, or pencil marks that belong to one stack. */
  readonly still?: 'spacers' | 'pencil';
  /** Figures of the shop without which nothing can be set. */
  readonly needs?: (board: Held) => readonly ShopField[];
  /** In what order passes are cut, and which; both walls before what is between where left out. */
  readonly order?: (passes: readonly Pass[], board: Held) => readonly Pass[];
  /** What the scale reads over the distance from teeth to work, inches; nothing where left out. */
  readonly rides?: (cutter: Length, job: CutContext) => Length;
  /** Turns the near teeth of a pass into the figure to set. */
  readonly set: (cut: Cut) => SetTo;
};
