import { expect, test } from 'vitest';
import { jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { eachAnew, open } from '../store/page-of-phone';
import { handsOver } from './hands';

eachAnew();

test('a job begun like the one in hand is in hand, has no tick, and leaves that one as it was', async () => {
  const store = await open();
  const { shelf, log } = await handsOver(store);
  await shelf.newJob('Shells');
  const shells = log.jobId.value ?? '';
  await log.write('Decided', [
    { kind: 'edit', path: 'boards/b1/name', value: 'Side' },
    { kind: 'edit', path: 'stock/a/name', value: 'Sheet A' },
    { kind: 'edit', path: 'stock/a/reading/r1/size', value: '23/32' },
    { kind: 'tick', op: 'cut/b1/r1/1', figure: '3/4' },
  ]);
  await shelf.newJob('Minerals', { readings: false });
  const own = fold((await store.load(log.jobId.value ?? '')).entries);
  expect(log.jobId.value).not.toBe(shells);
  expect([own.values.get('name'), own.values.get('boards/b1/name'), own.ticks.size]).toEqual([
    'Minerals',
    'Side',
    0,
  ]);
  expect(jobOf('j', own.values).stock[0]?.readings).toEqual([]);
  expect(fold((await store.load(shells)).entries).ticks.size).toBe(1);
  // and the stock that was measured there can be asked for
  const [sheet] = await shelf.stockOf(shells);
  expect([sheet?.name, sheet?.readings.length]).toEqual(['Sheet A', 1]);
});
