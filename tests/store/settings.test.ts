import { afterEach, describe, expect, test, vi } from 'vitest';
import { askToPersist, readSettings } from '../../src/store/settings';

describe('readSettings', () => {
  test('nothing kept yet gives the usual', () =>
    expect(readSettings({})).toEqual({
      shelf: {},
      theme: 'phone',
      hand: 'right',
      text: 'phone',
      calipers: 'tape',
      tape: '1/32',
    }));

  test('what is kept reads back', () => {
    const kept = { theme: 'blued', hand: 'left', text: 'large', calipers: 'mm', tape: '1/2 mm' };
    const where = { job: 'j1', here: '#/job', saw: '#/saw/b1/r1~1~p1' };
    expect(readSettings({ ...kept, ...where })).toEqual({ shelf: {}, ...kept, ...where });
  });

  test.each([
    ['another theme', { theme: 'pink' }],
    ['a number for a hand', { hand: 1 }],
    ['a tape nobody sells', { tape: '1/7' }],
    ['an address that is no screen', { here: 'https://example.com/' }],
    ['a list for a job', { job: ['j1'] }],
    ['a key of another version', { later: true }],
  ])('%s falls back to the usual', (_, kept) => expect(readSettings(kept)).toEqual(readSettings({})));
});

describe('askToPersist', () => {
  afterEach(() => vi.unstubAllGlobals());
  const storage = (persisted: boolean, granted: () => Promise<boolean>) => {
    const persist = vi.fn(granted);
    vi.stubGlobal('navigator', { storage: { persisted: async () => persisted, persist } });
    return persist;
  };

  test('a browser that was asked before is not asked again', async () => {
    const persist = storage(true, async () => false);
    expect(await askToPersist()).toBe('kept');
    expect(persist).not.toHaveBeenCalled();
  });

  test('its answer is passed on', async () => {
    storage(false, async () => true);
    expect(await askToPersist()).toBe('kept');
    storage(false, async () => false);
    expect(await askToPersist()).toBe('may-be-cleared');
  });

  test('one that cannot be asked, or refuses the question, leaves it unknown', async () => {
    vi.stubGlobal('navigator', {});
    expect(await askToPersist()).toBe('unknown');
    storage(false, () => Promise.reject(new TypeError('private window')));
    expect(await askToPersist()).toBe('unknown');
  });
});
