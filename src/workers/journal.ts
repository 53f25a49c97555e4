import { type Folder, findJournal, needsTidying } from '../store/journal/files';
import type { JournalAsked, JournalTold, MarkAsked, StartAsked } from '../store/journal/journal';
import { standingIn } from '../store/journal/lines';
import { type Open, open } from '../store/journal/serve';
import { watchOfStart } from '../store/journal/starting';
import { markOf } from '../store/mark';

/**
 * The journal in the origin's own file system, which a killed browser leaves whole where it may wipe the database. A
 * file is held only while it is written, under a lock that all pages share.
 */
let opened: Promise<Open> | undefined;

/** Opened at the first asking; after a failure, again at the next. */
function openedNow(): Promise<Open> {
  opened ??= findDirectory()
    .then((directory) => openFolder(folderIn(directory)))
    .catch((error: unknown) => {
      opened = undefined;
      throw error;
    });
  return opened;
}

async function findDirectory(): Promise<FileSystemDirectoryHandle> {
  const root = await navigator.storage.getDirectory();
  return root.getDirectoryHandle('knifeline', { create: true });
}

async function hold(directory: FileSystemDirectoryHandle, name: string): Promise<FileSystemSyncAccessHandle> {
  const file = await (await directory.getFileHandle(name, { create: true })).createSyncAccessHandle();
  // before Safari 16.4 these calls are asynchronous: they cannot be used here
  if (typeof file.getSize() === 'number') return file;
  file.close();
  throw new DOMException('too old', 'NotSupportedError');
}

function folderIn(directory: FileSystemDirectoryHandle): Folder {
  const held = async <T>(name: string, work: (file: FileSystemSyncAccessHandle) => T): Promise<T> => {
    const file = await hold(directory, name);
    try {
      return work(file);
    } finally {
      file.close();
    }
  };
  return {
    read: (name, from = 0, most = Number.POSITIVE_INFINITY) =>
      held(name, (file) => {
        const bytes = new Uint8Array(Math.min(most, Math.max(0, file.getSize() - from)));
        file.read(bytes, { at: from });
        return bytes;
      }),
    append: (name, bytes) => held(name, (file) => add(file, bytes)),
    write: (name, bytes) =>
      held(name, (file) => {
        file.truncate(0);
        put(file, bytes, 0);
      }),
  };
}

/** More than any line has. */
const tailRead = 1 << 20;

function add(file: FileSystemSyncAccessHandle, bytes: Uint8Array): void {
  const size = file.getSize();
  const tail = new Uint8Array(Math.min(size, tailRead));
  file.read(tail, { at: size - tail.length });
  const end = size - tail.length + standingIn(tail);
  if (end < size) file.truncate(end);
  const ended = size === 0 || end < size || tail[tail.length - 1] === 10;
  try {
    if (!ended) put(file, new Uint8Array([10]), end);
    put(file, bytes, file.getSize());
  } catch (error) {
    file.truncate(end); // nothing of it counts
    throw error;
  }
}

function put(file: FileSystemSyncAccessHandle, bytes: Uint8Array, at: number): void {
  if (file.write(bytes, { at }) !== bytes.length) throw new DOMException('short write', 'QuotaExceededError');
  file.flush();
}

const alone = <T>(work: () => Promise<T>): Promise<T> =>
  navigator.locks ? navigator.locks.request('knifeline-journal', work) : work();

/**
 * Begins the files anew unless a page of an older version has the journal open: it takes them to stay as it found
 * them. Such a page holds this for as long as it lives. Where a browser has no locks nothing is begun anew.
 */
async function tidyUnlessHeld(tidy: () => Promise<unknown>): Promise<void> {
  await navigator.locks?.request('knifeline-journal-open', { ifAvailable: true }, async (lock) => {
    if (lock) await tidy();
  });
}

const openFolder = (folder: Folder): Promise<Open> =>
  alone(async () => {
    const found = await findJournal(folder);
    const opened = open(folder, found);
    if (needsTidying(found)) await tidyUnlessHeld(opened.tidy);
    return opened;
  });

const answer = async (asked: JournalAsked): Promise<Omit<JournalTold, 'no'>> => {
  const { serve } = await openedNow();
  return alone(() => serve(asked));
};

const watch = watchOfStart(async () => hold(await findDirectory(), 'starting'));

async function answerOfStart({ what, at = '' }: StartAsked): Promise<Omit<JournalTold, 'no'>> {
  if (what === 'starting') return { seen: await watch.starting(at) };
  await watch.stood();
  return {};
}

/** After the page has its answer: a large file takes its time. */
async function tidyWhenDue(): Promise<void> {
  const { due, tidy } = await openedNow();
  if (due()) await alone(() => tidyUnlessHeld(tidy));
}

const isOfStart = (asked: JournalAsked | StartAsked): asked is StartAsked =>
  asked.what === 'starting' || asked.what === 'stood';

addEventListener('message', ({ data }: MessageEvent<JournalAsked | StartAsked | MarkAsked>) => {
  const tell = (told: Omit<JournalTold, 'no'>) => postMessage({ no: data.no, ...told } satisfies JournalTold);
  const fail = (error: unknown) => tell({ error: error instanceof Error ? error.name : 'Error' });
  if (data.what === 'mark') markOf(data.job).then((mark) => tell({ mark }), fail);
  else if (isOfStart(data)) answerOfStart(data).then(tell, fail);
  else
    answer(data)
      .then(tell, fail)
      .then(tidyWhenDue)
      .catch(() => undefined); // as it was: tried again once as much more is written over
});
