import { forDrawing, type Length } from '../../length/length';
import type { Checklist } from '../../plan/checklist';
import type { Part } from '../../trade/carcass/part';
import type { Way } from '../../trade/machines/limits';
import { takerId } from '../../trade/machines/own-machine';
import type { Card } from '../../trade/setups/checklist';
import type { Operation } from '../../trade/setups/operation';
import type { Bore } from '../../trade/shelves/bore';
import { BoardLying } from '../../ui/board-lying';
import { cutsAcross, holesOf } from '../shared/cuts-across';
import { lacksText } from '../shared/limit-words';
import { pieceName } from '../shared/piece-words';
import { holeMarks, markedFrom, standsOff } from '../shared/row-words';
import { pressShort, stopBlock } from '../shared/setup-words';
import * as words from './words';
import './row-marks.css';

type Row = {
  readonly part: Part;
  readonly bore: Bore;
  readonly short?: Length | undefined;
  readonly passed?: readonly Way[] | undefined;
  readonly names: readonly string[];
};

/** Where the holes of a row are along each piece: drawn, and every hole as it is marked. */
export function RowMarks({ list, card }: { readonly list: Checklist; readonly card: Card }) {
  const { tape } = list.plan.job;
  return (
    <>
      {rowsOf(list, card.operations).map(({ part, bore, short, passed = [], names }) => (
        <section key={names[0]} class="pad-x rowmarks" aria-label={words.holesOn(names)}>
          <h2 class="sec">{words.holesOn(names)}</h2>
          <BoardLying
            length={forDrawing(part.length.sum.value)}
            grooves={cutsAcross(part)}
            holes={holesOf(part, bore.id)}
            label={words.rowDrawn(bore)}
          />
          {short && <p class="note">{pressShort(short)}</p>}
          {passed.map((way) => (
            <p key={takerId(way.own ?? way.tool)} class="note">
              {lacksText(way, tape)}
            </p>
          ))}
          <p class="note">{words.rowLies(bore)}</p>
          {card.operations[0]?.setup.machine === 'press' && <p class="note">{stopBlock}</p>}
          <ol>
            {holeMarks(bore, tape).map((mark) => (
              <li key={mark}>{mark}</li>
            ))}
          </ol>
        </section>
      ))}
    </>
  );
}

/** Pieces whose holes have the same marks stand together: left and right of a bay without a partition. */
function rowsOf({ plan }: Checklist, operations: readonly Operation[]): readonly Row[] {
  const rows = new Map<string, Row>();
  for (const op of operations) {
    const part = plan.parts.find((p) => p.id === op.part);
    if (op.which?.is !== 'row' || !part) continue;
    const { bore, short, passed } = op.which;
    const marks = [markedFrom(bore), standsOff(bore), ...holeMarks(bore, plan.job.tape)].join();
    const before = rows.get(marks);
    rows.set(marks, {
      ...(before ?? { part, bore, short, passed }),
      names: [...(before?.names ?? []), pieceName(op, plan.job.tape)],
    });
  }
  return [...rows.values()];
}
