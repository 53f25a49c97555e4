import type { Json } from '../job/entry';

/**
 * Many entries of one job in one row of the database. Nothing in it ever changes. Its key `[job, no, size]` tells how
 * many they are without reading them.
 */
export type Pack = {
  readonly job: string;
  readonly no: number;
  readonly size: number;
  /** Least and greatest count. */
  readonly from: number;
  readonly to: number;
  /** Its `Columns` as JSON. */
  readonly text: string;
};

/** Texts, each once, and which of them each entry has. */
export type Table = readonly [texts: readonly string[], which: readonly number[]];

export type Columns = {
  readonly device: Table;
  readonly count: readonly number[];
  readonly at: Table;
  readonly label: Table;
  /** 0 where the act begins with the entry; else its name. */
  readonly act: readonly (string | 0)[];
  /** Index in `kinds`. */
  readonly kind: readonly number[];
  /** Path or operation. */
  readonly place: Table;
  /** Value of an edit, figure of a tick. */
  readonly said: readonly Json[];
  /** 0 where there is none. */
  readonly over: readonly (readonly string[] | 0)[];
  readonly undoes: readonly (string | 0)[];
};

export const kinds = ['edit', 'tick', 'untick'] as const;

/** The rows of a pack, to be read like any other row; undefined where it holds no columns of its size. */
export function rowsIn({ job, size, text }: Pack): readonly unknown[] | undefined {
  try {
    const columns = JSON.parse(text) as Columns;
    return isWhole(columns, size)
      ? Array.from({ length: size }, (_, k) => rowAt(job, columns, k))
      : undefined;
  } catch {
    return undefined;
  }
}

const isWhole = ({ device, at, label, place, ...lists }: Columns, size: number): boolean =>
  [device[1], at[1], label[1], place[1], ...Object.values(lists)].every((list) => list.length === size);

const inTable = ([texts, which]: Table, k: number): string | undefined => texts[which[k] ?? -1];

function rowAt(job: string, columns: Columns, k: number): unknown {
  const device = inTable(columns.device, k);
  const count = columns.count[k];
  const at = inTable(columns.at, k);
  const act = columns.act[k] || `${device}.${count}`;
  const label = inTable(columns.label, k);
  const place = inTable(columns.place, k);
  const kind = kinds[columns.kind[k] ?? -1];
  const said = columns.said[k];
  const over = columns.over[k];
  const undoes = columns.undoes[k];
  const row: Record<string, unknown> =
    kind === 'edit'
      ? { job, device, count, at, act, label, kind, path: place, value: said }
      : kind === 'tick'
        ? { job, device, count, at, act, label, kind, op: place, figure: said }
        : { job, device, count, at, act, label, kind, op: place };
  if (over !== 0) row.over = over;
  if (undoes !== 0) row.undoes = undoes;
  return row;
}
