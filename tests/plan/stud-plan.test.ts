import { describe, expect, test } from 'vitest';
import { editCase, editPutUp } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { editRoom, editZone } from '../../src/job/room-edits';
import { crossedBy, wallPlanOf } from '../../src/plan/stud-plan';
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
const wallOf = (changes: readonly Change[]) => wallPlanOf(worked(changes).plan);

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

describe('a place that is only so high', () => {
  /** A cleat 3 wide: with its lower edge at 40 its screws go at 41 1/2. */
  const held = (id: string, own: Parameters<typeof editPutUp>[1]) => [
    ...editCase(id, { name: id }),
    ...editPutUp(id, { cleatWide: l('3'), ...own }),
  ];
  const pipe = (low: string, high: string) =>
    editZone('z', { what: 'Pipe', from: l('0'), to: l('20'), low: l(low), high: l(high) });
  const fixed = (changes: readonly Change[], place?: string) => {
    const { found } = wallPlanOf(worked(changes).plan, place);
    return figures((found?.ok && found.value.fix) || []);
  };

  test('bars the studs beside it at its own height, and at no other', () => {
    const at40 = [...wall, ...held('c1', { cleatAt: l('40') })];
    // 41 1/2 is 2 over 39 1/2 and 2 under 43 1/2
    expect(fixed([...at40, ...pipe('38', '39 1/2')])).toEqual(['12', '28', '44']);
    expect(fixed([...at40, ...pipe('38', '39 9/16')])).toEqual(['28', '44']);
    expect(fixed([...at40, ...pipe('43 1/2', '44')])).toEqual(['12', '28', '44']);
    expect(fixed([...at40, ...pipe('44', '43 7/16')])).toEqual(['28', '44']);
  });

  test('bars at every height while it, or the cleat, is not told', () => {
    expect(fixed([...wall, ...held('c1', {}), ...pipe('1', '2')])).toEqual(['28', '44']);
    expect(fixed([...wall, ...pipe('1', '2')])).toEqual(['28', '44']);
    const half = editZone('z', { from: l('0'), to: l('20'), low: l('1') });
    expect(fixed([...wall, ...held('c1', { cleatAt: l('40') }), ...half])).toEqual(['28', '44']);
  });

  test('of two cases that one cleat holds, the lower is in its way; each alone has its own answer', () => {
    const two = [
      ...wall,
      ...held('c1', { cleatAt: l('40') }),
      ...held('c2', { cleatAt: l('10') }),
      ...pipe('11', '12'),
    ];
    expect(fixed(two)).toEqual(['28', '44']);
    expect(fixed(two, 'c1')).toEqual(['12', '28', '44']);
    expect(fixed(two, 'c2')).toEqual(['28', '44']);
    // with a cleat of its own from 26 on, c2 is none of those the first one holds
    const own = [...two, ...editPutUp('c2', { cleatFrom: l('26') })];
    expect(fixed(own)).toEqual(['12', '28', '44']);
    expect(fixed(own, 'c2')).toEqual(['28', '44']);
  });

  test('is told with how far the cleat moves to clear it, unless it lies beside the cleat', () => {
    const crossed = (...more: readonly Change[]) =>
      crossedBy(worked([...wall, ...held('c1', { cleatAt: l('40') }), ...more]).plan, 'c1');
    const found = crossed(...pipe('41', '42'));
    expect(found?.zones.map(({ what }) => what)).toEqual(['Pipe']);
    // 42 + 2 - 41 1/2, 41 1/2 - (41 - 2)
    expect(spelled([found?.moves.up, found?.moves.down])).toEqual(['2 1/2', '2 1/2']);
    expect(crossed(...pipe('44', '45'))).toBeUndefined();
    // beside the cleat, which ends at 58, by more than 2
    const beside = (from: string) =>
      crossed(...editZone('z', { from: l(from), to: l('70'), low: l('41'), high: l('42') }));
    expect([beside('60 1/16'), beside('60')?.zones.length]).toEqual([undefined, 1]);
  });
});
