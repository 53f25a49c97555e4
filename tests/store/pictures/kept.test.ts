import { describe, expect, test } from 'vitest';
import { hashOf } from '../../../src/job/picture-hash';
import {
  dropPictures,
  evenPictures,
  keepPicture,
  keptPictures,
  readPicture,
} from '../../../src/store/pictures/kept';
import { pictureKey } from '../../../src/store/pictures/keys';
import { begun, broken, cut, eachAnew, refusing, ticks } from '../page-of-phone';
import { memoryFiles } from './memory-files';

eachAnew();

const bytesOf = (text: string): ArrayBuffer => new TextEncoder().encode(text).buffer as ArrayBuffer;
const textOf = (found: ArrayBuffer | string): string =>
  typeof found === 'string' ? found : new TextDecoder().decode(found);
const keyOf = async (text: string, job = 'j1') => pictureKey(job, (await hashOf(bytesOf(text))) ?? '');

async function phone() {
  const store = await begun();
  const { files, all, how } = memoryFiles();
  const here = { connection: store.connection, files };
  const own = (key: string) => store.connection.use((db) => db.get('pictures', key));
  const spoil = (key: string, text: string) =>
    store.connection.write((db) => db.put('pictures', bytesOf(text), key));
  const lose = (key: string) => store.connection.write((db) => db.delete('pictures', key));
  return { store, here, all, how, own, spoil, lose };
}

describe('keeping', () => {
  test('D17: a picture is in both copies, and its job can be worked on beside', async () => {
    const { store, here, all, own } = await phone();
    const key = await keyOf('one');
    expect(await keepPicture(here, key, bytesOf('one'))).toEqual({ ok: true, value: 'both' });
    expect([textOf((await own(key)) ?? ''), textOf(all.get(key) ?? '')]).toEqual(['one', 'one']);
    await cut(store, 'rip');
    expect(await ticks(store)).toEqual(['rip']);
  });

  test('D17: what the file does not take is in one copy, and says so; a database that takes nothing leaves it to the file', async () => {
    const { here, how } = await phone();
    how.full = true;
    expect(await keepPicture(here, await keyOf('one'), bytesOf('one'))).toEqual({
      ok: true,
      value: 'database',
    });
    how.full = false;
    const key = await keyOf('two');
    expect(await broken(() => keepPicture(here, key, bytesOf('two')))).toEqual({ ok: true, value: 'files' });
    expect(textOf(await readPicture(here, key))).toBe('two');
    how.away = true;
    expect(await broken(() => keepPicture(here, key, bytesOf('two')))).toMatchObject({
      ok: false,
      error: { code: 'failed' },
    });
  });

  test('D4: on a full phone it is in neither copy, the room for the last tick is still laid by, and ticks go on', async () => {
    const { store, here, all, own } = await phone();
    await store.evenOut(); // lays the reserve by
    const key = await keyOf('one');
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...given) {
      if (this.name === 'pictures') throw new DOMException('full', 'QuotaExceededError');
      return put.apply(this, given);
    };
    expect(await keepPicture(here, key, bytesOf('one'))).toEqual({ ok: false, error: { code: 'full' } });
    IDBObjectStore.prototype.put = put;
    expect([await own(key), all.size]).toEqual([undefined, 0]);
    expect(await store.connection.use((db) => db.getKey('settings', 'reserve'))).toBe('reserve');
    await cut(store, 'rip');
    expect(await ticks(store)).toEqual(['rip']);
  });
});

describe('reading', () => {
  test('D18: the copy that has it whole gives it back, and the other gets it again', async () => {
    const { here, all, own, spoil, lose } = await phone();
    const key = await keyOf('one');
    await keepPicture(here, key, bytesOf('one'));
    await spoil(key, 'onf');
    expect(textOf(await readPicture(here, key))).toBe('one');
    expect(textOf((await own(key)) ?? '')).toBe('one');
    await lose(key);
    expect(textOf(await readPicture(here, key))).toBe('one');
    all.set(key, bytesOf('damaged'));
    expect(textOf(await readPicture(here, key))).toBe('one');
  });

  test('D18: damaged in both copies it is set aside, told every time, and comes back whole under its key', async () => {
    const { here, all, own, spoil } = await phone();
    const key = await keyOf('one');
    await keepPicture(here, key, bytesOf('one'));
    await spoil(key, 'bad');
    all.set(key, bytesOf('worse'));
    expect([await readPicture(here, key), await readPicture(here, key)]).toEqual(['damaged', 'damaged']);
    expect(textOf((await own(`${key}~damaged`)) ?? '')).toBe('bad');
    expect(textOf(all.get(`${key}~damaged`) ?? '')).toBe('worse');
    await evenPictures(here);
    expect([await own(key), all.get(key)]).toEqual([undefined, undefined]);
    await keepPicture(here, key, bytesOf('one'));
    expect(textOf(await readPicture(here, key))).toBe('one');
  });

  test('one that never came here is missing; where storage does not answer that is not said of it', async () => {
    const { here, how } = await phone();
    const key = await keyOf('one');
    expect(await readPicture(here, key)).toBe('missing');
    how.away = true;
    expect(await broken(() => readPicture(here, key))).toBe('no-answer');
  });
});

test('D17: two hundred pictures, each copy having lost every third: brought even, none is lost', async () => {
  const { here, all, own, lose } = await phone();
  const texts = Array.from({ length: 200 }, (_, k) => `picture ${k}`);
  for (const [k, text] of texts.entries()) {
    const key = await keyOf(text);
    await keepPicture(here, key, bytesOf(text));
    if (k % 3 === 0) await lose(key);
    if (k % 3 === 1) all.delete(key);
  }
  expect(await evenPictures(here)).toEqual({ alone: 0 });
  for (const text of texts) {
    const key = await keyOf(text);
    expect([textOf((await own(key)) ?? ''), textOf(all.get(key) ?? '')]).toEqual([text, text]);
  }
});

test('the copies brought even: no bytes are read where both have the same; one without an answer is told', async () => {
  const { here, how } = await phone();
  await keepPicture(here, await keyOf('one'), bytesOf('one'));
  const deaf = {
    ...here,
    files: {
      ...here.files,
      get: () => {
        throw new Error('read');
      },
    },
  };
  expect(await evenPictures(deaf)).toEqual({ alone: 0 });
  how.away = true;
  expect(await evenPictures(here)).toEqual({ alone: 1 });
});

test('a damaged copy is not handed to the other', async () => {
  const { here, all, own, spoil } = await phone();
  const key = await keyOf('one');
  await spoil(key, 'bad');
  expect(await evenPictures(here)).toEqual({ alone: 1 });
  expect([textOf((await own(key)) ?? ''), all.size]).toEqual(['bad', 0]);
});

test('D19: deleted for good it is in neither copy, nor what was set aside of it; others stay, of other jobs too', async () => {
  const { here, all } = await phone();
  const [key, other] = [await keyOf('one'), await keyOf('one', 'j2')];
  await keepPicture(here, key, bytesOf('one'));
  await keepPicture(here, other, bytesOf('one'));
  all.set(`${key}~damaged`, bytesOf('bad'));
  expect(await dropPictures(here, [key])).toBe(true);
  expect([...(await keptPictures(here))]).toEqual([other]);
  expect(textOf(await readPicture(here, other))).toBe('one');
  expect(await refusingDrop(here, other)).toBe(false);
});

async function refusingDrop(here: Parameters<typeof dropPictures>[0], key: string): Promise<boolean> {
  let done = true;
  const { delete: own } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.delete = () => {
    throw new DOMException('no', 'DataError');
  };
  await refusing(async () => {
    done = await dropPictures(here, [key]);
  });
  IDBObjectStore.prototype.delete = own;
  return done;
}
