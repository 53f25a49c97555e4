import { expect, test } from 'vitest';
import { sum } from '../../../src/length/length';
import { looseDeep, looseLong } from '../../../src/trade/shelves/loose';
import { l } from '../../length/write-figures';

const shelf = { id: 's', kind: 'loose', bay: 1 } as const;
const off = (terms: ReturnType<typeof looseLong>) => sum(terms.map(({ value }) => value)).toFraction(true);

test('with no holes laid out a shelf is 1/8 shorter than its bay and as deep as the inside', () => {
  expect(off(looseLong({}, shelf))).toBe('-1/8');
  expect(looseDeep(shelf)).toEqual([]);
});

test('on pins its play is the same until something is said', () => {
  expect(off(looseLong({}, { ...shelf, heldBy: 'pins' }))).toBe('-1/8');
});

test('room in front and behind and edging come off its depth', () => {
  const own = { ...shelf, heldBy: 'pins', frontPlay: l('1/4'), backPlay: l('1/8'), band: l('1/32') } as const;
  // 1/4 + 1/8 + 1/32 = 13/32
  expect(off(looseDeep(own))).toBe('-13/32');
});
