import type { Length } from '../../length/length';
import type { Tape } from '../../length/tape';
import { isTapeFraction, writeLength } from '../../length/write';
import type { Board } from '../../trade/grooves/board';
import type { Face, Groove } from '../../trade/grooves/layout';
import type { Setting } from '../../trade/grooves/settings';
import { capital } from '../shared/capital';
import { counted } from '../shared/counted';
import { closely, exactly } from '../shared/exact-words';
import { wordsAt } from '../shared/machines/groove-words';
import { standsAt } from '../shared/machines/set-words';
import { boardWord } from '../shared/part-words';

export const marks = 'Marks';
export const boards = 'Boards';
export const noBoardYet = 'No board laid out yet. Measure one end to end, then say where its grooves go.';
export const layOutBoard = 'Lay out a board';

export const change = 'Change';
export const show = 'Show';
export const knifeMarks = 'Knife marks';
export const settings = 'Settings';
export const fromBefore = 'The figures below are from before this change.';
export const copyLines = (copied: boolean): string => (copied ? 'Copied' : 'Copy as lines');
export const toMachine = (board: Board): string => `To the ${standsAt(board)}`;

export const boardName = (board: Board): string => boardWord(board, 'Board');

/** What is cut from one layout. */
export function made({ made, copies }: Board): string {
  if (made === 'pair') return 'Two, left and right';
  if (made === 'partition') return 'One, grooved on both faces';
  return copies === 1 ? 'One board' : `${copies} alike`;
}

export const face = 'Face';
export const faceName = (which: Face): string => `Face ${which}`;
export const part = 'Part';
export const ownPart = (board: Board): string => boardWord(board, 'This board');
export const facingPart = ({ mateName }: Board): string => `Facing ${mateName}`;

const long = ({ length }: Board): string => `${length ? exactly(length) : ''} long`;

/** The drawing of a board on its end, in words. */
export const standing = (board: Board, grooves: number): string =>
  `${boardName(board)}, ${long(board)}, standing on its ${board.end} end, ${counted(grooves, 'groove', 'grooves')}`;

/** Where everything is measured from: an end of the board, or the facing part's own. */
export const measureFrom = (board: Board, mate: boolean): string =>
  `Measure from this end: the ${mate ? `${board.mateName}’s own` : board.end}`;

export const blueFigures = ({ datum }: Board): string =>
  `Blue figures are from the other end: +\u00a0strong, −\u00a0scant.${datum ? ` The datum is ${exactly(datum)} in.` : ''}`;

export const fromOtherEnd = 'from the other end';

/** A wide groove: how wide, and what lies in it. */
export const wideGroove = ({ width, called }: Groove): string =>
  `${isTapeFraction(width) ? exactly(width) : closely(width)} wide${called ? `, ${called}` : ''}`;

export const knifedAt = (was: Length, tape: Tape): string => `knifed at ${writeLength(was, tape)}`;
export const markTick = ({ no }: Groove): string => `Marked ${no}`;

/** Marking a groove, or taking that back, as undo names it. */
export const marking = ({ wide, no }: Groove, ticked: boolean): string =>
  `${ticked ? 'Not marked' : 'Marked'}: ${wide ? '' : 'no. '}${no}`;

export const machine = (board: Board): string => capital(wordsAt(board).label);
export const shopFigures = 'Shop figures';
export const oneStop = (end: string): string => `One stop for all, ${end} end on it, to the near teeth`;
export const facingAt = (at: Length): string => `facing part ${exactly(at)}`;
export const copiesCut = (cut: number, of: number): string => `${cut} of ${of} cut`;
export const teethAt = 'teeth at';

/** Cutting all copies at a setting, or taking that back, as undo names it. */
export const cutting = ({ groove }: Setting, done: boolean): string =>
  `${done ? 'Not cut' : 'Cut'}: no. ${groove.no}`;

export const cutTick = ({ groove, pass, passes }: Setting): string =>
  `Cut at ${groove.no}${passes > 1 ? `, pass ${pass}` : ''}`;

/** A board on paper: its first line, then a heading over each list. */
export const lineOfBoard = (board: Board): string =>
  `${boardName(board)}, ${long(board)}. Measure from the ${board.end} end.`;
export const linesOfMarks = 'Near edges:';
export const linesOfSettings = (how: string): string => `Settings: ${how}`;

/** A near edge on paper. */
export const lineOfMark = (at: {
  readonly groove: string;
  readonly near: string;
  readonly width: string;
  readonly other: string;
}): string => `${at.groove}: ${at.near}, ${at.width} wide, from the other end ${at.other}`;
