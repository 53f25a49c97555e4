import { useState } from 'preact/hooks';
import { ownNameIn } from '../../job/own-names';
import { type Breakdown, breakdownOf } from '../../plan/breakdown';
import type { Plan } from '../../plan/plan';
import { sawsGone } from '../../plan/sheet-saws';
import { Bar, BarButton } from '../../ui/bar';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import { KeySheet } from '../../ui/key-sheet';
import type { Bench } from '../bench';
import { Caution } from '../shared/caution';
import { ownName } from '../shared/machines/machine-names';
import { UndoButton } from '../shared/undo-button';
import { PoolCard } from './pool-card';
import { Warned } from './warned';
import * as words from './words';

/** Every sheet and stick of the job: what is laid out on them, and how far it is cut. */
export function SheetsScreen({ bench }: { readonly bench: Bench }) {
  const [asking, setAsking] = useState(false);
  const plan = bench.plan.value;
  const found = plan && breakdownOf(plan, bench.shop.value, bench.folded.value);
  return (
    <>
      <Bar title={words.sheets} sub={plan?.job.name ?? ''}>
        <UndoButton bench={bench} />
        <BarButton label={words.buy} boxed says={words.whatToBuy} onTap={() => bench.go({ at: 'buy' })} />
      </Bar>
      <main class={asking ? 'page docked' : 'page'}>
        {found && found.pools.length > 0 ? (
          <>
            <Pools {...{ bench, plan, found }} onKerf={() => setAsking(true)} />
            {found.pools.some(({ sheets }) => sheets.length > 0) && <OnPaper go={bench.go} />}
          </>
        ) : (
          <p class="pad-x empty-line">{words.nothingYet}</p>
        )}
        {found && <Homeless found={found} />}
      </main>
      {asking && (
        <KeySheet
          title={words.kerfTitle}
          tape="1/64"
          fill="length"
          kind="kerf"
          now={undefined}
          onLength={(kerf) => void bench.keepShop('kerf', kerf)}
          onClose={() => setAsking(false)}
        />
      )}
    </>
  );
}

type PoolsProps = {
  readonly bench: Bench;
  readonly plan: Plan;
  readonly found: Breakdown;
  readonly onKerf: () => void;
};

/** A card for each stock; before all of them the kerf, where it is not known. */
const Pools = ({ bench, plan, found, onKerf }: PoolsProps) => (
  <>
    <Caution bench={bench} code="carry" />
    <SawsGone bench={bench} plan={plan} />
    {!found.kerf && <KerfFirst {...{ bench, found, onKerf }} />}
    {found.pools.map((view) => (
      <PoolCard key={view.pool.id} {...{ bench, view, found, plan }} />
    ))}
  </>
);

/** Saws of another phone's shop that the sheets were put on. */
function SawsGone({ bench, plan: { job } }: Pick<PoolsProps, 'bench' | 'plan'>) {
  const gone = sawsGone(job, bench.shop.value);
  if (gone.length === 0) return null;
  return (
    <ul class="pad-x facts">
      {gone.map((id) => (
        <Warned key={id} text={words.sawGone(ownNameIn(job, id))} />
      ))}
    </ul>
  );
}

/** The kerf is asked: of the shop's saw, or of one of its own, which is measured where its other figures are. */
function KerfFirst({ bench, found, onKerf }: Pick<PoolsProps, 'bench' | 'found' | 'onKerf'>) {
  const own = found.saws.unmeasured.map(({ saw }) => ownName(saw));
  return (
    <section class="pad-x facts" aria-label={words.kerf}>
      <p class="fact">{own.length > 0 ? words.sawsUnmeasured(own) : words.kerfFirst}</p>
      {own.length > 0 ? (
        <Button label={words.toShop} look="main full" icon="measure" onTap={() => bench.go({ at: 'shop' })} />
      ) : (
        <Button label={words.theKerf} look="main full" icon="measure" onTap={onKerf} />
      )}
    </section>
  );
}

/** Every sheet with its cuts, printed. */
const OnPaper = ({ go }: Pick<Bench, 'go'>) => (
  <div class="pad-x adds">
    <Button look="quiet" label={words.onPaper} onTap={() => go({ at: 'print', id: 'sheets' })} />
  </div>
);

/** Pieces no sheet is said for. */
function Homeless({ found: { homeless } }: { readonly found: Breakdown }) {
  if (homeless.length === 0) return null;
  return (
    <section class="pad-x facts" aria-label={words.withoutSheet}>
      <p class="fact warn">
        <Icon name="warn" />
        {words.noSheetSaid(homeless)}
      </p>
    </section>
  );
}
