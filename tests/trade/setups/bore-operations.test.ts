import { expect, test } from 'vitest';
import type { Part } from '../../../src/trade/carcass/part';
import type { Shop } from '../../../src/trade/machines/shop';
import { boresOf } from '../../../src/trade/setups/bore-operations';
import type { Bore } from '../../../src/trade/shelves/bore';
import { l } from '../../length/write-figures';
import { part, plainCase, work } from '../carcass/sample-case';

const row = (off: string, by: Bore['by']): Bore => ({
  id: 's~rear',
  inside: 's',
  row: 'rear',
  face: 'A',
  off: l(off),
  dia: l('1/4'),
  deep: l('3/8'),
  pitch: l('2'),
  metric: false,
  holes: [
    { no: 1, at: l('8') },
    { no: 2, at: l('10') },
  ],
  leftOut: [],
  by,
});

/** What a row is bored with, what that asks for, and by how much the press is short. */
function boredAt(off: string, by: Bore['by'], shop: Shop): string {
  const side: Part = { ...part(work(plainCase), 'left'), bores: [row(off, by)] };
  const [op] = boresOf(side, { id: '1', name: { of: side.name } }, { tape: '1/32', shop });
  const short = op?.which?.is === 'row' ? op.which.short : undefined;
  return [op?.setup.machine, op?.setup.sets, op?.asks, short?.toFraction(true)].filter(Boolean).join(' ');
}

test.each([
  ['2', 'template', {}, 'template row-from-front'],
  ['2', 'press', {}, 'press fence-to-bit'],
  // over 4 in nobody knows whether it reaches
  ['4', 'press', {}, 'press fence-to-bit'],
  ['4 1/32', 'press', {}, 'press fence-to-bit pressThroat'],
  ['15 1/2', 'press', { pressThroat: l('15 1/2') }, 'press fence-to-bit'],
  // 15 1/2 − 7
  ['15 1/2', 'press', { pressThroat: l('7') }, 'template row-from-front 8 1/2'],
  ['15 1/2', 'template', { pressThroat: l('7') }, 'template row-from-front'],
] as const)('a row %s in, bored at the %s, in a shop with %o: %s', (off, by, shop, want) =>
  expect(boredAt(off, by, shop)).toBe(want),
);

test('a row no hole is left of is not bored', () => {
  const side: Part = { ...part(work(plainCase), 'left'), bores: [{ ...row('2', 'press'), holes: [] }] };
  expect(boresOf(side, { id: '1', name: { of: side.name } }, { tape: '1/32', shop: {} })).toEqual([]);
});
