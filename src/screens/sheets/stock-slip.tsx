import { editStock } from '../../store/edits';
import type { Stock } from '../../store/job';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../marks/ask';
import * as asks from './stock-asks';

type SlipProps = {
  readonly bench: Bench;
  readonly stock: Stock;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

/** A sheet or stick as one sentence: its size, grain, how many there are. */
export function StockSlip(props: SlipProps) {
  const { bench, stock, open, onOpen } = props;
  const job = bench.job.value;
  if (!job) return null;
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  const length = (field: 'long' | 'wide' | 'trim') =>
    blank(asks.stockLength(stock, field, asks.usualOf(stock, field)));
  const stick = stock.kind === 'stick';
  const canLike = job.stock.some((s) => s.id !== stock.id && s.kind === stock.kind && s.like === undefined);
  return (
    <>
      <section class="fillin" aria-label={`Size of ${stock.name || 'the sheet'}`}>
        {stick ? 'Sticks' : 'Sheets'} {length('long')} long and {length('wide')} wide, {length('trim')}{' '}
        trimmed off {stick ? 'both ends' : 'every edge'}
        {!stick && <>, face grain running {blank(asks.stockGrain(stock))}</>}. At hand{' '}
        {blank(asks.stockHave(stock))}; {blank(asks.stockMore(stock))}
        {!stock.noMore && <>, one at {blank(asks.stockPrice(stock))}</>}.
        {stick && <> Bought {blank(asks.stockLength(stock, 'rough', stock.used))} thick.</>}
        {canLike && <> The same stuff as {blank(asks.stockLike(stock, job))}.</>}
      </section>
      {stick && <BadPlaces {...props} />}
    </>
  );
}

/** One stick with a bad place is two shorter ones: it is listed apart from the sound ones. */
function BadPlaces({ bench, stock, open, onOpen }: SlipProps) {
  const bad = stock.bad ?? [];
  const pairs = bad.flatMap((_, k) => (k % 2 === 0 ? [k] : []));
  return (
    <section class="pad-x facts" aria-label="Bad places">
      {pairs.map((k) => (
        <p key={k} class="fillin bare">
          Bad from <AskBlank ask={asks.badPlace(stock, k)} open={open} onOpen={onOpen} /> to{' '}
          <AskBlank ask={asks.badPlace(stock, k + 1)} open={open} onOpen={onOpen} /> off its squared end{' '}
          <button
            type="button"
            class="chip"
            onClick={() =>
              void bench.act(
                'Sound after all',
                asks.editBad(
                  stock,
                  bad.filter((_, j) => j !== k && j !== k + 1),
                ),
              )
            }
          >
            Sound after all
          </button>
        </p>
      ))}
      {bad.length % 2 === 0 && (
        <button type="button" class="btn quiet" onClick={() => void badPlace(bench, stock, onOpen)}>
          <Icon name="plus" />{' '}
          {stock.noMore && stock.like ? 'A bad place in this stick' : 'A stick with a bad place'}
        </button>
      )}
    </section>
  );
}

/** A stick with a bad place is a stock of its own, like the rest; a further place is of that stick. */
async function badPlace(bench: Bench, stock: Stock, onOpen: (ask: Ask) => void): Promise<void> {
  if (stock.noMore && stock.like) {
    onOpen(asks.badPlace(stock, (stock.bad ?? []).length));
    return;
  }
  const id = bench.newId();
  const { name, planned, used, readings, long, wide, trim, rough } = stock;
  const same = { planned, used, readings, long, wide, trim, rough };
  const made = await bench.act(
    'A stick with a bad place',
    editStock(id, {
      name: `${name || 'Stick'}, one with a bad place`,
      kind: 'stick',
      like: stock.like ?? stock.id,
      have: 1,
      noMore: true,
      ...Object.fromEntries(Object.entries(same).filter(([, v]) => v !== undefined)),
    }),
  );
  if (made) bench.go({ at: 'stock', id });
}
