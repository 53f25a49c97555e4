import { useState } from 'preact/hooks';
import { editScrews } from '../../job/edits';
import type { ScrewKind, Screws } from '../../job/install';
import type { Plan } from '../../plan/plan';
import { screwPlace, screwsOf } from '../../plan/screw-plan';
import { Chip } from '../../ui/button';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskPage } from '../shared/ask-page';
import { Caution } from '../shared/caution';
import { FigureByFigure } from '../shared/figure-by-figure';
import { oneByOne } from '../shared/figure-by-figure-words';
import { GonePage } from '../shared/gone-page';
import { Acts, Sentence } from '../shared/sentence';
import { listsOf } from '../shared/shop-lists';
import { Anchor } from './anchor';
import { ButtedJoints } from './butted';
import { Found } from './found';
import { joinSteps } from './join-steps';
import { Joins } from './joins';
import { screwAsks } from './screw-asks';
import { screwSteps } from './screw-steps';
import * as words from './screw-words';

type ScreenProps = { readonly bench: Bench; readonly id: string; readonly step?: string | undefined };

/** How a case is fixed: its anchor card, and each place screws go with the screw that bites enough there. */
export function ScrewsScreen({ bench, id, step }: ScreenProps) {
  const [open, setOpen] = useState<Ask>();
  const plan = bench.plan.value;
  const found = plan?.job.cases.find((c) => c.id === id);
  const leave = { label: words.toCase, onTap: () => bench.go({ at: 'case', id }) };
  if (!plan || !found)
    return <GonePage title={words.title} says={words.notInJob} leave={{ ...leave, word: true }} />;
  if (step !== undefined) return <OneByOne {...{ bench, plan, id, step }} name={found.name} />;
  const screws = screwsOf(plan.job, id);
  return (
    <AskPage
      {...{ bench, leave }}
      title={words.title}
      sub={found.name}
      tape={plan.job.tape}
      asked={{ open, close: () => setOpen(undefined) }}
    >
      <Caution bench={bench} code="anchor" />
      <Anchor {...{ bench, plan, place: id, open }} onOpen={setOpen} />
      <h2 class="sec pad-x">{words.screws}</h2>
      {screws.length === 0 && <p class="pad-x empty-line">{words.none}</p>}
      {screws.map((own) => (
        <One key={own.id} {...{ bench, plan, screws: own, open }} onOpen={setOpen} />
      ))}
      <Add bench={bench} of={id} />
      <ButtedJoints {...{ plan, of: id }} />
      <Joins {...{ bench, plan, of: id, open }} onOpen={setOpen} />
      <p class="pad-x chips">
        <Chip label={oneByOne} onTap={() => bench.go({ at: 'screws', id, step: 'next' })} />
      </p>
    </AskPage>
  );
}

type OneByOneProps = {
  readonly bench: Bench;
  readonly plan: Plan;
  readonly id: string;
  readonly name: string;
  readonly step: string;
};

/** The screws of a case, their drills and their marks, one figure at a time. */
const OneByOne = ({ bench, plan, id, name, step }: OneByOneProps) => (
  <FigureByFigure
    {...{ bench, step }}
    heading={words.heading(name)}
    steps={[
      ...screwSteps(plan, id, listsOf(bench.settings.value).screws),
      ...joinSteps(plan, id, listsOf(bench.settings.value).screws),
    ]}
    caution="anchor"
    does={words.does}
    leave={() => bench.go({ at: 'screws', id })}
    goTo={(to) => bench.go({ at: 'screws', id, step: to }, true)}
  />
);

type AddProps = { readonly bench: Pick<Bench, 'act' | 'newId'>; readonly of: string };

const Add = ({ bench, of }: AddProps) => (
  <div class="pad-x">
    <p class="s muted">{words.add}</p>
    <div class="chips">
      {(Object.keys(words.kindWords) as ScrewKind[]).map((kind) => (
        <Chip
          key={kind}
          label={words.kindWords[kind]}
          onTap={() => void bench.act(words.added, editScrews(bench.newId(), { kind, of }))}
        />
      ))}
    </div>
  </div>
);

type OneProps = {
  readonly bench: Pick<Bench, 'act' | 'settings'>;
  readonly plan: Plan;
  readonly screws: Screws;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

function One({ bench, plan, screws, open, onOpen }: OneProps) {
  const place = screwPlace(plan, screws, listsOf(bench.settings.value).screws);
  const asks = screwAsks(screws, place.usual);
  const blanks = Object.fromEntries(
    Object.entries(asks).map(([name, ask]) => [name, <AskBlank key={name} {...{ ask, open, onOpen }} />]),
  ) as unknown as Parameters<typeof words.stack>[0];
  const name = words.nameOf(screws);
  return (
    <>
      <Sentence label={name}>
        <p>
          <b>{blanks.name}</b>
        </p>
        <p>{words.stack(blanks, screws.kind)}</p>
        <p>{place.usual.bite === 'stud' ? words.counts(blanks) : words.spaced(blanks, screws.rows ?? 1)}</p>
        <Acts>
          <Chip
            label={words.remove}
            onTap={() => void bench.act(words.removed(name), editScrews(screws.id, { gone: true }))}
          />
        </Acts>
      </Sentence>
      <Found place={place} tape={plan.job.tape} missing={words.missing} />
    </>
  );
}
