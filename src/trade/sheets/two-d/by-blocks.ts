import { areTold, type Blocks, insideOf, nestOfBlock, type Sort, sortsOf } from './blocks';
import { cover } from './cover';
import { layNests } from './nest';
import type { State } from './state';
import type { Kind } from './stock';
import { type Pace, type Tight, tightBlocks, type Work } from './tight-blocks';

/** What may stay without a piece, as a part of the sheets, where putting blocks together finds more than a search. */
const mostSpare = 0.03;

/** How far blocks are made, and so many of the fullest sheets taken for which the rest is put together anew. */
type Turn = Pace & { readonly fullest: number };

/** One after the other where no plan comes of it. Measured, no source. */
const turns: readonly Turn[] = [
  { waste: 0.015, each: 200, fullest: 0 },
  { waste: 0.05, each: 200, fullest: 25 },
  { waste: 0.02, each: 600, fullest: 25 },
  { waste: 0.04, each: 400, fullest: 25 },
];

/** For what one full sheet leaves. Measured, no source. */
const paceOfRest: Pace = { waste: 0.03, each: 100 };

/** Pieces by size, and the sheets they are to lie on. */
type Task = {
  readonly sorts: readonly Sort[];
  readonly sheet: Pick<Kind, 'w' | 'h'>;
  readonly sheets: number;
};

/** Area that stays without a piece. */
const spareOf = ({ sorts, sheet, sheets }: Task): number =>
  sheets * sheet.w * sheet.h - sorts.reduce((sum, { w, h, pieces }) => sum + w * h * pieces.length, 0);

/**
 * True where so many sheets would be covered almost wholly: one kind, no groups, and what a block is made of can be
 * told by one number.
 * @example isForBlocks(state, 3) // true
 */
export function isForBlocks({ stock, kinds }: State, sheets: number): boolean {
  const [sheet, ...others] = kinds;
  if (!sheet || others.length > 0 || stock.groups.length > 0 || sheets < 1 || sheets > sheet.count)
    return false;
  const sorts = sortsOf(stock);
  const spare = spareOf({ sorts, sheet, sheets });
  return spare >= 0 && spare <= mostSpare * sheets * sheet.w * sheet.h && areTold(sorts);
}

/** A sheet: one of some blocks. */
type Filled = { readonly blocks: Blocks; readonly block: number };

/**
 * A plan of so many sheets, each a block of little waste, left lying in the state.
 *
 * @param state such as `isForBlocks` says yes to @param until the work it may come to
 * @returns true when a plan lies there, all pieces placed; the state is as it was otherwise, but for the work
 * @example yield* byBlocks(state, 3, state.work + 1e6)
 */
export function* byBlocks(state: State, sheets: number, until: number): Generator<undefined, boolean> {
  const [sheet] = state.kinds;
  if (!sheet) return false;
  const sorts = sortsOf(state.stock);
  const work = { work: state.work, until };
  const filled = yield* filledSheets({ sorts, sheet, sheets }, work);
  state.work = work.work;
  if (!filled) return false;
  const left = sorts.map(({ pieces }) => [...pieces]);
  const nests = filled.map(({ blocks, block }) => nestOfBlock(blocks, block, left));
  layNests(state, nests, new Int32Array(state.stock.count.length));
  return true;
}

function* filledSheets(task: Task, work: Work): Generator<undefined, readonly Filled[] | undefined> {
  for (const turn of turns) {
    const { tight, filled } = yield* inOneTurn(task, turn, work);
    if (filled) return filled;
    for (const block of tight.full.slice(0, turn.fullest)) {
      if (work.work >= work.until) return undefined;
      const rest = yield* inOneTurn(without(task, tight.blocks, block), paceOfRest, work);
      if (rest.filled) return [{ blocks: tight.blocks, block }, ...rest.filled];
    }
  }
  return undefined;
}

/** Blocks, and sheets chosen of them; choosing takes as much work as making them at most. */
function* inOneTurn(
  task: Task,
  pace: Pace,
  work: Work,
): Generator<undefined, { readonly tight: Tight; readonly filled: readonly Filled[] | undefined }> {
  const from = work.work;
  const tight = yield* tightBlocks({ ...task, spare: spareOf(task), pace }, work);
  const choosing = { work: work.work, until: Math.min(work.until, 2 * work.work - from) };
  const found = yield* cover(tight.blocks, tight.full, { sheets: task.sheets, work: choosing });
  work.work = choosing.work;
  return { tight, filled: found?.map((block) => ({ blocks: tight.blocks, block })) };
}

/** What is left once a block fills one sheet: fewer of some sorts, none of others. */
function without({ sorts, sheet, sheets }: Task, blocks: Blocks, block: number): Task {
  const taken = insideOf(blocks, block);
  const left = sorts.map((sort, k) => ({
    ...sort,
    pieces: sort.pieces.slice(0, sort.pieces.length - (taken[k] ?? 0)),
  }));
  return { sorts: left, sheet, sheets: sheets - 1 };
}
