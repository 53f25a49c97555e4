import { equals } from '../../length/length';
import { fromStored, toStored } from '../../length/stored';
import type { Tape } from '../../length/tape';
import type { View } from '../../plan/board-layout';
import { markOp } from '../../trade/grooves/copies';
import type { Mark } from '../../trade/grooves/marks';
import { Mixed, Remainder, Sign } from '../../ui/mixed';
import { TickBox } from '../../ui/tick-box';
import type { Bench } from '../bench';
import * as words from './words';
import './marks.css';

type MarkRowProps = {
  readonly mark: Mark;
  readonly view: View;
  readonly bench: Pick<Bench, 'folded' | 'saving' | 'act'>;
  /** The figure is measured on the facing part. */
  readonly mate: boolean;
  readonly still: boolean;
};

/** One near edge: its figure, what else is to know of it, and its tick. */
export function MarkRow({ mark, view, bench, mate, still }: MarkRowProps) {
  const { board, tape } = view;
  const { groove } = mark;
  const op = markOp(board.id, groove.id);
  const tick = bench.folded.value.ticks.get(op);
  const near = mate && mark.mate ? mark.mate : mark.near;
  const was = tick && fromStored(tick.figure);
  const moved = was?.ok && !equals(was.value, mark.near.value) ? was.value : undefined;
  const toggle = () =>
    void bench.act(words.marking(groove, tick !== undefined), [
      tick ? { kind: 'untick', op } : { kind: 'tick', op, figure: toStored(mark.near.value) },
    ]);
  return (
    <>
      <span class="no">{groove.no}</span>
      <Mixed value={near.value} rest={near.rest} size="bench" tape={tape} />
      <span class="side grow">
        <Remainder tape={tape} rest={near.rest} by={false} />
        {!mate && <FromOtherEnd mark={mark} tape={tape} />}
        {groove.wide && <span class="wide-note">{words.wideGroove(groove)}</span>}
        {moved && <span class="rem">{words.knifedAt(moved, tape)}</span>}
      </span>
      <TickBox
        label={words.markTick(groove)}
        ticked={tick !== undefined}
        saving={bench.saving.value.has(op)}
        onTap={() => !still && toggle()}
      />
    </>
  );
}

const FromOtherEnd = ({ mark: { other }, tape }: { readonly mark: Mark; readonly tape: Tape }) => (
  <span class="other" title={words.fromOtherEnd}>
    <span class="sr">{words.fromOtherEnd} </span>
    <Mixed value={other.value} rest={other.rest} tape={tape} />
    <Sign rest={other.rest} tape={tape} />
  </span>
);
