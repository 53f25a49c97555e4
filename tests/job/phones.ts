import type { Change, Entry } from '../../src/job/entry';
import { readJobFile, writeJobFile } from '../../src/job/file';
import { type Folded, fold, inOrder, merge, over } from '../../src/job/log';
import { undoable, undoOf } from '../../src/job/undo';

export type Log = readonly Entry[];

/** The log after one tap on a phone that sees all of it: the next counts, whatever its clock says. */
export function tap(log: Log, device: string, changes: readonly Change[], more: Partial<Entry> = {}): Log {
  const from = log.reduce((most, e) => Math.max(most, e.count), 0);
  const stamp = {
    job: 'j',
    device,
    at: '2026-11-02T08:00:00Z',
    act: `${device}.${from + 1}`,
    label: 'x',
    ...more,
  };
  const seen = more.undoes === undefined ? over(fold(log), changes) : changes;
  return [...log, ...seen.map((change, k): Entry => ({ ...stamp, count: from + 1 + k, ...change }))].sort(
    inOrder,
  );
}

/** Takes back the phone's newest act, as the app does. */
export function takenBack(log: Log, device: string): Log {
  const act = undoable(log, (name) => name === device)[0];
  return act ? tap(log, device, undoOf(log, act), { undoes: act.act }) : log;
}

/** What one phone has after the other's file was taken in. */
export function passed(from: Log, to: Log): Log {
  if (from.length === 0) return to;
  const read = readJobFile(writeJobFile({ job: 'j', entries: from }));
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return merge(to, read.value.entries);
}

/** All that a log comes to: values, ticks and what stands double, with who said it. */
export const state = ({ values, ticks, places, doubled, kept }: Folded) => ({
  kept: [...kept].sort(),
  values: [...values].sort(),
  ticks: [...ticks].sort(),
  doubled: [...doubled].sort(),
  heads: [...places].map(([at, place]) => [at, place.heads.map((e) => `${e.count}.${e.device}`)]).sort(),
});
