/// <reference types="vite/client" />
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Result } from '../../src/length/result';
import { l } from '../length/write-figures';
import { blocksOf, examplesIn, run, sameFigure, shown } from './examples';

const root = path.resolve(import.meta.dirname, '../..');
const read = (file: string): string => readFileSync(path.join(root, file), 'utf8');
const folders = ['length', ...readdirSync(path.join(root, 'src/trade')).filter((f) => !f.includes('.'))];
const readmeOf = (folder: string): string => {
  const file = `${homeOf(folder)}/README.md`;
  return existsSync(path.join(root, file)) ? read(file) : '';
};
const homeOf = (folder: string): string => (folder === 'length' ? 'src/length' : `src/trade/${folder}`);

type Module = Readonly<Record<string, unknown>>;
const modules = import.meta.glob<Module>(['../../src/length/**/*.ts', '../../src/trade/**/*.ts'], {
  eager: true,
});

/** Everything exported below a folder, by name. */
const exportsOf = (home: string): Module =>
  Object.assign(
    {},
    ...Object.entries(modules).flatMap(([file, found]) => (file.startsWith(`../../${home}/`) ? [found] : [])),
  );

function value<T, E extends { readonly code: string }>(found: Result<T, E>): T {
  if (!found.ok) throw new Error(found.error.code);
  return found.value;
}

/** The error's code, or its codes where there are several. */
function code<T>(found: Result<T, unknown>): unknown {
  if (found.ok) return 'ok';
  const errors = [found.error].flat() as readonly { readonly code: string }[];
  return errors.map((error) => error.code);
}

/**
 * What an example may name: `l('3 1/2')`, `value` and `code` of a result, what its own folder exports, then the rest.
 */
const scopeOf = (folder: string): Module => ({
  ...exportsOf('src/trade'),
  ...exportsOf('src/length'),
  ...exportsOf(homeOf(folder)),
  l,
  shown,
  value,
  code,
});

describe.each(folders)('the README of %s', (folder) => {
  const readme = readmeOf(folder);
  const examples = examplesIn(readme);

  test('says what it decides and numbers its examples from 1', () => {
    expect(readme).toMatch(/^# /);
    expect(examples.length).toBeGreaterThan(0);
    expect(examples.map((example) => example.number)).toEqual(examples.map((_, k) => k + 1));
  });

  test('has one block of checks an example', () => {
    const [, ...texts] = readme.split(/^### Example /m);
    expect(texts.map((text) => blocksOf(text).length)).toEqual(texts.map(() => 1));
  });

  test.each(examples.map((example) => [example.number, example.title, example] as const))(
    'example %i: %s',
    (_, __, example) => {
      expect(example.checks.length, 'checks').toBeGreaterThan(0);
      const found = run(example, scopeOf(folder)).map(shown);
      for (const [k, check] of example.checks.entries())
        if (!sameFigure(found[k] ?? '', check.want)) expect(found[k], check.code).toBe(check.want);
    },
  );
});

const files = ['src', 'tests', 'e2e', 'demo-data'].flatMap((folder) =>
  readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.(ts|tsx|mjs|js|md)$/.test(file))
    .map((file) => path.join(folder, file)),
);

test('every example that code or a test cites stands in the README it names', () => {
  const numbers = new Map(folders.map((f) => [f, examplesIn(readmeOf(f)).length]));
  for (const file of files)
    for (const [cited, number, of = ''] of read(file).matchAll(/Example (\d+) of ([a-z]+)/g))
      expect(Number(number), `${file}: ${cited}`).toBeLessThanOrEqual(numbers.get(of) ?? 0);
});

test('every step of the carried cabinet that a test cites stands in its README, and every step is cited', () => {
  const steps = [...read('demo-data/README.md').matchAll(/^### Step (\d+): /gm)].map(([, n]) => Number(n));
  const cited = files
    .filter((file) => !file.startsWith('demo-data'))
    .flatMap((file) =>
      [...read(file).matchAll(/step (\d+) of the carried cabinet/g)].map(([, n]) => Number(n)),
    );
  expect(steps).toEqual(steps.map((_, k) => k + 1));
  expect([...new Set(cited)].sort((a, b) => a - b)).toEqual(steps);
});
