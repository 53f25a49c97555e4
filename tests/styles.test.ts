import path from 'node:path';
import { expect, test } from 'vitest';
import { classesOf, filesOf, styleRules, textOf } from './style-sheets';

const rules = styleRules();
const sources = filesOf(/\.(tsx?|html)$/);

/** The layer whose rules stand in a file: later ones win over earlier ones. */
function layerOf(file: string): string {
  if (/^ui\/(tokens|base)\.css$/.test(file)) return 'base';
  if (file.startsWith('ui/')) return 'kit';
  return file.startsWith('screens/shared/') ? 'shared' : 'screens';
}

/** The sheets that style a class: those in which it begins a selector. */
function owners(): ReadonlyMap<string, ReadonlySet<string>> {
  const found = new Map<string, Set<string>>();
  for (const { file, selector } of rules) {
    const [first] = classesOf(selector);
    if (first) found.set(first, (found.get(first) ?? new Set()).add(file));
  }
  return found;
}

test('every rule stands in the layer of its folder', () => {
  expect(rules.length).toBeGreaterThan(500);
  const stray = rules.filter(({ file, within }) => within[0] !== `@layer ${layerOf(file)}`);
  expect(stray.map(({ file, selector }) => `${file}: ${selector}`)).toEqual([]);
});

test('a class begins the selectors of one sheet alone: the sheet of its component', () => {
  const twice = [...owners()].filter(([, files]) => files.size > 1);
  expect(twice.map(([name, files]) => `.${name}: ${[...files].join(', ')}`)).toEqual([]);
});

test('every class that a sheet names is one that the app writes', () => {
  const written = new Set(sources.flatMap((file) => textOf(file).match(/[a-z][\w-]*/gi) ?? []));
  const unknown = rules.flatMap(({ file, selector }) =>
    classesOf(selector).flatMap((name) => (written.has(name) ? [] : [`${file}: .${name}`])),
  );
  expect(unknown).toEqual([]);
});

/** The sheets that come with a file: its own and those of what it imports, whichever chunk they are in. */
function sheetsWith(file: string, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  const statically = /^(?:import|export)\b(?! type)[^;]*?'(\.[^']+)';/gm;
  for (const [, to = ''] of file.endsWith('.css') ? [] : textOf(file).matchAll(statically)) {
    const at = path.join(path.dirname(file), to);
    for (const next of [at, `${at}.ts`, `${at}.tsx`]) if (known.has(next)) sheetsWith(next, seen);
  }
  return seen;
}
const known = new Set([...sources, ...filesOf(/\.css$/)]);

/** The words that may be classes in the value of `class`: all of a string, what is quoted in an expression. */
const wordsOf = (value: string): readonly string[] => {
  const quoted = value.startsWith('"') ? [value] : (value.match(/'[^']*'|`[^`]*`/g) ?? []);
  return quoted.flatMap((text) => text.replace(/\$\{[^}]*\}/g, ' ').match(/[a-z][\w-]*/gi) ?? []);
};

/** The classes that a file writes. */
const writtenIn = (file: string): ReadonlySet<string> =>
  new Set(
    [...textOf(file).matchAll(/\bclass=("[^"]*"|\{[^\n]*\})/g)].flatMap(([, value = '']) => wordsOf(value)),
  );

test('what a file draws never stands unstyled: the sheets of its classes come with it or with the first screen', () => {
  const first = new Set(
    textOf('app/first.ts')
      .match(/(?<=')\.\.\/[^']+\.css(?=')/g)
      ?.map((to) => to.slice(3)),
  );
  const styled = owners();
  const late = sources
    .filter((file) => file.endsWith('.tsx'))
    .flatMap((file) => {
      const near = sheetsWith(file);
      const missing = (name: string) =>
        [...(styled.get(name) ?? [])].filter((sheet) => !near.has(sheet) && !first.has(sheet));
      return [...writtenIn(file)].flatMap((name) =>
        missing(name).map((sheet) => `${file}: .${name} of ${sheet}`),
      );
    });
  expect(late).toEqual([]);
});

test('a size of type has a name, said once in the tokens', () => {
  const raw = rules.flatMap(({ file, selector, body }) =>
    file === 'ui/tokens.css' || !/font(-size)?:[^;]*\d(px|rem)/.test(body) ? [] : [`${file}: ${selector}`],
  );
  expect(raw).toEqual([]);
});
