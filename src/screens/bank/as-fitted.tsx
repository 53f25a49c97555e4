import type { Tape } from '../../length/tape';
import type { Bank } from '../../trade/fronts/bank';
import type { WorkedColumn } from '../../trade/fronts/worked';
import { Button } from '../../ui/button';
import type { Bench } from '../bench';
import { Calipers } from './calipers';
import * as words from './fit-words';
import { lastGap } from './fitted-reading';
import { sidesText } from './gap-words';
import './bank.css';

type FittedProps = {
  readonly bench: Bench;
  readonly bank: Bank;
  readonly column: WorkedColumn;
  /** The front in hand; undefined when all are on. */
  readonly no: number | undefined;
};

/** The as-built panel: calipers round the front just fitted, where its difference goes, and how much each gets. */
export function AsFitted({ bench, bank, column, no }: FittedProps) {
  const tape = bench.job.value?.tape ?? '1/32';
  if (no === undefined) return <AllOn {...{ bank, column, tape }} onPulls={() => bench.go({ at: 'cuts' })} />;
  if (!column.opening.measured)
    return <NotMeasured onMeasure={() => bench.go({ at: 'opening', id: bank.id })} />;
  return <Calipers {...{ bench, bank, column, no, tape }} />;
}

const NotMeasured = ({ onMeasure }: { readonly onMeasure: () => void }) => (
  <section class="asbuilt" aria-label={words.asBuilt}>
    <h2>{words.notMeasured}</h2>
    <p class="pad8">{words.measureHow}</p>
    <Button look="main full" icon="measure" label={words.measure} onTap={onMeasure} />
  </section>
);

type AllOnProps = {
  readonly bank: Bank;
  readonly column: WorkedColumn;
  readonly tape: Tape;
  readonly onPulls: () => void;
};

function AllOn({ bank, column, tape, onPulls }: AllOnProps) {
  const gap = sidesText(lastGap(bank, column, 'left'), lastGap(bank, column, 'right'), tape);
  return (
    <section class="asbuilt" aria-label={words.asBuilt}>
      <h2>{words.allOn(bank.count)}</h2>
      {bank.fit === 'inset' && <p>{words.lastGap(gap)}</p>}
      <Button look="main full" label={words.toPulls} onTap={onPulls} />
    </section>
  );
}
