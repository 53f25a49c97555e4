import { useState } from 'preact/hooks';
import { editPutUp } from '../../job/edits';
import { putUpOf } from '../../plan/cleat-on';
import { cureOf, usualCure } from '../../plan/put-up-plan';
import { Bar } from '../../ui/bar';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { Caution } from '../shared/caution';
import { leave } from '../shared/leave';
import { Sentence } from '../shared/sentence';
import { UndoButton } from '../shared/undo-button';
import * as words from './finish-words';

/** What a case is finished with, and the wait before anything goes in. */
export function FinishScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const [open, setOpen] = useState<Ask>();
  const job = bench.job.value;
  if (!job) return null;
  const own = putUpOf(job, id);
  const cure = cureOf(job, id, bench.folded.value);
  const finish: Ask = {
    as: 'text',
    title: words.what,
    now: own.finish ?? '',
    save: (text) => editPutUp(id, { finish: text || undefined }),
  };
  const days: Ask = {
    as: 'count',
    title: words.days,
    now: own.cureDays,
    word: `${usualCure}`,
    save: (cureDays) => editPutUp(id, { cureDays }),
  };
  const blank = (ask: Ask) => <AskBlank {...{ ask, open }} onOpen={setOpen} />;
  return (
    <>
      <Bar
        title={words.title}
        sub={job.cases.find((c) => c.id === id)?.name ?? ''}
        leave={{ label: words.toCuts, word: true, onTap: () => leave(bench, { at: 'cuts' }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <Caution bench={bench} code="finish-inside" />
        <Sentence label={words.title}>
          <p>{words.sentence(blank(finish), blank(days))}</p>
        </Sentence>
        <div class="pad-x">
          <p class={cure.is === 'curing' ? 'lit' : ''}>{words.cure(cure)}</p>
          {cure.usual && <p class="note">{words.usual}</p>}
          <p class="note">{words.smell}</p>
        </div>
      </main>
      <AskDock ask={open} tape={job.tape} act={bench.act} onClose={() => setOpen(undefined)} />
    </>
  );
}
