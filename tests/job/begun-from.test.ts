import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { begunFrom } from '../../src/job/begun-from';
import type { Change, Json } from '../../src/job/entry';
import { jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { toStored } from '../../src/length/stored';
import { planOf } from '../../src/plan/plan';

const file = path.resolve(import.meta.dirname, '../../demo-data/mineral-and-shell-cabinet.json');
const sample: ReadonlyMap<string, Json> = fold(JSON.parse(readFileSync(file, 'utf8')).entries).values;
const begun = (readings: boolean, values = sample) =>
  new Map(valuesOf(begunFrom(values, { name: 'East wall', readings })));
const valuesOf = (changes: readonly Change[]) =>
  changes.map((change): [string, Json] =>
    change.kind === 'edit' ? [change.path, change.value] : ['', null],
  );
const lengths = (values: ReadonlyMap<string, Json>) =>
  planOf(jobOf('j', values), {}).parts.map((part) => [part.id, toStored(part.length.sum.value)]);

/** As if no opening of it had been built and measured, and no mark kept. */
const asDrawn = new Map(
  [...sample].filter(([at]) => !/\/built\/|\/columns\/|^parts\/[^/]+\/(mark|pieces)/.test(at)),
);

test('a job begun like another has its parts, to the last fraction, and no cut of it is made', () => {
  const own = begun(true);
  expect(lengths(own)).toEqual(lengths(asDrawn));
  expect(lengths(own).length).toBeGreaterThan(20);
  expect(own.get('name')).toBe('East wall');
  expect(own.get('place')).toBeUndefined();
});

test('without readings a sheet is planned as thick as it was reckoned with, and stands as not measured', () => {
  const own = new Map<string, Json>([
    ['stock/a/name', 'Sheet A'],
    ['stock/a/reading/r1/size', '91/128'],
    ['stock/a/reading/r2/size', '23/32'], // 92/128: the greater
    ['stock/a/asRead', true],
    ['stock/a/have', 3],
    ['stock/b/name', 'Sheet B'],
    ['stock/b/planned', '1/2'],
    ['stock/b/used', '31/64'],
    ['stock/b/reading/r1/size', '31/64'],
  ]);
  const [a, b] = jobOf('j', begun(false, own)).stock;
  expect([a?.readings.length, a?.have, a?.asRead]).toEqual([0, undefined, undefined]);
  expect([a?.planned && toStored(a.planned), b?.planned && toStored(b.planned)]).toEqual(['23/32', '1/2']);
  const [measured] = jobOf('j', begun(true, own)).stock;
  expect([measured?.readings.length, measured?.asRead, measured?.have]).toEqual([2, true, undefined]);
});

test('what was removed stays removed, and nothing under it comes along', () => {
  const own = new Map<string, Json>([
    ['boards/b1/name', 'Side'],
    ['boards/b1/runs/r1/pitch', '3'],
    ['boards/b1/runs/r1/gone', true],
    ['boards/b1/runs/r2/pitch', '4'],
    ['boards/b2/name', 'Other'],
    ['boards/b2/gone', true],
  ]);
  expect([...begun(true, own).keys()]).toEqual(['name', 'boards/b1/name', 'boards/b1/runs/r2/pitch']);
});

test('plans of sheets, spoiled pieces, kept marks and openings as built stay behind', () => {
  const left = [
    'standing',
    'sheets/s1/tree',
    'layouts/a/least',
    'offcuts/o/length',
    'widths/case~left/r1/1/width',
    'let/a/b/1/why',
    'parts/case~left/mark',
    'parts/case~left/markWide',
    'parts/case~left/pieces/1/spoils/g1/spoiled',
    'cases/case/built/bay1/frontA',
    'banks/b/columns/c1/front',
    'banks/b/columns/c1/fitted/f1/left',
  ];
  const kept = ['parts/case~left/machine', 'cases/case/width', 'banks/b/count', 'recipes/r/note'];
  const own = new Map<string, Json>([...left, ...kept].map((at) => [at, 'x']));
  expect([...begun(true, own).keys()]).toEqual(['name', ...kept]);
});

test('a room is measured anew, unless its readings are wanted', () => {
  const own = new Map<string, Json>([
    ['room/across/x/wide', '40'],
    ['cases/c/foot/front1/drop', '36'],
    ['woodNow', '7'],
  ]);
  expect([...begun(false, own).keys()]).toEqual(['name']);
  expect([...begun(true, own).keys()]).toEqual(['name', ...own.keys()]);
});

test('what was noted for the next time is what to heed in it', () => {
  const own = new Map<string, Json>([
    ['failed', 'A tray bound.'],
    ['next/n1/said', 'Seal the back before it goes in.'],
    ['next/n2/said', 'Not this.'],
    ['next/n2/gone', true],
  ]);
  expect([...begun(false, own)]).toEqual([
    ['name', 'East wall'],
    ['failed', 'A tray bound.\nSeal the back before it goes in.'],
  ]);
});
