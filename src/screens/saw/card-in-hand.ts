import { jointCut, tickOf } from '../../job/edits';
import type { Change } from '../../job/entry';
import type { Row, View } from '../../plan/board-layout';
import type { Setting } from '../../trade/grooves/settings';
import type { Bench } from '../bench';
import { callGroove } from '../shared/layout-words';
import { copyOfBoard } from '../shared/part-words';
import { nextNotDone } from '../shared/steps-in-row';
import * as words from './words';

/** The tick of one operation at a setting, or its taking back. */
export const tickChange = (op: string, done: boolean, { figure, groove }: Setting): readonly Change[] =>
  done ? [{ kind: 'untick', op }] : tickOf(op, figure.value, jointCut(groove));

/** The settings of a board, the one in hand, and the way to another. */
type InHand = {
  readonly bench: Bench;
  readonly view: View;
  readonly rows: readonly Row[];
  readonly at: number;
  readonly goTo: (k: number) => void;
};

/** The big bar: cuts the next copy; where all are cut it goes to the next setting, and back to the marks at the end. */
export function press({ bench, view, rows, at, goTo }: InHand): void {
  const row = rows[at];
  const copy = row?.copies.find((c) => !c.done);
  if (row && copy) {
    navigator.vibrate?.(10);
    const label = words.cut(copyOfBoard(copy, view.board), callGroove(view.layout, row.setting.groove.id));
    void bench.act(label, tickChange(copy.op, false, row.setting));
    return;
  }
  const next = nextNotDone({ done: rows.map((r) => r.done), at });
  if (next === undefined) bench.go({ at: 'marks', board: view.board.id });
  else goTo(next);
}

/** Desk keys: Space ticks, N next, B back, U undo. */
export function deskKeys(event: KeyboardEvent, { bench, view, rows, at, goTo }: InHand): void {
  if (event.target instanceof HTMLButtonElement && (event.key === ' ' || event.key === 'Enter')) return;
  const row = rows[at];
  const copy = row?.copies.find((c) => !c.done);
  if (event.key === ' ' && row && copy)
    void bench.act(words.cut(copyOfBoard(copy, view.board)), tickChange(copy.op, false, row.setting));
  else if (event.key === 'n') goTo(at + 1);
  else if (event.key === 'b') goTo(at - 1);
  else if (event.key === 'u') void bench.undo();
  else return;
  event.preventDefault();
}
