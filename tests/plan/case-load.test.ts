import { expect, test } from 'vitest';
import { editThing } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { ratio } from '../../src/length/length';
import { loadOfCase } from '../../src/plan/case-load';
import { briefly, loads } from '../../src/screens/job/case-lines-words';
import { caseDecided } from './carried-cabinet-case';
import { worked } from './job-of';

const loadWith = (...more: readonly (readonly Change[])[]) =>
  loadOfCase(worked([...caseDecided, ...more.flat()]).plan, 'case');

test('with nothing said of it the worst shelf is that of the standard', () => {
  const load = loadWith();
  expect([load.things, load.unweighed, load.worst?.name.role]).toEqual([0, 0, 'inside']);
  // 18 7/64 × .02 / 12 is .030 allowed
  expect(briefly(load)).toMatch(
    /^Nothing is said to stand in it\. Fixed shelf.*: sags 0\.\d{3} of 0\.030\.$/,
  );
});

test('things on its shelves count, by pieces and by weight, and the worst shelf says by how much', () => {
  const load = loadWith(
    editThing('ores', { name: 'Ore', part: 'case~shelf', count: 13, heavy: ratio(25n) }),
    editThing('ferns', { name: 'Ferns', part: 'case~trays', count: 2 }),
    editThing('else', { name: 'Else', part: 'other~shelf', count: 7, heavy: ratio(1n) }),
  );
  // 13 × 25
  expect([load.things, load.pounds.equals(ratio(325n)), load.unweighed]).toEqual([15, true, 2]);
  // itself 4.9, so 329.9: 129.9 over 200
  expect(briefly(load)).toContain(': 129.9 lb more than a shelf may carry.');
  expect(briefly(load)).toMatch(
    /^15 things, about 325 lb, 2 not weighed\. Fixed shelf.*: sags 0\.\d{3} too far\.$/,
  );
});

test('a row is named by its case where there are several', () =>
  expect([loads(''), loads('Wall case')]).toEqual(['Loads', 'Loads: Wall case']));
