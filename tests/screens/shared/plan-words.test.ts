import { expect, test } from 'vitest';
import { againstPlan } from '../../../src/screens/shared/plan-words';
import { l } from '../../length/write-figures';

test('a reading is over, under or as planned, and by how much a tape shows', () => {
  expect(againstPlan(l('-1/16'))).toBe('1/16 under plan');
  expect(againstPlan(l('3/64'))).toBe('3/64 over plan');
  expect(againstPlan(l('0'))).toBe('as planned');
});

test('what no tape shows is said in thousandths', () => {
  expect(againstPlan(l('-0.011'))).toBe('0.011 under plan');
});
