import { editJob, editRecipe, edits } from './edits';
import type { Change } from './entry';
import type { Job } from './job';
import { type NotedPlace, placeCode } from './place-code';
import { noteFields } from './place-fields';
import { children, pick } from './tree';

type Read = Pick<Job, 'tree' | 'note' | 'recipes'>;

/** What is noted at a place, empty where nothing is: that of the job and those of setups are fields of their own. */
export function noteOf(job: Read, place: NotedPlace): string {
  if (place.of === 'job') return job.note;
  if (place.of === 'setup') return job.recipes[place.id]?.note ?? '';
  const own = children(job.tree, 'notes').find(([code]) => code === placeCode(place))?.[1];
  return (own && pick(noteFields, own).note) ?? '';
}

export function editNote(place: NotedPlace, said: string): readonly Change[] {
  const note = said === '' ? undefined : said;
  if (place.of === 'job') return editJob({ note });
  if (place.of === 'setup') return editRecipe(place.id, { note });
  return edits(`notes/${placeCode(place)}/`, noteFields, { note });
}

/** The places that have a note of their own in the job, by their codes, in the order they were written. */
export const notedPlaces = ({ tree }: Read): readonly string[] =>
  children(tree, 'notes').flatMap(([code, node]) => (pick(noteFields, node).note ? [code] : []));
