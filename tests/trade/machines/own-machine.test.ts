import { describe, expect, test } from 'vitest';
import { isClear, lacksOf, type Need } from '../../../src/trade/machines/limits';
import { ownFields, ownOf, shopAt, takerId, toolOf, worksAs } from '../../../src/trade/machines/own-machine';
import { remediesFor } from '../../../src/trade/machines/remedies';
import type { OwnMachine, Shop } from '../../../src/trade/machines/shop';
import { passedOver, takerOf, waysFor } from '../../../src/trade/machines/taker';
import { hasTool, toolOrder } from '../../../src/trade/machines/tools';
import { l, w } from '../../length/write-figures';

const old: OwnMachine = {
  id: 'own1',
  name: 'Old saw',
  like: 'fence',
  figures: { capacity: l('52'), tableHeight: l('2') },
};
const rail: OwnMachine = {
  id: 'own2',
  name: 'Rail saw',
  like: 'circular',
  figures: { circularDepth: l('1 1/2'), circularGuide: l('55'), kerf: l('3/32') },
};
const shop: Shop = {
  capacity: l('30'),
  tableHeight: l('3'),
  circularGuide: l('100'),
  circularDepth: l('2 1/4'),
  own: [old, rail],
};
const rip = (width: string, thickness = '3/4', length = '60'): Need => ({
  cut: 'rip',
  width: l(width),
  thickness: l(thickness),
  length: l(length),
});

test('its figures stand in for those of the tool it works like, blank where it has none; the others stay', () => {
  const at = shopAt({ ...shop, block: l('3/4') }, old);
  expect([at.capacity && w(at.capacity), at.block, at.circularGuide && w(at.circularGuide)]).toEqual([
    '52',
    undefined,
    '100',
  ]);
  expect(shopAt(shop, undefined)).toBe(shop);
  expect([toolOf(old), takerId(old), toolOf('sled'), takerId('sled')]).toEqual([
    'fence',
    'own1',
    'sled',
    'sled',
  ]);
  expect([ownOf(shop, 'own2'), ownOf(shop, 'own9'), ownOf({}, 'own1')]).toEqual([rail, undefined, undefined]);
  // two of one kind share no figure: each tool has its own list, and no field twice in it
  for (const fields of Object.values(ownFields)) expect(new Set(fields).size).toBe(fields.length);
});

describe('where machines of a shop’s own are tried', () => {
  test('after the usual ones until an order is said, in the order of their ids; then where they were put', () => {
    expect(toolOrder(shop)).toEqual([
      'sled',
      'fence',
      'sliding',
      'router',
      'circular',
      'press',
      'plate',
      'own1',
      'own2',
    ]);
    // one the shop has not any more is passed over
    expect(toolOrder({ ...shop, order: ['own2', 'own9', 'fence'] })).toEqual([
      'own2',
      'fence',
      'sled',
      'sliding',
      'router',
      'circular',
      'press',
      'plate',
      'own1',
    ]);
  });

  test('one of which nothing is measured is not offered; one that is, is', () => {
    expect([hasTool(shop, old), hasTool(shop, { ...old, figures: {} })]).toEqual([true, false]);
    const blank = { ...shop, own: [{ ...old, figures: {} }] };
    expect(waysFor(rip('34'), 'fence', blank).map(({ own, tool }) => own?.id ?? tool)).toEqual([
      'fence',
      'circular',
    ]);
  });

  test('34 is 4 over the fence; 48 3/4 of the circular’s 100 is left; the old saw reaches it', () => {
    const ways = waysFor(rip('34'), 'fence', shop);
    expect(ways.map((way) => [way.own?.id ?? way.tool, isClear(way)])).toEqual([
      ['fence', false],
      ['circular', true],
      ['own1', true],
      // its guide of 55 is 60 − 55 = 5 short
      ['own2', false],
    ]);
    expect(ways.flatMap(({ lacks }) => lacks.map((lack) => ('by' in lack ? w(lack.by) : '')))).toEqual([
      '4',
      '5',
    ]);
  });

  test('the first that lacks nothing takes it, in the order said: 34 the old saw; 2 1/2 thick it is 5/8 too low for', () => {
    const said: Shop = { ...shop, order: ['own1', 'fence'] };
    expect([takerOf(rip('34'), 'fence', said), takerOf(rip('20'), 'fence', said)]).toEqual([old, old]);
    // 2 1/2 + 1/8 = 2 5/8: over 2, within 3
    const thick = rip('20', '2 1/2');
    expect(takerOf(thick, 'fence', said)).toBe('fence');
    expect(passedOver(thick, 'fence', said).map(({ own, lacks }) => [own?.id, lacks])).toEqual([
      ['own1', [{ code: 'short', field: 'tableHeight', by: l('5/8') }]],
    ]);
    // no order said: nothing moves by itself
    expect(takerOf(rip('34'), 'fence', shop)).toBe('fence');
  });

  test('a groove is offered on it too, where it makes one: near 40 is 10 over the fence, the old saw reaches it', () => {
    const groove: Need = { cut: 'groove', near: l('40'), width: l('3/4'), depth: l('1/4') };
    const ways = waysFor(groove, 'fence', shop);
    expect(ways.map(({ tool, own, lacks }) => [own?.id ?? tool, lacks])).toEqual([
      ['fence', [{ code: 'short', field: 'capacity', by: l('10') }]],
      ['own1', []],
    ]);
  });
});

test('a blank figure of its own is asked, though the shop’s is measured', () => {
  const way = lacksOf(rip('20'), { ...old, figures: { capacity: l('52') } }, shop);
  expect([way.lacks, way.asks, way.own?.name]).toEqual([
    [],
    [{ field: 'tableHeight', wants: l('7/8') }],
    'Old saw',
  ]);
});

test('a router table wants its fence as far as the near side, no less along it than the far side, a bit that fits and reaches', () => {
  const table: OwnMachine = {
    id: 'own3',
    name: 'Table',
    like: 'table',
    figures: { capacity: l('10'), bit: l('3/8'), routerReach: l('1/8') },
  };
  const groove: Need = {
    cut: 'groove',
    near: l('12'),
    width: l('3/4'),
    depth: l('1/4'),
    length: l('48'),
    across: l('12'),
  };
  const way = lacksOf(groove, table, shop);
  // 12 − 10; its far side at 12 3/4 of 12; 1/4 − 1/8. From the other end the fence would be 35 1/4 − 10 short
  expect([way.from, way.figure && w(way.figure), way.asks]).toEqual(['reference', '12', []]);
  expect(way.lacks).toEqual([
    { code: 'short', field: 'capacity', by: l('2') },
    { code: 'unsteady', by: l('3/4') },
    { code: 'short', field: 'routerReach', by: l('1/8') },
  ]);
  // 1/4 deep at most 1/8 at a pass: two depths
  expect(way.depths).toBe(2);
  const wide = lacksOf({ ...groove, width: l('1/4') }, table, shop);
  expect(wide.lacks.find(({ code }) => code === 'cutter-too-wide')).toEqual({
    code: 'cutter-too-wide',
    by: l('1/8'),
  });
  // no shop has one but of its own: it is tried last, and never among the tools
  const here: Shop = { ...shop, own: [table], order: ['table', 'fence'] };
  expect(toolOrder(here).filter((id) => id === 'table' || id === 'own3')).toEqual(['own3']);
  expect(waysFor(groove, 'router', here).at(-1)?.own?.id).toBe('own3');
});

test('where none can, what would do on it is said of it: 2 1/2 + 1/8, half is 1 5/16, within its 1 1/2', () => {
  const thick = rip('40', '2 1/2', '50');
  const small: Shop = { capacity: l('30'), tableHeight: l('1'), circularDepth: l('1'), own: [rail] };
  expect(remediesFor(thick, small)).toEqual([
    { code: 'both-faces', each: l('1 5/16'), own: rail },
    { code: 'relief-cut' },
  ]);
  // an old saw 2 high that reaches 52: turned over between, 1 5/16 each
  expect(remediesFor(thick, { capacity: l('30'), tableHeight: l('1'), own: [old] })).toEqual([
    { code: 'two-passes', each: l('1 5/16'), own: old },
    { code: 'relief-cut' },
  ]);
});

describe('a plunge saw on its guide', () => {
  const plunge: OwnMachine = {
    id: 'own4',
    name: 'Plunge saw',
    like: 'plunge',
    figures: { kerf: l('3/32'), circularDepth: l('2'), circularGuide: l('55') },
  };

  test('its teeth stand at the edge of its guide, on either side of the line, or so far off as was measured', () => {
    expect(shopAt({ ...shop, shoeKeep: l('5') }, plunge)).toMatchObject({
      shoeKeep: l('0'),
      shoeWaste: l('0'),
      atGuide: true,
      kerf: l('3/32'),
    });
    const off = { ...plunge, figures: { ...plunge.figures, guideEdge: l('1/8') } };
    expect(shopAt(shop, off)).toMatchObject({ shoeKeep: l('1/8'), shoeWaste: l('1/8') });
  });

  test('it takes what the circular saw takes, by its own figures: 60 long is 5 over its guide; 2 thick 1/8 too deep', () => {
    const here: Shop = { own: [plunge], capacity: l('10') };
    const ways = waysFor(rip('34', '2', '60'), 'fence', here);
    expect(ways.map(({ tool, own, lacks }) => [own?.id ?? tool, lacks.length])).toEqual([
      ['fence', 1],
      ['own4', 2],
    ]);
    expect(ways[1]?.lacks).toEqual([
      { code: 'short', field: 'circularGuide', by: l('5') },
      { code: 'short', field: 'circularDepth', by: l('1/8') },
    ]);
    const said: Shop = { ...here, order: ['own4', 'fence'] };
    expect(takerOf(rip('34', '3/4', '50'), 'fence', said)).toBe(plunge);
    expect([worksAs(plunge, 'circular'), worksAs(plunge, 'fence'), worksAs(old, 'fence')]).toEqual([
      true,
      false,
      true,
    ]);
  });
});
