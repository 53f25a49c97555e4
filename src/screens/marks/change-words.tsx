import type { ComponentChildren } from 'preact';
import type { Board, Run } from '../../trade/grooves/board';
import { counted, wordFor } from '../shared/counted';

/** Blanks of a sentence, by name. */
type Blanks<K extends string> = { readonly [P in K]: ComponentChildren };

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

/** What a board is and how large: the first sentence of its slip. */
export const BoardSlip = (
  b: Blanks<'name' | 'made' | 'copies' | 'long' | 'wide' | 'thick' | 'stock' | 'end'>,
) => (
  <>
    {b.name} is {b.made}
    {b.copies && <>, {b.copies} alike</>}. It is {b.long} long, {b.wide} wide and {b.thick} thick, cut out of{' '}
    {b.stock}. Measure from the {b.end}.
  </>
);

type RunSlipProps = Blanks<'count' | 'wide' | 'deep' | 'face' | 'spacing' | 'places'> & {
  readonly run: Run;
};

/** Whether the number of grooves is given; else it comes of their places. */
export const isCounted = ({ spacing }: Run): boolean => spacing === 'pitch' || spacing === 'openings';

/** A run of grooves: how many, their section, and where they go. */
export const RunSlip = ({ run, ...b }: RunSlipProps) => (
  <>
    Cut {b.count} {wordFor(isCounted(run) ? run.count : undefined, 'groove', 'grooves')} {b.wide} wide and{' '}
    {b.deep} deep
    {b.face && <> on {b.face}</>}, {b.spacing}
    {run.spacing === 'fill' ? ' ' : ': '}
    {b.places}
  </>
);

export const AtPitch = (b: Blanks<'point' | 'first' | 'pitch'>) => (
  <>
    the {b.point} of the first at {b.first}, then every {b.pitch}.
  </>
);

export const Filling = (b: Blanks<'pitch' | 'point' | 'first' | 'room' | 'span' | 'over'>) => (
  <>
    every {b.pitch}, the {b.point} of the first at {b.first}, leaving {b.room} clear at the far end of{' '}
    {b.span}, what is over {b.over}.
  </>
);

export const InOpenings = (b: Blanks<'span' | 'first' | 'part'>) => (
  <>
    over {b.span} from {b.first}, for parts {b.part} thick.
  </>
);

export const AtPlaces = (b: Blanks<'point' | 'places'>) => (
  <>
    the {b.point} at {b.places}.
  </>
);

export const Stopped = (b: Blanks<'short'>) => <> They stop {b.short} short of the front.</>;

export const WideSlip = (b: Blanks<'wide' | 'deep' | 'near' | 'face'>) => (
  <>
    A wide one, {b.wide} by {b.deep} deep, near edge at {b.near}
    {b.face && <> on {b.face}</>}.
  </>
);

export const DatumSlip = (b: Blanks<'datum' | 'end' | 'mateName' | 'mate'>) => (
  <>
    Places are given from the datum face, {b.datum} from the {b.end} end. The facing {b.mateName} has it{' '}
    {b.mate} from its own.
  </>
);

export const CutOn = (b: Blanks<'machine'>) => <>Cut them on the {b.machine}</>;
export const OnStop = (b: Blanks<'end' | 'side' | 'stack'>) => (
  <>
    , the {b.end} on the stop, {b.side}, with a stack {b.stack} wide.
  </>
);
export const OnFence = (b: Blanks<'stack' | 'grows' | 'across'>) => (
  <>
    , a stack {b.stack} wide that grows {b.grows}, the board {b.across} along it.
  </>
);
export const WithBit = (b: Blanks<'side' | 'bit'>) => (
  <>
    {' '}
    on the {b.side}, with a bit {b.bit} wide.
  </>
);
export const WithGuide = (b: Blanks<'side'>) => <> on the {b.side}.</>;
export const WithStack = (b: Blanks<'stack'>) => <>, with a stack {b.stack} wide.</>;
export const WithGrowingStack = (b: Blanks<'stack' | 'grows'>) => (
  <>
    , with a stack {b.stack} wide that grows {b.grows}.
  </>
);

export const runNo = (at: number): string => `Run ${at + 1}`;
export const wideNo = (at: number): string => `Wide groove ${at + 1}`;
export const datum = 'Datum';
export const machine = 'Machine';
export const fitToSheet = 'Fit to a sheet';
export const runThrough = 'Run them through';
export const stopShort = 'Stop them short';
export const remove = 'Remove';
export const takeAway = (no: number): string => `Take no. ${no} away`;

/** Acts as undo names them. */
export const groovesRunThrough = 'Grooves run through';
export const runRemoved = 'Run removed';
export const wideRemoved = 'Wide groove removed';
export const takenAway = (no: number): string => `No. ${no} taken away`;

/** Titles of the blanks of a board. */
export const boardTitles = {
  name: 'Name of the board',
  made: 'What is cut from this layout',
  copies: 'How many boards alike',
  length: 'Length of the board',
  across: 'How wide the board is',
  alongFence: 'How wide the board is along the fence',
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
} as const;

/** The blank of a cutter: what it is called depends on the machine. */
export const cutterTitle = (cutter: 'stack' | 'bit'): string =>
  `Width of the ${cutter}, the groove’s own when blank`;

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
  span: 'Length to fill, the rest of the board when blank',
  shared: 'Length shared out, the rest of the board when blank',
  part: 'Thickness of the parts, the groove’s own when blank',
  centred: 'What is left over',
  stopped: 'Stopped how far short of the front',
} as const;

export type RunTitle = keyof typeof runTitles;

/** The title of a blank of a run; where there are several runs it says which. */
export const runTitle = (board: Board, run: Run, title: RunTitle): string =>
  `${runTitles[title]}${board.runs.length > 1 ? `, run ${board.runs.indexOf(run) + 1}` : ''}`;

const wideTitles = {
  width: 'How wide',
  depth: 'How deep',
  near: 'Where its near edge goes',
  face: 'Which face',
} as const;

export type WideTitle = keyof typeof wideTitles;

export const wideTitle = (title: WideTitle, at: number): string =>
  `${wideTitles[title]}, wide groove ${at + 1}`;

export const placeTitle = (no: number): string => `Where no. ${no} goes`;
export const nextPlaceTitle = 'Where the next one goes';

export const spacings = [
  { value: 'pitch', label: 'so far apart', hint: 'so many, at one pitch' },
  { value: 'fill', label: 'as many as fit', hint: 'at one pitch, up to the room left at the end' },
  { value: 'openings', label: 'equal openings', hint: 'clear between the parts, both ends included' },
  { value: 'given', label: 'places given', hint: 'each one where you say' },
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
export const noStock = { label: 'not said', hint: 'it is laid out on no sheet' };

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
