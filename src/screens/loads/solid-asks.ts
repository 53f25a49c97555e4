import { editJob, editSolid } from '../../job/edits';
import type { Job } from '../../job/job';
import { usualSlot } from '../../plan/solid-plan';
import type { Ask } from '../shared/ask';
import * as words from './solid-words';

/** A moisture, or the damp of the air, percent. */
export const yearAsk = ({ year }: Job, field: keyof typeof words.titles): Ask => ({
  as: 'amount',
  title: words.titles[field],
  unit: words.percent,
  now: year[field],
  save: (value) => editJob({ [field]: value }),
});

export const reachAsk = ({ solid }: Job, part: string): Ask => ({
  as: 'length',
  title: words.reachTitle,
  kind: 'place',
  now: solid[part]?.reach,
  save: (reach) => editSolid(part, { reach }),
});

export const shankAsk = ({ solid }: Job, part: string): Ask => ({
  as: 'length',
  title: words.shankTitle,
  now: solid[part]?.shank,
  usual: usualSlot.shank,
  save: (shank) => editSolid(part, { shank }),
});
