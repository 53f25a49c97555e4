import type { Length } from '../../length/length';
import type { Units } from '../../length/units';
import type { PartName } from '../carcass/part-name';
import type { Held } from '../machines/machine';
import type { GrooveMachineId } from '../machines/stored-ids';
import type { Face } from './layout';

/** Where the figure given for the first groove stands on that groove. */
export type Point = 'near' | 'centre' | 'far';

/**
 * - `pitch`: so many grooves, centre to centre.
 * - `fill`: as many as fit between the first and the room left at the far end.
 * - `openings`: equal clear openings between so many parts over a span.
 * - `given`: near edges (or centres, or far edges) as listed.
 */
type Spacing = 'pitch' | 'fill' | 'openings' | 'given';

/** A run of like grooves. What is not yet said is `undefined`; `layOut` names it as missing. Inches. */
export type Run = {
  readonly id: string;
  readonly spacing: Spacing;
  readonly face: Face;
  /** Groove width, and depth into the face. */
  readonly width?: Length | undefined;
  readonly depth?: Length | undefined;
  /** `pitch`, `openings`: how many grooves. */
  readonly count?: number | undefined;
  /** `pitch`, `fill`: centre to centre. */
  readonly pitch?: Length | undefined;
  /** `pitch`, `fill`: the first groove, from the datum face. `openings`: where the span starts, from the datum (0). */
  readonly first?: Length | undefined;
  readonly point: Point;
  /** `fill`: room left clear at the far end of the span. */
  readonly endRoom?: Length | undefined;
  /** `fill`: the left-over shared between both ends. */
  readonly centred: boolean;
  /** `fill`, `openings`: length of the span from the datum; the rest of the board when not said. */
  readonly span?: Length | undefined;
  /** `openings`: thickness of the parts that stand in the grooves; the groove width when not said. */
  readonly part?: Length | undefined;
  /** `given`: positions from the datum; one taken away leaves a gap, and its number is not given again. */
  readonly at: readonly (Length | undefined)[];
  /** `given`: the id of each place, by which it is ticked; its number where none is said. */
  readonly ids?: readonly string[];
  /** Stopped this far short of the front edge; through when not said. */
  readonly stopped?: Length | undefined;
};

/** One wide groove among narrow ones: where they meet, the wide one wins. Near edge from the datum, inches. */
export type Wide = {
  readonly id: string;
  readonly face: Face;
  readonly near?: Length | undefined;
  readonly width?: Length | undefined;
  readonly depth?: Length | undefined;
  /** What stands in it, by its stock: its width wants that measured. */
  readonly fits?: string | undefined;
  /** What that is called: bottom, shelf; of several which. */
  readonly called?: string | undefined;
  readonly calledNo?: number | undefined;
  /** Added by hand to a part of a case: what stands in it, in the words of whoever added it. */
  readonly said?: string | undefined;
};

/**
 * - `alike`: one board, or several cut the same.
 * - `pair`: left and right, mirrored: same figures from the same end, the other edge leading.
 * - `partition`: one board grooved on both faces.
 */
type Made = 'alike' | 'pair' | 'partition';

/** A board to be grooved, as decided. Positions are measured from the reference end. Inches. */
export type Board = Held & {
  readonly id: string;
  /** The unit system of its job; inches when not said. */
  readonly units?: Units | undefined;
  /** As the user calls it; nothing where it is a part of a case. */
  readonly name: string;
  /** The part of a case it is. */
  readonly part?: PartName;
  readonly made: Made;
  /** `alike`: how many. */
  readonly copies: number;
  readonly thickness?: Length | undefined;
  /** Id of the stuff it is cut out of, where that is said. */
  readonly stock?: string | undefined;
  /** Reference end to datum face; the runs are given from the datum. 0 when not said. */
  readonly datum?: Length | undefined;
  /** The facing part's own reference end to the same datum, when one layout serves both. */
  readonly mate?: Length | undefined;
  /** What the facing part is called: "partition". */
  readonly mateName: string;
  readonly runs: readonly Run[];
  readonly wides: readonly Wide[];
  /** What the grooves are cut on. */
  readonly machine: GrooveMachineId;
  /** Which machine of the shop's own that is: it counts where the shop has it, and it works like that. */
  readonly by?: string | undefined;
  /** Which side of a case it is, as you face it: which edge leads. */
  readonly hand?: 'left' | 'right' | undefined;
  /** By copy, how often it was spoiled and cut again. A recut inherits no tick. */
  readonly recuts?: Readonly<Record<string, number>>;
};
