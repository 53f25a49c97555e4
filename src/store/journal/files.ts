import { bytesOf, readLines } from './lines';
import { keptOf, type Row, rowsOf } from './row';

/** Two files the journal is kept in; a name read that is not there is empty. Any of these may throw. */
export type Folder = {
  /** @param from bytes left out at the beginning */
  readonly read: (name: string, from?: number) => Promise<Uint8Array>;
  /** Adds at the end, on the disk once it resolves; in place of a last line whose write was cut off. */
  readonly append: (name: string, bytes: Uint8Array) => Promise<void>;
  /** Everything anew, on the disk once it resolves. */
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
  /** More rows were written since it was begun than it began with. */
  readonly grown: boolean;
};

/**
 * Reads both files. The one begun last is written on, when everything kept before stands in it; what the other holds
 * counts all the same, so a file that is lost or half written takes nothing with it.
 */
export async function findJournal(folder: Folder): Promise<Found> {
  const files = await Promise.all(names.map((name) => readFile(folder, name)));
  // one left half written says nothing newer than the one it was to take the place of
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
    grown: (current?.after ?? 0) > (current?.before ?? 0),
  };
}

async function readFile(folder: Folder, name: string) {
  const bytes = await folder.read(name);
  const { rows: read, damaged, mended, later } = readLines(bytes);
  const rows = [...read, ...damaged.map(setAside)];
  const bad = damaged.length + mended > 0;
  const begin = rows.find((row) => row[0] === 'begin');
  const turn = begin?.[0] === 'begin' ? begin[1] : 0;
  const before = rows.findIndex((row) => row[0] === 'whole' && row[1] === turn);
  const after = read.length - before;
  return { name, rows, bad, later, turn, whole: before >= 0, before, after, bytes: bytes.length };
}

/** A line damaged past mending goes with the rows set aside: kept whole, counted, and handed out on a tap. */
const setAside = (line: string): Row => ['aside', { from: 'the journal', why: whyDamaged(line), row: line }];

/** The label of its act, where the line still shows one. */
function whyDamaged(line: string): string {
  const label = /"label":"((?:[^"\\]|\\.){1,200})"/.exec(line)?.[1];
  return label === undefined ? 'a damaged line' : `a damaged line of “${label.replaceAll('\\"', '"')}”`;
}

/** Bytes a file grows to at least before it is begun anew. */
const roomy = 1 << 18;

/**
 * Begins the other file anew with what the rows come to, when nothing is begun yet, something was damaged, or the file is
 * mostly superseded. The file it takes the place of stays as it is until the next time. Where a later version wrote, nothing is
 * begun anew: what this one does not know would be lost by it.
 *
 * @returns what was found, with the file to write on
 */
export async function tidied(folder: Folder, found: Found): Promise<Found> {
  const due = found.turn === 0 || found.bad || (found.bytes > roomy && found.grown);
  if (!due || found.later) return found;
  const live = rowsOf(keptOf(found.rows));
  const turn = found.turn + 1;
  const body = bytesOf([['begin', turn], ...live, ['whole', turn]]);
  const other = names.find((name) => name !== found.current) ?? names[0];
  // no room, or the disk gave back other than was written: the old file goes on
  if (!(await written(folder, other, body))) return found;
  return { rows: live, bad: false, later: false, current: other, turn, bytes: body.length, grown: false };
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
