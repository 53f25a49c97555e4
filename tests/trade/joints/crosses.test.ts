import fc from 'fast-check';
import { expect, test } from 'vitest';
import { add, less, negate, zero } from '../../../src/length/length';
import type { Part } from '../../../src/trade/carcass/part';
import { crossedBy, type HandJoint, withHandJoints } from '../../../src/trade/joints/by-hand';
import { withHoles } from '../../../src/trade/joints/holes-by-hand';
import { l, w } from '../../length/write-figures';
import { runs } from '../../runs';
import { framedCase, part, work } from '../carcass/sample-case';
import { boxesIn, overlap } from './wood-boxes';

/** A stile, with holes 1/4 wide at 4, 5, 6 and 7, 3/4 from its left edge and 3/8 deep. */
const stile = part(work(framedCase), 'stile');
const bored: Part = withHoles(stile, {
  id: 'pins',
  face: 'A',
  off: l('3/4'),
  dia: l('1/4'),
  deep: l('3/8'),
  pitch: l('1'),
  first: l('4'),
  count: 4,
});

function found(own: Partial<HandJoint>) {
  const joint: HandJoint = {
    id: 'j',
    part: stile.id,
    kind: 'dado',
    at: 'left',
    takes: '',
    width: l('1/2'),
    depth: l('1/4'),
    near: l('4'),
    ...own,
  };
  const cut = withHandJoints(bored, [joint]);
  return crossedBy(cut, joint).map(
    ({ bore, numbers, fits }) =>
      `${bore.id} ${numbers.join()}${fits ? `: ${w(fits.by)} toward the ${fits.toward.named} ${fits.toward.at}` : ''}`,
  );
}

test('a dado through holes says which, and how far it is clear of all of them', () => {
  // 4 to 4 1/2 goes into the first hole, which ends at 4 1/8; from there to 4 5/8 it is clear
  expect(found({})).toEqual(['pins 1: 1/8 toward the top end']);
  // 4 1/8 to 4 7/8 lies just between two
  expect(found({ near: l('4 1/8'), width: l('3/4') })).toEqual([]);
  // 4 1/2 to 5 3/8: seven eighths lie between no two holes, so it is moved before all: by 5 3/8 - 3 7/8 = 1 1/2
  expect(found({ near: l('4 1/2'), width: l('7/8') })).toEqual(['pins 2: 1 1/2 toward the bottom end']);
  // 3 7/8 to 7 1/8 takes all of them
  expect(found({ near: l('3 7/8'), width: l('3 1/4') })[0]).toMatch(/^pins 1,2,3,4: /);
});

test('a groove along the edge through the whole row, by how far it lies off it', () => {
  // the row takes 5/8 to 7/8 from the left edge; the stile is 1 11/16 wide
  expect(less(l('1 1/2'), stile.width.sum.value)).toBe(true);
  // 1/2 to 3/4 is 1/8 in it
  expect(found({ kind: 'groove', near: l('1/2'), width: l('1/4') })).toEqual([
    'pins 1,2,3,4: 1/8 toward the left edge',
  ]);
  expect(found({ kind: 'groove', near: l('3/8'), width: l('1/4') })).toEqual([]);
  // from the right edge 3/4 to 15/16: 3/4 to 15/16 from the left one; past 7/8 it is clear, 1/8 on
  expect(found({ kind: 'groove', at: 'right', near: l('3/4'), width: l('3/16') })).toEqual([
    'pins 1,2,3,4: 1/8 toward the right edge',
  ]);
});

test('a notch or a lap through a hole, moved along; a rabbet stays where it is', () => {
  // 5/8 deep the notch only touches the row; deeper it is in it, 6 to 6 1/4 by 1/8
  const notch = { kind: 'notch', near: l('6'), width: l('1/4') } as const;
  expect(found({ ...notch, depth: l('5/8') })).toEqual([]);
  expect(found({ ...notch, depth: l('11/16') })).toEqual(['pins 3: 1/8 toward the top end']);
  expect(found({ kind: 'lap', near: l('6'), width: l('1/4') })).toEqual(['pins 3: 1/8 toward the top end']);
  expect(found({ kind: 'rabbet', near: undefined, width: l('11/16') })).toEqual(['pins 1,2,3,4']);
  expect(found({ kind: 'rabbet', near: undefined, width: l('5/8') })).toEqual([]);
});

test('what is not cut opens nothing, nor does a cut of a part without rows', () => {
  expect(found({ depth: undefined })).toEqual([]);
  expect(crossedBy(stile, { id: 'j', part: stile.id, kind: 'dado', at: 'left', takes: '' })).toEqual([]);
});

/** A side with two rows of 30 pin holes 1/4 wide, 2 and 14 from its front edge, from 6 up, and nothing else cut. */
const side: Part = (() => {
  const { board: _, ...own } = part(work(framedCase), 'left');
  const bare: Part = { ...own, rabbets: [], along: [], notches: [], laps: [], bores: [] };
  const row = {
    face: 'A',
    dia: l('1/4'),
    deep: l('3/8'),
    pitch: l('5/4'),
    first: l('6'),
    count: 30,
  } as const;
  return withHoles(withHoles(bare, { ...row, id: 'front', off: l('2') }), {
    ...row,
    id: 'rear',
    off: l('14'),
  });
})();

const kinds = ['dado', 'lap', 'notch', 'groove', 'rabbet'] as const;
const ats = ['front', 'back', 'end', 'other'] as const;

test('in coordinates: it says the holes that the cut goes through, no others, and where it is clear of all', () => {
  const pins = boxesIn(side);
  const said = fc.record({
    kind: fc.constantFrom(...kinds),
    at: fc.constantFrom(...ats),
    near: fc.integer({ min: 0, max: 900 }),
    width: fc.integer({ min: 1, max: 40 }),
    depth: fc.integer({ min: 1, max: 70 }),
  });
  const told = { crossed: 0, moved: 0 };
  fc.assert(
    fc.property(said, ({ kind, at, near, width, depth }) => {
      const joint: HandJoint = {
        id: 'j',
        part: side.id,
        kind,
        at,
        takes: '',
        near: kind === 'rabbet' ? undefined : l(`${near}/16`),
        width: l(`${width}/16`),
        depth: l(`${kind === 'notch' ? depth : depth % 20}/32`),
      };
      const cut = withHandJoints(side, [joint]);
      if (cut === side) return;
      const opened = (of: Part): readonly string[] => {
        const [own] = boxesIn(of).filter(
          (box) => !pins.some((pin) => String(pin.x) === String(box.x) && String(pin.y) === String(box.y)),
        );
        if (!own) throw new Error('nothing cut');
        return (of.bores ?? []).flatMap(({ id }, row) =>
          pins
            .slice(row * 30, row * 30 + 30)
            .flatMap((pin, k) => (overlap(pin, own) ? [`${id} ${k + 1}`] : [])),
        );
      };
      const found = crossedBy(cut, joint);
      expect(found.flatMap(({ bore, numbers }) => numbers.map((no) => `${bore.id} ${no}`))).toEqual(
        opened(cut),
      );
      const fits = found[0]?.fits;
      if (found.length > 0) told.crossed += 1;
      if (!fits) return;
      told.moved += 1;
      // what is measured from the other end or the other edge is moved the other way
      const from = kind === 'groove' ? (at === 'end' ? 'bottom' : at === 'other' ? 'top' : at) : 'bottom';
      const by = fits.toward.named === from ? negate(fits.by) : fits.by;
      const moved = withHandJoints(side, [{ ...joint, near: add(joint.near ?? zero, by) }]);
      expect(moved === side || opened(moved).length > 0).toBe(false);
    }),
    { numRuns: runs(150) },
  );
  expect(told.crossed).toBeGreaterThan(0);
  expect(told.moved).toBeGreaterThan(0);
});
