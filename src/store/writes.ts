import { canonical } from '../job/canonical';
import type { Change, Entry } from '../job/entry';
import { fold, over } from '../job/log';
import { readEntry } from '../job/rows';
import { takesAway } from '../job/tombstones';
import { err, ok, type Result } from '../length/result';
import type { Database, SaveError } from './db';
import {
  greatestCount,
  keptRows,
  type Reading,
  readingLog,
  rowOf,
  rowsAt,
  unpacked,
  writingLog,
} from './log-rows';
import { readable } from './reads';
import { sent, whole } from './whole';

export type NewAct = {
  readonly job: string;
  readonly label: string;
  /** A change that does not say what it is over is over what stands on the phone when it is written. */
  readonly changes: readonly Change[];
  readonly undoes?: string;
};

type Writer = { readonly device: string; readonly now: () => string };

type Trying = {
  readonly act: NewAct;
  /** What was written of it before, when that broke off unheard: it may have been kept after all. */
  readonly tried: (readonly Entry[])[];
  /** Greatest count the page has seen of the job: an emptied database begins no count anew. */
  readonly after: number;
  /** Its entries, where the journal may have them already. */
  readonly made?: readonly Entry[] | undefined;
};

/**
 * Writes an act. Its counts are taken inside the transaction, and the database runs one such transaction at a time,
 * so two pages never take the same. A full disk shows only when the transaction ends: nothing counts before that.
 */
export async function writeAct(
  db: Database,
  writer: Writer,
  { act, tried, after, made: before }: Trying,
): Promise<Result<readonly Entry[], SaveError>> {
  const tx = writingLog(db, 'jobs');
  const jobs = tx.objectStore('jobs');
  return whole(tx, async () => {
    const known = await jobs.getKey(act.job);
    // only after the first answer is it this write's turn: what was tried before has ended by then
    for (const one of before ? [...tried, before] : tried) if (await isThere(tx, one)) return ok(one);
    const there = await greatestCount(tx, act.job);
    const changes = await sayingOver(tx, act);
    const made = before ? ok(before) : prepareAct(writer, { ...act, changes }, Math.max(there, after));
    if (!made.ok) return made;
    tried.push(made.value);
    if (known === undefined) sent(jobs.add({ id: act.job, made: made.value[0]?.at ?? writer.now() }));
    for (const entry of made.value) sent(tx.objectStore('entries').add(entry));
    return made;
  });
}

/** What of several tries was kept after all; undefined when none was. */
export async function keptOfTries(
  db: Database,
  tried: readonly (readonly Entry[])[],
): Promise<readonly Entry[] | undefined> {
  const tx = readingLog(db);
  for (const entries of tried) if (await isThere(tx, entries)) return entries;
  return undefined;
}

/** An act is kept whole or not at all: its first entry tells. */
async function isThere(tx: Reading, [first]: readonly Entry[]): Promise<boolean> {
  if (!first) return false;
  const found = await rowOf(tx, first);
  return found !== undefined && canonical(found) === canonical(first);
}

/**
 * The entries of an act that follow a count, or why they would not read back: such are refused now, not set aside
 * later.
 */
export function prepareAct(
  { device, now }: Writer,
  act: NewAct,
  count: number,
): Result<readonly Entry[], SaveError> {
  const entries = stamped(act, { device, at: now(), count });
  const why = misfit(entries);
  return why === undefined ? ok(entries) : err({ code: 'failed', name: why });
}

const sayingOver = (tx: Reading, { job, changes }: NewAct): Promise<readonly Change[]> =>
  Promise.all(
    changes.map(async (change) => {
      if (change.over !== undefined) return change;
      const rows =
        change.kind === 'edit' && !takesAway(change)
          ? await rowsAt(tx, job, change.path)
          : unpacked(await keptRows(tx, job));
      return over(fold(readable(rows)), [change])[0] ?? change;
    }),
  );

type Place = { readonly device: string; readonly at: string; readonly count: number };

function stamped(act: NewAct, { device, at, count }: Place): readonly Entry[] {
  const { job, label } = act;
  const undoes = act.undoes === undefined ? {} : { undoes: act.undoes };
  const stamp = { job, device, at, act: `${device}.${count + 1}`, label, ...undoes };
  return act.changes.map((change, k) => ({ ...stamp, count: count + 1 + k, ...change }));
}

/** Why an entry would not read back. */
function misfit(entries: readonly Entry[]): string | undefined {
  for (const entry of entries) {
    const read = readEntry(entry);
    if ('why' in read) return read.why;
  }
  return undefined;
}
