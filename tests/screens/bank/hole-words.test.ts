import { expect, test } from 'vitest';
import * as words from '../../../src/screens/bank/hole-words';
import { l } from '../../trade/grooves/sample';
import { said } from '../said';

test('a hole names its column only where there are several', () => {
  expect(words.hole(1, undefined)).toBe('hole 1, from the left end');
  expect(words.hole(2, 3)).toBe('Column 3, hole 2, from the left end');
});

test('a jig is spoken of only where there are holes from both ends', () => {
  expect(words.down('2', undefined)).toBe('2 down from the top edge.');
  expect(words.down('2', l('3 3/4'))).toContain('the outer holes come 3 3/4 apart');
});

test('the screw to take is named, and its bite where it is known', () => {
  const at = { least: l('1'), most: l('1 1/4'), pick: '1 1/8' };
  expect(said(words.take({ ...at, bite: undefined }))).toContain(
    '1 to 1 1/4. Take screws 1 1/8 long. Pilot first',
  );
  expect(said(words.take({ ...at, bite: l('1/2') }))).toContain(
    'Take screws 1 1/8 long, each bites 1/2. Pilot first',
  );
});
