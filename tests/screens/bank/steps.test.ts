import { expect, test } from 'vitest';
import { isPositive, subtract } from '../../../src/length/length';
import { writeLength } from '../../../src/length/write';
import { type OneStep, type StepsAt, stepsOf } from '../../../src/screens/bank/steps';
import type { Bank } from '../../../src/trade/fronts/bank';
import { l, w } from '../../trade/grooves/sample';
import { planned, twoFronts } from './sample';

const kerf = l('1/8');
const at: StepsAt = { tape: '1/32', shims: [{ size: l('1/16'), count: 2 }], kerf };
const ids = (steps: readonly OneStep[]) => steps.map(({ id }) => id);
const sticks = (bank: Partial<Bank> = {}, more: Partial<StepsAt> = {}) =>
  stepsOf(planned({ ...twoFronts, slideLong: l('18'), ...bank }), 'sticks', { ...at, ...more });

test('the story stick is marked edge by edge from the end the fronts go on from', () => {
  const down = stepsOf(planned(twoFronts), 'marks', at);
  expect(ids(down)).toEqual(['f1top', 'f1bottom', 'f2top', 'f2bottom']);
  expect(down.map(({ figure }) => w(figure))).toEqual(['1/8', '12 1/8', '12 3/16', '24 3/16']);
  const up = stepsOf(planned({ ...twoFronts, order: 'up' }), 'marks', at);
  expect(ids(up)).toEqual(['f2bottom', 'f2top', 'f1bottom', 'f1top']);
});

test('fronts are fitted in their order, each with the gap before it and its shims', () => {
  const [first, second] = stepsOf(planned(twoFronts), 'fit', at);
  expect(first?.says).toBe('From the top of the opening. Gap before it 1/8: shims 2 × 1/16.');
  expect(second?.says).toBe('From the top of the opening. Gap before it 1/16: shims 1/16.');
  expect(ids(stepsOf(planned({ ...twoFronts, order: 'up' }), 'fit', at))).toEqual(['c1d2', 'c1d1']);
});

test('with no shims written down it says where to write them', () => {
  const [first] = stepsOf(planned(twoFronts), 'fit', { ...at, shims: [] });
  expect(first?.says).toMatch(/; no shims entered yet, see Shop figures\.$/);
});

test('one stick is cut down from the highest drawer to the lowest: what comes off leaves the kerf out', () => {
  const [first, second] = sticks();
  if (!first || !second) throw new Error('no sticks');
  expect(isPositive(subtract(first.figure, second.figure))).toBe(true);
  expect(first.says).toMatch(/^The longest first\. Stand it on the bottom of the case/);
  const off = writeLength(subtract(subtract(first.figure, second.figure), kerf), '1/32');
  expect(second.says).toMatch(
    new RegExp(`^${off}( \\((strong|scant) 0\\.\\d{3}\\))? and the kerf come off the stick before`),
  );
  expect(second.ticks.map(({ label }) => label)).toEqual(['left', 'right']);
});

test('a stick that was measured is cut from its measure; one too short is not cut', () => {
  const [first] = sticks();
  if (!first) throw new Error('no sticks');
  const measured = (stick: typeof first.figure) => sticks({ fronts: { 1: { stick } } })[1];
  const longer = subtract(first.figure, l('-1/16'));
  expect(measured(longer)?.says).toContain(`which measures ${writeLength(longer, '1/32')}`);
  expect(measured(l('1'))?.says).toContain('too short for it: cut a new one');
});

test('with no kerf said it asks for one; with no drawers worked out there are no sticks', () => {
  expect(sticks({}, { kerf: undefined })[1]?.says).toContain('Enter the kerf in Shop figures');
  expect(stepsOf({ ...planned(twoFronts), drawers: undefined }, 'sticks', at)).toEqual([]);
});
