import { expect, test } from 'vitest';
import { editHanging } from '../../src/job/hanging';
import type { Hanging } from '../../src/trade/fronts/hanging';
import { l, w } from '../length/write-figures';
import { worked } from './job-of';
import { twoColumns } from './two-columns';

/** Lines of a part, lowest first: what stands on them, which face, and how far up from its own lower end. */
function linesOn(part: string, said: Hanging): readonly string[] {
  const { plan } = worked([...twoColumns, ...editHanging('b', said)]);
  const lines = plan.parts.find(({ id }) => id === `c1~${part}`)?.lines ?? [];
  return [...lines]
    .sort((a, b) => a.near.compare(b.near))
    .map(({ takes, face = '', near }) => `${takes.part} ${takes.no} ${face} ${w(near)}`);
}

/**
 * 22 1/2 clear less three gaps of 3/32: fronts of 11 3/32 and 11 1/8, at 11 5/16 and 3/32. Boxes 3/4 over these
 * stand on runners 3/4 high: lower edges at 11 5/16 and 3/32 over the bottom. A side begins 3/4 under that face, the
 * partition 1/4.
 */
test('runners are marked on both walls of every bay, alike over the bottom, from the lower end of each', () => {
  const said = { hung: 'runners' } as const;
  expect(linesOn('left', said)).toEqual(['runner 2  27/32', 'runner 1  12 1/16']);
  expect(linesOn('right', said)).toEqual(linesOn('left', said));
  expect(linesOn('partition1', said)).toEqual([
    'runner 2 A 11/32',
    'runner 2 B 11/32',
    'runner 1 A 11 9/16',
    'runner 1 B 11 9/16',
  ]);
});

// the upper box from 12 1/16, 11 3/32 + 3/32 − 3/4 − 1/16 − 3/4 = 9 5/8 high: its kicker at 21 11/16 + 1/16, and 3/4
test('kickers are marked where they are needed', () => {
  expect(linesOn('left', { hung: 'runners', kickers: 'over' })).toEqual([
    'runner 2  27/32',
    'runner 1  12 1/16',
    'kicker 1  22 1/2',
  ]);
});

test('no line is drawn for boxes on slides', () => {
  expect(linesOn('left', {})).toEqual([]);
});

// up 3/8 over the fronts, 1 1/4 and 1/32: 1 21/32 over the fronts of a strip 1/4 thick, of stuff of its own
test('strips are marked by their lower edges too', () => {
  const { plan } = worked([
    ...twoColumns,
    { kind: 'edit', path: 'stock/thin/name', value: 'Thin' },
    { kind: 'edit', path: 'stock/thin/planned', value: '1/4' },
    ...editHanging('b', { hung: 'strips', runnerStock: 'thin' }),
  ]);
  const side = plan.parts.find(({ id }) => id === 'c1~left');
  expect(side?.lines?.map(({ near }) => w(near))).toEqual(
    [l('11 5/16'), l('3/32')].map((front) => w(front.add(l('1 21/32')).add(l('3/4')) as typeof front)),
  );
});
