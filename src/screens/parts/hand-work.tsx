import { useState } from 'preact/hooks';
import { editWork } from '../../job/edits';
import type { Plan } from '../../plan/plan';
import type { Part } from '../../trade/carcass/part';
import type { HandWork as Work } from '../../trade/setups/operations';
import { Button, Chip } from '../../ui/button';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { filled } from '../shared/filled';
import { Acts } from '../shared/sentence';
import { handAsks } from './hand-asks';
import * as words from './words';

type HandProps = {
  readonly bench: Pick<Bench, 'act' | 'newId'>;
  readonly part: Part;
  readonly plan: Plan;
};

/** Operations of a part added by hand: a hole, a round-over, a cut-out; they stand in Cuts like all else. */
export function HandWork({ bench, part, plan }: HandProps) {
  const [open, setOpen] = useState<Ask>();
  const own = plan.job.work.filter((work) => work.part === part.id);
  const add = () =>
    void bench.act(
      words.newOperation,
      editWork(bench.newId(), { part: part.id, name: words.extraCut, machine: 'hand' }),
    );
  return (
    <section aria-label={words.addedByHand}>
      {own.map((work) => (
        <Sentence key={work.id} {...{ bench, part, plan, work, open }} onOpen={setOpen} />
      ))}
      <div class="pad-x adds">
        <Button label={words.another} look="quiet" icon="plus" onTap={add} />
      </div>
      <AskDock ask={open} tape={plan.job.tape} act={bench.act} onClose={() => setOpen(undefined)} />
    </section>
  );
}

type SentenceProps = HandProps & {
  readonly work: Work;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

/** What is done, where, set at what, and after what. */
function Sentence({ bench, part, plan, work, open, onOpen }: SentenceProps) {
  const asks = handAsks(work, part, plan);
  return (
    <div class="fillin run">
      {filled(words.handSlip, (name) => {
        const ask = asks[name];
        return ask && <AskBlank ask={ask} open={open} onOpen={onOpen} />;
      })}
      <Acts>
        <Chip
          label={words.remove}
          onTap={() => void bench.act(words.takenAway(work.name), editWork(work.id, { gone: true }))}
        />
      </Acts>
    </div>
  );
}
