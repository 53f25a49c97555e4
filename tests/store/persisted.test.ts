import { afterEach, describe, expect, test, vi } from 'vitest';
import { askToPersist } from '../../src/store/persisted';

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
