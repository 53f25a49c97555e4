import { useState } from 'preact/hooks';
import type { Change } from '../../job/entry';
import type { Job } from '../../job/job';
import { jobWith } from '../../plan/job-with';
import type { Bench } from '../bench';
import type { Ask } from './ask';

type TriedProps = {
  readonly bench: Pick<Bench, 'folded'>;
  readonly kept: Job;
  /** All that is wrong on the page of a job, in sentences. */
  readonly wrongs: (job: Job) => readonly string[];
};

/** A blank in hand: the job as its figure is keyed, and what that figure makes wrong that is not wrong without it. */
export function useTried({ bench, kept, wrongs }: TriedProps) {
  const [open, setOpen] = useState<Ask>();
  const [trying, setTrying] = useState<readonly Change[]>();
  const close = () => {
    setOpen(undefined);
    setTrying(undefined);
  };
  const having = (changes: readonly Change[]) => jobWith(bench.folded.value, kept.id, changes);
  const job = trying ? having(trying) : kept;
  return {
    open,
    onOpen: setOpen,
    close,
    job,
    says: open ? madeWrong(wrongs(job), () => wrongs(having(emptied(open)))) : [],
    onTry: setTrying,
  };
}

/** The changes that leave a blank empty; a choice is never empty. */
const emptied = (ask: Ask): readonly Change[] =>
  ask.as === 'choice' || ask.as === 'text' ? [] : ask.save(undefined);

function madeWrong(now: readonly string[], before: () => readonly string[]): readonly string[] {
  if (now.length === 0) return [];
  const without = before();
  return [...new Set(now)].filter((text) => !without.includes(text));
}
