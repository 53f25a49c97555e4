import { describe, expect, test } from 'vitest';
import type { Case } from '../../../src/trade/carcass/case';
import { checkOf } from '../../../src/trade/carcass/check';
import { beyondTerms, overSides, reachTerms, sideDatum, sideLong } from '../../../src/trade/carcass/ends';
import { partsOf } from '../../../src/trade/carcass/parts';
import { l, w } from '../../length/write-figures';
import { part, plainCase, sheets, work } from './sample-case';

/** On the floor, 38 3/8 × 64 1/4 in 23/32: clear 36 15/16; between bottom and top 64 1/4 − 1 7/16 = 62 13/16. */
const onFloor: Case = { ...plainCase, feet: l('0'), inside: [] };
const long = (c: Case, role: string) => w(part(work(c), role).length.sum.value);

describe('a bottom', () => {
  test('butted is as long as the clear width, and sets the case across as before', () => {
    const c = { ...onFloor, bottomJoint: 'butt' } as const;
    expect(long(c, 'bottom')).toBe('36 15/16');
    expect(part(work(c), 'left').rabbets.map(({ id }) => id)).toEqual(['top', 'back']);
    // flush with the ends of the sides: no line to be marked
    expect(part(work(c), 'left').lines).toEqual([]);
  });

  test('butted off the floor stands on a line of each side: its lower face 4 1/8 up', () => {
    const lines = (hand: string) => part(work({ ...plainCase, bottomJoint: 'butt', inside: [] }), hand).lines;
    expect(lines('left')?.map(({ id, near }) => `${id} ${w(near)}`)).toEqual(['bottom 4 1/8']);
    expect(lines('right')).toEqual(lines('left'));
  });

  test('in rabbets is as deep as is said, as wide as it is thick, and without the room of a dado', () => {
    const c = { ...onFloor, bottomJoint: 'rabbet', bottomRabbet: l('3/8'), fit: l('1/100') } as const;
    // 36 15/16 + 2 × 3/8
    expect(long(c, 'bottom')).toBe('37 11/16');
    const [rabbet] = part(work(c), 'left').rabbets;
    expect(rabbet && [rabbet.id, w(rabbet.width), w(rabbet.depth)]).toEqual(['bottom', '23/32', '3/8']);
  });

  test('under the sides is as long as the case is wide and past it, and they are so much shorter', () => {
    const c = { ...onFloor, bottomJoint: 'over', bottomPast: l('1/2') } as const;
    // 38 3/8 + 2 × 1/2; 64 1/4 − 23/32
    expect([long(c, 'bottom'), long(c, 'left')]).toEqual(['39 3/8', '63 17/32']);
    // what stands in the sides is laid out from their lower ends, which lie on it
    expect(w(part(work(c), 'left').board?.datum ?? l('9'))).toBe('0');
    // as deep as the case: it covers the back, which stands on it: 64 1/4 − 23/32 − 1/16
    expect([w(part(work(c), 'bottom').width.sum.value), long(c, 'back')]).toEqual(['17 1/2', '63 15/32']);
    // the partition's dado from its own end: past 1/2, the side 23/32, and the bay (36 15/16 − 23/32) ÷ 2 = 18 7/64
    // 1/2 + 23/32 + 18 7/64 = 19 21/64, less half the .005 of fit
    const [dado] = part(work({ ...c, fit: l('0') }), 'bottom').board?.wides ?? [];
    expect(w(dado?.near ?? l('9'))).toBe('19 21/64');
  });

  test('at the lower ends of the sides does not go with feet: by how much is said', () => {
    for (const bottomJoint of ['rabbet', 'over'] as const) {
      const found = partsOf({ ...plainCase, bottomJoint }, { stuff: sheets(), tape: '1/32' });
      expect(found.ok ? [] : found.error).toMatchObject([{ code: 'bottom-low', joint: bottomJoint }]);
      expect(found.ok || found.error.map((x) => ('by' in x && x.by ? w(x.by) : ''))).toEqual(['4 1/8']);
    }
  });
});

describe('a top', () => {
  test('butted is as long as the clear width; nothing is cut for it', () => {
    const c = { ...onFloor, topJoint: 'butt' } as const;
    expect(long(c, 'top')).toBe('36 15/16');
    expect(part(work(c), 'left').rabbets.map(({ id }) => id)).toEqual(['bottom', 'back']);
  });

  test('over the sides shortens them and the back, and lies flush where nothing is said', () => {
    const c = { ...onFloor, topJoint: 'over' } as const;
    expect([long(c, 'top'), long(c, 'left')]).toEqual(['38 3/8', '63 17/32']);
    expect(long({ ...c, topPast: l('3/4') }, 'top')).toBe('39 7/8');
    expect(long(c, 'back')).toBe('63 15/32');
    // with both: 64 1/4 − 1 7/16
    expect(long({ ...c, bottomJoint: 'over' }, 'right')).toBe('62 13/16');
  });

  test('taken away, whatever was said of its joint, lies over nothing', () => {
    const c = { ...onFloor, topJoint: 'over', hasTop: false } as const;
    expect(long(c, 'left')).toBe('64 1/4');
    expect(w(overSides(work(c).sizes, 'top'))).toBe('0');
  });
});

describe('what stands inside', () => {
  test('butted partitions and shelves are as long as their openings; lines say where they stand', () => {
    const shelf = { id: 's', kind: 'fixed', bay: 2, at: l('30') } as const;
    const c: Case = { ...onFloor, partitionJoint: 'butt', shelfJoint: 'butt', inside: [shelf] };
    expect([long(c, 'partition1'), long(c, 's')]).toEqual(['62 13/16', '18 7/64']);
    // on the bottom: its dado depth 9/32 and the bay 18 7/64, 18 25/64; on the top 11/32 and the bay, 18 29/64
    const lines = (role: string) =>
      part(work(c), role).lines?.map(({ face, near }) => `${face ?? ''} ${w(near)}`);
    expect([lines('bottom'), lines('top')]).toEqual([[' 18 25/64'], [' 18 29/64']]);
    // the shelf 30 over the bottom: on the partition's right face from its own end, on the right side 23/32 more
    expect([lines('partition1'), lines('left'), lines('right')]).toEqual([['B 30'], [], ['A 30 23/32']]);
  });
});

test('added back a part counts with what lies beyond it, and a side with what lies over it', () => {
  const { sizes } = work({ ...onFloor, topJoint: 'over', topPast: l('1/2'), bottomJoint: 'butt' });
  const terms = (of: typeof reachTerms, flat: 'bottom' | 'top') =>
    of(sizes, flat).map(({ what, value }) => `${what} ${w(value)}`);
  expect(terms(reachTerms, 'top')).toEqual(['two-sides 1 7/16', 'past-each-side 1']);
  expect(terms(beyondTerms, 'top')).toEqual(['past-each-side -1']);
  expect(terms(beyondTerms, 'bottom')).toEqual(['two-sides 1 7/16', 'two-dado-depths 0']);
  expect([w(sideLong(sizes).value), w(sideDatum(sizes))]).toEqual(['63 17/32', '23/32']);
  const joined = work({ ...onFloor, topJoint: 'over', bottomJoint: 'over', topPast: l('1/2') });
  expect(checkOf(joined).filter(({ meets }) => !meets)).toEqual([]);
  expect(checkOf(joined).map(({ way }) => way)).toContain('side');
});

describe('two ends joined by unlike joints', () => {
  const c: Case = { ...onFloor, dado: l('1/4'), bottomRabbet: l('11/32'), bottomRightJoint: 'rabbet' };

  test('each reaches as deep as its own: 36 15/16 and 1/4 and 11/32', () => {
    expect(long(c, 'bottom')).toBe('37 17/32');
    const { sizes } = work(c);
    const terms = reachTerms(sizes, 'bottom').map(({ what, value }) => `${what} ${w(value)}`);
    expect(terms).toEqual(['left-dado 1/4', 'right-rabbet 11/32']);
    expect(checkOf(work(c)).filter(({ meets }) => !meets)).toEqual([]);
  });

  test('each side is cut for the end it takes', () => {
    const deep = (role: string) =>
      part(work(c), role)
        .rabbets.filter(({ id }) => id === 'bottom')
        .map(({ depth }) => w(depth));
    expect([deep('left'), deep('right')]).toEqual([['1/4'], ['11/32']]);
    const off = { ...plainCase, inside: [], bottomRightJoint: 'butt' } as const;
    const cut = (role: string) => [
      part(work(off), role).board?.wides.map(({ id }) => id),
      part(work(off), role).lines?.map(({ id, near }) => `${id} ${w(near)}`),
    ];
    // 4 1/8 off the floor the bottom stands in a dado of the left side, and on a line of the right
    expect([cut('left'), cut('right')]).toEqual([
      [['bottom'], []],
      [[], ['bottom 4 1/8']],
    ]);
  });

  test('partitions are laid out from the left end, whatever the right one is', () => {
    // dado 1/4 and the bay 18 7/64: 18 23/64
    const near = (of: Case) => part(work({ ...of, fit: l('0') }), 'bottom').board?.wides[0]?.near;
    expect(w(near(c) ?? l('9'))).toBe('18 23/64');
    expect(near({ ...c, bottomRightJoint: 'butt' })).toEqual(near(c));
  });

  test('the right end of one that lies under or over the sides is joined like its left', () => {
    const under = { ...onFloor, bottomJoint: 'over', bottomRightJoint: 'rabbet' } as const;
    expect(long(under, 'bottom')).toBe('38 3/8');
    expect(long({ ...onFloor, topRightJoint: 'over' }, 'top')).toBe(long(onFloor, 'top'));
  });

  test('a right end in a rabbet does not go with feet either, by how much is said', () => {
    const found = partsOf({ ...plainCase, bottomRightJoint: 'rabbet' }, { stuff: sheets(), tape: '1/32' });
    expect(found.ok ? [] : found.error).toMatchObject([{ code: 'bottom-low', joint: 'rabbet' }]);
  });
});

/**
 * EX: outside 43 5/8 in 23/32, clear 42 3/16. Butted at both ends a bottom is 42 3/16, over both by 1/2 it is
 * 43 5/8 + 1 = 44 5/8.
 */
test('a cabinet 43 5/8 wide: 42 3/16 butted, 44 5/8 over both sides by 1/2', () => {
  const cabinet: Case = {
    ...onFloor,
    width: l('43 5/8'),
    height: l('66 1/2'),
    depth: l('18 3/4'),
    partitions: 0,
  };
  expect(w(work(cabinet).sizes.clearWidth.value)).toBe('42 3/16');
  expect(long({ ...cabinet, bottomJoint: 'butt' }, 'bottom')).toBe('42 3/16');
  expect(long({ ...cabinet, topJoint: 'over', topPast: l('1/2') }, 'top')).toBe('44 5/8');
});
