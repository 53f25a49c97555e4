import { expect, test } from 'vitest';
import { deleteJob } from '../../../src/screens/job/jobs-words';

test('the job to be deleted is named, also when it has no name', () => {
  expect(deleteJob('Shell drawers')).toBe('Delete “Shell drawers”');
  expect(deleteJob('')).toBe('Delete “this job”');
});
