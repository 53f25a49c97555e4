import { editStock } from '../../job/edits';
import type { Stock } from '../../job/job';
import { equals, type Length } from '../../length/length';
import { greatestOf } from '../../plan/greatest';
import { stuffOf } from '../../plan/parts-of-job';
import { Given } from '../../ui/given';
import { Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { closely } from '../shared/exact-words';
import { TakeUp } from '../shared/take-up';
import * as words from './words';

type InUseProps = {
  readonly bench: Bench;
  readonly stock: Stock;
  /** Something of it is cut. */
  readonly cut: boolean;
  readonly onPlanned: () => void;
};

/** The thickness parts are reckoned with, and what the readings would change: nothing moves until it is taken up. */
export function InUse({ bench, stock, cut, onPlanned }: InUseProps) {
  const read = greatestOf(stock);
  const [stuff] = stuffOf(stock);
  const takes = read && stuff && (!stuff.measured || !equals(read, stuff.thickness));
  return (
    <section aria-label={words.inUse}>
      <button type="button" class="nextset" onClick={onPlanned}>
        <span class="grow">{words.planned}</span>
        {stock.planned ? <Given value={stock.planned} /> : <span class="muted">{words.notSaid}</span>}
      </button>
      {stuff && (
        <p class="pad-x note">
          {words.reckonedAt(<b class="dec">{closely(stuff.thickness)}</b>, stuff.measured)}
        </p>
      )}
      {takes && cut && <p class="pad-x note">{words.waits}</p>}
      {takes && <TakeReading {...{ bench, stock, read }} />}
    </section>
  );
}

type TakeProps = { readonly bench: Bench; readonly stock: Stock; readonly read: Length };

/** Parts not yet cut, old to new. */
const TakeReading = ({ bench, stock, read }: TakeProps) => (
  <TakeUp
    bench={bench}
    label={words.takenUp(stock.name, closely(read))}
    changes={editStock(stock.id, { used: read })}
  >
    {words.wouldChange(<Mixed value={read} tape="0.001" />)}
  </TakeUp>
);
