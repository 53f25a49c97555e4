import { useState } from 'preact/hooks';
import type { Job } from '../../job/job';
import { onAll } from '../../job/prints';
import { isPositive, type Length } from '../../length/length';
import { type PrintCheck, printCheck, printKey } from '../../plan/print-check';
import { longOf, type PaperAt, paperOf, stickOn } from '../../plan/stick-print';
import { type Stick, sticksOf } from '../../plan/sticks-of';
import { readBar } from '../../trade/paper/bar';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskPage } from '../shared/ask-page';
import { GonePage } from '../shared/gone-page';
import { lengthRefused } from '../shared/refused-words';
import { Sentence } from '../shared/sentence';
import { blanksOf, lengthAsk, marginAsk, onAsk, overlapAsk } from './asks';
import { makePdf, paper as paperTitle, today } from './print-words';
import { Printing } from './printing';
import { stickPages, stripNeeds } from './stick-drawing';
import * as words from './stick-page-words';
import { stickName } from './stick-words';

type StickProps = { readonly bench: Bench; readonly id: string; readonly which: string };

/** A story stick at full size: on what paper, out as a PDF, and whether its print may be trusted. */
export function StickScreen({ bench, id, which }: StickProps) {
  const [open, setOpen] = useState<Ask>();
  const plan = bench.plan.value;
  const leave = { label: words.back, onTap: () => bench.go({ at: 'paper' }) };
  const stick = plan && sticksOf(plan).find((one) => one.of === id && one.which === which);
  if (!plan || !stick)
    return <GonePage title={words.title} says={words.notThere} leave={{ ...leave, word: true }} />;
  const { job } = plan;
  return (
    <AskPage
      {...{ bench, leave }}
      title={stickName(stick)}
      sub={words.title}
      tape={job.tape}
      asked={{ open, close: () => setOpen(undefined) }}
    >
      <OnPaper {...{ bench, job, stick, open }} onOpen={setOpen} />
      <Checks {...{ job, stick, open }} onOpen={setOpen} />
    </AskPage>
  );
}

type AskedProps = {
  readonly job: Job;
  readonly stick: Stick;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

/** What it is printed on, how many sheets that takes, and the PDF; or why it cannot be, and what would fit. */
function OnPaper({ bench, job, stick, open, onOpen }: AskedProps & { readonly bench: Bench }) {
  const paper = paperOf(job);
  const laid = stickOn(stick, paper, stripNeeds);
  const asks = paperAsks(paper);
  const blank = (ask: Ask) => <AskBlank key={ask.title} {...{ ask, open, onOpen }} />;
  const pagesOf: Parameters<typeof Printing>[0]['pagesOf'] = (widthOf) =>
    laid.ok
      ? stickPages({
          ...laid.value,
          stick,
          tape: job.tape,
          job: job.name,
          day: today(),
          below: paper.on === 'roll',
          widthOf,
        })
      : [];
  return (
    <>
      <Sentence label={paperTitle}>
        <p>{words.printedOn(paper.on, blanksOf(asks, blank))}</p>
      </Sentence>
      {laid.ok ? (
        <>
          <p class="pad-x note">{words.takes(laid.value.tiles.length, stick)}</p>
          <Printing
            phone={bench.phone}
            name={words.fileName(stickName(stick))}
            label={makePdf}
            pagesOf={pagesOf}
          />
        </>
      ) : (
        <p class="pad-x wrongline">{words.cannot(laid.error)}</p>
      )}
    </>
  );
}

/** What sticks are printed on. */
const paperAsks = ({ on, wide, margin, overlap }: PaperAt) => ({
  on: onAsk(onAll, on, 'or-roll'),
  wide: lengthAsk({ key: onAll, field: 'wide', title: words.rollWide, now: wide, refuse: lengthRefused }),
  margin: marginAsk(onAll, margin),
  overlap: overlapAsk(onAll, overlap),
});

/** What the print of a stick measured. */
function barAsks(stick: Stick, { read, drawn }: PrintCheck) {
  const key = printKey(stick);
  const refuse = (bar: Length): string | undefined => {
    if (!isPositive(bar)) return lengthRefused(bar);
    return readBar({ drawn, read: bar, stick: longOf(stick) }).ok ? undefined : words.wrongBar(drawn, bar);
  };
  return {
    bar: lengthAsk({ key, field: 'bar', title: words.barAlong, now: read.bar, refuse }),
    across: lengthAsk({ key, field: 'across', title: words.barAcross, now: read.across, refuse }),
    whole: lengthAsk({
      key,
      field: 'whole',
      title: words.wholeStick,
      now: read.whole,
      refuse: lengthRefused,
    }),
  };
}

/** The bars and the whole stick as they were read off the paper, and what that says. */
function Checks({ job, stick, open, onOpen }: AskedProps) {
  const check = printCheck(job, stick);
  const asks = barAsks(stick, check);
  const blank = (ask: Ask) => <AskBlank key={ask.title} {...{ ask, open, onOpen }} />;
  return (
    <>
      <h2 class="sec pad-x">{words.checks}</h2>
      <Sentence label={words.checks}>
        <p>{words.asRead(blanksOf(asks, blank))}</p>
      </Sentence>
      {words.verdicts(check).map(({ says, wrong }) => (
        <p key={says} class={wrong ? 'pad-x wrongline' : 'pad-x'}>
          {says}
        </p>
      ))}
      <p class="pad-x note">{words.never}</p>
    </>
  );
}
