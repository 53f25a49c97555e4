import { describe, expect, test } from 'vitest';
import { outsideOf } from '../../../src/plan/outside';
import { type Case, newCase } from '../../../src/trade/carcass/case';
import { checkOf } from '../../../src/trade/carcass/check';
import { partsOf } from '../../../src/trade/carcass/parts';
import { plinthOf } from '../../../src/trade/carcass/plinth';
import { setBackOf } from '../../../src/trade/carcass/toe-notch';
import { warningsOf } from '../../../src/trade/carcass/warnings';
import { l, w } from '../grooves/sample';
import { part, sheets, work } from './sample-case';

/** 43 5/8 × 66 1/2 × 18 3/4 with a frame of 3/4 before it, on a plinth 4 high of the stuff of its sides, 23/32. */
const onPlinth: Case = {
  ...newCase('c1'),
  width: l('43 5/8'),
  height: l('66 1/2'),
  depth: l('18 3/4'),
  feet: l('4'),
  hasFrame: true,
  hasPlinth: true,
  plinthFront: l('3'),
  plinthLeft: l('1/2'),
  plinthRight: l('1/2'),
  plinthBack: l('1'),
  plinthCrosses: 3,
  stocks: { side: 'a', frame: 'f' },
};
const problems = (c: Case) => {
  const found = partsOf(c, { stuff: sheets(), tape: '1/32' });
  return found.ok ? [] : found.error.map((p) => ('by' in p ? `${p.code} ${w(p.by)}` : p.code));
};
const sizes = (c: Case, role: string) => {
  const { length, width, copies } = part(work(c), role);
  return `${copies}: ${w(length.sum.value)} × ${w(width.mark.value)}`;
};

describe('a case on a plinth', () => {
  const of = work(onPlinth);

  // 66 1/2 − 4 = 62 1/2; clear 62 1/2 − 2 × 23/32 = 61 1/16
  test('its sides stand on the plinth, its bottom lies at their lower ends', () => {
    expect(w(part(of, 'left').length.sum.value)).toBe('62 1/2');
    expect(w(of.sizes.clearHeight.value)).toBe('61 1/16');
    expect(w(of.sizes.datum.value)).toBe('23/32');
    expect(part(of, 'left').rabbets.map((r) => r.takes.part)).toContain('bottom');
  });

  // 43 5/8 − 1/2 − 1/2 = 42 5/8; 18 3/4 + 3/4 − 3 − 1 = 15 1/2; 15 1/2 − 2 × 23/32 = 14 1/16
  test('its rails run the length, its cross members stand between them', () => {
    expect(sizes(onPlinth, 'plinthrail')).toBe('2: 42 5/8 × 4');
    expect(sizes(onPlinth, 'plinthcross')).toBe('3: 14 1/16 × 4');
    expect(w(plinthOf(of.sizes)?.deep.value)).toBe('15 1/2');
  });

  // (42 5/8 − 3 × 23/32) / 2 = 20 15/64; then 20 15/64 + 23/32 = 20 61/64, twice that 41 29/32
  test('its cross members stand evenly, the outer two at the ends', () => {
    const plinth = plinthOf(of.sizes);
    expect(w(plinth?.clear)).toBe('20 15/64');
    expect(plinth?.nears.map(w)).toEqual(['0', '20 61/64', '41 29/32']);
  });

  // drops 36 1/4, 36 1/16, 36 3/8, 36 5/32: the floor falls 5/16, so 4 + 5/16 + 1/4 = 4 9/16
  test('scribed it is ripped wider by the fall of the floor and 1/4, up to the next mark', () => {
    const scribed = { ...onPlinth, plinthHow: 'scribed' } as const;
    const found = partsOf(scribed, { stuff: sheets(), tape: '1/32', fall: l('5/16') });
    const rail = found.ok ? found.value.parts.find((p) => p.id === 'c1~plinthrail') : undefined;
    expect(w(rail?.width.mark.value)).toBe('4 9/16');
    // .3 = 9.6 thirty-seconds: 4 + .3 + 1/4 goes up to 4 9/16
    const thin = partsOf(scribed, { stuff: sheets(), tape: '1/32', fall: l('.3') });
    const up = thin.ok ? thin.value.parts.find((p) => p.id === 'c1~plinthcross') : undefined;
    expect(w(up?.width.mark.value)).toBe('4 9/16');
    // the floor not read yet
    expect(sizes(scribed, 'plinthrail')).toBe('2: 42 5/8 × 4 1/4');
  });

  test('it is carried without its plinth and stands on it; it tips over the front of the plinth', () => {
    expect([w(outsideOf(of).carried.height), w(outsideOf(of).stands.height)]).toEqual(['62 1/2', '66 1/2']);
    expect(w(setBackOf(of.sizes))).toBe('3');
  });

  test('side and plinth add up to the height, and no toe board stands between', () => {
    const lines = checkOf(of);
    expect(lines.every((line) => line.meets)).toBe(true);
    expect(w(lines.find((line) => line.way === 'side')?.wanted)).toBe('66 1/2');
    expect(work({ ...onPlinth, hasToe: true }).parts.some((p) => p.name.role === 'toe')).toBe(false);
  });

  test('without one the feet are part of the sides, as ever', () =>
    expect(w(part(work({ ...onPlinth, hasPlinth: false }), 'left').length.sum.value)).toBe('66 1/2'));
});

describe('what cannot be says by how much', () => {
  test.each([
    // 43 5/8 − 43 1/8 − 1/2 = 0
    ['a plinth with no length', { plinthLeft: l('43 1/8') }, 'plinth-no-length 0'],
    // 18 3/4 + 3/4 − 17 1/2 − 1 = 1, less 2 × 23/32 = −7/16
    ['rails that meet', { plinthFront: l('17 1/2') }, 'plinth-rails-meet 7/16'],
    // 60 × 23/32 = 43 1/8 against 42 5/8
    ['cross members that overlap', { plinthCrosses: 60 }, 'plinth-full 1/2'],
    ['one cross member', { plinthCrosses: 1 }, 'plinth-crosses'],
  ] as const)('%s', (_, wrong, said) => expect(problems({ ...onPlinth, ...wrong })).toContain(said));
});

describe('what a case stands on', () => {
  // 43 5/8 + 2 × 1/2; laps of three members of 2 1/2: (44 5/8 − 7 1/2) / 2 = 18 9/16 between them
  test('a lapped frame is as long as a bottom that stands past the sides over it', () => {
    const over: Case = { ...onPlinth, hasPlinth: false, hasBase: true, crosses: 3, crossWide: l('2 1/2') };
    const past: Case = { ...over, feet: l('0'), bottomJoint: 'over', bottomPast: l('1/2') };
    expect(w(part(work(over), 'baserail').length.sum.value)).toBe('43 5/8');
    const rail = part(work(past), 'baserail');
    expect(w(rail.length.sum.value)).toBe('44 5/8');
    expect(rail.laps.map(({ near }) => w(near))).toEqual(['0', '21 1/16', '42 1/8']);
  });

  test('on a plinth and a lapped frame together is told, and keeps both', () => {
    const both = work({ ...onPlinth, hasBase: true });
    expect(warningsOf(both).map(({ code }) => code)).toContain('two-bases');
    expect(warningsOf(work(onPlinth)).map(({ code }) => code)).not.toContain('two-bases');
    expect(part(both, 'baserail').copies).toBe(2);
  });
});
