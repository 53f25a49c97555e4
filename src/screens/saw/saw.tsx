import { useEffect } from 'preact/hooks';
import { equals, forDrawing, subtract, zero } from '../../length/length';
import type { Rounded } from '../../length/round';
import { fromStored } from '../../length/stored';
import { showsDecimals, type Tape } from '../../length/tape';
import { remainder, writeLength } from '../../length/write';
import { cutGrooves, type Row, rowsOf, type View, viewOf } from '../../plan/board-layout';
import type { Board } from '../../trade/grooves/board';
import { copyOf } from '../../trade/grooves/copies';
import { leadingEdgeOf } from '../../trade/grooves/leading';
import type { Setting } from '../../trade/grooves/settings';
import { BoardOnSled } from '../../ui/boards';
import { Icon } from '../../ui/icon';
import { Lens } from '../../ui/lens';
import { Inline, Mixed, Remainder } from '../../ui/mixed';
import { StoryStick } from '../../ui/story-stick';
import { BigTick } from '../../ui/tick-box';
import type { Bench } from '../bench';
import { boardOf } from '../shared/board-of';
import { CautionLine } from '../shared/caution-line';
import { counted } from '../shared/counted';
import { drawn } from '../shared/drawn-board';
import { grooveCaution } from '../shared/groove-caution';
import { callGroove, faceText, measuresText, passText, setWords } from '../shared/layout-words';
import { NoBoard } from '../shared/no-board';
import { useWake } from '../shared/use-wake';
import type { Wake } from '../shared/wake';
import { change, Knuckle, keys } from './knuckle';

type SawProps = { readonly bench: Bench; readonly id: string; readonly setting: string | undefined };

/** One setting at a time, giant. The setting stands in the address, so sleep, a call or a kill comes back to it. */
export function SawScreen({ bench, id, setting }: SawProps) {
  const wake = useWake(bench);
  const job = bench.job.value;
  const board = boardOf(bench, id);
  return job && board ? (
    <SawOf {...{ bench, id, setting, wake }} board={board} tape={job.tape} />
  ) : (
    <NoBoard bench={bench} />
  );
}

type SawOfProps = SawProps & { readonly board: Board; readonly tape: Tape; readonly wake: Wake };

function SawOf({ bench, id, setting, board, tape, wake }: SawOfProps) {
  const view = viewOf(board, bench.shop.value, tape);
  const rows = rowsOf(view, bench.folded.value.ticks);
  const open = rows.findIndex((r) => !r.done);
  const asked = rows.findIndex((r) => r.setting.id === setting);
  const at = asked >= 0 ? asked : open >= 0 ? open : rows.length - 1;
  const row = rows[at];
  const stood = row?.setting.id;
  // A setting once shown stands in the address: nothing but a tap changes the figure.
  useEffect(() => {
    if (stood !== undefined && stood !== setting) bench.go({ at: 'saw', board: id, setting: stood }, true);
  }, [stood, setting]);
  if (!row) return <NothingToCut bench={bench} view={view} />;
  return <AtTheSaw {...{ bench, view, rows, at, row, wake }} />;
}

function NothingToCut({ bench, view }: { readonly bench: Bench; readonly view: View }) {
  return (
    <main class="page nothing">
      <p>
        {view.layout.problems.length > 0
          ? 'This board cannot be cut as it stands.'
          : 'The machine wants a figure first.'}
      </p>
      <button
        type="button"
        class="btn main"
        onClick={() =>
          bench.go({ at: view.layout.problems.length > 0 ? 'change' : 'stops', board: view.board.id })
        }
      >
        See what is missing
      </button>
    </main>
  );
}

type AtProps = {
  readonly bench: Bench;
  readonly view: View;
  readonly rows: readonly Row[];
  readonly at: number;
  readonly row: Row;
  readonly wake: Wake;
};

function AtTheSaw({ bench, view, rows, at, row, wake }: AtProps) {
  const { board, tape } = view;
  const { setting } = row;
  const dark = document.documentElement.dataset.theme === 'blued';
  const undo = bench.undoLabel.value;
  const goTo = (k: number) => {
    const to = rows[k];
    if (to) bench.go({ at: 'saw', board: board.id, setting: to.setting.id }, true);
  };
  const done = rows.map((r) => r.done);
  const count = done.filter(Boolean).length;
  return (
    <main class="saw" onKeyDown={(event) => keys(event, { bench, rows, at, goTo })} tabIndex={-1}>
      <h1 class="sr">
        At the {board.machine === 'router' ? 'router' : 'saw'}: {board.name}
      </h1>
      <header class="bar">
        <button
          type="button"
          class="icon back"
          aria-label={`Leave the ${board.machine === 'router' ? 'router' : 'saw'}`}
          onClick={() => bench.go({ at: 'stops', board: board.id })}
        >
          <Icon name="back" />
          Leave
        </button>
        <span class="row barright">
          <span class="icon stays" role="status">
            <Icon name="light" />
            {wake === 'on' ? 'Stays on' : 'May sleep'}
          </span>
          <button
            type="button"
            class="icon"
            aria-label={dark ? 'Bright' : 'Dim'}
            onClick={() => void bench.keep({ theme: dark ? 'satin' : 'blued' })}
          >
            <Icon name="dim" />
          </button>
          <button
            type="button"
            class="icon"
            aria-label={undo ? `Undo: ${undo}` : 'Undo'}
            aria-disabled={undo === undefined}
            onClick={() => void bench.undo()}
          >
            <Icon name="undo" />
            <span class="word-label">Undo</span>
          </button>
        </span>
      </header>
      <div class="prog">
        <StoryStick
          done={done}
          now={at}
          label={`${count} of ${counted(rows.length, 'setting', 'settings')} cut`}
        />
      </div>
      <div class="what">
        <span>{setWords[setting.measures]}</span>
        <span class="muted">
          {at + 1} of {rows.length}
        </span>
      </div>
      <div class="giant" aria-live="polite">
        <Mixed value={setting.figure.value} rest={setting.figure.rest} size="huge" tape={tape} />
        <Remainder tape={tape} rest={setting.figure.rest} />
      </div>
      <p class="ends pad-x">
        {callGroove(view.layout, setting.groove.id)}
        {passText(setting) && `, ${passText(setting)}`}: {measuresText(setting, board)},{' '}
        {faceText(setting, board)}. <Secondary setting={setting} view={view} />
      </p>
      <div class="pictures">
        <Sled view={view} rows={rows} setting={setting} />
        {!showsDecimals(tape) && (
          <div class="lensbox">
            <Lens mark={setting.figure.value} rest={setting.figure.rest} tape={tape} />
          </div>
        )}
      </div>
      <CautionLine bench={bench} code={board.machine} words={grooveCaution(board.machine)} />
      <Copies row={row} view={view} bench={bench} />
      <Knuckle {...{ bench, rows, at, row, goTo, view }} />
    </main>
  );
}

/** Far teeth and the other end's figure, small: the second figures of the setting. */
function Secondary({ setting, view }: { readonly setting: Setting; readonly view: View }) {
  const { tape } = view;
  const small = ({ value, rest }: Rounded) => {
    const left = remainder(rest, tape);
    return (
      <>
        <Inline value={value} tape={small64(tape)} />
        {left?.by && ` ${left.word} ${left.by}`}
      </>
    );
  };
  return (
    <span class="seconds">
      {setting.measures !== 'stop-to-near-teeth' && <>near teeth {small(setting.nearTeeth)}, </>}
      far teeth {small(setting.farTeeth)}, other end {small(setting.otherEnd)}
    </span>
  );
}

const small64 = (tape: Tape): Tape => (tape === '0.001' ? '1/64' : tape);

function Sled({
  view,
  rows,
  setting,
}: {
  readonly view: View;
  readonly rows: readonly Row[];
  readonly setting: Setting;
}) {
  const { board, layout } = view;
  const length = board.length ?? zero;
  const fromOther = board.machine === 'stop' && board.against === 'other';
  const flipped = layout.grooves
    .filter((g) => g.face === setting.groove.face)
    .map((g) => (fromOther ? { ...g, near: subtract(subtract(length, g.near), g.width) } : g));
  const blade = fromOther ? subtract(length, setting.farTeeth.value) : setting.nearTeeth.value;
  return (
    <div class="sled">
      <BoardOnSled
        length={forDrawing(length)}
        grooves={drawn(flipped, { done: cutGrooves(rows) })}
        blade={forDrawing(blade)}
        label={`Board with its ${fromOther ? 'other' : board.end} end against the stop, teeth at ${callGroove(layout, setting.groove.id)}`}
      />
    </div>
  );
}

function Copies({ row, view, bench }: { readonly row: Row; readonly view: View; readonly bench: Bench }) {
  const shown = row.copies.length > 6 ? row.copies.filter((c) => !c.done).slice(0, 6) : row.copies;
  return (
    <div class="ticks">
      {shown.map((copy) => {
        const tick = bench.folded.value.ticks.get(copy.op);
        const was = tick && fromStored(tick.figure);
        const moved =
          was?.ok && !equals(was.value, row.setting.figure.value) ? writeLength(was.value, view.tape) : '';
        return (
          <BigTick
            key={copy.id}
            label={copy.name}
            note={moved ? `cut at ${moved}` : edgeText(view, copy.id)}
            ticked={copy.done}
            saving={bench.saving.value.has(copy.op)}
            onTap={() =>
              void bench.act(
                `${copy.done ? 'Not cut' : 'Cut'}: ${copy.name}`,
                change(copy.op, copy.done, row.setting),
              )
            }
          />
        );
      })}
    </div>
  );
}

/** Which edge leads into the cut: the only thing that changes between left and right. */
function edgeText({ board }: View, copy: string): string {
  const own = copyOf(copy);
  const hand = board.hand ?? (board.made === 'pair' && (own === 'left' || own === 'right') ? own : undefined);
  if (!hand || board.machine === 'router' || board.machine === 'saw') return '';
  return `${leadingEdgeOf(board, hand)} edge leads`;
}
