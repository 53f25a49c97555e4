import { type ReadonlySignal, signal } from '@preact/signals';
import type { SaveError } from '../store/db';
import type { Change } from '../store/entry';
import type { NewAct } from '../store/store';

/** A change that could not be kept, and why: said to be unsaved until it is saved, done anew, or let go. */
export type Unsaved = { readonly act?: NewAct; readonly why: SaveError };

const targetOf = (change: Change): string => (change.kind === 'edit' ? change.path : change.op);

/** Whether a later act says something of everything the earlier one did: then that one is done with. */
function isOver(later: NewAct, { job, changes }: NewAct): boolean {
  const touched = new Set(later.changes.map(targetOf));
  return later.job === job && changes.every((change) => touched.has(targetOf(change)));
}

export type UnsavedBox = {
  readonly now: ReadonlySignal<Unsaved | undefined>;
  readonly failed: (why: SaveError, act?: NewAct) => void;
  /** An act was kept; another that was not stays said, until a person has it tried again or lets it go. */
  readonly saved: (act: NewAct) => void;
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
      if (!earlier || act === earlier || isOver(act, earlier)) now.value = undefined;
    },
    letGo: () => {
      now.value = undefined;
    },
  };
}
