import { expect, test } from 'vitest';
import { editBank, editThing } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { labelsOf, withoutPlace } from '../../src/plan/label-plan';
import { planOf } from '../../src/plan/plan';
import * as words from '../../src/screens/install/label-words';
import { worked } from './job-of';
import { at, sampleLog, shop, withMore } from './laid-sample';
import { twoColumns } from './two-columns';

const planWith = (...more: Parameters<typeof withMore>[1]) => {
  const { job } = at(withMore(sampleLog, more));
  return planOf(job, shop);
};

test('a label for each of the five drawers with what goes in, and for each tray', () => {
  const sets = labelsOf(planWith());
  const drawers = sets.find((set) => set.id === 'drawers');
  expect(drawers?.labels.map((label) => `${words.place(label)}: ${words.contents(label)}`)).toEqual([
    'Drawer 1: Thin sections × 24',
    'Drawer 2: Agate slices × 18',
    'Drawer 3: Geode halves × 12',
    'Drawer 4: Whelk shells × 10',
    'Drawer 5: Quartz cluster × 4',
  ]);
  const trays = sets.find((set) => set.id === 'case')?.labels ?? [];
  expect(trays.slice(0, 2).map((label) => words.contents(label))).toEqual(['Fossil ferns × 6', 'empty']);
});

test('a thing goes on the label of its own tray, and of no other', () => {
  const on = editThing('cowrie', { name: 'Cowries', count: 30, part: 'case~trays', piece: 2 });
  const trays = labelsOf(planWith(...on)).find((set) => set.id === 'case')?.labels ?? [];
  expect(trays.map((label) => label.things.length).slice(0, 4)).toEqual([1, 1, 0, 0]);
});

test('of two columns each drawer has its own label, with what goes into it and into no other', () => {
  const [bank] = labelsOf(worked(twoColumns).plan);
  expect(bank?.labels.map((label) => `${words.place(label)}: ${words.contents(label)}`)).toEqual([
    'Drawer 1, column 1: empty',
    'Drawer 2, column 1: Cowries × 3',
    'Drawer 1, column 2: empty',
    'Drawer 2, column 2: Conches × 2',
  ]);
});

test('what went into a column or a drawer that is there no longer is told', () => {
  const lost = (...more: readonly Change[]) =>
    withoutPlace(worked([...twoColumns, ...more]).job).map(({ name }) => name);
  expect(lost()).toEqual([]);
  expect(lost(...editBank('b', { across: 1 }))).toEqual(['Conches']);
  expect(lost(...editBank('b', { count: 1 }))).toEqual(['Cowries', 'Conches']);
  expect(lost(...editBank('b', { gone: true }))).toEqual(['Cowries', 'Conches']);
});

test('what goes nowhere has no label, and is told', () => {
  const { job } = planWith(...editThing('stray', { name: 'Fossil', count: 1 }));
  expect(withoutPlace(job).map((thing) => thing.name)).toEqual(['Fossil']);
});
