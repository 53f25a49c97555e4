import type { Job } from '../../job/job';
import { hasDrawer } from '../../plan/bank-plan';
import { type Span, spansOf } from '../../plan/shelf-loads';
import type { Case } from '../../trade/carcass/case';
import { Button } from '../../ui/button';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskPage } from '../shared/ask-page';
import { Caution } from '../shared/caution';
import { GonePage } from '../shared/gone-page';
import { LastNotes } from '../shared/last-notes';
import { LotLine } from '../shared/lot-line';
import { useTried } from '../shared/use-tried';
import { failedAsk } from './asks';
import { ShelfSection } from './shelf';
import * as words from './words';
import { wrongsOf } from './wrongs';
import '../shared/drawer-row.css';

/** Shelf by shelf what stands on it, how far it sags, and what would help. */
export function LoadsScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const job = bench.job.value;
  const c = job?.cases.find((x) => x.id === id);
  if (job && c) return <Loads {...{ bench, job, c }} />;
  const leave = { label: words.toCase, word: true, onTap: () => bench.go({ at: 'job' }) };
  return <GonePage title={words.title} leave={leave} says={words.noCase} />;
}

type LoadsProps = { readonly bench: Bench; readonly job: Job; readonly c: Case };

function Loads({ bench, job, c }: LoadsProps) {
  const { id } = c;
  const found = bench.plan.value?.worked.get(id);
  const tried = useTried({
    bench,
    kept: job,
    wrongs: (each) => (found?.ok ? wrongsOf(each, found.value) : []),
  });
  const { open, onOpen } = tried;
  const spans = found?.ok ? spansOf(job, found.value) : [];
  return (
    <AskPage
      bench={bench}
      title={words.title}
      sub={c.name || words.toCase}
      leave={{ label: words.toCase, onTap: () => bench.go({ at: 'case', id }) }}
      tape={job.tape}
      asked={tried}
    >
      <Caution bench={bench} code="load" />
      <p class="pad-x empty-line">{words.estimate}</p>
      <p class="fillin">{words.failedLine(<AskBlank ask={failedAsk(job)} open={open} onOpen={onOpen} />)}</p>
      <LastNotes bench={bench} job={job} />
      {!found?.ok && <p class="pad-x wrongline">{words.notWorked}</p>}
      {spans.map((span) => (
        <ShelfSection key={span.part.id} {...{ bench, job, span, open, onOpen }} />
      ))}
      <Unplaced {...{ bench, job, c, open, onOpen, spans }} />
      <div class="pad-x adds">
        <Button look="quiet" label={words.toLifting} onTap={() => bench.go({ at: 'lift', id })} />
        <Button look="quiet" label={words.toSolid} onTap={() => bench.go({ at: 'solid', id })} />
      </div>
    </AskPage>
  );
}

type UnplacedProps = {
  readonly bench: Bench;
  readonly job: Job;
  readonly c: Case;
  readonly spans: readonly Span[];
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

/** Things with no place, and those whose place is not there any more: nothing of them is dropped. */
function Unplaced({ bench, job, c, spans, open, onOpen }: UnplacedProps) {
  const parts = bench.plan.value?.parts ?? [];
  const isLost = (part: string) =>
    part.startsWith(`${c.id}~`) && !spans.some((span) => span.part.id === part);
  const lost = job.things.filter((t) => t.part !== undefined && isLost(t.part));
  const unplaced = job.things.filter((t) => t.part === undefined && !hasDrawer(job, t));
  if (lost.length + unplaced.length === 0) return null;
  return (
    <section class="drawerrow" aria-label={words.unplaced}>
      <h2 class="sec">{words.unplaced}</h2>
      {lost.length > 0 && <p class="wrongline">{words.lost}</p>}
      {[...lost, ...unplaced].map((thing) => (
        <LotLine key={thing.id} {...{ bench, job, parts, thing, open, onOpen }} />
      ))}
    </section>
  );
}
