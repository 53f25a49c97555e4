/** A value of an edit: plain JSON. Lengths are exact strings, `47/64`. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

type Stamp = {
  readonly job: string;
  /** Random, made once per phone. */
  readonly device: string;
  /** One more than the greatest the device had seen in this job: orders the log whatever the clocks say. */
  readonly count: number;
  /** Wall clock, ISO 8601, for the eye only. */
  readonly at: string;
  /** `device.count` of the first entry of the same tap: undone together. */
  readonly act: string;
  /** What the tap did, in the user's words: names the undo. */
  readonly label: string;
  /** The act that this one takes back. */
  readonly undoes?: string;
};

/**
 * What a row of the log says, without its stamp.
 * - `edit`: a decided or measured value; path like `boards/k3f9/length`; `null` takes the value away.
 * - `tick`: an operation is done, and the figure it was done to (exact inches).
 * - `untick`: it is not.
 */
export type Change = (
  | { readonly kind: 'edit'; readonly path: string; readonly value: Json }
  | { readonly kind: 'tick'; readonly op: string; readonly figure: string }
  | { readonly kind: 'untick'; readonly op: string }
) & {
  /**
   * Keys of the heads of this place when the change was made: it replaces those and no others (M4). Entries of version
   * 1 have none (M13).
   */
  readonly over?: readonly string[];
};

/** A row of the log, as stored and as exported. Key: job, device, count. Never changed once written. */
export type Entry = Stamp & Change;
