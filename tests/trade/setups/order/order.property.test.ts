import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Order, orderSetups, type Step } from '../../../../src/trade/setups/order/order';
import { runs } from '../../../runs';

/** Steps drawn so that none waits on a later one: there is no ring. Setup 0 and 1 are of build 0, and so on. */
function drawn(most: number, setups: number, builds: number): fc.Arbitrary<readonly Step[]> {
  const step = fc.record({
    setup: fc.nat(setups - 1),
    waits: fc.array(fc.nat(most - 1), { maxLength: 3 }),
  });
  return fc.array(step, { maxLength: most }).map((list) =>
    list.map(({ setup, waits }, k) => ({
      id: `s${k}`,
      setup: `setup ${setup}`,
      build: `build ${setup % builds}`,
      after: [...new Set(waits.filter((w) => w < k).map((w) => `s${w}`))],
    })),
  );
}

const small = fc
  .tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 3 }))
  .chain(([setups, builds]) => drawn(9, setups, builds));

/** In another order: the list need not keep any `after`. */
const mixed = small.chain((steps) =>
  fc.shuffledSubarray([...steps], { minLength: steps.length, maxLength: steps.length }),
);

const solved = (steps: readonly Step[], effort?: number): Order => {
  const result = orderSetups(steps, effort);
  if (!result.ok) throw new Error(result.error.ring.join());
  return result.value;
};

const changes = (names: readonly string[]): number =>
  names.filter((name, k) => k === 0 || name !== names[k - 1]).length;

/** Fewest builds and fewest runs over every order there is, by trying each. Nothing here is taken from the solver. */
function tried(steps: readonly Step[]) {
  let bestBuilds = Number.POSITIVE_INFINITY;
  let bestRuns = Number.POSITIVE_INFINITY;
  let leastRuns = Number.POSITIVE_INFINITY;
  const placed: Step[] = [];
  const go = (builds: number, count: number): void => {
    if (placed.length === steps.length) {
      leastRuns = Math.min(leastRuns, count);
      if (builds < bestBuilds || (builds === bestBuilds && count < bestRuns)) {
        bestBuilds = builds;
        bestRuns = count;
      }
    }
    if (builds > bestBuilds && count >= leastRuns) return;
    const last = placed[placed.length - 1];
    for (const step of steps) {
      if (placed.includes(step)) continue;
      if (!step.after.every((id) => placed.some((p) => p.id === id))) continue;
      placed.push(step);
      go(builds + (last?.build === step.build ? 0 : 1), count + (last?.setup === step.setup ? 0 : 1));
      placed.pop();
    }
  };
  go(0, 0);
  return { builds: bestBuilds, runs: bestRuns, leastRuns };
}

function expectWhole(steps: readonly Step[], order: Order): void {
  const laid = order.runs.flatMap((run) => run.steps);
  expect([...laid].sort()).toEqual(steps.map((s) => s.id).sort());
  const place = new Map(laid.map((id, k) => [id, k]));
  const byId = new Map(steps.map((s) => [s.id, s]));
  for (const run of order.runs) {
    for (const id of run.steps) {
      const step = byId.get(id);
      expect([step?.setup, step?.build]).toEqual([run.setup, run.build]);
      for (const before of step?.after ?? []) {
        if (byId.has(before)) expect(place.get(before)).toBeLessThan(place.get(id) ?? -1);
      }
    }
  }
  expect(changes(order.runs.map((run) => run.setup))).toBe(order.runs.length);
  expect(changes(order.runs.map((run) => run.build))).toBe(order.builds);
}

describe('orderSetups', () => {
  test('has as few builds, and then as few runs, as the best of all orders', () => {
    fc.assert(
      fc.property(fc.oneof(small, mixed), (steps) => {
        fc.pre(steps.length > 0);
        const order = solved(steps);
        const best = tried(steps);
        expect({ builds: order.builds, runs: order.runs.length }).toEqual({
          builds: best.builds,
          runs: best.runs,
        });
        expect(order.proved).toBe(true);
        expect(order.leastBuilds).toBe(best.builds);
        expect(order.leastRuns).toBeLessThanOrEqual(best.leastRuns);
      }),
      { numRuns: runs(100) },
    );
  });

  test('with no effort still keeps every after, and claims nothing that is not so', () => {
    fc.assert(
      fc.property(mixed, fc.nat(3), (steps, effort) => {
        fc.pre(steps.length > 0);
        const order = solved(steps, effort);
        expectWhole(steps, order);
        const best = tried(steps);
        expect(order.leastBuilds).toBeLessThanOrEqual(best.builds);
        expect(order.leastRuns).toBeLessThanOrEqual(best.leastRuns);
        if (order.proved) expect([order.builds, order.runs.length]).toEqual([best.builds, best.runs]);
      }),
      { numRuns: runs(100) },
    );
  });

  const larger = fc
    .tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 5 }))
    .chain(([setups, builds]) => drawn(60, setups, builds));

  test('does every step once, each after all it waits on, in runs that do not touch', () => {
    fc.assert(
      fc.property(larger, (steps) => expectWhole(steps, solved(steps, 100))),
      { numRuns: runs(100) },
    );
  });

  test('gives the same order every time', () => {
    fc.assert(
      fc.property(larger, (steps) => {
        expect(solved(steps, 100)).toEqual(solved(steps, 100));
      }),
      { numRuns: runs(50) },
    );
  });

  test('keeps an order that is already as good as can be', () => {
    fc.assert(
      fc.property(larger, (steps) => {
        const order = solved(steps, 100);
        fc.pre(order.proved);
        const byId = new Map(steps.map((s) => [s.id, s]));
        const again = order.runs.flatMap((run) => run.steps).flatMap((id) => byId.get(id) ?? []);
        expect(solved(again, 100).runs).toEqual(order.runs);
      }),
      { numRuns: runs(100) },
    );
  });

  test('keeps its setups in turn when a step more rides along in one of them', () => {
    fc.assert(
      fc.property(larger, fc.nat(59), (steps, which) => {
        const like = steps[which % Math.max(1, steps.length)];
        const order = solved(steps, 100);
        fc.pre(like !== undefined && order.proved);
        if (!like) return;
        const byId = new Map(steps.map((s) => [s.id, s]));
        const laid = order.runs.flatMap((run) => run.steps).flatMap((id) => byId.get(id) ?? []);
        const longer = solved([...laid, { ...like, id: 'one more', after: [] }], 100);
        expect(longer.runs.map((run) => run.setup)).toEqual(order.runs.map((run) => run.setup));
      }),
      { numRuns: runs(100) },
    );
  });

  test('leaves the rest as it is when copies of a step are added', () => {
    fc.assert(
      fc.property(larger, fc.nat(59), fc.integer({ min: 1, max: 5 }), (steps, which, copies) => {
        const like = steps[which % Math.max(1, steps.length)];
        fc.pre(like !== undefined);
        if (!like) return;
        const names = Array.from({ length: copies }, (_, k) => `copy ${k}`);
        const more = steps.flatMap((s) => {
          const waits = s.after.includes(like.id) ? { ...s, after: [...s.after, ...names] } : s;
          return s === like ? [waits, ...names.map((id) => ({ ...like, id }))] : [waits];
        });
        const order = solved(steps, 100);
        const longer = solved(more, 100);
        expect([longer.builds, longer.runs.length]).toEqual([order.builds, order.runs.length]);
        expect(
          longer.runs.map((run) => [run.setup, ...run.steps.filter((id) => !names.includes(id)).sort()]),
        ).toEqual(order.runs.map((run) => [run.setup, ...[...run.steps].sort()]));
      }),
      { numRuns: runs(100) },
    );
  });
});
