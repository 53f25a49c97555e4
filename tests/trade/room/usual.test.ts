import { expect, test } from 'vitest';
import { usualRoom } from '../../../src/trade/room/usual';
import { l, spelled } from './sample';

test('the usual figures of a room, in inches and in round millimetres', () => {
  expect(spelled(usualRoom('in'))).toEqual({
    ceilingGap: '1/4',
    hand: '1',
    stud: '1 1/2',
    keep: '2',
    allow: '1/2',
    end: '2',
    burned: '1',
  });
  expect(usualRoom('mm')).toEqual({
    ceilingGap: l('6 mm'),
    hand: l('25 mm'),
    stud: l('40 mm'),
    keep: l('50 mm'),
    allow: l('12 mm'),
    end: l('50 mm'),
    burned: l('100 mm'),
  });
});
