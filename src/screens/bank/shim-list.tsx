import { isNegative } from '../../length/length';
import type { Tape } from '../../length/tape';
import { type GapPiles, shimSchedule } from '../../trade/fronts/shims';
import type { WorkedColumn } from '../../trade/fronts/worked';
import type { Bench } from '../bench';
import { listsOf } from '../shared/shop-lists';
import { askShims } from '../shared/stack-words';
import { pileOf, sidesText } from './gap-words';
import { gapsOf, type NamedGap } from './gaps-of';
import { tol } from './piles';
import * as words from './shim-words';
import './bank.css';

type ShimProps = {
  readonly bench: Pick<Bench, 'settings'>;
  readonly column: WorkedColumn;
  readonly tape: Tape;
};

/** The gap over every front and under the last, at both sides, with the pile of shims for it out of the drawer. */
export function ShimList({ bench, column, tape }: ShimProps) {
  const gaps = gapsOf(column).filter(({ left, right }) => !isNegative(left) && !isNegative(right));
  const { shims } = listsOf(bench.settings.value);
  const piles = shimSchedule(gaps, { shims, tol });
  return (
    <section aria-label={words.heading}>
      <h2 class="sec pad-x">{words.heading}</h2>
      <ul class="marklist pad-x">
        {gaps.map((gap, k) => (
          <GapLine key={k + 1} gap={gap} piles={piles[k]} tape={tape} />
        ))}
      </ul>
      {shims.length === 0 ? <NoShims /> : <p class="note pad-x">{words.comeBack}</p>}
    </section>
  );
}

type LineProps = { readonly gap: NamedGap; readonly piles: GapPiles | undefined; readonly tape: Tape };

function GapLine({ gap, piles, tape }: LineProps) {
  if (!piles || (!piles.left.ok && piles.left.error.code !== 'no-pieces')) return null;
  return (
    <li>
      <span>
        {gap.name}
        <span class="s muted block">{sidesText(gap.left, gap.right, tape)}</span>
      </span>
      <b class="piles">
        <PilesOf {...piles} />
      </b>
    </li>
  );
}

/** The pile of a gap; at both sides where they differ. */
function PilesOf({ left, right }: Pick<GapPiles, 'left' | 'right'>) {
  if (!left.ok) return null;
  const own = pileOf(left.value);
  if (!right?.ok || pileOf(right.value) === own) return <>{own}</>;
  return (
    <>
      {words.left(own)}
      <br />
      {words.right(pileOf(right.value))}
    </>
  );
}

const NoShims = () => (
  <p class="note pad-x">
    {askShims.how}
    <a class="btn quiet" href="#/shims">
      {askShims.link}
    </a>
  </p>
);
