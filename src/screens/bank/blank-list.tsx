import { isZero } from '../../length/length';
import { markAt, type Tape } from '../../length/tape';
import { usualBank } from '../../trade/fronts/bank';
import { blankFor } from '../../trade/fronts/blank';
import type { WorkedColumn, WorkedFronts } from '../../trade/fronts/worked';
import { Inline, Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { exactlyOrMetric as w } from '../shared/exact-words';
import { blankErrorText } from './blank-words';
import './bank.css';

type BlankProps = {
  readonly bench: Bench;
  readonly fronts: WorkedFronts;
  readonly column: WorkedColumn;
  readonly tape: Tape;
};

/** All fronts of a column out of one blank: where each starts, and how far the figure slips at a joint. */
export function BlankList({ bench, fronts, column, tape }: BlankProps) {
  const { bank, reveals } = fronts;
  if (!bank.fromBlank) return null;
  const kerf = bench.shop.value.kerf ?? bench.shop.value.single;
  const blank = blankFor(column.heights, {
    trim: bank.trim ?? usualBank.trim,
    kerf,
    band: bank.band ?? usualBank.band,
    between: reveals.between,
  });
  return (
    <section aria-label="One blank">
      <h2 class="sec pad-x">Out of one blank</h2>
      {blank.ok ? (
        <>
          <p class="pad-x note">
            <Inline value={markAt(blank.value.length, tape, 'ceil').value} tape={tape} /> by{' '}
            <Inline value={column.width.mark.value} tape={tape} />, from its top end. Number the fronts and
            draw one long triangle across before you cut.
          </p>
          <ul class="marklist pad-x">
            {blank.value.cores.map((core) => {
              const mark = markAt(core.near, tape);
              return (
                <li key={core.no}>
                  <span>
                    Front {core.no}
                    <span class="s muted block">{w(core.high)} high</span>
                  </span>
                  <Mixed value={mark.value} rest={mark.rest} tape={tape} />
                </li>
              );
            })}
          </ul>
          <p class="note pad-x">
            {isZero(blank.value.slip)
              ? 'The figure runs true over every joint.'
              : `The figure slips ${w(blank.value.slip)} at each joint.`}{' '}
            Cut from the top down and keep the offcut: a spoiled lowest front comes out of it. A higher one
            breaks the run: cut all below it again, or live with the break.
          </p>
        </>
      ) : (
        <p class="pad-x wrongline">{blankErrorText(blank.error)}</p>
      )}
    </section>
  );
}
