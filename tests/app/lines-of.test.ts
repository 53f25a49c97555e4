import { expect, test } from 'vitest';
import { linesOf } from '../../src/app/lines-of';

async function all(file: Blob, most = 1e9): Promise<readonly string[]> {
  const found: string[] = [];
  for await (const line of linesOf(file, most)) found.push(line);
  return found;
}

test('the lines of a file longer than a piece of it, signs of several bytes across its seams too', async () => {
  // “″” is three bytes in UTF-8: 700,001 of them are cut by every seam of a megabyte
  const lines = ['a', '″'.repeat(700_001), '', 'b'.repeat(2_500_000), 'end'];
  expect(await all(new Blob([`${lines.join('\n')}\n`]))).toEqual(lines);
  expect(await all(new Blob([lines.join('\n')]))).toEqual(lines);
});

test('a line longer than it may be ends the reading', async () => {
  expect(await all(new Blob(['a\n', 'b'.repeat(5_000_000)]), 1000)).toEqual(['a']);
});
