import { editStock } from '../../job/edits';
import type { Stock } from '../../job/job';
import { equals, type Length, longest } from '../../length/length';
import { writeDecimal } from '../../length/write';
import { stuffOf } from '../../plan/plan';
import { Given, Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { TakeUp } from '../shared/take-up';

type InUseProps = { readonly bench: Bench; readonly stock: Stock; readonly onPlanned: () => void };

/** The thickness parts are reckoned with, and what the readings would change: nothing moves until it is taken up. */
export function InUse({ bench, stock, onPlanned }: InUseProps) {
  const [first, ...rest] = stock.readings;
  const read = first && longest(first, ...rest);
  const [stuff] = stuffOf(stock);
  const pending = read && stuff && !equals(read, stuff.thickness) ? read : undefined;
  return (
    <section aria-label="In use">
      <button type="button" class="nextset" onClick={onPlanned}>
        <span class="grow">Planned, until it is measured</span>
        {stock.planned ? <Given value={stock.planned} /> : <span class="muted">not said</span>}
      </button>
      {stuff && (
        <p class="pad-x note">
          Parts of it are reckoned at <b class="dec">{writeDecimal(stuff.thickness)}</b>
          {stuff.measured ? ', as measured.' : ', as planned.'}
        </p>
      )}
      {pending && <TakeReading {...{ bench, stock }} read={pending} />}
      {!pending && read && stuff && !stuff.measured && <TakeReading {...{ bench, stock }} read={read} />}
    </section>
  );
}

type TakeProps = { readonly bench: Bench; readonly stock: Stock; readonly read: Length };

/** Parts not yet cut, old to new. */
const TakeReading = ({ bench, stock, read }: TakeProps) => (
  <TakeUp
    bench={bench}
    label={`Taken up: ${stock.name} ${writeDecimal(read)}`}
    changes={editStock(stock.id, { used: read })}
  >
    See what <Mixed value={read} tape="0.001" /> would change
  </TakeUp>
);
