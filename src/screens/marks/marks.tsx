import { useState } from 'preact/hooks';
import { lastGood, type View, viewOf } from '../../plan/board-layout';
import type { Board } from '../../trade/grooves/board';
import { Bar, BarButton, Segment } from '../../ui/bar';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import type { Bench, ThisPhone } from '../bench';
import { boardOf } from '../shared/board-of';
import { NoBoard } from '../shared/no-board';
import { UndoButton } from '../shared/undo-button';
import { BoardInHand } from './board-in-hand';
import { Facts } from './facts';
import { plainLines } from './plain-lines';
import { Problems } from './problems';
import { StopList } from './stops';
import * as words from './words';

type Show = 'marks' | 'stops';

type MarksProps = {
  readonly bench: Bench;
  readonly id: string;
  readonly show: Show;
};

/** The board standing on its reference end, each near edge run out to its figure; or the same as machine settings. */
export function MarksScreen({ bench, id, show }: MarksProps) {
  const job = bench.job.value;
  const board = boardOf(bench, id);
  if (!job || !board) return <NoBoard bench={bench} />;
  const now = viewOf(board, bench.shop.value, job.tape);
  const broken = now.layout.problems.length > 0;
  const before = broken ? lastGood(bench.entries.value, job.id, id) : undefined;
  const view = before ? viewOf(before, bench.shop.value, job.tape) : now;
  const Figures = show === 'marks' ? BoardInHand : StopList;
  return (
    <>
      <Bar
        title={words.boardName(board)}
        sub={words.made(view.board)}
        leave={{ label: words.boards, onTap: () => bench.go({ at: 'boards' }) }}
      >
        <UndoButton bench={bench} wordless />
        <BarButton label={words.change} boxed onTap={() => bench.go({ at: 'change', board: id })} />
      </Bar>
      <main class="page">
        <ShowChoice bench={bench} id={id} show={show} />
        {broken && (
          <Problems board={board} layout={now.layout}>
            {before && <li class="note">{words.fromBefore}</li>}
          </Problems>
        )}
        {(!broken || before) && (
          <div class={broken ? 'stale' : undefined}>
            <Figures {...{ view, bench }} still={broken} />
            <Facts view={view} bench={bench} show={show} />
          </div>
        )}
      </main>
      <div class="fixedbar">
        <CopyLines view={view} share={bench.phone.share} />
        <ToMachine bench={bench} board={board} ready={now.settings.settings.length > 0} />
      </div>
    </>
  );
}

type ShowChoiceProps = { readonly bench: Pick<Bench, 'go'>; readonly id: string; readonly show: Show };

/** Knife marks or settings of the machine. */
const ShowChoice = ({ bench, id, show }: ShowChoiceProps) => (
  <div class="pad-x segs">
    <Segment
      label={words.show}
      choices={(['marks', 'stops'] as const).map((at) => ({
        label: at === 'marks' ? words.knifeMarks : words.settings,
        chosen: show === at,
        onTap: () => bench.go({ at, board: id }, true),
      }))}
    />
  </div>
);

type ToMachineProps = {
  readonly bench: Pick<Bench, 'go'>;
  readonly board: Board;
  readonly ready: boolean;
};

const ToMachine = ({ bench, board, ready }: ToMachineProps) => (
  <button
    type="button"
    class="btn main"
    aria-disabled={!ready}
    onClick={() => ready && bench.go({ at: 'saw', board: board.id })}
  >
    {words.toMachine(board)} <Icon name="next" />
  </button>
);

type CopyProps = { readonly view: View; readonly share: ThisPhone['share'] };

/** The board as plain lines on the clipboard; where there is none, handed out as a file. */
function CopyLines({ view, share }: CopyProps) {
  const [copied, setCopied] = useState(false);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(plainLines(view));
      setCopied(true);
    } catch {
      await share(words.boardName(view.board), plainLines(view));
    }
  };
  return <Button label={words.copyLines(copied)} onTap={() => void copy()} />;
}
