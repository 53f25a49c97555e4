import { expect, test } from 'vitest';
import { editThing } from '../../src/job/edits';
import { labelsOf, withoutPlace } from '../../src/plan/label-plan';
import { planOf } from '../../src/plan/plan';
import * as words from '../../src/screens/install/label-words';
import { at, sampleLog, shop, withMore } from './laid-sample';

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
  expect(trays.length).toBeGreaterThan(1);
  expect(words.contents(trays[0] ?? { on: 'drawer', place: { no: 1 }, things: [] })).toBe('empty');
});

test('a thing goes on the label of its own tray, and of no other', () => {
  const on = editThing('cowrie', { name: 'Cowries', count: 30, part: 'case~trays', piece: 2 });
  const trays = labelsOf(planWith(...on)).find((set) => set.id === 'case')?.labels ?? [];
  expect(trays.map((label) => label.things.length).slice(0, 3)).toEqual([0, 1, 0]);
});

test('what goes nowhere has no label, and is told', () => {
  const { job } = planWith(...editThing('stray', { name: 'Fossil', count: 1 }));
  expect(withoutPlace(job).map((thing) => thing.name)).toEqual(['Fossil']);
});
