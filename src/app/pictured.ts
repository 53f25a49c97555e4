import { signal } from '@preact/signals';
import { mostInBackup, writeBackup } from '../job/backup';
import type { JobFile } from '../job/file';
import { jobOf } from '../job/job';
import { fold } from '../job/log';
import {
  base64Of,
  firstLines,
  lastLine,
  type PicturedError,
  pictureLine,
  readPictured,
} from '../job/pictured-file';
import { picturesIn } from '../job/pictures';
import { err, ok, type Result } from '../length/result';
import type { Pictured } from '../screens/copies';
import type { Pictures } from '../screens/pictures';
import { pictureKey } from '../store/pictures/keys';
import { linesOf } from './lines-of';

type Copy = Parameters<typeof writeBackup>[0];

/** A copy with its pictures as one file; which of them are not on this phone, or damaged, is counted. */
export async function writePictured(
  copy: Copy,
  pictures: Pictures,
): Promise<Result<{ readonly file: Blob; readonly missing: number }, { readonly code: 'no-check' }>> {
  const text = await writeBackup(copy);
  if (!text.ok) return err({ code: 'no-check' });
  const parts: Blob[] = [new Blob([firstLines(text.value)])];
  const named: { readonly job: string; readonly hash: string }[] = [];
  let missing = 0;
  for (const [job, hash] of copy.jobs.flatMap(shownIn)) {
    const found = await pictures.read(job, hash);
    if (typeof found === 'string') missing += 1;
    else {
      named.push({ job, hash });
      // a part of its own: the browser need not hold it in its memory
      parts.push(new Blob([pictureLine(job, hash, base64Of(found))]));
    }
  }
  parts.push(new Blob([await lastLine(named)]));
  return ok({ file: new Blob(parts, { type: 'text/plain' }), missing });
}

/** The pictures a job's log shows, those off their place too: each once. */
function shownIn({ job, entries }: JobFile): readonly (readonly [string, string])[] {
  const all = picturesIn(jobOf(job, fold(entries).values)).filter(({ cleared }) => !cleared);
  return [...new Set(all.map(({ hash }) => hash))].map((hash) => [job, hash]);
}

/** More than this is the file itself, not its head. */
const headMost = 100;

/** A file with pictures that came in: looked at whole, then its pictures taken, one at a time. */
export function picturedIn(pictures: Pictures) {
  const at = signal<Pictured | undefined>(undefined);
  let file: Blob | undefined;
  return {
    at,
    /** The file that the next text offered is the head of. */
    hold: (next: Blob | undefined): void => {
      file = next;
    },
    letGo: (): void => {
      at.value = undefined;
    },
    /** Checks all of it, and returns the copy inside as text. */
    look: async (text: string): Promise<Result<string, PicturedError>> => {
      if (text.length > headMost) file = new Blob([text]);
      if (!file) return err({ code: 'torn' });
      const read = await readPictured(linesOf(file, mostInBackup), async () => undefined);
      if (!read.ok) return read;
      at.value = { count: read.value.pictures, done: 0 };
      return ok(read.value.copy);
    },
    /** Keeps its pictures; false where the phone took one no more. What was taken before is taken once. */
    take: async (jobs: readonly JobFile[]): Promise<boolean> => {
      if (!file || !at.peek()) return true;
      const wanted = new Set(jobs.flatMap(shownIn).map(([job, hash]) => pictureKey(job, hash)));
      let whole = true;
      await readPictured(linesOf(file, mostInBackup), async ({ job, hash, bytes }) => {
        if (!wanted.has(pictureKey(job, hash))) return; // no picture of the jobs in it
        whole = whole && (await pictures.keep(job, hash, bytes));
        const now = at.peek();
        if (now && whole) at.value = { ...now, done: now.done + 1 };
      });
      if (whole) file = undefined;
      return whole;
    },
  };
}
