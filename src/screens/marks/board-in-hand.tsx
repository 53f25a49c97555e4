import { useEffect, useRef, useState } from 'preact/hooks';
import { forDrawing } from '../../length/length';
import { cutGrooves, isMarked, rowsOf, type View } from '../../plan/board-layout';
import type { Board } from '../../trade/grooves/board';
import type { Face } from '../../trade/grooves/layout';
import type { Mark } from '../../trade/grooves/marks';
import { Segment } from '../../ui/bar';
import { BoardStanding } from '../../ui/boards';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { drawn } from '../shared/drawn-board';
import { MarkRow } from './mark-row';
import { spread } from './spread';
import * as words from './words';

type BoardInHandProps = {
  readonly view: View;
  readonly bench: Pick<Bench, 'folded' | 'saving' | 'act'>;
  /** The figures are of an earlier layout: nothing is ticked. */
  readonly still: boolean;
};

/** The board on its end with a figure at every near edge, one face at a time; or what its facing part wants. */
export function BoardInHand({ view, bench, still }: BoardInHandProps) {
  const [face, setFace] = useState<Face>('A');
  const [part, setPart] = useState<'board' | 'mate'>('board');
  const { board, layout } = view;
  const twoFaced = layout.grooves.some((g) => g.face === 'B');
  const marks = view.marks.filter((m) => !twoFaced || m.groove.face === face);
  const mate = part === 'mate' && board.mate !== undefined;
  return (
    <>
      {twoFaced && (
        <Choice
          label={words.face}
          choices={(['A', 'B'] as const).map((f) => [f, words.faceName(f)])}
          chosen={face}
          onChoose={setFace}
        />
      )}
      {board.mate && (
        <Choice
          label={words.part}
          choices={[
            ['board', words.ownPart(board)],
            ['mate', words.facingPart(board)],
          ]}
          chosen={part}
          onChoose={setPart}
        />
      )}
      <Standing {...{ view, bench, still, marks, mate }} />
      <MeasuredFrom board={board} mate={mate} />
    </>
  );
}

type ChoiceProps<T> = {
  readonly label: string;
  readonly choices: readonly (readonly [value: T, label: string])[];
  readonly chosen: T;
  readonly onChoose: (value: T) => void;
};

function Choice<T>({ label, choices, chosen, onChoose }: ChoiceProps<T>) {
  return (
    <div class="pad-x segs">
      <Segment
        label={label}
        choices={choices.map(([value, says]) => ({
          label: says,
          chosen: value === chosen,
          onTap: () => onChoose(value),
        }))}
      />
    </div>
  );
}

type StandingProps = BoardInHandProps & { readonly marks: readonly Mark[]; readonly mate: boolean };

/** The drawing, and a row beside each of its marks; the first one not marked is brought into sight. */
function Standing({ view, bench, still, marks, mate }: StandingProps) {
  const { board } = view;
  const ticks = bench.folded.value.ticks;
  const length = board.length ? forDrawing(board.length) : 1;
  const { height, rows } = spread(
    marks.map((m) => forDrawing(m.groove.near)),
    length,
  );
  const next = useRef<HTMLLIElement>(null);
  useEffect(() => next.current?.scrollIntoView({ block: 'nearest' }), []);
  const firstOpen = marks.findIndex((m) => !isMarked(ticks, board.id, m.groove.id));
  return (
    <div class="fig">
      <BoardStanding
        length={length}
        height={height}
        rows={rows}
        grooves={drawn(
          marks.map((m) => m.groove),
          { done: cutGrooves(rowsOf(view, ticks)) },
        )}
        label={words.standing(board, marks.length)}
      />
      <ol class="rows" style={{ height: `${height}px` }}>
        {marks.map((mark, k) => (
          <li
            key={mark.groove.id}
            class={k === firstOpen ? 'mark here' : 'mark'}
            style={{ bottom: `${(rows[k] ?? 0) - 38}px` }}
            ref={k === Math.max(0, firstOpen) ? next : null}
          >
            <MarkRow {...{ mark, view, bench, mate, still }} />
          </li>
        ))}
      </ol>
    </div>
  );
}

const MeasuredFrom = ({ board, mate }: { readonly board: Board; readonly mate: boolean }) => (
  <p class="refend">
    <Icon name="from" />
    <span>
      {words.measureFrom(board, mate)}
      <span class="note block">{!mate && words.blueFigures(board)}</span>
    </span>
  </p>
);
