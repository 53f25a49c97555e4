import { describe, expect, test } from 'vitest';
import { partsOf } from '../../../src/trade/carcass/parts';
import type { Shop } from '../../../src/trade/machines/shop';
import type { Chosen } from '../../../src/trade/machines/through';
import { blockedBy } from '../../../src/trade/setups/checklist';
import { operationsOf } from '../../../src/trade/setups/operations';
import { ripTo } from '../../../src/trade/setups/through-cuts';
import { l, w } from '../../length/write-figures';
import { plainCase, sheets } from '../carcass/sample-case';

/** A side 64 1/4 long and 17 1/2 wide, of 23/32. */
const worked = partsOf(plainCase, { stuff: sheets(), tape: '1/32' });
if (!worked.ok) throw new Error('no case');
const { parts } = worked.value;

const saw: Shop = { kerf: l('1/8'), shoeKeep: l('5 1/32'), shoeWaste: l('1 7/16') };

function made(cut: 'rip' | 'len', shop: Shop, chosen: Chosen) {
  const ops = operationsOf(
    { parts, cases: [plainCase], hand: [], recuts: () => ({}) },
    { shop, tape: '1/32', chosen: (part) => (part === 'c1~left' ? chosen : {}) },
  );
  const op = ops.find(({ id }) => id === `cut/c1~left/${cut}/1`);
  if (!op) throw new Error(cut);
  return { op, ops };
}
const set = ({ op }: ReturnType<typeof made>) => [
  op.setup.machine,
  op.setup.figure && w(op.setup.figure.value),
];

describe('a rip moved to the circular saw', () => {
  const moved = made('rip', saw, { ripOn: 'saw' });

  test('is set by its guide, the shoe off the width: 17 1/2 − 5 1/32 = 12 15/32; its tick keeps the width', () => {
    expect(set(moved)).toEqual(['saw', '12 15/32']);
    expect(w(moved.op.figure)).toBe('17 1/2');
  });

  test('has the saw as deep as parts it, 1/8 through (common practice), 23/32 + 1/8 = 27/32', () =>
    expect(moved.op.setup.height && w(moved.op.setup.height)).toBe('27/32'));

  test('in a metric shop 3 mm through: 18 + 3 is 21, not 21.175 up to 22', () => {
    const [side] = parts;
    if (!side) throw new Error('no side');
    const chosen = (): Chosen => ({ ripOn: 'saw' });
    expect(
      ripTo({ ...side, thickness: l('18 mm') }, { shop: saw, tape: '1 mm', chosen }).setup.height,
    ).toEqual(l('21 mm'));
  });

  test('lies good face down, true edge at your left under the guide', () =>
    expect(moved.op.placing).toEqual({
      face: { named: 'good', lies: 'down' },
      measured: { at: 'edge', named: 'true' },
      stop: 'left',
    }));

  test('the other pieces stay where they are', () =>
    expect(moved.ops.find(({ id }) => id === 'cut/c1~right/rip/1')?.setup.machine).toBe('rip'));

  test('with the shoe of the other side alone the guide lies on the waste: 17 1/2 + 1/8 + 1 7/16 = 19 1/16', () => {
    const { shoeKeep: _, ...other } = saw;
    const far = made('rip', other, { ripOn: 'saw' });
    expect(set(far)).toEqual(['saw', '19 1/16']);
    expect(far.op.placing?.stop).toBe('right');
  });

  test('a guide that would lie past the true edge lies on the waste: a shoe of 18 on 17 1/2', () =>
    expect(set(made('rip', { ...saw, shoeKeep: l('18') }, { ripOn: 'saw' }))).toEqual(['saw', '19 1/16']));

  test.each<readonly [string, Shop, string]>([
    ['no shoe at all', { kerf: l('1/8') }, 'shoeKeep'],
    ['a shoe too wide, and none of the other side', { kerf: l('1/8'), shoeKeep: l('18') }, 'shoeWaste'],
    ['the shoe of the waste, and no kerf', { shoeWaste: l('1 7/16') }, 'kerf'],
  ])('%s: it is asked, and nothing is cut before', (_, shop, field) => {
    const { op, ops } = made('rip', shop, { ripOn: 'saw' });
    const doing = { done: () => false, let: () => true, measured: () => true };
    expect(blockedBy(op, new Map(ops.map((o) => [o.id, o])), doing)).toEqual([{ by: 'shop', field }]);
    expect(op.setup.figure).toBeUndefined();
  });
});

describe('a length moved to another machine', () => {
  test('circular saw: 64 1/4 − 5 1/32 = 59 7/32, the true edge toward you to square the guide from', () => {
    const moved = made('len', saw, { lengthOn: 'saw' });
    expect(set(moved)).toEqual(['saw', '59 7/32']);
    expect(moved.op.placing).toMatchObject({
      face: { named: 'good', lies: 'down' },
      measured: { at: 'end', named: 'squared' },
      toYou: { at: 'edge', named: 'true' },
    });
  });

  test('sliding saw: the stop at the length, the true edge on its far fence', () => {
    const moved = made('len', saw, { lengthOn: 'slidingcut' });
    expect(set(moved)).toEqual(['slidingcut', '64 1/4']);
    expect(moved.op.placing).toMatchObject({ toStop: { named: 'squared' }, fence: 'far' });
  });

  test('no test cut comes before a single blade', () =>
    expect(
      made('len', saw, { lengthOn: 'slidingcut' }).ops.some(
        (o) => o.what === 'test' && o.setup.machine === 'slidingcut',
      ),
    ).toBe(false));
});

describe('the shop’s own order', () => {
  const long: Shop = {
    ...saw,
    sledCross: l('24'),
    stopReach: l('32'),
    tableHeight: l('3'),
    circularDepth: l('2'),
    circularGuide: l('100'),
  };

  test('a side beyond the stop goes to the circular saw once an order is said, and not before', () => {
    expect(made('len', long, {}).op.setup.machine).toBe('crosscut');
    expect(made('len', { ...long, order: ['sled', 'circular'] }, {}).op.setup.machine).toBe('saw');
  });

  test('what was chosen for a part goes before it', () =>
    expect(made('len', { ...long, order: ['sled'] }, { lengthOn: 'crosscut' }).op.setup.machine).toBe(
      'crosscut',
    ));

  test('a saw whose guide cannot be set takes nothing unasked', () => {
    const { shoeKeep: _, shoeWaste: __, ...blank } = long;
    expect(made('len', { ...blank, order: ['circular'] }, {}).op.setup.machine).toBe('crosscut');
  });
});
