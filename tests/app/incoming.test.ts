import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { takeShared } from '../../src/app/incoming';

/** One shelf of files by address, as the service worker left it. */
let shelf: Map<string, Blob>;
let shown: string;

function page(search: string, display: 'standalone' | 'browser'): void {
  shown = `/app/${search}#/saw/b1`;
  vi.stubGlobal('location', { search, pathname: '/app/', hash: '#/saw/b1' });
  vi.stubGlobal('history', {
    state: 1,
    replaceState: (_: unknown, __: string, to: string) => {
      shown = to;
    },
  });
  vi.stubGlobal('matchMedia', (asked: string) => ({ matches: asked === `(display-mode: ${display})` }));
}

beforeEach(() => {
  shelf = new Map([['./abc', new Blob(['a job'])]]);
  vi.stubGlobal('self', globalThis);
  vi.stubGlobal('navigator', {});
  vi.stubGlobal('caches', {
    open: async () => ({
      match: async (at: string) => (shelf.has(at) ? new Response(shelf.get(at)) : undefined),
    }),
    delete: async () => shelf.clear(),
  });
});
afterEach(() => vi.unstubAllGlobals());

describe('takeShared', () => {
  test('hands out the file a window of the installed app was opened for, once', async () => {
    page('?shared=abc', 'standalone');
    expect(await takeShared()).toBe('a job');
    expect(shown).toBe('/app/#/saw/b1');
    expect(await takeShared()).toBeUndefined();
  });

  test.each([
    ['a tab of the browser', '?shared=abc', 'browser'],
    ['a window opened for another file', '?shared=abd', 'standalone'],
    ['a window opened for none', '', 'standalone'],
    ['a window with a name left out', '?shared=', 'standalone'],
  ] as const)('hands out nothing in %s, and throws away what waits', async (_, search, display) => {
    page(search, display);
    expect(await takeShared()).toBeUndefined();
    expect(shelf.size).toBe(0);
  });
});
