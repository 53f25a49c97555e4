import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findJournal, tidied } from '../../../src/store/journal/files';
import type { Row } from '../../../src/store/journal/row';
import { type Open, open } from '../../../src/store/journal/serve';
import { runs } from '../../runs';
import { type MemoryFolder, memoryFolder } from './memory-folder';

const page = async (folder: MemoryFolder): Promise<Open> =>
  open(folder, await tidied(folder, await findJournal(folder)));

/** As the worker does: the answer first, then tidying where it is due. */
async function append(at: Open, rows: readonly Row[]): Promise<void> {
  await at.serve({ what: 'append', rows });
  if (at.due()) await at.tidy().catch(() => undefined);
}

const logged = (device: string, count: number): Row => [
  'log',
  {
    job: 'j',
    device,
    count,
    at: '',
    act: `${device}.${count}`,
    label: '',
    kind: 'edit',
    path: 'name',
    value: 'x',
  },
];
let at = 0;
const figure = (text: string, bytes = 10_000): Row => {
  at += 1;
  return ['shop', 'figure', { text, more: 'x'.repeat(bytes) }, new Date(at * 1000).toISOString()];
};
const size = (folder: MemoryFolder): number =>
  [...folder.files.values()].reduce((n, file) => n + file.length, 0);

async function standing(
  at: Open,
): Promise<{ readonly entries: readonly string[]; readonly figure: unknown }> {
  const { rows = [] } = await at.serve({ what: 'rows' });
  return {
    entries: rows.flatMap((row) => (row[0] === 'log' ? [`${row[1].device}${row[1].count}`] : [])).sort(),
    figure: rows.flatMap((row) => (row[0] === 'shop' ? [(row[2] as { readonly text: string }).text] : []))[0],
  };
}

test('keys of Figure do not pile up while the app runs: a thousand take the room of some', async () => {
  const folder = memoryFolder();
  const one = await page(folder);
  await append(one, [logged('a', 1)]);
  for (let k = 0; k < 1000; k += 1) {
    await append(one, [figure(`${k}`)]);
    expect(size(folder)).toBeLessThan(700_000);
  }
  expect(await standing(one)).toEqual({ entries: ['a1'], figure: '999' });
  expect(await standing(await page(folder))).toEqual({ entries: ['a1'], figure: '999' });
});

test('two pages: what one writes after the other began the files anew is found, by both and by the next start', async () => {
  const folder = memoryFolder();
  const [one, other] = [await page(folder), await page(folder)];
  for (let k = 0; k < 200; k += 1) {
    await append(one, [logged('a', k), figure(`a${k}`)]);
    await append(other, [logged('b', k)]);
    if (k % 20 === 0) expect((await standing(other)).figure).toBe(`a${k}`);
  }
  const all = (await standing(one)).entries;
  expect(all).toHaveLength(400);
  expect((await standing(other)).entries).toEqual(all);
  expect((await standing(await page(folder))).entries).toEqual(all);
  expect(size(folder)).toBeLessThan(800_000);
});

test('a log that grows is not written anew again and again: nothing of it is written over', async () => {
  const folder = memoryFolder();
  const one = await page(folder);
  let written = 0;
  const { write } = folder;
  Object.assign(folder, {
    write: (name: string, bytes: Uint8Array) => {
      written += 1;
      return write(name, bytes);
    },
  });
  await append(
    one,
    Array.from({ length: 10_000 }, (_, k) => logged('a', k)),
  );
  expect(written).toBe(0);
});

test('D11: two pages killed at any call, and started again: every acknowledged row is there', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.tuple(fc.constantFrom(0, 1), fc.boolean()), { maxLength: 40 }),
      fc.nat({ max: 150 }),
      fc.nat({ max: 400_000 }),
      async (acts, dies, cut) => {
        const folder = memoryFolder();
        const pages = [await page(folder), await page(folder)];
        const kept: string[] = [];
        let calls = 0;
        folder.fail = () => {
          calls += 1;
          if (calls > dies) throw new Error('dead');
          return calls === dies ? cut : undefined;
        };
        let last: string | undefined;
        try {
          for (const [k, [who, big]] of acts.entries()) {
            const device = who === 0 ? 'a' : 'b';
            const rows = [logged(device, k), ...(big ? [figure(`${k}`, 200_000)] : [])];
            await pages[who]?.serve({ what: 'append', rows });
            kept.push(`${device}${k}`);
            if (big) last = `${k}`;
            if (pages[who]?.due()) await pages[who]?.tidy();
          }
        } catch {
          // killed
        }
        folder.fail = undefined;
        const found = await standing(await page(folder));
        for (const key of kept) expect(found.entries).toContain(key);
        // the one that was being written may have come through
        if (last !== undefined) expect(Number(found.figure)).toBeGreaterThanOrEqual(Number(last));
      },
    ),
    { numRuns: runs(60) },
  );
});
