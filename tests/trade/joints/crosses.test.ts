import { expect, test } from 'vitest';
import { less } from '../../../src/length/length';
import type { Part } from '../../../src/trade/carcass/part';
import { crossedBy, type HandJoint, withHandJoints } from '../../../src/trade/joints/by-hand';
import { withHoles } from '../../../src/trade/joints/holes-by-hand';
import { l, w } from '../../length/write-figures';
import { framedCase, part, work } from '../carcass/sample-case';

/** A stile, with holes 1/4 wide at 4, 5, 6 and 7, 3/4 from its left edge and 3/8 deep. */
const stile = part(work(framedCase), 'stile');
const bored: Part = withHoles(stile, {
  id: 'pins',
  face: 'A',
  off: l('3/4'),
  dia: l('1/4'),
  deep: l('3/8'),
  pitch: l('1'),
  first: l('4'),
  count: 4,
});

function found(own: Partial<HandJoint>) {
  const joint: HandJoint = {
    id: 'j',
    part: stile.id,
    kind: 'dado',
    at: 'left',
    takes: '',
    width: l('1/2'),
    depth: l('1/4'),
    near: l('4'),
    ...own,
  };
  const cut = withHandJoints(bored, [joint]);
  return crossedBy(cut, joint).map(
    ({ bore, numbers, fits }) =>
      `${bore.id} ${numbers.join()}${fits ? `: ${w(fits.by)} toward the ${fits.toward.named} ${fits.toward.at}` : ''}`,
  );
}

test('a dado through holes says which, and how far it is clear of all of them', () => {
  // 4 to 4 1/2 goes into the first hole, which ends at 4 1/8; from there to 4 5/8 it is clear
  expect(found({})).toEqual(['pins 1: 1/8 toward the top end']);
  // 4 1/8 to 4 7/8 lies just between two
  expect(found({ near: l('4 1/8'), width: l('3/4') })).toEqual([]);
  // 4 1/2 to 5 3/8: seven eighths lie between no two holes, so it is moved before all: by 5 3/8 - 3 7/8 = 1 1/2
  expect(found({ near: l('4 1/2'), width: l('7/8') })).toEqual(['pins 2: 1 1/2 toward the bottom end']);
  // 3 7/8 to 7 1/8 takes all of them
  expect(found({ near: l('3 7/8'), width: l('3 1/4') })[0]).toMatch(/^pins 1,2,3,4: /);
});

test('a groove along the edge through the whole row, by how far it lies off it', () => {
  // the row takes 5/8 to 7/8 from the left edge; the stile is 1 11/16 wide
  expect(less(l('1 1/2'), stile.width.sum.value)).toBe(true);
  // 1/2 to 3/4 is 1/8 in it
  expect(found({ kind: 'groove', near: l('1/2'), width: l('1/4') })).toEqual([
    'pins 1,2,3,4: 1/8 toward the left edge',
  ]);
  expect(found({ kind: 'groove', near: l('3/8'), width: l('1/4') })).toEqual([]);
  // from the right edge 3/4 to 15/16: 3/4 to 15/16 from the left one; past 7/8 it is clear, 1/8 on
  expect(found({ kind: 'groove', at: 'right', near: l('3/4'), width: l('3/16') })).toEqual([
    'pins 1,2,3,4: 1/8 toward the right edge',
  ]);
});

test('a notch or a lap through a hole, moved along; a rabbet stays where it is', () => {
  // 5/8 deep the notch only touches the row; deeper it is in it, 6 to 6 1/4 by 1/8
  const notch = { kind: 'notch', near: l('6'), width: l('1/4') } as const;
  expect(found({ ...notch, depth: l('5/8') })).toEqual([]);
  expect(found({ ...notch, depth: l('11/16') })).toEqual(['pins 3: 1/8 toward the top end']);
  expect(found({ kind: 'lap', near: l('6'), width: l('1/4') })).toEqual(['pins 3: 1/8 toward the top end']);
  expect(found({ kind: 'rabbet', near: undefined, width: l('11/16') })).toEqual(['pins 1,2,3,4']);
  expect(found({ kind: 'rabbet', near: undefined, width: l('5/8') })).toEqual([]);
});

test('what is not cut opens nothing, nor does a cut of a part without rows', () => {
  expect(found({ depth: undefined })).toEqual([]);
  expect(crossedBy(stile, { id: 'j', part: stile.id, kind: 'dado', at: 'left', takes: '' })).toEqual([]);
});
