import type { Length } from '../../length/length';
import { fineOf, markAt, type Tape } from '../../length/tape';
import { writeMark } from '../../length/write';
import { type BankPlan, holeMark, pullPlan } from '../../plan/bank-plan';
import { bottomScrew } from '../../plan/bottom-screws';
import { bottomScrews } from '../../trade/boxes/bottom-screws';
import type { WorkedDrawers } from '../../trade/boxes/drawers';
import { type Hole, jigCheck, pullHoles } from '../../trade/boxes/pulls';
import type { Bank } from '../../trade/fronts/bank';
import type { WorkedColumn } from '../../trade/fronts/worked';
import { screwFor } from '../../trade/install/screw';
import type { Bench } from '../bench';
import { exactly as w } from '../shared/exact-words';
import { frontScrew } from '../shared/front-screw';
import { MarkAndRest } from '../shared/mark-and-rest';
import { screwText } from '../shared/screw-words';
import { listsOf } from '../shared/shop-lists';
import * as words from './hole-words';
import { pullsErrorText } from './words';
import './bank.css';

type Props = { readonly worked: WorkedDrawers; readonly tape: Tape };

/** Holes for the pulls of every column, and the jig that sets them. */
export function Pulls({ worked, tape }: Props) {
  const { bank, columns } = worked.fronts;
  if (bank.pulls === 0) return null;
  return (
    <section aria-label={words.pulls}>
      <h2 class="sec pad-x">{words.pulls}</h2>
      {columns.map((column) => (
        <PullsOf key={column.no} {...{ bank, column, tape }} named={columns.length > 1} />
      ))}
    </section>
  );
}

type PullsProps = {
  readonly bank: Bank;
  readonly column: WorkedColumn;
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
            <span>{words.hole(k + 1, named ? column.no : undefined)}</span>
            <MarkAndRest mark={holeMark(hole.x, tape)} tape={fineOf(tape)} />
          </li>
        ))}
      </ul>
      {first && <p class="note pad-x">{downText(first, holes.value.length > 1, { column, tape })}</p>}
    </>
  );
}

function downText(first: Hole, several: boolean, { column, tape }: Pick<PullsProps, 'column' | 'tape'>) {
  const apart = several ? jigCheck(column.width.mark.value, holeMark(first.x, tape).value) : undefined;
  return words.down(writeMark(markAt(first.y, tape), tape), apart);
}

type ScrewsProps = { readonly bench: Pick<Bench, 'plan' | 'settings'>; readonly found: BankPlan };

/** The screw that holds a front from inside its box. */
export function Screws({ bench, found }: ScrewsProps) {
  const plan = frontScrew(found, bench.plan.value);
  if (!plan) return null;
  const screw = screwFor({ ...plan, lengths: listsOf(bench.settings.value).screws });
  const { least, most, pick, bite } = screw;
  return (
    <section aria-label={words.screws}>
      <h2 class="sec pad-x">{words.fromInside}</h2>
      <p class="pad-x note">{pick ? words.take({ least, most, pick: w(pick), bite }) : screwText(screw)}</p>
    </section>
  );
}

/** What holds the bottoms that are slid in under their backs: a row each, alike in all of a column. */
export function Bottoms({ bench, worked, tape }: Props & Pick<ScrewsProps, 'bench'>) {
  const screw = bottomScrew(worked.drawers, listsOf(bench.settings.value).screws, worked.fronts.bank.units);
  if (!screw) return null;
  const { pick, bite, least, most } = screw;
  const at = (x: Length) => writeMark(markAt(x, tape), tape);
  const rows = worked.fronts.columns.flatMap(({ no }) => {
    const first = worked.drawers.find(({ column }) => column === no);
    const row = first && bottomScrews(first);
    return row ? [{ no: worked.fronts.columns.length > 1 ? no : undefined, row }] : [];
  });
  return (
    <section aria-label={words.upIntoBack}>
      <h2 class="sec pad-x">{words.upIntoBack}</h2>
      {rows.map(({ no, row }) => (
        <p key={no ?? 0} class="pad-x note">
          {words.bottomRow(no, { count: row.count, marks: row.marks.map(at), in: at(row.in) })}
        </p>
      ))}
      <p class="pad-x note">
        {pick ? words.bottomTake(pick, bite) : words.bottomNone(least, most)} {words.bottomMoves}
      </p>
    </section>
  );
}
