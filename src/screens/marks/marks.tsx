import { useEffect, useRef, useState } from 'preact/hooks';
import { equals, forDrawing } from '../../length/length';
import { fromStored, toStored } from '../../length/stored';
import { isTapeFraction, writeDecimal, writeLength } from '../../length/write';
import { cutGrooves, isMarked, lastGood, rowsOf, type View, viewOf } from '../../plan/board-layout';
import type { Face } from '../../trade/grooves/board';
import { markOp } from '../../trade/grooves/copies';
import type { Mark } from '../../trade/grooves/marks';
import { Bar, BarButton, Segment } from '../../ui/bar';
import { BoardStanding } from '../../ui/boards';
import { Icon } from '../../ui/icon';
import { Mixed, Remainder, Sign } from '../../ui/mixed';
import { TickBox } from '../../ui/tick-box';
import type { Bench } from '../bench';
import { boardOf } from '../shared/board-of';
import { counted } from '../shared/counted';
import { drawn } from '../shared/drawn-board';
import { NoBoard } from '../shared/no-board';
import { UndoButton } from '../shared/undo-button';
import type { Facts as WorthKnowing } from './facts';
import { plainLines } from './plain-lines';
import { Problems } from './problems';
import { spread } from './spread';
import { StopList } from './stops';

type MarksProps = {
  readonly bench: Bench;
  readonly id: string;
  readonly show: 'marks' | 'stops';
  /** What stands below the figures; it comes in the second file. */
  readonly Facts: typeof WorthKnowing | undefined;
};

/** The board standing on its reference end, each near edge run out to its figure; or the same as machine settings. */
export function MarksScreen({ bench, id, show, Facts }: MarksProps) {
  const job = bench.job.value;
  const board = boardOf(bench, id);
  if (!job || !board) return <NoBoard bench={bench} />;
  const now = viewOf(board, bench.shop.value, job.tape);
  const broken = now.layout.problems.length > 0;
  const before = broken ? lastGood(bench.entries.value, job.id, id) : undefined;
  const view = before ? viewOf(before, bench.shop.value, job.tape) : now;
  return (
    <>
      <Bar
        title={board.name || 'Board'}
        sub={madeText(view)}
        leave={{ label: 'Boards', onTap: () => bench.go({ at: 'boards' }) }}
      >
        <UndoButton bench={bench} wordless />
        <BarButton label="Change" boxed onTap={() => bench.go({ at: 'change', board: id })} />
      </Bar>
      <main class="page">
        <div class="pad-x segs">
          <Segment
            label="Show"
            choices={[
              {
                label: 'Knife marks',
                chosen: show === 'marks',
                onTap: () => bench.go({ at: 'marks', board: id }, true),
              },
              {
                label: 'Settings',
                chosen: show === 'stops',
                onTap: () => bench.go({ at: 'stops', board: id }, true),
              },
            ]}
          />
        </div>
        {broken && (
          <Problems board={board} layout={now.layout}>
            {before && <li class="note">The figures below are from before this change.</li>}
          </Problems>
        )}
        {(!broken || before) && (
          <div class={broken ? 'stale' : undefined}>
            {show === 'marks' ? (
              <BoardInHand view={view} bench={bench} still={broken} />
            ) : (
              <StopList view={view} bench={bench} still={broken} />
            )}
            {Facts && <Facts view={view} bench={bench} show={show} />}
          </div>
        )}
      </main>
      <div class="fixedbar">
        <CopyLines view={view} bench={bench} />
        <button
          type="button"
          class="btn main"
          aria-disabled={broken || now.settings.settings.length === 0}
          onClick={() => !broken && now.settings.settings.length > 0 && bench.go({ at: 'saw', board: id })}
        >
          To the {board.machine === 'router' ? 'router' : 'saw'} <Icon name="next" />
        </button>
      </div>
    </>
  );
}

/** The board as plain lines on the clipboard; where there is none, handed out as a file. */
function CopyLines({ view, bench }: { readonly view: View; readonly bench: Bench }) {
  const [copied, setCopied] = useState(false);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(plainLines(view));
      setCopied(true);
    } catch {
      await bench.phone.share(view.board.name || 'Board', plainLines(view));
    }
  };
  return (
    <button type="button" class="btn" onClick={() => void copy()}>
      {copied ? 'Copied' : 'Copy as lines'}
    </button>
  );
}

function madeText({ board }: View): string {
  if (board.made === 'pair') return 'Two, left and right';
  if (board.made === 'partition') return 'One, grooved on both faces';
  return board.copies === 1 ? 'One board' : `${board.copies} alike`;
}

type BoardInHandProps = { readonly view: View; readonly bench: Bench; readonly still: boolean };

function BoardInHand({ view, bench, still }: BoardInHandProps) {
  const [face, setFace] = useState<Face>('A');
  const [part, setPart] = useState<'board' | 'mate'>('board');
  const { board, layout } = view;
  const twoFaced = layout.grooves.some((g) => g.face === 'B');
  const marks = view.marks.filter((m) => !twoFaced || m.groove.face === face);
  const ticks = bench.folded.value.ticks;
  const done = cutGrooves(rowsOf(view, ticks));
  const length = board.length ? forDrawing(board.length) : 1;
  const { height, rows } = spread(
    marks.map((m) => forDrawing(m.groove.near)),
    length,
  );
  const next = useRef<HTMLLIElement>(null);
  useEffect(() => next.current?.scrollIntoView({ block: 'nearest' }), []);
  const firstOpen = marks.findIndex((m) => !isMarked(ticks, board.id, m.groove.id));
  const mate = part === 'mate' && board.mate !== undefined;
  return (
    <>
      {twoFaced && (
        <div class="pad-x segs">
          <Segment
            label="Face"
            choices={(['A', 'B'] as const).map((f) => ({
              label: `Face ${f}`,
              chosen: f === face,
              onTap: () => setFace(f),
            }))}
          />
        </div>
      )}
      {board.mate && (
        <div class="pad-x segs">
          <Segment
            label="Part"
            choices={[
              { label: board.name || 'This board', chosen: part === 'board', onTap: () => setPart('board') },
              { label: `Facing ${board.mateName}`, chosen: part === 'mate', onTap: () => setPart('mate') },
            ]}
          />
        </div>
      )}
      <div class="fig">
        <BoardStanding
          length={length}
          height={height}
          rows={rows}
          grooves={drawn(
            marks.map((m) => m.groove),
            { done },
          )}
          label={`${board.name || 'Board'}, ${board.length ? writeLength(board.length) : ''} long, standing on its ${board.end} end, ${counted(marks.length, 'groove', 'grooves')}`}
        />
        <ol class="rows" style={{ height: `${height}px` }}>
          {marks.map((mark, k) => (
            <li
              key={mark.groove.id}
              class={mark.groove.id === marks[firstOpen]?.groove.id ? 'mark here' : 'mark'}
              style={{ bottom: `${(rows[k] ?? 0) - 38}px` }}
              ref={k === Math.max(0, firstOpen) ? next : null}
            >
              <MarkRow mark={mark} view={view} bench={bench} mate={mate} still={still} />
            </li>
          ))}
        </ol>
      </div>
      <p class="refend">
        <Icon name="from" />
        <span>
          Measure from this end: the {mate ? `${board.mateName}’s own` : board.end}
          <span class="note block">
            {!mate && 'Blue figures are from the other end.'}
            {board.datum && !mate && ` The datum is ${writeLength(board.datum)} in.`}
          </span>
        </span>
      </p>
    </>
  );
}

type MarkRowProps = {
  readonly mark: Mark;
  readonly view: View;
  readonly bench: Bench;
  readonly mate: boolean;
  readonly still: boolean;
};

function MarkRow({ mark, view, bench, mate, still }: MarkRowProps) {
  const { board, tape } = view;
  const { groove } = mark;
  const op = markOp(board.id, groove.id);
  const tick = bench.folded.value.ticks.get(op);
  const near = mate && mark.mate ? mark.mate : mark.near;
  const was = tick && fromStored(tick.figure);
  const moved = was?.ok && !equals(was.value, mark.near.value) ? was.value : undefined;
  const toggle = () => {
    if (still) return;
    const label = `${tick ? 'Not marked' : 'Marked'}: ${groove.wide ? '' : 'no. '}${groove.no}`;
    void bench.act(label, [
      tick ? { kind: 'untick', op } : { kind: 'tick', op, figure: toStored(mark.near.value) },
    ]);
  };
  return (
    <>
      <span class="no">{groove.no}</span>
      <Mixed value={near.value} rest={near.rest} size="bench" tape={tape} />
      <span class="side grow">
        <Remainder tape={tape} rest={near.rest} by={false} />
        {!mate && (
          <span class="other" title="from the other end">
            <span class="sr">from the other end </span>

            <Mixed value={mark.other.value} rest={mark.other.rest} tape={tape} />
            <Sign rest={mark.other.rest} tape={tape} />
          </span>
        )}
        {groove.wide && (
          <span class="wide-note">
            {isTapeFraction(groove.width) ? writeLength(groove.width) : writeDecimal(groove.width)} wide
            {groove.called && `, ${groove.called}`}
          </span>
        )}
        {moved && <span class="rem">knifed at {writeLength(moved, tape)}</span>}
      </span>
      <TickBox
        label={`Marked ${groove.no}`}
        ticked={tick !== undefined}
        saving={bench.saving.value.has(op)}
        onTap={toggle}
      />
    </>
  );
}
