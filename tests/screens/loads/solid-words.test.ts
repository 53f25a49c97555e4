import { expect, test } from 'vitest';
import { ratio } from '../../../src/length/length';
import * as words from '../../../src/screens/loads/solid-words';
import { frontLimits } from '../../../src/trade/movement/front';
import { l } from '../../length/write-figures';

test('a part says how far it goes either way, and when that is beyond the table', () => {
  expect(words.moves(l('1 11/16'), l('-0.012'), l('0.025'), false)).toBe(
    '1 11/16 across its grain: shrinks 0.012 at the driest, grows 0.025 at the dampest.',
  );
  expect(words.moves(l('2'), l('0'), l('0'), true)).toMatch(/beyond the table\.$/);
});

test('the year says where its ends come from, and what is asked again by how much', () => {
  const year = {
    low: ratio(662n, 100n),
    high: ratio(12n),
    lowFrom: 'air',
    highFrom: 'usual',
    season: { ok: false, error: { code: 'now-missing' } },
  } as const;
  expect(words.reckoned(year)).toBe(
    'Reckoned from 6.6 %, by the air at 70 °F, to 12 %, of a heated room that nobody knows.',
  );
  expect(words.yearErrorText({ code: 'below-low', by: ratio(3n, 2n) })).toMatch(
    /1\.5 % drier .*read again\.$/,
  );
  expect(words.yearErrorText({ code: 'too-damp', by: ratio(2n), limit: ratio(95n) })).toMatch(
    /2 % damper than the 95 %/,
  );
});

const limits = frontLimits(undefined);

test('a front says what to cut, and what would keep a gap that is seen', () => {
  const high = { value: l('9'), rest: l('0') };
  const found = { high, now: l('1/8'), summer: l('0.042'), winter: l('0.142'), beyond: false };
  expect(words.front(found, l('9 1/16'), limits)).toBe(
    'Cut it 9 high, where 9 1/16 is planned: gaps 0.125 now, 0.042 at the dampest, 0.142 at the driest.',
  );
  expect(words.front({ ...found, wide: l('0.02'), openingMost: l('8') }, l('9'), limits)).toMatch(
    /an opening of 8 keeps it, or a front of sheet\.$/,
  );
  expect(words.front({ ...found, wide: l('0.02') }, l('9'), limits)).toMatch(
    /: a front of sheet keeps it\.$/,
  );
});

test('a top fixed across its grain says what it has to take', () => {
  expect(
    words.cross('front-and-back', {
      difference: l('0.354'),
      over: l('0.323'),
      longest: l('1 3/8'),
      beyond: false,
    }),
  ).toMatch(/0\.354 has to go somewhere.*1 3\/8 could be fixed\.$/);
  expect(words.cross('sides', { difference: l('0.02'), beyond: false })).toMatch(/it bears that\.$/);
});

test('a bottom says what to cut, how far it comes out of a groove, and what keeps it in', () => {
  const cut = { value: l('14 9/16'), rest: l('0') };
  const sizes = { cut, widest: l('14.777'), least: l('14.455'), beyond: false };
  const loose = { ...sizes, pushed: l('-0.201'), pushedShort: l('0.326') };
  const out = words.bottom(
    { ...loose, pinned: l('-0.007'), pinnedShort: l('0.132'), deeper: l('9/16') },
    l('5/16'),
    l('14 3/4'),
  );
  expect(out).toBe(
    'Cut it 14 9/16 front to back, where 14 3/4 is planned. Pushed over to one groove at the driest it is out of the other by 0.201. A bottom of sheet next to never moves.',
  );
  // grooves no deeper than half the stuff, and pinned where that is enough
  expect(words.bottom({ ...loose, pinned: l('0.2'), deeper: l('1/4') }, l('5/16'), l('14 3/4'))).toContain(
    'Pinned at its middle 0.200 stays in each; grooves 1/4 deep keep it; a bottom of sheet',
  );
  expect(words.bottom({ ...sizes, pushed: l('0.15'), pinned: l('0.2') }, l('5/16'), l('14 3/4'))).toMatch(
    /stays in the other\.$/,
  );
});
