import { forDrawing, subtract, zero } from '../../length/length';
import type { Rounded } from '../../length/round';
import { showsDecimals, type Tape } from '../../length/tape';
import { remainder } from '../../length/write';
import { cutGrooves, type Row, rowsOf, type View, viewOf } from '../../plan/board-layout';
import type { Board } from '../../trade/grooves/board';
import type { Setting } from '../../trade/grooves/settings';
import { machineFor } from '../../trade/machines/groove-machines';
import { isOtherEndOn } from '../../trade/machines/reach';
import { BoardOnSled } from '../../ui/boards';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import { Lens } from '../../ui/lens';
import { Inline } from '../../ui/mixed';
import type { Bench } from '../bench';
import { boardOf } from '../shared/board-of';
import { CautionLine } from '../shared/caution-line';
import { drawn } from '../shared/drawn-board';
import { callGroove } from '../shared/layout-words';
import { setWords, wordsAt } from '../shared/machines/groove-words';
import { NoBoard } from '../shared/no-board';
import { OneNumber } from '../shared/one-number';
import { stepToShow, useStepInAddress } from '../shared/steps-in-row';
import { useWake } from '../shared/use-wake';
import type { Wake } from '../shared/wake';
import { deskKeys, press } from './card-in-hand';
import { Copies } from './copies';
import * as words from './words';

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
  const ids = rows.map((r) => r.setting.id);
  const done = rows.map((r) => r.done);
  const at = stepToShow(ids, done, setting);
  const row = rows[at];
  useStepInAddress(ids[at], setting, (to) => bench.go({ at: 'saw', board: id, setting: to }, true));
  if (!row) return <NothingToCut bench={bench} view={view} />;
  return <AtTheSaw {...{ bench, view, rows, at, row, wake }} />;
}

function NothingToCut({ bench, view }: { readonly bench: Bench; readonly view: View }) {
  const broken = view.layout.problems.length > 0;
  return (
    <main class="page nothing">
      <p>{broken ? words.cannotBeCut : words.figureWanted}</p>
      <Button
        label={words.seeMissing}
        look="main"
        onTap={() => bench.go({ at: broken ? 'change' : 'stops', board: view.board.id })}
      />
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
  const { board, tape, layout } = view;
  const { setting } = row;
  const goTo = (k: number) => {
    const to = rows[k];
    if (to) bench.go({ at: 'saw', board: board.id, setting: to.setting.id }, true);
  };
  const inHand = { bench, view, rows, at, goTo };
  return (
    <OneNumber
      {...{ bench, wake, tape, goTo }}
      heading={words.atMachine(board)}
      leave={{
        label: words.leaveMachine(board),
        onTap: () => bench.go({ at: 'stops', board: board.id }),
      }}
      tool={<FinishButton bench={bench} />}
      row={{ done: rows.map((r) => r.done), at }}
      progress={words.progress(rows)}
      title={setWords[setting.measures]}
      figure={setting.figure}
      main={{ label: words.mainAction(rows, at, board), onTap: () => press(inHand) }}
      onKeyDown={(event) => deskKeys(event, inHand)}
    >
      <p class="ends pad-x">
        {words.whatIsSet(setting, board, layout)} <Secondary setting={setting} tape={tape} />
      </p>
      <div class="pictures">
        <Sled view={view} rows={rows} setting={setting} />
        {!showsDecimals(tape) && (
          <div class="lensbox">
            <Lens mark={setting.figure.value} rest={setting.figure.rest} tape={tape} />
          </div>
        )}
      </div>
      <CautionLine bench={bench} code={board.machine} words={wordsAt(board).caution} />
      <Copies row={row} view={view} bench={bench} />
    </OneNumber>
  );
}

function FinishButton({ bench }: { readonly bench: Pick<Bench, 'keep'> }) {
  const dark = document.documentElement.dataset.theme === 'blued';
  return (
    <button
      type="button"
      class="icon"
      aria-label={words.finishChange(dark)}
      onClick={() => void bench.keep({ theme: dark ? 'satin' : 'blued' })}
    >
      <Icon name="dim" />
    </button>
  );
}

/** Far teeth and the other end's figure, small: the second figures of the setting. */
function Secondary({ setting, tape }: { readonly setting: Setting; readonly tape: Tape }) {
  const small = ({ value, rest }: Rounded) => {
    const left = remainder(rest, tape);
    return (
      <>
        <Inline value={value} tape={tape === '0.001' ? '1/64' : tape} />
        {left?.by && ` ${left.word} ${left.by}`}
      </>
    );
  };
  return (
    <span class="seconds">
      <words.Teeth
        near={setting.measures !== 'stop-to-near-teeth' && small(setting.nearTeeth)}
        far={small(setting.farTeeth)}
        other={small(setting.otherEnd)}
      />
    </span>
  );
}

type SledProps = { readonly view: View; readonly rows: readonly Row[]; readonly setting: Setting };

function Sled({ view: { board, layout }, rows, setting }: SledProps) {
  const length = board.length ?? zero;
  const fromOther = isOtherEndOn(machineFor(board.machine), board);
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
        label={words.sledDrawn(fromOther ? 'other' : board.end, callGroove(layout, setting.groove.id))}
      />
    </div>
  );
}
