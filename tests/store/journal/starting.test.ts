import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { long, watchOfStart } from '../../../src/store/journal/starting';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

/** A file of a browser: one page holds it, and a page that is gone lets it go. */
function makeFile() {
  let bytes = 0;
  let heldBy: number | undefined;
  return (pageNo: number) => ({
    hold: async () => {
      if (heldBy !== undefined) throw new DOMException('held', 'NoModificationAllowedError');
      heldBy = pageNo;
      return {
        getSize: () => bytes,
        write: () => {
          if (heldBy === pageNo) bytes = 1;
          return 1;
        },
        flush: () => undefined,
        truncate: () => {
          bytes = 0;
        },
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

test('a start that stands in time, or late, leaves nothing', async () => {
  const page = makeFile();
  for (const [no, wait] of [long / 2, long * 2].entries()) {
    const watch = watchOfStart(page(no).hold);
    expect(await watch.starting()).toBe(false);
    await vi.advanceTimersByTimeAsync(wait);
    await watch.stood();
    await vi.advanceTimersByTimeAsync(long);
  }
  expect(await watchOfStart(page(2).hold).starting()).toBe(false);
});

test('D16: one killed on its way is no start that froze; one that took long and never stood is, until a start stands', async () => {
  const page = makeFile();
  const quick = page(0);
  await watchOfStart(quick.hold).starting();
  quick.killed();
  const frozen = page(1);
  expect(await watchOfStart(frozen.hold).starting()).toBe(false);
  await vi.advanceTimersByTimeAsync(long);
  frozen.killed();
  const next = watchOfStart(page(2).hold);
  expect(await next.starting()).toBe(true);
  await next.stood();
  expect(await watchOfStart(page(3).hold).starting()).toBe(false);
});

test('a page that still stands frozen beside it is one that froze', async () => {
  const page = makeFile();
  await watchOfStart(page(0).hold).starting();
  expect(await watchOfStart(page(1).hold).starting()).toBe(true);
});

test('a screen that stands before the file is held leaves nothing either', async () => {
  const page = makeFile();
  const watch = watchOfStart(page(0).hold);
  const asked = watch.starting();
  await Promise.all([asked, watch.stood()]);
  await vi.advanceTimersByTimeAsync(long * 2);
  expect(await watchOfStart(page(1).hold).starting()).toBe(false);
});

test('a browser without such files fails, and says neither', async () => {
  const watch = watchOfStart(() => Promise.reject(new DOMException('too old', 'NotSupportedError')));
  await expect(watch.starting()).rejects.toThrow('too old');
  await watch.stood();
});
