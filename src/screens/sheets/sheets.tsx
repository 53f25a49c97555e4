import { useState } from 'preact/hooks';
import { breakdownOf } from '../../plan/breakdown';
import { Bar, BarButton } from '../../ui/bar';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import { KeySheet } from '../../ui/key-sheet';
import type { Bench } from '../bench';
import { Caution } from '../shared/caution';
import { UndoButton } from '../shared/undo-button';
import { PoolCard } from './pool-card';
import { listed, plural } from './words';

/** Every sheet and stick of the job: what is laid out on them, and how far it is cut. */
export function SheetsScreen({ bench }: { readonly bench: Bench }) {
  const [asking, setAsking] = useState(false);
  const plan = bench.plan.value;
  const found = plan && breakdownOf(plan, bench.shop.value, bench.folded.value);
  return (
    <>
      <Bar title="Sheets" sub={plan?.job.name ?? ''}>
        <UndoButton bench={bench} />
        <BarButton label="Buy" boxed says="What to buy" onTap={() => bench.go({ at: 'buy' })} />
      </Bar>
      <main class={asking ? 'page docked' : 'page'}>
        {found && found.pools.length > 0 && <Caution bench={bench} code="carry" />}
        {found && found.pools.length > 0 && !found.kerf && (
          <section class="pad-x facts" aria-label="Kerf">
            <p class="fact">
              Every cut takes the saw’s kerf, and it is not measured yet. Cut into scrap with the blade you
              will use and measure the slot.
            </p>
            <Button label="The kerf" look="main full" icon="measure" onTap={() => setAsking(true)} />
          </section>
        )}
        {found && found.pools.length > 0 ? (
          found.pools.map((view) => <PoolCard key={view.pool.id} {...{ bench, view, found, plan }} />)
        ) : (
          <p class="pad-x empty-line">
            Nothing to cut yet. Give a case its sizes and say which sheets its parts come out of.
          </p>
        )}
        {found && found.homeless.length > 0 && (
          <section class="pad-x facts" aria-label="Without a sheet">
            <p class="fact warn">
              <Icon name="warn" />
              No sheet is said for {plural(found.homeless.length, 'piece')}:{' '}
              {listed([...new Set(found.homeless.map((piece) => piece.name))])}.
            </p>
          </section>
        )}
      </main>
      {asking && (
        <KeySheet
          title="Kerf of the saw that cuts the sheets"
          tape="1/64"
          fill="length"
          now={undefined}
          onLength={(kerf) => void bench.keepShop('kerf', kerf)}
          onClose={() => setAsking(false)}
        />
      )}
    </>
  );
}
