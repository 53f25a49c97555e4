import { readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';

const root = path.resolve(import.meta.dirname, '..');
const filesOf = (folder: string): readonly string[] =>
  readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.(tsx?|mjs|js)$/.test(file))
    .map((file) => path.join(folder, file));

const isFile = (file: string): boolean =>
  statSync(path.join(root, file), { throwIfNoEntry: false })?.isFile() ?? false;
const fileAt = (from: string, to: string): string | undefined => {
  const at = path.join(path.dirname(from), to);
  return [at, `${at}.ts`, `${at}.tsx`, at.replace(/\.js$/, '.ts')].find(isFile);
};

/** What is asked of each file: names, or everything (`*`) where it is taken as a whole. */
function asked(): ReadonlyMap<string, ReadonlySet<string>> {
  const all = new Map<string, Set<string>>();
  const ask = (from: string, to: string, names: readonly string[]) => {
    const file = fileAt(from, to);
    if (!file) return;
    const known = all.get(file) ?? new Set();
    for (const name of names) known.add(name);
    all.set(file, known);
  };
  for (const file of ['src', 'tests', 'e2e', 'build'].flatMap(filesOf)) {
    const text = readFileSync(path.join(root, file), 'utf8');
    for (const [, names = '', to = ''] of text.matchAll(
      /(?:import|export)(?: type)?[^'";{]*\{([^}]*)\} from '(\.[^']+)'/g,
    )) {
      ask(
        file,
        to,
        names.split(',').map(
          (name) =>
            name
              .replace(/\btype /, '')
              .trim()
              .split(' as ')[0] ?? '',
        ),
      );
    }
    for (const [, to = ''] of text.matchAll(/(?:\* as \w+ from |export \* from |import\()\s*'(\.[^']+)'/g))
      ask(file, to, ['*']);
  }
  return all;
}

/** Asked for by the build, or by the worker that is no module of the page. */
const byOthers = ['src/app/manifest.ts', 'src/sw-share.ts'];

test('what no other file asks for is not exported', () => {
  const wanted = asked();
  const idle = filesOf('src')
    .filter((file) => !byOthers.includes(file))
    .flatMap((file) => {
      const names = wanted.get(file) ?? new Set();
      const text = readFileSync(path.join(root, file), 'utf8');
      return [...text.matchAll(/^export (?:async )?(?:const|function\*?|type|class) (\w+)/gm)]
        .map(([, name = '']) => name)
        .filter((name) => !names.has('*') && !names.has(name))
        .map((name) => `${file}: ${name}`);
    });
  expect(wanted.size).toBeGreaterThan(300);
  expect(idle).toEqual([]);
});
