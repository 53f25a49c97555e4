import { useState } from 'preact/hooks';
import type { Job } from '../../job/job';
import type { Case, StockRole } from '../../trade/carcass/case';
import { checkOf } from '../../trade/carcass/check';
import type { Worked } from '../../trade/carcass/parts';
import type { CaseProblem } from '../../trade/carcass/problems';
import { stockOf } from '../../trade/carcass/sizes';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import { Inline } from '../../ui/mixed';
import { openBlank } from '../../ui/next-blank';
import { Why } from '../shared/why';
import { measureWord } from './asks';
import { type Fault, isMissing } from './faults';
import { placeOf } from './places';
import * as words from './words';

type NextProps = {
  readonly problems: readonly CaseProblem[];
  readonly faults: readonly Fault[];
  readonly c: Case;
  readonly job: Job;
  readonly onMeasure: (stock: StockRole) => void;
  readonly onStock: (id: string) => void;
};

/** The next blank to fill, or those that do not fit: a tap goes there, where it is said what is wrong. */
export function Next(props: NextProps) {
  const { problems, faults, c } = props;
  const next = problems.find(isMissing);
  if (next?.code === 'missing-stock') return <NextStock {...props} stock={next.stock} />;
  const [blank] = next ? placeOf(next, c).blanks : [];
  const wrong = faults.filter((fault) => fault.stops).flatMap(({ blanks }) => blanks.slice(0, 1));
  return (
    <ul class="problems pad-x">
      {blank && <Go words={words.nextBlank(blank)} to={blank} />}
      {!blank && [...new Set(wrong)].map((name) => <Go key={name} words={words.seeBlank(name)} to={name} />)}
    </ul>
  );
}

const Go = ({ words: says, to }: { readonly words: string; readonly to: string }) => (
  <li class="nextblank">
    <button type="button" class="linklike" onClick={() => openBlank(to)}>
      {says}
    </button>
  </li>
);

/** Stock that is not said or not measured: it is measured here and now. */
function NextStock({ c, job, stock, onMeasure, onStock }: NextProps & { readonly stock: StockRole }) {
  const own = job.stock.find((s) => s.id === stockOf(c, stock));
  const [blank = ''] = placeOf({ code: 'missing-stock', stock }, c).blanks;
  return (
    <ul class="problems pad-x">
      {(own ?? job.stock[0]) && <Go words={words.nextBlank(blank)} to={blank} />}
      <li>
        {own ? (
          <Button icon="measure" label={words.measureIt(own.name)} onTap={() => onStock(own.id)} />
        ) : (
          <Button icon="measure" label={measureWord(stock)} onTap={() => onMeasure(stock)} />
        )}
      </li>
    </ul>
  );
}

type CheckProps = { readonly worked: Worked; readonly job: Job; readonly stale: boolean };

/** The parts added back to the outside sizes, exactly; a tap shows the sum. */
export const SelfCheck = ({ worked, job, stale }: CheckProps) => (
  <section class={stale ? 'stale' : 'rests'} aria-label={words.addsUp}>
    <h2 class="sec pad-x">{words.addsUp}</h2>
    <ul class="pad-x">
      {checkOf(worked).map((line) => (
        <CheckLine key={line.way} line={line} job={job} />
      ))}
    </ul>
  </section>
);

type LineProps = { readonly line: ReturnType<typeof checkOf>[number]; readonly job: Job };

function CheckLine({ line: { way, sum, meets }, job }: LineProps) {
  const [open, setOpen] = useState(!meets);
  return (
    <li>
      <button type="button" class="whyrow" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span class="grow">{words.checkWords[way]}</span>
        <Inline value={sum.value} tape={sum.value.d > 128n ? '0.001' : '1/64'} />
        <Icon name={meets ? 'tick' : 'warn'} />
      </button>
      {open && <Why sum={sum} tape={job.tape} />}
    </li>
  );
}
