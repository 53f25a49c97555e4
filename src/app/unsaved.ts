import { type ReadonlySignal, signal } from '@preact/signals';
import type { SaveError } from '../store/db';
import type { Change } from '../store/entry';
import type { NewAct } from '../store/store';

/** A change that could not be kept, and why: said to be unsaved until it is saved, done anew, or let go. */
export type Unsaved = { readonly act?: NewAct; readonly why: SaveError };

const targetOf = (change: Change): string => (change.kind === 'edit' ? change.path : change.op);

/** Whether a later act says something else of the same thing: then the earlier one is done with. */
function isOver(later: NewAct, { job, changes }: NewAct): boolean {
  const touched = new Set(later.changes.map(targetOf));
  return later.job === job && changes.some((change) => touched.has(targetOf(change)));
}

export type UnsavedBox = {
  readonly now: ReadonlySignal<Unsaved | undefined>;
  readonly failed: (why: SaveError, act?: NewAct) => void;
  /** Something was kept: `next` is what may now be tried again. */
  readonly saved: (act?: NewAct) => { readonly next: NewAct | undefined };
  readonly letGo: () => void;
};

export function makeUnsaved(): UnsavedBox {
  const now = signal<Unsaved | undefined>(undefined);
  return {
    now,
    failed: (why, act) => {
      const earlier = act ?? now.value?.act;
      now.value = earlier ? { act: earlier, why } : { why };
    },
    saved: (act) => {
      const earlier = now.value?.act;
      now.value = undefined;
      return { next: earlier && !(act && (act === earlier || isOver(act, earlier))) ? earlier : undefined };
    },
    letGo: () => {
      now.value = undefined;
    },
  };
}
