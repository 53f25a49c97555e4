import { describe, expect, test } from 'vitest';
import { fromMillimetres, toMillimetres } from '../../../src/length/length';
import { balanced, linePitch, nearLine, rearLine } from '../../../src/trade/shelves/lines';
import { l } from '../../length/write-figures';

const mm = (n: bigint) => fromMillimetres(n);

// bellinghambaywoodcraft.com/32mm: holes 32 mm apart, the front row 37 mm from the edge; the rest is ours
describe('32 mm lines', () => {
  test('32 mm is 160/127 of an inch', () => expect(linePitch.toFraction()).toBe('160/127'));

  test('the ends are alike: turned end for end every hole falls on a hole', () => {
    const { count, end } = balanced(mm(1560n), mm(40n));
    const holes = Array.from({ length: count }, (_, k) => end.add(linePitch.mul(BigInt(k))));
    const turned = holes.map((at) => mm(1560n).sub(at)).reverse();
    expect(turned.map((at) => at.toFraction())).toEqual(holes.map((at) => at.toFraction()));
  });

  test('behind an inset front the front line moves back and the rear line keeps its margin', () => {
    // 37 + 19 = 56; 476 − 56 − 30 = 390: 12 steps of 32 are 384; 476 − 56 − 384 = 36 behind
    const rear = rearLine({ deep: mm(476n), front: mm(56n), margin: mm(30n) });
    expect(toMillimetres(rear).toFraction()).toBe('440');
  });

  test('no room for a step: the rear line is the front one', () => {
    expect(rearLine({ deep: mm(90n), front: mm(37n), margin: mm(30n) })).toEqual(mm(37n));
  });

  test('only what looks like 32 mm is held against it', () => {
    expect(nearLine(mm(32n)).n).toBe(0n);
    expect(nearLine(l('1 1/2')).n).toBe(0n);
    // 160/127 − 1 17/64 = (160 · 64 − 81 · 127) / (127 · 64) = −47/8128
    expect(nearLine(l('1 17/64')).toFraction()).toBe('-47/8128');
  });
});
