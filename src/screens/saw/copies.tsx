import { equals } from '../../length/length';
import { fromStored } from '../../length/stored';
import { writeLength } from '../../length/write';
import type { Row, View } from '../../plan/board-layout';
import { copyOf } from '../../trade/grooves/copies';
import { leadingEdgeOf } from '../../trade/grooves/leading';
import { isGuided, machineFor } from '../../trade/machines/groove-machines';
import { BigTick } from '../../ui/tick-box';
import type { Bench } from '../bench';
import { copyOfBoard } from '../shared/part-words';
import { tickChange } from './card-in-hand';
import * as words from './words';

const mostShown = 6;

type CopiesProps = { readonly row: Row; readonly view: View; readonly bench: Bench };

/** A tick for each copy; of many, the first that are not cut. */
export function Copies({ row, view, bench }: CopiesProps) {
  const { copies } = row;
  const shown = copies.length > mostShown ? copies.filter((c) => !c.done).slice(0, mostShown) : copies;
  return (
    <div class="ticks">
      {shown.map((copy) => (
        <CopyTick key={copy.id} {...{ row, view, bench, copy }} />
      ))}
    </div>
  );
}

function CopyTick({ row, view, bench, copy }: CopiesProps & { readonly copy: Row['copies'][number] }) {
  const { setting } = row;
  const name = copyOfBoard(copy, view.board);
  const tick = bench.folded.value.ticks.get(copy.op);
  const was = tick && fromStored(tick.figure);
  const moved = was?.ok && !equals(was.value, setting.figure.value);
  return (
    <BigTick
      label={name}
      note={moved ? words.cutAt(writeLength(was.value, view.tape)) : edgeText(view, copy.id)}
      ticked={copy.done}
      saving={bench.saving.value.has(copy.op)}
      onTap={() =>
        void bench.act(
          copy.done ? words.notCut(name) : words.cut(name),
          tickChange(copy.op, copy.done, setting),
        )
      }
    />
  );
}

/** Which edge leads into the cut: the only thing that changes between left and right. */
function edgeText({ board }: View, copy: string): string {
  const own = copyOf(copy);
  const hand = board.hand ?? (board.made === 'pair' && (own === 'left' || own === 'right') ? own : undefined);
  if (!hand || isGuided(board.machine) || machineFor(board.machine).above) return '';
  return words.edgeLeads(leadingEdgeOf(board, hand));
}
