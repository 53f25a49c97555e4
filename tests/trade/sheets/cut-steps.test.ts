import { describe, expect, test } from 'vitest';
import { add, ratio } from '../../../src/length/length';
import { type CutsAt, cutSteps, sameSetting } from '../../../src/trade/sheets/cut-steps';
import { placesOf } from '../../../src/trade/sheets/tree';
import { cut, kerf, leaf, left, n, sheet, w } from './cutting';

const cutsAt: CutsAt = {
  kind: 'sheet',
  kerf,
  tape: '1/32',
  shop: { shoeKeep: n(5), shoeWaste: n(1, 1, 2), capacity: n(30) },
  thick: n(0, 23, 32),
  carry: ratio(50n),
  guideOnly: false,
};

describe('the order of cuts', () => {
  const steps = cutSteps(sheet, cutsAt);

  test('what must come apart first comes first, and every cut comes once', () => {
    expect(steps.map((s) => s.path).sort()).toEqual(
      placesOf(sheet, kerf)
        .filter((p) => p.branch.is === 'cut')
        .map((p) => p.path)
        .sort(),
    );
    for (const [k, step] of steps.entries())
      if (step.path !== 'r')
        expect(steps.findIndex((s) => s.path === step.path.slice(0, -1))).toBeLessThan(k);
  });

  test('cuts at one setting share a number and stand together: four crosscuts, one setting of the fence', () => {
    const across = steps.filter((s) => s.way === 'cross');
    expect(across.length).toBe(4);
    expect(new Set(across.map((s) => s.no)).size).toBe(1);
    expect(new Set(steps.map((s) => s.no)).size).toBeLessThanOrEqual(3);
  });

  test('a sheet one person cannot lift is cut along the guide; what he can goes to the fence', () => {
    expect([steps[0]?.heavy, steps[0]?.tool]).toEqual([true, 'guide']);
    const light = steps.find((s) => s.path === 'rf');
    expect([light?.heavy, light?.tool, w(light?.figure.value)]).toEqual([false, 'fence', '17 3/4']);
  });

  test('a crosscut wider along the fence than the edge that rides on it is left to the guide', () => {
    expect(steps.filter((s) => s.way === 'cross').every((s) => s.tool === 'guide')).toBe(true);
  });

  test('beyond the reach of the fence, and without a table saw, it is the guide', () => {
    const short = cutSteps(sheet, { ...cutsAt, shop: { ...cutsAt.shop, capacity: n(17) } });
    expect(short.every((s) => s.tool === 'guide')).toBe(true);
    expect(cutSteps(sheet, { ...cutsAt, guideOnly: true }).every((s) => s.tool === 'guide')).toBe(true);
  });

  test('says where the guide goes on either side, and nothing where it would lie off the sheet', () => {
    expect([w(steps[0]?.onKeep?.value), w(steps[0]?.onWaste?.value)]).toEqual(['12 3/4', '19 3/8']);
    const trim = cutSteps({ ...sheet, tree: cut('rip', n(0, 1, 16), { is: 'waste' }, leaf('a')) }, cutsAt)[0];
    expect([trim?.keep, w(trim?.figure.value), w(trim?.onKeep?.value), trim?.onWaste]).toEqual([
      'far',
      '3/16',
      '5 3/16',
      undefined,
    ]);
  });

  test('sizes after a cut and its kerf add up to what was cut', () => {
    for (const { size, near, far, way } of steps) {
      const [whole, a, b] =
        way === 'rip' ? [size.wide, near.wide, far.wide] : [size.long, near.long, far.long];
      expect(w(add(add(a, kerf), b))).toBe(w(whole));
    }
  });

  test('no setting is left and come back to while another order of free cuts would not', () => {
    for (const [k, step] of steps.entries())
      for (const later of steps.slice(k + 1)) if (sameSetting(step, later)) expect(later.no).toBe(step.no);
  });

  test('over several pieces the figure goes up to the next mark: the last is not short by the rounding', () => {
    const fine = { ...cutsAt, tape: '1/16' as const, kerf: n(0, 5, 64) };
    const tree = cut('rip', n(20, 5, 64), cut('rip', n(10), leaf('a'), leaf('b')), left);
    expect(w(cutSteps({ ...sheet, tree }, fine)[0]?.figure.value)).toBe('20 1/8');
  });

  test('the guide goes by the kerf of the saw that follows it, whatever the layout reckoned with', () => {
    const two = { ...cutsAt, shop: { ...cutsAt.shop, kerf: n(0, 5, 64), shoeWaste: n(1, 7, 16) } };
    expect(w(cutSteps(sheet, two)[0]?.onWaste?.value)).toBe('19 9/32');
  });

  test('an end of a stick that is not square yet is cut at a line, not at a stop', () => {
    const stick = {
      size: { long: n(96), wide: n(4) },
      tree: cut('cross', n(0, 3, 8), { is: 'waste' }, leaf('s')),
    };
    expect(
      cutSteps(stick, { ...cutsAt, kind: 'stick' }).map((s) => [s.tool, s.keep, w(s.figure.value)]),
    ).toEqual([['guide', 'far', '1/2']]);
  });

  test('a stick is cut at a stop', () => {
    const stick = { size: { long: n(96), wide: n(4) }, tree: cut('cross', n(60, 1, 8), leaf('s'), left) };
    expect(cutSteps(stick, { ...cutsAt, kind: 'stick' }).map((s) => [s.tool, w(s.figure.value)])).toEqual([
      ['stop', '60 1/8'],
    ]);
  });
});
