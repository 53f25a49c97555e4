import { expect, test } from 'vitest';
import * as words from '../../../src/screens/bank/joint-words';
import { drawersWorth } from '../../../src/screens/bank/worth';
import { fingerFit, fingersOf, grooveAmong } from '../../../src/trade/boxes/fingers';
import { l } from '../../trade/grooves/sample';
import { planned, twoFronts } from './sample';

const high = { height: l('5 1/8'), wide: l('1/2') };

test('fingers are counted, their slots said by the first and the step, and what comes off', () => {
  const full = fingersOf({ ...high, how: 'full' });
  // nine of 1/2: five fingers at 0, 1, 2, 3, 4, and four slots
  expect(words.fingersText(full, full.trim)).toBe(
    'Sides: 5 fingers and 4 slots 1/2 wide. Slots up from the bottom edge: the first at 1/2, then every 1. The front begins with a slot. 5/8 comes off the top edge.',
  );
  // between ends of 5/16 nine of 1/2: five slots and four fingers, and the two ends
  expect(words.fingersText(fingersOf({ ...high, how: 'equal' }), l('0'))).toContain(
    '6 fingers and 5 slots 1/2 wide, 5/16 at both edges.',
  );
});

test('a groove that would show is stopped, and sent to where a finger of the sides covers it', () => {
  const full = fingersOf({ ...high, how: 'full' });
  const among = (up: string) => grooveAmong(full, { up: l(up), wide: l('1/4') });
  expect(words.amongText(among('5/8'), l('17/64'), '1/64')).toBe(
    'The groove for the bottom lies in a finger of the box front and would show at the sides: in the box front it is stopped 17/64 from both ends. At 1/4 or 1 up a finger of the sides covers it.',
  );
  expect(words.amongText(among('1 1/8'), undefined, '1/64')).toContain('the front on the box covers it');
});

// K1.8 by hand: .502 stepped 1.007 makes .505, .003 too wide; for .003 loose 1.004 − .003 − 1.007 = −.006
test('a pin that makes fingers too wide is moved toward the blade', () => {
  const sled = { wide: l('.502'), step: l('1.007'), play: l('.003') };
  expect(words.fitText(fingerFit(sled), sled.play)).toBe(
    'The pin makes fingers 0.505 wide, 0.003 tight. For 0.003 loose move it 0.006 toward the blade.',
  );
  // stepped .999: fingers of .497, .005 loose; for .003 1.004 − .003 − .999 = .002 away
  const loose = { ...sled, step: l('.999') };
  expect(words.fitText(fingerFit(loose), sled.play)).toContain(
    '0.005 loose. For 0.003 loose move it 0.002 away',
  );
});

test('fingers too wide for their slots stand among what is worth a look', () => {
  const says = (fingerStep: string) => {
    const { drawers } = planned({
      ...twoFronts,
      boxDeep: l('16'),
      boxJoint: 'box-joint',
      finger: l('1/2'),
      fingerStep: l(fingerStep),
    });
    return drawers.ok ? drawersWorth(drawers.value).filter((x) => x.startsWith('The pin')) : ['not made'];
  };
  expect([says('1.001').length, says('1').length, says('.997').length]).toEqual([1, 0, 0]);
});
