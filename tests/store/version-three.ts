import { openDB } from 'idb';

/** A database exactly as version 3 of the schema wrote it: old entries packed, new ones single. Never edited. */
export async function versionThree(name: string): Promise<void> {
  const db = await openDB(name, 3, {
    upgrade: (made) => {
      made.createObjectStore('jobs', { keyPath: 'id' });
      const entries = made.createObjectStore('entries', { keyPath: ['job', 'device', 'count'] });
      entries.createIndex('byCount', ['job', 'count']);
      entries.createIndex('byPath', ['job', 'path']);
      made.createObjectStore('packs', { keyPath: ['job', 'no', 'size'] }).createIndex('byTo', ['job', 'to']);
      made.createObjectStore('settings');
      made.createObjectStore('shop');
      made.createObjectStore('aside', { keyPath: 'id', autoIncrement: true });
    },
  });
  await db.put('jobs', { id: 'cabinet', made: '2026-11-30T09:00:00.000Z' });
  // a length measured by two phones at once, then a cut ticked and unticked, and the measuring taken back
  await db.put('packs', {
    job: 'cabinet',
    no: 1,
    size: 5,
    from: 2,
    to: 5,
    text: `{
      "device": [["phone1", "phone2"], [0, 1, 0, 0, 0]],
      "count": [2, 2, 3, 4, 5],
      "at": [["2026-11-30T09:00:00.000Z", "2026-11-30T09:01:00.000Z"], [0, 0, 1, 1, 1]],
      "label": [["Side measured", "Cut: Left", "Undo"], [0, 0, 1, 1, 2]],
      "act": [0, 0, 0, 0, "phone1.5"],
      "kind": [0, 0, 1, 2, 0],
      "place": [["boards/side/length", "cut/side/r1~1~p1/left"], [0, 0, 1, 1, 0]],
      "said": ["257/4", "513/8", "53/4", 0, null],
      "over": [[], 0, [], ["3.phone1"], ["2.phone1"]],
      "undoes": [0, 0, 0, 0, "phone1.2"]
    }`,
  });
  const stamp = { job: 'cabinet', at: '2026-11-30T09:02:00.000Z' };
  const named = { label: 'New job', kind: 'edit', path: 'name', value: 'Mineral and shell cabinet' };
  await db.put('entries', { ...stamp, device: 'phone1', count: 1, act: 'phone1.1', ...named });
  const cut = { kind: 'tick', op: 'cut/side/r1~1~p1/left', figure: '53/4', over: ['4.phone1'] };
  await db.put('entries', {
    ...stamp,
    device: 'phone1',
    count: 6,
    act: 'phone1.6',
    label: 'Cut: Left',
    ...cut,
  });
  await db.put('settings', 'phone1', 'device');
  db.close();
}
