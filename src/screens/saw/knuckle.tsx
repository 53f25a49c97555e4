import { jointCut, tickOf } from '../../job/edits';
import type { Change } from '../../job/entry';
import type { Row, View } from '../../plan/board-layout';
import type { Setting } from '../../trade/grooves/settings';
import type { Bench } from '../bench';
import { callGroove } from '../shared/layout-words';

/** The tick, or its taking back, of one operation at a setting. */
export const change = (op: string, done: boolean, { figure, groove }: Setting): readonly Change[] =>
  done ? [{ kind: 'untick', op }] : tickOf(op, figure.value, jointCut(groove));

type KnuckleProps = {
  readonly bench: Bench;
  readonly view: View;
  readonly rows: readonly Row[];
  readonly at: number;
  readonly row: Row;
  readonly goTo: (k: number) => void;
};

/** The one big bar: it says the next true thing. Nothing moves on by itself. */
export function Knuckle({ bench, view, rows, at, row, goTo }: KnuckleProps) {
  return (
    <div class="knuckle">
      <button type="button" class="btn" aria-disabled={at === 0} onClick={() => goTo(at - 1)}>
        Back
      </button>
      <button
        type="button"
        class="btn skip"
        aria-disabled={at >= rows.length - 1}
        onClick={() => goTo(at + 1)}
      >
        Skip
      </button>
      <button type="button" class="btn main" onClick={() => press({ bench, rows, at, row, goTo, view })}>
        {mainWords(rows, at, row)}
      </button>
    </div>
  );
}

function mainWords(rows: readonly Row[], at: number, row: Row): string {
  const copy = row.copies.find((c) => !c.done);
  if (copy) return row.copies.length === 1 ? 'It is cut' : `${copy.name} is cut`;
  return nextOpen(rows, at) === undefined ? `All ${rows.length} cut. Back to the marks` : 'Next stop';
}

/** The next setting with something to cut: after this one first, then from the start. */
function nextOpen(rows: readonly Row[], at: number): number | undefined {
  const after = rows.findIndex((r, k) => k > at && !r.done);
  if (after >= 0) return after;
  const any = rows.findIndex((r) => !r.done);
  return any >= 0 ? any : undefined;
}

function press({ bench, view, rows, at, row, goTo }: KnuckleProps): void {
  const copy = row.copies.find((c) => !c.done);
  if (copy) {
    navigator.vibrate?.(10);
    void bench.act(
      `Cut: ${copy.name}, ${callGroove(view.layout, row.setting.groove.id)}`,
      change(copy.op, false, row.setting),
    );
    return;
  }
  const next = nextOpen(rows, at);
  if (next === undefined) bench.go({ at: 'marks', board: view.board.id });
  else goTo(next);
}

type KeysContext = {
  readonly bench: Bench;
  readonly rows: readonly Row[];
  readonly at: number;
  readonly goTo: (k: number) => void;
};

/** Desk keys: Space ticks, N next, B back, U undo. */
export function keys(event: KeyboardEvent, { bench, rows, at, goTo }: KeysContext): void {
  if (event.target instanceof HTMLButtonElement && (event.key === ' ' || event.key === 'Enter')) return;
  const row = rows[at];
  const copy = row?.copies.find((c) => !c.done);
  if (event.key === ' ' && row && copy)
    void bench.act(`Cut: ${copy.name}`, change(copy.op, false, row.setting));
  else if (event.key === 'n') goTo(at + 1);
  else if (event.key === 'b') goTo(at - 1);
  else if (event.key === 'u') void bench.undo();
  else return;
  event.preventDefault();
}
