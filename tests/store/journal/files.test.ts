import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findJournal, tidied } from '../../../src/store/journal/files';
import { keptOf } from '../../../src/store/journal/kept-rows';
import { bytesOf } from '../../../src/store/journal/lines';
import { type Row, rowKey } from '../../../src/store/journal/row';
import { pairsIn } from '../../../src/store/values';
import { runs } from '../../runs';
import { memoryFolder } from './memory-folder';
import { logged } from './rows';

describe('files', () => {
  /** Opens as a page does: tidies, and writes on what was found. */
  async function opened(folder: ReturnType<typeof memoryFolder>) {
    return tidied(folder, await findJournal(folder));
  }

  const keys = async (folder: ReturnType<typeof memoryFolder>) =>
    [...keptOf((await findJournal(folder)).rows).log.keys()].sort();

  test('D11: killed at any byte of any write, every row acknowledged before is there at the next start', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.constantFrom('add', 'add', 'add', 'open', 'big'), { minLength: 1, maxLength: 25 }),
        fc.nat(40),
        fc.nat(100_000),
        async (acts, killAt, cut) => {
          const folder = memoryFolder();
          const acknowledged = new Set<string>();
          let calls = 0;
          folder.fail = () => {
            calls += 1;
            if (calls === killAt + 1) return cut;
            if (calls > killAt) throw new Error('dead');
            return undefined;
          };
          let count = 0;
          try {
            let found = await opened(folder);
            for (const act of acts) {
              if (act === 'open') found = await opened(folder);
              else {
                const many = act === 'big' ? 900 : 1;
                const rows = Array.from({ length: many }, () => {
                  count += 1;
                  return logged(count);
                });
                await folder.append(found.current, bytesOf(rows));
                for (const row of rows) if (row[0] === 'log') acknowledged.add(rowKey(row[1]));
              }
            }
          } catch {
            // the phone died here
          }
          folder.fail = undefined;
          await opened(folder);
          const there = new Set(await keys(folder));
          for (const key of acknowledged) expect(there).toContain(key);
        },
      ),
      { numRuns: runs(40) },
    );
  });

  test('D11: a file lost whole or damaged takes with it only what was written since the other was begun', async () => {
    const folder = memoryFolder();
    const first = await opened(folder);
    await folder.append(first.current, bytesOf(Array.from({ length: 3000 }, (_, k) => logged((k % 3) + 1))));
    const second = await opened(folder);
    expect(second.current).not.toBe(first.current);
    expect(second.turn).toBe(first.turn + 1);
    for (const name of folder.files.keys()) {
      const kept = folder.files.get(name) ?? new Uint8Array();
      folder.files.set(name, new Uint8Array());
      expect(await keys(folder)).toHaveLength(3);
      folder.files.set(name, kept);
    }
  });

  test('superseded rows do not pile up: a setting kept 20,000 times takes the room of one', async () => {
    const folder = memoryFolder();
    let found = await opened(folder);
    for (let k = 0; k < 20; k += 1) {
      const rows = Array.from({ length: 1000 }, (_, n): Row => ['settings', 'here', `#/saw/${k}/${n}`]);
      await folder.append(found.current, bytesOf(rows));
      found = await opened(folder);
    }
    const bytes = [...folder.files.values()].reduce((n, file) => n + file.length, 0);
    expect(bytes).toBeLessThan(1 << 20);
    expect([...pairsIn(keptOf((await findJournal(folder)).rows).settings)]).toEqual([
      ['here', '#/saw/19/999'],
    ]);
  });

  test('a disk that gives back other than was written keeps the old file', async () => {
    const folder = memoryFolder();
    const first = await opened(folder);
    await folder.append(first.current, bytesOf(Array.from({ length: 3000 }, () => logged(1))));
    const write = folder.write;
    const lying = { ...folder, write: (name: string, bytes: Uint8Array) => write(name, bytes.subarray(1)) };
    const found = await tidied(lying, await findJournal(folder));
    expect(found.current).toBe(first.current);
    expect(await keys(folder)).toHaveLength(1);
  });
});
