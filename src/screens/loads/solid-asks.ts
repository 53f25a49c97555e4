import { editJob, editSolid } from '../../job/edits';
import type { Job } from '../../job/job';
import { type Length, type Ratio, ratio } from '../../length/length';
import { usualSlot } from '../../plan/solid-plan';
import { moistureInAir } from '../../trade/movement/air';
import type { Ask } from '../shared/ask';
import { lengthRefused, placeRefused } from '../shared/refused-words';
import * as words from './solid-words';

/** A moisture, or the damp of the air, percent. */
export const yearAsk = ({ year }: Job, field: keyof typeof words.titles): Ask => ({
  as: 'amount',
  title: words.titles[field],
  unit: words.percent,
  now: year[field],
  refuse: field.startsWith('air') ? airRefused : moistureRefused,
  save: (value) => editJob({ [field]: value }),
});

/** Past the table of air a meter is asked for. */
function airRefused(x: Ratio): string | undefined {
  const found = moistureInAir(x);
  return found.ok ? undefined : words.yearErrorText(found.error);
}

/** Wetter than this, wood does not move. Source: Wood Handbook, FPL-GTR-190, 2010, chapter 4: about 30 percent. */
const saturated = ratio(30n);

const moistureRefused = (x: Ratio): string | undefined =>
  saturated.lt(x) ? words.tooWet(x.sub(saturated) as Ratio) : undefined;

/** @param across how wide the top is across its grain */
export const reachAsk = ({ solid }: Job, part: string, across: Length): Ask => ({
  as: 'length',
  title: words.reachTitle,
  kind: 'place',
  now: solid[part]?.reach,
  refuse: (x) => lengthRefused(x) ?? placeRefused(across, words.backOfTop)(x),
  save: (reach) => editSolid(part, { reach }),
});

export const shankAsk = ({ solid }: Job, part: string): Ask => ({
  as: 'length',
  title: words.shankTitle,
  now: solid[part]?.shank,
  usual: usualSlot.shank,
  refuse: lengthRefused,
  save: (shank) => editSolid(part, { shank }),
});
