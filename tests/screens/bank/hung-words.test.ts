import { describe, expect, test } from 'vitest';
import * as words from '../../../src/screens/bank/hung-words';
import { l } from '../../trade/grooves/sample';

const by = l('1/8');

describe('what cannot be is said by how much and what would fit', () => {
  test.each([
    [{ code: 'runner-thin', by, least: l('1') }, /1\/8 too thin.*At least 1 thick/],
    [
      { code: 'strip-through', by, most: l('1/4') },
      /through the sides, 1\/8 past\. Strips 1\/4 thick would fit/,
    ],
    [{ code: 'strip-through', by: l('0'), most: l('1/4') }, /through the sides\. Strips/],
    [{ code: 'strip-in-dado', by, most: l('1/4') }, /dado for the back, 1\/8 past\. Strips under 1\/4/],
    [{ code: 'strip-meets-bottom', by, least: l('5/8') }, /^Drawer 2: .*1\/8 higher clears it: 5\/8 up/],
    [{ code: 'strip-off', by, most: l('2') }, /^Drawer 2: .*1\/8 over it\. At most 2 up/],
    [{ code: 'stop-short', by }, /^Drawer 2: .*1\/8 short\. Thicker runners/],
    [{ code: 'stop-shut', by }, /^Drawer 2: .*1\/8 short\. A deeper box/],
    [{ code: 'hung-not-positive', field: 'runHigh' }, /height of runners or strips must be more than 0/],
    [{ code: 'hung-negative', field: 'stripPlay' }, /play in the groove must be 0 or more/],
  ] as const)('%o', (problem, says) => {
    const wrong = { ...problem, drawer: 2 } as const;
    expect(words.isHungError(wrong)).toBe(true);
    expect(words.hungErrorText(wrong)).toMatch(says);
  });

  test('a fault of the box is none of these', () => {
    expect(words.isHungError({ code: 'back-gone', by, drawer: 1 })).toBe(false);
  });
});

test.each([
  [{ code: 'rests-little', on: by, half: l('1/4') }, /rests on 1\/8 of its runner.*\(1\/4\)/],
  [{ code: 'strip-deep', deep: l('3/8'), half: l('1/4') }, /3\/8 deep.*half the side \(1\/4\)/],
  [{ code: 'strip-web', left: l('1/16'), least: by }, /only 1\/16 is left: leave 1\/8/],
  [
    { code: 'kicker-loose', drawer: 3, gap: l('5/8') },
    /^Drawer 3: the runner over it lies 5\/8 over the box/,
  ],
] as const)('%o is told', (warning, says) => {
  expect(words.hungWarningText(warning)).toMatch(says);
});

test('drawers that are stopped alike stand in one line', () => {
  const says = words.stops({ on: 'wall', begins: l('1 1/4'), rise: l('3/4'), out: l('12') });
  expect(words.ofDrawers(['Drawer 1', 'Drawer 2'], says)).toMatch(
    /^Drawer 1; Drawer 2: a block on each wall, two screws in each, 1 1\/4 behind the face.*up 3\/4 over.*comes out 12\./,
  );
});
