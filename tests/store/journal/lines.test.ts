import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crc32 } from '../../../src/store/crc32';
import { findJournal, tidied } from '../../../src/store/journal/files';
import { keptOf } from '../../../src/store/journal/kept-rows';
import { bytesOf, readLines } from '../../../src/store/journal/lines';
import type { Row } from '../../../src/store/journal/row';
import { runs } from '../../runs';
import { memoryFolder } from './memory-folder';
import { entry, logged } from './rows';

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
