import { expect, test } from 'vitest';
import type { Change } from '../../src/job/entry';
import { editRoom, editZone } from '../../src/job/room-edits';
import { wallPlanOf } from '../../src/plan/stud-plan';
import { l } from '../length/write-figures';
import { figures, spelled } from '../trade/room/sample';
import { worked } from './job-of';

/** Example 7 of room, its usual figures unsaid. */
const wall: readonly Change[] = editRoom({
  found: l('11 1/4'),
  spacing: l('16'),
  cleatFrom: l('2'),
  cleatTo: l('58'),
});
const wallOf = (changes: readonly Change[]) => wallPlanOf(worked(changes).job);

test('studs at 12, 28 and, but for the pipe, 44', () => {
  const open = wallOf(wall).found;
  expect(figures((open?.ok && open.value.fix) || [])).toEqual(['12', '28', '44']);
  const piped = wallOf([...wall, ...editZone('z', { from: l('46'), to: l('42') })]).found;
  expect(figures((piped?.ok && piped.value.fix) || [])).toEqual(['12', '28']);
  expect(spelled(piped?.ok && piped.value.refused.map(({ why, at }) => [why, at.value]))).toEqual([
    ['in-zone', '44'],
  ]);
});

test('a right edge is half a stud past its centre: 12 3/4 found is 12', () => {
  const found = wallOf([...wall, ...editRoom({ found: l('12 3/4'), foundEdge: 'right' })]).found;
  expect(figures((found?.ok && found.value.fix) || [])).toEqual(['12', '28', '44']);
});

test('what is missing is asked for, and a zone with one end is none yet', () => {
  expect(wallOf(editRoom({ found: l('11') })).asks).toEqual(['spacing', 'cleatFrom', 'cleatTo']);
  expect(wallOf([...wall, ...editZone('z', { from: l('42') })]).plan?.zones).toEqual([]);
});
