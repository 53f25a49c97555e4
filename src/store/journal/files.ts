import { keptOf, rowsOf } from './kept-rows';
import { bytesOf, readLines } from './lines';
import type { Row } from './row';

/** Two files the journal is kept in; a name read that is not there is empty. Any of these may throw. */
export type Folder = {
  /** @param from bytes left out at the beginning @param most bytes read, all that follow unless told */
  readonly read: (name: string, from?: number, most?: number) => Promise<Uint8Array>;
  /** Adds bytes at the end, in place of a last line whose write was cut off; on the disk once it resolves. */
  readonly append: (name: string, bytes: Uint8Array) => Promise<void>;
  /** Replaces the whole file; on the disk once it resolves. */
  readonly write: (name: string, bytes: Uint8Array) => Promise<void>;
};

const names = ['kept-a', 'kept-b'] as const;

/** A journal as it was found: its rows in the order they were written, and the file that is written on. */
export type Found = {
  readonly rows: readonly Row[];
  /** Whether a line was damaged, mended or not: the file is begun anew. */
  readonly bad: boolean;
  /** A later version of the app wrote rows this one does not know. */
  readonly later: boolean;
  readonly current: string;
  /** How often it was begun anew. */
  readonly turn: number;
  readonly bytes: number;
  /** Superseded bytes written to it since it was begun, about: values of settings and figures, purged jobs. */
  readonly over: number;
  /** More rows were written since it was begun than it began with. */
  readonly grown: boolean;
  /** The turn the other file was begun with: a page that finds it changed reads both files again. */
  readonly beside: number;
};

/**
 * Reads both files. The one begun last is written on, when everything kept before stands in it; what the other holds
 * counts all the same, so a file that is lost or half written takes nothing with it.
 */
export async function findJournal(folder: Folder): Promise<Found> {
  const files = await Promise.all(names.map((name) => readFile(folder, name)));
  // a file left half written says nothing newer than the one it was to replace
  const inTurn = [...files].sort((a, b) => Number(a.whole) - Number(b.whole) || a.turn - b.turn);
  const whole = inTurn.filter((file) => file.whole);
  const current = whole[whole.length - 1];
  return {
    rows: inTurn.flatMap(({ rows }) => rows),
    bad: files.some((file) => file.bad),
    later: files.some((file) => file.later > 0),
    current: current?.name ?? names[0],
    turn: current?.turn ?? 0,
    bytes: current?.bytes ?? 0,
    over: current?.over ?? 0,
    grown: current?.grown ?? false,
    beside: files.find(({ name }) => name !== (current?.name ?? names[0]))?.head ?? 0,
  };
}

/** More bytes than the first line has. */
const headRead = 64;

/** Whether no other page has begun the files anew since they were found. */
export async function stands(folder: Folder, { current, beside }: Found): Promise<boolean> {
  return turnOf(await folder.read(otherThan(current), 0, headRead)) === beside;
}

const otherThan = (current: string): string => names.find((name) => name !== current) ?? names[0];

/** The turn a file was begun with, by its first line. */
function turnOf(bytes: Uint8Array): number {
  const [first] = readLines(bytes.subarray(0, bytes.indexOf(10) + 1)).rows;
  return first?.[0] === 'begin' ? first[1] : 0;
}

async function readFile(folder: Folder, name: string) {
  const bytes = await folder.read(name);
  const { rows: read, damaged, mended, later } = readLines(bytes);
  const rows = [...read, ...damaged.map(setAside)];
  const bad = damaged.length + mended > 0;
  const begin = rows.find((row) => row[0] === 'begin');
  const turn = begin?.[0] === 'begin' ? begin[1] : 0;
  const before = rows.findIndex((row) => row[0] === 'whole' && row[1] === turn);
  const head = turnOf(bytes.subarray(0, headRead));
  const since = read.slice(before + 1);
  const over = since.some(([kind]) => kind === 'purge') ? bytes.length : valueBytes(since);
  const grown = since.length > before;
  return { name, rows, bad, later, turn, head, whole: before >= 0, over, grown, bytes: bytes.length };
}

/** A line damaged past mending goes with the rows set aside: kept whole, counted, and handed out on a tap. */
const setAside = (line: string): Row => ['aside', { from: 'the journal', why: whyDamaged(line), row: line }];

/** The label of its act, where the line still shows one. */
function whyDamaged(line: string): string {
  const label = /"label":"((?:[^"\\]|\\.){1,200})"/.exec(line)?.[1];
  return label === undefined ? 'a damaged line' : `a damaged line of “${label.replaceAll('\\"', '"')}”`;
}

/** Bytes of the settings and figures among rows: most of these are superseded later. */
export const valueBytes = (rows: readonly Row[]): number =>
  bytesOf(rows.filter(([kind]) => kind === 'settings' || kind === 'shop')).length;

/** Superseded bytes, at least, before a file is begun anew. */
const roomy = 1 << 18;

/** Whether superseded bytes come to more than a quarter megabyte and a quarter of the file. */
export const isDue = ({ over, bytes }: Pick<Found, 'over' | 'bytes'>): boolean =>
  over > Math.max(roomy, bytes / 4);

/**
 * Whether a file is to be begun anew: there is none yet, a line was damaged, much is superseded, or the file has so
 * grown that the other holds little of it. Never where a later version wrote (D12).
 */
export const needsTidying = (found: Found): boolean =>
  !found.later && (found.turn === 0 || found.bad || isDue(found) || (found.bytes > roomy && found.grown));

/**
 * Begins the other file anew with what the rows come to, where that is due. The file it takes the place of stays as
 * it is until the next time. Where a later version wrote, nothing is begun anew: what this one does not know would be
 * lost by it.
 *
 * @returns what was found, with the file to write on
 */
export async function tidied(folder: Folder, found: Found): Promise<Found> {
  if (!needsTidying(found)) return found;
  const live = rowsOf(keptOf(found.rows));
  const turn = found.turn + 1;
  const body = bytesOf([['begin', turn], ...live, ['whole', turn]]);
  const other = otherThan(found.current);
  // no room, or the disk gave back other than was written: the old file goes on
  if (!(await written(folder, other, body))) return found;
  return {
    rows: live,
    bad: false,
    later: false,
    current: other,
    turn,
    bytes: body.length,
    over: 0,
    grown: false,
    beside: turnOf(await folder.read(found.current, 0, headRead)),
  };
}

async function written(folder: Folder, name: string, body: Uint8Array): Promise<boolean> {
  try {
    await folder.write(name, body);
    const back = await folder.read(name);
    return back.length === body.length && back.every((byte, k) => byte === body[k]);
  } catch {
    return false;
  }
}
