import { markAt, type Tape } from '../../length/tape';
import { writeMark } from '../../length/write';
import { type BankPlan, holeMark, pullPlan } from '../../plan/bank-plan';
import type { WorkedDrawers } from '../../trade/boxes/drawers';
import { jigCheck, pullHoles } from '../../trade/boxes/pulls';
import { screwFor } from '../../trade/install/screw';
import { Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { exactlyOrMetric as w } from '../shared/exact-words';
import { frontScrew } from '../shared/front-screw';
import { screwText } from '../shared/screw-words';
import { listsOf } from '../shared/shop-lists';
import { pullsErrorText } from './words';
import './bank.css';

type Props = { readonly worked: WorkedDrawers; readonly tape: Tape };

/** Holes for the pulls of every column, and the jig that sets them. */
export function Pulls({ worked, tape }: Props) {
  const { bank, columns } = worked.fronts;
  if (bank.pulls === 0) return null;
  return (
    <section aria-label="Pulls">
      <h2 class="sec pad-x">Pulls</h2>
      {columns.map((column) => (
        <PullsOf key={column.no} {...{ bank, column, tape }} named={columns.length > 1} />
      ))}
    </section>
  );
}

type PullsProps = {
  readonly bank: WorkedDrawers['fronts']['bank'];
  readonly column: WorkedDrawers['fronts']['columns'][number];
  readonly tape: Tape;
  readonly named: boolean;
};

function PullsOf({ bank, column, tape, named }: PullsProps) {
  const holes = pullHoles(pullPlan(bank, column));
  if (!holes.ok) return <p class="wrongline pad-x">{pullsErrorText(holes.error)}</p>;
  const [first] = holes.value;
  return (
    <>
      <ul class="marklist pad-x">
        {holes.value.map((hole, k) => (
          <li key={k}>
            <span>
              {named && `Column ${column.no}, `}hole {k + 1}, from the left end
            </span>
            <Mixed value={holeMark(hole.x, tape).value} rest={holeMark(hole.x, tape).rest} tape={tape} />
          </li>
        ))}
      </ul>
      {first && (
        <p class="note pad-x">
          {writeMark(markAt(first.y, tape), tape)} down from the top edge.
          {holes.value.length > 1 &&
            ` Jig with an end stop, TOP written on it, from both ends: its outer holes come ${w(jigCheck(column.width.mark.value, holeMark(first.x, tape).value))} apart. What the jig is off shows doubled.`}
        </p>
      )}
    </>
  );
}

/** The screw that holds a front from inside its box. */
export function Screws({ bench, found }: { readonly bench: Bench; readonly found: BankPlan }) {
  const plan = frontScrew(found, bench.plan.value);
  if (!plan) return null;
  const screw = screwFor({ ...plan, lengths: listsOf(bench.settings.value).screws });
  return (
    <section aria-label="Screws">
      <h2 class="sec pad-x">Screw from inside</h2>
      <p class="pad-x note">
        {screw.pick ? (
          <>
            Through the box front into the front: {w(screw.least)} to {w(screw.most)}. Take{' '}
            <b>{w(screw.pick)}</b>
            {screw.bite && <>, it bites {w(screw.bite)}</>}. Pilot first; try one in scrap.
          </>
        ) : (
          screwText(screw)
        )}
      </p>
    </section>
  );
}
