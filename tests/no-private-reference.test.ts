import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';

/**
 * Whoever has the project has all it stands on. A number of a paper that is not in it tells a reader nothing, so what
 * is worked out elsewhere stands in a README as a numbered example, and that is what code and tests cite.
 */
const root = path.resolve(import.meta.dirname, '..');
const left = new Set(['node_modules', 'dist', '.git', 'test-results', 'package-lock.json', 'e2e/shots']);

/** Numbers of examples, steps and chapters, and the paper's own names. */
const inText: readonly RegExp[] = [
  /\b(EX ?[0-9]+[a-f]?|ex[0-9][a-f]|H\.[0-9]+|[Ss]ection[- ]H|trade\.md|trade[ ]spec)\b/g,
  /\b[BC][′']?\d{1,2}\.\d+\b/g,
  /\b[BC]′ ?\d/g,
];
const inName = /section[-]h|\bex[0-9][a-f]/i;

const referencesIn = (text: string): readonly string[] =>
  inText.flatMap((pattern) => text.match(pattern) ?? []);

/** Every file below a folder, by its path from the root. */
function filesBelow(folder: string): readonly string[] {
  return readdirSync(path.join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const at = path.posix.join(folder, entry.name);
    if (left.has(entry.name) || left.has(at)) return [];
    if (entry.isDirectory()) return filesBelow(at);
    return entry.isFile() ? [at] : [];
  });
}

const textOf = (file: string): string | undefined => {
  const bytes = readFileSync(path.join(root, file));
  return bytes.includes(0) ? undefined : bytes.toString('utf8');
};

const files = filesBelow('');

describe('what is looked for', () => {
  // Put together here, so that this file holds none of them.
  test.each([
    ['EX', ' 7d'],
    ['EX', '10b'],
    ['ex', '5a'],
    ['H', '.10'],
    ['section', ' H'],
    ['Section', '-H'],
    ['trade', '.md'],
    ['trade', ' spec'],
    ['C', '8.4'],
    ['C', '10.3'],
    ['B', '′9'],
    ['B', '′ 6'],
    ['B', "'12.1"],
  ])('%s%s is found', (a, b) => expect(referencesIn(`see ${a}${b}: a sum`)).not.toEqual([]));

  test.each([
    'EXIT 1',
    'hex5',
    'example 5a',
    'Example 3 of stacks',
    'ECMA-402',
    "'B', '9'",
    'ABC1.5',
    'trade/x.ts',
  ])('“%s” is no such thing', (text) => expect(referencesIn(text)).toEqual([]));

  test('names of files are looked at too', () => {
    const named = (name: string) => inName.test(name);
    expect([named(`section${'-'}h.test.ts`), named(`tests/ex${'5a'}.ts`)]).toEqual([true, true]);
    expect([named('sections.ts'), named('examples.ts'), named('tests/hex5a.ts')]).toEqual([
      false,
      false,
      false,
    ]);
  });

  test('the walk reaches sources, tests and documents, leaves out what others made, and reads no pictures', () => {
    const own = 'tests/no-private-reference.test.ts';
    expect(files).toEqual(expect.arrayContaining(['README.md', 'src/length/length.ts', 'package.json', own]));
    expect(files.filter((file) => /(^|\/)(node_modules|dist|\.git)\//.test(file))).toEqual([]);
    expect(textOf('public/icon-192.png')).toBeUndefined();
  });
});

test('no file cites a paper that a stranger does not have', () => {
  const cited = files.flatMap((file) =>
    referencesIn(textOf(file) ?? '').map((reference) => `${file}: ${reference}`),
  );
  expect(cited).toEqual([]);
});

test('no file is named after one', () => {
  expect(files.filter((file) => inName.test(file))).toEqual([]);
});
