import { useState } from 'preact/hooks';
import { isZero } from '../../length/length';
import type { Tape } from '../../length/tape';
import { type Row, rowsOf, type View } from '../../plan/board-layout';
import { goneOf } from '../../plan/own-gone';
import type { Board } from '../../trade/grooves/board';
import type { Setting, Settings } from '../../trade/grooves/settings';
import { machineFor } from '../../trade/machines/groove-machines';
import { Button } from '../../ui/button';
import { ChoiceDock } from '../../ui/dock';
import { Icon } from '../../ui/icon';
import { Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { CautionLine } from '../shared/caution-line';
import { goneText } from '../shared/gone-text';
import { settingProblemText, settingWarningText } from '../shared/layout-words';
import { wordsAt } from '../shared/machines/groove-words';
import { ownName } from '../shared/machines/machine-names';
import { boardMachine } from './machine-ask';
import { stopOffers } from './stop-offers';
import { StopRow } from './stop-row';
import * as words from './words';

type StopListProps = {
  readonly view: View;
  readonly bench: Bench;
  readonly still: boolean;
};

/** The same board as machine settings, in order of working, at arm size. */
export function StopList({ view, bench, still }: StopListProps) {
  const [open, setOpen] = useState(false);
  const { board, settings, tape } = view;
  const rows = rowsOf(view, bench.folded.value.ticks);
  const offers = stopOffers(bench);
  // opened before the job was worked out: every row keeps the place of what may block it
  const [early] = useState(!offers);
  const now = rows.findIndex((r) => !r.done);
  return (
    <>
      <MachineRow board={board} own={view.own} first={settings.settings[0]} onTap={() => setOpen(true)} />
      <CautionLine bench={bench} code={board.machine} words={wordsAt(board).caution} />
      <Missing bench={bench} board={board} />
      <Found settings={settings} own={view.own} onShop={() => bench.go({ at: 'shop' })} />
      {machineFor(board.machine).still === 'spacers' && (
        <StopForAll rows={rows} tape={tape} end={board.end} />
      )}
      <ol class={early ? 'early' : undefined}>
        {rows.map((row, k) => (
          <li key={row.setting.id} class={row.done ? 'stop done' : k === now ? 'stop now' : 'stop'}>
            <StopRow {...{ row, view, bench, still }} offer={offers?.(row)} />
          </li>
        ))}
      </ol>
      {open && <MachineDock bench={bench} board={board} onClose={() => setOpen(false)} />}
    </>
  );
}

type MachineRowProps = {
  readonly board: Board;
  readonly own: View['own'];
  readonly first: Setting | undefined;
  readonly onTap: () => void;
};

/** The machine, drawn, and from where to where its figures are measured. */
const MachineRow = ({ board, own, first, onTap }: MachineRowProps) => (
  <button type="button" class="machrow" onClick={onTap}>
    <svg class="mach" viewBox="0 0 52 44" aria-hidden="true">
      <rect class="k-ink" x="2" y="8" width="48" height="34" rx="2" stroke-width="2.5" />
      <rect class="f-ink" x="2" y="8" width="48" height="6" />
      <path class="k-red" d="M34 17v22" stroke-width="4" />
      <rect class="f-blue" x="7" y="14" width="8" height="10" />
    </svg>
    <span class="grow">
      <b>{own ? ownName(own) : words.machine(board)}</b>
      {first && <span class="s muted block">{wordsAt(board).measured(first, board)}</span>}
    </span>
    <Icon name="down" />
  </button>
);

type DockProps = {
  readonly bench: Pick<Bench, 'act' | 'shop'>;
  readonly board: Board;
  readonly onClose: () => void;
};

/** The machines to choose from. */
function MachineDock({ bench, board, onClose }: DockProps) {
  const ask = boardMachine(board, bench.shop.value.own);
  return (
    <ChoiceDock
      title={ask.title}
      choices={ask.choices}
      chosen={ask.now}
      onChoose={(machine: string) => {
        void bench.act(ask.title, ask.save(machine));
        onClose();
      }}
      onClose={onClose}
    />
  );
}

/** The machine its grooves were put on is not in this phone's shop. */
function Missing({ bench: { job, shop }, board }: { readonly bench: Bench; readonly board: Board }) {
  const gone = job.value && goneOf(board, job.value, shop.value);
  return gone ? <p class="pad-x note">{goneText(gone.name)}</p> : null;
}

type FoundProps = Pick<View, 'own'> & { readonly settings: Settings; readonly onShop: () => void };

/** What keeps a setting from being made, the way to a figure of the shop that is missing, and what is worth a look. */
const Found = ({ settings: { problems, warnings }, own, onShop }: FoundProps) => (
  <ul class="problems pad-x">
    {problems.map((problem, k) => (
      <li key={k} class="wrongline">
        <Icon name="warn" />
        {own && problem.code !== 'shop-figure-missing' && `${ownName(own)}: `}
        {settingProblemText(problem, own)}
      </li>
    ))}
    {problems.some((p) => p.code === 'shop-figure-missing') && (
      <li>
        <Button label={words.shopFigures} icon="measure" onTap={onShop} />
      </li>
    )}
    {warnings.map((warning, k) => (
      <li key={k} class="note">
        {settingWarningText(warning)}
      </li>
    ))}
  </ul>
);

type StopForAllProps = { readonly rows: readonly Row[]; readonly tape: Tape; readonly end: string };

/** Spacers stand on one stop, set for the farthest cut: the one without. */
function StopForAll({ rows, tape, end }: StopForAllProps) {
  const bare = rows.find((r) => isZero(r.setting.figure.value))?.setting.nearTeeth;
  if (!bare) return null;
  return (
    <div class="nextset">
      <b class="grow">{words.oneStop(end)}</b>
      <Mixed value={bare.value} rest={bare.rest} tape={tape} />
    </div>
  );
}
