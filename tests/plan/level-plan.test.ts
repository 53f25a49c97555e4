import { expect, test } from 'vitest';
import type { Change } from '../../src/job/entry';
import { footId } from '../../src/job/room';
import { editFoot, editStand } from '../../src/job/room-edits';
import { footFigures, levelPlanOf } from '../../src/plan/level-plan';
import { l } from '../length/write-figures';
import { spelled } from '../trade/room/sample';
import { worked } from './job-of';

/** Example 12 of room: 34 9/16, 34 3/8 in front, 34 11/16, 34 7/16 at the back. */
const feet: readonly Change[] = [
  ...editFoot('case', 'front1', { drop: l('34 9/16') }),
  ...editFoot('case', 'front2', { drop: l('34 3/8') }),
  ...editFoot('case', 'back1', { drop: l('34 11/16') }),
  ...editFoot('case', 'back2', { drop: l('34 7/16') }),
];
const levelOf = (changes: readonly Change[]) => levelPlanOf(worked(changes).job, 'case');

test('a case has two feet in front and two at the back until more are said', () => {
  expect(levelOf([]).places.map(footId)).toEqual(['front1', 'front2', 'back1', 'back2']);
  expect(levelOf(editStand('case', { across: 3, middleRow: true })).places).toHaveLength(9);
  expect(levelOf(editStand('case', { across: 0 })).places).toHaveLength(2);
});

test('nothing is found before the last foot is read', () => {
  const three = levelOf(feet.slice(0, 3));
  expect([three.missing, three.found]).toEqual([1, undefined]);
});

test('shims 3/16, 0, 5/16, 1/16; a wedge 1/32 to 5/16 over 7 goes in 3 8/9 for 3/16', () => {
  const found = levelOf([
    ...feet,
    ...editStand('case', { wedgeThin: l('1/32'), wedgeThick: l('5/16'), wedgeLong: l('7') }),
  ]);
  expect(spelled(found.found?.ok && found.found.value.shims.map(({ shim }) => shim))).toEqual([
    '3/16',
    '0',
    '5/16',
    '1/16',
  ]);
  const wedge = found.wedges.front1;
  expect(wedge?.ok && `${wedge.value.n}/${wedge.value.d}`).toBe('35/9');
  expect(Object.keys(found.wedges)).toEqual(['front1', 'back1', 'back2']);
});

test('feet that screw ask for their travel, and stand at 1 3/16, 1, 1 5/16, 1 1/16', () => {
  const screw = [...feet, ...editStand('case', { footHow: 'screw' })];
  expect(levelOf(screw).asks).toEqual(['footShort', 'footLong', 'footHigh']);
  const said = editStand('case', { footShort: l('3/4'), footLong: l('1 1/4'), footHigh: l('1') });
  const { sets, wedges } = levelOf([...screw, ...said]);
  expect(spelled(sets?.ok && sets.value.feet.map(({ set }) => set))).toEqual([
    '1 3/16',
    '1',
    '1 5/16',
    '1 1/16',
  ]);
  expect(wedges).toEqual({});
  const figures = footFigures(levelOf([...screw, ...said]));
  expect(spelled([...figures.values()])).toEqual(['1 3/16', '1', '1 5/16', '1 1/16']);
  expect(spelled([...footFigures(levelOf(feet)).values()])).toEqual(['3/16', '0', '5/16', '1/16']);
});
