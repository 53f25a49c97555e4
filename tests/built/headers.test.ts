import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { headersFor, rulesIn } from '../../e2e/headers.mjs';

const dist = path.resolve(import.meta.dirname, '../../dist');
const rules = rulesIn(dist);

describe('the headers of the built app', () => {
  test('lie beside it, as the source has them, and are not kept on the phone', () => {
    const source = path.resolve(dist, '../public/_headers');
    expect(readFileSync(path.join(dist, '_headers'), 'utf8')).toBe(readFileSync(source, 'utf8'));
    expect(readFileSync(path.join(dist, 'sw.js'), 'utf8')).not.toContain('_headers');
  });

  test('a file is kept for good only where its name changes with what is in it', () => {
    const files = readdirSync(dist, { recursive: true, encoding: 'utf8' }).map((file) =>
      file.replaceAll(path.sep, '/'),
    );
    const forGood = files.filter((file) =>
      headersFor(rules, `/${file}`)['cache-control']?.includes('immutable'),
    );
    expect(forGood.length).toBeGreaterThan(10);
    for (const file of forGood) expect(file).toMatch(/^assets\/.+-[\w-]{8}\.\w+(\.map)?$/);
  });

  test.each(['', 'index.html', 'sw.js', 'manifest.webmanifest'])('/%s is asked for anew', (file) => {
    expect(headersFor(rules, `/${file}`)['cache-control']).toBe('no-cache');
  });
});
