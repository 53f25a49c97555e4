import type { Lot } from '../../job/loads';
import type { Label, LabelSet } from '../../plan/label-plan';
import { counted } from '../shared/counted';
import { partWord } from '../shared/part-words';

export const title = 'Labels';
export const toJob = 'Job';
export const empty = 'empty';
export const share = 'Share or save as text';
export const fileName = 'Labels';
export const none =
  'No drawers, trays or loaded shelves to label yet. Say what goes in, and the labels write themselves.';
export const withoutPlace = (n: number): string =>
  `${counted(n, 'lot goes', 'lots go')} nowhere yet and ${n === 1 ? 'has' : 'have'} no label.`;
export const shared = { shared: 'Shared.', saved: 'Saved as a file.', left: '' } as const;

export const setName = ({ named }: LabelSet): string => named || 'Drawers';

/** What stands on a label first. */
export const place = (label: Label): string =>
  label.on === 'drawer' ? partWord({ role: 'drawer', ...label.place }) : partWord(label.name, label.copy);

const lot = ({ name, count }: Lot): string => `${name || 'Thing'}${count > 1 ? ` × ${count}` : ''}`;

export const contents = ({ things }: Label): string =>
  things.length > 0 ? things.map(lot).join(', ') : empty;

/** All labels of a job as plain text, one a line. */
export const asText = (job: string, sets: readonly LabelSet[]): string =>
  [
    job || 'Job',
    ...sets.flatMap((set) => [
      '',
      setName(set),
      ...set.labels.map((label) => `${place(label)}: ${contents(label)}`),
    ]),
    '',
  ].join('\n');
