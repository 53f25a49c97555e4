import type { Json } from '../job/entry';

/** What this phone remembers of its copies. Kept among the settings; no copy carries it. */
export type Copied = {
  /** Changes since everything was last copied out. */
  readonly since: number;
  /** Reminded from this many on. */
  readonly remindAt: number;
  /** When everything was last copied out, ISO 8601. */
  readonly at?: string;
  /** A job has been finished: that one reminder has been had. */
  readonly finished?: true;
};

/** Changes between two reminders. Common practice, no source. */
export const between = 200;

const count = (json: Json | undefined): number | undefined =>
  typeof json === 'number' && Number.isSafeInteger(json) && json >= 0 ? json : undefined;

/** As kept, checked: what is not readable starts anew. */
export function readCopied(json: Json | undefined): Copied {
  if (typeof json !== 'object' || json === null || Array.isArray(json))
    return { since: 0, remindAt: between };
  const { since, remindAt, at, finished } = json as { readonly [key: string]: Json };
  return {
    since: count(since) ?? 0,
    remindAt: count(remindAt) ?? between,
    ...(typeof at === 'string' ? { at } : {}),
    ...(finished === true ? { finished } : {}),
  };
}

export const isDue = ({ since, remindAt }: Copied): boolean => since >= remindAt;

/** The reminder put off: it comes again after as many changes. */
export const putOff = (copied: Copied): Copied => ({ ...copied, remindAt: copied.since + between });

/** Copied out at a moment: nothing has changed since, and nothing is due. */
export const copiedOut = ({ finished }: Copied, at: string): Copied => ({
  since: 0,
  remindAt: between,
  at,
  ...(finished ? { finished } : {}),
});

/** A job is finished: the first time, a copy is due at once. */
export const finishedOne = (copied: Copied): Copied =>
  copied.finished ? copied : { ...copied, finished: true, remindAt: Math.min(copied.since, copied.remindAt) };
