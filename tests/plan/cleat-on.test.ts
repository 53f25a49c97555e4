import { expect, test } from 'vitest';
import { editCase, editPutUp } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { cleatOnOf } from '../../src/plan/cleat-on';
import { l } from '../trade/grooves/sample';
import { worked } from './job-of';

const on = (cleats: number, own: Parameters<typeof editPutUp>[1] = {}) => {
  const changes: readonly Change[] = [...editCase('c1', { cleats }), ...editPutUp('c1', own)];
  return cleatOnOf(worked(changes).job, 'c1');
};

test('nobody spoke of a cleat, it is in the case, or said to be on the wall', () => {
  expect(on(0)).toBeUndefined();
  expect(on(1)).toBe('case');
  expect(on(0, { cleatThick: l('3/4') })).toBe('case');
  expect(on(0, { cleatAt: l('40') })).toBe('case');
  expect(on(1, { cleatOn: 'wall' })).toBe('wall');
});
