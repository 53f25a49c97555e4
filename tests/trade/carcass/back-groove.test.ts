import { expect, test } from 'vitest';
import { backGroove } from '../../../src/trade/carcass/back-groove';
import type { Case } from '../../../src/trade/carcass/case';
import { l, w } from '../../length/write-figures';
import { part, plainCase, work } from './sample-case';

/** 38 3/8 × 64 1/4 in 23/32 on the floor: clear 36 15/16 × 62 13/16; grooves 1/4 deep. */
const grooved: Case = {
  ...plainCase,
  feet: l('0'),
  inside: [],
  backHow: 'groove',
  backGroove: l('1/4'),
  backGrooveWide: l('1/4'),
};
const stops = (c: Case, role: string) => {
  const groove = part(work(c), role).along?.find(({ id }) => id === 'back');
  if (!groove) throw new Error('no groove');
  return groove.from && groove.to ? [w(groove.from), w(groove.to)] : 'through';
};

test('in a top over the sides it begins and ends over the floors of theirs, which run out under it', () => {
  // past 1/2 and the side 23/32, less 1/4: 31/32; the top is 36 15/16 + 2 × 1 7/32 = 39 3/8 long: 39 3/8 − 31/32
  const c = { ...grooved, topJoint: 'over', topPast: l('1/2') } as const;
  expect(stops(c, 'top')).toEqual(['31/32', '38 13/32']);
  expect([stops(c, 'left'), stops(c, 'right')]).toEqual(['through', 'through']);
  expect(stops({ ...grooved, bottomJoint: 'over' }, 'bottom')).toEqual(['15/32', '37 29/32']);
});

test('in a side beside a butted top it ends where that of the top is as deep; under a loose top, or with none, it runs', () => {
  // the bottom 23/32, clear 62 13/16, 1/4 into the top
  const c = { ...grooved, topJoint: 'butt' } as const;
  expect(stops(c, 'left')).toEqual(['0', '63 25/32']);
  expect(stops(c, 'top')).toBe('through');
  expect(stops({ ...c, hasLooseTop: true }, 'left')).toBe('through');
  expect(stops({ ...c, hasTop: false }, 'left')).toBe('through');
  // one side is joined otherwise: in a rabbet 11/32 deep nothing of a groove 1/4 deep is left
  expect([
    stops({ ...c, topRightJoint: 'rabbet' }, 'left'),
    stops({ ...c, topRightJoint: 'rabbet' }, 'right'),
  ]).toEqual([['0', '63 25/32'], 'through']);
});

test('a rabbet hides a groove no deeper than it; in one that is shallower it would be seen', () => {
  expect(stops(grooved, 'left')).toBe('through');
  expect(stops({ ...grooved, topRabbet: l('1/4') }, 'left')).toBe('through');
  expect(stops({ ...grooved, topRabbet: l('3/16') }, 'left')).toEqual(['0', '63 25/32']);
});

test('a back in rabbets has none', () => {
  expect(backGroove(work(plainCase).sizes, 'left')).toEqual([]);
});

// 17 1/2 − 1/2 − 15/64 is 16 49/64: half a mark over 16 3/4. What stands before a back goes down: common practice, no
// source.
test('what stands before a back in a groove is no deeper than the case is there', () => {
  const fixed = plainCase.inside.filter(({ kind }) => kind === 'fixed');
  const of = work({ ...grooved, backGrooveWide: l('15/64'), inside: fixed });
  expect(['partition1', 'fixed1'].map((role) => w(part(of, role).width.mark.value))).toEqual([
    '16 3/4',
    '16 3/4',
  ]);
});

// 17 1/2 − 17/64 is 17 15/64: with bottom and top, which set it, to the nearest 17 1/4
test('before a back in rabbets it is as wide as bottom and top are cut', () => {
  const of = work({ ...plainCase, backWide: l('17/64') });
  const wide = (role: string) => w(part(of, role).width.mark.value);
  expect(['bottom', 'top', 'partition1', 'fixed1'].map(wide)).toEqual(Array(4).fill('17 1/4'));
});
