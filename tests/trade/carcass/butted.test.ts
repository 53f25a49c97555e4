import { describe, expect, test } from 'vitest';
import { buttedIn, screwLines } from '../../../src/trade/carcass/butted';
import type { Case } from '../../../src/trade/carcass/case';
import { l, w } from '../../length/write-figures';
import { plainCase, work } from './sample-case';

const bare: Case = { ...plainCase, inside: [] };
const shelf = { id: 's', kind: 'fixed', bay: 2, at: l('30') } as const;

test('what nothing is cut for is held by something else: butted at one end or both, or over the sides', () => {
  expect(buttedIn(bare)).toEqual([]);
  expect(buttedIn({ ...bare, bottomRightJoint: 'butt', topJoint: 'over' })).toEqual(['bottom', 'top']);
  expect(buttedIn({ ...bare, hasTop: false, topJoint: 'over', shelfJoint: 'butt' })).toEqual([]);
  const all = { ...bare, inside: [shelf], partitionJoint: 'butt', shelfJoint: 'butt' } as const;
  expect(buttedIn(all)).toEqual(['partition', 'shelf']);
  expect(buttedIn({ ...all, partitions: 0 })).toEqual(['shelf']);
});

describe('lines for straight screws, over the middle of what they hold', () => {
  const lines = (c: Case) =>
    screwLines(work(c)).map(({ on, end, lines: own }) => [
      `${on.role} ${end}`,
      ...own.map(({ holds, middle }) => `${holds.part} ${w(middle)}`),
    ]);

  test('a bottom of 23/32 with its lower face 4 1/8 up: 4 1/8 + 23/64', () => {
    const c = { ...bare, bottomJoint: 'butt' } as const;
    expect(lines(c)).toEqual([
      ['left bottom', 'bottom 4 31/64'],
      ['right bottom', 'bottom 4 31/64'],
    ]);
    expect(lines({ ...c, bottomRightJoint: 'dado' })).toEqual([['left bottom', 'bottom 4 31/64']]);
  });

  test('flush with the ends of the sides: half their own thickness from them', () => {
    // on the floor, 64 1/4 high: 23/64, and 64 1/4 − 23/64 = 63 57/64; a shelf on the right side and the partition,
    // 30 over the bottom: 30 + 23/64 from the partition's own end, 23/32 more from that of the side
    const c: Case = {
      ...bare,
      feet: l('0'),
      inside: [shelf],
      bottomJoint: 'butt',
      topJoint: 'butt',
      shelfJoint: 'butt',
    };
    expect(lines({ ...c, partitionJoint: 'butt' })).toEqual([
      ['left bottom', 'bottom 23/64', 'top 63 57/64'],
      ['right bottom', 'bottom 23/64', 'shelf 31 5/64', 'top 63 57/64'],
      // (36 15/16 − 23/32) ÷ 2 = 18 7/64 to its left face, and 23/64
      ['bottom left', 'partition 18 15/32'],
      ['top left', 'partition 18 15/32'],
      ['partition bottom', 'shelf 30 23/64'],
    ]);
  });

  test('under the ends of the sides: over the middle of the top there', () => {
    // on the floor, the sides 2 past it: 64 1/4 − 2 − 23/64
    const c: Case = { ...bare, feet: l('0'), topJoint: 'butt', sidePast: l('2') };
    expect(lines(c)).toEqual([
      ['left bottom', 'top 61 57/64'],
      ['right bottom', 'top 61 57/64'],
    ]);
  });

  test('over the sides: as far in as it goes past them and half of one more', () => {
    // 38 3/8 + 1: 39 3/8 long, on its mark; 1/2 + 23/64 from either end
    expect(lines({ ...bare, topJoint: 'over', topPast: l('1/2') })).toEqual([
      ['top left', 'side 55/64', 'side 38 33/64'],
    ]);
  });
});
