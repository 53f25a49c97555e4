import { expect, test } from 'vitest';
import { spoilPiece } from '../../src/job/edits';
import { recutsOf } from '../../src/plan/recuts';
import { worked } from './job-of';

test('a copy is cut again once for each making of it that was spoiled', () => {
  const { job } = worked([
    ...spoilPiece('side', 'left', 1),
    ...spoilPiece('side', 'left', 2),
    ...spoilPiece('side', 'right', 1),
  ]);
  expect(recutsOf(job, 'side')).toEqual({ left: 2, right: 1 });
  expect(recutsOf(job, 'shelf')).toEqual({});
});
