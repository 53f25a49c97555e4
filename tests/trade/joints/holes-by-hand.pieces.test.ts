import fc from 'fast-check';
import { expect, test } from 'vitest';
import { add, type Length, subtract } from '../../../src/length/length';
import { boxParts } from '../../../src/trade/boxes/bank-parts';
import type { Part } from '../../../src/trade/carcass/part';
import type { Bank } from '../../../src/trade/fronts/bank';
import { withHandJoints } from '../../../src/trade/joints/by-hand';
import { edgesOf } from '../../../src/trade/joints/edges';
import { type HandHoles, holesFault, withHoles } from '../../../src/trade/joints/holes-by-hand';
import { bored } from '../../../src/trade/setups/lies';
import type { Side } from '../../../src/trade/setups/on';
import { l } from '../../length/write-figures';
import { runs } from '../../runs';
import { drawersWith } from '../boxes/joints/corner';
import { framedCase, part, plainCase, work } from '../carcass/sample-case';
import { type Box, boxesIn, clear, grain, nearEdge } from './wood-boxes';

/** Sides 1/2, box fronts 3/4, backs 1/2, bottoms 1/4, the sides half an inch shorter than the box. */
function pieces(more: Partial<Bank>): readonly Part[] {
  const made = drawersWith(more);
  if (!made.ok) throw new Error(made.error.map(({ code }) => code).join());
  const thick = {
    front: '3/4',
    side: '1/2',
    boxFront: '3/4',
    boxBack: '1/2',
    boxBottom: '1/4',
    runner: '3/4',
  };
  return boxParts(made.value, { tape: '1/32', thick: (stock) => l(thick[stock]), waits: [] });
}
const piece = (more: Partial<Bank>, role: string): Part => {
  const found = pieces(more).find(({ name }) => name.role === role);
  if (!found) throw new Error(`no ${role}`);
  return found;
};

const row = (own: Partial<HandHoles>): HandHoles => ({
  id: 'xj',
  face: 'A',
  off: l('2'),
  dia: l('1/4'),
  deep: l('1/4'),
  pitch: l('1'),
  first: l('4'),
  count: 2,
  ...own,
});

test('in a piece of a drawer it stands off the bottom edge, clear of its groove and of the joint at its end', () => {
  const front = piece({ boxJoint: 'box-joint' }, 'boxfront');
  expect(holesFault(front, row({}))).toBeUndefined();
  // fingers 1/2 and 1/64 long from both ends: a hole whose edge stands at 1/2 is 1/64 in them
  const inFingers = { code: 'hole-in-cut', no: 1, cut: 'end-joint' };
  const moved = { toward: { at: 'end', named: 'right' }, by: l('1/64') };
  expect(holesFault(front, row({ first: l('5/8') }))).toEqual({ ...inFingers, fits: moved });
  expect(holesFault(front, row({ first: l('41/64') }))).toBeUndefined();
  // the sockets of dovetails take as much of the front as the sides are thick, 1/2
  const pins = piece({}, 'boxfront');
  expect(holesFault(pins, row({ first: l('19/32') }))).toMatchObject({
    cut: 'end-joint',
    fits: { by: l('1/32') },
  });
  expect(holesFault(pins, row({ first: l('5/8') }))).toBeUndefined();
  // a side has its tails at the front alone; 1/2 thick, its back stands in a dado 1/2 from the back end
  const side = piece({}, 'side');
  const long = side.length.sum.value;
  expect(holesFault(side, row({ first: long.sub(l('5/8')) as typeof long, count: 1 }))).toMatchObject({
    cut: 'end-joint',
  });
  expect(holesFault(side, row({ first: l('1/4'), count: 1 }))).toBeUndefined();
  expect(holesFault(side, row({ first: l('1/2'), count: 1 }))).toMatchObject({ cut: 'groove' });
});

test('the two sides of a drawer lie on opposite hands, a shelf as it stands', () => {
  const lying = (of: Part, by: 'press' | 'template', copy?: 'left' | 'right') => {
    const bore = withHoles(of, row({})).bores?.at(-1);
    if (!bore) throw new Error('not bored');
    const { face, toYou, onFence, stop, marked } = bored(of, { ...bore, by, copy });
    const edge = toYou ? `${toYou.named} toward you` : `${onFence?.named} on the fence`;
    return `${face?.named}, ${edge}, ${marked?.named} end ${stop}`;
  };
  const side = piece({}, 'side');
  // the left one from the right, its bottom toward you: its back is at your right
  expect(lying(side, 'template', 'left')).toBe('inside, bottom toward you, back end right');
  expect(lying(side, 'template', 'right')).toBe('inside, bottom toward you, back end left');
  expect(lying(side, 'press', 'left')).toBe('inside, bottom on the fence, back end left');
  // seen from behind, its bottom toward you, the left end of a front is at your right
  expect(lying(piece({}, 'boxfront'), 'template')).toBe('inside, bottom toward you, left end right');
  expect(lying(piece({}, 'boxbottom'), 'template')).toBe('upper, front toward you, left end left');
  const shelf = part(work(plainCase), 'fixed1');
  expect(lying(shelf, 'template')).toBe('upper, front toward you, left end left');
  expect(lying(shelf, 'press')).toBe('upper, front on the fence, left end right');
  // the stile from behind: its left edge is at your right there; turned till that is toward you, its foot is left
  expect(lying(part(work(framedCase), 'stile'), 'template')).toBe('inside, left toward you, bottom end left');
});

/** A part with cuts by hand: a rabbet, a groove, a notch and a dado. */
function cut(of: Part): Part {
  const [a, b] = edgesOf(of);
  const own = { part: of.id, takes: '', depth: l('1/8'), width: l('1/2') } as const;
  const many = [
    { ...own, id: 'a', kind: 'rabbet', at: b },
    { ...own, id: 'b', kind: 'groove', at: a, near: l('3/8'), width: l('1/4') },
    { ...own, id: 'c', kind: 'notch', at: a, near: l('2') },
    { ...own, id: 'd', kind: 'dado', at: a, near: l('5') },
    { ...own, id: 'e', kind: 'rabbet', at: 'other' },
  ] as const;
  const made = withHandJoints(of, many);
  if (made.rabbets.length < of.rabbets.length + 2 || !made.board) throw new Error('not cut');
  return made;
}

const witnessed: readonly (() => Part)[] = [
  () => part(work(plainCase), 'left'),
  () => part(work(plainCase), 'partition1'),
  () => part(work(plainCase), 'bottom'),
  () => cut(part(work(plainCase), 'fixed1')),
  () => cut(part(work(framedCase), 'stile')),
  () => piece({}, 'side'),
  () => cut(piece({}, 'boxfront')),
  () => piece({ boxJoint: 'box-joint' }, 'side'),
  () => piece({ boxJoint: 'rabbeted' }, 'boxfront'),
  () => piece({ boxJoint: 'butted' }, 'side'),
  () => piece({ boxJoint: 'butted' }, 'boxback'),
  () => cut(piece({}, 'boxbottom')),
];

const sixteenths = (n: number) => l(`${n}/16`);

/** A row anywhere in a part, as shares of it, or within an inch of the edge it stands off. */
const said = fc.record({
  face: fc.constantFrom('A' as const, 'B' as const),
  first: fc.integer({ min: 0, max: 1000 }),
  off: fc.integer({ min: 0, max: 1000 }),
  close: fc.boolean(),
  dia: fc.integer({ min: 1, max: 8 }),
  deep: fc.integer({ min: 1, max: 7 }),
  pitch: fc.integer({ min: 9, max: 64 }),
  count: fc.integer({ min: 1, max: 4 }),
});

type Said = typeof said extends fc.Arbitrary<infer T> ? T : never;

/** It to sixteenths, in a part; in the other face only of a partition. */
function rowIn(of: Part, { face, count, close, ...x }: Said): HandHoles {
  const [long, wide] = [of.length.sum.value, of.width.sum.value].map((y) => Math.ceil(grain(y) / 400));
  return {
    id: 'xj',
    face: of.name.role === 'partition' ? face : 'A',
    count,
    first: sixteenths(Math.round((x.first * (long ?? 0)) / 1000)),
    off: sixteenths(Math.round((x.off * (close ? 16 : (wide ?? 0))) / 1000)),
    dia: sixteenths(x.dia),
    deep: l(`${x.deep}/32`),
    pitch: sixteenths(x.pitch),
  };
}
/** What is told fits, and no lesser move does, a 64th at a time, either way along or across. */
function heldToBeLeast(of: Part, boxes: readonly Box[], own: HandHoles, { toward, by }: Toward): void {
  const moved = (way: 'first' | 'off', step: number) =>
    clear(of, boxes, { ...own, [way]: add(own[way], l(`${step}/6400`)) });
  const back = [of.end, nearEdge(of)].includes(toward.named) ? -1 : 1;
  expect(moved(toward.at === 'end' ? 'first' : 'off', back * grain(by))).toBe(true);
  for (let step = 100; step < grain(by); step += 100)
    for (const to of [step, -step]) expect([moved('first', to), moved('off', to)]).toEqual([false, false]);
}
type Toward = { readonly toward: Side; readonly by: Length };

test('in coordinates: a row is bored where it was said, or the least way out is told', () => {
  const parts = witnessed.map((made) => made());
  const boxes = parts.map(boxesIn);
  const told = { bored: 0, moved: 0, 'less deep': 0 };
  const which = fc.nat({ max: parts.length - 1 });
  fc.assert(
    fc.property(which, said, (k, x) => {
      const [of, there] = [parts[k], boxes[k]];
      if (!of || !there) throw new Error('no part');
      const own = rowIn(of, x);
      const fault = holesFault(of, own);
      expect(fault === undefined).toBe(clear(of, there, own));
      if (!fault) {
        told.bored += 1;
        const [last] = boxesIn(withHoles(of, own)).slice(-1);
        const [end, r] = [grain(own.first) + (own.count - 1) * grain(own.pitch), grain(own.dia) / 2];
        expect(last?.x).toEqual([end - r, end + r]);
      } else if (fault.code === 'hole-in-cut' && fault.fits && 'lessThan' in fault.fits) {
        told['less deep'] += 1;
        const { lessThan } = fault.fits;
        expect(clear(of, there, { ...own, deep: lessThan })).toBe(false);
        expect(clear(of, there, { ...own, deep: subtract(lessThan, l('1/6400')) })).toBe(true);
      } else if (fault.code === 'hole-in-cut' && fault.fits) {
        told.moved += 1;
        heldToBeLeast(of, there, own, fault.fits as Toward);
      }
    }),
    { numRuns: runs(300) },
  );
  expect(told.bored).toBeGreaterThan(0);
  expect(told.moved).toBeGreaterThan(0);
});
