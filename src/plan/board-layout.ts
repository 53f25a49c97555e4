import type { Change, Entry } from '../job/entry';
import { jobOf } from '../job/job';
import { type Folded, fold, type TickState } from '../job/log';
import type { Tape } from '../length/tape';
import type { Board } from '../trade/grooves/board';
import { type Copy, copiesOf, cutOp, markOp } from '../trade/grooves/copies';
import { type Layout, layOut } from '../trade/grooves/lay-out';
import { type Mark, marksOf } from '../trade/grooves/marks';
import { type Setting, type Settings, settingsFor } from '../trade/grooves/settings';
import { standsOn } from '../trade/grooves/stands-on';
import type { OwnMachine, Shop } from '../trade/machines/shop';
import { jobWith } from './job-with';

/** A board worked out for the screen. */
export type View = {
  readonly board: Board;
  readonly layout: Layout;
  readonly marks: readonly Mark[];
  readonly settings: Settings;
  readonly tape: Tape;
  /** The machine of the shop's own its grooves are cut on, where they are. */
  readonly own?: OwnMachine | undefined;
};

/**
 * Everything a board's screens show, from the board, the shop and the tape. Settings only of a layout that can be
 * cut.
 */
export function viewOf(laid: Board, shop: Shop, tape: Tape): View {
  const layout = layOut(laid);
  const cuttable = layout.problems.length === 0;
  const on = standsOn(laid, shop);
  const { board } = on;
  return {
    board,
    layout,
    tape,
    own: on.own,
    marks: marksOf(board, layout, tape),
    settings: cuttable
      ? settingsFor(layout, { board, shop: on.shop, tape })
      : { settings: [], problems: [], warnings: [] },
  };
}

const farthestBack = 60;

/**
 * The board as it last could be cut: its newest edits taken off one by one. What is typed wrong never takes the good
 * marks away.
 */
export function lastGood(entries: readonly Entry[], job: string, id: string): Board | undefined {
  const own = entries.filter((e) => e.kind === 'edit' && e.path.startsWith(`boards/${id}/`));
  for (let back = 1; back <= Math.min(farthestBack, own.length - 1); back += 1) {
    const board = jobOf(job, fold(own.slice(0, own.length - back)).values).boards.find((b) => b.id === id);
    if (board && board.runs.length + board.wides.length > 0 && layOut(board).problems.length === 0)
      return board;
  }
  return undefined;
}

/** The board as it would be with some changes: what the drawing shows while a blank is being filled. */
export function tried(
  folded: Folded,
  job: string,
  id: string,
  changes: readonly Change[],
): Board | undefined {
  return jobWith(folded, job, changes).boards.find((b) => b.id === id);
}

type Ticks = ReadonlyMap<string, TickState>;

/** A setting with its copies and how many of them are cut. */
export type Row = {
  readonly setting: Setting;
  readonly copies: readonly (Copy & { readonly op: string; readonly done: boolean })[];
  readonly done: boolean;
};

export function rowsOf(view: View, ticks: Ticks): readonly Row[] {
  return view.settings.settings.map((setting) => {
    const copies = copiesOf(view.board, setting.groove).map((copy) => {
      const op = cutOp(view.board.id, setting.id, copy.id);
      return { ...copy, op, done: ticks.has(op) };
    });
    return { setting, copies, done: copies.every((c) => c.done) };
  });
}

/** A groove is cut once every pass of every copy is ticked. */
export const cutGrooves = (rows: readonly Row[]): ReadonlySet<string> => {
  const open = new Set(rows.filter((r) => !r.done).map((r) => r.setting.groove.id));
  return new Set(rows.filter((r) => !open.has(r.setting.groove.id)).map((r) => r.setting.groove.id));
};

export const isMarked = (ticks: Ticks, board: string, groove: string): boolean =>
  ticks.has(markOp(board, groove));
