import { expect, test } from 'vitest';
import { cutsAcross, cutsAlong, holesOf, mitresOf } from '../../../src/screens/shared/cuts-across';
import type { Part } from '../../../src/trade/carcass/part';
import { l } from '../../length/write-figures';
import { at, opened } from '../../plan/laid-sample';

test('cutsAcross draws a rabbet at the top at the far end, one at the bottom at the near end', () => {
  const side = at(opened.entries).plan.parts.find((p) => p.id === 'case~left');
  if (!side) throw new Error('a side is wanted');
  const rabbet = (named: 'top' | 'bottom') => ({
    ...side.rabbets[0],
    id: named,
    along: { at: 'end', named },
    width: l('1/2'),
    depth: l('1/4'),
  });
  const part = {
    ...side,
    length: { ...side.length, sum: { ...side.length.sum, value: l('30') } },
    board: undefined,
    laps: [],
    notches: [{ id: 'n', near: l('4'), long: l('3/4'), deep: l('3/8') }],
    rabbets: [rabbet('top'), rabbet('bottom')],
  } as unknown as Part;
  expect(cutsAcross(part).map(({ id, near, width }) => [id, near, width])).toEqual([
    ['n', 4, 0.75],
    ['top', 29.5, 0.5],
    ['bottom', 0, 0.5],
  ]);
});

/** A side 30 long and 12 wide, of 3/4; its bottom end is at the block. */
function sideWith(own: Partial<Part>): Part {
  const side = at(opened.entries).plan.parts.find((p) => p.id === 'case~left');
  if (!side) throw new Error('a side is wanted');
  const long = { ...side.length, sum: { ...side.length.sum, value: l('30') } };
  const wide = { ...side.width, sum: { ...side.width.sum, value: l('12') } };
  const bare = { board: undefined, laps: [], notches: [], rabbets: [], along: [] };
  return { ...side, ...bare, length: long, width: wide, thickness: l('3/4'), end: 'bottom', ...own };
}

test('a groove is drawn from where it begins to where it stops; a rabbet for a cleat as long as that is', () => {
  const back = { at: 'edge', named: 'back' } as const;
  const groove = { id: 'g', takes: { part: 'back' as const }, edge: back, width: l('1/4'), depth: l('1/4') };
  const part = sideWith({
    along: [
      // 3 of 12 from the back edge, 3/12 wide: from 6 to 24 of 30
      { ...groove, near: l('3'), width: l('3'), from: l('6'), to: l('24') },
      // the whole edge, at the front: 12 − 3 − 3 from the back
      { ...groove, id: 'f', edge: { at: 'edge', named: 'front' }, near: l('3'), width: l('3') },
    ],
    rabbets: [
      {
        id: 'c',
        takes: { part: 'cleat' },
        along: back,
        width: l('3'),
        depth: l('1/4'),
        from: l('24'),
        to: l('27'),
      },
    ],
  });
  expect(cutsAlong(part)).toEqual([
    { id: 'g', near: 0.25, wide: 0.25, from: 0.2, to: 0.8 },
    { id: 'f', near: 0.5, wide: 0.25, from: 0, to: 1 },
    { id: 'c', near: 0, wide: 0.25, from: 0.8, to: 0.9 },
  ]);
});

test('what is cut beside the other end is drawn there, whatever the ends are called: a rabbet, and a groove', () => {
  const [rabbet] = sideWith({}).rabbets;
  const cut = { takes: { said: 'a strip' }, width: l('1/2'), depth: l('1/4') };
  const made = sideWith({
    end: 'left',
    rabbets: (['left', 'right'] as const).map((named) => ({
      ...rabbet,
      ...cut,
      id: named,
      along: { at: 'end', named },
    })),
    along: [
      { ...cut, id: 'l', edge: { at: 'end', named: 'left' }, near: l('2') },
      { ...cut, id: 'r', edge: { at: 'end', named: 'right' }, near: l('2') },
    ],
  });
  // 30 − 1/2; 30 − 2 − 1/2
  expect(cutsAcross(made).map(({ id, near }) => [id, near])).toEqual([
    ['left', 0],
    ['right', 29.5],
    ['l', 2],
    ['r', 27.5],
  ]);
});

// 1 of 12, 3/12 wide: 12 − 1 − 3 = 8 from the far edge where it lies low
test('edges lie where they are said to: front, bottom and right low; a rabbet through at the back is drawn apart', () => {
  const cut = { takes: { said: 'a strip' }, width: l('3'), depth: l('1/4') };
  const near = (named: string) =>
    cutsAlong(sideWith({ along: [{ ...cut, id: 'g', edge: { at: 'edge', named }, near: l('1') }] }))[0]?.near;
  expect(['back', 'top', 'left'].map((named) => near(named)?.toFixed(4))).toEqual([
    '0.0833',
    '0.0833',
    '0.0833',
  ]);
  expect(['front', 'bottom', 'right'].map((named) => near(named)?.toFixed(4))).toEqual([
    '0.6667',
    '0.6667',
    '0.6667',
  ]);
  const rabbets = (named: string) =>
    cutsAlong(sideWith({ rabbets: [{ ...cut, id: 'r', along: { at: 'edge', named } }] }));
  expect(rabbets('front')).toEqual([{ id: 'r', near: 0.75, wide: 0.25, from: 0, to: 1 }]);
  expect(rabbets('back')).toEqual([]);
});

test('a groove in the other face is told from those in this one', () => {
  const cut = { takes: { said: 'a strip' }, width: l('3'), depth: l('1/4'), near: l('1') };
  const edge = { at: 'edge', named: 'bottom' } as const;
  const made = cutsAlong(
    sideWith({
      along: [
        { ...cut, id: 'in', edge },
        { ...cut, id: 'out', edge, outside: true },
      ],
    }),
  );
  expect(made.map(({ id, behind }) => [id, behind])).toEqual([
    ['in', undefined],
    ['out', true],
  ]);
});

test('a mitred end slopes as far as the part is thick: 3/4 of 30', () => {
  expect(mitresOf(sideWith({}))).toEqual({ near: 0, far: 0 });
  expect(mitresOf(sideWith({ mitres: ['top'] }))).toEqual({ near: 0, far: 0.025 });
  expect(mitresOf(sideWith({ mitres: ['bottom', 'top'] }))).toEqual({ near: 0.025, far: 0.025 });
});

// 3 of 12 off: low from a front or a bottom edge, which lie low in the drawing, and high from a left one, at the top
test('holesOf draws a row off its edge where that lies', () => {
  const row = { id: 'r', dia: l('1/4'), off: l('3'), face: 'A', holes: [{ no: 1, at: l('5') }] };
  const across = (edge: object) =>
    holesOf(sideWith({ bores: [{ ...row, ...edge }], fasteners: [] } as unknown as Partial<Part>)).map(
      (hole) => [hole.at, hole.across],
    );
  expect(across({})).toEqual([[5, 0.25]]);
  expect(across({ edge: 'bottom' })).toEqual([[5, 0.25]]);
  expect(across({ edge: 'left' })).toEqual([[5, 0.75]]);
  // a board that has no width yet has no place for them
  const width = { sum: { value: l('0') } } as Part['width'];
  const bores = [row] as unknown as Part['bores'];
  expect(holesOf(sideWith({ width, bores, fasteners: [] } as Partial<Part>))).toEqual([]);
});
