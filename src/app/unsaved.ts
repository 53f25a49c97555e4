import { type ReadonlySignal, signal } from '@preact/signals';
import type { Change, Entry } from '../job/entry';
import type { SaveError } from '../store/db';
import type { NewAct } from '../store/store';
import { prepareAct } from '../store/writes';
import { randomId } from './random';

/** A change that could not be kept, and why: it is named until it is saved, done anew, or let go. */
type Unsaved = {
  /** None of a value: its key names it. */
  readonly label?: string;
  readonly why: SaveError;
  /** Of a job; else a figure or a setting of the phone, by its key. */
  readonly act?: NewAct;
  readonly key?: string;
  /** Keeps it after all; says whether it is kept. */
  readonly again: () => Promise<boolean>;
};

const targetOf = (change: Change): string => (change.kind === 'edit' ? change.path : change.op);

/** Whether a later act says something of everything the earlier one did: then that one is done with. */
function isOver(later: NewAct, { job, changes }: NewAct): boolean {
  const touched = new Set(later.changes.map(targetOf));
  return later.job === job && changes.every((change) => touched.has(targetOf(change)));
}

export type UnsavedBox = {
  /** Everything that was refused and waits, in the order it was done. */
  readonly now: ReadonlySignal<readonly Unsaved[]>;
  readonly failed: (one: Unsaved) => void;
  /** An act, or the value of a key, was kept: what it says anew waits no more. */
  readonly saved: (kept: { readonly act: NewAct } | { readonly key: string }) => void;
  /** Tries all of it again, in order. What was not done by an act alone may only be let go. */
  readonly tryAgain: () => Promise<void>;
  readonly letGo: () => void;
  /** Notes what was asked for by a tap and not by an act: tried again, the same is done anew. */
  readonly noteTrouble: (label: string, why: SaveError, again: () => Promise<void>) => void;
  /** What was refused of a job, for its file: under a name of its own, since saved later it has another place. */
  readonly entriesOf: (job: string, last: number) => readonly Entry[];
};

export function makeUnsaved(): UnsavedBox {
  const now = signal<readonly Unsaved[]>([]);
  const failed = (one: Unsaved): void => {
    const same = ({ act, key }: Unsaved): boolean => act === one.act && key === one.key;
    now.value = now.value.some(same) ? now.value.map((w) => (same(w) ? one : w)) : [...now.value, one];
  };
  return {
    now,
    failed,
    saved: (kept) => {
      const done = ({ act, key }: Unsaved): boolean =>
        'key' in kept ? key === kept.key : act !== undefined && (act === kept.act || isOver(kept.act, act));
      if (now.value.some(done)) now.value = now.value.filter((one) => !done(one));
    },
    tryAgain: async () => {
      for (const one of now.value) if (!(await one.again())) return;
    },
    letGo: () => {
      now.value = [];
    },
    noteTrouble: (label, why, again) =>
      failed({
        label,
        why,
        key: label,
        again: async () => {
          now.value = now.value.filter(({ key }) => key !== label);
          await again();
          return now.value.every(({ key }) => key !== label);
        },
      }),
    entriesOf: (job, last) => entriesOf(now.value, job, last),
  };
}

function entriesOf(all: readonly Unsaved[], job: string, last: number): readonly Entry[] {
  const writer = { device: randomId(), now: () => new Date().toISOString() };
  const made: Entry[] = [];
  for (const { act } of all) {
    const more = act?.job === job ? prepareAct(writer, act, last + made.length) : undefined;
    if (more?.ok) made.push(...more.value);
  }
  return made;
}
