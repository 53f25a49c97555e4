import { isNegative, subtract, zero } from '../../length/length';
import type { Tape } from '../../length/tape';
import { shimSchedule } from '../../trade/fronts/shims';
import type { WorkedColumn } from '../../trade/fronts/worked';
import type { Bench } from '../bench';
import { listsOf } from '../shared/shop-lists';
import { askShims } from '../shared/stack-words';
import { pileOf, sidesText } from './gap-words';
import { tol } from './piles';
import './bank.css';

type ShimProps = { readonly bench: Bench; readonly column: WorkedColumn; readonly tape: Tape };

/** The gap over every front and under the last, at both sides, with the pile of shims for it out of the drawer. */
export function ShimList({ bench, column, tape }: ShimProps) {
  const gaps = gapsOf(column).filter(({ left, right }) => !isNegative(left) && !isNegative(right));
  const { shims } = listsOf(bench.settings.value);
  const piles = shimSchedule(gaps, { shims, tol });
  return (
    <section aria-label="Shims, gap by gap">
      <h2 class="sec pad-x">Shims, gap by gap</h2>
      <ul class="marklist pad-x">
        {piles.map(({ gap, left, right }, k) => {
          const own = gaps[k];
          if (!own || (!left.ok && left.error.code !== 'no-pieces')) return null;
          const apart = left.ok && right?.ok && pileOf(right.value) !== pileOf(left.value);
          return (
            <li key={gap}>
              <span>
                {own.name}
                <span class="s muted block">{sidesText(own.left, own.right, tape)}</span>
              </span>
              <b class="piles">
                {apart && 'left '}
                {left.ok && pileOf(left.value)}
                {apart && right.ok && (
                  <>
                    <br />
                    right {pileOf(right.value)}
                  </>
                )}
              </b>
            </li>
          );
        })}
      </ul>
      {shims.length === 0 ? (
        <p class="note pad-x">
          {askShims.how}
          <a class="btn quiet" href="#/shims">
            {askShims.link}
          </a>
        </p>
      ) : (
        <p class="note pad-x">
          Fronts go on one after another, so the shims come back. What is in the drawer: Shop figures.
        </p>
      )}
    </section>
  );
}

function gapsOf({ left, right, opening }: WorkedColumn) {
  const over = left.map((stands, k) => ({
    name: k === 0 ? 'Over front 1' : `Between ${k} and ${k + 1}`,
    left: subtract(stands.top, left[k - 1]?.bottom ?? zero),
    right: subtract(right[k]?.top ?? stands.top, right[k - 1]?.bottom ?? zero),
  }));
  const [l, r] = [left[left.length - 1], right[right.length - 1]];
  if (!l || !r) return over;
  return [
    ...over,
    {
      name: `Under front ${left.length}`,
      left: subtract(opening.left, l.bottom),
      right: subtract(opening.right, r.bottom),
    },
  ];
}
