import { isZero } from '../../length/length';
import type { Row, View } from '../../plan/board-layout';
import { Inline, Mixed, Remainder, Sign } from '../../ui/mixed';
import { TickBox } from '../../ui/tick-box';
import type { Bench } from '../bench';
import { passText } from '../shared/layout-words';
import type { StopOffer } from './stop-offers';
import * as words from './words';
import './stops.css';

type StopRowProps = {
  readonly row: Row;
  readonly view: View;
  readonly bench: Pick<Bench, 'go' | 'act' | 'saving'>;
  /** The figures are of an earlier layout: nothing is ticked. */
  readonly still: boolean;
  /** What may be ticked: nothing before the job is worked out. */
  readonly offer: StopOffer | undefined;
};

/**
 * One setting: tapped it stands giant at the saw. Its box ticks all copies that are not blocked, and takes all back;
 * where all are blocked it leads to the saw.
 */
export function StopRow({ row, view, bench, still, offer }: StopRowProps) {
  const { setting, copies, done } = row;
  const { tape, board } = view;
  const open = done || still ? undefined : offer;
  const toSaw = () => bench.go({ at: 'saw', board: board.id, setting: setting.id });
  const tap = () => !still && void bench.act(words.cutting(setting, done), open?.ticks ?? takenBack(row));
  return (
    <>
      <button type="button" class="stopline" onClick={toSaw}>
        <span class="no">{setting.pass === 1 ? setting.groove.no : ''}</span>
        <Mixed
          value={setting.figure.value}
          rest={setting.figure.rest}
          size={done ? 'hand' : 'arm'}
          tape={tape}
        />
        <Beside row={row} view={view} />
        {!done && <span class="heldby">{open?.held}</span>}
      </button>
      {open?.ticks.length === 0 ? (
        <button type="button" class="tick blocked" aria-label={open.box} onClick={toSaw} />
      ) : (
        <TickBox
          label={open?.box ?? words.cutTick(setting)}
          ticked={done}
          waits={!done && !open}
          saving={copies.some((c) => bench.saving.value.has(c.op))}
          onTap={() => (done || open) && tap()}
        />
      )}
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

const takenBack = ({ copies }: Row) => copies.map(({ op }) => ({ kind: 'untick' as const, op }));
