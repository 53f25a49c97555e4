import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { compact } from '../../build/compact-json';
import { wholeSample } from '../../src/app/sample-file';
import { readJobFile } from '../../src/job/file';

const source = readFileSync('demo-data/mineral-and-shell-cabinet.json', 'utf8');

test('the sample as it is built is made whole again: the very job of the source, and a third smaller till then', () => {
  const built = compact(source);
  expect(JSON.parse(wholeSample(built))).toEqual(JSON.parse(source));
  expect(readJobFile(wholeSample(built))).toEqual(readJobFile(source));
  expect(built.length * 3).toBeLessThan(source.length * 2);
});

test('as it stands in the source, and what is no job file, it stays what it is', () => {
  expect(JSON.parse(wholeSample(source))).toEqual(JSON.parse(source));
  expect(wholeSample('<html>')).toBe('<html>');
});
