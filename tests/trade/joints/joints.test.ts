import { describe, expect, test } from 'vitest';
import { inches, zero } from '../../../src/length/length';
import { cutsFor, type Joint, type Seat } from '../../../src/trade/joints/joint';
import { butt, dado, lap, mitre, notch, over, rabbet } from '../../../src/trade/joints/joints';
import { l, w } from '../grooves/sample';

/** A shelf of 23/32, 9/32 deep, 12 in from the datum; the dado is 1/64 wider. */
const shelf: Seat = {
  id: 's1',
  called: 'shelf',
  fits: 'ply',
  thick: l('23/32'),
  room: l('1/64'),
  depth: l('9/32'),
  face: 'B',
  near: l('12'),
};

/** A tongue half as thick as the panel, in its middle: a joint no case of ours has. */
const tongue: Joint = {
  reach: (depth) => depth,
  seen: false,
  goesThrough: () => false,
  weakens: () => false,
  cut: ({ id, near = zero, thick, depth, face = 'A' }) => {
    const width = thick.div(inches(2n)) as Seat['thick'];
    return { wides: [{ id, face, near: near.add(width.div(inches(2n))) as Seat['thick'], width, depth }] };
  },
};

describe('a dado', () => {
  test('is centred on what lies in it, half the room at each side: 12 less 1/128, 47/64 wide', () => {
    const [cut] = cutsFor([{ joint: dado, seat: shelf }]).wides;
    expect([w(cut?.near), w(cut?.width), w(cut?.depth), cut?.face]).toEqual([
      '11 127/128',
      '47/64',
      '9/32',
      'B',
    ]);
    expect([cut?.fits, cut?.called]).toEqual(['ply', 'shelf']);
  });

  test('flush with an end has one wall: it is a rabbet, as wide as what lies in it', () => {
    const cuts = cutsFor([{ joint: dado, seat: { ...shelf, flush: { at: 'end', named: 'bottom' } } }]);
    expect(cuts.wides).toEqual([]);
    expect(cuts.rabbets.map((r) => [r.along.named, w(r.width), w(r.depth)])).toEqual([
      ['bottom', '23/32', '9/32'],
    ]);
  });
});

test('a mitre reaches to the outer face of the other, and takes nothing out of it', () => {
  expect(w(mitre.reach(l('1/4'), { thick: l('23/32'), past: zero, room: zero }))).toBe('23/32');
  expect(Object.values(cutsFor([{ joint: mitre, seat: shelf }])).flat()).toEqual([]);
});

describe('what a joint does to the length of what goes in', () => {
  test.each([
    ['dado', dado, '9/32'],
    ['rabbet', rabbet, '9/32'],
    ['butt', butt, '0'],
    ['notch', notch, '0'],
    ['lap', lap, '0'],
  ] as const)('%s: longer by %s at that end', (_, joint, reach) => {
    expect(w(joint.reach(l('9/32')))).toBe(reach);
  });
});

describe('where nothing is cut', () => {
  test('what is butted stands on a line, its near face; flush with an end it needs none', () => {
    const cuts = cutsFor([
      { joint: butt, seat: shelf },
      { joint: butt, seat: { ...shelf, flush: { at: 'end', named: 'bottom' } } },
    ]);
    expect(cuts.lines.map(({ id, near, face }) => `${id} ${w(near)} ${face}`)).toEqual(['s1 12 B']);
    expect([cuts.wides, cuts.rabbets, cuts.notches, cuts.laps].flat()).toEqual([]);
  });

  test('what lies over the end of a side of 23/32 reaches over it, and past it by 1/2: 1 7/32', () => {
    expect(w(over.reach(l('0'), { thick: l('23/32'), past: l('1/2'), room: zero }))).toBe('1 7/32');
    expect(Object.values(cutsFor([{ joint: over, seat: shelf }])).flat()).toEqual([]);
  });
});

describe('how deep a joint may be cut in 3/4', () => {
  test.each([
    ['3/8', false, false],
    ['25/64', false, true],
    ['3/4', true, true],
  ])('%s: through %s, warned of %s', (depth, through, warned) => {
    for (const joint of [dado, rabbet, notch, lap]) {
      expect(joint.goesThrough(l(depth), l('3/4'))).toBe(through);
      expect(joint.weakens(l(depth), l('3/4'))).toBe(warned);
    }
  });
});

describe('cutsFor', () => {
  test('gathers every kind in the order of the seats, also of a joint that is added as data', () => {
    const along = { ...shelf, id: 'back', flush: { at: 'edge', named: 'back' } } as const;
    const cuts = cutsFor([
      { joint: tongue, seat: { ...shelf, id: 't1' } },
      { joint: rabbet, seat: along },
      { joint: notch, seat: { ...shelf, id: 'n1' } },
      { joint: dado, seat: shelf },
      { joint: lap, seat: { ...shelf, id: 'l1' } },
    ]);
    // the tongue is 23/64 wide, and starts 23/128 in from the near face
    expect(cuts.wides.map((x) => `${x.id} ${w(x.near)} ${w(x.width)}`)).toEqual([
      't1 12 23/128 23/64',
      's1 11 127/128 47/64',
    ]);
    expect(cuts.rabbets.map((x) => x.id)).toEqual(['back']);
    expect([...cuts.notches, ...cuts.laps].map((x) => `${x.id} ${w(x.near)} ${w(x.long)}`)).toEqual([
      'n1 12 47/64',
      'l1 12 47/64',
    ]);
  });
});
