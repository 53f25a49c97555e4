import { expect, test } from 'vitest';
import { editBoard, editCase, editHandJoint, editInside, editStock } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { l, w } from '../length/write-figures';
import { worked } from './job-of';
import { at, sampleLog, withMore } from './laid-sample';

const decided: readonly Change[] = [
  ...editStock('a', { name: 'Birch', planned: l('3/4') }),
  ...editStock('p', { name: 'Back', planned: l('1/4') }),
  ...editCase('c', {
    width: l('30'),
    height: l('48'),
    depth: l('12'),
    sideStock: 'a',
    backStock: 'p',
    hasBack: true,
    backDeep: l('3/8'),
    backWide: l('1/4'),
  }),
  ...editBoard('b', {
    name: 'Panel',
    length: l('20'),
    across: l('10'),
    thickness: l('3/4'),
    end: 'bottom',
    stock: 'a',
  }),
];

const setupsOf = (changes: readonly Change[], part: string) => {
  const { plan } = worked([...decided, ...changes]);
  return {
    plan,
    rabbets: plan.operations.filter((op) => op.part === part && op.what === 'rabbet'),
  };
};

test('a rabbet added to a board by hand is cut at the setup of the case’s own rabbets, and costs none more', () => {
  const before = setupsOf([], 'b');
  const joint = editHandJoint('j', {
    part: 'b',
    kind: 'rabbet',
    at: 'back',
    takes: 'the panel',
    width: l('1/4'),
    depth: l('3/8'),
  });
  const after = setupsOf(joint, 'b');
  expect([before.rabbets.length, after.rabbets.length]).toEqual([0, 1]);
  const own = after.plan.operations.find(
    (op) => op.part === 'c~left' && op.what === 'rabbet' && op.fits === 'p',
  );
  expect(after.rabbets[0]?.setup.key).toBe(own?.setup.key);
  expect(own).toBeDefined();
  const runs = ({ plan }: typeof after) => (plan.order.ok ? plan.order.value.runs.length : Number.NaN);
  expect(runs(after)).toBe(runs(before)); // the rabbet is cut while the setup stands
});

test('a mitre added to a board is cut at the setup of a case mitred at the same length', () => {
  const mitred = editCase('c', { bottomJoint: 'mitre', topJoint: 'mitre' });
  const long = editBoard('d', {
    name: 'Rail',
    length: l('30'),
    across: l('3'),
    end: 'left',
    thickness: l('3/4'),
  });
  const joint = editHandJoint('j', { part: 'd', kind: 'mitre', at: 'end' });
  const { plan } = worked([...decided, ...mitred, ...long, ...joint]);
  const of = (part: string) => plan.operations.filter((op) => op.part === part && op.what === 'mitre');
  // the bottom is as long as the case is wide, 30
  expect(of('d').map(({ setup }) => setup.key)).toEqual([of('c~bottom')[0]?.setup.key]);
  expect(of('d')[0]?.which).toEqual({ is: 'long-points', ends: ['left'] });
  // mitred at its left end it has the right one on the stop; the bottom has each in turn
  expect(of('d')[0]?.placing?.toStop).toEqual({ at: 'end', named: 'right' });
  expect(of('c~bottom')[0]?.placing?.toStop).toBeUndefined();
});

// in the sample the grooves for the drawer bottoms lie 13/32 up, 11/32 wide and 3/16 deep
test('a groove added to the back of a drawer from its bottom edge is cut at the setup of those of the sides', () => {
  const joint = editHandJoint('j', {
    part: 'drawers~c1d1boxback',
    kind: 'groove',
    at: 'bottom',
    near: l('13/32'),
    width: l('11/32'),
    depth: l('3/16'),
  });
  const along = (part: string) =>
    at(withMore(sampleLog, joint)).plan.operations.filter((op) => op.part === part && op.what === 'along');
  const [own] = along('drawers~c1d1side');
  expect(along('drawers~c1d1boxback').map(({ setup }) => setup.key)).toContain(own?.setup.key);
});

// the bottom, 3/4, stands on the floor: a shelf 10 over it is let into the left side 10 3/4 up, as deep as any, 1/4,
// and its dado .005 wider than it is thick, 151/200; it lies in the middle, so that begins 1/400 lower, at 4299/400
test('a dado added to one side is cut on the card of that for a shelf in the other, and is no setup more', () => {
  const shelf = [
    ...editCase('c', { partitions: 1, shelfStock: 'a' }),
    ...editInside('c', 's', { kind: 'fixed', bay: 1, at: l('10') }),
  ];
  const joint = editHandJoint('j', {
    part: 'c~right',
    kind: 'dado',
    takes: 'a rail',
    near: l('4299/400'),
    width: l('151/200'),
    depth: l('1/4'),
  });
  const cardsOf = (changes: readonly Change[]) => {
    const { plan } = worked([...decided, ...shelf, ...changes]);
    return plan.order.ok ? plan.order.value.runs : [];
  };
  const cards = cardsOf(joint);
  const card = cards.find(({ steps }) => steps.includes('cut/c~left/s~only/1'));
  expect(card?.steps).toContain('cut/c~right/xj~only/1');
  expect(cards.length).toBe(cardsOf([]).length);
  // 1/32 higher up it is another figure: a card of its own
  expect(cardsOf([...joint, ...editHandJoint('j', { near: l('10 25/32') })]).length).toBe(cards.length + 1);
});

test('a dado that meets one of its part leaves that as it is and is not cut', () => {
  const joint = { part: 'case~right', kind: 'dado', width: l('1/2'), depth: l('1/4') } as const;
  const dadosAt = (near: string) =>
    at(withMore(sampleLog, editHandJoint('j', { ...joint, near: l(near) })))
      .plan.operations.filter((op) => op.part === 'case~right' && op.what === 'groove')
      .map(({ id }) => id);
  const own = dadosAt('4');
  expect(own).not.toContain('cut/case~right/xj~only/1');
  expect(dadosAt('40')).toEqual(expect.arrayContaining([...own, 'cut/case~right/xj~only/1']));
});

test('a notch in the side of a drawer is cut stood on its bottom edge: it has no back edge', () => {
  const notch = editHandJoint('j', {
    part: 'drawers~c1d1side',
    kind: 'notch',
    near: l('3'),
    width: l('1'),
    depth: l('1/2'),
  });
  const cut = at(withMore(sampleLog, notch)).plan.operations.filter(
    (op) => op.what === 'notch' && op.part === 'drawers~c1d1side',
  );
  expect(cut.map(({ placing }) => placing?.stands)).toEqual([
    { at: 'edge', named: 'bottom' },
    { at: 'edge', named: 'bottom' },
  ]);
});

test('a row of holes added by hand is bored at the setup of the pin holes of a shelf, and costs none more', () => {
  const loose = editInside('c', 's', {
    kind: 'loose',
    bay: 1,
    heldBy: 'pins',
    count: 2,
    first: l('6'),
    pitch: l('1'),
  });
  const before = worked([...decided, ...loose]).plan;
  const pin = before.operations.find((op) => op.part === 'c~left' && op.which?.is === 'row');
  const bore = pin?.which?.is === 'row' ? pin.which.bore : undefined;
  if (!pin || !bore) throw new Error('no pin holes');
  const said = {
    part: 'c~bottom',
    kind: 'holes',
    width: bore.dia,
    depth: bore.deep,
    off: bore.off,
    near: l('4'),
    pitch: l('2'),
    count: 3,
  } as const;
  const holes = editHandJoint('j', said);
  const after = worked([...decided, ...loose, ...holes]).plan;
  const own = after.operations.filter((op) => op.part === 'c~bottom' && op.which?.is === 'row');
  expect(own.map(({ setup }) => setup.key)).toEqual([pin.setup.key]);
  expect(own[0]?.row && [w(own[0].row.first), w(own[0].row.last)]).toEqual(['4', '8']);
  const runs = ({ order }: typeof after) => (order.ok ? order.value.runs.length : Number.NaN);
  expect(runs(after)).toBe(runs(before));
  // so is one in a board laid out by hand
  const inBoard = worked([...decided, ...loose, ...editHandJoint('j', { ...said, part: 'b' })]).plan;
  const board = inBoard.operations.filter((op) => op.part === 'b' && op.which?.is === 'row');
  expect(board.map(({ setup }) => setup.key)).toEqual([pin.setup.key]);
  // another distance from the front edge is another setting
  const moved = worked([...decided, ...loose, ...holes, ...editHandJoint('j', { off: l('5') })]).plan;
  expect(runs(moved)).toBe(runs(before) + 1);
});

// the pins are bored with the drill press: what is added elsewhere comes to the same card, though nothing was said
test('a row in a shelf is bored on the press with the pin holes, one in a drawer side with one in its back', () => {
  const shelves = [
    ...editCase('c', { partitions: 1, shelfStock: 'a' }),
    ...editInside('c', 'f', { kind: 'fixed', bay: 2, at: l('20') }),
    ...editInside('c', 's', {
      kind: 'loose',
      bay: 1,
      heldBy: 'pins',
      count: 2,
      first: l('6'),
      pitch: l('1'),
      bore: 'press',
    }),
  ];
  const { plan } = worked([...decided, ...shelves]);
  const pin = plan.operations.find((op) => op.part === 'c~left' && op.which?.is === 'row');
  const bore = pin?.which?.is === 'row' ? pin.which.bore : undefined;
  if (!pin || !bore) throw new Error('no pin holes');
  expect(pin.setup.machine).toBe('press');
  const { dia: width, deep: depth, off } = bore;
  const rowsIn = (part: string, more: readonly Change[]) =>
    worked([...decided, ...shelves, ...more]).plan.operations.filter(
      (op) => op.part === part && op.which?.is === 'row',
    );
  const said = { kind: 'holes', width, depth, off, near: l('4'), pitch: l('2'), count: 3 } as const;
  const shelf = plan.parts.find(({ name }) => name.role === 'inside' && name.kind === 'fixed')?.id;
  if (!shelf) throw new Error('no shelf');
  const inShelf = rowsIn(shelf, editHandJoint('j', { ...said, part: shelf }));
  expect(inShelf.map(({ setup }) => setup.key)).toEqual([pin.setup.key]);
  // a drawer has bottom edges: its sides and its back share a setting, the two sides on opposite hands
  const inDrawer = at(
    withMore(sampleLog, [
      ...editHandJoint('j', { ...said, part: 'drawers~c1d1side', off: l('2'), depth: l('1/4') }),
      ...editHandJoint('k', {
        ...said,
        part: 'drawers~c1d1boxback',
        off: l('2'),
        depth: l('1/4'),
        near: l('3'),
      }),
    ]),
  ).plan.operations.filter((op) => op.id.includes('bore~x'));
  expect(inDrawer.map(({ part, copy }) => `${part} ${copy}`)).toEqual([
    'drawers~c1d1side left',
    'drawers~c1d1side right',
    'drawers~c1d1boxback 1',
  ]);
  expect(new Set(inDrawer.map(({ setup }) => setup.key)).size).toBe(1);
  expect(inDrawer[0]?.setup.on).toEqual({ at: 'edge', named: 'bottom' });
  expect(
    inDrawer
      .slice(0, 2)
      .map(({ placing }) => placing?.stop)
      .sort(),
  ).toEqual(['left', 'right']);
});

test('a row that meets a rabbet or a dado by hand is not bored: it is as if it were cut after them', () => {
  const row = {
    part: 'b',
    kind: 'holes',
    width: l('1/4'),
    depth: l('1/4'),
    off: l('2'),
    near: l('4'),
    pitch: l('2'),
    count: 3,
  } as const;
  const rabbet = { part: 'b', kind: 'rabbet', at: 'front', depth: l('1/4') } as const;
  const rows = (wide: string) =>
    worked([
      ...decided,
      ...editHandJoint('j', row),
      ...editHandJoint('k', { ...rabbet, width: l(wide) }),
    ]).plan.operations.filter((op) => op.part === 'b' && op.which?.is === 'row').length;
  // its edge stands 1 7/8 from the front edge
  expect([rows('1 7/8'), rows('2')]).toEqual([1, 0]);
});
