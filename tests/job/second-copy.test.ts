import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readJobFile, writeJobFile } from '../../src/job/file';
import { fold } from '../../src/job/log';
import { secondCopy } from '../../src/job/second-copy';

const sample = readFileSync('demo-data/mineral-and-shell-cabinet.json', 'utf8');
const read = (text: string) => {
  const file = readJobFile(text);
  if (!file.ok) throw new Error(file.error.code);
  return file.value;
};

describe('secondCopy', () => {
  test('keeping both makes a second job of the same log, marked in its name, as one log that reads back', () => {
    const { entries } = read(sample);
    const second = secondCopy(entries, { job: 'other', device: 'phone2', at: '2026-11-25T10:00:00.000Z' });
    expect(second).toHaveLength(entries.length + 1);
    expect(new Set(second.map((e) => e.job))).toEqual(new Set(['other']));
    const { values } = fold(second);
    expect(values.get('name')).toBe('Mineral and shell cabinet (2)');
    expect([...values].filter(([path]) => path !== 'name')).toEqual(
      [...fold(entries).values].filter(([path]) => path !== 'name'),
    );
    expect(read(writeJobFile({ job: 'other', entries: second })).entries).toHaveLength(second.length);
  });

  test('a name as long as names may be is shortened to make room for its mark', () => {
    const { entries } = read(sample);
    const long = entries.map((e) =>
      e.kind === 'edit' && e.path === 'name' ? { ...e, value: 'x'.repeat(120) } : e,
    );
    const second = secondCopy(long, { job: 'other', device: 'phone2', at: '2026-11-25T10:00:00.000Z' });
    expect(fold(second).values.get('name')).toBe(`${'x'.repeat(116)} (2)`);
    expect(read(writeJobFile({ job: 'other', entries: second })).entries).toHaveLength(second.length);
  });
});
