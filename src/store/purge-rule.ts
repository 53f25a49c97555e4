/** A moment of this phone: the day by its clock (days since 1970), and how many entries all its logs hold. */
type Mark = readonly [day: number, entries: number];

/** What starts have seen so far; kept as JSON. */
export type Watch = {
  /** Days on which the app was started, growing: each by the clock of that start. */
  readonly days: readonly number[];
  /** Of each deletion, the mark of the first start that saw it. */
  readonly seen: Readonly<Record<string, Mark>>;
};

/** Two starts that follow each other prove no more days than this, however far apart their clocks say they are. */
const most = 7;
/** A deleted job comes back for 30 days; a week of those proved may be one false leap. */
const least = 30 + most;
/** So many entries must have been written on the phone since. */
const written = 20;
/** Days kept: more than enough of them to prove what is asked. */
const longest = 60;

const none: Watch = { days: [], seen: {} };

/** What was kept of it; anything else begins anew, which purges later and never earlier. */
export function readWatch(kept: unknown): Watch {
  const { days, seen } = (typeof kept === 'object' && kept !== null ? kept : none) as Partial<Watch>;
  const isMark = (mark: unknown) => areNumbers(mark) && mark.length === 2;
  const good = areNumbers(days) && typeof seen === 'object' && seen !== null;
  return good && Object.values(seen).every(isMark) ? { days, seen } : none;
}

const areNumbers = (list: unknown): list is readonly number[] =>
  Array.isArray(list) && list.every((n) => Number.isFinite(n));

/**
 * One more start looks at the deletions that stand. A clock is believed only as far as later starts bear it out: the
 * reading of this start counts at the next on a later day, one that a later start goes back behind is dropped, and a
 * leap forward counts as a week. So it takes eight starts or more, on days that go forward, and work in between; one
 * wild clock makes it no earlier than 30 days.
 *
 * @param now this start's day, and the entries the phone holds
 * @param deletions a name for each; one deleted again, or worked on since, has another name
 * @returns what is kept for the next start, and the deletions that are old enough
 */
export function watched(
  before: Watch,
  now: Mark,
  deletions: readonly string[],
): { readonly watch: Watch; readonly due: readonly string[] } {
  const [today, entries] = now;
  const seen: Readonly<Record<string, Mark>> = Object.fromEntries(
    deletions.map((name): [string, Mark] => {
      const [day, had] = Object.hasOwn(before.seen, name) ? (before.seen[name] ?? now) : now;
      return [name, [Math.min(day, today), Math.min(had, entries)]];
    }),
  );
  const first = Math.min(...Object.values(seen).map(([day]) => day));
  const days = [...before.days.filter((day) => day < today && day >= first), today].slice(-longest);
  const isDue = ([since, had]: Mark) => proved(days.slice(0, -1), since) >= least && entries - had >= written;
  return { watch: { days, seen }, due: deletions.filter((name) => isDue(seen[name] ?? now)) };
}

/** Days proved to lie behind since a day. */
const proved = (days: readonly number[], since: number): number =>
  days
    .filter((day) => day >= since)
    .reduce((sum, day, k, all) => sum + Math.min(day - (all[k - 1] ?? day), most), 0);
