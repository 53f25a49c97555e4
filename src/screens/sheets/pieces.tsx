import { useState } from 'preact/hooks';
import { editJob, editPart } from '../../job/edits';
import { ratio } from '../../length/length';
import { breakdownOf } from '../../plan/breakdown';
import type { Plan } from '../../plan/plan';
import type { LayNotes, Lies, RoughPiece } from '../../trade/sheets/pieces';
import { usualSheets } from '../../trade/sheets/stock';
import { Bar } from '../../ui/bar';
import { Button, Chip } from '../../ui/button';
import { Given, Inline } from '../../ui/mixed';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { StockSlip } from '../shared/stock-slip';
import { UndoButton } from '../shared/undo-button';
import { liesWords } from './words';

/** What is laid out: the sheets it comes out of, what is over on each piece, and how each may lie. */
export function PiecesScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const [open, setOpen] = useState<Ask>();
  const plan = bench.plan.value;
  const found = plan && breakdownOf(plan, bench.shop.value, bench.folded.value);
  const view = found?.pools.find((v) => v.pool.id === id);
  const leave = { label: 'Sheets', onTap: () => bench.go({ at: 'sheets' }) };
  if (!plan || !found || !view) {
    return (
      <>
        <Bar title="Pieces" leave={{ ...leave, word: true }} />
        <main class="page">
          <p class="pad-x empty-line">Nothing comes out of this stock.</p>
        </main>
      </>
    );
  }
  const { job } = plan;
  const stick = view.pool.kind === 'stick';
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={setOpen} />;
  const over: Ask = {
    as: 'length',
    title: stick ? 'Over on the length of each stick' : 'Over on each way, for the final cuts',
    now: stick ? job.overStick : job.over,
    usual: stick ? usualSheets.overStick : usualSheets.over,
    save: (value) => editJob(stick ? { overStick: value } : { over: value }),
  };
  const carry: Ask = {
    as: 'amount',
    title: 'Pounds one person carries',
    now: job.carry,
    usual: ratio(BigInt(usualSheets.carry)),
    save: (value) => editJob({ carry: value }),
  };
  const guide: Ask = {
    as: 'choice',
    title: 'What the sheets are cut with',
    now: job.guideOnly ? 'guide' : 'both',
    choices: [
      { value: 'both', label: 'a guide and a table saw', hint: 'what one person lifts goes to the fence' },
      { value: 'guide', label: 'a circular saw along a guide' },
    ],
    save: (value) => editJob({ guideOnly: value === 'guide' }),
  };
  return (
    <>
      <Bar title={view.name} sub="What goes in" leave={leave}>
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <section class="fillin" aria-label="How it is cut">
          {stick ? (
            <>Each piece {blank(over)} over its length</>
          ) : (
            <>
              Each piece {blank(over)} over each way, cut with {blank(guide)}, and one person carries{' '}
              {blank(carry)} lb
            </>
          )}
          .{' '}
          {found.kerf ? (
            <>
              The kerf is <Given value={found.kerf} />.
            </>
          ) : (
            'The kerf is not measured yet: Shop figures.'
          )}
        </section>
        {job.stock
          .filter((s) => view.pool.stocks.some((own) => own.id === s.id))
          .map((stock) => (
            <StockSlip key={stock.id} {...{ bench, stock, open, onOpen: setOpen }} />
          ))}
        <PieceList bench={bench} plan={plan} pieces={view.pool.pieces} stick={stick} onOpen={setOpen} />
      </main>
      <div class="fixedbar">
        <Button label="To the sheets" look="main" onTap={() => bench.go({ at: 'sheets' })} />
      </div>
      {open && (
        <AskDock
          key={open.title}
          ask={open}
          tape={job.tape}
          onSave={(changes) => void bench.act(open.title, changes)}
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}

type ListProps = {
  readonly bench: Bench;
  readonly plan: Plan;
  readonly pieces: readonly RoughPiece[];
  readonly stick: boolean;
  readonly onOpen: (ask: Ask) => void;
};

/** The pieces part by part: rough size, and how they may lie. */
function PieceList({ bench, plan, pieces, stick, onOpen }: ListProps) {
  const parts = [...new Set(pieces.map((p) => p.part))];
  const { tape } = plan.job;
  return (
    <ul aria-label="Pieces">
      {parts.map((part) => {
        const own = pieces.filter((p) => p.part === part);
        const [first] = own;
        if (!first) return null;
        const notes: LayNotes = plan.job.parts[part] ?? {};
        const name = plan.parts.find((p) => p.id === part)?.name ?? first.name;
        return (
          <li key={part} class="piecerow">
            <button type="button" class="nextset" onClick={() => bench.go({ at: 'part', id: part })}>
              <span class="grow">
                <b>{name}</b>
                <span class="s muted block">{own.length === 1 ? 'one' : `${own.length} of them`}, rough</span>
              </span>
              <span class="roughsize">
                <Inline value={first.long} tape={tape} /> × <Inline value={first.wide} tape={tape} />
              </span>
            </button>
            {!stick && (
              <div class="runacts">
                <Chip label={liesWords[first.lies]} onTap={() => onOpen(liesAsk(part, name, first.lies))} />
                <Chip label={shareWords(first, notes)} onTap={() => onOpen(shareAsk(part, name, notes))} />
              </div>
            )}
          </li>
        );
      })}
    </ul>
  );
}

const shareWords = (piece: RoughPiece, { share }: LayNotes): string => {
  if (share !== undefined && share !== 'anywhere') return `on one sheet with all of ${share}`;
  return piece.together === undefined ? 'on any sheet' : 'on one sheet with its mates';
};

const liesAsk = (part: string, name: string, now: Lies): Ask => ({
  as: 'choice',
  title: `Grain of ${name}`,
  now,
  choices: (['along', 'across', 'free'] as const).map((value) => ({ value, label: liesWords[value] })),
  save: (lies) => editPart(part, { lies: lies as Lies }),
});

const letters = ['A', 'B', 'C', 'D'] as const;

const shareAsk = (part: string, name: string, { share }: LayNotes): Ask => ({
  as: 'choice',
  title: `What ${name} shares a sheet with`,
  now: share ?? '',
  choices: [
    { value: '', label: 'its mates', hint: 'left and right, the fronts of a column' },
    { value: 'anywhere', label: 'nothing: any sheet' },
    ...letters.map((value) => ({ value, label: `all of ${value}`, hint: 'every part given this letter' })),
  ],
  save: (value) =>
    editPart(part, { share: letters.find((l) => l === value) ?? (value === 'anywhere' ? value : undefined) }),
});
