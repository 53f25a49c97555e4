import { describe, expect, test } from 'vitest';
import { zero } from '../../../src/length/length';
import type { Case } from '../../../src/trade/carcass/case';
import { checkOf } from '../../../src/trade/carcass/check';
import { tongueWarnings } from '../../../src/trade/carcass/joint-problems';
import { partsOf } from '../../../src/trade/carcass/parts';
import { hugsAt, tonguesOf } from '../../../src/trade/carcass/tongues';
import { l, w } from '../../length/write-figures';
import { part, plainCase, sheets, work } from './sample-case';

/**
 * 43 5/8 × 66 1/2 in 23/32, 4 off the floor: clear 43 5/8 − 1 7/16 = 42 3/16. Grooves 9/32 deep with 1/32 room:
 * tongues 1/4 long. Tongues 1/4 thick leave a shoulder of 23/32 − 1/4 = 15/32.
 */
const shelf = { id: 's', kind: 'fixed', bay: 1, at: l('20 5/16') } as const;
const tongued: Case = {
  ...plainCase,
  width: l('43 5/8'),
  height: l('66 1/2'),
  feet: l('4'),
  partitions: 0,
  dado: l('9/32'),
  tongueRoom: l('1/32'),
  tongue: l('1/4'),
  fit: l('0'),
  bottomJoint: 'tongue',
  topJoint: 'tongue',
  shelfJoint: 'tongue',
  inside: [shelf],
};
const grooves = (c: Case, role: string) =>
  part(work(c), role).board?.wides.map(({ id, near = zero, width = zero }) => `${id} ${w(near)} ${w(width)}`);
const codes = (c: Case) => {
  const found = partsOf(c, { stuff: sheets(), tape: '1/32' });
  return found.ok ? [] : found.error.map((x) => `${x.code} ${'by' in x && x.by ? w(x.by) : ''}`.trim());
};

describe('a part on tongues', () => {
  test('is longer by both of them: 42 3/16 + 2 × 1/4', () => {
    const lengths = ['bottom', 'top', 's'].map((role) => w(part(work(tongued), role).length.sum.value));
    expect(lengths).toEqual(['42 11/16', '42 11/16', '42 11/16']);
    expect(checkOf(work(tongued)).filter(({ meets }) => !meets)).toEqual([]);
  });

  test('has one at each end, 1/4 long, 15/32 cut away in the face that does not carry it', () => {
    const tongues = part(work(tongued), 'bottom').tongues ?? [];
    expect(tongues.map(({ end, long, shoulder }) => `${end} ${w(long)} ${w(shoulder)}`)).toEqual([
      'left 1/4 15/32',
      'right 1/4 15/32',
    ]);
    expect(tongues[0]?.face).toEqual({ named: 'under', toward: 'bottom' });
    // no wood over a top: its tongue lies at its under face, whatever is said of others
    expect(part(work(tongued), 'top').tongues?.[0]?.face.named).toBe('upper');
    expect(tonguesOf(work(plainCase).sizes, 'bottom', { left: 'bottom' })).toEqual([]);
  });
});

test('its groove is for the tongue alone: at the near face where it hugs that, else a shoulder higher', () => {
  // EX: a tongue of 1/4 hugging the near face at 20 5/16: groove 20 5/16 to 20 9/16; from the datum of the side
  expect(grooves({ ...tongued, shelfHugs: 'near' }, 'left')).toContain('s 20 5/16 1/4');
  // hugging the far one 20 5/16 + 15/32
  expect(grooves(tongued, 'left')).toContain('s 20 25/32 1/4');
  // the bottom's under face is 23/32 below the datum: −23/32 + 15/32 = −1/4
  expect(grooves(tongued, 'left')).toContain('bottom -1/4 1/4');
  // the top's under face is the clear height up: 66 1/2 − 4 − 1 7/16 = 61 1/16
  expect(grooves(tongued, 'right')).toContain('top 61 1/16 1/4');
  expect(part(work(tongued), 'left').rabbets.map(({ id }) => id)).toEqual(['back']);
});

test('a partition has its tongues at its left face, or its right one', () => {
  const halved: Case = {
    ...tongued,
    partitions: 1,
    partitionJoint: 'tongue',
    partitionDado: l('9/32'),
    inside: [],
  };
  // a bay is (42 3/16 − 23/32) ÷ 2 = 20 47/64; from the end of the bottom its tongue 1/4 more: 20 63/64
  expect(grooves(halved, 'bottom')).toEqual(['p1 20 63/64 1/4']);
  // 15/32 = 30/64 more
  expect(grooves({ ...halved, partitionHugs: 'far' }, 'top')).toEqual(['p1 21 29/64 1/4']);
  const own = part(work(halved), 'partition1');
  // 61 1/16 + 2 × 1/4, and its own end lies a tongue below the datum
  expect([w(own.length.sum.value), w(own.board?.datum ?? l('9'))]).toEqual(['61 9/16', '1/4']);
  expect(own.tongues?.map(({ end, face }) => `${end} ${face.named}`)).toEqual(['bottom right', 'top right']);
  const open = part(work({ ...halved, hasTop: false }), 'partition1');
  expect(open.tongues?.map(({ end }) => end)).toEqual(['bottom']);
});

describe('what cannot be', () => {
  test('a tongue as thick as its part, and one of no length: at most 9/32 − 1/32 of room', () => {
    expect(codes({ ...tongued, tongue: l('23/32') })).toEqual(['tongue-thick']);
    expect(codes({ ...tongued, tongueRoom: l('9/32') })).toEqual(['too-much 1/32']);
    expect(codes({ ...tongued, tongueRoom: l('1/4') })).toEqual([]);
  });

  test('the tongue of a bottom on the floor lies at its upper face', () => {
    const low: Case = { ...tongued, feet: l('0'), bottomHugs: 'near' };
    expect(codes(low)).toEqual(['tongue-low']);
    expect(codes({ ...low, bottomHugs: undefined })).toEqual([]);
    // what was said of it counts for nothing while it has none
    expect(codes({ ...low, bottomJoint: 'dado' })).toEqual([]);
    expect(hugsAt(low, 'bottom')).toBe('near');
  });

  test('less room than 1/64 is worth a look', () => {
    const room = (x: string) =>
      tongueWarnings(work({ ...tongued, tongueRoom: l(x) }).sizes).map(({ code }) => code);
    expect([room('0'), room('1/64')]).toEqual([['tongue-room'], []]);
  });
});

test('a tongue at one end and nothing at the other: 42 3/16 + 1/4', () => {
  // a shelf between a side and a partition, in a tongue at both; of a bay 20 47/64 with two tongues 21 15/64
  const bay: Case = { ...tongued, partitions: 1, inside: [shelf], partitionDado: l('5/32') };
  // 20 47/64 + 1/4 + (5/32 − 1/32)
  expect(w(part(work(bay), 's').length.sum.value)).toBe('21 7/64');
});
