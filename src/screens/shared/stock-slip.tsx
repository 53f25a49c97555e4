import { editBadPlace, editStock } from '../../job/edits';
import type { Stock } from '../../job/job';
import type { Length } from '../../length/length';
import { breakdownOf } from '../../plan/breakdown';
import { stuffOf } from '../../plan/parts-of-job';
import { usualSheets } from '../../trade/sheets/stock';
import { Chip } from '../../ui/button';
import { Icon } from '../../ui/icon';
import { unitInHand } from '../../ui/unit-in-hand';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from './ask';
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
  const length = (field: 'long' | 'trim') =>
    blank(asks.stockLength(stock, field, usualSheets(unitInHand())[field]));
  const wide = asks.stockWide(stock, widestPiece(bench, stock));
  const stick = stock.kind === 'stick';
  const canLike = job.stock.some((s) => s.id !== stock.id && s.kind === stock.kind && s.like === undefined);
  return (
    <>
      <section class="fillin" aria-label={`Size of ${stock.name || 'the sheet'}`}>
        {stick ? 'Sticks' : 'Sheets'} {length('long')} long and {blank(wide)} wide, {length('trim')} trimmed
        off {stick ? 'both ends' : 'every edge'}
        {!stick && <>, face grain running {blank(asks.stockGrain(stock))}</>}. At hand{' '}
        {blank(asks.stockHave(stock))}; {blank(asks.stockMore(stock))}
        {!stock.noMore && <>, one at {blank(asks.stockPrice(stock))}</>}.
        {stick && <> Bought {blank(asks.stockLength(stock, 'rough', stuffOf(stock)[0]?.thickness))} thick.</>}
        {canLike && <> The same stuff as {blank(asks.stockLike(stock, job))}.</>}
      </section>
      {stick && <BadPlaces {...props} />}
    </>
  );
}

/** A stick whose width is not said is reckoned as wide as its widest piece. */
function widestPiece({ plan, shop, folded }: Bench, { id, kind, wide }: Stock): Length | undefined {
  if (kind === 'sheet' || wide || !plan.value) return undefined;
  const { pools } = breakdownOf(plan.value, shop.value, folded.value);
  return pools.flatMap(({ pool }) => pool.stocks).find((stock) => stock.id === id)?.wide;
}

/** One stick with a bad place is two shorter ones: it is listed apart from the sound ones. */
function BadPlaces({ bench, stock, open, onOpen }: SlipProps) {
  const blank = (id: string, end: 'from' | 'to') => (
    <AskBlank ask={asks.badPlace(stock, id, end)} open={open} onOpen={onOpen} />
  );
  return (
    <section class="pad-x facts" aria-label="Bad places">
      {stock.badPlaces.map(({ id }) => (
        <p key={id} class="fillin bare">
          Bad from {blank(id, 'from')} to {blank(id, 'to')} off its squared end{' '}
          <Chip
            label="Sound after all"
            onTap={() => void bench.act('Sound after all', editBadPlace(stock.id, id, { gone: true }))}
          />
        </p>
      ))}
      <button type="button" class="btn quiet" onClick={() => void badPlace(bench, stock, onOpen)}>
        <Icon name="plus" />{' '}
        {stock.noMore && stock.like ? 'A bad place in this stick' : 'A stick with a bad place'}
      </button>
    </section>
  );
}

/** A stick with a bad place is a stock of its own, like the rest; a further place is of that stick. */
async function badPlace(bench: Bench, stock: Stock, onOpen: (ask: Ask) => void): Promise<void> {
  if (stock.noMore && stock.like) {
    onOpen(asks.badPlace(stock, bench.newId(), 'from'));
    return;
  }
  const id = bench.newId();
  const { name, planned, used, asRead, readings, long, wide, trim, rough } = stock;
  const same = { planned, used, asRead, readings, long, wide, trim, rough };
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
