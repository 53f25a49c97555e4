import type { Entry, Json } from './entry';
import { type Row, rowKey } from './journal/row';
import type { Aside } from './migrations';

type Values = ReadonlyMap<string, Json | undefined>;

/** What the journal holds and the database does not have yet: it is read as if it stood there. */
export type Ahead = {
  /** What came out of the journal, until the database has it; says whether nothing had been shown before. */
  readonly show: (rows: readonly Row[], how?: 'all') => boolean;
  /** What this page wrote into the journal alone. */
  readonly take: (rows: readonly Row[]) => void;
  /** The database is empty and everything is in here: nothing is asked of it until it is filled. */
  readonly all: () => boolean;
  readonly rows: () => readonly Row[];
  readonly jobs: () => ReadonlySet<string>;
  readonly log: (job: string) => readonly Entry[];
  readonly asides: () => readonly Aside[];
  /** Settings or figures of the shop by key; undefined is one taken away. */
  readonly values: (of: 'settings' | 'shop') => Values;
  /** The database took a newer word of these. */
  readonly overtaken: (rows: readonly Row[]) => void;
  /** Goes up each time this page writes into the journal alone. */
  readonly turn: () => number;
  /** The database has it now, unless more was taken since that turn: then it stays until the next time. */
  readonly clear: (turn: number) => void;
  /** The database cannot be filled: what it has is read all the same, beside this. */
  readonly beside: () => void;
};

const nameOf = (row: Row): string => {
  if (row[0] === 'log') return `log ${rowKey(row[1])}`;
  return row[0] === 'aside' ? `aside ${JSON.stringify(row[1].row)}` : `${row[0]} ${row[1]}`;
};

export function makeAhead(): Ahead {
  const rows = new Map<string, Row>();
  let all = false;
  let turn = 0;
  const add = (more: readonly Row[]) => {
    for (const row of more) rows.set(nameOf(row), row);
  };
  const entries = () => [...rows.values()].flatMap((row) => (row[0] === 'log' ? [row[1]] : []));
  return {
    show: (more, how) => {
      const first = rows.size === 0 && more.length > 0;
      add(more);
      all ||= how === 'all';
      return first;
    },
    take: (more) => {
      add(more);
      turn += 1;
    },
    all: () => all,
    rows: () => [...rows.values()],
    jobs: () => new Set(entries().map(({ job }) => job)),
    log: (job) => entries().filter((entry) => entry.job === job),
    asides: () => [...rows.values()].flatMap((row) => (row[0] === 'aside' ? [row[1]] : [])),
    values: (of) =>
      new Map(
        [...rows.values()].flatMap((row) => (row[0] === of ? [[row[1], row[2] ?? undefined] as const] : [])),
      ),
    overtaken: (newer) => {
      for (const row of newer) if (row[0] === 'settings' || row[0] === 'shop') rows.delete(nameOf(row));
    },
    turn: () => turn,
    clear: (since) => {
      all = false;
      if (since === turn) rows.clear();
    },
    beside: () => {
      all = false;
    },
  };
}
