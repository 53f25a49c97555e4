import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';

const e2e = path.resolve(import.meta.dirname, '../e2e');
const vain = /waitForFunction\(\s*async\b/;

// What an async function gives back is a promise, and a promise counts as true: such a wait is over as it begins.
test('no browser test waits for an async function, which waits for nothing: it polls what the page answers', () => {
  expect(vain.test('await page.waitForFunction(\n    async (name) => false)')).toBe(true);
  const files = readdirSync(e2e, { recursive: true, encoding: 'utf8' }).filter((f) => /\.(ts|mjs)$/.test(f));
  expect(files.length).toBeGreaterThan(50);
  expect(files.filter((file) => vain.test(readFileSync(path.join(e2e, file), 'utf8')))).toEqual([]);
});
