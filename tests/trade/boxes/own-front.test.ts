import { describe, expect, test } from 'vitest';
import { add } from '../../../src/length/length';
import { drawersWarnings } from '../../../src/trade/boxes/drawer-warnings';
import { drawerWeight } from '../../../src/trade/boxes/drawer-weight';
import type { Drawer } from '../../../src/trade/boxes/drawers';
import type { Bank } from '../../../src/trade/fronts/bank';
import { l, w } from '../grooves/sample';
import { bank, cutsWith, drawersWith } from './joints/corner';

const rabbeted = { frontIs: 'box', boxJoint: 'rabbeted', frontRabbet: l('1/2') } as const;
const doweled = { frontIs: 'box', boxJoint: 'butted' } as const;

function made(more: Partial<Bank>) {
  const found = drawersWith(more);
  if (!found.ok) throw new Error(found.error.map(({ code }) => code).join());
  return found.value;
}

function first(more: Partial<Bank>): Drawer {
  const [drawer] = made(more).drawers;
  if (!drawer) throw new Error('no drawer');
  return drawer;
}

const about = (more: Partial<Bank>) => {
  const { own } = first(more);
  return own && [own.wide, own.left, own.right, own.under, own.over].map(w).join(', ');
};

/** What is wrong, with its figures. */
function wrong(more: Partial<Bank>): string {
  const found = drawersWith(more);
  if (found.ok) return 'ok';
  return found.error
    .map((p) =>
      [p.code, ...['by', 'clearance', 'most'].flatMap((x) => (x in p ? [w(p[x as never])] : []))].join(' '),
    )
    .join();
}

describe('a front that is that of its box', () => {
  // The opening 16 9/16 less two gaps of 3/32 is 16 3/8; the box 15 9/16: 13/16 more, 13/32 at each end. Two fronts
  // share 24 less three gaps: 23 23/32, 379 and 380 marks of 1/32, so the upper is 11 27/32. Its box is as high as
  // 11 27/32 + 3/32 − 1/4 of air = 11 11/16, from the same lower edge: 5/32 of the front is over it.
  test('stands past its box at both ends alike, and over it by what the air takes', () => {
    expect(about(rabbeted)).toBe('16 3/8, 13/32, 13/32, 0, 5/32');
    expect(w(first(rabbeted).high)).toBe('11 11/16');
  });

  // 13/32 and a side of 1/2 is 29/32
  test('is rabbeted as much wider as it stands past, as deep as before, and grooved level with the sides', () => {
    const cuts = cutsWith(rabbeted);
    const rabbets = ['left', 'right'].map((end) => cuts.get(`front rabbet~${end} 1`));
    expect(rabbets.map((op) => [w(op?.figure), w(op?.setup.height)])).toEqual([
      ['29/32', '1/2'],
      ['29/32', '1/2'],
    ]);
    expect(w(cuts.get('front len 1')?.figure)).toBe('16 3/8');
    expect(
      [cuts.get('front along~bottom 1')?.figure, cuts.get('side along~bottom left')?.figure].map(w),
    ).toEqual(['3/8', '3/8']);
    expect([...cuts.keys()].filter((id) => id.startsWith('boxfront'))).toEqual([]);
  });

  // the box 1/8 over the lower edge of its front: the groove 3/8 + 1/8 = 1/2 up the front; box and air as before
  test('with its box higher up is grooved as much higher', () => {
    const up = { ...rabbeted, boxUp: l('1/8') };
    expect(about(up)).toBe('16 3/8, 13/32, 13/32, 1/8, 5/32');
    expect(w(cutsWith(up).get('front along~bottom 1')?.figure)).toBe('1/2');
  });

  // Of a front 3/4 thick, 1/4 is left over the side ends. Slides of 16 start behind it: the box is 16 1/4 deep, its
  // sides 16. From the face of the case: 20 − 1/4 = 19 3/4 of room.
  test('its slides begin behind what is left of it', () => {
    const slid = { ...rabbeted, boxDeep: undefined, slideLong: l('16') };
    expect([first(slid).plan.depth, first(slid).box.side.value, made(slid).slides.setBack].map(w)).toEqual([
      '16 1/4',
      '16',
      '1/4',
    ]);
    expect(w(made(slid).slides.room)).toBe('19 3/4');
    // covering, it lies on the front edges of the case: slides flush
    expect(w(made({ ...slid, fit: 'overlay' }).slides.setBack)).toBe('0');
  });

  // 20 deep: a box of 20 fits, one of 20 1/8 is 1/8 over; what covers stands before the case by the 1/4 it is lapped
  test('a box deeper than the case is said by how much', () => {
    const over = (more: Partial<Bank>) =>
      drawersWarnings(made({ ...rabbeted, ...more })).flatMap((x) =>
        x.code === 'box-too-deep' ? [w(x.over)] : [],
      );
    expect(over({ boxDeep: l('20') })).toEqual([]);
    expect(over({ boxDeep: l('20 1/8') })).toEqual(['1/8']);
    expect(over({ boxDeep: l('20 1/4'), fit: 'overlay' })).toEqual([]);
    expect(over({ boxDeep: l('20 3/8'), fit: 'overlay' })).toEqual(['1/8']);
  });

  // covering 3/8 at each side: 16 9/16 + 3/4 = 17 5/16, 1 3/4 more than the box: 7/8 at each end
  test('covering the case, stands past by the slide and what it covers', () => {
    expect(about({ ...rabbeted, fit: 'overlay', side: l('3/8') })?.startsWith('17 5/16, 7/8, 7/8')).toBe(
      true,
    );
    expect(
      w(cutsWith({ ...rabbeted, fit: 'overlay', side: l('3/8') }).get('front rabbet~left 1')?.figure),
    ).toBe('1 3/8');
  });

  // Half of the box's own 1/2 thick side is 1/4 off its outside; 13/32 further in: 21/32. Down the front: 5/32 more.
  test('doweled, its holes are as much further in, and down', () => {
    const cuts = cutsWith(doweled);
    const [front, side] = ['front dowels~front 1', 'side dowels~front left'].map((id) => cuts.get(id));
    expect([front?.figure, side?.figure].map(w)).toEqual(['21/32', '1/4']);
    const marks = (op: typeof front) => (op?.which?.is === 'dowels' ? op.which.row.marks : []);
    const lower = marks(side).map((mark) => w(add(mark, l('5/32'))));
    expect(marks(front).map(w)).toEqual(lower);
    expect(marks(front).length).toBeGreaterThan(1);
  });

  // Bands of 1/8 all round: the wood is 16 1/8 long, 9/32 past the box, grooved 1/8 nearer its own lower edge. Its top
  // edge is 11 27/32 − 1/8 = 11 23/32 up the front, 1/32 over a box of 11 11/16.
  test('with bands, is cut as its wood is', () => {
    const banded = { ...rabbeted, fromBlank: true, band: l('1/8') };
    expect(about(banded)).toBe('16 1/8, 9/32, 9/32, -1/8, 1/32');
    const cuts = cutsWith(banded);
    expect(
      [cuts.get('front rabbet~left 1')?.figure, cuts.get('front along~bottom 1')?.figure].map(w),
    ).toEqual(['25/32', '1/4']);
  });

  // side 2 × 16 1/2 × 11 11/16, back, bottom, front: all but the box front, 15 9/16 × 11 11/16 × 3/4
  test('weighs no box front beside it', () => {
    const front = { wide: l('16 3/8'), thick: l('3/4') };
    const [own, apart] = [rabbeted, { ...rabbeted, frontIs: undefined, boxUp: l('0') }].map((more) =>
      drawerWeight(first(more), front).valueOf(),
    );
    const sheet = (((15 + 9 / 16) * (11 + 11 / 16)) / 144) * (0.75 / (23 / 32)) * 2.2;
    expect((apart ?? 0) - (own ?? 0)).toBeCloseTo(sheet, 1);
  });
});

describe('a front that cannot be that of its box', () => {
  test('shows its joint: fingers, or sides whose ends it stands between', () => {
    expect(wrong({ frontIs: 'box', boxJoint: 'box-joint' })).toBe('own-shows');
    expect(wrong({ ...doweled, frontAt: 'between' })).toBe('own-shows');
  });

  // the box 13/16 narrower than the front; gaps of 3/32 would leave it as wide
  test('is dovetailed and not as wide as its box: by how much, and what would fit', () => {
    expect(wrong({ frontIs: 'box' })).toBe('own-not-flush 13/16 3/32');
    expect(wrong({ frontIs: 'box', clearance: l('3/32') })).toBe('ok');
    expect(about({ frontIs: 'box', clearance: l('3/32') })).toBe('16 3/8, 0, 0, 0, 5/32');
    expect(wrong({ frontIs: 'box', clearance: l('1/16') })).toBe('own-not-flush 1/16 3/32');
    // a covering one never is
    expect(wrong({ frontIs: 'box', fit: 'overlay', clearance: l('0') })).toBe('own-not-flush 1');
  });

  test('is narrower than its box, or lower', () => {
    expect(wrong({ ...rabbeted, clearance: l('1/16') })).toBe('own-narrow 1/32 3/32');
    expect(wrong({ ...rabbeted, fronts: { 1: { boxHigh: l('12') } } })).toBe('own-low 5/32 11 27/32');
  });
});

test('a bank that says nothing of it has a box front of its own, as it always had', () => {
  expect(first({ boxJoint: 'rabbeted' }).own).toBeUndefined();
  expect(bank.frontIs).toBeUndefined();
});
