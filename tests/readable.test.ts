import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';

const root = path.resolve(import.meta.dirname, '..');
const written = ['src', 'tests', 'e2e', 'build'].flatMap((folder) =>
  readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.(ts|tsx|mjs)$/.test(file))
    .map((file) => path.join(folder, file)),
);

const isComment = (line: string): boolean => /^\s*(\/\/|\/?\*)/.test(line);
/** An example is one expression, an address one word: neither is broken. */
const isWhole = (line: string): boolean => line.includes('@example') || /\S{80}/.test(line);

test('no line of a comment is wider than 120', () => {
  expect(written.length).toBeGreaterThan(500);
  const wide = written.flatMap((file) =>
    readFileSync(path.join(root, file), 'utf8')
      .split('\n')
      .flatMap((line, k) =>
        line.length > 120 && isComment(line) && !isWhole(line) ? [`${file}:${k + 1}`] : [],
      ),
  );
  expect(wide).toEqual([]);
});

test('no file of the app is longer than 300 lines', () => {
  const long = written.filter(
    (file) =>
      file.startsWith('src') &&
      readFileSync(path.join(root, file), 'utf8').trimEnd().split('\n').length > 300,
  );
  expect(long).toEqual([]);
});
