import { describe, expect, test } from 'vitest';
import { logInHand } from '../../src/app/log-in-hand';
import { editJob } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { fold } from '../../src/job/log';
import type { Store } from '../../src/store/store';
import { begun, eachAnew, open, openWith, tick } from './page-of-phone';

eachAnew();

describe('tried again', () => {
  test('D7: an act that was kept unheard is there once', async () => {
    const store = await openWith(undefined, 20);
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    const own = IDBDatabase.prototype.transaction;
    IDBDatabase.prototype.transaction = function silent(this: IDBDatabase, ...args) {
      if (args[1] !== 'readwrite') throw new DOMException('x', 'UnknownError');
      const tx = own.apply(this, args);
      const listen = tx.addEventListener.bind(tx);
      tx.addEventListener = (name: string, heard: EventListener) => {
        if (name !== 'complete') listen(name, heard);
      };
      return tx;
    };
    const act = { job: 'j1', label: 'a', changes: [tick('a')] };
    const said = await store.append(act);
    IDBDatabase.prototype.transaction = own;
    const before = (await store.load('j1')).entries.length;
    await store.append(act);
    expect([said.ok, before, (await store.load('j1')).entries.length]).toEqual([false, 2, 2]);
  });

  test('twice at once, too', async () => {
    const store = await begun();
    const act = { job: 'j1', label: 'a', changes: [tick('a')] };
    await Promise.all([store.append(act), store.append(act)]);
    expect((await store.load('j1')).entries.length).toBe(2);
  });

  test('an unsaved change never writes by itself over what another page has said since', async () => {
    const [store, other] = [await begun(), await open()];
    let full = true;
    const append: Store['append'] = async (act) =>
      full ? { ok: false, error: { code: 'full' } } : store.append(act);
    const log = logInHand({ ...store, append }, { setAside: 0, onOther: () => undefined });
    await log.load('j1');
    const length = (value: string): Change => ({ kind: 'edit', path: 'boards/b1/length', value });
    await log.write('old', [length('5')]);
    await other.append({ job: 'j1', label: 'new', changes: [length('6')] });
    await log.catchUp();
    full = false;
    await log.write('x', [tick('x')]);
    expect(fold((await store.load('j1')).entries).values.get('boards/b1/length')).toBe('6');
    expect(log.unsaved.now.value.map(({ label }) => label)).toEqual(['old']);
    // said anew of the same thing, the old one is done with
    await log.write('newer', [length('7')]);
    expect(log.unsaved.now.value).toEqual([]);
  });
});
