import { editLift } from '../../job/edits';
import type { Job } from '../../job/job';
import type { LiftNotes } from '../../job/loads';
import type { Ratio } from '../../length/length';
import { ratio } from '../../length/length';
import type { Liftable } from '../../plan/lift-check';
import type { Case } from '../../trade/carcass/case';
import type { Grip } from '../../trade/loads/lift';
import type { Ask } from '../shared/ask';
import { inMeasure, weight } from '../shared/pounds';
import { overWeight, turnRefused } from '../shared/refused-words';
import * as words from './lift-words';

/** What is kept of how a case is lifted, and whose it is. */
type At = { readonly of: string; readonly notes: LiftNotes };

export const restAsk = ({ of, notes }: At): Ask =>
  inMeasure('weight', {
    as: 'amount',
    title: words.restTitle,
    now: notes.rest,
    refuse: overWeight,
    save: (rest) => editLift(of, { rest }),
  });

/** The case it stands on: any other of the job. */
export const onAsk = ({ of, notes }: At, { cases }: Job): Ask => ({
  as: 'choice',
  title: words.onTitle,
  now: notes.on ?? '',
  choices: [
    { value: '', label: words.floor },
    ...cases.filter(({ id }) => id !== of).map((c: Case) => ({ value: c.id, label: c.name || 'Case' })),
  ],
  save: (on) => editLift(of, { on: on || undefined }),
});

export const whatAsk = (
  { of, notes }: At,
  loads: readonly (Liftable & { readonly name: string })[],
): Ask => ({
  as: 'choice',
  title: words.whatTitle,
  now: notes.what ?? 'case',
  choices: loads.map(({ id, name, pounds: heavy }) => ({ value: id, label: name, hint: weight(heavy) })),
  save: (what) => editLift(of, { what }),
});

export const handsAsk = ({ of, notes }: At, field: keyof typeof words.lengths): Ask => ({
  as: 'length',
  title: words.lengths[field],
  kind: 'place',
  now: notes[field],
  save: (value) => editLift(of, { [field]: value }),
});

/** Nothing said is faced, not turned to. */
export const turnAsk = ({ of, notes }: At, field: keyof typeof words.turns): Ask => ({
  as: 'amount',
  title: words.turns[field],
  unit: words.degrees,
  now: notes[field],
  usual: ratio(0n) as Ratio,
  refuse: turnRefused,
  save: (value) => editLift(of, { [field]: value }),
});

const grips = ['good', 'fair', 'poor'] as const satisfies readonly Grip[];

export const gripAsk = ({ of, notes }: At): Ask => ({
  as: 'choice',
  title: words.gripTitle,
  now: notes.grip ?? '',
  choices: (['', ...grips] as const).map((value) => ({ value, ...words.grips[value] })),
  save: (grip) => editLift(of, { grip: grips.find((x) => x === grip) }),
});

export const carefulAsk = ({ of, notes }: At): Ask => ({
  as: 'choice',
  title: words.carefulTitle,
  now: notes.careful ? 'careful' : 'down',
  choices: (['down', 'careful'] as const).map((value) => ({ value, ...words.puts[value] })),
  save: (how) => editLift(of, { careful: how === 'careful' }),
});
