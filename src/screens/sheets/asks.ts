import { editJob, editOwnName, editPart } from '../../job/edits';
import type { Job } from '../../job/job';
import { ratio } from '../../length/length';
import { unitsOf } from '../../length/tape';
import { sawsLike } from '../../plan/sheet-saws';
import type { OwnMachine, Shop } from '../../trade/machines/shop';
import type { LayNotes, Lies } from '../../trade/sheets/pieces';
import { usualSheets } from '../../trade/sheets/stock';
import type { Ask } from '../shared/ask';
import { ownName } from '../shared/machines/machine-names';
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

const sawTools = { guideSaw: 'circular', fenceSaw: 'fence' } as const;
type SawField = keyof typeof sawTools;

/** Which saws cut the sheets: asked only where the shop has some of its own. */
export const sawAsks = (job: Job, shop: Shop): readonly { readonly field: SawField; readonly ask: Ask }[] =>
  (['guideSaw', 'fenceSaw'] as const).flatMap((field) => {
    const own = sawsLike(shop, sawTools[field]);
    if (own.length === 0 || (field === 'fenceSaw' && job.guideOnly)) return [];
    return [{ field, ask: sawAsk(field, job[field], own) }];
  });

const sawAsk = (field: SawField, now: string | undefined, own: readonly OwnMachine[]): Ask => ({
  as: 'choice',
  title: words.sawTitle[field],
  now: own.some(({ id }) => id === now) ? (now ?? '') : '',
  choices: [
    { value: '', label: words.usualSaw[field] },
    ...own.map((one) => ({ value: one.id, label: ownName(one), hint: words.sawHint })),
  ],
  save: (id) => {
    const saw = own.find((one) => one.id === id);
    return [...editJob({ [field]: saw?.id }), ...(saw ? editOwnName(saw.id, saw.name) : [])];
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
