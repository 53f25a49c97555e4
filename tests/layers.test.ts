import { readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';

/**
 * What each folder may see. The compiler breaks on a wrong import (each is a project of its own); this names the
 * rule.
 */
const sees: Readonly<Record<string, readonly string[]>> = {
  length: [],
  trade: ['length'],
  job: ['length', 'trade'],
  plan: ['length', 'trade', 'job'],
  store: ['length', 'trade', 'job'],
  ui: ['length', 'trade'],
  screens: ['length', 'trade', 'job', 'plan', 'store', 'ui'],
  app: ['length', 'trade', 'job', 'plan', 'store', 'ui', 'screens'],
  workers: ['length', 'trade', 'job', 'store'],
};

const src = path.resolve(import.meta.dirname, '../src');
const files = (folder: string): readonly string[] =>
  readdirSync(path.join(src, folder), { recursive: true, encoding: 'utf8' }).filter((f) => /\.tsx?$/.test(f));

const isFile = (file: string): boolean => statSync(file, { throwIfNoEntry: false })?.isFile() ?? false;

/** Every file of the app, by its path from `src`, with those it imports. */
function imports(): ReadonlyMap<string, readonly string[]> {
  const all = Object.keys(sees).flatMap((folder) => files(folder).map((file) => path.join(folder, file)));
  return new Map(
    all.map((file) => {
      const text = readFileSync(path.join(src, file), 'utf8');
      const named = [...text.matchAll(/(?:from|import\() ?'(\.[^']+)'/g)].map(([, to = '']) =>
        path.join(path.dirname(file), to),
      );
      return [
        file,
        named.flatMap((to) => [`${to}.ts`, `${to}.tsx`].filter((at) => isFile(path.join(src, at)))),
      ];
    }),
  );
}

/** The first circle found: files of which each imports the next, and the last the first. */
function circleIn(graph: ReadonlyMap<string, readonly string[]>): readonly string[] | undefined {
  const done = new Set<string>();
  const from = (file: string, way: readonly string[]): readonly string[] | undefined => {
    if (way.includes(file)) return way.slice(way.indexOf(file));
    if (done.has(file)) return undefined;
    for (const next of graph.get(file) ?? []) {
      const found = from(next, [...way, file]);
      if (found) return found;
    }
    done.add(file);
    return undefined;
  };
  for (const file of graph.keys()) {
    const found = from(file, []);
    if (found) return found;
  }
  return undefined;
}

test('no files import each other in a circle', () => {
  expect(
    circleIn(
      new Map([
        ['a', ['b']],
        ['b', ['c']],
        ['c', ['b']],
      ]),
    ),
  ).toEqual(['b', 'c']);
  expect(imports().get('app/main.tsx')).toContain('app/state.ts');
  expect(circleIn(imports())).toBeUndefined();
});

test('no folder of a screen knows another’s: what several need is shared', () => {
  const folderOf = (file: string) => /^screens\/([^/]+)\//.exec(file)?.[1];
  const across = [...imports()].flatMap(([file, to]) =>
    to
      .filter(
        (at) => folderOf(at) !== undefined && folderOf(at) !== folderOf(file) && folderOf(at) !== 'shared',
      )
      .filter(() => file.startsWith('screens/'))
      .map((at) => `${file} → ${at}`),
  );
  expect(across).toEqual([]);
});

/** What of the store a screen may know: what the bench is made of, and handing over. */
test('screens know no store but through the bench, and hand over', () => {
  const known = [...imports()]
    .filter(([file]) => file.startsWith('screens/') && file !== 'screens/bench.ts')
    .flatMap(([file, to]) => to.filter((at) => at.startsWith('store/')).map((at) => `${file} → ${at}`));
  expect(known.filter((line) => !line.includes('→ store/handover/'))).toEqual([]);
});

describe.each(Object.entries(sees))('src/%s', (folder, allowed) => {
  test(`imports only from ${allowed.join(', ') || 'itself'}`, () => {
    for (const file of files(folder)) {
      const text = readFileSync(path.join(src, folder, file), 'utf8');
      for (const [, to = ''] of text.matchAll(/from '(\.[^']+)'/g)) {
        const target =
          path.relative(src, path.resolve(src, folder, path.dirname(file), to)).split(path.sep)[0] ?? '';
        const outside = target.startsWith('..') ? 'outside' : target;
        if (folder === 'app' && outside === 'outside') continue; // demo-data, as a file
        expect([folder, ...allowed], `${folder}/${file} imports ${to}`).toContain(outside);
      }
    }
  });

  test('is told so to the compiler', () => {
    const project = JSON.parse(readFileSync(path.join(src, folder, 'tsconfig.json'), 'utf8'));
    const seen = project.references.map((r: { readonly path: string }) => r.path.replace('../', ''));
    expect(seen).toEqual(allowed);
  });
});

test('length and trade use no clock, no chance, no class and no page', () => {
  for (const folder of ['length', 'trade']) {
    for (const file of files(folder)) {
      const text = readFileSync(path.join(src, folder, file), 'utf8');
      expect(text, file).not.toMatch(
        /\bDate\b|Math\.random|\bclass [A-Z]|\bdocument\b|\bwindow\b|parseFloat|Number\(.*\.\d/,
      );
    }
  }
});

test('only length knows fraction.js', () => {
  for (const folder of Object.keys(sees).filter((f) => f !== 'length')) {
    for (const file of files(folder)) {
      expect(readFileSync(path.join(src, folder, file), 'utf8'), `${folder}/${file}`).not.toContain(
        "'fraction.js'",
      );
    }
  }
});
