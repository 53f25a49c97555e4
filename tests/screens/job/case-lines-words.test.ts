import { expect, test } from 'vitest';
import { editBank, editThing } from '../../../src/job/edits';
import { thingsTold } from '../../../src/screens/job/case-lines-words';
import { worked } from '../../plan/job-of';

test('things are counted before there is a place for them, and those without one are told', () => {
  expect(thingsTold(worked([]).job)).toBe('Nothing is said yet.');
  const lots = [
    ...editThing('quartz', { name: 'Quartz', count: 12 }),
    ...editThing('shells', { name: 'Shells', count: 3 }),
  ];
  // 12 + 3, none of them placed
  expect(thingsTold(worked(lots).job)).toBe('15 things, 15 not placed yet.');
  const bank = editBank('b', { name: 'Drawers', count: 2 });
  const quartz = (front: number) => editThing('quartz', { bank: 'b', front });
  expect(thingsTold(worked([...lots, ...bank, ...quartz(2)]).job)).toBe('15 things, 3 not placed yet.');
  // of two drawers there is no third
  expect(thingsTold(worked([...lots, ...bank, ...quartz(3)]).job)).toBe('15 things, 15 not placed yet.');
  expect(thingsTold(worked([...lots.slice(0, 2), ...bank, ...quartz(1)]).job)).toBe('12 things.');
});
