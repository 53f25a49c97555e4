import { describe, expect, test } from 'vitest';
import * as words from '../../../src/screens/case/sentence-words';
import { newCase } from '../../../src/trade/carcass/case';
import { said } from '../said';

const c = newCase('c1');
const size = { name: 'Low case', hold: 'outside sizes held', wide: '38 3/8', high: '64 1/4', deep: '17 1/2' };
const sized = (over: Partial<typeof c>, bays: string | false = false) =>
  said(
    words.size({ ...c, ...over }, { ...size, feet: '4 1/8', partitions: `${over.partitions ?? 0}`, bays }),
  );

describe('the sizes of a case', () => {
  test('held outside they are wide and high, held inside bays and clear', () => {
    expect(sized({ hold: 'outside', partitions: 1 })).toBe(
      'Low case with outside sizes held: 38 3/8 wide, 64 1/4 high and 17 1/2 deep, 4 1/8 off the floor. It has 1 partition.',
    );
    expect(sized({ hold: 'openings', partitions: 2 })).toContain('bays 38 3/8 wide, 64 1/4 clear inside and');
  });

  test('none and two are partitions; their bays stand in the same sentence', () => {
    expect(sized({ partitions: 0 })).toMatch(/It has 0 partitions\.$/);
    expect(sized({ partitions: 2 }, ', bays 12, 12, 12')).toMatch(/It has 2 partitions, bays 12, 12, 12\.$/);
  });
});

test('only stock of what the case has is asked for', () => {
  const of = (stock: string) => `[${stock}]`;
  expect(said(words.stocks({ ...c, hasTop: false, partitions: 0 }, of))).toBe(
    'Sides of [side], bottom of [bottom].',
  );
  const shelf = { id: 's', kind: 'fixed', bay: 1 } as const;
  expect(said(words.stocks({ ...c, hasTop: true, partitions: 1, inside: [shelf] }, of))).toBe(
    'Sides of [side], bottom of [bottom], top of [top], partitions of [partition], shelves of [shelf].',
  );
});

test('the bay of a thing is said where there is more than one', () => {
  expect(said(words.fixed(null, '30'))).toBe('A fixed shelf, its lower face 30 over the bottom.');
  expect(said(words.fixed(words.inBay('bay 2'), '30'))).toBe(
    'A fixed shelf in bay 2, its lower face 30 over the bottom.',
  );
  expect(said(words.fixed(null, '30', 2))).toBe('Fixed shelf 2, its lower face 30 over the bottom.');
});

test('of several things in the bays a blank says which of them it is of, not how many there are', () => {
  const inside = (id: string) => ({ id, kind: 'loose', bay: 1, count: 3 }) as const;
  const title = (ids: readonly string[], id: string) =>
    words.insideTitle({ ...c, inside: ids.map(inside) }, id, 'count');
  expect(title(['a'], 'a')).toBe('How many loose shelves');
  expect(title(['a', 'b'], 'b')).toBe('How many loose shelves, no. 2 of the list');
});
