/**
 * Deleted jobs that were found past their time: at starts on which days by the clock, and how many entries the phone held
 * when the first of them was. By job.
 */
export type Due = Readonly<Record<string, { readonly days: readonly string[]; readonly entries: number }>>;

/** So many starts on so many days, each later than the one before, must find a job past its time. */
const mostDays = 3;
/** And so much must have been done on the phone between the first and the last of them. */
const leastDone = 10;

type Start = {
  /** The day by the clock, `2026-11-29`. */
  readonly day: string;
  /** How many entries the phone holds, of all jobs. */
  readonly entries: number;
  /** Jobs that are past their time by that clock. */
  readonly past: readonly string[];
};

/**
 * What a start makes of deleted jobs: a clock is never believed by itself. One that is wrong once, or set back and forth, throws
 * nothing away: a start that does not find a job past its time begins anew with it, and so does a day that is not later.
 *
 * @example dueNow({}, { day: '2027-01-08', entries: 40, past: ['j1'] }).gone // []
 */
export function dueNow(
  due: Due,
  { day, entries, past }: Start,
): { readonly due: Due; readonly gone: readonly string[] } {
  const found = past.map((job) => {
    const before = due[job];
    const last = before?.days[before.days.length - 1] ?? '';
    if (!before || day < last) return [job, { days: [day], entries }] as const;
    return [job, { ...before, days: day === last ? before.days : [...before.days, day] }] as const;
  });
  const isGone = ({ days, entries: first }: Due[string]): boolean =>
    days.length >= mostDays && entries >= first + leastDone;
  return {
    due: Object.fromEntries(found.filter(([, one]) => !isGone(one))),
    gone: found.flatMap(([job, one]) => (isGone(one) ? [job] : [])),
  };
}

/** As it was kept; anything else is none. */
export function readDue(kept: unknown): Due {
  if (typeof kept !== 'object' || kept === null) return {};
  const sound = Object.entries(kept).flatMap(([job, one]) => {
    const { days, entries } = (one ?? {}) as Record<string, unknown>;
    const isSound =
      Array.isArray(days) && days.every((day) => typeof day === 'string') && typeof entries === 'number';
    return isSound ? [[job, { days, entries }] as const] : [];
  });
  return Object.fromEntries(sound);
}
