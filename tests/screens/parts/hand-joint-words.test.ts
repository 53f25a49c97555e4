import { expect, test } from 'vitest';
import { ask, crosses, fault, keepsOff } from '../../../src/screens/parts/hand-joint-words';
import type { HandJointFault } from '../../../src/trade/joints/by-hand';
import type { Crossing } from '../../../src/trade/joints/crosses';
import type { Bore } from '../../../src/trade/shelves/bore';
import { l } from '../../length/write-figures';

const bore = { id: 'f', row: 'front', face: 'A' } as Bore;

test('a row that runs into something is said with what fits', () => {
  const into = { code: 'hole-in-cut', no: 3, cut: 'rabbet' } as const;
  const toward = { at: 'edge', named: 'front' } as const;
  expect(fault({ ...into, fits: { toward, by: l('5/32') } })).toBe(
    'It is not bored: hole 3 runs into a rabbet that is there already. Moved 5/32 toward the front edge it fits.',
  );
  // 189/400 lies between 30/64, 187.5/400, and 31/64, 193.75/400: the less would not clear it
  expect(fault({ ...into, fits: { toward, by: l('189/400') } })).toContain(
    'Moved 31/64 toward the front edge',
  );
  expect(fault({ ...into, cut: 'pin-hole', fits: { lessThan: l('15/32'), by: l('0') } })).toBe(
    'It is not bored: hole 3 runs into a hole of another row that is there already. Less than 15/32 deep it fits.',
  );
  expect(fault({ ...into, cut: 'end-joint' })).toBe(
    'It is not bored: hole 3 runs into the joint at the end that is there already. No room is left for it beside that, moved either way: fewer holes may fit.',
  );
});

test('a cut that rows by hand run into names them', () => {
  expect(keepsOff([1])).toBe('The row of joint 1 would run into it and is no longer among the cuts.');
  expect(keepsOff([1, 3])).toBe(
    'The rows of joints 1 and 3 would run into it and are no longer among the cuts.',
  );
});

test('a blank says from which end or edge it is measured', () => {
  expect(ask('near', 1, 'bottom end')).toBe('Joint 1: how far from the bottom end');
  expect(ask('first', 2, 'left end')).toBe('Joint 2: how far the first is from the left end');
});

test('a row that runs off its part says what stays on it', () => {
  const off = { code: 'hole-off', over: 'last', by: l('8 1/8') } as const;
  const said = (fits: Extract<HandJointFault, { code: 'hole-off' }>['fits']) => fault({ ...off, fits });
  expect(said('moved')).toBe(
    'It is not bored: the last hole runs 8 1/8 off the part. Moved in by that much it fits.',
  );
  expect(said({ holes: 71, first: 'there' })).toBe(
    'It is not bored: the last hole runs 8 1/8 off the part. With the first there, 71 holes stay on it.',
  );
  expect(said({ holes: 1, first: 'moved' })).toContain(
    'With the first moved in to the end, 1 hole stays on it.',
  );
  expect(said({ wide: l('1 1/2') })).toContain('A hole fits that is 1 1/2 wide at most.');
});

test('a row that comes out is not bored, a cut that does is not cut', () => {
  const through = { code: 'through', by: l('1/4'), thickness: l('3/4') } as const;
  expect(fault(through, 'bored')).toBe(
    'It is not bored: it comes out at the other side, by 1/4. Less than 3/4 deep fits.',
  );
  expect(fault(through)).toMatch(/^It is not cut: /);
});

test('a cut through pin holes says of which row and how far it is clear of them', () => {
  const toward = { at: 'end', named: 'top' } as const;
  const front: Crossing = { bore, numbers: [3, 4], fits: { toward, by: l('1/8') } };
  expect(crosses([front, { ...front, bore: { ...bore, row: 'rear' }, numbers: [4] }])).toBe(
    'It cuts into holes 3 and 4 of the front row and hole 4 of the rear row: no pin holds there. Moved 1/8 toward the top end it is clear of them.',
  );
  expect(
    crosses([
      { bore, numbers: [1] },
      { bore: { ...bore, face: 'B' }, numbers: [2] },
    ]),
  ).toBe(
    'It cuts into hole 1 of the front row, face A and hole 2 of the front row, face B: no pin holds there.',
  );
});
