import { describe, expect, test } from 'vitest';
import type { JobNews, News } from '../../../src/job/backup-news';
import { backupText, cameShort, differIn, newsText } from '../../../src/screens/job/import-all-words';

const jobs = (n: number): readonly JobNews[] =>
  Array.from({ length: n }, (_, k) => ({ file: { job: `j${k}`, entries: [] } }));

const news = (over: Partial<News>): News => ({
  ...{ backup: { jobs: [], shop: {}, likes: {} }, jobs: jobs(1) },
  ...{ entries: 0, touched: 0, differing: 0, places: [], lacking: [] },
  ...over,
});

describe('what a copy would bring', () => {
  test.each([
    ['nothing, its one job', news({}), 'Its one job is already here, complete.'],
    ['nothing, its jobs', news({ jobs: jobs(2) }), 'Its 2 jobs are already here, complete.'],
    ['one entry', news({ entries: 1, touched: 1 }), 'One entry new to this phone, in one job of 1.'],
    [
      'entries of some jobs',
      news({ jobs: jobs(3), entries: 12, touched: 2 }),
      '12 entries new to this phone, in 2 jobs of 3.',
    ],
    [
      'and what would be set aside',
      news({ entries: 2, touched: 1, differing: 1 }),
      '2 entries new to this phone, in one job of 1. One entry would be set aside: this phone has others.',
    ],
    ['no job, a liking', news({ jobs: [], lacking: ['hand'] }), 'No job is in it. Not here yet: hand.'],
  ])('%s', (_, of, says) => expect(newsText(of)).toBe(says));
});

test('where phone and copy differ: one place, or more, by their names', () => {
  expect(differIn(['hand'])).toBe('Shop figures and settings of this phone differ in one place: hand.');
  expect(differIn(['hand', 'text'])).toBe(
    'Shop figures and settings of this phone differ in 2 places: hand, size of text.',
  );
});

test('a phone that ran full says how many of how many came in', () => {
  expect(cameShort(0, 1)).toBe('0 of 1 job came in, then the phone took no more.');
  expect(cameShort(2, 5)).toBe('2 of 5 jobs came in, then the phone took no more.');
});

test('a bad job of a copy is named by its place, counted from one, and by what is wrong with it', () => {
  expect(backupText({ code: 'job-twice', at: 1 })).toBe('Job 2 is in the copy twice.');
  expect(backupText({ code: 'bad-job', at: 0, error: { code: 'empty' } })).toBe(
    'Job 1 of the copy: The file holds no entries.',
  );
});
