import type { Board, Run } from '../../trade/grooves/board';
import { counted, wordFor } from '../shared/counted';

export const whatGoesIn = 'What goes in';
export const backToMarks = 'Back to marks';
export const boardName = (name: string): string => name || 'Board';
export const drawnLying = (end: string): string => `Board to scale, ${end} end at the left`;
export const beforeChange = 'before this change';
export const byCase = 'Its grooves are laid out by the case. How they are cut is set here.';
export const changeCase = 'Change the case';
export const anotherRun = 'Another run';
export const wideGroove = 'A wide groove';
export const tray = 'Tray for these grooves';
export const removeBoard = 'Remove this board';
export const boardRemoved = (name: string): string => `${boardName(name)} removed`;
export const showMarks = 'Show the marks';

export const eachOpening = 'Each opening';
export const openings = (n: number): string => `${n} of them`;
export const leftOver = 'Left over';
export const groovesFit = (n: number): string => counted(n, 'groove fits', 'grooves fit');

/**
 * The sentences of the slip. A name in braces is a blank.
 */
export const boardSlip = ({ made }: Board): string =>
  `{name} is {made}${made === 'alike' ? ', {copies} alike' : ''}. It is {length} long, {across} wide and {thickness} thick, cut out of {stock}. Measure from the {end}.`;

/** Whether the number of grooves is given; else it comes of their places. */
const isCounted = ({ spacing }: Run): boolean => spacing === 'pitch' || spacing === 'openings';

/** A run of grooves: how many, their section, and where they go. */
export function runSlip({ made }: Board, run: Run): string {
  const many = isCounted(run) ? `{count} ${wordFor(run.count, 'groove', 'grooves')}` : 'grooves';
  const face = made === 'partition' ? ' on {face}' : '';
  const stopped = run.stopped ? ' They stop {stopped} short of the front.' : '';
  return `Cut ${many} {width} wide and {depth} deep${face}, {spacing}${spaced[run.spacing]}${stopped}`;
}

const spaced: Record<Run['spacing'], string> = {
  pitch: ': the {point} of the first at {first}, then every {pitch}.',
  fill: ' every {pitch}, the {point} of the first at {first}, leaving {endRoom} clear at the far end of {span}, what is over {centred}.',
  openings: ': over {shared} from {spanFrom}, for parts {part} thick.',
  given: ': the {point} at {places}.',
};

export const wideSlip = ({ made }: Board): string =>
  `A wide one, {width} by {depth} deep, near edge at {near}${made === 'partition' ? ' on {face}' : ''}.`;

export const datumSlip = ({ end }: Board): string =>
  `Places are given from the datum face, {datum} from the ${end} end. The facing {mateName} has it {mate} from its own.`;

/** @param sentence of the machine: what follows its name */
export const machineSlip = (sentence: string): string => `Cut them on the {machine}${sentence}`;

export const runNo = (at: number): string => `Run ${at + 1}`;
export const wideNo = (at: number): string => `Wide groove ${at + 1}`;
export const datum = 'Datum';
export const machine = 'Machine';
export const fitToSheet = 'Fit to a sheet';
export const runThrough = 'Run them through';
export const stopShort = 'Stop them short';
export const remove = 'Remove';
export const takeAway = (no: number): string => `Remove no. ${no}`;

/** Acts as undo names them. */
export const groovesRunThrough = 'Grooves run through';
export const runRemoved = 'Run removed';
export const wideRemoved = 'Wide groove removed';
export const takenAway = (no: number): string => `No. ${no} removed`;

/** Titles of the blanks of a board. */
// What is counted, beside its figure.
export const boards = 'boards';
export const grooves = 'grooves';

export const boardTitles = {
  name: 'Name of the board',
  made: 'What is cut from this layout',
  copies: 'How many boards alike',
  length: 'Length of the board',
  across: 'How wide the board is',
  thickness: 'Thickness of the board',
  stock: 'What it is cut out of',
  end: 'Which end everything is measured from',
  datum: 'Reference end to the datum face',
  mateName: 'What the facing part is called',
  mate: 'The facing part’s end to the same face',
  against: 'Which end is on the stop',
  stopSide: 'Which side of the blade the stop stands',
  grows: 'Which way the stack grows',
  guide: 'Which side the guide lies on',
  cutter: 'Width of the cutter',
} as const;

export const alongFence = 'How wide the board is along the fence';

/** The blank of a cutter: what it is called depends on the machine. */
export const cutterTitle = (cutter: string): string => `Width of the ${cutter}; blank takes the groove’s`;

/** Titles of the blanks of a run. */
const runTitles = {
  count: 'How many grooves',
  width: 'How wide the grooves are',
  depth: 'How deep they are',
  face: 'Which face',
  spacing: 'How they are spaced',
  point: 'Which point of the groove is given',
  first: 'Where the first one goes',
  spanFrom: 'Where that length starts',
  pitch: 'How far apart, centre to centre',
  endRoom: 'Room left clear at the far end',
  span: 'Length to fill; blank takes the rest of the board',
  shared: 'Length shared out; blank takes the rest of the board',
  part: 'Thickness of the parts; blank takes the groove’s width',
  centred: 'Where the leftover goes',
  stopped: 'Stopped how far short of the front',
} as const;

export type RunTitle = keyof typeof runTitles;

/** The title of a blank of a run; where there are several runs it says which. */
export const runTitle = (board: Board, run: Run, title: RunTitle): string =>
  `${runTitles[title]}${board.runs.length > 1 ? `, run ${board.runs.indexOf(run) + 1}` : ''}`;

const wideTitles = {
  width: (no) => `How wide is wide groove ${no}?`,
  depth: (no) => `How deep is wide groove ${no}?`,
  near: (no) => `Where does wide groove ${no} go?`,
  face: (no) => `Which face is wide groove ${no} on?`,
} as const satisfies Record<string, (no: number) => string>;

type WideTitle = keyof typeof wideTitles;

export const wideTitle = (title: WideTitle, at: number): string => wideTitles[title](at + 1);

export const placeTitle = (no: number): string => `Where does no. ${no} go?`;
export const nextPlaceTitle = 'Where does the next one go?';

export const spacings = [
  { value: 'pitch', label: 'evenly spaced', hint: 'a set number, centre to centre' },
  { value: 'fill', label: 'as many as fit', hint: 'at one spacing, up to the room left at the end' },
  { value: 'openings', label: 'equal openings', hint: 'clear between the parts, both ends included' },
  { value: 'given', label: 'one by one', hint: 'you say where each one goes' },
];

export const points = [
  { value: 'near', label: 'near edge' },
  { value: 'centre', label: 'centre' },
  { value: 'far', label: 'far edge' },
];

/** Where what is left over goes. */
export const overs = [
  { value: 'far', label: 'at the far end' },
  { value: 'both', label: 'shared by both ends', hint: 'the run moves half of it in' },
];

export const faces = [
  { value: 'A', label: 'face A' },
  { value: 'B', label: 'face B' },
];

export const makings = [
  { value: 'alike', label: 'one board', hint: 'or several, all alike' },
  {
    value: 'pair',
    label: 'a left and right pair',
    hint: 'mirrored: same figures from the same end, the other edge leads',
  },
  { value: 'partition', label: 'a partition', hint: 'one board, grooved on both faces' },
];

export const stockName = (name: string): string => name || 'a sheet without a name';
export const noStock = { label: 'no sheet', hint: 'it is not laid out on one' };

/** Which end of the board lies on the stop. */
export const stopEnds = (end: string) => [
  { value: 'reference', label: `${end} end` },
  { value: 'other', label: 'other end', hint: 'only when all boards came off one stop' },
];

export const stopSides = [
  { value: 'left', label: 'left of the blade' },
  { value: 'right', label: 'right of the blade' },
];

/** Which way a stack grows from its standing face. */
export const growths = (end: string) => [
  { value: 'away', label: `away from the ${end} end`, hint: 'the standing arbor face is on that side' },
  { value: 'toward', label: `toward the ${end} end`, hint: 'the near teeth move when the stack is rebuilt' },
];

export const guideSides = (end: string) => [
  { value: 'reference', label: `${end} side` },
  { value: 'far', label: 'far side' },
];
