import { useState } from 'preact/hooks';
import { breakdownOf } from '../../plan/breakdown';
import { checklistOf, cutCount } from '../../plan/checklist';
import type { Plan } from '../../plan/plan';
import { breakdownCount } from '../../plan/progress';
import { sheetCodes } from '../../plan/sheet-codes';
import { Bar, Segment } from '../../ui/bar';
import type { Bench } from '../bench';
import { leave } from '../shared/leave';
import { UndoButton } from '../shared/undo-button';
import { cutOf } from './print-words';
import { SetupTickIn } from './tick-in-setup';
import { SheetTickIn } from './tick-in-sheet';
import * as words from './tick-in-words';
import '../shared/rows.css';

/** A helper's page put back: its setup by number or its sheet by name, then its letters, or all of it at once. */
export function TickInScreen({ bench }: { readonly bench: Bench }) {
  const plan = bench.plan.value;
  return plan ? <PageOf {...{ bench, plan }} /> : <Nothing bench={bench} />;
}

type PageProps = { readonly bench: Bench; readonly plan: Plan };

function PageOf({ bench, plan }: PageProps) {
  const list = checklistOf(plan, bench.folded.value);
  const found = breakdownOf(plan, bench.shop.value, bench.folded.value);
  const codes = sheetCodes(plan, found).filter(({ steps }) => steps.length > 0);
  const [asked, setAsked] = useState(false);
  const setups = list.cards.length > 0;
  const sheets = codes.length > 0 && (asked || !setups);
  if (!setups && !sheets) return <Nothing bench={bench} />;
  const which = setups && codes.length > 0 && (
    <div class="pad-x segs">
      <Segment
        label={words.which}
        choices={[
          { label: words.setups, chosen: !sheets, onTap: () => setAsked(false) },
          { label: words.sheets, chosen: sheets, onTap: () => setAsked(true) },
        ]}
      />
    </div>
  );
  return (
    <>
      <Top bench={bench} count={sheets ? breakdownCount(plan.job, bench.folded.value) : cutCount(list)} />
      {sheets ? (
        <SheetTickIn {...{ bench, plan, found, codes, which }} />
      ) : (
        <SetupTickIn {...{ bench, list, which }} />
      )}
    </>
  );
}

type TopProps = { readonly bench: Bench; readonly count?: { readonly cut: number; readonly of: number } };

const Top = ({ bench, count: { cut, of } = { cut: 0, of: 0 } }: TopProps) => (
  <Bar
    title={words.title}
    sub={cutOf(cut, of)}
    leave={{ label: words.back, onTap: () => leave(bench, { at: 'paper' }) }}
  >
    <UndoButton bench={bench} />
  </Bar>
);

const Nothing = ({ bench }: { readonly bench: Bench }) => (
  <>
    <Top bench={bench} />
    <main class="page">
      <p class="pad-x empty-line">{words.empty}</p>
    </main>
  </>
);
