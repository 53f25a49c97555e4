import { edits, type Patch } from './edits';
import type { Job } from './job';
import { printFields } from './print-fields';
import { children, pick } from './tree';

type Print = ReturnType<typeof pick<typeof printFields>>;

/** The key what is printed on is kept under. Stored: the spelling is never changed. */
export const onAll = 'all';
export const onLists = 'lists';
export const onLabels = 'labels';

/** What is kept of a print: of all (`all`), or of a stick by its key. */
export function printOf({ tree }: Pick<Job, 'tree'>, key: string): Print {
  const own = children(tree, 'prints').find(([id]) => id === key)?.[1];
  return own ? pick(printFields, own) : {};
}

export const editPrint = (key: string, patch: Patch<typeof printFields>) =>
  edits(`prints/${key}/`, printFields, patch);
