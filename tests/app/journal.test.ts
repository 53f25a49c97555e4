import { afterEach, expect, test, vi } from 'vitest';
import { openJournal } from '../../src/app/journal';
import { journalWorker } from '../../src/app/journal-worker';

afterEach(() => vi.unstubAllGlobals());

const folder = { storage: { getDirectory: async () => undefined } };

test.each([
  ['no worker may run', folder],
  ['there is no file system for it', { storage: {} }],
  ['there is no storage', {}],
])('there is no journal, and no failure, where %s', (_, navigator) => {
  const Worker = function Worker() {
    throw new DOMException('refused by the policy', 'SecurityError');
  };
  vi.stubGlobal('navigator', navigator);
  vi.stubGlobal('Worker', Worker);
  vi.stubGlobal('self', { Worker });
  expect(openJournal(journalWorker())).toBeUndefined();
});

test('a journal that gave no answer in time is not waited for so long again, until it answers', async () => {
  vi.useFakeTimers();
  const asked: { readonly no: number }[] = [];
  const worker = { onmessage: undefined as ((told: unknown) => void) | undefined };
  vi.stubGlobal('navigator', folder);
  vi.stubGlobal('self', { Worker: true });
  vi.stubGlobal('Worker', function Worker() {
    return Object.assign(worker, { postMessage: (one: { readonly no: number }) => void asked.push(one) });
  });
  const journal = openJournal(journalWorker());
  /** How long an act waits for it, in milliseconds. */
  const waits = async (): Promise<number> => {
    const from = Date.now();
    const done = journal?.append([]).then((kept) => {
      expect(kept).toBe(false);
      return Date.now() - from;
    });
    await vi.runAllTimersAsync();
    return (await done) ?? 0;
  };
  expect([await waits(), await waits()]).toEqual([5000, 1000]);
  worker.onmessage?.({ data: { no: asked.at(-1)?.no } });
  expect(await waits()).toBe(5000);
  vi.useRealTimers();
});

test('a worker that broke before anybody asked it is not waited for', async () => {
  const worker: { onerror?: (event: unknown) => void } = {};
  vi.stubGlobal('navigator', folder);
  vi.stubGlobal('self', { Worker: true });
  vi.stubGlobal('Worker', function Worker() {
    return Object.assign(worker, { postMessage: () => undefined });
  });
  vi.useFakeTimers(); // whose time nobody lets go by
  const by = journalWorker();
  worker.onerror?.('refused by the policy');
  const journal = openJournal(by);
  expect(await journal?.append([])).toBe(false);
  expect(await journal?.rows()).toBeUndefined();
  vi.useRealTimers();
});
