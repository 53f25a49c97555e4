import { jointCut, tickOf } from '../../job/edits';
import type { Change } from '../../job/entry';
import { isZero } from '../../length/length';
import type { Row, View } from '../../plan/board-layout';
import { Inline, Mixed, Remainder, Sign } from '../../ui/mixed';
import { TickBox } from '../../ui/tick-box';
import type { Bench } from '../bench';
import { passText } from '../shared/layout-words';
import * as words from './words';
import './stops.css';

type StopRowProps = {
  readonly row: Row;
  readonly view: View;
  readonly bench: Pick<Bench, 'go' | 'act' | 'saving'>;
  readonly still: boolean;
};

/** One setting: tapped it stands giant at the saw; its tick is for all copies. */
export function StopRow({ row, view, bench, still }: StopRowProps) {
  const { setting, copies, done } = row;
  const { tape, board } = view;
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
          size={done ? 'hand' : 'arm'}
          tape={tape}
        />
        <Beside row={row} view={view} />
      </button>
      <TickBox
        label={words.cutTick(setting)}
        ticked={done}
        saving={copies.some((c) => bench.saving.value.has(c.op))}
        onTap={() => !still && void bench.act(words.cutting(setting, done), toggled(row))}
      />
    </>
  );
}

/** Beside the figure: what rounding left, which pass, where the teeth stand, how many copies are cut. */
function Beside({ row: { setting, copies, done }, view }: Pick<StopRowProps, 'row' | 'view'>) {
  const { tape } = view;
  const pass = passText(setting);
  const cut = copies.filter((c) => c.done).length;
  const facing = view.marks.find((m) => m.groove.id === setting.groove.id)?.mate;
  return (
    <span class="side">
      <Remainder tape={tape} rest={setting.figure.rest} by={false} />
      {pass && <span class="s muted block">{pass}</span>}
      {setting.measures !== 'stop-to-near-teeth' && setting.measures !== 'fence-mark' && (
        <span class="s muted block">
          {words.teethAt} <Inline value={setting.nearTeeth.value} tape={tape} />
          <Sign rest={setting.nearTeeth.rest} tape={tape} />
        </span>
      )}
      {facing && !isZero(facing.value) && <span class="sr">{words.facingAt(facing.value)}</span>}
      {copies.length > 1 && cut > 0 && !done && (
        <span class="s muted block">{words.copiesCut(cut, copies.length)}</span>
      )}
    </span>
  );
}

/** Ticks every copy not cut yet; where all are cut, takes their ticks back. */
const toggled = ({ setting, copies, done }: Row): readonly Change[] =>
  done
    ? copies.map(({ op }) => ({ kind: 'untick', op }))
    : copies
        .filter((c) => !c.done)
        .flatMap((c) => tickOf(c.op, setting.figure.value, jointCut(setting.groove)));
