import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entry } from '../../../src/job/entry';
import { crc32 } from '../../../src/store/crc32';
import { findJournal, tidied } from '../../../src/store/journal/files';
import { bytesOf, readLines } from '../../../src/store/journal/lines';
import { keptOf, type Row, rowKey, rowsOf, sumOf } from '../../../src/store/journal/row';
import { pairsIn } from '../../../src/store/values';
import { runs } from '../../runs';
import { memoryFolder } from './memory-folder';

const entry = (count: number, job = 'j1', label = 'Cut: Left “3 ⅜”'): Entry => ({
  job,
  device: 'phone',
  count,
  at: '2026-11-25T10:00:00.000Z',
  act: `phone.${count}`,
  label,
  kind: 'tick',
  op: 'cut/b1/s1/1',
  figure: '3/4',
});
const logged = (count: number, job = 'j1'): Row => ['log', entry(count, job)];

describe('lines', () => {
  test('come back as they were written, whatever the language of a label', () => {
    const rows: Row[] = [['begin', 1], logged(1), ['settings', 'theme', 'satin'], ['shop', 'kerf', '1/8']];
    expect(readLines(bytesOf(rows))).toEqual({ rows, damaged: [], mended: 0, later: 0 });
  });

  test('D10: one byte turned, whichever and to whatever, is put right: nothing is lost', () => {
    const rows = [logged(1), logged(2), logged(3)];
    const good = bytesOf(rows);
    for (let at = 0; at < good.length - 1; at += 1)
      for (const turn of [1, 0x20, 0x80, 0xff, (good[at] ?? 0) ^ 10]) {
        if (turn === 0) continue; // the end of a line turned into itself
        const bytes = good.slice();
        bytes[at] = (bytes[at] ?? 0) ^ turn;
        const read = readLines(bytes);
        expect([at, turn, read.rows]).toEqual([at, turn, rows]);
        expect([read.damaged, read.mended]).toEqual([[], 1]);
      }
  });

  test('D10: more than one byte turned in a line: it is set aside, never read as something else', () => {
    const rows = [logged(1), logged(2), logged(3)];
    const good = bytesOf(rows);
    const [first = 0] = rows.map((row) => bytesOf([row]).length);
    const turned = fc.tuple(fc.nat(first - 2), fc.integer({ min: 1, max: 255 }));
    fc.assert(
      fc.property(fc.uniqueArray(turned, { minLength: 2, maxLength: 5, selector: ([at]) => at }), (turns) => {
        const bytes = good.slice();
        for (const [at, turn] of turns) bytes[at] = (bytes[at] ?? 0) ^ turn;
        const read = readLines(bytes);
        for (const row of read.rows) expect(rows).toContainEqual(row);
        expect(read.rows.length).toBeGreaterThanOrEqual(2);
        if (read.rows.length === 2) expect(read.damaged.length).toBeGreaterThan(0);
      }),
      { numRuns: runs(400) },
    );
  });

  test('a line whose write was cut off is no damage, and the next one takes its place', async () => {
    const folder = memoryFolder();
    await folder.append('kept-a', bytesOf([logged(1)]));
    const torn = bytesOf([logged(2)]);
    folder.files.set(
      'kept-a',
      new Uint8Array([...(folder.files.get('kept-a') ?? []), ...torn.subarray(0, 60)]),
    );
    expect(readLines(folder.files.get('kept-a') ?? torn).damaged).toEqual([]);
    await folder.append('kept-a', bytesOf([logged(3)]));
    expect(readLines(folder.files.get('kept-a') ?? torn)).toEqual({
      rows: [logged(1), logged(3)],
      damaged: [],
      mended: 0,
      later: 0,
    });
  });

  test('D10: a damaged line is kept with the rows set aside, by the label of its act, also where the file is begun anew', async () => {
    const folder = memoryFolder();
    const first = await tidied(folder, await findJournal(folder));
    await folder.append(first.current, bytesOf([logged(1), ['log', entry(2, 'j1', 'Cut: Left 3" rail')]]));
    const bytes = (folder.files.get(first.current) ?? new Uint8Array()).slice();
    const text = new TextDecoder().decode(bytes);
    for (const word of ['"count":2', 'phone.2'])
      bytes[new TextEncoder().encode(text.slice(0, text.indexOf(word))).length + 2] = 88;
    folder.files.set(first.current, bytes);
    for (let start = 0; start < 3; start += 1) {
      const { log, aside } = keptOf((await tidied(folder, await findJournal(folder))).rows);
      expect([log.size, [...aside.values()].map(({ from, why }) => [from, why])]).toEqual([
        1,
        [['the journal', 'a damaged line of “Cut: Left 3" rail”']],
      ]);
    }
  });

  test('cut off anywhere, every whole line before the cut is there', () => {
    const rows = [logged(1), logged(2), logged(3)];
    const lengths = rows.map((row) => bytesOf([row]).length);
    const bytes = bytesOf(rows);
    for (let cut = 0; cut <= bytes.length; cut += 1) {
      let whole = 0;
      for (let end = 0; whole < 3 && end + (lengths[whole] ?? 0) <= cut; whole += 1)
        end += lengths[whole] ?? 0;
      const { rows: read } = readLines(bytes.subarray(0, cut));
      // the last byte of a line is its end: a line without it may be whole all the same
      expect(read.length - whole === 0 || read.length - whole === 1).toBe(true);
      expect(read).toEqual(rows.slice(0, read.length));
    }
  });

  test('what no version wrote is damaged, never an exception', () => {
    const text = (s: string) => new TextEncoder().encode(s);
    for (const s of ['\n\n', '00000000 {}\n', 'xyz', '8587d865 "a"\n', `${'9'.repeat(5000)}\n`])
      expect(readLines(text(s)).rows).toEqual([]);
  });
});

test('D12: rows of a kind only a later version knows stay in the files, however large or damaged these are', async () => {
  const folder = memoryFolder();
  const first = await tidied(folder, await findJournal(folder));
  const json = '["photo","j1",7]';
  const check = crc32(new TextEncoder().encode(json)).toString(16).padStart(8, '0');
  await folder.append(first.current, new TextEncoder().encode(`${check} ${json}\n00000000 damaged\n`));
  for (let k = 0; k < 9; k += 1)
    await folder.append(first.current, bytesOf([['settings', 'figure', `${'x'.repeat(60_000)}${k}`]]));
  for (let k = 0; k < 3; k += 1) {
    const now = await tidied(folder, await findJournal(folder));
    await folder.append(now.current, bytesOf([logged(k + 1)]));
  }
  expect(keptOf((await findJournal(folder)).rows).log.size).toBe(3);
  expect([...folder.files.values()].map((bytes) => new TextDecoder().decode(bytes)).join('')).toContain(json);
});

describe('what rows come to', () => {
  test('the last word of a setting, none once taken away, and no entry of a job taken out for good', () => {
    const kept = keptOf([
      logged(1),
      ['settings', 'theme', 'satin'],
      ['settings', 'theme', 'blued'],
      ['shop', 'kerf', '1/8'],
      ['shop', 'kerf', null],
      logged(1, 'j2'),
      ['purge', 'j1'],
    ]);
    expect([...kept.log.values()].map((e) => e.job)).toEqual(['j2']);
    expect([...pairsIn(kept.settings)]).toEqual([['theme', 'blued']]);
    expect(pairsIn(kept.shop).size).toBe(0);
    expect(keptOf(rowsOf(kept))).toEqual(kept);
  });

  test('a sum does not depend on order, and differs for one entry more, fewer or other', () => {
    const keys = Array.from({ length: 200 }, (_, k) => rowKey(entry(k + 1)));
    const sum = sumOf(keys);
    expect(sumOf([...keys].reverse())).toEqual(sum);
    for (let k = 0; k < keys.length; k += 1) {
      const fewer = keys.filter((_, n) => n !== k);
      expect(sumOf(fewer).hash).not.toBe(sum.hash);
      expect(sumOf([...fewer, rowKey(entry(k + 1, 'j9'))]).hash).not.toBe(sum.hash);
    }
  });
});

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
