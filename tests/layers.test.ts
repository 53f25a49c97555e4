import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';

/** What each folder may see. The compiler breaks on a wrong import (each is a project of its own); this names the rule. */
const sees: Readonly<Record<string, readonly string[]>> = {
  length: [],
  trade: ['length'],
  store: ['length', 'trade'],
  ui: ['length', 'trade'],
  screens: ['length', 'trade', 'store', 'ui'],
  app: ['length', 'trade', 'store', 'ui', 'screens'],
  workers: ['length', 'trade', 'store'],
};

const src = path.resolve(import.meta.dirname, '../src');
const files = (folder: string): readonly string[] =>
  readdirSync(path.join(src, folder), { recursive: true, encoding: 'utf8' }).filter((f) => /\.tsx?$/.test(f));

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
