import { expect, test } from 'vitest';
import { newCase } from '../../../src/trade/carcass/case';
import { type Clash, clashesOf } from '../../../src/trade/carcass/fastener-clashes';
import type { Part } from '../../../src/trade/carcass/part';
import { partsOf } from '../../../src/trade/carcass/parts';
import type { FastenerRow } from '../../../src/trade/fasteners/row';
import { l, w } from '../../length/write-figures';

/** The side of a case 30 x 48 x 12 of 3/4: its bottom and a shelf 20 over it in dadoes 1/4 deep. */
function side(role: 'left' | 'partition1' = 'left'): Part {
  const made = partsOf(
    {
      ...newCase('c'),
      width: l('30'),
      height: l('48'),
      depth: l('12'),
      partitions: 1,
      dado: l('1/4'),
      fit: l('0'),
      topJoint: 'rabbet',
      topRabbet: l('3/8'),
      stocks: { side: 'a' },
      inside: [{ id: 's', kind: 'fixed', bay: 1, at: l('20') }],
    },
    { stuff: [{ id: 'a', name: 'a', thickness: l('3/4'), measured: true }], tape: '1/32' },
  );
  const part = made.ok ? made.value.parts.find(({ id }) => id === `c~${role}`) : undefined;
  if (!part) throw new Error('no part');
  return part;
}

/** One hole 3/8 wide, 9/16 deep, 6 from the front edge, so far off an end. */
const hole = (from: string, patch: Partial<FastenerRow> = {}): FastenerRow => ({
  id: 'x',
  holds: { part: 'shelf' },
  in: { at: 'face', off: 'bottom' },
  thick: l('3/8'),
  deep: l('9/16'),
  from: l(from),
  marks: [l('6')],
  ...patch,
});

const told = (clashes: readonly Clash[]) => clashes.map(({ cut, way, by }) => `${cut} ${way} ${w(by)}`);

// the shelf's dado is cut 20 3/4 to 21 1/2 up the side
test.each([
  // a hole from 20 7/16 to 20 13/16 is 1/16 in it; to 20 3/4 it touches it
  ['20 5/8', ['groove along 1/16']],
  ['20 9/16', []],
  // in the middle of it 1/4 less depth is the shortest way out of it
  ['21 1/8', ['groove into 1/4']],
])('a hole %s up a side comes into its dado: %j', (from, clashes) => {
  expect(told(clashesOf(side(), [hole(from)], []))).toEqual(clashes);
});

test('counted from the other end a row lies where it does, and a rabbet there is told', () => {
  // the side is 48 long: 48 - 27 1/4 = 20 3/4, half of the hole in the dado
  const off = { in: { at: 'face', off: 'top' } } as const;
  expect(told(clashesOf(side(), [hole('27 1/4', off)], []))).toEqual(['groove along 3/16']);
  // the top's rabbet is 3/4 of the end: a hole 7/8 off that, from 11/16, is 1/16 in it
  expect(told(clashesOf(side(), [hole('7/8', off)], []))).toEqual(['rabbet along 1/16']);
});

test('of a partition each face has its own, until a hole is so deep that it comes into what the other has', () => {
  // the shelf stands in its left face at 20 1/4 up: bay 1, one dado under the datum
  const B = { in: { at: 'face', off: 'bottom', face: 'B' } } as const;
  const at = side('partition1').board?.wides.find(({ id }) => id === 's')?.near ?? l('0');
  const middle = w(at.add(l('3/8')) as typeof at);
  // 9/16 and 1/4 are 1/16 over 3/4; 1/2 and 1/4 are just that
  expect(told(clashesOf(side('partition1'), [hole(middle, B)], []))).toEqual(['groove into 1/16']);
  expect(told(clashesOf(side('partition1'), [hole(middle, { ...B, deep: l('1/2') })], []))).toEqual([]);
});

test('rows of two joints: a hole in an end meets one in the face beside it, off whichever face it stands', () => {
  // up the end 1 1/16, its middle 3/8 off the outside: 3/16 to 9/16 in; a hole at 1 from 13/16 is 1/4 in it
  const end = hole('3/8', { in: { at: 'ends', named: ['bottom'], off: 'outside' }, deep: l('1 1/16') });
  const plain = { ...side(), board: undefined };
  expect(told(clashesOf(plain, [hole('1')], [end]))).toEqual(['fastener along 1/4']);
  expect(told(clashesOf(plain, [hole('1', { marks: [l('6 3/8')] })], [end]))).toEqual([]);
  // as a slot 2 3/4 long it reaches there: 1 3/8 to either side
  expect(told(clashesOf(plain, [hole('1', { marks: [l('6 3/8')], long: l('2 3/4') })], [end]))).toEqual([
    'fastener along 1/4',
  ]);
  // 5/8 off the outside of 3/4 it reaches to 3/4 - 7/16 = 5/16 off the inside, and a hole 3/8 deep comes into it;
  // 1/8 off the outside to 3/4 - 5/16 = 7/16, and it does not
  const near = { ...end, from: l('5/8') };
  expect(told(clashesOf(plain, [hole('1', { deep: l('3/8') })], [near]))).toHaveLength(1);
  const far = { ...end, from: l('1/8') };
  expect(told(clashesOf(plain, [hole('1', { deep: l('3/8') })], [far]))).toEqual([]);
});

test('a slanted hole takes all from its face to the middle of the end', () => {
  const slant = { seat: l('5/8'), seatBack: l('5/8'), meets: l('1 3/8') };
  const end = hole('3/8', { in: { at: 'ends', named: ['bottom'], off: 'inside' }, deep: l('1 3/8'), slant });
  const plain = { ...side(), board: undefined };
  // a hole in the inside face at 1 1/2, from 1 5/16, is 1/16 in what goes 1 3/8 up
  expect(told(clashesOf(plain, [hole('1 1/2', { deep: l('1/8') })], [end]))).toEqual(['fastener along 1/16']);
});
