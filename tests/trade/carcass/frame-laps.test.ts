import { describe, expect, test } from 'vitest';
import { type Case, newCase } from '../../../src/trade/carcass/case';
import { frameOf } from '../../../src/trade/carcass/frame';
import { keptTo } from '../../../src/trade/carcass/kept';
import type { Part } from '../../../src/trade/carcass/part';
import { lapped } from '../../../src/trade/setups/lies';
import { l, w } from '../grooves/sample';
import { part, sheets, work } from './sample-case';

/** 43 5/8 × 66 1/2 × 18 3/4, 4 off the floor, of 23/32, its frame 1/8 past the sides, two bays. */
const framed: Case = {
  ...newCase('c1'),
  width: l('43 5/8'),
  height: l('66 1/2'),
  depth: l('18 3/4'),
  feet: l('4'),
  partitions: 1,
  hasFrame: true,
  frameMeets: 'lap',
  overhang: l('1/8'),
  stile: l('1 3/4'),
  middle: l('1 1/2'),
  topRail: l('2'),
  bottomRail: l('1 1/2'),
  stocks: { side: 'a', frame: 'f' },
};
const made = (c: Case) => work(c, sheets());
const laps = ({ laps: own }: Part) => own.map(({ id, near, long }) => `${id} ${w(near)} ${w(long)}`);
const long = (of: ReturnType<typeof made>, role: string) => w(part(of, role).length.sum.value);

describe('a half-lapped frame', () => {
  // 43 5/8 + 1/4; 66 1/2 − 4 either way
  test('its rails are as long as it is wide, its middle stile as it is high', () => {
    const of = made(framed);
    expect(['railtop', 'railbottom', 'stile', 'middle'].map((role) => long(of, role))).toEqual([
      '43 7/8',
      '43 7/8',
      '62 1/2',
      '62 1/2',
    ]);
  });

  // 43 7/8 − 1 3/4 = 42 1/8. A bay (43 5/8 − 3 × 23/32) / 2 = 20 47/64; 1/8 + 23/32 + 20 47/64 = 21 37/64,
  // less (1 1/2 − 23/32) / 2 = 25/64: 21 3/16, which is (43 7/8 − 1 1/2) / 2
  test('rails are lapped at both ends and where the middle stile crosses', () => {
    const of = made(framed);
    const rail = ['lapleft 0 1 3/4', 'lapmiddle1 21 3/16 1 1/2', 'lapright 42 1/8 1 3/4'];
    expect(laps(part(of, 'railtop'))).toEqual(rail);
    expect(laps(part(of, 'railbottom'))).toEqual(rail);
  });

  // 62 1/2 − 2
  test('stiles are lapped for either rail, as long as that is wide', () => {
    const upright = ['lapbottom 0 1 1/2', 'laptop 60 1/2 2'];
    expect(laps(part(made(framed), 'stile'))).toEqual(upright);
    expect(laps(part(made(framed), 'middle'))).toEqual(upright);
  });

  // stock of 3/4; at the table a rail lies on its show face, a stile on its back
  test('flush in front: half from the show face of a rail, half from the back of a stile', () => {
    const of = made(framed);
    for (const role of ['railtop', 'stile', 'middle'])
      expect(part(of, role).laps.map(({ deep }) => w(deep))).toEqual(
        part(of, role).laps.map(() => w(l('3/8'))),
      );
    expect(lapped(part(of, 'railtop')).face).toEqual({ named: 'show', lies: 'down' });
    expect(lapped(part(of, 'stile')).face).toEqual({ named: 'show', lies: 'up' });
    expect(lapped(part(of, 'middle')).face).toEqual({ named: 'show', lies: 'up' });
  });

  // a base frame is flush on top: at the table the face that is cut lies down
  test('a base frame is cut from above in its rails, from below in its cross members', () => {
    const of = made({ ...framed, hasBase: true, crosses: 3 });
    expect(lapped(part(of, 'baserail')).face).toEqual({ named: 'upper', lies: 'down' });
    expect(lapped(part(of, 'basecross')).face).toEqual({ named: 'under', lies: 'down' });
  });

  test('its openings are those of a butted one, which has no laps', () => {
    const butted = made({ ...framed, frameMeets: undefined });
    const shown = (of: typeof butted) => frameOf(of.sizes).openings.map(({ wide }) => w(wide.value));
    expect(shown(made(framed))).toEqual(shown(butted));
    expect(['railtop', 'stile', 'middle'].flatMap((role) => part(butted, role).laps)).toEqual([]);
    // 43 7/8 − 3 1/2; 62 1/2 − 3 1/2
    expect([long(butted, 'railtop'), long(butted, 'middle')]).toEqual(['40 3/8', '59']);
  });
});

// stiles from 1/8, the rail from 3 up to 4 + 23/32 + 1/4: a lap 2 7/8 up, 1 31/32 long; 66 1/2 − 3 for the middle one
test('with stiles to the floor the lower laps begin where the bottom rail ends', () => {
  const floor: Case = { ...framed, frameHow: 'floor', frameClear: l('1/8'), frameSill: l('1/4') };
  const of = made({ ...floor, frameToe: l('3') });
  expect(laps(part(of, 'stile'))).toEqual(['lapbottom 2 7/8 1 31/32', 'laptop 64 3/8 2']);
  expect(laps(part(of, 'middle'))).toEqual(['lapbottom 0 1 31/32', 'laptop 61 1/2 2']);
  expect(long(of, 'middle')).toBe('63 1/2');
});

// the bay reads 1/16 over its plan, so the partition and the middle stile on it stand 1/16 farther right
test('a middle stile is lapped where its partition was built', () => {
  const used = l('20 51/64');
  const of = made({ ...framed, built: { bay1: { used } } });
  expect(laps(part(of, 'railtop'))[1]).toBe('lapmiddle1 21 1/4 1 1/2');
});

// 1/16 short, the far lap 42 1/8 − 1/16; what crosses in the middle stays where its partition is
test('a rail made to match a short one has its far lap at its end', () => {
  const rail = keptTo(part(made(framed), 'railtop'), { mark: l('43 13/16') });
  expect(laps(rail)).toEqual(['lapleft 0 1 3/4', 'lapmiddle1 21 3/16 1 1/2', 'lapright 42 1/16 1 3/4']);
});
