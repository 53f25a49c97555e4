import { err, ok, type Result } from '../length/result';
import { canonical } from './canonical';
import type { Entry } from './entry';
import { inOrder, keyOf } from './log';
import { type Aside, readEntry } from './rows';

/** Newest version of the job file this app writes and reads; since 2 entries have `over`. */
const fileVersion = 2;
/** A log without any `over` is written as version 1, which an older app can still read. */
const versionOf = (entries: readonly Entry[]): number =>
  entries.some((entry) => entry.over !== undefined) ? fileVersion : 1;
/** Room for the longest log that is taken: what goes out must come back in. Characters. */
export const mostBytes = 64 * 1024 * 1024;
const mostEntries = 200_000;
/** Widest gap between counts, far wider than any in a real log: a leap would use up the counts later entries need. */
const widestGap = 1_000_000;

export type JobFile = { readonly job: string; readonly entries: readonly Entry[] };

export type FileError =
  | { readonly code: 'too-big'; readonly most: number }
  | { readonly code: 'not-json' }
  | { readonly code: 'not-a-job-file' }
  | { readonly code: 'newer-file'; readonly version: number }
  | { readonly code: 'too-many-entries'; readonly most: number }
  | { readonly code: 'bad-entry'; readonly at: number; readonly why: string }
  | { readonly code: 'empty' };

/**
 * A job as one readable file:
 * `{ "knifeline": 2, "job": "<id>", "entries": [ ... ] }`, one entry a line, in log order; lengths as exact text.
 */
export function writeJobFile({ job, entries }: JobFile): string {
  const lines = [...entries].sort(inOrder).map((entry) => `    ${JSON.stringify(inFileOrder(entry))}`);
  return `{\n  "knifeline": ${versionOf(entries)},\n  "job": ${JSON.stringify(job)},\n  "entries": [\n${lines.join(',\n')}\n  ]\n}\n`;
}

const keys = [
  'job',
  'device',
  'count',
  'at',
  'act',
  'label',
  'undoes',
  'kind',
  'path',
  'value',
  'op',
  'figure',
  'over',
];

/** The entry with its keys as a reader expects them: the same log is the same file on every phone. */
const inFileOrder = (entry: Entry): object =>
  Object.fromEntries(
    keys.flatMap((key) => (key in entry ? [[key, (entry as Record<string, unknown>)[key]]] : [])),
  );

/** Reads a job file whole, or says what is wrong and where. Nothing of a bad file is taken. */
export function readJobFile(text: string): Result<JobFile, FileError> {
  if (text.length > mostBytes) return err({ code: 'too-big', most: mostBytes });
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return err({ code: 'not-json' });
  }
  return readParsed(json);
}

function readParsed(json: unknown): Result<JobFile, FileError> {
  if (typeof json !== 'object' || json === null || Array.isArray(json))
    return err({ code: 'not-a-job-file' });
  const { knifeline, job, entries, ...rest } = json as Record<string, unknown>;
  if (typeof knifeline === 'number' && knifeline > fileVersion)
    return err({ code: 'newer-file', version: knifeline });
  const known = (knifeline === 1 || knifeline === fileVersion) && Object.keys(rest).length === 0;
  if (!known || typeof job !== 'string' || !Array.isArray(entries)) return err({ code: 'not-a-job-file' });
  if (entries.length > mostEntries) return err({ code: 'too-many-entries', most: mostEntries });
  if (entries.length === 0) return err({ code: 'empty' });
  const read = readEntries(job, entries);
  return read.ok && knifeline === 1 ? plain(read.value) : read;
}

/** A file of version 1, which knows no `over`. */
function plain(file: JobFile): Result<JobFile, FileError> {
  const at = file.entries.findIndex((entry) => entry.over !== undefined);
  return at < 0 ? ok(file) : err({ code: 'bad-entry', at, why: 'over: not of this version' });
}

function readEntries(job: string, rows: readonly unknown[]): Result<JobFile, FileError> {
  const seen = new Set<string>();
  const entries: Entry[] = [];
  for (const [at, row] of rows.entries()) {
    const read = readEntry(row);
    if (!('entry' in read)) return err({ code: 'bad-entry', at, why: read.why });
    const { entry } = read;
    if (entry.job !== job) return err({ code: 'bad-entry', at, why: 'belongs to another job' });
    if (seen.has(keyOf(entry))) return err({ code: 'bad-entry', at, why: 'stands in the file twice' });
    seen.add(keyOf(entry));
    entries.push(entry);
  }
  const sorted = [...entries].sort(inOrder);
  const leap = sorted.find((entry, k) => entry.count - (sorted[k - 1]?.count ?? 0) > widestGap);
  return leap
    ? err({ code: 'bad-entry', at: entries.indexOf(leap), why: 'count: leaps far ahead of the others' })
    : ok({ job, entries: sorted });
}

export type Comparison = {
  readonly fresh: readonly Entry[];
  readonly same: number;
  /** Same key, other content: ours stay, theirs are set aside (M3). */
  readonly differing: readonly Entry[];
};

/** What a file holds that we do not have. */
export function compareWith(ours: readonly Entry[], theirs: readonly Entry[]): Comparison {
  const have = new Map(ours.map((e) => [keyOf(e), canonical(e)]));
  const fresh = theirs.filter((e) => !have.has(keyOf(e)));
  const differing = theirs.filter((e) => have.has(keyOf(e)) && have.get(keyOf(e)) !== canonical(e));
  return { fresh, differing, same: theirs.length - fresh.length - differing.length };
}

/** Entries that differ from ours, for the set-aside. */
export const asideOf = (entries: readonly Entry[]): readonly Aside[] =>
  entries.map((row) => ({ from: row.job, why: 'differs from the one kept here', row }));
