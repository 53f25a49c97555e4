import type { Entry } from '../job/entry';
import type { Aside } from '../job/rows';
import { type Row, rowKey } from './journal/row';
import { isOwn, nameKey } from './own-keys';
import { type Stamped, takeLater, type ValueStore } from './values';

/** What the journal holds and the database does not have yet: it is read as if it stood there. */
export type Ahead = {
  /** What came out of the journal, until the database has it; says whether nothing had been shown before. */
  readonly show: (rows: readonly Row[], how?: 'all') => boolean;
  /** What this page wrote into the journal alone. */
  readonly take: (rows: readonly Row[]) => void;
  /** The database is empty and everything is in here: nothing is asked of it until it is filled. */
  readonly all: () => boolean;
  readonly jobs: () => readonly string[];
  readonly log: (job: string) => readonly Entry[];
  readonly asides: () => readonly Aside[];
  /** Settings or figures of the shop by key, with when: the database may have a later word. */
  readonly values: (of: ValueStore) => ReadonlyMap<string, Stamped>;
  /** The database took a newer word of these. */
  readonly overtaken: (rows: readonly Row[]) => void;
  /** Goes up each time this page writes into one copy alone. */
  readonly turn: () => number;
  /** The journal did not take what the database took. */
  readonly missed: () => void;
  /** The database has it now, unless more was taken since that turn: then it stays until the next time. */
  readonly clear: (turn: number) => void;
  /** The database cannot be filled: what it has is read all the same, beside this. */
  readonly beside: () => void;
};

type Building = {
  log: Map<string, Map<string, Entry>>;
  aside: Map<string, Aside>;
  settings: Map<string, Stamped>;
  shop: Map<string, Stamped>;
};

const nothing = (): Building => ({
  log: new Map(),
  aside: new Map(),
  settings: new Map(),
  shop: new Map(),
});

function take(to: Building, row: Row): void {
  if (row[0] === 'log') {
    const own = to.log.get(row[1].job) ?? new Map<string, Entry>();
    to.log.set(row[1].job, own.set(rowKey(row[1]), row[1]));
  } else if (row[0] === 'aside') to.aside.set(JSON.stringify(row[1].row), row[1]);
  else if ((row[0] === 'settings' || row[0] === 'shop') && !isOwn(row[1]) && row[1] !== nameKey)
    takeLater(to[row[0]], row[1], { value: row[2], at: row[3] ?? '' });
}

export function makeAhead(): Ahead {
  let kept = nothing();
  let all = false;
  let turn = 0;
  const isEmpty = () => Object.values(kept).every(({ size }) => size === 0);
  const add = (rows: readonly Row[]) => {
    for (const row of rows) take(kept, row);
  };
  return {
    show: (rows, how) => {
      const first = isEmpty();
      add(rows);
      all ||= how === 'all';
      return first && !isEmpty();
    },
    take: (rows) => {
      add(rows);
      turn += 1;
    },
    all: () => all,
    jobs: () => [...kept.log.keys()],
    log: (job) => [...(kept.log.get(job)?.values() ?? [])],
    asides: () => [...kept.aside.values()],
    values: (of) => kept[of],
    overtaken: (rows) => {
      for (const row of rows) if (row[0] === 'settings' || row[0] === 'shop') kept[row[0]].delete(row[1]);
    },
    turn: () => turn,
    missed: () => {
      turn += 1;
    },
    clear: (since) => {
      all = false;
      if (since === turn) kept = nothing();
    },
    beside: () => {
      all = false;
    },
  };
}
