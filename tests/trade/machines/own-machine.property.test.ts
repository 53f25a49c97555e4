import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches } from '../../../src/length/length';
import { isClear, lacksOf, type Need } from '../../../src/trade/machines/limits';
import { ownFields, shopAt } from '../../../src/trade/machines/own-machine';
import type { OwnField, OwnMachine, Shop, Tool } from '../../../src/trade/machines/shop';
import { passedOver, takerOf } from '../../../src/trade/machines/taker';
import { setupOf } from '../../../src/trade/setups/setup';
import { runs } from '../../runs';

const tools: readonly Tool[] = [
  'fence',
  'sled',
  'sliding',
  'router',
  'circular',
  'press',
  'plate',
  'table',
  'plunge',
];
const size = fc.integer({ min: 1, max: 8 * 60 }).map((n) => inches(BigInt(n), 8n));
const maybe = fc.option(size, { nil: undefined });

const machine = (k: number): fc.Arbitrary<OwnMachine> =>
  fc
    .constantFrom(...tools)
    .chain((like) =>
      fc
        .record(Object.fromEntries(ownFields[like].map((field) => [field, maybe])))
        .map((figures): OwnMachine => ({ id: `own${k}`, name: `No. ${k}`, like, figures })),
    );

const usualFields: readonly OwnField[] = [
  'capacity',
  'tableHeight',
  'sledCross',
  'stopReach',
  'circularDepth',
];
const anyShop: fc.Arbitrary<Shop> = fc
  .record({
    usual: fc.record(Object.fromEntries(usualFields.map((field) => [field, maybe]))),
    own: fc.tuple(machine(1), machine(2), machine(3)),
    order: fc.shuffledSubarray(['fence', 'circular', 'own1', 'own2', 'own3', 'own9'] as const),
  })
  .map(({ usual, own, order }) => ({ ...usual, own, order }));

const anyRip: fc.Arbitrary<Need> = fc
  .record({ width: size, length: maybe, thickness: maybe })
  .map((piece) => ({ cut: 'rip', ...piece }));

describe('any shop with three machines of its own', () => {
  test('a rip goes to one that lacks nothing and of which nothing is left to ask, else it stays; those before it lack', () =>
    fc.assert(
      fc.property(anyShop, anyRip, (shop, need) => {
        const taker = takerOf(need, 'fence', shop);
        if (taker !== 'fence') expect(isClear(lacksOf(need, taker, shop))).toBe(true);
        for (const before of passedOver(need, taker, shop)) expect(before.lacks.length).toBeGreaterThan(0);
        // a machine is held against its own figures alone: the shop's, whatever they are, change nothing of it
        if (typeof taker === 'object') {
          const { capacity: _, circularDepth: __, ...other } = shop;
          expect(lacksOf(need, taker, other)).toEqual(lacksOf(need, taker, shop));
        }
      }),
      { numRuns: runs(200) },
    ));

  test('no figure of the shop stands in for a blank one of its own', () =>
    fc.assert(
      fc.property(anyShop, (shop) => {
        for (const one of shop.own ?? []) {
          const at: Readonly<Partial<Record<OwnField, unknown>>> = shopAt(shop, one);
          for (const field of ownFields[one.like]) expect(at[field]).toBe(one.figures[field]);
        }
      }),
      { numRuns: runs(200) },
    ));

  test('one figure at two machines has two keys and two builds, and none of them that of the usual one', () =>
    fc.assert(
      fc.property(size, (x) => {
        const at = (id?: `own${string}`) =>
          setupOf({
            machine: 'rip',
            own: id && { id, name: '', like: 'fence' },
            sets: 'rip-fence',
            figure: { value: x, rest: inches(0n) },
            on: { at: 'true-edge' },
          });
        const made = [at(), at('own1'), at('own2'), at('own12345678abcd')];
        expect(new Set(made.map(({ key }) => key)).size).toBe(4);
        expect(new Set(made.map(({ build }) => build)).size).toBe(4);
      }),
      { numRuns: runs(100) },
    ));
});
