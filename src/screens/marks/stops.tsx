import { useState } from 'preact/hooks';
import { jointCut, tickOf } from '../../job/edits';
import { isZero } from '../../length/length';
import type { Tape } from '../../length/tape';
import { writeLength } from '../../length/write';
import { type Row, rowsOf, type View } from '../../plan/board-layout';
import { ChoiceDock } from '../../ui/dock';
import { Icon } from '../../ui/icon';
import { Inline, Mixed, Remainder } from '../../ui/mixed';
import { TickBox } from '../../ui/tick-box';
import type { Bench } from '../bench';
import { CautionLine } from '../shared/caution-line';
import { grooveCaution } from '../shared/groove-caution';
import {
  machineNames,
  measuresText,
  passText,
  settingProblemText,
  settingWarningText,
} from '../shared/layout-words';
import { boardMachine } from './machine-ask';

type StopListProps = { readonly view: View; readonly bench: Bench; readonly still: boolean };

/** The same board as machine settings, in order of working, at arm size. */
export function StopList({ view, bench, still }: StopListProps) {
  const [open, setOpen] = useState(false);
  const { board, settings, tape } = view;
  const ask = boardMachine(board);
  const rows = rowsOf(view, bench.folded.value.ticks);
  const now = rows.findIndex((r) => !r.done);
  const first = settings.settings[0];
  const missing = settings.problems.some((p) => p.code === 'shop-figure-missing');
  return (
    <>
      <button type="button" class="machrow" onClick={() => setOpen(true)}>
        <svg class="mach" viewBox="0 0 52 44" aria-hidden="true">
          <rect class="k-ink" x="2" y="8" width="48" height="34" rx="2" stroke-width="2.5" />
          <rect class="f-ink" x="2" y="8" width="48" height="6" />
          <path class="k-red" d="M34 17v22" stroke-width="4" />
          <rect class="f-blue" x="7" y="14" width="8" height="10" />
        </svg>
        <span class="grow">
          <b>{sentence(machineNames[board.machine].label)}</b>
          {first && <span class="s muted block">{measuresText(first, board)}</span>}
        </span>
        <Icon name="down" />
      </button>
      <CautionLine bench={bench} code={board.machine} words={grooveCaution(board.machine)} />
      <ul class="problems pad-x">
        {settings.problems.map((problem, k) => (
          <li key={k} class="wrongline">
            <Icon name="warn" />
            {settingProblemText(problem)}
          </li>
        ))}
        {missing && (
          <li>
            <button type="button" class="btn" onClick={() => bench.go({ at: 'shop' })}>
              <Icon name="measure" />
              Shop figures
            </button>
          </li>
        )}
        {settings.warnings.map((warning, k) => (
          <li key={k} class="note">
            {settingWarningText(warning)}
          </li>
        ))}
      </ul>
      {board.machine === 'spacers' && <StopForAll rows={rows} tape={tape} end={board.end} />}
      <ol>
        {rows.map((row, k) => (
          <li key={row.setting.id} class={row.done ? 'stop done' : k === now ? 'stop now' : 'stop'}>
            <StopRow row={row} view={view} bench={bench} still={still} />
          </li>
        ))}
      </ol>
      {open && (
        <ChoiceDock
          title={ask.title}
          choices={ask.choices}
          chosen={ask.now}
          onChoose={(machine: string) => {
            void bench.act(ask.title, ask.save(machine));
            setOpen(false);
          }}
          onClose={() => setOpen(false)}
        />
      )}
    </>
  );
}

/** Spacers stand on one stop, set for the farthest cut: the one without. */
function StopForAll({
  rows,
  tape,
  end,
}: {
  readonly rows: readonly Row[];
  readonly tape: Tape;
  readonly end: string;
}) {
  const bare = rows.find((r) => isZero(r.setting.figure.value))?.setting.nearTeeth;
  if (!bare) return null;
  return (
    <div class="nextset">
      <b class="grow">One stop for all, {end} end on it, to the near teeth</b>
      <Mixed value={bare.value} rest={bare.rest} tape={tape} />
    </div>
  );
}

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

type StopRowProps = {
  readonly row: Row;
  readonly view: View;
  readonly bench: Bench;
  readonly still: boolean;
};

function StopRow({ row, view, bench, still }: StopRowProps) {
  const { setting, copies } = row;
  const { tape, board } = view;
  const cut = copies.filter((c) => c.done).length;
  const toggle = () => {
    if (still) return;
    const label = `${row.done ? 'Not cut' : 'Cut'}: no. ${setting.groove.no}`;
    const changes = row.done
      ? copies.map((c) => ({ kind: 'untick' as const, op: c.op }))
      : copies
          .filter((c) => !c.done)
          .flatMap((c) => tickOf(c.op, setting.figure.value, jointCut(setting.groove)));
    void bench.act(label, changes);
  };
  const mates = view.marks.find((m) => m.groove.id === setting.groove.id)?.mate;
  return (
    <>
      <button
        type="button"
        class="stopline"
        onClick={() => bench.go({ at: 'saw', board: board.id, setting: setting.id })}
      >
        <span class="no">{setting.pass === 1 ? setting.groove.no : ''}</span>
        <Mixed
          value={setting.figure.value}
          rest={setting.figure.rest}
          size={row.done ? 'hand' : 'arm'}
          tape={tape}
        />
        <span class="side">
          <Remainder tape={tape} rest={setting.figure.rest} by={false} />
          {passText(setting) && <span class="s muted block">{passText(setting)}</span>}
          {setting.measures !== 'stop-to-near-teeth' && setting.measures !== 'fence-mark' && (
            <span class="s muted block">
              teeth at <Inline value={setting.nearTeeth.value} tape={tape} />
            </span>
          )}
          {mates && !isZero(mates.value) && <span class="sr">facing part {writeLength(mates.value)}</span>}
          {copies.length > 1 && cut > 0 && !row.done && (
            <span class="s muted block">
              {cut} of {copies.length} cut
            </span>
          )}
        </span>
      </button>
      <TickBox
        label={`Cut at ${setting.groove.no}${setting.passes > 1 ? `, pass ${setting.pass}` : ''}`}
        ticked={row.done}
        saving={copies.some((c) => bench.saving.value.has(c.op))}
        onTap={toggle}
      />
    </>
  );
}
