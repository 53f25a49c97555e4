import { afterEach, expect, test } from 'vitest';
import { ratio } from '../../../src/length/length';
import * as refused from '../../../src/screens/shared/refused-words';
import { tapeInHand } from '../../../src/ui/unit-in-hand';
import { l } from '../../length/write-figures';

afterEach(() => {
  tapeInHand.value = '1/32';
});

test.each([
  ['a length of nothing', refused.lengthRefused(l('0')), '0 cannot be: any length over 0 fits.'],
  ['a length', refused.lengthRefused(l('1/64')), undefined],
  // 20 - 18 7/64
  [
    'a place past the end',
    refused.placeRefused(l('18 7/64'), 'its end')(l('20')),
    'That is 1 57/64 past its end: 0 to 18 7/64 fits.',
  ],
  ['a place at the end', refused.placeRefused(l('18 7/64'), 'its end')(l('18 7/64')), undefined],
  [
    'a weight of nothing',
    refused.weightRefused(ratio(0n)),
    '0 cannot be: any weight over 0 fits. What is not weighed stays empty.',
  ],
  ['the heaviest', refused.weightRefused(ratio(2000n)), undefined],
  [
    'a weight over it',
    refused.weightRefused(ratio(2001n)),
    'That is 1 lb over the 2000 lb it can be. Is it in another unit?',
  ],
  ['nothing, where that may be', refused.overWeight(ratio(0n)), undefined],
  ['a square foot as heavy as can be', refused.footRefused(ratio(30n)), undefined],
  [
    'a square foot over it',
    refused.footRefused(ratio(61n, 2n)),
    'That is 0.5 lb a square foot too much: 0.1 lb a square foot to 30 lb a square foot fits.',
  ],
  ['as stiff as can be', refused.stiffRefused(ratio(4n)), undefined],
  [
    'pounds, not millions of them',
    refused.stiffRefused(ratio(1_300_000n)),
    expect.stringMatching(/^That is 1299996 million/),
  ],
  ['no feet', refused.countRefused(9, 'feet')(0), '0 cannot be: 1 to 9 feet fits.'],
  ['nine feet', refused.countRefused(9, 'feet')(9), undefined],
  ['ten feet', refused.countRefused(9, 'feet')(10), '10 is 1 more than there can be: 1 to 9 feet fits.'],
  ['half a turn', refused.turnRefused(ratio(180n)), undefined],
  ['over half a turn', refused.turnRefused(ratio(361n, 2n)), 'That is 0.5° past half a turn: 0 to 180 fits.'],
])('%s', (_, says, want) => expect(says).toEqual(want));

test('in a job in millimetres it is said in its units', () => {
  tapeInHand.value = '1 mm';
  // 2001 lb is 1 lb over: .45 kg; 2000 lb is 907.18 kg
  expect(refused.weightRefused(ratio(2001n))).toBe(
    'That is 0.5 kg over the 907.2 kg it can be. Is it in another unit?',
  );
  // 4 and .1 million pounds a square inch: 27579 and 689 N/mm²
  expect(refused.stiffRefused(ratio(5n))).toMatch(/: 690 N\/mm² to 27580 N\/mm² fits\.$/);
});
