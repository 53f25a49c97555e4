import { editBoard, editPlace, editRun, editWide } from '../../job/edits';
import type { Length } from '../../length/length';
import type { Board, Run, Wide } from '../../trade/grooves/board';
import type { Ask } from '../shared/ask';
import * as words from './change-words';
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

/** A run of a board. */
export type RunOf = { readonly board: Board; readonly run: Run };

/** A length of a run as a blank; the title says what it is in the sentence it stands in. */
export const runLength = (
  { board, run }: RunOf,
  field: LengthOf<Run>,
  title: words.RunTitle = field,
): Ask => ({
  as: 'length',
  title: words.runTitle(board, run, title),
  now: run[field],
  signed: field === 'first',
  save: (value) => editRun(board.id, run.id, { [field]: value }),
});

export const wideLength = (board: Board, wide: Wide, field: LengthOf<Wide>): Ask => ({
  as: 'length',
  title: words.wideTitle(field, board.wides.indexOf(wide)),
  now: wide[field],
  signed: field === 'near',
  save: (value) => editWide(board.id, wide.id, { [field]: value }),
});

export const runCount = ({ board, run }: RunOf): Ask => ({
  as: 'count',
  title: words.runTitle(board, run, 'count'),
  now: run.count,
  save: (count) => editRun(board.id, run.id, { count }),
});

export const runSpacing = ({ board, run }: RunOf): Ask => ({
  as: 'choice',
  title: words.runTitle(board, run, 'spacing'),
  now: run.spacing,
  choices: words.spacings,
  save: (spacing) => editRun(board.id, run.id, { spacing: spacing as Run['spacing'] }),
});

/** The id a place of a run is kept by. */
export const placeId = (run: Run, k: number): string => run.ids?.[k] ?? `${k + 1}`;

/** A place taken away leaves a gap, so that the others keep their numbers and ticks. */
const placed =
  ({ board, run }: RunOf, id: string) =>
  (value: Length | undefined) =>
    editPlace({ board: board.id, run: run.id }, id, value ? { at: value } : { gone: true });

export const runPlace = (of: RunOf, k: number, at: Length): Ask => ({
  as: 'length',
  title: words.placeTitle(k + 1),
  now: at,
  signed: true,
  save: placed(of, placeId(of.run, k)),
});

/** @param id one nobody has yet: two hands that add a place add two */
export const nextPlace = (of: RunOf, id: string): Ask => ({
  as: 'length',
  title: words.nextPlaceTitle,
  now: undefined,
  signed: true,
  save: (value) => (value ? placed(of, id)(value) : []),
});

export const runPoint = ({ board, run }: RunOf): Ask => ({
  as: 'choice',
  title: words.runTitle(board, run, 'point'),
  now: run.point,
  choices: words.points,
  save: (point) => editRun(board.id, run.id, { point: point as Run['point'] }),
});

export const runCentred = ({ board, run }: RunOf): Ask => ({
  as: 'choice',
  title: words.runTitle(board, run, 'centred'),
  now: run.centred ? 'both' : 'far',
  choices: words.overs,
  save: (where) => editRun(board.id, run.id, { centred: where === 'both' }),
});

export const runFace = ({ board, run }: RunOf): Ask => ({
  as: 'choice',
  title: words.runTitle(board, run, 'face'),
  now: run.face,
  choices: words.faces,
  save: (face) => editRun(board.id, run.id, { face: face as Run['face'] }),
});

export const wideFace = (board: Board, wide: Wide): Ask => ({
  as: 'choice',
  title: words.wideTitle('face', board.wides.indexOf(wide)),
  now: wide.face,
  choices: words.faces,
  save: (face) => editWide(board.id, wide.id, { face: face as Wide['face'] }),
});

export const boardMade = (board: Board): Ask => ({
  as: 'choice',
  title: words.boardTitles.made,
  now: board.made,
  choices: words.makings,
  save: (made) => editBoard(board.id, { made: made as Board['made'] }),
});

/** Which sheet or stick of the job a board is cut out of. */
export const boardStock = (
  board: Board,
  stocks: readonly { readonly id: string; readonly name: string }[],
): Ask => ({
  as: 'choice',
  title: words.boardTitles.stock,
  now: board.stock ?? '',
  choices: [
    ...stocks.map(({ id, name }) => ({ value: id, label: words.stockName(name) })),
    { value: '', ...words.noStock },
  ],
  save: (stock) => editBoard(board.id, { stock: stock || undefined }),
});

export const boardCopies = (board: Board): Ask => ({
  as: 'count',
  title: words.boardTitles.copies,
  now: board.copies,
  save: (copies) => editBoard(board.id, { copies: copies ?? 1 }),
});

const ends = ['bottom', 'top', 'left', 'right', 'front', 'back'].map((value) => ({ value, label: value }));

export const boardEnd = (board: Board): Ask => ({
  as: 'choice',
  title: words.boardTitles.end,
  now: board.end,
  choices: ends,
  save: (end) => editBoard(board.id, { end }),
});

export const boardAgainst = (board: Board): Ask => ({
  as: 'choice',
  title: words.boardTitles.against,
  now: board.against,
  choices: words.stopEnds(board.end),
  save: (against) => editHow(board, { against: against as Board['against'] }),
});

export const boardStopSide = (board: Board): Ask => ({
  as: 'choice',
  title: words.boardTitles.stopSide,
  now: board.stopSide,
  choices: words.stopSides,
  save: (side) => editHow(board, { stopSide: side as Board['stopSide'] }),
});

export const boardGrows = (board: Board): Ask => ({
  as: 'choice',
  title: words.boardTitles.grows,
  now: board.grows,
  choices: words.growths(board.end),
  save: (grows) => editHow(board, { grows: grows as Board['grows'] }),
});

export const boardGuide = (board: Board): Ask => ({
  as: 'choice',
  title: words.boardTitles.guide,
  now: board.guide,
  choices: words.guideSides(board.end),
  save: (guide) => editHow(board, { guide: guide as Board['guide'] }),
});

export const boardName = (board: Board): Ask => ({
  as: 'text',
  title: words.boardTitles.name,
  now: board.name,
  save: (name) => editBoard(board.id, { name }),
});

export const boardMateName = (board: Board): Ask => ({
  as: 'text',
  title: words.boardTitles.mateName,
  now: board.mateName,
  save: (mateName) => editBoard(board.id, { mateName }),
});
