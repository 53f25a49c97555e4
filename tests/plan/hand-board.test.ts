import { expect, test } from 'vitest';
import { editBoard, editJob, editPart } from '../../src/job/edits';
import { handBoard } from '../../src/plan/hand-board';
import { lengthMark } from '../../src/trade/grooves/marks';
import { l, w } from '../length/write-figures';
import { worked } from './job-of';

/** A shelf of 30 exactly, cut to a mark of its own: what is marked from the other end goes by that mark. */
function shelf(mark?: string) {
  const { job, plan } = worked([
    ...editJob({ name: 'Cabinet' }),
    ...editBoard('shelf', { name: 'Shelf', length: l('30'), across: l('12') }),
    ...(mark ? editPart('shelf', { mark: l(mark) }) : []),
  ]);
  const [own] = job.boards;
  const [part] = plan.parts;
  if (!own || !part) throw new Error('a board is wanted');
  return { marked: lengthMark(handBoard(job, own), job.tape), part };
}

test.each([
  ['none', undefined, '30', '0'],
  ['1/16 short of the drawing', '29 15/16', '29 15/16', '1/16'],
  ['farther off than an eighth: of a board that was changed since', '29 3/4', '30', '0'],
])('a mark it keeps, %s: Marks and the machine say the same length', (_, mark, value, rest) => {
  const { marked, part } = shelf(mark);
  expect([w(marked.value), w(marked.rest)]).toEqual([value, rest]);
  expect(w(part.length.mark.value)).toBe(value);
});
