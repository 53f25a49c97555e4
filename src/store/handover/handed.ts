import type { Entry } from '../../job/entry';
import { type FileError, type JobFile, mostBytes, readJobFile, writeJobFile } from '../../job/file';
import { keyOf } from '../../job/log';
import { isId } from '../../job/paths';
import { err, ok, type Result } from '../../length/result';
import { beyond, type Known, knownIn, together } from './known';

/** Version of the text that carries changes alone. */
const changesVersion = 1;

/** What the changes stand on: by the phone that wrote it, up to which count, and how many entries that is. */
type Since = ReadonlyMap<string, readonly [upTo: number, entries: number]>;

/** What was handed over: a job, or the changes to one and what they stand on. */
type Handed = { readonly file: JobFile; readonly since?: Since };

export type HandedError =
  | FileError
  | { readonly code: 'not-changes' }
  | { readonly code: 'newer-changes'; readonly version: number }
  /** Changes to a job that is not here. */
  | { readonly code: 'job-missing' }
  /** Changes that follow others which are not here: how many at least. */
  | { readonly code: 'earlier-missing'; readonly entries: number };

/**
 * The changes to a job beyond what the other phone has, as text:
 * `{ "knifelineChanges": 1, "since": {"<device>": [<count>, <entries>]}, "file": <job file> }`. `since` lets that
 * phone see that it has what they stand on.
 *
 * @returns undefined when there are none
 */
export function writeChanges({ job, entries }: JobFile, known: Known): string | undefined {
  const fresh = beyond(entries, known);
  if (fresh.length === 0) return undefined;
  const since = JSON.stringify(Object.fromEntries(sinceOf(entries, known)));
  const file = writeJobFile({ job, entries: fresh });
  return `{\n"knifelineChanges": ${changesVersion},\n"since": ${since},\n"file": ${file}}\n`;
}

function sinceOf(entries: readonly Entry[], known: Known): Since {
  const held = (device: string, upTo: number) =>
    entries.filter((e) => e.device === device && e.count <= upTo).length;
  const rows = [...known].map(([device, upTo]) => [device, [upTo, held(device, upTo)]] as const);
  return new Map(rows.filter(([, [, count]]) => count > 0));
}

/** Reads a job file, or the changes to one. Nothing of a bad text is taken. */
export function readHanded(text: string): Result<Handed, HandedError> {
  if (!/^\s*\{\s*"knifelineChanges"/.test(text.slice(0, 200))) {
    const read = readJobFile(text);
    return read.ok ? ok({ file: read.value }) : read;
  }
  if (text.length > mostBytes) return err({ code: 'too-big', most: mostBytes });
  try {
    return readChanges(JSON.parse(text));
  } catch {
    return err({ code: 'not-json' });
  }
}

function readChanges(json: Readonly<Record<string, unknown>>): Result<Handed, HandedError> {
  const { knifelineChanges: version, since, file, ...rest } = json;
  if (typeof version === 'number' && version > changesVersion) return err({ code: 'newer-changes', version });
  const known = readSince(since);
  if (version !== changesVersion || Object.keys(rest).length > 0 || !known)
    return err({ code: 'not-changes' });
  const read = readJobFile(JSON.stringify(file) ?? '');
  return read.ok ? ok({ file: read.value, since: known }) : read;
}

function readSince(json: unknown): Since | undefined {
  if (typeof json !== 'object' || json === null || Array.isArray(json)) return undefined;
  const rows = Object.entries(json);
  const whole = (x: unknown): x is number => Number.isSafeInteger(x) && Number(x) > 0;
  const good = rows.every(
    ([device, row]) =>
      isId(device) && Array.isArray(row) && row.length === 2 && whole(row[0]) && whole(row[1]),
  );
  return good ? new Map(rows) : undefined;
}

/**
 * Lays changes over this phone's log, so that they are a whole job like any other; what they stand on must be here. A
 * whole job is returned as it is.
 *
 * @param ours this phone's log of the job; undefined when the job is not here
 */
export function standing(
  { file, since }: Handed,
  ours: readonly Entry[] | undefined,
): Result<JobFile, HandedError> {
  if (!since) return ok(file);
  if (!ours) return err({ code: 'job-missing' });
  const lacking = [...since].reduce((sum, [device, [upTo, entries]]) => {
    const here = ours.filter((e) => e.device === device && e.count <= upTo).length;
    return sum + Math.max(0, entries - here);
  }, 0);
  if (lacking > 0) return err({ code: 'earlier-missing', entries: lacking });
  const theirs = new Set(file.entries.map(keyOf));
  return ok({ job: file.job, entries: [...ours.filter((e) => !theirs.has(keyOf(e))), ...file.entries] });
}

/** What the phone that handed this over has of the job. */
export const knownBy = ({ file, since }: Handed): Known =>
  together(knownIn(file.entries), new Map([...(since ?? [])].map(([device, [upTo]]) => [device, upTo])));

/** JSON without its line ends and blanks: what goes into codes. */
export const compact = (json: string): string => JSON.stringify(JSON.parse(json));
