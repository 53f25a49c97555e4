import { openDB } from 'idb';

/** A database exactly as version 1 of the schema wrote it. Never edited: it is what phones in the field hold. */
export async function versionOne(name: string): Promise<void> {
  const db = await openDB(name, 1, {
    upgrade: (made) => {
      made.createObjectStore('jobs', { keyPath: 'id' });
      const log = made.createObjectStore('log', { keyPath: ['job', 'device', 'count'] });
      log.createIndex('byCount', ['job', 'count']);
      log.createIndex('byPath', ['job', 'path']);
      made.createObjectStore('settings');
      made.createObjectStore('shop');
      made.createObjectStore('aside', { keyPath: 'id', autoIncrement: true });
    },
  });
  const stamp = {
    job: 'cabinet',
    device: 'phone1',
    at: '2026-11-25T09:00:00.000Z',
    act: 'phone1.1',
    label: 'Side laid out',
  };
  await db.put('jobs', { id: 'cabinet', made: '2026-11-25T09:00:00.000Z' });
  await db.put('log', { ...stamp, count: 1, kind: 'edit', path: 'name', value: 'Mineral and shell cabinet' });
  await db.put('log', { ...stamp, count: 2, kind: 'edit', path: 'boards/side/length', value: '257/4' });
  await db.put('log', {
    ...stamp,
    count: 3,
    act: 'phone1.3',
    label: 'Cut: Left',
    kind: 'tick',
    op: 'cut/side/r1~1~p1/left',
    figure: '53/4',
  });
  await db.put('settings', 'phone1', 'device');
  await db.put('settings', 'blued', 'theme');
  await db.put('shop', '5/64', 'kerf');
  db.close();
}
