import { expect, test } from 'vitest';
import { editCase, editPutUp } from '../../../src/job/edits';
import { editRoom, editUpright } from '../../../src/job/room-edits';
import { wallSteps } from '../../../src/screens/room/wall-steps';
import { worked } from '../../plan/job-of';
import { l, w } from '../../trade/grooves/sample';

// Example 7 of room without its pipe: a stud from 11 1/4 is 1 1/2 thick, so its middle stands at 12; 16 on 28 and 44
test('the marks of a wall one by one: both ends of the cleat, then the middle of each stud', () => {
  const said = editRoom({ found: l('11 1/4'), spacing: l('16'), cleatFrom: l('2'), cleatTo: l('58') });
  const steps = wallSteps(worked(said).plan);
  expect(steps.map(({ title, figure }) => [title, w(figure.value)])).toEqual([
    ['The cleat begins', '2'],
    ['The cleat ends', '58'],
    ['Screw 1 of 3: middle of the stud', '12'],
    ['Screw 2 of 3: middle of the stud', '28'],
    ['Screw 3 of 3: middle of the stud', '44'],
  ]);
  expect(steps[2]?.op).toBe('cut/room~wall/mark~fix1/1');
  expect(new Set(steps.map(({ op }) => op)).size).toBe(5);
});

test('no marks while something of the wall is not said', () => {
  expect(wallSteps(worked(editRoom({ found: l('11 1/4'), spacing: l('16') })).plan)).toEqual([]);
});

// a strip 3 wide at 40; a level line 36 over the high point
test('how high the cleat of a case stands comes first, with how it is measured', () => {
  const said = [
    ...editCase('c1', { name: 'Left' }),
    ...editPutUp('c1', { cleatAt: l('40') }),
    ...editUpright('u', { at: l('2'), drop: l('36'), rise: l('60') }),
  ];
  const [up, ...more] = wallSteps(worked(said).plan);
  expect([up?.title, up && w(up.figure.value), up?.op, more.length]).toEqual([
    ...['The cleat’s lower edge', '40', 'cut/c1~wall/mark~up/1', 0],
  ]);
  expect(up?.says).toContain('up from the floor at its high point: 4 over the level line.');
});

test('of two cases each has its own height; one with a cleat of its own has its own marks', () => {
  const said = [
    ...editRoom({ found: l('11 1/4'), spacing: l('16'), cleatFrom: l('2'), cleatTo: l('20') }),
    ...editCase('c1', { name: 'Left' }),
    ...editCase('c2', { name: 'Right' }),
    ...editPutUp('c1', { cleatAt: l('40') }),
    ...editPutUp('c2', { cleatAt: l('30'), cleatFrom: l('24'), cleatTo: l('50') }),
  ];
  const steps = wallSteps(worked(said).plan);
  expect(steps.map(({ id, title, figure }) => [id, title, w(figure.value)])).toEqual([
    ['up~c1', 'Left: the cleat’s lower edge', '40'],
    ['up~c2', 'Right: the cleat’s lower edge', '30'],
    ['from', 'The cleat begins', '2'],
    ['to', 'The cleat ends', '20'],
    ['fix1', 'Screw 1 of 1: middle of the stud', '12'],
    ['from~c2', 'Right: the cleat begins', '24'],
    ['to~c2', 'Right: the cleat ends', '50'],
    ['fix1~c2', 'Right: screw 1 of 2: middle of the stud', '28'],
    ['fix2~c2', 'Right: screw 2 of 2: middle of the stud', '44'],
  ]);
  expect(new Set(steps.map(({ op }) => op)).size).toBe(9);
});
