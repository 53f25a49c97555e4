import type { Job } from '../../job/job';
import { noteOf } from '../../job/notes';
import type { NotedPlace } from '../../job/place-code';
import type { Plan } from '../../plan/plan';
import * as words from './noted-words';

type NotedOf = {
  readonly job: Job;
  readonly plan: Plan | undefined;
  readonly place: NotedPlace;
  /** Ids of the parts that lie there. */
  readonly parts: readonly string[];
};

/** In a line each, at the saw and on paper: what is noted of a place, and of the parts on it. */
export function notedLines({ job, plan, place, parts }: NotedOf): readonly string[] {
  const line = (name: string, at: NotedPlace): readonly string[] => {
    const said = noteOf(job, at);
    return said ? [words.atTheSaw(name, said)] : [];
  };
  const ofParts = parts.map((id): NotedPlace => ({ of: 'part', id }));
  return [...line(words.note, place), ...ofParts.flatMap((at) => line(words.placeWord(at, plan), at))];
}
