import type { ComponentChildren } from 'preact';
import type { Job } from '../../job/job';
import type { Length } from '../../length/length';
import type { Tape } from '../../length/tape';
import { rowsOf, viewOf } from '../../plan/board-layout';
import { checklistOf, standingCard } from '../../plan/checklist';
import { Icon } from '../../ui/icon';
import { Mixed, Remainder } from '../../ui/mixed';
import type { Bench } from '../bench';
import { callGroove } from '../shared/groove-name';
import { setWords } from '../shared/machines/set-words';
import { boardWord, workWord } from '../shared/part-words';
import { setupTitle } from '../shared/setup-title';
import * as nextWords from './next-words';
import { useFinished } from './use-finished';
import * as words from './words';
import './job.css';

type NextProps = { readonly bench: Bench; readonly job: Job };

/** The next setup with its figure: where the work was left. */
export function NextSetup({ bench, job }: NextProps) {
  const plan = bench.plan.value;
  if (!plan) return null;
  const list = checklistOf(plan, bench.folded.value);
  const card = standingCard(list);
  const op = card?.operations[0];
  if (!card || !op) return null;
  const left = card.operations.filter((o) => !list.doing.done(o.id));
  const setup = setupTitle(op).replace(/ at$/, '').toLowerCase();
  return (
    <Next
      lead={words.nextSetup(setup, workWord((left[0] ?? op).name), left.length - 1)}
      figure={op.setup.figure}
      tape={job.tape}
      pickUp={words.pickUp}
      onPickUp={() => bench.go({ at: 'setup', id: card.id })}
    />
  );
}

/** The next setting not yet cut, of the board stood at last, else of the first that is started or ready. */
export function NextGroove({ bench, job }: NextProps) {
  const ticks = bench.folded.value.ticks;
  const views = job.boards.map((board) => viewOf(board, bench.shop.value, job.tape));
  const rows = views.map((view) => rowsOf(view, ticks));
  const all = rows.some((own) => own.length > 0) && rows.flat().every((row) => row.done);
  useFinished(bench.incoming.copies.value, all);
  const open = views.flatMap((view, k) => {
    const row = rows[k]?.find((r) => !r.done);
    return row ? [{ view, setting: row.setting }] : [];
  });
  const stood = open.find(({ view }) => bench.settings.value.saw?.includes(`/${view.board.id}`)) ?? open[0];
  if (!stood) return null;
  const { setting, view } = stood;
  const { board } = view;
  return (
    <Next
      lead={words.nextGroove(callGroove(view.layout, setting.groove.id), boardWord(board, words.aBoard))}
      figure={setting.figure}
      tape={job.tape}
      beside={
        <>
          {setWords[setting.measures].replace(' at', '').toLowerCase()}
          <br />
        </>
      }
      pickUp={nextWords.pickUpAt(board.machine, view.own)}
      onPickUp={() => bench.go({ at: 'saw', board: board.id, setting: setting.id })}
    />
  );
}

type NextBoxProps = {
  readonly lead: string;
  readonly figure: { readonly value: Length; readonly rest: Length } | undefined;
  readonly tape: Tape;
  /** What stands beside the figure, above its remainder. */
  readonly beside?: ComponentChildren;
  readonly pickUp: string;
  readonly onPickUp: () => void;
};

const Next = ({ lead, figure, tape, beside, pickUp, onPickUp }: NextBoxProps) => (
  <section class="next" aria-label={words.nextThing}>
    <p class="lead">{lead}</p>
    {figure && (
      <div class="mid">
        <Mixed value={figure.value} rest={figure.rest} size="setting" tape={tape} />
        <div class="side">
          {beside}
          <Remainder tape={tape} rest={figure.rest} by={false} />
        </div>
      </div>
    )}
    <button type="button" class="btn" onClick={onPickUp}>
      {pickUp} <Icon name="next" />
    </button>
  </section>
);
