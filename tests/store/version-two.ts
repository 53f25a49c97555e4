import { openDB } from 'idb';

/** A database exactly as version 2 of the schema wrote it: rows say what they are over. Never edited. */
export async function versionTwo(name: string): Promise<void> {
  const db = await openDB(name, 2, {
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
  const stamp = { job: 'cabinet', at: '2026-11-26T09:00:00.000Z', label: 'Side measured' };
  const length = { kind: 'edit', path: 'boards/side/length' };
  await db.put('jobs', { id: 'cabinet', made: '2026-11-26T09:00:00.000Z' });
  await db.put('log', { ...stamp, device: 'phone1', count: 1, act: 'phone1.1', ...length, value: '64' });
  for (const [device, value] of [
    ['phone1', '257/4'],
    ['phone2', '513/8'],
  ])
    await db.put('log', {
      ...stamp,
      device,
      count: 2,
      act: `${device}.2`,
      ...length,
      value,
      over: ['1.phone1'],
    });
  await db.put('log', {
    ...stamp,
    device: 'phone1',
    count: 3,
    act: 'phone1.3',
    label: 'Cut: Left',
    kind: 'tick',
    op: 'cut/side/r1~1~p1/left',
    figure: '53/4',
    over: [],
  });
  await db.put('settings', 'phone1', 'device');
  db.close();
}
