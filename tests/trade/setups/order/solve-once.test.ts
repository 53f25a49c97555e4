import fc from 'fast-check';
import { expect, test } from 'vitest';
import { solve } from '../../../../src/trade/setups/order/solve';
import { solveOnce } from '../../../../src/trade/setups/order/solve-once';
import { runs } from '../../../runs';

/** Few numbers, so that the same graph is asked for again, and one that differs from it by one wait alone. */
const graph = fc
  .tuple(fc.array(fc.nat(2), { minLength: 1, maxLength: 5 }), fc.infiniteStream(fc.boolean()))
  .map(([setupOf, toss]) => ({
    setupOf,
    buildOf: setupOf.map((setup) => (setup === 2 ? 1 : 0)),
    before: setupOf.map((_, k) => [...Array(k).keys()].filter(() => toss.next().value)),
  }));

const once = solveOnce<ReturnType<typeof solve>>();

test('an order found before is the one that would be found now, whatever was asked in between', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(graph, fc.constantFrom(0, 50)), { minLength: 1, maxLength: 12 }),
      (asked) => {
        for (const [one, effort] of [...asked, ...asked])
          expect(once(one, effort, () => solve(one, { left: effort }))).toEqual(solve(one, { left: effort }));
      },
    ),
    { numRuns: runs(300) },
  );
});
