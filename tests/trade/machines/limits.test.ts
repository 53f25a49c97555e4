import { describe, expect, test } from 'vitest';
import { isClear, lacksOf, type Need, type Reach, type Way } from '../../../src/trade/machines/limits';
import { remediesFor } from '../../../src/trade/machines/remedies';
import { waysFor } from '../../../src/trade/machines/taker';
import { l, w } from '../../length/write-figures';

/** The shop of the worked examples; heights of the saws and the arbors are ours, high and wide enough for all. */
const shop: Reach = {
  capacity: l('30'),
  sledCross: l('22'),
  stopReach: l('32'),
  slidingCross: l('12'),
  slidingStop: l('72'),
  bit: l('1/2'),
  routerReach: l('7/8'),
  routerGuide: l('52'),
  circularDepth: l('2 1/4'),
  circularGuide: l('100'),
  tableHeight: l('3'),
  slidingHeight: l('2'),
  slidingStack: l('13/16'),
  arbor: l('13/16'),
};

const lackOf = ({ lacks }: Way): readonly string[] =>
  lacks.map((lack) =>
    lack.code === 'short'
      ? `${lack.field} ${w(lack.by)}`
      : 'by' in lack
        ? `${lack.code} ${w(lack.by)}`
        : lack.code,
  );
const told = (ways: readonly Way[]): readonly string[] =>
  ways.map((way) => [way.tool, way.from, ...lackOf(way)].join(' '));
const taking = (need: Need, planned?: Way['tool']) => waysFor(need, planned, shop).find(isClear);

describe('waysFor', () => {
  test('a rip of 34 off 48: the fence is 4 short, and reaches by the other edge at 13 7/8', () => {
    const need: Need = { cut: 'rip', width: l('34'), thickness: l('23/32') };
    expect(lackOf(lacksOf(need, 'fence', shop))).toEqual(['capacity 4']);
    const way = taking({ ...need, rest: l('13 7/8') });
    expect([way?.tool, way?.from, way?.figure && w(way.figure)]).toEqual(['fence', 'other', '13 7/8']);
  });

  test('a crosscut of 66 1/2 off 96, 18 3/4 wide: the sled, with the other piece at 29 3/8', () => {
    const need: Need = { cut: 'crosscut', length: l('66 1/2'), width: l('18 3/4'), rest: l('29 3/8') };
    const way = taking({ ...need, thickness: l('23/32') });
    expect([way?.tool, way?.from, way?.figure && w(way.figure)]).toEqual(['sled', 'other', '29 3/8']);
  });

  test('a crosscut of 43 5/8 off 96, 24 wide: sled and sliding saw say what they lack, the circular saw takes it', () => {
    const need: Need = { cut: 'crosscut', length: l('43 5/8'), width: l('24'), rest: l('52 1/4') };
    expect(told(waysFor({ ...need, thickness: l('23/32') }, 'sled', shop))).toEqual([
      'sled reference sledCross 2 stopReach 11 5/8',
      'sliding reference slidingCross 12',
      'circular reference',
    ]);
  });

  const dado = { cut: 'groove', width: l('23/32'), depth: l('1/4'), length: l('66 1/2') } as const;

  test('a dado at 20 5/16, 18 3/4 along the fence: it would turn by 2 9/32 there, and the sled makes it at once', () => {
    const need: Need = { ...dado, near: l('20 5/16'), across: l('18 3/4') };
    expect(lackOf(lacksOf(need, 'fence', shop))).toEqual(['unsteady 2 9/32']);
    const way = taking(need, 'fence');
    expect([way?.tool, way?.from, way?.lines]).toEqual(['sled', 'reference', 1]);
  });

  test('a dado at 33 1/4 on 24: nearer from the other end, and still for the router, in two lines and two depths', () => {
    const need: Need = { ...dado, near: l('33 1/4'), across: l('24') };
    expect(told(waysFor(need, 'fence', shop))).toEqual([
      // 24 along it where the far teeth stand 33 1/4 off: it would turn as well
      'fence other capacity 2 17/32 unsteady 9 1/4',
      'sled other sledCross 2 stopReach 17/32',
      'sliding reference slidingCross 12',
      'router reference',
    ]);
    const router = taking(need);
    expect([router?.lines, router?.depths]).toEqual([2, 2]);
  });

  test('a groove 7/16 × 15/16 deep at 33 1/4 on 70 × 24: none; a bit that fits and reaches would', () => {
    const need: Need = {
      cut: 'groove',
      near: l('33 1/4'),
      width: l('7/16'),
      depth: l('15/16'),
      length: l('70'),
      across: l('24'),
    };
    const ways = waysFor(need, 'sled', shop);
    expect(told(ways)).toEqual([
      'sled reference sledCross 2 stopReach 1 1/4',
      'fence reference capacity 3 1/4 unsteady 9 11/16',
      'sliding reference slidingCross 12',
      'router reference cutter-too-wide 1/16 routerReach 1/16',
    ]);
    const [remedy] = remediesFor(need, shop);
    expect(remedy).toEqual({ code: 'bit', most: l('7/16'), reach: l('15/16') });
    const better = { ...shop, bit: l('3/8'), routerReach: l('15/16') };
    expect(waysFor(need, 'sled', better).find(isClear)?.tool).toBe('router');
  });

  test('stock 2 1/2 under a saw that cuts 2 1/4: short 3/8, or from both faces at 1 5/16', () => {
    const need: Need = { cut: 'crosscut', length: l('40'), width: l('20'), thickness: l('2 1/2') };
    expect(lackOf(lacksOf(need, 'circular', shop))).toEqual(['circularDepth 3/8']);
    expect(remediesFor(need, shop)).toContainEqual({ code: 'both-faces', each: l('1 5/16') });
  });

  test('a length of 29 1/2 off a block 3/4 thick: a fence that goes to 30 is short 1/4', () => {
    const block = { ...shop, block: l('3/4') };
    const need = (length: string): Need => ({ cut: 'crosscut', length: l(length) });
    const made = (length: string) => remediesFor(need(length), block).some((x) => x.code === 'block');
    expect([made('29 1/4'), made('29 1/2')]).toEqual([true, false]);
    expect(remediesFor(need('29'), block)).toContainEqual({ code: 'block', longest: l('29 1/4') });
  });

  test('a part 10 along the fence with its teeth at 11 1/4 turns: short 1 1/4', () => {
    const need: Need = { cut: 'groove', near: l('10 3/4'), width: l('1/2'), across: l('10') };
    expect(lackOf(lacksOf(need, 'fence', shop))).toEqual(['unsteady 1 1/4']);
  });

  test('a figure that is blank is asked, and no machine with one takes the cut', () => {
    const need: Need = { cut: 'rip', width: l('20'), thickness: l('23/32') };
    const { tableHeight: _, ...blank } = shop;
    expect(lacksOf(need, 'fence', blank)).toMatchObject({
      lacks: [],
      asks: [{ field: 'tableHeight', wants: l('27/32') }],
    });
    expect(waysFor(need, 'fence', { capacity: l('30') }).find(isClear)).toBeUndefined();
  });

  test('a machine of which the shop says nothing is not offered; the planned one is, with what it asks', () => {
    const need: Need = { cut: 'crosscut', length: l('20'), width: l('10'), thickness: l('3/4') };
    const ways = waysFor(need, 'sled', {});
    expect(ways.map(({ tool, asks }) => [tool, asks.map((ask) => ask.field)])).toEqual([
      ['sled', ['sledCross', 'stopReach', 'tableHeight']],
    ]);
  });

  test('a sliding saw takes no stack unless its arbor is said to, and a groove wider than an arbor takes two passes', () => {
    const { slidingStack: _, ...bare } = shop;
    const need: Need = { cut: 'groove', near: l('10'), width: l('1'), across: l('10') };
    expect(lackOf(lacksOf(need, 'sliding', bare))).toEqual(['no-stack']);
    expect(lacksOf(need, 'sled', shop).lines).toBe(2);
  });
});
