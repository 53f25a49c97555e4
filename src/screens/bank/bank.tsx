import { useLayoutEffect, useState } from 'preact/hooks';
import { editBank } from '../../job/edits';
import type { Change } from '../../job/entry';
import type { BankPlan } from '../../plan/bank-plan';
import { jobWith } from '../../plan/job-with';
import { partsOfJob } from '../../plan/parts-of-job';
import type { Bank } from '../../trade/fronts/bank';
import { Bar, Segment } from '../../ui/bar';
import { Button, Onward } from '../../ui/button';
import type { Bench } from '../bench';
import type { Ask } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { UndoButton } from '../shared/undo-button';
import { bankIn } from './column-of';
import { Asks } from './facts';
import { askedOf, type FormPage, formPages, pageNamed } from './form-pages';
import { NoBank } from './fronts';
import { onward, pages, pagesLabel } from './sentence-words';
import { Folded, PageSentences, type Slip } from './sentences';
import * as words from './words';
import './bank.css';

type BankProps = { readonly bench: Bench; readonly id: string; readonly page?: string | undefined };

/** What goes into a bank, on three short pages: its opening and fronts, its boxes and slides, its wood and joints. */
export function BankScreen({ bench, id, page: named }: BankProps) {
  const page = pageNamed(named);
  const [open, setOpen] = useState<Ask>();
  const [trying, setTrying] = useState<readonly Change[]>();
  useLayoutEffect(() => {
    setOpen(undefined);
    setTrying(undefined);
    scrollTo(0, 0);
  }, [page]);
  const job = bench.job.value;
  const found = bankIn(bench.plan.value, id);
  if (!job || !found) return <NoBank bench={bench} />;
  const shown = trying ? (tried(bench, job.id, trying).get(id) ?? found) : found;
  const close = () => {
    setOpen(undefined);
    setTrying(undefined);
  };
  const act: Slip['act'] = (label, changes) => void bench.act(label, changes);
  const slip: Slip = { bench, found, open, act, onOpen: setOpen };
  const Sentences = PageSentences[page];
  return (
    <>
      <Bar
        title={words.nameOf(found.bank)}
        sub={pages[page]}
        leave={{ label: words.toFronts, onTap: () => bench.go({ at: 'fronts', id }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <WhichPage page={page} onPage={(to) => bench.go({ at: 'bank', id, page: to })} />
        <Asks bench={bench} bank={shown} page={page} />
        <Sentences {...slip} />
        <Folded key={page} page={page} slip={slip} />
        {page === 'fronts' && <Remove bench={bench} bank={found.bank} />}
      </main>
      <OnToNext
        page={page}
        onPage={(to) => bench.go(to ? { at: 'bank', id, page: to } : { at: 'fronts', id })}
      />
      <AskDock
        ask={open}
        tape={job.tape}
        says={trying ? wrongOf(shown, page) : []}
        act={act}
        onTry={setTrying}
        onClose={close}
      />
    </>
  );
}

/** What is wrong on a page, beside the keys: what is only missing yet is no fault of the figure being keyed. */
const wrongOf = (bank: BankPlan, page: FormPage): readonly string[] =>
  askedOf(bank, page).flatMap(({ text, missing }) => (missing ? [] : [text]));

/** The banks as they would be with a change that is not kept yet. */
const tried = ({ folded, shop }: Pick<Bench, 'folded' | 'shop'>, job: string, changes: readonly Change[]) =>
  partsOfJob(jobWith(folded.value, job, changes), shop.value).banks;

type PageProps = { readonly page: FormPage; readonly onPage: (page: FormPage) => void };

const WhichPage = ({ page, onPage }: PageProps) => (
  <div class="seglines">
    <Segment
      label={pagesLabel}
      choices={formPages.map((to) => ({ label: pages[to], chosen: to === page, onTap: () => onPage(to) }))}
    />
  </div>
);

type OnToProps = { readonly page: FormPage; readonly onPage: (page: FormPage | undefined) => void };

/** To the next page by its name; from the last to the fronts. */
const OnToNext = ({ page, onPage }: OnToProps) => (
  <div class="fixedbar">
    <Onward label={onward[page]} onTap={() => onPage(formPages[formPages.indexOf(page) + 1])} />
  </div>
);

function Remove({ bench, bank }: { readonly bench: Pick<Bench, 'act' | 'go'>; readonly bank: Bank }) {
  const remove = () => {
    void bench.act(words.removed(bank), editBank(bank.id, { gone: true }));
    bench.go({ at: 'job' });
  };
  return (
    <div class="pad-x adds">
      <Button look="quiet" label={words.removeThese} onTap={remove} />
    </div>
  );
}
