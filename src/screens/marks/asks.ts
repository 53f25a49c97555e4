import { editBoard, editPlace, editRun, editWide } from '../../job/edits';
import type { Length } from '../../length/length';
import type { Board, Run, Wide } from '../../trade/grooves/board';
import type { Ask } from '../shared/ask';
import { editHow } from './machine-ask';

type LengthOf<T> = {
  [K in keyof T]-?: NonNullable<T[K]> extends Length ? K : never;
}[keyof T];

/** A length of the board as a blank. */
export const boardLength = (board: Board, field: LengthOf<Board>, title: string): Ask => ({
  as: 'length',
  title,
  now: board[field],
  signed: field === 'datum' || field === 'mate',
  save: (value) =>
    field === 'cutter' ? editHow(board, { cutter: value }) : editBoard(board.id, { [field]: value }),
});

export const runLength = (board: Board, run: Run, field: LengthOf<Run>, title: string): Ask => ({
  as: 'length',
  title: `${title}${numbered(board, run)}`,
  now: run[field],
  signed: field === 'first',
  save: (value) => editRun(board.id, run.id, { [field]: value }),
});

const numbered = (board: Board, run: Run): string =>
  board.runs.length > 1 ? `, run ${board.runs.indexOf(run) + 1}` : '';

export const wideLength = (board: Board, wide: Wide, field: LengthOf<Wide>, title: string): Ask => ({
  as: 'length',
  title: `${title}, wide groove ${board.wides.indexOf(wide) + 1}`,
  now: wide[field],
  signed: field === 'near',
  save: (value) => editWide(board.id, wide.id, { [field]: value }),
});

export const runCount = (board: Board, run: Run): Ask => ({
  as: 'count',
  title: `How many grooves${numbered(board, run)}`,
  now: run.count,
  save: (count) => editRun(board.id, run.id, { count }),
});

export const runSpacing = (board: Board, run: Run): Ask => ({
  as: 'choice',
  title: `How they are spaced${numbered(board, run)}`,
  now: run.spacing,
  choices: [
    { value: 'pitch', label: 'so far apart', hint: 'so many, at one pitch' },
    { value: 'fill', label: 'as many as fit', hint: 'at one pitch, up to the room left at the end' },
    { value: 'openings', label: 'equal openings', hint: 'clear between the parts, both ends included' },
    { value: 'given', label: 'places given', hint: 'each one where you say' },
  ],
  save: (spacing) => editRun(board.id, run.id, { spacing: spacing as Run['spacing'] }),
});

type RunOf = { readonly board: Board; readonly run: Run };

/** The id a place of a run is kept by. */
export const placeId = (run: Run, k: number): string => run.ids?.[k] ?? `${k + 1}`;

/** A place taken away leaves a gap, so that the others keep their numbers and ticks. */
const placed =
  ({ board, run }: RunOf, id: string) =>
  (value: Length | undefined) =>
    editPlace({ board: board.id, run: run.id }, id, value ? { at: value } : { gone: true });

export const runPlace = (of: RunOf, k: number, at: Length): Ask => ({
  as: 'length',
  title: `Where no. ${k + 1} goes`,
  now: at,
  signed: true,
  save: placed(of, placeId(of.run, k)),
});

/** @param id one nobody has yet: two hands that add a place add two */
export const nextPlace = (of: RunOf, id: string): Ask => ({
  as: 'length',
  title: 'Where the next one goes',
  now: undefined,
  signed: true,
  save: (value) => (value ? placed(of, id)(value) : []),
});

export const runPoint = (board: Board, run: Run): Ask => ({
  as: 'choice',
  title: `Which point of the groove is given${numbered(board, run)}`,
  now: run.point,
  choices: [
    { value: 'near', label: 'near edge' },
    { value: 'centre', label: 'centre' },
    { value: 'far', label: 'far edge' },
  ],
  save: (point) => editRun(board.id, run.id, { point: point as Run['point'] }),
});

export const runCentred = (board: Board, run: Run): Ask => ({
  as: 'choice',
  title: `What is left over${numbered(board, run)}`,
  now: run.centred ? 'both' : 'far',
  choices: [
    { value: 'far', label: 'at the far end' },
    { value: 'both', label: 'shared by both ends', hint: 'the run moves half of it in' },
  ],
  save: (where) => editRun(board.id, run.id, { centred: where === 'both' }),
});

export const runFace = (board: Board, run: Run): Ask => ({
  as: 'choice',
  title: `Which face${numbered(board, run)}`,
  now: run.face,
  choices: faces,
  save: (face) => editRun(board.id, run.id, { face: face as Run['face'] }),
});

export const wideFace = (board: Board, wide: Wide): Ask => ({
  as: 'choice',
  title: `Which face, wide groove ${board.wides.indexOf(wide) + 1}`,
  now: wide.face,
  choices: faces,
  save: (face) => editWide(board.id, wide.id, { face: face as Wide['face'] }),
});

const faces = [
  { value: 'A', label: 'face A' },
  { value: 'B', label: 'face B' },
];

export const boardMade = (board: Board): Ask => ({
  as: 'choice',
  title: 'What is cut from this layout',
  now: board.made,
  choices: [
    { value: 'alike', label: 'one board', hint: 'or several, all alike' },
    {
      value: 'pair',
      label: 'a left and right pair',
      hint: 'mirrored: same figures from the same end, the other edge leads',
    },
    { value: 'partition', label: 'a partition', hint: 'one board, grooved on both faces' },
  ],
  save: (made) => editBoard(board.id, { made: made as Board['made'] }),
});

/** Which sheet or stick of the job a board is cut out of. */
export const boardStock = (
  board: Board,
  stocks: readonly { readonly id: string; readonly name: string }[],
): Ask => ({
  as: 'choice',
  title: 'What it is cut out of',
  now: board.stock ?? '',
  choices: [
    ...stocks.map(({ id, name }) => ({ value: id, label: name || 'a sheet without a name' })),
    { value: '', label: 'not said', hint: 'it is laid out on no sheet' },
  ],
  save: (stock) => editBoard(board.id, { stock: stock || undefined }),
});

export const boardCopies = (board: Board): Ask => ({
  as: 'count',
  title: 'How many boards alike',
  now: board.copies,
  save: (copies) => editBoard(board.id, { copies: copies ?? 1 }),
});

const ends = ['bottom', 'top', 'left', 'right', 'front', 'back'].map((value) => ({ value, label: value }));

export const boardEnd = (board: Board): Ask => ({
  as: 'choice',
  title: 'Which end everything is measured from',
  now: board.end,
  choices: ends,
  save: (end) => editBoard(board.id, { end }),
});

export const boardAgainst = (board: Board): Ask => ({
  as: 'choice',
  title: 'Which end is on the stop',
  now: board.against,
  choices: [
    { value: 'reference', label: `${board.end} end` },
    { value: 'other', label: 'other end', hint: 'only when all boards came off one stop' },
  ],
  save: (against) => editHow(board, { against: against as Board['against'] }),
});

export const boardStopSide = (board: Board): Ask => ({
  as: 'choice',
  title: 'Which side of the blade the stop stands',
  now: board.stopSide,
  choices: [
    { value: 'left', label: 'left of the blade' },
    { value: 'right', label: 'right of the blade' },
  ],
  save: (side) => editHow(board, { stopSide: side as Board['stopSide'] }),
});

export const boardGrows = (board: Board): Ask => ({
  as: 'choice',
  title: 'Which way the stack grows',
  now: board.grows,
  choices: [
    {
      value: 'away',
      label: `away from the ${board.end} end`,
      hint: 'the standing arbor face is on that side',
    },
    {
      value: 'toward',
      label: `toward the ${board.end} end`,
      hint: 'the near teeth move when the stack is rebuilt',
    },
  ],
  save: (grows) => editHow(board, { grows: grows as Board['grows'] }),
});

export const boardGuide = (board: Board): Ask => ({
  as: 'choice',
  title: 'Which side the guide lies on',
  now: board.guide,
  choices: [
    { value: 'reference', label: `${board.end} side` },
    { value: 'far', label: 'far side' },
  ],
  save: (guide) => editHow(board, { guide: guide as Board['guide'] }),
});

export const boardName = (board: Board): Ask => ({
  as: 'text',
  title: 'Name of the board',
  now: board.name,
  save: (name) => editBoard(board.id, { name }),
});

export const boardMateName = (board: Board): Ask => ({
  as: 'text',
  title: 'What the facing part is called',
  now: board.mateName,
  save: (mateName) => editBoard(board.id, { mateName }),
});
