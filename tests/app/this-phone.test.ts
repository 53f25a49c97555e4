import { signal } from '@preact/signals';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { makePhone } from '../../src/app/this-phone';
import type { KeptIn } from '../../src/store/store';

beforeEach(() => {
  vi.stubGlobal('addEventListener', () => undefined);
  vi.stubGlobal('matchMedia', () => ({ matches: false }));
});
afterEach(() => vi.unstubAllGlobals());

function phoneOver(evenOut: () => Promise<number> = async () => 0) {
  let heard: ((now: KeptIn) => void) | undefined;
  const store = {
    keptIn: (): KeptIn => 'both',
    onKeptIn: (hear: (now: KeptIn) => void) => {
      heard = hear;
    },
    restored: () => 3,
    evenOut,
    aside: async () => [{ from: 'log', why: 'no date', row: { x: 1 } }],
    secure: async () => true,
  };
  const phone = makePhone(store, { gone: signal(false), setAside: signal(1), left: undefined });
  return { phone, hear: (now: KeptIn) => heard?.(now) };
}

const storage = (own: object) => vi.stubGlobal('navigator', { storage: own });

test('says at once in how many copies the last change is, and what came back until that is seen', () => {
  const { phone, hear } = phoneOver();
  expect([phone.keptIn.value, phone.restored.value]).toEqual(['both', 3]);
  hear('database');
  phone.seenRestored();
  expect([phone.keptIn.value, phone.restored.value]).toEqual(['database', 0]);
});

test('asks the browser to keep what is here, and says what it answered; before that, what it said', async () => {
  storage({ persisted: async () => false, persist: async () => true });
  const { phone } = phoneOver();
  await vi.waitFor(() => expect(phone.kept.value).toBe('may-be-cleared'));
  phone.askToKeep();
  await vi.waitFor(() => expect(phone.kept.value).toBe('kept'));
});

test('what is set aside goes out whole; copies that cannot be compared now break no start', async () => {
  const { phone } = phoneOver(() => Promise.reject(new Error('closed')));
  expect(JSON.parse(await phone.asideFile())).toEqual([{ from: 'log', why: 'no date', row: { x: 1 } }]);
  await expect(phone.evenOut()).resolves.toBeUndefined();
  await expect(phone.startUpdate()).resolves.toBeUndefined();
});
