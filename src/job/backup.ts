import { err, ok, type Result } from '../length/result';
import { fromStored, toStored } from '../length/stored';
import type { Shop, ShopField } from '../trade/machines/shop';
import type { Json } from './entry';
import { type FileError, type JobFile, readJobFile, writeJobFile } from './file';

/** Version of the copy of everything this app writes and reads. The jobs inside carry the version of a job file. */
export const backupVersion = 1;
/** Most characters a copy may have: what goes out must come back in, and a phone must be able to hold it. */
export const mostInBackup = 256 * 1024 * 1024;
const mostJobs = 2000;

/** Settings that are worth carrying to another phone: not which phone it is, nor where it stood. */
export const likings = ['theme', 'hand', 'text', 'tape', 'calipers', 'lists', 'figure'] as const;
export type Liking = (typeof likings)[number];
export type Likes = { readonly [K in Liking]?: Json };

const shopFields = [
  'single',
  'block',
  'capacity',
  'stopReach',
  'routerBase',
  'bit',
  'shoeKeep',
  'shoeWaste',
  'kerf',
  'overlap',
  'stepError',
  'slideThickness',
  'slideHeight',
  'slideLength',
  'tableHeight',
  'sledCross',
  'slidingCross',
  'slidingStop',
  'slidingHeight',
  'slidingStack',
  'routerReach',
  'routerPass',
  'routerGuide',
  'circularDepth',
  'circularGuide',
  'pressThroat',
  'pressStroke',
  'pressBit',
  'plateDeep',
  'plateFence',
  'plateBase',
  'tapeShort',
  'otherShort',
  'tapeLong',
  'otherLong',
  'tableBehind',
  'tableBeside',
] as const satisfies readonly ShopField[];

export type Backup = { readonly jobs: readonly JobFile[]; readonly shop: Shop; readonly likes: Likes };

export type BackupError =
  | { readonly code: 'too-big'; readonly most: number }
  | { readonly code: 'not-a-copy' }
  | { readonly code: 'newer-copy'; readonly version: number }
  /** Cut short, or changed since it was written: the check does not fit what stands there. */
  | { readonly code: 'torn' }
  /** A page that did not come over https has nothing to reckon the check with. */
  | { readonly code: 'no-check' }
  | { readonly code: 'bad-job'; readonly at: number; readonly error: FileError }
  | { readonly code: 'job-twice'; readonly at: number }
  | { readonly code: 'bad-figure'; readonly field: string };

type Body = { readonly shop: unknown; readonly likes: unknown; readonly jobs: unknown };

/** Whether a text says of itself that it is a copy of everything. */
export const isBackup = (text: string): boolean => /^\s*\{\s*"knifeline-all"\s*:/.test(text.slice(0, 200));

/**
 * Everything of a phone as one readable text:
 * `{ "knifeline-all": 1, "sha256": "…", "shop": {…}, "likes": {…}, "jobs": [ job files ] }`.
 *
 * @param backup jobs in the order they are to stand; one without entries says nothing and is left out
 * @returns the text, or `no-check` where the page has no SHA-256
 * @example await writeBackup({ jobs: [], shop: {}, likes: { hand: 'left' } })
 */
export async function writeBackup({ jobs, shop, likes }: Backup): Promise<Result<string, BackupError>> {
  const figures = JSON.stringify(Object.fromEntries(shopRows(shop)));
  const files = jobs.filter((job) => job.entries.length > 0).map((job) => writeJobFile(job).trimEnd());
  const parts = `"shop": ${figures},\n"likes": ${JSON.stringify(likes)},\n"jobs": [\n${files.join(',\n')}\n]`;
  const sum = await sumOf(JSON.parse(`{${parts}}`));
  return sum === undefined
    ? err({ code: 'no-check' })
    : ok(`{\n"knifeline-all": ${backupVersion},\n"sha256": "${sum}",\n${parts}\n}\n`);
}

/** The shop's figures as they are kept, in one order. */
export const shopRows = (shop: Shop): readonly (readonly [ShopField, string])[] =>
  shopFields.flatMap((field) => {
    const value = shop[field];
    return value ? [[field, toStored(value)] as const] : [];
  });

/**
 * The check: SHA-256, in hex, of the contents as JSON without blanks, so that a mail program may change blanks and line
 * ends.
 */
async function sumOf({ shop, likes, jobs }: Body): Promise<string | undefined> {
  const { subtle } = globalThis.crypto;
  if (!subtle) return undefined;
  const bytes = new TextEncoder().encode(JSON.stringify([shop, likes, jobs]));
  const sum = new Uint8Array(await subtle.digest('SHA-256', bytes));
  return [...sum].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/**
 * Reads a copy of everything whole, or says what is wrong. Nothing of a bad one is taken: each job goes through the
 * reader of a job file.
 *
 * @example await readBackup('{"knifeline-all":1') // torn
 */
export async function readBackup(text: string): Promise<Result<Backup, BackupError>> {
  if (text.length > mostInBackup) return err({ code: 'too-big', most: mostInBackup });
  if (!isBackup(text)) return err({ code: 'not-a-copy' });
  const json = parsed(text);
  if (!json) return err({ code: 'torn' });
  const { 'knifeline-all': version, sha256, shop, likes, jobs, ...rest } = json;
  if (typeof version === 'number' && version > backupVersion) return err({ code: 'newer-copy', version });
  if (version !== backupVersion) return err({ code: 'not-a-copy' });
  const sum = await sumOf({ shop, likes, jobs });
  if (sum === undefined) return err({ code: 'no-check' });
  if (sum !== sha256 || Object.keys(rest).length > 0) return err({ code: 'torn' });
  return readBody({ shop, likes, jobs });
}

function parsed(text: string): Readonly<Record<string, unknown>> | undefined {
  try {
    const json: unknown = JSON.parse(text);
    return isRecord(json) ? json : undefined;
  } catch {
    return undefined;
  }
}

const isRecord = (json: unknown): json is Readonly<Record<string, unknown>> =>
  typeof json === 'object' && json !== null && !Array.isArray(json);

function readBody({ shop, likes, jobs }: Body): Result<Backup, BackupError> {
  const figures = readFigures(shop);
  if (!figures.ok) return figures;
  const liked = readLikes(likes);
  if (!liked.ok) return liked;
  const files = readJobs(jobs);
  return files.ok ? ok({ jobs: files.value, shop: figures.value, likes: liked.value }) : files;
}

function readFigures(json: unknown): Result<Shop, BackupError> {
  if (!isRecord(json)) return err({ code: 'not-a-copy' });
  const read: Record<string, unknown> = {};
  for (const [field, text] of Object.entries(json)) {
    const found = typeof text === 'string' ? fromStored(text) : undefined;
    if (!found?.ok || !shopFields.some((known) => known === field)) return err({ code: 'bad-figure', field });
    read[field] = found.value;
  }
  return ok(read as Shop);
}

/** An unknown liking is refused, so that nothing is lost unseen. Its value is checked where it is used. */
function readLikes(json: unknown): Result<Likes, BackupError> {
  if (!isRecord(json)) return err({ code: 'not-a-copy' });
  const stranger = Object.keys(json).find((key) => !likings.some((known) => known === key));
  return stranger === undefined ? ok(json as Likes) : err({ code: 'bad-figure', field: stranger });
}

function readJobs(json: unknown): Result<readonly JobFile[], BackupError> {
  if (!Array.isArray(json) || json.length > mostJobs) return err({ code: 'not-a-copy' });
  const jobs: JobFile[] = [];
  for (const [at, file] of json.entries()) {
    const read = readJobFile(JSON.stringify(file));
    if (!read.ok) return err({ code: 'bad-job', at, error: read.error });
    if (jobs.some((job) => job.job === read.value.job)) return err({ code: 'job-twice', at });
    jobs.push(read.value);
  }
  return ok(jobs);
}
