import { describe, expect, test } from 'vitest';
import { readJobFile, writeJobFile } from '../../src/job/file';
import { merge } from '../../src/job/log';
import { readEntry } from '../../src/job/rows';
import { tap } from './phones';
import { edit, start } from './two-phones';

describe('the job file', () => {
  const both = merge(tap(start, 'anna', [edit('65')]), tap(start, 'ben', [edit('66')]));
  const file = writeJobFile({ job: 'j', entries: both });

  test('is of version 2, and says what each entry is over', () => {
    expect(file).toContain('"knifeline": 2');
    expect(file).toContain('"over":["1.anna"]');
    const read = readJobFile(file);
    expect(read.ok && writeJobFile(read.value)).toBe(file);
  });

  test('of version 1 holds no such entry', () => {
    expect(readJobFile(file.replace('"knifeline": 2', '"knifeline": 1'))).toMatchObject({
      ok: false,
      error: { code: 'bad-entry' },
    });
  });

  test.each([
    ['one that comes after', ['99.ben']],
    ['one of its own count', ['3.ben']],
    ['one twice', ['1.anna', '1.anna']],
    ['count 0', ['0.anna']],
    ['no phone', ['1.']],
    ['a phone with a path for a name', ['1.../x']],
    ['a count that is none', ['x.anna']],
    ['a number', [1]],
    ['more than there can be', Array.from({ length: 101 }, (_, k) => `1.p${k}`)],
    ['no list', '1.anna'],
    ['null', null],
  ])('an entry over %s cannot be read', (_, over) => {
    const entry = tap(start, 'anna', [edit('65')])[2];
    expect(entry?.count).toBe(3);
    expect('entry' in readEntry({ ...entry, over: ['1.anna'] })).toBe(true);
    expect('why' in readEntry({ ...entry, over })).toBe(true);
  });
});

describe('a row', () => {
  // words made of these would read as a kind, or throw
  test.each([{ toString: 0 }, ['edit'], { toString: () => 'edit' }, null, 'constructor', 'toString'])(
    'of kind %j is none',
    (kind) => {
      const edit = {
        job: 'j',
        device: 'd',
        count: 1,
        at: '2026-11-02T08:30:00.000Z',
        act: 'd.1',
        label: 'made',
      };
      expect(readEntry({ ...edit, kind, path: 'name', value: 'Cabinet' })).toEqual({
        why: 'kind cannot be read',
      });
      expect(readEntry({ ...edit, kind: 'edit', path: 'name', value: 'Cabinet' })).toHaveProperty('entry');
    },
  );
});
