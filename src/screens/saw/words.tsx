import type { VNode } from 'preact';
import type { Row } from '../../plan/board-layout';
import type { Board } from '../../trade/grooves/board';
import type { Layout } from '../../trade/grooves/lay-out';
import type { Setting } from '../../trade/grooves/settings';
import { counted } from '../shared/counted';
import { callGroove, faceText, passText } from '../shared/layout-words';
import { wordsAt } from '../shared/machines/groove-words';
import { boardWord, copyOfBoard } from '../shared/part-words';
import { nextNotDone } from '../shared/steps-in-row';

export const cannotBeCut = 'This board cannot be cut as it stands.';
export const figureWanted = 'The machine wants a figure first.';
export const seeMissing = 'See what is missing';

export const atMachine = (board: Board): string => `At the ${wordsAt(board).at}: ${boardWord(board)}`;
export const leaveMachine = (board: Board): string => `Leave the ${wordsAt(board).at}`;

/** The button that changes the finish of the screen, by what a tap makes of it. */
export const finishChange = (dark: boolean): string => (dark ? 'Bright' : 'Dim');

export const progress = (rows: readonly Row[]): string =>
  `${rows.filter((r) => r.done).length} of ${counted(rows.length, 'setting', 'settings')} cut`;

/** What is cut, from where to where it is measured, and which face lies where. */
export function whatIsSet(setting: Setting, board: Board, layout: Layout): string {
  const pass = passText(setting);
  const measured = wordsAt(board).measured(setting, board);
  const groove = callGroove(layout, setting.groove.id);
  return `${groove}${pass && `, ${pass}`}: ${measured}, ${faceText(setting, board)}.`;
}

type TeethProps = { readonly near: VNode | false; readonly far: VNode; readonly other: VNode };

/** The second figures of a setting; the near teeth only where they are not the first. */
export const Teeth = ({ near, far, other }: TeethProps) => (
  <>
    {near && <>near teeth {near}, </>}
    far teeth {far}, other end {other}
  </>
);

export const sledDrawn = (end: string, groove: string): string =>
  `Board with its ${end} end against the stop, teeth at ${groove}`;

export const cutAt = (figure: string): string => `cut at ${figure}`;
export const edgeLeads = (edge: string): string => `${edge} edge leads`;

/** An act as undo names it. */
export const cut = (copy: string, groove?: string): string => `Cut: ${copy}${groove ? `, ${groove}` : ''}`;
export const notCut = (copy: string): string => `Not cut: ${copy}`;

/** The big bar: the copy to be cut, else the next setting, else that all is cut. */
export function mainAction(rows: readonly Row[], at: number, board: Board): string {
  const { copies } = rows[at] ?? { copies: [] };
  const copy = copies.find((c) => !c.done);
  if (copy) return copies.length === 1 ? 'It is cut' : `${copyOfBoard(copy, board)} is cut`;
  return nextNotDone({ done: rows.map((r) => r.done), at }) === undefined
    ? `All ${rows.length} cut. Back to the marks`
    : 'Next stop';
}
