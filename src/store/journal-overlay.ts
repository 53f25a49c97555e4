import type { Entry } from '../job/entry';
import type { Aside } from '../job/rows';
import { type Row, rowKey } from './journal/row';
import { isOwn, nameKey } from './own-keys';
import { type Stamped, takeLater, type ValueStore } from './values';

/** The overlay: rows the journal has and the database lacks, read as if they stood in the database (D6). */
export type Ahead = {
  /** Adds rows read from the journal. True when they are the first in the overlay. */
  readonly show: (rows: readonly Row[], how?: 'all') => boolean;
  /** Adds rows this page wrote into the journal alone. */
  readonly take: (rows: readonly Row[]) => void;
  /** Whether the overlay has everything, the database being empty: it is not read until it is filled. */
  readonly all: () => boolean;
  readonly jobs: () => readonly string[];
  readonly log: (job: string) => readonly Entry[];
  readonly asides: () => readonly Aside[];
  /** Settings or figures of the shop by key, each with its moment: the database may have a later one. */
  readonly values: (of: ValueStore) => ReadonlyMap<string, Stamped>;
  /** Drops settings and figures of which the database took newer values. */
  readonly overtaken: (rows: readonly Row[]) => void;
  /** How often this page wrote into one copy alone. */
  readonly turn: () => number;
  /** Counts a write that the journal did not take. */
  readonly missed: () => void;
  /** Empties the overlay once the database has its rows, unless more were taken since that turn. */
  readonly clear: (turn: number) => void;
  /** The database could not be filled: it is read all the same, with the overlay. */
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
