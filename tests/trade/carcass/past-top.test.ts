import { describe, expect, test } from 'vitest';
import { zero } from '../../../src/length/length';
import { backOpening } from '../../../src/trade/carcass/back';
import type { Case } from '../../../src/trade/carcass/case';
import { checkOf } from '../../../src/trade/carcass/check';
import { cleatPlaces } from '../../../src/trade/carcass/cleats';
import { frameOf } from '../../../src/trade/carcass/frame';
import { rightJointsAt, seenOf } from '../../../src/trade/carcass/meetings';
import { topNailer } from '../../../src/trade/carcass/nailer-places';
import { partsOf } from '../../../src/trade/carcass/parts';
import { pastTopProblems, pastTopWarnings } from '../../../src/trade/carcass/past-top';
import { warningsOf } from '../../../src/trade/carcass/warnings';
import { l, w } from '../../length/write-figures';
import { framedCase, part, plainCase, sheets, work } from './sample-case';

/**
 * 38 3/8 × 64 1/4 in 23/32, 4 1/8 off the floor, dadoes 9/32 deep: clear 36 15/16. The sides 2 past the top:
 * 64 1/4 − 2 − 23/32 − 4 1/8 − 23/32 = 56 11/16 clear from bottom to top.
 */
const low: Case = { ...plainCase, inside: [], topJoint: 'dado', sidePast: l('2'), fit: l('0') };
const long = (c: Case, role: string) => w(part(work(c), role).length.sum.value);
const grooves = (c: Case, role: string) =>
  part(work(c), role).board?.wides.map(
    ({ id, near = zero, width = zero, depth = zero }) => `${id} ${w(near)} ${w(width)} ${w(depth)}`,
  );
const lines = (c: Case, role: string) => part(work(c), role).lines?.map(({ id, near }) => `${id} ${w(near)}`);
const problems = (c: Case) => {
  const found = partsOf(c, { stuff: sheets(), tape: '1/32' });
  return found.ok ? [] : found.error.map((x) => `${x.code} ${'by' in x && x.by ? w(x.by) : ''}`.trim());
};

describe('a top in dadoes below the ends of the sides', () => {
  test('takes what they run past it off the clear height; what stands inside is as much shorter', () => {
    expect(w(work(low).sizes.clearHeight.value)).toBe('56 11/16');
    // 36 15/16 + 2 × 9/32; 56 11/16 + 2 × 9/32; the sides are as high as the case
    expect([long(low, 'top'), long(low, 'partition1'), long(low, 'left')]).toEqual([
      '37 1/2',
      '57 1/4',
      '64 1/4',
    ]);
    expect(checkOf(work(low)).filter(({ meets }) => !meets)).toEqual([]);
    expect(checkOf(work(low)).map(({ way }) => way)).toEqual(['bottom', 'bays', 'top', 'side', 'partition']);
  });

  test('with openings held they come on the outside height: 4 1/8 + 23/32 + 56 11/16 + 23/32 + 2', () => {
    const held: Case = { ...low, hold: 'openings', opening: l('18'), clear: l('56 11/16') };
    expect(w(work(held).sizes.height.value)).toBe('64 1/4');
  });

  test('its dado has a near wall and a far one, 2 under the end, as wide and as deep as that of the bottom', () => {
    // over the datum, which is 4 27/32 up: from 61 17/32 to 62 1/4 of 64 1/4
    for (const role of ['left', 'right'])
      expect(grooves(low, role)).toEqual(['bottom -23/32 23/32 9/32', 'top 56 11/16 23/32 9/32']);
    expect(w(part(work(low), 'left').board?.datum ?? zero)).toBe('4 27/32');
    expect(part(work(low), 'left').rabbets.map(({ id }) => id)).toEqual(['back']);
    // half of .005 lower, as every dado is centred on what goes in: 56.6875 − .0025
    const fitted = part(work({ ...low, fit: l('0.005') }), 'left').board?.wides.find(
      ({ id }) => id === 'top',
    );
    expect(fitted?.near?.valueOf()).toBe(56.685);
  });

  test('at the ends of the sides its dado has one wall: a rabbet as deep as the dadoes, and it is seen', () => {
    const flush: Case = { ...low, sidePast: undefined };
    const seat = part(work(flush), 'left').rabbets.find(({ id }) => id === 'top');
    expect(seat && [w(seat.width), w(seat.depth)]).toEqual(['23/32', '9/32']);
    expect(grooves(flush, 'left')).toEqual(['bottom -23/32 23/32 9/32']);
    expect(w(seenOf(work(flush).sizes, 'top'))).toBe('9/32');
    expect(w(seenOf(work(low).sizes, 'top'))).toBe('0');
    expect(w(work(flush).sizes.clearHeight.value)).toBe('58 11/16');
  });

  test('what is said of it counts for nothing in rabbets, over the sides, mitred, or with no top', () => {
    for (const own of [{ topJoint: undefined }, { topJoint: 'over' }, { topJoint: 'mitre' }] as const)
      expect(w(work({ ...low, ...own }).sizes.clearHeight.value)).toBe('58 11/16');
    // 23/32 more
    expect(w(work({ ...low, hasTop: false }).sizes.clearHeight.value)).toBe('59 13/32');
  });
});

test('butted it stands on a line of each side, on tongues in a groove for the tongue alone', () => {
  // 4 27/32 + 56 11/16
  const butted: Case = { ...low, topJoint: 'butt' };
  expect(lines(butted, 'left')).toEqual(['top 61 17/32']);
  expect(long(butted, 'top')).toBe('36 15/16');
  // the tongue at the under face; 36 15/16 + 2 × (9/32 − 1/32)
  const tongued: Case = { ...low, topJoint: 'tongue', tongue: l('1/4'), tongueRoom: l('1/32') };
  expect(grooves(tongued, 'right')).toContain('top 56 11/16 1/4 9/32');
  expect(long(tongued, 'top')).toBe('37 7/16');
  // one end in a dado, the other butted: 36 15/16 + 9/32
  const unlike: Case = { ...low, topRightJoint: 'butt' };
  expect([long(unlike, 'top'), lines(unlike, 'left'), lines(unlike, 'right')]).toEqual([
    '37 7/32',
    [],
    ['top 61 17/32'],
  ]);
  expect(rightJointsAt(low, 'top')).toEqual(['rabbet', 'dado', 'butt', 'tongue']);
});

describe('the back', () => {
  test('in the rabbets of the sides, or laid on, goes up to their ends; in grooves it ends in the top', () => {
    // 64 1/4 − 4 1/8 − 1/16 of room, as with the top at the ends
    expect(long(low, 'back')).toBe('60 1/16');
    expect(w(backOpening(work({ ...low, backHow: 'applied' }).sizes).up.value)).toBe('60 1/8');
    const grooved: Case = { ...low, backHow: 'groove', backGroove: l('1/4'), backGrooveWide: l('1/4') };
    // 56 11/16 + 2 × 1/4 − 1/16
    expect(long(grooved, 'back')).toBe('57 1/8');
    // and so do the grooves up the sides: 4 27/32 + 56 11/16 + 1/4; with the top at their ends they run out
    const stops = (c: Case) => part(work(c), 'left').along?.map(({ to }) => to && w(to));
    expect(stops(grooved)).toEqual(['61 25/32']);
    expect(stops({ ...grooved, sidePast: l('0') })).toEqual([undefined]);
    // but in dadoes too shallow to take the groove they stop as well: 4 27/32 + 58 11/16 + 1/4
    expect(stops({ ...grooved, sidePast: l('0'), dado: l('3/16') })).toEqual(['63 25/32']);
  });
});

test('cleats and nailers lie under the top', () => {
  // 56 11/16 − 3 − 1/16 of room
  expect(cleatPlaces(work({ ...low, cleats: 1 }).sizes).map(({ near }) => w(near))).toEqual(['53 5/8']);
  // 4 27/32 + 56 11/16 − 2 1/2
  expect(w(topNailer(work({ ...low, hasNailers: true }).sizes) ?? zero)).toBe('59 1/32');
});

describe('the face frame', () => {
  const framed: Case = { ...framedCase, inside: [], topJoint: 'dado', sidePast: l('2') };

  test('covers from the ends of the sides down: its opening is as high as with the top at the ends', () => {
    // 64 1/4 − 4 1/8 − 2 − 1 5/8; the top rail of 2 ends 23/32 over the under face of the top
    const { middles, head } = frameOf(work(framed).sizes);
    expect([middles.value, head.value].map(w)).toEqual(['56 1/2', '-23/32']);
  });

  test('a top rail that ends over the top leaves it open: by how much, and what would do', () => {
    expect(problems({ ...framed, sidePast: l('2 1/4') })).toEqual(['rail-over-top 1/4']);
    expect(problems({ ...framed, sidePast: l('2 1/4'), topRail: l('2 1/4') })).toEqual([]);
  });

  test('a top that hangs into the opening is told where there are drawers: 2 + 23/32 would cover it', () => {
    const found = (c: Case, ...bays: readonly number[]) =>
      warningsOf(work(c), new Set(bays)).flatMap((x) =>
        x.code === 'top-in-opening' ? [`${w(x.by)} ${w(x.least)}`] : [],
      );
    expect(found(framed, 1)).toEqual(['23/32 2 23/32']);
    expect(found(framed)).toEqual([]);
    expect(found({ ...framed, topRail: l('2 23/32') }, 1)).toEqual([]);
  });
});

describe('what cannot be', () => {
  test('its right end in a rabbet at the end of the side', () => {
    expect(problems({ ...low, topRightJoint: 'rabbet' })).toEqual(['top-low 2']);
    expect(problems({ ...low, topRightJoint: 'rabbet', sidePast: l('0') })).toEqual([]);
  });

  test('a loose top, or edging, on the ends of sides that run past the top', () => {
    expect(pastTopProblems({ ...low, hasLooseTop: true, hasEdging: true })).toMatchObject([{ on: 'loose' }]);
    expect(pastTopProblems({ ...low, hasEdging: true })).toMatchObject([{ on: 'edging' }]);
    expect(pastTopProblems({ ...low, hasEdging: true, topJoint: 'rabbet' })).toEqual([]);
  });

  test('less than nothing, or more than there is between bottom and end', () => {
    expect(problems({ ...low, sidePast: l('-1/2') })).toEqual(['negative 1/2']);
    // 4 1/8 + 1 7/16 + 60 = 65 9/16: 1 5/16 over 64 1/4
    expect(problems({ ...low, sidePast: l('60') })).toEqual(['no-opening 1 5/16']);
  });
});

// 3/8 is the least, or as much as the dado is deep: common practice, no source
test('little wood over its dadoes is worth a look', () => {
  const thin = (c: Case) =>
    pastTopWarnings(work(c).sizes).flatMap((x) =>
      x.code === 'thin-over' ? [`${w(x.over)} ${w(x.least)}`] : [],
    );
  expect(thin({ ...low, sidePast: l('1/4') })).toEqual(['1/4 3/8']);
  expect(thin({ ...low, sidePast: l('3/8') })).toEqual([]);
  expect(thin({ ...low, sidePast: l('3/8'), dado: l('7/16') })).toEqual(['3/8 7/16']);
  expect(thin({ ...low, sidePast: l('1/4'), topJoint: 'butt' })).toEqual([]);
  expect(thin({ ...low, sidePast: l('1/4'), topJoint: 'butt', topRightJoint: 'dado' })).toEqual(['1/4 3/8']);
  expect(thin({ ...low, sidePast: undefined })).toEqual([]);
});
