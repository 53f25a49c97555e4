import type { Entry } from '../../job/entry';
import { writeJobFile } from '../../job/file';
import { pack } from '../../store/handover/bundle';
import { type Codes, cut, type Fineness } from '../../store/handover/cut';
import { compact, writeChanges } from '../../store/handover/handed';
import { beyond, type Known } from '../../store/handover/known';

export type What = 'whole' | 'changes';

/** How fine the codes are, and how long each of a set stands, milliseconds. */
type Show = Fineness & { readonly stands: number };

/**
 * Bytes a code, by what a camera makes out: 600 bytes are 105 squares across, 400 are 89, 160 are 61; a phone's
 * screen is some 65 mm. A camera takes 30 pictures a second, so 200 ms are six chances a code. Tried on drawn and
 * blurred pictures, not on phones: common practice, no source.
 */
export const shows: Readonly<Record<'fine' | 'large', Show>> = {
  fine: { still: 600, passing: 400, stands: 200 },
  large: { still: 160, passing: 160, stands: 300 },
};

type Log = { readonly job: string; readonly entries: readonly Entry[] };

/** What goes out: the job, or what the other phone has not got; undefined when that is nothing. */
export const textOf = (log: Log, what: What, known: Known | undefined): string | undefined =>
  what === 'whole' ? writeJobFile(log) : writeChanges(log, known ?? new Map());

/** The codes of a text, cut to a fineness; undefined when it is too long for codes. */
export async function codesOf(text: string, show: Fineness): Promise<Codes | undefined> {
  return cut(await pack(compact(text)), show);
}

/** How many entries the other phone has not got. */
export const freshIn = (entries: readonly Entry[], known: Known | undefined): number =>
  known ? beyond(entries, known).length : entries.length;
