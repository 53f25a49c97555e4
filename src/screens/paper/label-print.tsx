import { useState } from 'preact/hooks';
import { onLabels } from '../../job/prints';
import { isNegative, type Length } from '../../length/length';
import { labelsOf } from '../../plan/label-plan';
import { type LabelPaper, labelPaperOf, labelSheets } from '../../plan/label-print';
import type { Plan } from '../../plan/plan';
import { Segment } from '../../ui/bar';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskPage } from '../shared/ask-page';
import { leave } from '../shared/leave';
import { lengthRefused } from '../shared/refused-words';
import { Sentence } from '../shared/sentence';
import { blanksOf, lengthAsk, marginAsk, onAsk } from './asks';
import { drawerLabels, type LabelDrawn, labelPages, partLabels, tooHigh } from './label-drawing';
import * as words from './label-print-words';
import { back, fileName, makePdf } from './print-words';
import { Printing } from './printing';

type LabelsProps = { readonly bench: Bench; readonly plan: Plan };

/** Labels of parts, or of drawers and trays: how large, on what sheet, and out. */
export function LabelPrintScreen({ bench, plan }: LabelsProps) {
  const [open, setOpen] = useState<Ask>();
  const [of, setOf] = useState<'parts' | 'drawers'>('parts');
  const labels = of === 'parts' ? partLabels(plan) : drawerLabels(labelsOf(plan));
  const own = labelPaperOf(plan.job);
  const asks = labelAsks(own);
  const blank = (ask: Ask) => <AskBlank key={ask.title} {...{ ask, open }} onOpen={setOpen} />;
  const choice = (which: typeof of, label: string) => ({
    label,
    chosen: of === which,
    onTap: () => setOf(which),
  });
  return (
    <AskPage
      bench={bench}
      title={words.title}
      sub={plan.job.name}
      leave={{ label: back, onTap: () => leave(bench, { at: 'paper' }) }}
      tape={plan.job.tape}
      asked={{ open, close: () => setOpen(undefined) }}
    >
      <div class="pad-x segs">
        <Segment
          label={words.of}
          choices={[choice('parts', words.parts), choice('drawers', words.drawers)]}
        />
      </div>
      <Sentence label={words.title}>
        <p>{words.printedOn(blanksOf(asks, blank))}</p>
      </Sentence>
      {labels.length === 0 ? (
        <p class="pad-x empty-line">{of === 'parts' ? words.noParts : words.noDrawers}</p>
      ) : (
        <OnSheets {...{ bench, plan, labels, own }} />
      )}
    </AskPage>
  );
}

type OnSheetsProps = {
  readonly bench: Pick<Bench, 'phone'>;
  readonly plan: Plan;
  readonly labels: readonly LabelDrawn[];
  readonly own: LabelPaper;
};

/** How many sheets they take, and the PDF; or by how much a label is too large. */
function OnSheets({ bench, plan, labels, own }: OnSheetsProps) {
  const laid = labelSheets(own, labels.length);
  if (!laid.ok) return <p class="pad-x wrongline">{words.tooLarge(laid.error)}</p>;
  const { pages, ...sheets } = laid.value;
  const label = { wide: own.wide, high: own.high };
  return (
    <>
      <p class="pad-x note">{words.takes(labels.length, pages)}</p>
      <Printing
        phone={bench.phone}
        name={fileName(plan.job.name, words.act)}
        label={makePdf}
        pagesOf={(widthOf) => {
          const over = tooHigh(labels, { label, widthOf });
          return over
            ? words.tooSmall(over.name, over.by)
            : labelPages(labels, { ...sheets, label, widthOf });
        }}
      />
    </>
  );
}

const refuseGap = (x: Length): string | undefined => (isNegative(x) ? lengthRefused(x) : undefined);

const labelAsks = ({ on, margin, wide, high, gap, down }: LabelPaper) => {
  const at = { key: onLabels, refuse: lengthRefused };
  const between = { key: onLabels, refuse: refuseGap };
  return {
    on: onAsk(onLabels, on),
    margin: marginAsk(onLabels, margin),
    wide: lengthAsk({ ...at, field: 'wide', title: words.wide, now: wide }),
    high: lengthAsk({ ...at, field: 'high', title: words.high, now: high }),
    gap: lengthAsk({ ...between, field: 'gap', title: words.gap, now: gap }),
    down: lengthAsk({ ...between, field: 'down', title: words.down, now: down }),
  };
};
