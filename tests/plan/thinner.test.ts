import { expect, test } from 'vitest';
import { editCase, editInside, editStock } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { l, w } from '../length/write-figures';
import { worked } from './job-of';

const decided: readonly Change[] = [
  ...editStock('a', { name: 'Birch', readings: [l('.708'), l('.714')] }),
  ...editCase('c', { width: l('30'), height: l('48'), depth: l('11 1/4'), sideStock: 'a' }),
  ...editInside('c', 'shelf', { kind: 'fixed', bay: 1, at: l('20') }),
];
const at = (used: string) => worked([...decided, ...editStock('a', { used: l(used) })]).plan;

test('cuts that would be set otherwise at the thickest reading say what they go by', () => {
  const { thinner } = at('.708');
  // the dado for it is .006 too narrow; the bottom 30 − 2 × .708 + 1/2 = 29.084 stands at 29 3/32, and at .714
  // 29.072 at 29 1/16
  for (const op of ['cut/c~left/shelf~only/1', 'cut/c~bottom/len/1'])
    expect(thinner.get(op)?.map((t) => [t.name, w(t.used), w(t.read)])).toEqual([
      ['Birch', '177/250', '357/500'],
    ]);
  const test = [...thinner.keys()].filter((id) => id.startsWith('cut/test/'));
  expect(test.length).toBeGreaterThan(0);
});

test('outside sizes go by no thickness: a rip and the length of a side say nothing', () => {
  const { thinner } = at('.708');
  for (const op of ['cut/c~left/rip/1', 'cut/c~left/len/1', 'cut/c~bottom/rip/1'])
    expect(thinner.has(op)).toBe(false);
});

test('nothing is said where the thickest is in use, or more than was read', () => {
  expect([...at('.714').thinner]).toEqual([]);
  expect([...at('3/4').thinner]).toEqual([]);
});
