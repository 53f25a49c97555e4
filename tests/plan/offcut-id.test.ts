import { expect, test } from 'vitest';
import { isId } from '../../src/job/paths';
import { offcutId } from '../../src/plan/offcut-id';

test('a leftover has one id on every phone, another than its neighbours, however deep it lies', () => {
  const paths = ['r', 'rn', 'rf', 'rnn', 'rnf', 'rfn', 'rff', `r${'nf'.repeat(60)}`];
  const ids = paths.map((path) => offcutId('s3kf90', path));
  expect(ids).toEqual(paths.map((path) => offcutId('s3kf90', path)));
  expect(new Set([...ids, offcutId('s3kf91', 'rn')]).size).toBe(paths.length + 1);
  expect([...ids, offcutId('a'.repeat(24), `r${'f'.repeat(400)}`)].every(isId)).toBe(true);
});
