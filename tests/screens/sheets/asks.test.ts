import { expect, test } from 'vitest';
import { cuttingAsks, liesAsk, shareAsk } from '../../../src/screens/sheets/asks';
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
