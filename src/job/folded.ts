import type { Entry, Json } from './entry';

export type TickState = { readonly figure: string; readonly at: string; readonly device: string };

/** One place of a job: everything written to it in order, and what of that still stands. */
type Place = { readonly trail: readonly Entry[]; readonly heads: readonly Entry[] };

/** A log folded. It grows in place: a tick on a long log costs one step, not the whole log. */
export type Folded = {
  /** Path → the value that stands. A value taken away is absent. */
  readonly values: ReadonlyMap<string, Json>;
  /** Operation → its tick; absent when not ticked. */
  readonly ticks: ReadonlyMap<string, TickState>;
  /** By path or operation. */
  readonly places: ReadonlyMap<string, Place>;
  /** Places where different readings stand beside each other. */
  readonly doubled: ReadonlySet<string>;
  /** By path of a tombstone: the last work on its thing that no tombstone had seen. The thing stands (M11). */
  readonly kept: ReadonlyMap<string, Entry>;
  /** Places that ever held a tombstone. */
  readonly goneAt: ReadonlySet<string>;
  /** The last entry folded; later entries can be added without folding again. */
  readonly last?: Entry;
};
