import { useState } from 'preact/hooks';
import { editBoard, editRun, editWide } from '../../job/edits';
import type { Change } from '../../job/entry';
import { forDrawing } from '../../length/length';
import { markAt } from '../../length/tape';
import { lastGood, tried } from '../../plan/board-layout';
import { sheetsOf } from '../../plan/measured-sheets';
import type { Board } from '../../trade/grooves/board';
import { layOut } from '../../trade/grooves/lay-out';
import { Bar } from '../../ui/bar';
import { BoardLying } from '../../ui/board-lying';
import { Icon } from '../../ui/icon';
import { Mixed, Remainder } from '../../ui/mixed';
import type { Bench } from '../bench';
import type { Ask } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { boardOf, isByHand } from '../shared/board-of';
import { counted } from '../shared/counted';
import { drawn } from '../shared/drawn-board';
import { NoBoard } from '../shared/no-board';
import { UndoButton } from '../shared/undo-button';
import { Problems } from './problems';
import {
  BoardSentence,
  DatumSentence,
  MachineSentence,
  type Part,
  RunSentence,
  WideSentence,
} from './sentences';

/** What goes in: one sentence with blanks, read aloud like an order slip. The drawing follows each key. */
export function ChangeScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const [open, setOpen] = useState<Ask>();
  const [trying, setTrying] = useState<readonly Change[]>();
  const job = bench.job.value;
  const board = boardOf(bench, id);
  if (!job || !board) return <NoBoard bench={bench} />;
  const tape = job.tape;
  const byHand = isByHand(bench.job.value, id);
  const inHand = (byHand && trying && tried(bench.folded.value, job.id, id, trying)) || board;
  const layout = layOut(inHand);
  const good = layout.problems.length === 0 ? inHand : lastGood(bench.entries.value, job.id, id);
  const act = (label: string, changes: readonly Change[]) => void bench.act(label, changes);
  const part: Part = { board, open, onOpen: setOpen, act };
  const close = () => {
    setOpen(undefined);
    setTrying(undefined);
  };
  return (
    <>
      <Bar
        title={board.name || 'Board'}
        sub="What goes in"
        leave={{ label: 'Back to marks', onTap: () => bench.go({ at: 'marks', board: id }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        {good?.length && (
          <div class="pad-x drawing">
            <BoardLying
              length={forDrawing(good.length)}
              grooves={drawn(layOut(good).grooves)}
              stale={layout.problems.length > 0}
              label={`Board to scale, ${board.end} end at the left`}
            />
            {layout.problems.length > 0 && <p class="note">before this change</p>}
          </div>
        )}
        <Problems board={inHand} layout={layout} />
        {!byHand && (
          <p class="pad-x note">
            Its grooves are laid out by the case. How they are cut is set here.{' '}
            <button
              type="button"
              class="chip"
              onClick={() => bench.go({ at: 'case', id: board.id.split('~')[0] ?? '' })}
            >
              Change the case
            </button>
          </p>
        )}
        {byHand && <BoardSentence {...part} bench={bench} />}
        {byHand && board.runs.map((run) => <RunSentence key={run.id} {...part} run={run} bench={bench} />)}
        {byHand && board.wides.map((wide) => <WideSentence key={wide.id} {...part} wide={wide} />)}
        {byHand && <DatumSentence {...part} />}
        <MachineSentence {...part} />
        {byHand && (
          <div class="pad-x adds">
            <AddButton label="Another run" onTap={() => act('Another run', newRun(board, bench))} />
            <AddButton
              label="A wide groove"
              onTap={() => act('A wide groove', editWide(board.id, bench.newId(), { face: 'A' }))}
            />
            <button type="button" class="btn quiet" onClick={() => bench.go({ at: 'tray', board: id })}>
              Tray for these grooves
            </button>
            <button
              type="button"
              class="btn quiet"
              onClick={() => {
                act(`${board.name || 'Board'} removed`, editBoard(id, { gone: true }));
                bench.go({ at: 'boards' });
              }}
            >
              Remove this board
            </button>
          </div>
        )}
        <Openings board={inHand} tape={tape} />
      </main>
      <div class="fixedbar">
        <button type="button" class="btn main" onClick={() => bench.go({ at: 'marks', board: id })}>
          Show the marks <Icon name="next" />
        </button>
      </div>
      {open && (
        <AskDock
          key={open.title}
          ask={open}
          tape={tape}
          sheets={sheetsOf(job).map((s) => ({ name: s.name, thickness: s.thickest }))}
          onSave={(changes) => act(open.title, changes)}
          onTry={setTrying}
          onClose={close}
        />
      )}
    </>
  );
}

export const newRun = (board: Board, bench: Bench): readonly Change[] => {
  const last = board.runs[board.runs.length - 1];
  return editRun(board.id, bench.newId(), {
    spacing: 'pitch',
    face: last?.face ?? 'A',
    width: last?.width,
    depth: last?.depth,
  });
};

const AddButton = ({ label, onTap }: { readonly label: string; readonly onTap: () => void }) => (
  <button type="button" class="btn" onClick={onTap}>
    <Icon name="plus" />
    {label}
  </button>
);

/** What the spacing comes to: each opening, or what is left over. */
function Openings({
  board,
  tape,
}: {
  readonly board: Board;
  readonly tape: import('../../length/tape').Tape;
}) {
  const { facts } = layOut(board);
  const rows = facts.flatMap(({ run, opening, leftOver, nears }) => [
    ...(opening
      ? [{ id: `${run}o`, label: 'Each opening', note: `${nears.length + 1} of them`, value: opening }]
      : []),
    ...(leftOver
      ? [
          {
            id: `${run}l`,
            label: 'Left over',
            note: counted(nears.length, 'groove fits', 'grooves fit'),
            value: leftOver,
          },
        ]
      : []),
  ]);
  return (
    <>
      {rows.map(({ id, label, note, value }) => {
        const mark = markAt(value, tape);
        return (
          <div key={id} class="nextset">
            <div class="grow">
              <b>{label}</b>
              <p class="s muted">{note}</p>
            </div>
            <Mixed value={mark.value} rest={mark.rest} tape={tape} />
            <Remainder tape={tape} rest={mark.rest} by={false} />
          </div>
        );
      })}
    </>
  );
}
