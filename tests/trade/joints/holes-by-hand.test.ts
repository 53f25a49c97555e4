import { describe, expect, test } from 'vitest';
import { type HandHoles, holesFault, withHoles } from '../../../src/trade/joints/holes-by-hand';
import { l, w } from '../../length/write-figures';
import { framedCase, part, plainCase, work } from '../carcass/sample-case';

const side = part(work(plainCase), 'left');
const { length, width } = side;

/** Five holes of 1/4, 1 apart from 2 on, 3 from the front edge. */
const row = (own: Partial<HandHoles>): HandHoles => ({
  id: 'xj',
  face: 'A',
  off: l('3'),
  dia: l('1/4'),
  deep: l('3/8'),
  pitch: l('1'),
  first: l('1'),
  count: 2,
  ...own,
});
const by = (own: Partial<HandHoles>) => {
  const found = holesFault(side, row(own));
  return found && { ...found, ...('by' in found ? { by: w(found.by) } : {}) };
};

test('it stands among the rows of its part, every hole counted from the reference end', () => {
  const { bores = [] } = withHoles(side, row({ count: 3 }));
  expect(bores).toHaveLength((side.bores ?? []).length + 1);
  const made = bores.find(({ id }) => id === 'xj');
  expect(made?.holes.map(({ no, at }) => `${no}: ${w(at)}`)).toEqual(['1: 1', '2: 2', '3: 3']);
  expect(made).toMatchObject({ row: 'own', by: 'template', leftOut: [] });
  expect(made).not.toHaveProperty('end'); // a side is measured from its bottom end
});

test('of a bottom it is marked from the end that is measured from', () => {
  const bottom = part(work(plainCase), 'bottom');
  expect(withHoles(bottom, row({})).bores?.at(-1)?.end).toBe(bottom.end);
});

test('of a part without a front edge it stands off the first of its edges', () => {
  const stile = part(work(framedCase), 'stile');
  expect(withHoles(stile, row({})).bores).toMatchObject([{ id: 'xj', edge: 'left' }]);
  expect(withHoles(side, row({})).bores?.at(-1)).not.toHaveProperty('edge');
});

test('of a part without rows it is bored like one as wide, else like any; of others like its own', () => {
  const stile = part(work(framedCase), 'stile');
  const other = (dia: string, by: 'press' | 'template') => {
    const [made] = withHoles(stile, row({ dia: l(dia) })).bores ?? [];
    if (!made) throw new Error('not bored');
    return { ...made, by };
  };
  const by = (of: Parameters<typeof withHoles>[0], others: Parameters<typeof withHoles>[2]) =>
    withHoles(of, row({}), others).bores?.at(-1)?.by;
  expect(by(stile, [])).toBe('template');
  expect(by(stile, [other('1/2', 'press'), other('1/4', 'template')])).toBe('template');
  expect(by(stile, [other('1/2', 'press')])).toBe('press');
  expect(by({ ...stile, bores: [other('1/2', 'template')] }, [other('1/4', 'press')])).toBe('template');
});

describe('what keeps it from being bored', () => {
  test('nothing, where it lies clear', () => {
    expect(by({})).toBeUndefined();
  });

  test('holes no farther apart than they are wide', () => {
    expect(by({ pitch: l('1/4') })).toMatchObject({ code: 'holes-meet' });
    expect(by({ pitch: l('1/4'), count: 1 })).toBeUndefined();
    expect(by({ pitch: l('17/64') })).toBeUndefined();
  });

  // half a hole is 1/8
  test('a hole over an end or an edge, by how much', () => {
    expect(by({ first: l('1/16') })).toEqual({ code: 'hole-off', over: 'first', by: '1/16', fits: 'moved' });
    expect(by({ first: l('1/8') })).toBeUndefined();
    expect(by({ off: l('0') })).toEqual({ code: 'hole-off', over: 'near', by: '1/8', fits: 'moved' });
    const deep = width.sum.value;
    expect(by({ off: deep })).toEqual({ code: 'hole-off', over: 'far', by: '1/8', fits: 'moved' });
    expect(by({ first: length.sum.value, count: 1 })).toEqual({
      code: 'hole-off',
      over: 'last',
      by: '1/8',
      fits: 'moved',
    });
  });

  // 30 long: from 1 on, the last of an inch apart is at 29, its edge at 29 1/8; 30 would be 1/8 off.
  // From 1/8, moved in to the end, 30 holes reach to 29 1/4.
  test('a row longer than its part says how many holes stay on it', () => {
    const short = { ...side, length: { ...length, sum: { ...length.sum, value: l('30') } } };
    const found = (own: Partial<HandHoles>) => holesFault(short, row(own));
    const over = { code: 'hole-off', over: 'last' };
    expect(found({ count: 40 })).toMatchObject({ ...over, fits: { holes: 29, first: 'there' } });
    expect(found({ count: 29 })).not.toMatchObject({ code: 'hole-off' });
    expect(found({ count: 30 })).toMatchObject({ ...over, fits: 'moved' });
    expect(found({ count: 40, first: l('35') })).toMatchObject({
      ...over,
      fits: { holes: 30, first: 'moved' },
    });
    expect(found({ count: 40, first: l('0') })).toMatchObject({
      code: 'hole-off',
      over: 'first',
      fits: { holes: 30, first: 'moved' },
    });
  });

  test('of a board that has no width yet the far edge keeps nothing from it', () => {
    const board = { ...side, width: { ...width, sum: { ...width.sum, value: l('0') } } };
    expect(holesFault(board, row({}))).toBeUndefined();
    expect(holesFault(board, row({ off: l('0') }))).toMatchObject({ code: 'hole-off', over: 'near' });
  });

  test('a hole wider than its part says how wide one may be', () => {
    const wider = by({ dia: l('100'), count: 1 });
    expect(wider).toMatchObject({ code: 'hole-off', fits: { wide: length.sum.value } });
  });

  test('a groove of its face, by the number of the hole', () => {
    const groove = { id: 'x', face: 'A', near: l('2'), width: l('1/2') } as const;
    const wide = { ...groove, depth: l('1/4'), said: 'a rail' };
    const board = side.board && { ...side.board, runs: [], wides: [wide], datum: l('0') };
    const grooved = { ...side, ...(board ? { board } : {}) };
    const moved = (at: string) => {
      const found = holesFault(grooved, row({ first: l(at) }));
      if (found?.code !== 'hole-in-cut' || !found.fits || !('toward' in found.fits)) return found;
      return `${found.no} ${found.cut}: ${w(found.fits.by)} toward ${found.fits.toward.named}`;
    };
    // the second hole, 1 7/8 to 2 1/8, is clear of 2 to 2 1/2 by 1/8 toward the end
    expect(moved('1')).toBe('2 groove: 1/8 toward bottom');
    // 2 1/16 to 2 5/16 lies all in it: 5/16 toward that end, 7/16 the other way
    expect(moved('1 3/16')).toBe('2 groove: 5/16 toward bottom');
    expect(moved('1 5/8')).toBeUndefined();
  });

  // the rabbet for the back is 9/32 wide: in a side 17 1/2 deep all before 17 7/32 is clear of it
  test('the rabbet for the back, moved toward the front edge; of a partition a groove of its other face, less deep', () => {
    const back = holesFault(side, row({ off: l('17 1/4') }));
    // its edge at 17 3/8 is 5/32 too far back
    expect(back).toEqual({
      code: 'hole-in-cut',
      no: 1,
      cut: 'rabbet',
      fits: { toward: { at: 'edge', named: 'front' }, by: l('5/32') },
    });
    const wall = part(work(plainCase), 'partition1');
    const groove = { id: 'x', face: 'B', near: l('2'), width: l('1/2'), depth: l('1/4'), said: '' } as const;
    const board = wall.board && { ...wall.board, runs: [], wides: [groove], datum: l('0') };
    const grooved = { ...wall, bores: [], ...(board ? { board } : {}) };
    // 23/32 thick, 15/32 is left over the groove: 1/2 is 1/32 too deep, and 15/32 comes out in it
    const deep = (x: string) => {
      const found = holesFault(grooved, row({ first: l('2 1/4'), count: 1, deep: l(x) }));
      if (found?.code !== 'hole-in-cut' || !found.fits || !('lessThan' in found.fits)) return found;
      return [w(found.fits.lessThan), w(found.fits.by)];
    };
    expect(deep('1/2')).toEqual(['15/32', '1/32']);
    expect(deep('15/32')).toEqual(['15/32', '0']);
    expect(deep('7/16')).toBeUndefined();
  });

  test('a hole of another row, and not itself', () => {
    const bored = withHoles(side, row({ id: 'xa' }));
    // level with it and 1/8 aside
    const found = holesFault(bored, row({ off: l('3 1/8') }));
    expect(found).toMatchObject({ code: 'hole-in-cut', no: 1 });
    expect(holesFault(bored, row({ off: l('3 1/4') }))).toBeUndefined();
    expect(holesFault(bored, row({ id: 'xa' }))).toBeUndefined();
  });
});
