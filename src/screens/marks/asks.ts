import { editBoard, editPlace, editRun, editWide } from '../../job/edits';
import type { BandKind } from '../../length/bands';
import type { Length } from '../../length/length';
import type { Board, Run, Wide } from '../../trade/grooves/board';
import { machineFor } from '../../trade/machines/groove-machines';
import type { OwnMachine } from '../../trade/machines/shop';
import type { Ask } from '../shared/ask';
import { editHow } from '../shared/edit-how';
import { cutterNamed } from '../shared/machines/groove-words';
import * as words from './change-words';
import { boardMachine } from './machine-ask';

type LengthOf<T> = {
  [K in keyof T]-?: NonNullable<T[K]> extends Length ? K : never;
}[keyof T];

/** What can be asked in a sentence, by the name of its blank. */
export type Asks = Readonly<Record<string, Ask>>;

type Choices = Extract<Ask, { readonly as: 'choice' }>['choices'];

/** What a figure is for, as far as that says how large it can be; one that may be below nothing says little. */
const boardKinds: Partial<Record<LengthOf<Board>, BandKind>> = {
  length: 'length',
  across: 'length',
  thickness: 'thickness',
  cutter: 'cutter',
};

const runKinds: Partial<Record<LengthOf<Run>, BandKind>> = {
  width: 'groove',
  depth: 'depth',
  pitch: 'place',
  endRoom: 'place',
  span: 'place',
  part: 'thickness',
  stopped: 'place',
};

const wideKinds: Partial<Record<LengthOf<Wide>, BandKind>> = { width: 'place', depth: 'depth' };

const boardLength = (
  board: Board,
  field: LengthOf<Board>,
  title: string = words.boardTitles[field],
): Ask => ({
  as: 'length',
  title,
  kind: boardKinds[field],
  now: board[field],
  signed: field === 'datum' || field === 'mate',
  save: (value) =>
    field === 'cutter' ? editHow(board, { cutter: value }) : editBoard(board.id, { [field]: value }),
});

const boardText = (board: Board, field: 'name' | 'mateName'): Ask => ({
  as: 'text',
  title: words.boardTitles[field],
  now: board[field],
  save: (text) => editBoard(board.id, { [field]: text }),
});

const boardChoice = (board: Board, field: 'made' | 'end' | 'stock', choices: Choices): Ask => ({
  as: 'choice',
  title: words.boardTitles[field],
  now: board[field] ?? '',
  choices,
  save: (value) => editBoard(board.id, { [field]: value || undefined }),
});

const boardCopies = (board: Board): Ask => ({
  as: 'count',
  title: words.boardTitles.copies,
  unit: words.boards,
  now: board.copies,
  save: (copies) => editBoard(board.id, { copies: copies ?? 1 }),
});

const ends = ['bottom', 'top', 'left', 'right', 'front', 'back'].map((value) => ({ value, label: value }));

type Named = { readonly id: string; readonly name: string };

/** What is asked of a board laid out by hand. @param stocks what it may be cut out of */
export const boardAsks = (board: Board, stocks: readonly Named[]): Asks => ({
  name: boardText(board, 'name'),
  made: boardChoice(board, 'made', words.makings),
  copies: boardCopies(board),
  length: boardLength(board, 'length'),
  across: boardLength(board, 'across'),
  thickness: boardLength(board, 'thickness'),
  stock: boardChoice(board, 'stock', [
    ...stocks.map(({ id, name }) => ({ value: id, label: words.stockName(name) })),
    { value: '', ...words.noStock },
  ]),
  end: boardChoice(board, 'end', ends),
  datum: boardLength(board, 'datum'),
  mateName: boardText(board, 'mateName'),
  mate: boardLength(board, 'mate'),
});

/** How the board lies at its machine: kept with the part where its layout comes from a case. */
const howChoice = (
  board: Board,
  field: 'against' | 'stopSide' | 'grows' | 'guide',
  choices: Choices,
): Ask => ({
  as: 'choice',
  title: words.boardTitles[field],
  now: board[field],
  choices,
  save: (value) => editHow(board, { [field]: value }),
});

/** What is asked of how a board is cut; which of it depends on the machine. */
export const machineAsks = (board: Board, own: readonly OwnMachine[] = []): Asks => ({
  machine: boardMachine(board, own),
  against: howChoice(board, 'against', words.stopEnds(board.end)),
  stopSide: howChoice(board, 'stopSide', words.stopSides),
  grows: howChoice(board, 'grows', words.growths(board.end)),
  guide: howChoice(board, 'guide', words.guideSides(board.end)),
  cutter: boardLength(board, 'cutter', words.cutterTitle(cutterNamed(machineFor(board.machine).cuts))),
  across: boardLength(board, 'across', words.alongFence),
});

/** A run of a board. */
type RunOf = { readonly board: Board; readonly run: Run };

/** A length of a run as a blank; the title says what it is in the sentence it stands in. */
const runLength = ({ board, run }: RunOf, field: LengthOf<Run>, title: words.RunTitle = field): Ask => ({
  as: 'length',
  title: words.runTitle(board, run, title),
  kind: runKinds[field],
  now: run[field],
  signed: field === 'first',
  save: (value) => editRun(board.id, run.id, { [field]: value }),
});

const runCount = ({ board, run }: RunOf): Ask => ({
  as: 'count',
  title: words.runTitle(board, run, 'count'),
  unit: words.grooves,
  now: run.count,
  save: (count) => editRun(board.id, run.id, { count }),
});

const runChoice = ({ board, run }: RunOf, field: 'spacing' | 'point' | 'face', choices: Choices): Ask => ({
  as: 'choice',
  title: words.runTitle(board, run, field),
  now: run[field],
  choices,
  save: (value) => editRun(board.id, run.id, { [field]: value }),
});

const runCentred = ({ board, run }: RunOf): Ask => ({
  as: 'choice',
  title: words.runTitle(board, run, 'centred'),
  now: run.centred ? 'both' : 'far',
  choices: words.overs,
  save: (where) => editRun(board.id, run.id, { centred: where === 'both' }),
});

export const runStopped = (of: RunOf): Ask => runLength(of, 'stopped');

/** What is asked of a run of grooves; which of it depends on how they are spaced. */
export const runAsks = (of: RunOf): Asks => ({
  count: runCount(of),
  width: runLength(of, 'width'),
  depth: runLength(of, 'depth'),
  face: runChoice(of, 'face', words.faces),
  spacing: runChoice(of, 'spacing', words.spacings),
  point: runChoice(of, 'point', words.points),
  first: runLength(of, 'first'),
  spanFrom: runLength(of, 'first', 'spanFrom'),
  pitch: runLength(of, 'pitch'),
  endRoom: runLength(of, 'endRoom'),
  span: runLength(of, 'span'),
  shared: runLength(of, 'span', 'shared'),
  part: runLength(of, 'part'),
  centred: runCentred(of),
  stopped: runStopped(of),
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

const wideLength = (board: Board, wide: Wide, field: LengthOf<Wide>): Ask => ({
  as: 'length',
  title: words.wideTitle(field, board.wides.indexOf(wide)),
  kind: wideKinds[field],
  now: wide[field],
  signed: field === 'near',
  save: (value) => editWide(board.id, wide.id, { [field]: value }),
});

/** What is asked of a wide groove. */
export const wideAsks = (board: Board, wide: Wide): Asks => ({
  width: wideLength(board, wide, 'width'),
  depth: wideLength(board, wide, 'depth'),
  near: wideLength(board, wide, 'near'),
  face: {
    as: 'choice',
    title: words.wideTitle('face', board.wides.indexOf(wide)),
    now: wide.face,
    choices: words.faces,
    save: (face) => editWide(board.id, wide.id, { face: face as Wide['face'] }),
  },
});
