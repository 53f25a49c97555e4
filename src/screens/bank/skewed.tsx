import { editBank } from '../../job/edits';
import { absolute, equals, type Length, less, longest, subtract } from '../../length/length';
import type { Tape } from '../../length/tape';
import type { Bank } from '../../trade/fronts/bank';
import { dumpedAtEnd, planedLast, skewOf } from '../../trade/fronts/skew';
import { skewIn } from '../../trade/fronts/stands';
import type { WorkedColumn, WorkedFronts } from '../../trade/fronts/worked';
import type { Bench } from '../bench';
import { frontIsCut } from './column-of';
import { gapText } from './gap-words';
import * as words from './skew-words';
import './bank.css';

type SkewedProps = {
  readonly bench: Bench;
  readonly fronts: WorkedFronts;
  readonly column: WorkedColumn;
  readonly tape: Tape;
};

/** An opening out of square: what can be done about it, side by side; one tap takes one. */
export function Skewed({ bench, fronts, column, tape }: SkewedProps) {
  const { left, right } = column.opening;
  if (equals(left, right) || column.fitted > 0) return null;
  const choose = (goes: Bank['goes']) =>
    void bench.act(words.outOfSquare, editBank(fronts.bank.id, { goes }));
  const last = lastOf(bench, fronts, column);
  const taller = tallerThan(last);
  return (
    <section aria-label={words.outOfSquare}>
      <h2 class="sec pad-x">{words.heading(absolute(subtract(left, right)))}</h2>
      <table class="sides">
        <thead>
          <tr>
            {words.columns.map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <Ways {...{ fronts, column, tape, last }} onChoose={choose} />
      </table>
      {taller && <p class="pad-x note">{words.ripTaller(last.no, taller, last.high)}</p>}
    </section>
  );
}

/** The front that goes on last: as high as it is planned, and planed to follow the opening. */
type Last = {
  readonly no: number;
  readonly high: Length;
  readonly planed: ReturnType<typeof planedLast>;
};

function lastOf(bench: Bench, fronts: WorkedFronts, column: WorkedColumn): Last {
  const { bank, reveals } = fronts;
  const no = bank.order === 'down' ? bank.count : 1;
  const cut = frontIsCut(bench, bank, { column: column.no, no });
  const planed = planedLast(skewIn(fronts, column), { wanted: reveals.between, cut });
  return { no, high: column.heights[no - 1] ?? planed.left, planed };
}

/** What it must be ripped to first, where that is more than is planned. */
function tallerThan({ high, planed }: Last): Length | undefined {
  const most = longest(planed.left, planed.right);
  return less(high, most) ? most : undefined;
}

type WaysProps = Omit<SkewedProps, 'bench'> & {
  readonly last: Last;
  readonly onChoose: (goes: Bank['goes']) => void;
};

/** Every gap tapering, the last gap alone, or the last front planed to the opening. */
function Ways({ fronts, column, tape, last, onChoose }: WaysProps) {
  const { bank, reveals } = fronts;
  const skew = skewIn(fronts, column);
  const even = skewOf(skew);
  const dumped = dumpedAtEnd(skew, reveals.between);
  return (
    <tbody>
      {even && (
        <Row
          name={words.everyGap}
          chosen={bank.goes !== 'last'}
          left={gapText(even.gapLeft, tape)}
          right={gapText(even.gapRight, tape)}
          onTap={() => onChoose('gaps')}
        />
      )}
      <Row
        name={words.lastGap}
        chosen={bank.goes === 'last'}
        left={words.endText(dumped.left, bank.fit, tape)}
        right={words.endText(dumped.right, bank.fit, tape)}
        onTap={() => onChoose('last')}
      />
      <tr>
        <th scope="row">{words.planed(last.no)}</th>
        <td>{words.high(last.planed.left)}</td>
        <td>{words.high(last.planed.right)}</td>
      </tr>
    </tbody>
  );
}

type RowProps = {
  readonly name: string;
  readonly chosen: boolean;
  readonly left: string;
  readonly right: string;
  readonly onTap: () => void;
};

const Row = ({ name, chosen, left, right, onTap }: RowProps) => (
  <tr>
    <th scope="row">
      <button type="button" class="chip" aria-pressed={chosen} onClick={onTap}>
        {name}
      </button>
    </th>
    <td>{left}</td>
    <td>{right}</td>
  </tr>
);
