import { describe, expect, test } from 'vitest';
import { type HandHoles, holesFault, takesHoles, withHoles } from '../../../src/trade/joints/holes-by-hand';
import { l, w } from '../../length/write-figures';
import { part, plainCase, work } from '../carcass/sample-case';

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

test('is offered where there is a front edge and a face with a name', () => {
  const of = (role: 'left' | 'side' | 'stile') => takesHoles({ name: { role } as typeof side.name });
  expect([of('left'), of('side'), of('stile')]).toEqual([true, false, false]);
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
    expect(by({ first: l('1/16') })).toEqual({ code: 'hole-off', over: 'first', by: '1/16' });
    expect(by({ first: l('1/8') })).toBeUndefined();
    expect(by({ off: l('0') })).toEqual({ code: 'hole-off', over: 'front', by: '1/8' });
    const deep = width.sum.value;
    expect(by({ off: deep })).toEqual({ code: 'hole-off', over: 'back', by: '1/8' });
    expect(by({ first: length.sum.value, count: 1 })).toEqual({ code: 'hole-off', over: 'last', by: '1/8' });
  });

  test('a groove of its face, by the number of the hole', () => {
    const groove = { id: 'x', face: 'A', near: l('2'), width: l('1/2') } as const;
    const wide = { ...groove, depth: l('1/4'), said: 'a rail' };
    const board = side.board && { ...side.board, runs: [], wides: [wide], datum: l('0') };
    const grooved = { ...side, ...(board ? { board } : {}) };
    const moved = (at: string) => {
      const found = holesFault(grooved, row({ first: l(at) }));
      return found?.code === 'hole-in-cut' ? [found.no, w(found.by)] : found;
    };
    // the second hole, 1 7/8 to 2 1/8, is clear of 2 to 2 1/2 by 1/8 toward the end
    expect(moved('1')).toEqual([2, '1/8']);
    // 2 1/8 to 2 3/8 lies all in it: 3/8 either way
    expect(moved('1 1/4')).toEqual([2, '3/8']);
    expect(moved('1 5/8')).toBeUndefined();
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
