import { expect, test } from 'vitest';
import { editRoom } from '../../../src/job/room-edits';
import { wallSteps } from '../../../src/screens/room/wall-steps';
import { worked } from '../../plan/job-of';
import { l, w } from '../../trade/grooves/sample';

// Example 7 of room without its pipe: a stud from 11 1/4 is 1 1/2 thick, so its middle stands at 12; 16 on 28 and 44
test('the marks of a wall one by one: both ends of the cleat, then the middle of each stud', () => {
  const said = editRoom({ found: l('11 1/4'), spacing: l('16'), cleatFrom: l('2'), cleatTo: l('58') });
  const steps = wallSteps(worked(said).job);
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
  expect(wallSteps(worked(editRoom({ found: l('11 1/4'), spacing: l('16') })).job)).toEqual([]);
});
