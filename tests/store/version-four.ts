import { openDB } from 'idb';

/** A database exactly as version 4 of the schema wrote it: with the bytes of a picture. Never edited. */
export async function versionFour(name: string): Promise<void> {
  const db = await openDB(name, 4, {
    upgrade: (made) => {
      made.createObjectStore('jobs', { keyPath: 'id' });
      const entries = made.createObjectStore('entries', { keyPath: ['job', 'device', 'count'] });
      entries.createIndex('byCount', ['job', 'count']);
      entries.createIndex('byPath', ['job', 'path']);
      made.createObjectStore('packs', { keyPath: ['job', 'no', 'size'] }).createIndex('byTo', ['job', 'to']);
      made.createObjectStore('settings');
      made.createObjectStore('shop');
      made.createObjectStore('aside', { keyPath: 'id', autoIncrement: true });
      made.createObjectStore('pictures');
    },
  });
  await db.put('jobs', { id: 'cabinet', made: '2026-11-30T09:00:00.000Z' });
  const stamp = { job: 'cabinet', device: 'phone1', at: '2026-11-30T09:02:00.000Z' };
  const named = { label: 'New job', kind: 'edit', path: 'name', value: 'Mineral and shell cabinet' };
  await db.put('entries', { ...stamp, count: 1, act: 'phone1.1', ...named });
  // SHA-256 of “abc”: FIPS 180-4, its first example
  const hash = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
  for (const [k, [field, value]] of Object.entries({
    of: 'part~side',
    hash,
    size: 3,
    wide: 1,
    high: 1,
  }).entries()) {
    const said = { label: 'Picture added', kind: 'edit', path: `pictures/p1/${field}`, value };
    await db.put('entries', { ...stamp, count: 2 + k, act: 'phone1.2', ...said });
  }
  await db.put('pictures', new Uint8Array([97, 98, 99]).buffer, `cabinet~${hash}`);
  await db.put('settings', 'phone1', 'device');
  db.close();
}
