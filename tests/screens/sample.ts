import { readFileSync } from 'node:fs';
import type { Change } from '../../src/job/entry';
import { readJobFile } from '../../src/job/file';

const file = readJobFile(readFileSync('demo-data/mineral-and-shell-cabinet.json', 'utf8'));
if (!file.ok) throw new Error(file.error.code);

/** All that was decided and done in the sample job, in order. */
export const sample: readonly Change[] = file.value.entries.map((entry) =>
  entry.kind === 'edit'
    ? { kind: 'edit', path: entry.path, value: entry.value }
    : { kind: entry.kind, op: entry.op, figure: '0' },
);
