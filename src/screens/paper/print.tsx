import { useState } from 'preact/hooks';
import { onLists } from '../../job/prints';
import { listPaperOf, listSheet } from '../../plan/list-print';
import type { Plan } from '../../plan/plan';
import { Segment } from '../../ui/bar';
import { onPage } from '../../ui/paper/ink';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskPage } from '../shared/ask-page';
import { GonePage } from '../shared/gone-page';
import { leave as goBack } from '../shared/leave';
import { Sentence } from '../shared/sentence';
import { blanksOf, marginAsk, onAsk } from './asks';
import { LabelPrintScreen } from './label-print';
import * as words from './print-words';
import { type Printed, printedOf } from './printed';
import { Printing } from './printing';

type PrintProps = { readonly bench: Bench; readonly id: string };

/** A list of the job as a PDF: on what paper, and out. */
export function PrintScreen({ bench, id }: PrintProps) {
  const [open, setOpen] = useState<Ask>();
  const [next, setNext] = useState(false);
  const plan = bench.plan.value;
  if (plan && id === 'labels') return <LabelPrintScreen {...{ bench, plan }} />;
  const of = words.prints.find((one) => one === id);
  const leave = { label: words.back, onTap: () => goBack(bench, { at: 'paper' }) };
  if (!plan || !of)
    return <GonePage title={words.goneTitle} says={words.gone} leave={{ ...leave, word: true }} />;
  const printed = printedOf(bench, plan, of, next);
  return (
    <AskPage
      {...{ bench, leave }}
      title={words.titles[of]}
      sub={plan.job.name}
      tape={plan.job.tape}
      asked={{ open, close: () => setOpen(undefined) }}
    >
      {of === 'setups' && !printed.empty && (
        <div class="pad-x segs">
          <Segment
            label={words.which}
            choices={[
              { label: words.allSetups, chosen: !next, onTap: () => setNext(false) },
              { label: words.nextBuild, chosen: next, onTap: () => setNext(true) },
            ]}
          />
        </div>
      )}
      {printed.empty ? (
        <p class="pad-x empty-line">{words.nothing[of]}</p>
      ) : (
        <OnSheet {...{ bench, plan, of, printed, open }} onOpen={setOpen} />
      )}
    </AskPage>
  );
}

type OnSheetProps = {
  readonly bench: Pick<Bench, 'phone'>;
  readonly plan: Plan;
  readonly of: words.PrintId;
  readonly printed: Printed;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

/** What it is printed on, what is left out, and the PDF; or why it cannot be, and what would fit. */
function OnSheet({ bench, plan, of, printed, open, onOpen }: OnSheetProps) {
  const paper = listPaperOf(plan.job);
  const sheet = listSheet(paper);
  const asks = { on: onAsk(onLists, paper.on), margin: marginAsk(onLists, paper.margin) };
  const blank = (ask: Ask) => <AskBlank key={ask.title} {...{ ask, open, onOpen }} />;
  return (
    <>
      <Sentence label={words.paper}>
        <p>{words.printedOn(blanksOf(asks, blank))}</p>
      </Sentence>
      {printed.notes.map((note) => (
        <p key={note} class="pad-x note">
          {note}
        </p>
      ))}
      {sheet.ok ? (
        <Printing
          phone={bench.phone}
          name={words.fileName(plan.job.name, words.titles[of])}
          label={words.makePdf}
          pagesOf={(widthOf) =>
            printed.pages({
              day: words.today(),
              widthOf,
              leaf: {
                wide: onPage(sheet.value.across),
                high: onPage(sheet.value.long),
                margin: onPage(paper.margin),
              },
            })
          }
        />
      ) : (
        <p class="pad-x wrongline">{words.cannot(sheet.error)}</p>
      )}
    </>
  );
}
