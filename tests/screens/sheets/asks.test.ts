import { expect, test } from 'vitest';
import { cuttingAsks, liesAsk, sawAsks, shareAsk } from '../../../src/screens/sheets/asks';
import * as words from '../../../src/screens/sheets/words';
import { at, opened } from '../../plan/laid-sample';

const { job } = at(opened.entries).plan;

test.each([
  ['sheets', words.sheetSlip(), false],
  ['sticks', words.stickSlip, true],
])('every blank of how %s are cut is asked for', (_, slip, stick) => {
  const asks = cuttingAsks(job, stick);
  for (const [, name = ''] of slip.matchAll(/\{(\w+)\}/g)) expect(asks[name]?.title).toBeTruthy();
});

test('a part shares a sheet with its mates until a letter, or nothing, is chosen', () => {
  const ask = shareAsk('p', 'Side', {});
  if (ask.as !== 'choice') throw new Error('a choice is wanted');
  expect(ask.now).toBe('');
  expect(ask.choices.map((c) => c.label)).toEqual([
    'its mates',
    'nothing: any sheet',
    'all of A',
    'all of B',
    'all of C',
    'all of D',
  ]);
  expect(ask.save('B')).toEqual([expect.objectContaining({ value: 'B' })]);
  expect(liesAsk('p', 'Side', 'along').title).toBe('Grain of Side');
});

test('which saws cut the sheets is asked where the shop has some of its own, and nothing of a fence where none cuts', () => {
  const own = [
    { id: 'own1', name: 'Plunge saw', like: 'plunge', figures: {} },
    { id: 'own2', name: 'Old saw', like: 'fence', figures: {} },
    { id: 'own3', name: 'Press', like: 'press', figures: {} },
  ] as const;
  const asked = (of: typeof job) => sawAsks(of, { own }).map(({ field }) => field);
  expect([sawAsks(job, {}), asked(job), asked({ ...job, guideOnly: true })]).toEqual([
    [],
    ['guideSaw', 'fenceSaw'],
    ['guideSaw'],
  ]);
  const ask = sawAsks(job, { own })[0]?.ask;
  if (ask?.as !== 'choice') throw new Error('a choice is wanted');
  expect(ask.choices.map(({ value }) => value)).toEqual(['', 'own1']);
  expect(ask.save('own1')).toEqual([
    expect.objectContaining({ path: 'guideSaw', value: 'own1' }),
    expect.objectContaining({ path: 'machines/own1/name', value: 'Plunge saw' }),
  ]);
  expect(ask.save('')).toEqual([expect.objectContaining({ path: 'guideSaw', value: null })]);
});
