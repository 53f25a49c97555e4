import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { writeJobFile } from '../../src/job/file';
import { inches } from '../../src/length/length';
import { begun, cut, eachAnew, open } from '../store/page-of-phone';
import { handsOver } from './hands';

eachAnew();

const sample = readFileSync(
  path.resolve(import.meta.dirname, '../../demo-data/mineral-and-shell-cabinet.json'),
  'utf8',
);
const fileOf = async (store: Awaited<ReturnType<typeof open>>) =>
  writeJobFile({ job: 'j1', entries: (await store.load('j1')).entries });

test('a file is looked at and nothing of it taken; taken, its job is in hand; let go, nothing changed', async () => {
  const elsewhere = await begun();
  await cut(elsewhere, 'a');
  const text = await fileOf(elsewhere);
  elsewhere.close();
  globalThis.indexedDB = new IDBFactory();
  const store = await open();
  const { offers, log } = await handsOver(store);
  await offers.offer(text, 'shared');
  expect([offers.cameBy.value, await store.jobs()]).toEqual(['shared', []]);
  offers.letGo();
  await offers.take('merge');
  expect([offers.offered.value, await store.jobs()]).toEqual([undefined, []]);
  await offers.offer(text);
  await offers.take('merge');
  expect([log.jobId.value, offers.offered.value]).toEqual(['j1', undefined]);
  expect(log.folded.value.ticks.size).toBe(1);
});

test('kept as a second job it leaves the first as it was', async () => {
  const store = await begun();
  await cut(store, 'a');
  const text = await fileOf(store);
  await cut(store, 'b');
  const { offers, log } = await handsOver(store);
  await offers.offer(text);
  await offers.take('keep-both');
  expect(await store.jobs()).toHaveLength(2);
  expect([log.jobId.value === 'j1', log.folded.value.ticks.size]).toEqual([false, 1]);
});

test('M17: a job deleted here and taken in by hand is wanted: it comes back', async () => {
  const store = await begun();
  const text = await fileOf(store);
  const { offers, shelf, job } = await handsOver(store);
  await shelf.openJob('j1');
  await shelf.deleteJob();
  await offers.offer(text);
  await offers.take('merge');
  expect([job.value?.id, job.value?.deleted]).toEqual(['j1', undefined]);
});

test('what storage refuses waits by name and is taken when tried again', async () => {
  const elsewhere = await begun();
  const text = await fileOf(elsewhere);
  elsewhere.close();
  globalThis.indexedDB = new IDBFactory();
  const store = await open();
  let full = true;
  const { offers, log } = await handsOver({
    ...store,
    addEntries: (job, entries, aside) =>
      full ? Promise.resolve({ ok: false, error: { code: 'full' } }) : store.addEntries(job, entries, aside),
  });
  await offers.offer(text);
  await offers.take('merge');
  expect(log.unsaved.now.value.map(({ label }) => label)).toEqual(['Taken in']);
  full = false;
  await log.unsaved.tryAgain();
  expect([log.unsaved.now.value, log.jobId.value]).toEqual([[], 'j1']);
});

test('the sample brings its shop figures where there are none, and no other’s are touched', async () => {
  const store = await open();
  const { offers, values, job, went } = await handsOver(store, sample);
  const own = inches(3n, 32n);
  await values.keepShop('kerf', own);
  await offers.openSample();
  expect(job.value?.name).toBe('Mineral and shell cabinet');
  expect(went).toEqual([{ at: 'job' }]);
  expect(values.shop.value.kerf).toEqual(own);
  expect(values.shop.value.single).toBeDefined();
  expect(values.settings.value.figuresFrom).toBe('sample');
});

test('a text that is no job is refused with a code, and nothing changes', async () => {
  const store = await begun();
  const { offers } = await handsOver(store);
  await offers.offer('{ not a job');
  expect(offers.offered.value).toHaveProperty('code');
  await offers.take('merge');
  expect(await store.jobs()).toHaveLength(1);
});
