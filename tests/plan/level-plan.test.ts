import { expect, test } from 'vitest';
import { editCase } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { footId } from '../../src/job/room';
import { editFoot, editStand } from '../../src/job/room-edits';
import { footFigures, levelPlanOf, overOf } from '../../src/plan/level-plan';
import { l, w } from '../length/write-figures';
import { spelled } from '../trade/room/sample';
import { caseDecided } from './carried-cabinet-case';
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

/**
 * A plinth 4 high, scribed; drops 36 1/4, 36 1/16, 36 3/8, 36 5/32: over the least they are 3/16, 0, 5/16 and 3/32, so
 * it stands 4 3/16, 4, 4 5/16 and 4 3/32 high, and its strips are ripped 4 + 5/16 + 1/4 = 4 9/16.
 */
test('a plinth scribed to the floor stands so high at each corner, and nothing is shimmed', () => {
  const drops = ['36 1/4', '36 1/16', '36 3/8', '36 5/32'].flatMap((drop, k) =>
    editFoot('case', ['front1', 'front2', 'back1', 'back2'][k] ?? '', { drop: l(drop) }),
  );
  const plinth = { hasToe: false, hasBase: false, hasPlinth: true, feet: l('4') };
  const scribed = [...drops, ...editCase('case', { ...plinth, plinthHow: 'scribed' })];
  const { plan, job } = worked([...caseDecided, ...scribed]);
  const level = levelPlanOf(job, 'case');
  expect(spelled([...footFigures(level).values()])).toEqual(['4 3/16', '4', '4 5/16', '4 3/32']);
  const rail = plan.parts.find(({ name }) => name.role === 'plinthrail');
  expect(rail && w(rail.width.mark.value)).toBe('4 9/16');
  // feet that screw are not under it, and a fall of more than 3/4 is no shim too thick
  const screw = editStand('case', {
    footHow: 'screw',
    wedgeThin: l('0'),
    wedgeThick: l('1'),
    wedgeLong: l('8'),
  });
  const low = editFoot('case', 'back1', { drop: l('37') });
  const more = levelPlanOf(worked([...caseDecided, ...scribed, ...screw, ...low]).job, 'case');
  expect([more.asks, more.sets, more.wedges, overOf(more)]).toEqual([[], undefined, {}, []]);
  // shimmed it is as high all round: shims 3/16, 0, 5/16, 3/32
  const shimmed = worked([...caseDecided, ...drops, ...editCase('case', plinth)]).job;
  expect(spelled([...footFigures(levelPlanOf(shimmed, 'case')).values()])).toEqual([
    '3/16',
    '0',
    '5/16',
    '3/32',
  ]);
});
