import { expect, test } from 'vitest';
import type { Change } from '../../src/job/entry';
import { editAcross, editGap, editRoom, editStand } from '../../src/job/room-edits';
import { closedBy, scribeSides } from '../../src/plan/scribe-plan';
import { l } from '../length/write-figures';
import { figures, spelled } from '../trade/room/sample';
import { caseDecided } from './carried-cabinet-case';
import { worked } from './job-of';

/** Example 3 of room: 1/8, 9/32, 3/16. */
const gaps: readonly Change[] = ['1/8', '9/32', '3/16'].flatMap((gap, k) =>
  editGap('case', `g${k}`, { side: 'right', at: l(`${k * 30}`), gap: l(gap) }),
);
const right = (changes: readonly Change[]) => {
  const [, side] = scribeSides(worked([...caseDecided, ...gaps, ...changes]).job, 'case');
  if (!side?.found?.ok) throw new Error('not scribed');
  return { ...side, found: side.found.value };
};

test('the frame hangs over 3/16: compass 9/32, off 5/32, 0, 3/32', () => {
  const { found, hang } = right([]);
  expect(spelled([hang, found.compass, found.need])).toEqual(['3/16', '9/32', '5/32']);
  expect(figures(found.off)).toEqual(['5/32', '0', '3/32']);
  expect(found.short).toBeUndefined();
});

test('with 1/8 it is 1/32 short, and what comes off is said all the same', () => {
  const { found } = right(editStand('case', { hangRight: l('1/8') }));
  expect(spelled(found.short?.by)).toBe('1/32');
  expect(figures(found.off)).toEqual(['5/32', '0', '3/32']);
});

test('a gap that is gone or half said does not count; nor is anything found of no gap', () => {
  const { found } = right([
    ...editGap('case', 'g1', { gone: true }),
    ...editGap('case', 'g9', { side: 'right', gap: l('1') }),
  ]);
  expect(spelled(found.compass)).toBe('3/16');
  const [left] = scribeSides(worked([...caseDecided, ...gaps]).job, 'case');
  expect(left?.found).toBeUndefined();
});

test('a gap inside the wall is refused by how much', () => {
  const job = worked([...gaps, ...editGap('case', 'g0', { gap: l('-1/16') })]).job;
  const found = scribeSides(job, 'case')[1]?.found;
  expect(spelled(found && !found.ok && found.error)).toMatchObject({ code: 'negative-gap', by: '1/16' });
});

test('gaps go as the wall goes from its line: 1/8 at the floor and a wall that goes 1/4 out is 3/8 higher up', () => {
  const wall = (left: string) => [
    ...editRoom({ apart: l('40') }),
    ...editAcross('a', { at: l('0'), left: l('3/8'), right: l('1') }),
    ...editAcross('b', { at: l('32'), left: l(left), right: l('1') }),
  ];
  const edge = (gap: string) => [
    ...editGap('case', 'x', { side: 'left', at: l('0'), gap: l('1/8') }),
    ...editGap('case', 'y', { side: 'left', at: l('32'), gap: l(gap) }),
  ];
  const left = (...changes: readonly (readonly Change[])[]) => {
    const [side] = scribeSides(worked([...caseDecided, ...changes.flat()]).job, 'case');
    if (!side) throw new Error('no side');
    return side;
  };
  expect(left(wall('5/8'), edge('3/8')).differs).toBeUndefined();
  // 1/16 off may be the tape, 3/32 is not
  expect(left(wall('5/8'), edge('5/16')).differs).toBeUndefined();
  expect(spelled(left(wall('5/8'), edge('9/32')).differs)).toEqual({
    at: '32',
    read: '9/32',
    byLines: '3/8',
  });
});

test('a side is closed by its edge where enough hangs over, else by a strip, and never by both', () => {
  // it takes 5/32; the frame hangs over 3/16, more
  expect(scribeSides(worked([...caseDecided, ...gaps]).job, 'case').map(closedBy)).toEqual(['strip', 'edge']);
  const sides = scribeSides(
    worked([...caseDecided, ...gaps, ...editStand('case', { hangRight: l('1/8') })]).job,
    'case',
  );
  expect(sides.map(closedBy)).toEqual(['strip', 'strip']);
});
