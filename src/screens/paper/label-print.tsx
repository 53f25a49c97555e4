import { useState } from 'preact/hooks';
import { editPrint, onLabels } from '../../job/prints';
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
import { drawerLabels, type LabelDrawn, labelPages, partLabels, tooHigh } from './label-drawing';
import * as words from './label-print-words';
import { back, fileName, makePdf, margin, paper, papers } from './print-words';
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
        <p>
          {words.printedOn({
            on: blank(asks.on),
            margin: blank(asks.margin),
            wide: blank(asks.wide),
            high: blank(asks.high),
            gap: blank(asks.gap),
            down: blank(asks.down),
          })}
        </p>
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

const labelAsks = ({ on, margin: white, wide, high, gap, down }: LabelPaper) =>
  ({
    on: {
      as: 'choice',
      title: paper,
      now: on,
      choices: papers,
      save: (value) => editPrint(onLabels, { paper: value as LabelPaper['on'] }),
    },
    margin: {
      as: 'length',
      title: margin,
      now: white,
      save: (value) => editPrint(onLabels, { margin: value }),
    },
    wide: {
      as: 'length',
      title: words.wide,
      now: wide,
      refuse: lengthRefused,
      save: (value) => editPrint(onLabels, { wide: value }),
    },
    high: {
      as: 'length',
      title: words.high,
      now: high,
      refuse: lengthRefused,
      save: (value) => editPrint(onLabels, { high: value }),
    },
    gap: {
      as: 'length',
      title: words.gap,
      now: gap,
      refuse: refuseGap,
      save: (value) => editPrint(onLabels, { gap: value }),
    },
    down: {
      as: 'length',
      title: words.down,
      now: down,
      refuse: refuseGap,
      save: (value) => editPrint(onLabels, { down: value }),
    },
  }) satisfies Readonly<Record<string, Ask>>;
