import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';

const dist = path.resolve(import.meta.dirname, '../../dist');
const files = readdirSync(dist, { recursive: true, encoding: 'utf8' });
const read = (file: string): string => readFileSync(path.join(dist, file), 'utf8');

describe('source maps', () => {
  const scripts = files.filter((file) => file.endsWith('.js'));

  test('lie beside every script that names one, with the sources in them', () => {
    const named = scripts.flatMap((file) => {
      const map = /\/\/# sourceMappingURL=(\S+)\s*$/.exec(read(file))?.[1];
      return map === undefined ? [] : [path.join(path.dirname(file), map)];
    });
    expect(named).toContain('sw.js.map');
    expect(new Set(named)).toEqual(new Set(files.filter((file) => file.endsWith('.map'))));
    for (const file of named) {
      const { sources, sourcesContent } = JSON.parse(read(file));
      expect(sourcesContent, file).toHaveLength(sources.length);
      // a path of the machine that built it says nothing to anybody else
      for (const source of sources) expect(source, file).not.toMatch(/^\/|^[a-z]:|^file:/i);
    }
  });

  test('are no part of what is kept on the phone', () => {
    const kept = [...read('sw.js').matchAll(/url:\s*[`"']([^`"']+)[`"']|"url":"([^"]+)"/g)];
    expect(kept.length).toBeGreaterThan(20);
    expect(kept.map((m) => m[1] ?? m[2]).filter((url) => url?.endsWith('.map'))).toEqual([]);
  });
});
