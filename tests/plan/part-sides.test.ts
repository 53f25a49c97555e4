import { expect, test } from 'vitest';
import { partSides } from '../../src/plan/part-sides';
import { at, opened } from './laid-sample';

const { plan } = at(opened.entries);
const sidesOf = (role: string) => {
  const part = plan.parts.find(({ name }) => name.role === role);
  if (!part) throw new Error(`no ${role}`);
  return partSides(plan, part);
};

// Worked out standing before the case, right being +x, up +y, toward you +z. Hold a side with its inside to you and its
// front edge up. The inside of the left side looks right: its bottom is then at your left, that of the right side at
// your right. The bottom is laid by its upper face, with its front edge up its left end is at your right: you look down
// on it from behind.
test.each([
  ['left', { end: 'bottom', face: 'inside', edge: 'front', up: 'top', endAt: 'left' }],
  ['right', { end: 'bottom', face: 'inside', edge: 'front', up: 'top', endAt: 'right' }],
  ['bottom', { end: 'left', face: 'upper', edge: 'front', endAt: 'right' }],
  ['top', { end: 'left', face: 'under', edge: 'front', endAt: 'left' }],
])('a label of the %s tells its ends and edges', (role, sides) => expect(sidesOf(role)).toEqual(sides));

test('of a part laid by no face that is told from the other, no side is said for its reference end', () => {
  expect(sidesOf('stile').endAt).toBeUndefined();
});
