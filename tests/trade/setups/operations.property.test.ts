import fc from 'fast-check';
import { expect, test } from 'vitest';
import { equals, inches, type Length, subtract } from '../../../src/length/length';
import type { Case, Inside } from '../../../src/trade/carcass/case';
import { partsOf } from '../../../src/trade/carcass/parts';
import type { Operation } from '../../../src/trade/setups/operation';
import { operationsOf } from '../../../src/trade/setups/operations';
import { orderSetups } from '../../../src/trade/setups/order/order';
import { l } from '../../length/write-figures';
import { runs } from '../../runs';
import { framedCase, sheets } from '../carcass/sample-case';

const within = (least: number, most: number) =>
  fc.integer({ min: least * 32, max: most * 32 }).map((n) => inches(BigInt(n), 32n));

const anyInside: fc.Arbitrary<Inside> = fc
  .oneof(
    fc.record({ kind: fc.constant('fixed' as const), at: within(8, 30) }),
    fc.record({ kind: fc.constant('loose' as const), count: fc.integer({ min: 1, max: 3 }) }),
    fc.record({
      kind: fc.constant('trays' as const),
      first: within(1, 4),
      pitch: fc.constant(l('6')),
      width: fc.constant(l('13/32')),
      depth: fc.constant(l('3/16')),
    }),
  )
  .map((i) => ({ id: 'x', bay: 1, ...i }));

const anyCase: fc.Arbitrary<Case> = fc
  .record({
    width: within(24, 48),
    height: within(36, 80),
    depth: within(10, 20),
    partitions: fc.integer({ min: 0, max: 2 }),
    hasTop: fc.boolean(),
    hasBack: fc.boolean(),
    hasFrame: fc.boolean(),
    hasToe: fc.boolean(),
    inside: fc.array(anyInside, { maxLength: 3 }),
  })
  .map(({ inside, ...rest }) => ({
    ...framedCase,
    ...rest,
    inside: inside.map((i, k) => ({ ...i, id: `i${k}`, bay: 1 + (k % (rest.partitions + 1)) })),
  }));

const worked = (c: Case) => {
  const found = partsOf(c, { stuff: sheets(), tape: '1/32' });
  return found.ok ? found.value.parts : undefined;
};

/** Every opening of the case read a sixteenth under what was planned, and taken up. */
const asBuilt = (c: Case): Case => {
  const used = (planned: Length) => ({ used: subtract(planned, inches(1n, 16n)) });
  const bays = [1, 2, 3].map((k) => [`bay${k}`, used(l('11'))] as const);
  const frames = [1, 2, 3].map((k) => [`frame${k}w`, used(l('10'))] as const);
  return {
    ...c,
    built: Object.fromEntries([...bays, ...frames, ['backw', used(l('23'))], ['backh', used(l('33'))]]),
  };
};

function waiting(operations: readonly Operation[], on: string): ReadonlySet<string> {
  const found = new Set([on]);
  for (let before = 0; before < found.size; ) {
    before = found.size;
    for (const op of operations) if (op.after.some((id) => found.has(id))) found.add(op.id);
  }
  return found;
}

test('a rip waits for the dry-fit where a measure moves its width, a length where one moves it; no fence stands twice', () => {
  let moved = 0;
  fc.assert(
    fc.property(anyCase, (c) => {
      const [planned, built] = [worked(c), worked(asBuilt(c))];
      if (!planned || !built) return;
      const operations = operationsOf(
        { parts: planned, cases: [c], hand: [], recuts: () => ({}) },
        { shop: {}, tape: '1/32' },
      );
      const late = waiting(operations, 'cut/c1~bench/dryfit/1');
      for (const part of planned) {
        const now = built.find((p) => p.id === part.id);
        if (!now) continue;
        const wider = !equals(now.width.sum.value, part.width.sum.value);
        const longer = !equals(now.length.sum.value, part.length.sum.value);
        const rips = operations.filter((op) => op.part === part.id && op.what === 'rip');
        expect(rips.map((op) => late.has(op.id))).toEqual(rips.map(() => wider));
        const lengths = operations.filter((op) => op.part === part.id && op.what === 'length');
        if (longer) expect(lengths.filter((op) => !late.has(op.id))).toEqual([]);
        if (longer) moved += 1;
      }
      const order = orderSetups(
        operations.map((op) => ({ id: op.id, build: op.setup.build, setup: op.setup.key, after: op.after })),
      );
      if (!order.ok) throw new Error(order.error.ring.join(' '));
      const byId = new Map(operations.map((op) => [op.id, op]));
      const fences = order.value.runs.filter(({ steps }) => byId.get(steps[0] ?? '')?.what === 'rip');
      expect(new Set(fences.map((run) => run.setup)).size).toBe(fences.length);
    }),
    { numRuns: runs(60) },
  );
  expect(moved).toBeGreaterThan(30);
});
