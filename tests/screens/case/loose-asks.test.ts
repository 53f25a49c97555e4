import { expect, test } from 'vitest';
import { editCase, editInside } from '../../../src/job/edits';
import type { Change } from '../../../src/job/entry';
import { looseHeld } from '../../../src/screens/case/loose-asks';
import { l, w } from '../../length/write-figures';
import { worked } from '../../plan/job-of';

/** A set of loose shelves on pins with a hole of 5/16, 1/2 deep, and 5 left over the last. */
const pins: readonly Change[] = [
  ...editCase('c', { width: l('36') }),
  ...editInside('c', 's', {
    kind: 'loose',
    bay: 1,
    heldBy: 'pins',
    width: l('5/16'),
    depth: l('1/2'),
    endRoom: l('5'),
  }),
];

/** The set after each of these holders was chosen, one after the other. */
function held(changes: readonly Change[], ...by: readonly string[]) {
  const [c] = worked(changes).job.cases;
  const i = c?.inside[0];
  if (!c || !i) throw new Error('loose shelves are wanted');
  const [next, ...rest] = by;
  if (next === undefined) return { i, figures: [i.width, i.depth, i.endRoom].map((x) => x && w(x)), changes };
  const ask = looseHeld(c, i);
  if (ask.as !== 'choice') throw new Error('a choice is wanted');
  return held([...changes, ...ask.save(next)], ...rest);
}

test('what was keyed of holes is no figure of strips, and comes back with them', () => {
  const strips = held(pins, 'strips');
  expect(strips.figures).toEqual([undefined, undefined, undefined]);
  const keyed = [...strips.changes, ...editInside('c', 's', { width: l('5/8'), depth: l('3/16') })];
  expect(held(keyed, 'pins').figures).toEqual(['5/16', '1/2', '5']);
  expect(held(keyed, '', 'lines', 'strips').figures).toEqual(['5/8', '3/16', undefined]);
});

test('rows of the one kind or the other keep the figures of their holes', () => {
  expect(held(pins, 'lines').figures).toEqual(['5/16', '1/2', '5']);
  expect(held(pins, '').figures).toEqual(['5/16', '1/2', '5']);
});
