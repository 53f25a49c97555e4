import type { LabelSet } from '../../plan/label-plan';
import { counted } from '../shared/counted';
import { contents, place, setName } from '../shared/label-words';

export * from '../shared/label-words';

export const title = 'Labels';
export const toJob = 'Job';
export const share = 'Share or save as text';
export const fileName = 'Labels';
export const none =
  'No drawers, trays or loaded shelves to label yet. Say what goes in, and the labels write themselves.';
export const withoutPlace = (n: number): string =>
  `${counted(n, 'lot goes', 'lots go')} nowhere yet and ${n === 1 ? 'has' : 'have'} no label.`;
export const shared = { shared: 'Shared.', saved: 'Saved as a file.', left: '' } as const;

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
