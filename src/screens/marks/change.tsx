import { useState } from 'preact/hooks';
import { editBoard, editRun, editWide } from '../../job/edits';
import type { Change } from '../../job/entry';
import type { Job } from '../../job/job';
import { forDrawing } from '../../length/length';
import { lastGood, tried } from '../../plan/board-layout';
import { sheetsOf } from '../../plan/measured-sheets';
import type { Board } from '../../trade/grooves/board';
import { layOut } from '../../trade/grooves/lay-out';
import { standsOn } from '../../trade/grooves/stands-on';
import { Bar } from '../../ui/bar';
import { BoardLying } from '../../ui/board-lying';
import { Button, Chip, Onward } from '../../ui/button';
import type { Bench } from '../bench';
import type { Ask } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { boardOf, isByHand } from '../shared/board-of';
import { drawn } from '../shared/drawn-board';
import { NoBoard } from '../shared/no-board';
import { boardWord } from '../shared/part-words';
import { UndoButton } from '../shared/undo-button';
import * as words from './change-words';
import { Openings } from './openings';
import { Problems } from './problems';
import { RunSentence } from './run-sentence';
import { BoardSentence, DatumSentence, MachineSentence, type Slip, WideSentence } from './sentences';

/** What goes in: one sentence with blanks, read aloud like an order slip. The drawing follows each key. */
export function ChangeScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const job = bench.job.value;
  const board = boardOf(bench, id);
  if (!job || !board) return <NoBoard bench={bench} />;
  return <BoardSlip {...{ bench, job, board }} />;
}

type SlipProps = { readonly bench: Bench; readonly job: Job; readonly board: Board };

function BoardSlip({ bench, job, board }: SlipProps) {
  const [open, setOpen] = useState<Ask>();
  const [trying, setTrying] = useState<readonly Change[]>();
  const { id } = board;
  const byHand = isByHand(job, id);
  const inHand = (byHand && trying && tried(bench.folded.value, job.id, id, trying)) || board;
  const layout = layOut(inHand);
  const act = (label: string, changes: readonly Change[]) => void bench.act(label, changes);
  const { own } = bench.shop.value;
  const slip: Slip = { board: standsOn(board, { own }).board, own, open, onOpen: setOpen, act };
  const close = () => {
    setOpen(undefined);
    setTrying(undefined);
  };
  const toMarks = () => bench.go({ at: 'marks', board: id });
  return (
    <>
      <Bar
        title={words.boardName(boardWord(board))}
        sub={words.whatGoesIn}
        leave={{ label: words.backToMarks, onTap: toMarks }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <Drawing
          board={layout.problems.length === 0 ? inHand : lastGood(bench.entries.value, job.id, id)}
          end={board.end}
          stale={layout.problems.length > 0}
        />
        <Problems board={inHand} layout={layout} />
        {byHand ? <ByHand {...{ bench, job, slip }} /> : <ByCase bench={bench} slip={slip} />}
        <Openings board={inHand} tape={job.tape} />
      </main>
      <ToMarks onTap={toMarks} />
      <AskDock
        ask={open}
        tape={job.tape}
        sheets={sheetsOf(job).map((s) => ({ name: s.name, thickness: s.thickest }))}
        act={act}
        onTry={setTrying}
        onClose={close}
      />
    </>
  );
}

const ToMarks = ({ onTap }: { readonly onTap: () => void }) => (
  <div class="fixedbar">
    <Onward label={words.showMarks} onTap={onTap} />
  </div>
);

type DrawingProps = {
  /** As it can be cut, or last could be. */
  readonly board: Board | undefined;
  readonly end: string;
  readonly stale: boolean;
};

function Drawing({ board, end, stale }: DrawingProps) {
  if (!board?.length) return null;
  return (
    <div class="pad-x drawing">
      <BoardLying
        length={forDrawing(board.length)}
        grooves={drawn(layOut(board).grooves)}
        stale={stale}
        label={words.drawnLying(end)}
      />
      {stale && <p class="note">{words.beforeChange}</p>}
    </div>
  );
}

type ByHandProps = { readonly bench: Bench; readonly job: Job; readonly slip: Slip };

/** The sentences of a board whose layout is its own, and what can be added to it. */
const ByHand = ({ bench, job, slip }: ByHandProps) => (
  <>
    <BoardSentence {...slip} stock={job.stock} />
    {slip.board.runs.map((run) => (
      <RunSentence key={run.id} {...slip} run={run} bench={bench} />
    ))}
    {slip.board.wides.map((wide) => (
      <WideSentence key={wide.id} {...slip} wide={wide} />
    ))}
    <DatumSentence {...slip} />
    <MachineSentence {...slip} />
    <Adds {...{ bench }} board={slip.board} act={slip.act} />
  </>
);

type ByCaseProps = { readonly bench: Pick<Bench, 'go'>; readonly slip: Slip };

/** A board of a case is laid out there; only how it is cut is its own. */
const ByCase = ({ bench, slip }: ByCaseProps) => (
  <>
    <p class="pad-x note">
      {words.byCase}{' '}
      <Chip
        label={words.changeCase}
        onTap={() => bench.go({ at: 'case', id: slip.board.id.split('~')[0] ?? '' })}
      />
    </p>
    <MachineSentence {...slip} />
  </>
);

type AddsProps = Pick<Slip, 'board' | 'act'> & { readonly bench: Pick<Bench, 'go' | 'newId'> };

/** What can be added to a board laid out by hand, and its removal. */
function Adds({ bench, board, act }: AddsProps) {
  const { id, name } = board;
  const newWide = () => act(words.wideGroove, editWide(id, bench.newId(), { face: 'A' }));
  const remove = () => {
    act(words.boardRemoved(name), editBoard(id, { gone: true }));
    bench.go({ at: 'boards' });
  };
  return (
    <div class="pad-x adds">
      <Button
        label={words.anotherRun}
        icon="plus"
        onTap={() => act(words.anotherRun, newRun(board, bench.newId()))}
      />
      <Button label={words.wideGroove} icon="plus" onTap={newWide} />
      <Button label={words.tray} look="quiet" onTap={() => bench.go({ at: 'tray', board: id })} />
      <Button label={words.removeBoard} look="quiet" onTap={remove} />
    </div>
  );
}

/** Another run, as wide and as deep as the last and on its face. */
function newRun({ id, runs }: Board, run: string): readonly Change[] {
  const last = runs[runs.length - 1];
  return editRun(id, run, {
    spacing: 'pitch',
    face: last?.face ?? 'A',
    width: last?.width,
    depth: last?.depth,
  });
}
