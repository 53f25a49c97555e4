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

const onShelf = (pounds: bigint) =>
  editThing('ore', { name: 'Ore', part: 'case~shelf', heavy: ratio(pounds) });
const onTray = (pounds: bigint) =>
  editThing('fern', { name: 'Ferns', part: 'case~trays', heavy: ratio(pounds) });

// Sag is 5 W L³ / (32 E w t³), 1,200,000 psi: the shelf, 18 7/64 × 17 7/32 × 23/32, itself 4.9 lb, sags .022 under
// 184.9 lb, 74 % of the .030 allowed; and 184.9 is 92 % of 200. A tray is 11/32 thick, itself 2.5 lb: under 22.5 it
// sags (23/11)³ × 22.5 / 184.9 × .022 = .025, 82 %.
test('the worst shelf is that nearest to either limit, though another sags more for what is allowed', () => {
  expect(loadWith(onTray(20n)).worst).toMatchObject({ name: { kind: 'trays' }, by: 'sag' });
  const load = loadWith(onShelf(180n), onTray(20n));
  expect(load.worst).toMatchObject({ name: { kind: 'fixed' }, by: 'load' });
  expect(briefly(load)).toMatch(/Fixed shelf.*: carries about 184\.9 lb of the 200 lb a shelf may\.$/);
});

test('over both limits the worse is said first, and other shelves that are over one are counted', () => {
  // 329.9 of 200 is 165 %; .022 × 329.9 / 184.9 = .040 of .030 is 132 %
  expect(briefly(loadWith(onShelf(325n)))).toMatch(/: 129\.9 lb more than a shelf may carry\. .* too far\.$/);
  // a tray under 42.5 lb sags .047 of .030: 156 %, less than the 165 % of the shelf
  const load = loadWith(onShelf(325n), onTray(40n));
  expect([load.worst?.name, load.others]).toMatchObject([{ kind: 'fixed' }, 1]);
  expect(briefly(load)).toContain('1 more shelf is over a limit.');
  expect(loadWith(onShelf(180n), onTray(20n)).others).toBe(0);
});

test('a row is named by its case where there are several', () =>
  expect([loads(''), loads('Wall case')]).toEqual(['Loads', 'Loads: Wall case']));
