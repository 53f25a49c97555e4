import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { Script } from 'node:vm';
import { expect, test } from 'vitest';

const dist = path.resolve(import.meta.dirname, '../../dist');
const scripts = readdirSync(dist, { recursive: true, encoding: 'utf8' }).filter((file) =>
  file.endsWith('.js'),
);

test.each(scripts)('%s compiles as the plain script it is', (file) => {
  // throws where the text is no script
  expect(() => new Script(readFileSync(path.join(dist, file), 'utf8'), { filename: file })).not.toThrow();
});

test('there are scripts to look at', () => {
  expect(scripts.length).toBeGreaterThan(5);
});
