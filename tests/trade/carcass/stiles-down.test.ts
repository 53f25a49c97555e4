import { describe, expect, test } from 'vitest';
import { type Case, newCase } from '../../../src/trade/carcass/case';
import { frameOf } from '../../../src/trade/carcass/frame';
import { partsOf } from '../../../src/trade/carcass/parts';
import { setBackOf, toeWarnings } from '../../../src/trade/carcass/toe-notch';
import { l, w } from '../grooves/sample';
import { part, sheets, work } from './sample-case';

/** 43 5/8 × 66 1/2 × 18 3/4, 4 off the floor, of 23/32, its frame past the sides by 1/8, stiles to the floor. */
const down: Case = {
  ...newCase('c1'),
  width: l('43 5/8'),
  height: l('66 1/2'),
  depth: l('18 3/4'),
  feet: l('4'),
  hasFrame: true,
  frameHow: 'floor',
  frameClear: l('1/8'),
  frameSill: l('1/4'),
  frameToe: l('3'),
  overhang: l('1/8'),
  stile: l('1 3/4'),
  topRail: l('2'),
  stocks: { side: 'a', frame: 'f' },
};
const made = (c: Case) => work(c, sheets());
const frame = (c: Case) => frameOf(made(c).sizes);
const problems = (c: Case) => {
  const found = partsOf(c, { stuff: sheets(), tape: '1/32' });
  return found.ok ? [] : found.error.map((p) => ('by' in p ? `${p.code} ${w(p.by)}` : p.code));
};

describe('a frame with stiles to the floor', () => {
  // 66 1/2 − 1/8; 43 5/8 + 1/4 − 3 1/2; 4 + 23/32 + 1/4 = 4 31/32, less 3
  test('its stiles end clear of the floor, its bottom rail at the toe opening', () => {
    const of = made(down);
    expect(w(part(of, 'stile').length.sum.value)).toBe('66 3/8');
    expect(w(part(of, 'railbottom').length.sum.value)).toBe('40 3/8');
    expect(w(part(of, 'railbottom').width.sum.value)).toBe('1 31/32');
    expect(w(part(of, 'railtop').width.sum.value)).toBe('2');
  });

  // 66 1/2 − 2 − 4 31/32; 43 5/8 + 1/4 − 2 × 1 3/4
  test('its opening begins at the sill as said', () => {
    const { sill, middles, openings } = frame(down);
    expect([sill.value, middles.value].map(w)).toEqual(['1/4', '59 17/32']);
    expect(openings.map(({ wide }) => w(wide.value))).toEqual(['40 3/8']);
  });

  // the sill 1/8 under the face of the bottom: 4 + 23/32 − 1/8 − 3
  test('a sill may lie lower than the bottom', () => {
    const low = frame({ ...down, frameSill: l('-1/8') });
    expect(w(low.bottomRail.value)).toBe('1 19/32');
    expect(w(low.sill.value)).toBe('-1/8');
  });

  // 4 + 23/32 − 1/8 = 4 19/32; over a toe board down to the case: 23/32
  test('with nothing said its rail runs as far down as the stiles, over a toe board to the case', () => {
    const plain: Case = { ...down, frameSill: undefined, frameToe: undefined };
    expect(w(frame(plain).bottomRail.value)).toBe('4 19/32');
    expect(w(frame({ ...plain, hasToe: true }).bottomRail.value)).toBe('23/32');
  });

  test('a middle stile stands between its rails', () =>
    expect(w(part(made({ ...down, partitions: 1 }), 'middle').length.sum.value)).toBe('59 17/32'));

  test('a job that does not say so has the frame it had: 66 1/2 − 4', () => {
    const { height, bottomRail } = frame({ ...down, frameHow: undefined, bottomRail: l('2') });
    expect([height.value, bottomRail.value].map(w)).toEqual(['62 1/2', '2']);
  });
});

test('a case whose stiles touch the floor tips over them', () => {
  const toed: Case = { ...down, hasToe: true, toeBack: l('3') };
  expect(w(setBackOf(made(toed).sizes))).toBe('3');
  expect(w(setBackOf(made({ ...toed, frameClear: l('0') }).sizes))).toBe('0');
});

// 3 is the least: common practice, no source
test('an opening too low for toes is told where a toe board stands behind it', () => {
  const codes = (c: Case) => toeWarnings(made(c).sizes).map(({ code }) => code);
  const low = { ...down, hasToe: true, frameToe: l('2 31/32') };
  expect(codes(low)).toEqual(['low-toe-opening']);
  expect(codes({ ...low, frameToe: l('3') })).toEqual([]);
  expect(codes({ ...low, hasToe: false })).toEqual([]);
});

describe('what cannot be says by how much', () => {
  test.each([
    // the upper edge of the rail is 4 31/32 up
    ['no bottom rail', { frameToe: l('5 7/32') }, ['no-lower-rail 1/4']],
    ['nothing of it', { frameToe: l('4 31/32') }, ['no-lower-rail 0']],
    ['a rail lower than the stiles', { frameToe: l('1/16') }, ['rail-under-stiles 1/16']],
    // 66 1/2 − 62 − 4 31/32
    ['rails that meet', { topRail: l('62') }, ['frame-shut 15/32']],
    ['a plinth', { hasPlinth: true }, ['stiles-and-plinth']],
    ['less than nothing', { frameClear: l('-1/8') }, ['negative 1/8']],
  ] as const)('%s', (_, wrong, said) => expect(problems({ ...down, ...wrong })).toEqual(said));

  // 12 − 4 = 8, less rails of 4 and 5
  test('rails of a frame as high as the case that meet', () =>
    expect(
      problems({ ...down, frameHow: 'case', height: l('12'), topRail: l('4'), bottomRail: l('5') }),
    ).toEqual(['frame-shut 1']));
});
