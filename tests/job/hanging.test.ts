import { expect, test } from 'vitest';
import { editBank } from '../../src/job/edits';
import { editHanging, isOfHanging, withHanging } from '../../src/job/hanging';
import { jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { logOf } from '../plan/job-of';
import { l } from '../trade/grooves/sample';

const whole = {
  hung: 'strips',
  sidePlay: l('1/32'),
  backRoom: l('1/4'),
  runHigh: l('5/8'),
  kickers: 'over',
  kickRoom: l('1/16'),
  stripUp: l('1 3/8'),
  stripPlay: l('1/64'),
} as const;

function read(...said: readonly ReturnType<typeof editHanging>[]) {
  const name = editBank('b', { name: 'Trays', sideStock: 'ply' });
  const job = jobOf('j', fold(logOf([...name, ...said.flat()])).values);
  const [bank] = job.banks;
  if (!bank) throw new Error('no bank');
  return { job, bank, hung: withHanging(job, bank) };
}

test('all that is said of what boxes run on is kept and read back, its stock among the others', () => {
  const { job, hung } = read(editHanging('b', { ...whole, runnerStock: 'oak' }));
  expect(job.unread).toEqual([]);
  expect(hung).toMatchObject({ ...whole, stocks: { side: 'ply', runner: 'oak' } });
});

test('taken away, each stands for nothing alone', () => {
  const { hung } = read(
    editHanging('b', whole),
    editHanging('b', { kickers: undefined, runHigh: undefined }),
  );
  expect(hung).toMatchObject({ ...whole, kickers: undefined, runHigh: undefined });
});

test('a bank of which nothing is said is the same bank: on slides, as it always was', () => {
  const { bank, hung } = read();
  expect(hung).toBe(bank);
});

// slides chosen again: what was said of runners is kept for another time, and stands for nothing
test('without a word on what they run on the rest is not read', () => {
  const { bank, hung } = read(editHanging('b', whole), editHanging('b', { hung: undefined }));
  expect(hung).toBe(bank);
});

// stands in logs that phones keep
test('is spelled so, for ever', () => {
  const paths = editHanging('b', { ...whole, runnerStock: 'oak' }).map((change) =>
    'path' in change ? change.path : '',
  );
  expect(paths).toEqual([
    'banks/b/corner/hung/how',
    'banks/b/corner/sideplay/size',
    'banks/b/corner/backroom/size',
    'banks/b/corner/runhigh/size',
    'banks/b/corner/kickers/how',
    'banks/b/corner/kickroom/size',
    'banks/b/corner/stripup/size',
    'banks/b/corner/stripplay/size',
    'banks/b/corner/runnerof/how',
  ]);
  expect([isOfHanging('hung'), isOfHanging('lap')]).toEqual([true, false]);
});

test('a way that a later version knows is kept, and stands for slides here', () => {
  const change = { kind: 'edit', path: 'banks/b/corner/hung/how', value: 'wheels' } as const;
  const { job, bank, hung } = read([change]);
  expect([job.unread, hung]).toEqual([[], bank]);
});
