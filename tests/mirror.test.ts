import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';

const root = path.resolve(import.meta.dirname, '..');

/** The file a test is about: `store/db.test.ts` and `store/db.some-case.test.ts` are about `store/db.ts`. */
const aboutOf = (file: string): string => file.replace(/(\.[a-z-]+)?\.test\.ts$/, '.ts');

test.each(['length', 'trade', 'job', 'plan', 'store'])(
  'tests of %s are named for the source they are about',
  (layer) => {
    const tests = readdirSync(path.join(root, 'tests', layer), { recursive: true, encoding: 'utf8' }).filter(
      (file) => file.endsWith('.test.ts'),
    );
    expect(tests.length).toBeGreaterThan(0);
    expect(tests.filter((file) => !existsSync(path.join(root, 'src', layer, aboutOf(file))))).toEqual([]);
  },
);
