import { describe, expect, test } from 'vitest';
import { type Case, type Inside, newCase } from '../../../src/trade/carcass/case';
import { partsOf } from '../../../src/trade/carcass/parts';
import { pinWarnings } from '../../../src/trade/shelves/pin-problems';
import { l } from '../../length/write-figures';

const stuff = [
  { id: 'a', name: 'A', thickness: l('23/32'), measured: true },
  { id: 'm', name: 'Maple', thickness: l('3/4'), measured: true },
  { id: 't', name: 'Thin', thickness: l('5/8'), measured: true },
];
const shelf = (own: Partial<Inside> = {}): Inside => ({
  id: 's',
  kind: 'loose',
  bay: 1,
  count: 3,
  heldBy: 'lines',
  depth: l('1/4'),
  band: l('1/4'),
  play: l('1/16'),
  ...own,
});
const made = (shelfedge: string | undefined, ...inside: readonly Inside[]) => {
  const c: Case = {
    ...newCase('c'),
    hold: 'openings',
    opening: l('30 3/64'),
    clear: l('40'),
    depth: l('12'),
    partitions: 1,
    stocks: { side: 'a', ...(shelfedge ? { shelfedge } : {}) },
    inside,
  };
  return partsOf(c, { stuff, tape: '1/32' });
};
const parts = (shelfedge: string | undefined, ...inside: readonly Inside[]) => {
  const found = made(shelfedge, ...inside);
  if (!found.ok) throw new Error(found.error.map(({ code }) => code).join());
  return found.value.parts;
};
const edges = (...at: Parameters<typeof parts>) => parts(...at).filter((p) => p.name.role === 'shelfedge');

describe('edging of wood on loose shelves', () => {
  test('is ripped out of its stock, one for each shelf and as long, down to a mark', () => {
    const [edge] = edges('m', shelf());
    const core = parts('m', shelf()).find(({ id }) => id === 'c~s');
    // 30 3/64 − 2 × 1/16 = 29 59/64, down to 29 29/32
    const told = edge && [edge.length.mark.value, edge.width.mark.value, edge.thickness ?? l('0')];
    expect(told?.map((x) => x.toFraction(true))).toEqual(['29 29/32', '1/4', '3/4']);
    expect([edge?.id, edge?.copies, edge?.strip, edge?.stuff]).toEqual(['c~s~edge', 3, true, 'm']);
    expect(core?.length.mark.value.equals(l('29 29/32'))).toBe(true);
    // 12 − 1/4: core and edging together are as deep as the inside
    expect(core?.width.mark.value.equals(l('11 3/4'))).toBe(true);
  });

  test('is bought as band while no stock is said, and none is of shelves without it', () => {
    expect(edges(undefined, shelf())).toEqual([]);
    expect(edges('m', shelf({ band: l('0') }))).toEqual([]);
    const { heldBy: _, ...free } = shelf();
    expect(edges('m', free)).toEqual([]);
  });

  test('of several sets has the bay and the number of its shelves', () => {
    const names = edges('m', shelf(), shelf({ id: 'u' }), shelf({ id: 'w', bay: 2 })).map(({ name }) => name);
    expect(names).toEqual([
      { role: 'shelfedge', bay: 1, no: 1 },
      { role: 'shelfedge', bay: 1, no: 2 },
      { role: 'shelfedge', bay: 2 },
    ]);
  });

  test('thinner than its shelves it is told by how much; a stock that is gone is asked for', () => {
    const told = (stock: string) => {
      const found = made(stock, shelf());
      return found.ok ? pinWarnings(found.value.sizes) : found.error;
    };
    expect(told('m')).toEqual([]);
    // 23/32 − 5/8
    expect(told('t')).toMatchObject([{ code: 'edge-thin', in: 's', by: l('3/32') }]);
    expect(told('gone')).toEqual([{ code: 'missing-stock', stock: 'shelfedge' }]);
  });
});
