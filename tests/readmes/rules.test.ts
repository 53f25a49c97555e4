import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';

const root = path.resolve(import.meta.dirname, '../..');
const read = (file: string): string => readFileSync(path.join(root, file), 'utf8');
const filesIn = (folder: string, named: RegExp): readonly string[] =>
  readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => named.test(file))
    .map((file) => path.join(folder, file));

/** Numbers a test cites, before a colon: `M4: …`, `D1, D7: …`. */
const citedIn = (text: string): readonly string[] =>
  [...text.matchAll(/\b[MD]\d+(?:, [MD]\d+)*(?=: )/g)].flatMap(([cited]) => cited.split(', '));

const tests = ['tests', 'e2e'].flatMap((folder) => filesIn(folder, /\.(ts|mjs)$/));
const cited = new Set(
  tests.filter((file) => !file.includes('readmes')).flatMap((file) => citedIn(read(file))),
);

describe.each([
  ['M', 'src/job/README.md'],
  ['D', 'src/store/README.md'],
])('the rules %s', (letter, readme) => {
  const rules = [...read(readme).matchAll(/^\| \*\*([MD]\d+)\*\* \|? ?/gm)].map(([, rule = '']) => rule);

  test('are numbered from 1', () => expect(rules).toEqual(rules.map((_, k) => `${letter}${k + 1}`)));

  test('are each cited by a test, and a test cites no other', () => {
    const own = [...cited].filter((rule) => rule.startsWith(letter));
    const byNumber = (a: string, b: string) => Number(a.slice(1)) - Number(b.slice(1));
    expect(own.sort(byNumber)).toEqual(rules);
  });
});

test('a number is cited before a colon, alone or among others', () => {
  expect(citedIn("test('M4, M6: both stand') // D12: too; not M9, nor an M3 machine screw")).toEqual([
    'M4',
    'M6',
    'D12',
  ]);
});

const guides = [
  'README.md',
  'DEVELOPERS.md',
  ...['src', 'tests', 'e2e', 'build', 'demo-data'].flatMap((folder) => filesIn(folder, /\.md$/)),
];

/** A heading as a link names it: small letters, no signs, blanks as hyphens. */
const anchorsOf = (text: string): readonly string[] =>
  [...text.matchAll(/^#+ (.+)$/gm)].map(([, heading = '']) =>
    heading
      .toLowerCase()
      .replace(/[^\p{L}\p{N} -]/gu, '')
      .replaceAll(' ', '-'),
  );

test.each(guides)('every link of %s leads to a file and a heading that are there', (guide) => {
  for (const [link, to = ''] of read(guide).matchAll(/\]\(([^)\s]+)\)/g)) {
    if (/^https?:/.test(to)) continue;
    const [file = '', heading] = to.split('#');
    const target = file === '' ? guide : path.join(path.dirname(guide), file);
    expect(existsSync(path.join(root, target)), link).toBe(true);
    if (heading !== undefined) expect(anchorsOf(read(target)), link).toContain(heading);
  }
});

/** Files a guide names from the root of the project, in backticks. */
const namedIn = (text: string): readonly string[] =>
  [...text.matchAll(/`((?:src|tests|e2e|build|public|demo-data)\/[\w./-]+\.\w+)`/g)].map(
    ([, file = '']) => file,
  );

test.each(guides)('every file that %s names is there', (guide) => {
  expect(namedIn(read(guide)).filter((file) => !existsSync(path.join(root, file)))).toEqual([]);
});
