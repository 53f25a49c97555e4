import { editBank } from '../../job/edits';
import { equals, isNegative, type Length, negate, subtract } from '../../length/length';
import type { Tape } from '../../length/tape';
import { dumpedAtEnd, planedLast, skewOf } from '../../trade/fronts/skew';
import { skewIn } from '../../trade/fronts/stands';
import type { WorkedColumn, WorkedFronts } from '../../trade/fronts/worked';
import type { Bench } from '../bench';
import { exactlyOrMetric as w } from '../shared/exact-words';
import { gapText } from './gap-words';
import './bank.css';

type SkewedProps = {
  readonly bench: Bench;
  readonly fronts: WorkedFronts;
  readonly column: WorkedColumn;
  readonly tape: Tape;
};

/** An opening out of square: what can be done about it, side by side; one tap takes one. */
export function Skewed({ bench, fronts, column, tape }: SkewedProps) {
  const { bank, reveals } = fronts;
  const { left, right } = column.opening;
  if (equals(left, right) || column.fitted > 0) return null;
  const skew = skewIn(fronts, column);
  const even = skewOf(skew);
  const dumped = dumpedAtEnd(skew, reveals.between);
  const planed = planedLast(skew, reveals.between);
  const last = bank.order === 'down' ? bank.count : 1;
  const choose = (goes: 'gaps' | 'last') => void bench.act('Out of square', editBank(bank.id, { goes }));
  return (
    <section aria-label="Out of square">
      <h2 class="sec pad-x">Out of square by {w(difference(left, right))}</h2>
      <table class="sides">
        <thead>
          <tr>
            <th scope="col">What gives</th>
            <th scope="col">Left</th>
            <th scope="col">Right</th>
          </tr>
        </thead>
        <tbody>
          {even && (
            <Row
              name="every gap, tapering"
              chosen={bank.goes !== 'last'}
              left={gapText(even.gapLeft, tape)}
              right={gapText(even.gapRight, tape)}
              onTap={() => choose('gaps')}
            />
          )}
          <Row
            name="the last gap alone"
            chosen={bank.goes === 'last'}
            left={endText(dumped.left, bank.fit, tape)}
            right={endText(dumped.right, bank.fit, tape)}
            onTap={() => choose('last')}
          />
          <tr>
            <th scope="row">front {last} planed</th>
            <td>{w(planed.left)} high</td>
            <td>{w(planed.right)} high</td>
          </tr>
        </tbody>
      </table>
    </section>
  );
}

/** The last gap, or how far a covering front covers there. */
function endText(gap: Length, fit: 'inset' | 'overlay', tape: Tape): string {
  if (fit === 'inset') return gapText(gap, tape);
  return isNegative(gap) ? `covers ${w(negate(gap))}` : `short by ${w(gap)}`;
}

const difference = (left: Length, right: Length): Length => {
  const off = subtract(left, right);
  return isNegative(off) ? negate(off) : off;
};

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
