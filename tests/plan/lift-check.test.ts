import { expect, test } from 'vitest';
import { ratio } from '../../src/length/length';
import { liftOf } from '../../src/plan/lift-check';
import { l } from '../length/write-figures';
import { worked } from './job-of';

const { plan } = worked([]);
const drawer = { code: 'full-drawer', pounds: ratio(40n) } as const;
const said = { out: l('15'), up: l('12'), toOut: l('15'), toUp: l('42'), grip: 'fair' } as const;

test('what nobody said of a lift is asked for, and nothing is reckoned', () => {
  expect(liftOf(plan, {}, drawer)).toEqual({ asked: ['out', 'up', 'toOut', 'toUp', 'grip'], cures: [] });
  const { grip: _, ...ungripped } = said;
  expect(liftOf(plan, ungripped, drawer).asked).toEqual(['grip']);
});

test('said whole it is reckoned by the equation', () => {
  // 51 × .67 × .87 × .88 × .95 = 24.85: 40 is 15.15 over
  const found = liftOf(plan, said, drawer);
  if (!found.says?.ok) throw new Error('lift');
  expect(found.says.value.over?.valueOf().toFixed(2)).toBe('15.15');
  expect(found.cures.map(({ code }) => code)).toEqual(['take-out', 'trips', 'hoist']);
});

test('nothing is taken out of what has nothing in it', () => {
  for (const code of ['case', 'drawer', 'part', 'sheet'] as const)
    expect(liftOf(plan, said, { ...drawer, code }).cures.map((cure) => cure.code)).toEqual(['hoist']);
});
