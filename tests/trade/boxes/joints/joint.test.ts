import { describe, expect, test } from 'vitest';
import { half, less } from '../../../../src/length/length';
import { boxParts } from '../../../../src/trade/boxes/bank-parts';
import { boxOf, boxWarnings } from '../../../../src/trade/boxes/box';
import type { BoxPlan } from '../../../../src/trade/boxes/box-plan';
import { drawersOf } from '../../../../src/trade/boxes/drawers';
import { halfBlind } from '../../../../src/trade/boxes/joints/half-blind';
import type { DrawerJoint } from '../../../../src/trade/boxes/joints/joint';
import { type Bank, newBank } from '../../../../src/trade/fronts/bank';
import { frontsOf } from '../../../../src/trade/fronts/worked';
import { operationsOf } from '../../../../src/trade/setups/operations';
import { minus, plus, sumOf } from '../../../../src/trade/sums/sum';
import { l, w } from '../../grooves/sample';

/** Sides stand in rabbets of the front, always half its thickness deep: no joint of ours, but one by the contract. */
const rabbeted: DrawerJoint = {
  side: ({ depth, front }) => sumOf(plus('box-depth', depth), minus('front-lap', half(front))),
  front: (_, { width }) => sumOf(width),
  reach: ({ front }) => half(front),
  fault: () => undefined,
  warnings: () => [],
  problems: () => [],
  height: (_, most) => most,
  layOut: () => ({ kind: 'corner' }),
  cuts: (_, { reach, side }) => ({
    front: {
      what: 'rabbet',
      machine: 'rabbet',
      height: reach,
      along: reach,
      on: { at: 'end', named: 'left' },
      markedFrom: side,
    },
  }),
};

const plan: BoxPlan = {
  opening: l('17'),
  clearance: l('1/2'),
  tape: '1/32',
  depth: l('16'),
  height: l('4'),
  side: l('1/2'),
  front: l('5/8'),
  back: l('1/2'),
  bottom: l('1/4'),
  lap: l('1/16'),
  backDado: l('1/4'),
  behind: l('0'),
  groove: { deep: l('1/4'), up: l('1/2'), fit: l('0') },
  ease: l('1/16'),
  bottomHow: 'captured',
};

const bank: Bank = {
  ...newBank('b'),
  width: l('18'),
  height: l('24'),
  depth: l('20'),
  boxDeep: l('16'),
  count: 2,
};

function worked(joint: DrawerJoint, more: Partial<Bank> = {}) {
  const fronts = frontsOf({ ...bank, ...more }, { worked: undefined, tape: '1/32' });
  if (!fronts.ok) throw new Error('no fronts');
  return drawersOf(fronts.value, { thick: () => l('1/2'), shop: {}, tape: '1/32' }, joint);
}

function operationsWith(joint: DrawerJoint) {
  const drawers = worked(joint);
  if (!drawers.ok) throw new Error('no drawers');
  const parts = boxParts(drawers.value, { tape: '1/32', thick: () => l('1/2'), waits: [] });
  return operationsOf({ parts, cases: [], hand: [], recuts: () => ({}) }, { shop: {}, tape: '1/32' });
}

describe('a box asks its joint', () => {
  test('how long its sides are: 16 less half of 5/8, or less a lap of 1/16', () => {
    const long = (joint: DrawerJoint) => {
      const box = boxOf(plan, joint);
      return box.ok ? `${w(box.value.side.value)}, reach ${w(box.value.reach)}` : box.error.code;
    };
    expect(long(rabbeted)).toBe('15 11/16, reach 5/16');
    expect(long(halfBlind)).toBe('15 15/16, reach 9/16');
  });

  test('whether it can be made, and what to warn of', () => {
    const thick = { ...plan, lap: l('3/4') };
    expect(boxOf(thick, halfBlind)).toMatchObject({ ok: false, error: { code: 'lap-too-deep' } });
    expect(boxOf(thick, rabbeted).ok).toBe(true);
    expect(boxWarnings(plan, halfBlind).map((x) => x.code)).toEqual(['lap-thin']);
    expect(boxWarnings(plan, rabbeted)).toEqual([]);
  });

  test('what of its layout keeps it from being made', () => {
    const noPitch = { tailsHow: 'template', pitch: l('0') } as const;
    expect(worked(halfBlind, noPitch)).toEqual({ ok: false, error: [{ code: 'pitch-not-positive' }] });
    expect(worked(rabbeted, noPitch).ok).toBe(true);
  });

  test('how high it may be: a template takes whole pitches, a rabbet any height', () => {
    const byTemplate = { tailsHow: 'template', pitch: l('7/8') } as const;
    const [tailed, plain] = [halfBlind, rabbeted].map((joint) => {
      const made = worked(joint, byTemplate);
      return made.ok ? made.value.drawers[0]?.high : undefined;
    });
    expect(tailed?.div(l('7/8')).d).toBe(1n);
    expect(tailed && plain && less(tailed, plain)).toBe(true);
  });
});

describe('operations of a joint', () => {
  const ends = (joint: DrawerJoint) =>
    operationsWith(joint)
      .filter((op) => ['tails', 'pins', 'rabbet'].includes(op.what))
      .map((op) => `${op.part} ${op.copy}: ${op.what} at the ${op.setup.machine}`);

  test('are cut in the pieces it names, at its machine', () => {
    expect(ends(halfBlind).slice(0, 3)).toEqual([
      'b~c1d1side left: tails at the dovetail',
      'b~c1d1side right: tails at the dovetail',
      'b~c1d1boxfront 1: pins at the dovetail',
    ]);
    expect(ends(rabbeted)).toEqual([
      'b~c1d1boxfront 1: rabbet at the rabbet',
      'b~c1d2boxfront 1: rabbet at the rabbet',
    ]);
  });

  test('come after those of the part they are marked from', () => {
    const ops = operationsWith(halfBlind);
    const pins = ops.find((op) => op.part === 'b~c1d2boxfront' && op.what === 'pins');
    expect(pins?.after).toEqual(
      expect.arrayContaining(['cut/b~c1d2side/tails/left', 'cut/b~c1d2side/tails/right']),
    );
    expect(pins?.after.some((id) => id.includes('d1side'))).toBe(false);
  });
});
