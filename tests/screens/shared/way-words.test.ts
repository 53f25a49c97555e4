import { expect, test } from 'vitest';
import { passageErrorText, passedText } from '../../../src/screens/shared/way-words';
import { throughDoorway } from '../../../src/trade/room/doorway';
import { upStair } from '../../../src/trade/room/stair';
import { l } from '../../trade/grooves/sample';

/** The case of Example 9 of room. */
const size = { width: l('38 3/8'), height: l('64 1/4'), depth: l('17 1/2') };

test('a doorway is told by the way with most room at its tightest: 10 1/2 sideways, 40 1/8 overhead', () => {
  const ways = throughDoorway({ width: l('30'), height: l('79 1/2') }, size, l('1'));
  expect(ways.ok && passedText('Door', { kind: 'doorway', passes: true, ways: ways.value })).toMatch(
    /^Door: its depth across and its (width|height) up, 10 1\/2 to spare sideways, /,
  );
});

test('a doorway too narrow says what is lacking: 17 1/2 + 2 - 18 = 1 1/2', () => {
  const ways = throughDoorway({ width: l('18'), height: l('79 1/2') }, size, l('1'));
  expect(ways.ok && passedText('Door', { kind: 'doorway', passes: false, ways: ways.value })).toMatch(
    /1 1\/2 too little sideways/,
  );
});

test('a stair says what is clear over it: 64 7/8', () => {
  const fit = upStair(
    { flight: 'straight', headroom: l('78'), going: l('10 1/2'), rise: l('7'), between: l('36') },
    size,
    l('1/16'),
  );
  expect(fit.ok && passedText('Stair', { kind: 'stair', passes: true, fit: fit.value })).toMatch(
    /^Stair: 64 7\/8 clear/,
  );
  expect(passageErrorText('Stair', { code: 'winders' })).toMatch(/frame of sticks/);
});
