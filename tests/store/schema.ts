import { openStore, type Store } from '../../src/store/store';

export async function open(): Promise<Store> {
  const store = await openStore({
    name: 'kept',
    randomId: () => 'me',
    now: () => '2026-11-26T10:00:00.000Z',
  });
  if (!store.ok) throw new Error(store.error.code);
  return store.value;
}
