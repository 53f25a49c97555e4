import { expect, test } from 'vitest';
import { standingJob } from '../../src/app/job-shelf';
import { fold } from '../../src/job/log';
import type { Store } from '../../src/store/store';
import { eachAnew, open } from '../store/page-of-phone';
import { handsOver } from './hands';

eachAnew();

const names = (store: Store) => store.jobs().then((lines) => lines.map(({ name }) => name));

test('a new job is in hand, is the one of the next start, and the browser is asked to keep it', async () => {
  const store = await open();
  const { shelf, log, values, asked } = await handsOver(store);
  await shelf.newJob('Shells');
  expect(shelf.jobs.value.map(({ name }) => name)).toEqual(['Shells']);
  expect(log.jobId.value).toBe(shelf.jobs.value[0]?.id);
  expect(values.settings.value.job).toBe(log.jobId.value);
  expect(asked()).toBe(1);
  expect(standingJob(await store.jobs(), values.settings.value.job)?.name).toBe('Shells');
});

test('a deleted job is left for the next one, comes back into hand, and nobody’s job is none', async () => {
  const store = await open();
  const { shelf, log, went } = await handsOver(store);
  await shelf.newJob('Shells');
  const shells = log.jobId.value ?? '';
  await shelf.newJob('Minerals');
  const minerals = log.jobId.value;
  await shelf.deleteJob();
  expect([log.jobId.value, went.at(-1)]).toEqual([shells, { at: 'jobs' }]);
  await shelf.deleteJob();
  expect(log.jobId.value).toBeUndefined();
  expect(standingJob(shelf.jobs.value, minerals)).toBeUndefined();
  await shelf.deleteJob(); // none in hand: nothing to do
  await shelf.bringBack(shells);
  expect(log.jobId.value).toBe(shells);
  expect(shelf.jobs.value.filter(({ deleted }) => deleted === undefined).map(({ name }) => name)).toEqual([
    'Shells',
  ]);
});

test('a job that is refused waits by its name, is made once there is room, and once', async () => {
  const store = await open();
  let full = true;
  const refusing: Store = {
    ...store,
    makeJob: (act) => (full ? Promise.resolve({ ok: false, error: { code: 'full' } }) : store.makeJob(act)),
  };
  const { shelf, log } = await handsOver(refusing);
  await shelf.newJob('Shells');
  expect(log.unsaved.now.value.map(({ label }) => label)).toEqual(['New job “Shells”']);
  expect(log.jobId.value).toBeUndefined();
  full = false;
  await log.unsaved.tryAgain();
  expect(log.unsaved.now.value).toEqual([]);
  expect(await names(store)).toEqual(['Shells']);
});

test('the file of the job in hand has also what waits to be saved', async () => {
  const store = await open();
  let full = false;
  const refusing: Store = {
    ...store,
    append: (act) => (full ? Promise.resolve({ ok: false, error: { code: 'full' } }) : store.append(act)),
  };
  const { shelf, log } = await handsOver(refusing);
  await shelf.newJob('Shells');
  full = true;
  expect(await log.write('Tick', [{ kind: 'tick', op: 'cut/b1/r1/1', figure: '3/4' }])).toBe(false);
  const { entries } = JSON.parse(await shelf.jobFile());
  expect([...fold(entries).ticks.keys()]).toEqual(['cut/b1/r1/1']);
});
