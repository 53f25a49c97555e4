import { editJob, editPart } from '../../job/edits';
import type { Job } from '../../job/job';
import { ratio } from '../../length/length';
import { unitsOf } from '../../length/tape';
import type { LayNotes, Lies } from '../../trade/sheets/pieces';
import { usualSheets } from '../../trade/sheets/stock';
import type { Ask } from '../shared/ask';
import { inMeasure } from '../shared/pounds';
import { weightRefused } from '../shared/refused-words';
import * as words from './words';

/** What is asked of how a pool is cut, by the name of its blank. */
export const cuttingAsks = (job: Job, stick: boolean): Readonly<Record<string, Ask>> => ({
  over: {
    as: 'length',
    title: words.overTitle(stick),
    now: stick ? job.overStick : job.over,
    usual: usualSheets(unitsOf(job.tape))[stick ? 'overStick' : 'over'],
    save: (value) => editJob(stick ? { overStick: value } : { over: value }),
  },
  carry: inMeasure('weight', {
    as: 'amount',
    title: words.carryTitle,
    now: job.carry,
    usual: ratio(BigInt(usualSheets('in').carry)),
    refuse: weightRefused,
    save: (value) => editJob({ carry: value }),
  }),
  guide: {
    as: 'choice',
    title: words.guideTitle,
    now: job.guideOnly ? 'guide' : 'both',
    choices: words.guides,
    save: (value) => editJob({ guideOnly: value === 'guide' }),
  },
});

/** How the grain of a part runs. @param part its id, and its name */
export const liesAsk = (part: string, name: string, now: Lies): Ask => ({
  as: 'choice',
  title: words.grainTitle(name),
  now,
  choices: (['along', 'across', 'free'] as const).map((value) => ({
    value,
    label: words.liesWords[value],
  })),
  save: (lies) => editPart(part, { lies: lies as Lies }),
});

const letters = ['A', 'B', 'C', 'D'] as const;

/** Which parts a part shares a sheet with. */
export const shareAsk = (part: string, name: string, { share }: LayNotes): Ask => ({
  as: 'choice',
  title: words.shareTitle(name),
  now: share ?? '',
  choices: [...words.shares, ...letters.map(words.shareLetter)],
  save: (value) =>
    editPart(part, { share: letters.find((l) => l === value) ?? (value === 'anywhere' ? value : undefined) }),
});
