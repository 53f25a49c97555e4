import { describe, expect, test } from 'vitest';
import type { Need } from '../../../src/trade/machines/limits';
import type { Shop } from '../../../src/trade/machines/shop';
import { passedOver, takerOf, waysFor } from '../../../src/trade/machines/taker';
import { toolOrder } from '../../../src/trade/machines/tools';
import { l, w } from '../../length/write-figures';

const shop: Shop = {
  capacity: l('30'),
  tableHeight: l('3'),
  sledCross: l('22'),
  stopReach: l('32'),
  slidingCross: l('12'),
  slidingStop: l('72'),
  slidingHeight: l('2'),
  circularDepth: l('2 1/4'),
  circularGuide: l('100'),
};
const rip = (width: string): Need => ({
  cut: 'rip',
  width: l(width),
  thickness: l('23/32'),
  length: l('60'),
});
const cross = (length: string, width: string): Need => ({
  cut: 'crosscut',
  length: l(length),
  width: l(width),
  thickness: l('23/32'),
});

describe('toolOrder', () => {
  test('what is said comes first, what is not said after it as usual; each once', () => {
    expect(toolOrder({ order: ['router', 'sliding', 'router'] })).toEqual([
      'router',
      'sliding',
      'sled',
      'fence',
      'circular',
      'press',
      'plate',
    ]);
    // what a shop has only as machines of its own has no place of every shop's
    expect(toolOrder({ order: ['plunge', 'table', 'router'] })).toEqual(toolOrder({ order: ['router'] }));
  });
});

describe('takerOf', () => {
  test('while no order was said a cut stays on its usual machine, also where that is short', () =>
    expect([takerOf(rip('34'), 'fence', shop), takerOf(rip('20'), 'fence', shop)]).toEqual([
      'fence',
      'fence',
    ]));

  test('in an order said, the first that lacks nothing: 34 is 4 over the fence, 20 is within it', () => {
    const said = { ...shop, order: toolOrder({}) };
    expect([takerOf(rip('34'), 'fence', said), takerOf(rip('20'), 'fence', said)]).toEqual([
      'circular',
      'fence',
    ]);
  });

  test('the order is the user’s: what the sliding saw takes it takes before the sled', () => {
    const said: Shop = { ...shop, order: ['sliding', 'sled'] };
    // 10 wide is within 12; 18 wide is not, and 40 is beyond a stop at 32
    expect(takerOf(cross('20', '10'), 'sled', said)).toBe('sliding');
    expect(takerOf(cross('20', '18'), 'sled', said)).toBe('sled');
    expect(takerOf(cross('40', '18'), 'sled', said)).toBe('circular');
  });

  test('where none can, and where its own figures are blank, the usual machine keeps it', () => {
    const said: Shop = { ...shop, order: toolOrder({}) };
    const thick: Need = { cut: 'crosscut', length: l('40'), width: l('18'), thickness: l('4') };
    expect(takerOf(thick, 'sled', said)).toBe('sled');
    expect(takerOf(rip('34'), 'fence', { order: toolOrder({}) })).toBe('fence');
  });
});

describe('passedOver', () => {
  test('those tried before the one that takes it, with what each lacks', () => {
    const passed = passedOver(cross('43 5/8', '24'), 'circular', shop);
    expect(
      passed.map(({ tool, lacks }) => [tool, lacks.map((lack) => ('by' in lack ? w(lack.by) : ''))]),
    ).toEqual([
      // 24 − 22, and 43 5/8 − 32
      ['sled', ['2', '11 5/8']],
      // 24 − 12
      ['sliding', ['12']],
    ]);
    expect(passedOver(cross('20', '10'), 'sled', shop)).toEqual([]);
  });
});

describe('waysFor', () => {
  test('others are offered in the user’s order', () => {
    const groove: Need = { cut: 'groove', near: l('10'), width: l('3/4'), depth: l('1/4'), across: l('10') };
    const said: Shop = { ...shop, order: ['sliding', 'fence'] };
    expect(waysFor(groove, 'sled', said).map(({ tool }) => tool)).toEqual(['sled', 'sliding', 'fence']);
  });
});

test('a stopped groove off the usual router table: a table of the shop that lacks something was tried before, once an order is said', () => {
  const own = [
    {
      id: 'own1',
      name: 'Table',
      like: 'table',
      figures: { capacity: l('10'), bit: l('3/8'), routerReach: l('1') },
    },
  ] as const;
  const need: Need = { cut: 'stopped', near: l('2'), width: l('1/4'), depth: l('1/4'), across: l('40') };
  expect(passedOver(need, 'table', { own })).toEqual([]);
  const said: Shop = { own, order: ['own1'] };
  expect(takerOf(need, 'table', said)).toBe('table');
  // 3/8 − 1/4
  expect(passedOver(need, 'table', said).map(({ lacks }) => lacks)).toEqual([
    [{ code: 'cutter-too-wide', by: l('1/8') }],
  ]);
  expect(takerOf({ ...need, width: l('3/8') }, 'table', said)).toBe(own[0]);
});
