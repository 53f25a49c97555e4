import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Part } from '../../../src/trade/carcass/part';
import { layOut } from '../../../src/trade/grooves/lay-out';
import { dadoFault, type HandDado, othersLike, withDado } from '../../../src/trade/joints/dado-by-hand';
import { l, w } from '../../length/write-figures';
import { runs } from '../../runs';
import { framedCase, part, plainCase, work } from '../carcass/sample-case';

const dado = (own: Partial<HandDado>): HandDado => ({
  id: 'xj',
  face: 'A',
  near: l('8'),
  width: l('3/4'),
  depth: l('1/4'),
  said: 'a rail',
  ...own,
});
const stile = part(work(framedCase), 'stile');
/** Where its grooves lie, in 3,200ths of an inch from the end it is measured from. */
const grain = (x: { readonly n: bigint; readonly d: bigint }) => Number(x.n * 3200n) / Number(x.d);
const placesIn = ({ board }: Part) =>
  board
    ? layOut(board).grooves.map(({ id, face, near, width, depth = l('0') }) => ({
        id,
        face,
        from: grain(near),
        to: grain(near) + grain(width),
        deep: grain(depth),
      }))
    : [];

test('a part with no groove is laid out as it is cut, at the stop, its dado from the end it is measured from', () => {
  const { board } = withDado(stile, dado({}), {});
  expect(stile.board).toBeUndefined();
  expect(board).toMatchObject({ id: stile.id, machine: 'stop', end: 'bottom', copies: stile.copies });
  expect(board?.wides.map(({ near, said }) => [near && w(near), said])).toEqual([['8', 'a rail']]);
  expect(board?.lengthMark).toEqual(stile.length.mark);
});

test('the grooves of a part are put on the machine that was said for it', () => {
  const { board } = withDado(stile, dado({}), { machine: 'sliding', end: 'top' });
  expect([board?.machine, board?.end]).toEqual(['sliding', 'bottom']);
});

test('in a side it counts from the lower end, not from the face its shelves count from', () => {
  const side = part(work(plainCase), 'left');
  // 7 3/4 inches are 24,800 3,200ths, 1/2 more are 26,400: between two of its tray grooves
  const made = withDado(side, dado({ near: l('7 3/4'), width: l('1/2') }), {});
  expect(placesIn(made).find(({ id }) => id === 'xj')).toMatchObject({ from: 24800, to: 26400 });
  expect(placesIn(made).filter(({ id }) => id !== 'xj')).toEqual(placesIn(side));
});

describe('what keeps it from being cut', () => {
  const first = withDado(stile, dado({ id: 'xa' }), {});
  test('another one, by how much they share', () => {
    // the first takes 8 to 8 3/4: from 8 1/2 on they share 1/4
    const found = dadoFault(first, dado({ near: l('8 1/2') }));
    expect(found?.code === 'meets' && w(found.by)).toBe('1/4');
    expect(dadoFault(first, dado({ near: l('8 3/4') }))).toBeUndefined();
    expect(dadoFault(first, dado({ id: 'xa' }))).toBeUndefined(); // itself is no other
  });
  test('a place before the end, by so much', () => {
    const found = dadoFault(stile, dado({ near: l('-1/8') }));
    expect(found?.code === 'before' && w(found.by)).toBe('1/8');
  });
  test('a groove of the other face of a partition, where the two take all of it', () => {
    const wall = part(work(plainCase), 'partition1');
    const near = l('1');
    const free = withDado({ ...wall, board: undefined }, dado({ id: 'xa', near, depth: l('1/2') }), {});
    // 23/32 thick: 1/2 and 1/4 are 24/32, 1/32 too much
    const found = dadoFault(free, dado({ face: 'B', near }));
    expect(found?.code === 'other-face' && w(found.by)).toBe('1/32');
    expect(dadoFault(free, dado({ face: 'B', near, depth: l('3/16') }))).toBeUndefined();
  });
  test('a board laid out by hand: its grooves are laid out in Marks', () => {
    expect(dadoFault({ ...stile, name: { role: 'board', named: 'Panel' } }, dado({}))).toEqual({
      code: 'in-marks',
    });
  });
});

test('it may be set like those of parts on the same end, each figure once, exact, itself and runs left out', () => {
  const made = [
    part(work(plainCase), 'left'),
    part(work(plainCase), 'right'),
    part(work(plainCase), 'bottom'),
  ];
  const [left, right, bottom] = made as [Part, Part, Part];
  const wides = ({ board }: Part) => (board ? layOut(board).grooves.filter(({ wide }) => wide) : []);
  const found = othersLike(stile, [stile, left, left, right, bottom]);
  expect(found.every(({ of }) => of.end === 'bottom')).toBe(true);
  for (const own of [...wides(left), ...wides(right)])
    expect(
      found.filter(({ near, width }) => w(near) === w(own.near) && w(width) === w(own.width)),
    ).toHaveLength(1);
  expect(othersLike(left, [left, bottom])).toEqual([]);
});

test('in coordinates: it is cut where it was said and moves nothing, or something is in its way', () => {
  const wall = part(work(plainCase), 'partition1');
  const at = placesIn(wall);
  expect(at.length).toBeGreaterThan(0);
  const long = Math.floor(grain(wall.length.sum.value) / 100);
  const thick = grain(l('23/32'));
  const least = grain(l('1/4')); // between a wide groove and one of a run: common practice, no source
  const narrow = new Set(
    layOut(wall.board as NonNullable<Part['board']>).grooves.flatMap((g) => (g.wide ? [] : g.id)),
  );
  const said = fc.record({
    face: fc.constantFrom('A' as const, 'B' as const),
    near: fc.integer({ min: 0, max: long - 32 }),
    width: fc.integer({ min: 1, max: 32 }),
    depth: fc.integer({ min: 1, max: 22 }),
  });
  let cut = 0;
  fc.assert(
    fc.property(said, ({ face, near, width, depth }) => {
      const own = dado({ face, near: l(`${near}/32`), width: l(`${width}/32`), depth: l(`${depth}/32`) });
      const [from, to, deep] = [near * 100, (near + width) * 100, depth * 100];
      const inTheWay = at.some((other) => {
        const between = Math.max(other.from - to, from - other.to);
        if (other.face !== face) return between < 0 && other.deep + deep >= thick;
        return between < (narrow.has(other.id) ? Math.max(least, other.deep) : 0);
      });
      const fault = dadoFault(wall, own);
      expect(fault !== undefined).toBe(inTheWay);
      if (fault) return;
      cut += 1;
      const after = placesIn(withDado(wall, own, {}));
      expect(after.find(({ id }) => id === 'xj')).toEqual({ id: 'xj', face, from, to, deep });
      expect(after.filter(({ id }) => id !== 'xj')).toEqual(at);
    }),
    { numRuns: runs(150) },
  );
  expect(cut).toBeGreaterThan(0);
});
