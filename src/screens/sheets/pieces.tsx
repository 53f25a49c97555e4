import { useState } from 'preact/hooks';
import { type Breakdown, breakdownOf, type PoolView } from '../../plan/breakdown';
import type { Plan } from '../../plan/plan';
import type { Shop } from '../../trade/machines/shop';
import { Bar } from '../../ui/bar';
import { Button } from '../../ui/button';
import { Given } from '../../ui/given';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { filled } from '../shared/filled';
import { GonePage } from '../shared/gone-page';
import { StockSlip } from '../shared/stock-slip';
import { UndoButton } from '../shared/undo-button';
import { cuttingAsks, sawAsks } from './asks';
import { PieceList } from './piece-list';
import * as words from './words';

/** What is laid out: the sheets it comes out of, what is over on each piece, and how each may lie. */
export function PiecesScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const plan = bench.plan.value;
  const found = plan && breakdownOf(plan, bench.shop.value, bench.folded.value);
  const view = found?.pools.find((v) => v.pool.id === id);
  const leave = { label: words.sheets, onTap: () => bench.go({ at: 'sheets' }) };
  if (!plan || !found || !view)
    return <GonePage title={words.piecesTitle} leave={{ ...leave, word: true }} says={words.nothingOut} />;
  return <PiecesInHand {...{ bench, plan, found, view, leave }} />;
}

type PiecesProps = {
  readonly bench: Bench;
  readonly plan: Plan;
  readonly found: Breakdown;
  readonly view: PoolView;
  readonly leave: { readonly label: string; readonly onTap: () => void };
};

function PiecesInHand({ bench, plan, found, view, leave }: PiecesProps) {
  const [open, setOpen] = useState<Ask>();
  const { job } = plan;
  const stick = view.pool.kind === 'stick';
  return (
    <>
      <Bar title={view.name} sub={words.whatGoesIn} leave={leave}>
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <CuttingSlip {...{ plan, found, stick, open }} shop={bench.shop.value} onOpen={setOpen} />
        {job.stock
          .filter((s) => view.pool.stocks.some((own) => own.id === s.id))
          .map((stock) => (
            <StockSlip key={stock.id} {...{ bench, stock, open, onOpen: setOpen }} />
          ))}
        <PieceList {...{ bench, plan, stick }} pieces={view.pool.pieces} onOpen={setOpen} />
      </main>
      <div class="fixedbar">
        <Button label={words.toSheets} look="main" onTap={leave.onTap} />
      </div>
      <AskDock ask={open} tape={job.tape} act={bench.act} onClose={() => setOpen(undefined)} />
    </>
  );
}

type SlipProps = Pick<PiecesProps, 'plan' | 'found'> & {
  readonly shop: Shop;
  readonly stick: boolean;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

/** How much is over on each piece, with what it is cut, and the kerf. */
function CuttingSlip({ plan, found, shop, stick, open, onOpen }: SlipProps) {
  const asks = cuttingAsks(plan.job, stick);
  return (
    <section class="fillin" aria-label={words.howCut}>
      {filled(stick ? words.stickSlip : words.sheetSlip(), (name) => {
        const ask = asks[name];
        return ask && <AskBlank ask={ask} open={open} onOpen={onOpen} />;
      })}
      {!stick &&
        sawAsks(plan.job, shop).map(({ field, ask }) =>
          filled(words.sawSlip[field], () => <AskBlank ask={ask} open={open} onOpen={onOpen} />),
        )}
      {found.kerf
        ? filled(words.kerfIs, () => found.kerf && <Given value={found.kerf} />)
        : words.kerfUnknown}
    </section>
  );
}
