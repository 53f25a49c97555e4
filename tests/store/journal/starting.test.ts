import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { frozen, long, watchOfStart } from '../../../src/store/journal/starting';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

/** A file of a browser: one page holds it, and a page that is gone lets it go. */
function makeFile() {
  let bytes = new Uint8Array();
  let heldBy: number | undefined;
  return (pageNo: number) => ({
    hold: async () => {
      if (heldBy !== undefined) throw new DOMException('held', 'NoModificationAllowedError');
      heldBy = pageNo;
      const own = <T>(work: () => T, otherwise: T): T => (heldBy === pageNo ? work() : otherwise);
      return {
        getSize: () => bytes.length,
        read: (into: Uint8Array) => {
          into.set(bytes);
          return bytes.length;
        },
        write: (from: Uint8Array<ArrayBuffer>) =>
          own(() => {
            bytes = from;
            return from.length;
          }, 0),
        flush: () => undefined,
        truncate: () =>
          own(() => {
            bytes = new Uint8Array();
          }, undefined),
        close: () => {
          heldBy = undefined;
        },
      };
    },
    killed: () => {
      heldBy = undefined;
    },
  });
}

test('D16: a start that stands in time, or late, is named: its note may stay in the database it left', async () => {
  const page = makeFile();
  expect(await watchOfStart(page(0).hold).starting('start 0')).toBe('');
  page(0).killed();
  for (const [k, wait] of [long / 2, long * 2].entries()) {
    const watch = watchOfStart(page(k + 1).hold);
    expect(await watch.starting(`start ${k + 1}`)).toBe(`start ${k}`);
    await vi.advanceTimersByTimeAsync(wait);
    await watch.stood();
    await vi.advanceTimersByTimeAsync(long);
  }
  expect(await watchOfStart(page(3).hold).starting('start 3')).toBe('start 2');
});

test('D16: one killed on its way is named by the next, one that took long and never stood froze', async () => {
  const page = makeFile();
  const quick = page(0);
  await watchOfStart(quick.hold).starting('quick');
  quick.killed();
  const stuck = page(1);
  expect(await watchOfStart(stuck.hold).starting('stuck')).toBe('quick');
  await vi.advanceTimersByTimeAsync(long);
  stuck.killed();
  expect(await watchOfStart(page(2).hold).starting('next')).toBe(frozen);
});

test('a page that still stands frozen beside it froze', async () => {
  const page = makeFile();
  await watchOfStart(page(0).hold).starting('first');
  expect(await watchOfStart(page(1).hold).starting('second')).toBe(frozen);
});

test('D16: a page that froze before its worker ran leaves the name of the start before it', async () => {
  const page = makeFile();
  const quick = page(0);
  await watchOfStart(quick.hold).starting('quick');
  quick.killed();
  expect(await watchOfStart(page(2).hold).starting('third')).toBe('quick');
});

test('a screen that stands before the file is held is named too', async () => {
  const page = makeFile();
  const watch = watchOfStart(page(0).hold);
  const asked = watch.starting('first');
  await Promise.all([asked, watch.stood()]);
  await vi.advanceTimersByTimeAsync(long * 2);
  expect(await watchOfStart(page(1).hold).starting('second')).toBe('first');
});

test('a browser without such files fails, and says neither', async () => {
  const watch = watchOfStart(() => Promise.reject(new DOMException('too old', 'NotSupportedError')));
  await expect(watch.starting('first')).rejects.toThrow('too old');
  await watch.stood();
});
