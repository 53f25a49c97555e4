import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  absolute,
  add,
  compare,
  inches,
  type Length,
  less,
  subtract,
  sum,
  times,
} from '../../../src/length/length';
import type { Piece, StackStock } from '../../../src/trade/stacks/pieces';
import { pileFor } from '../../../src/trade/stacks/pile';
import { mostInOneGap, spreadShims } from '../../../src/trade/stacks/spread';
import { type Stack, stackFor } from '../../../src/trade/stacks/stack';
import { runs } from '../../runs';
import { testSet } from './test-set';

const thousandths = (n: number): Length => inches(BigInt(n), 1000n);

/** Sizes all unlike, so that a set is told by its counts. */
const boxes = fc
  .uniqueArray(
    fc.record({
      size: fc.integer({ min: 1, max: 30 }).map(thousandths),
      count: fc.integer({ min: 0, max: 3 }),
      kind: fc.constantFrom('chipper', 'shim' as const),
    }),
    { minLength: 1, maxLength: 5, selector: (p) => p.size.toFraction() },
  )
  .filter((pieces) => pieces.some((p) => p.count > 0));

type Set = { readonly counts: readonly number[]; readonly width: Length };

/** Every set of the pieces (sorted larger first), one by one. */
function everySet(pieces: readonly Piece[], base: Length): readonly Set[] {
  return pieces.reduce<readonly Set[]>(
    (sets, p) =>
      sets.flatMap(({ counts, width }) =>
        Array.from({ length: p.count + 1 }, (_, k) => ({
          counts: [...counts, k],
          width: add(width, times(p.size, BigInt(k))),
        })),
      ),
    [{ counts: [], width: base }],
  );
}

/** Which stack is the better, written out as a ranking of one set against another. */
function ranking(pieces: readonly Piece[], want: Length, first: 'pieces' | 'error') {
  const count = (s: Set) => s.counts.reduce((a, b) => a + b, 0);
  const shims = (s: Set) =>
    s.counts.reduce((total, k, at) => total + (pieces[at]?.kind === 'shim' ? k : 0), 0);
  const error = (a: Set, b: Set) =>
    compare(absolute(subtract(a.width, want)), absolute(subtract(b.width, want)));
  const larger = (a: Set, b: Set) => {
    for (let k = 0; k < pieces.length; k += 1) {
      const by = (b.counts[k] ?? 0) - (a.counts[k] ?? 0);
      if (by !== 0) return by;
    }
    return 0;
  };
  return (a: Set, b: Set): number => {
    const few = count(a) - count(b);
    const lead = first === 'pieces' ? few || error(a, b) : error(a, b) || few;
    return lead || shims(a) - shims(b) || compare(b.width, a.width) || larger(a, b);
  };
}

const countsOf = (stack: Stack | undefined, pieces: readonly Piece[]) =>
  stack && pieces.map((p) => stack.chosen.find((c) => c.size.equals(p.size))?.count ?? 0);

describe('stackFor', () => {
  test('finds what trying every set finds', () => {
    const asked = fc.record({
      pieces: boxes,
      want: fc.integer({ min: 500, max: 800 }).map((n) => inches(BigInt(n), 2000n)),
      under: fc.integer({ min: 0, max: 4 }).map(thousandths),
      over: fc.integer({ min: 0, max: 4 }).map(thousandths),
      correction: fc.integer({ min: -4, max: 0 }).map(thousandths),
      arbor: fc.option(fc.integer({ min: 250, max: 400 }).map(thousandths), { nil: undefined }),
    });
    fc.assert(
      fc.property(asked, ({ pieces, want, under, over, correction, arbor }) => {
        const sorted = [...pieces].sort((a, b) => compare(b.size, a.size));
        const stock: StackStock = { outer: inches(1n, 8n), pieces, correction, ...(arbor ? { arbor } : {}) };
        const all = everySet(sorted, add(inches(1n, 4n), correction));
        const carried = all.filter((s) => !arbor || !less(arbor, subtract(s.width, correction)));
        const inside = (s: Set) => !less(s.width, subtract(want, under)) && !less(add(want, over), s.width);
        const found = stackFor(stock, want, { under, over });
        const [fewest] = carried.filter(inside).sort(ranking(sorted, want, 'pieces'));
        const [nearest] = (fewest ? carried.filter(inside) : carried).sort(ranking(sorted, want, 'error'));
        if (found.ok) {
          const { closest } = found.value;
          expect(countsOf(found.value.fewest, sorted)).toEqual(fewest?.counts);
          expect(countsOf(closest ?? found.value.fewest, sorted)).toEqual(nearest?.counts);
          if (closest) expect(nearest).not.toBe(fewest);
          return;
        }
        expect(fewest).toBeUndefined();
        if (found.error.code === 'none-fits') {
          expect(countsOf(found.error.nearest, sorted)).toEqual(nearest?.counts);
          expect(found.error.by.equals(subtract(nearest?.width ?? want, want))).toBe(true);
          expect(all.some(inside)).toBe(false);
        } else expect(found.error.code).toBe('over-arbor');
      }),
      { numRuns: runs(200) },
    );
  });

  test('the piece it says is missing puts it right', () => {
    fc.assert(
      fc.property(boxes, fc.integer({ min: 500, max: 900 }), (pieces, n) => {
        const want = inches(BigInt(n), 2000n);
        const margin = { under: thousandths(0), over: thousandths(0) };
        const stock: StackStock = { outer: inches(1n, 8n), pieces };
        const found = stackFor(stock, want, margin);
        if (found.ok || found.error.code !== 'none-fits') return;
        const one: Piece = { size: found.error.fix.piece, count: 1, kind: 'shim' };
        expect(stackFor({ ...stock, pieces: [...pieces, one] }, want, margin).ok).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });

  test('never takes more of a size than lies in the box, and its pieces add up to its width', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2500, max: 8125 }), (n) => {
        const found = stackFor(testSet, inches(BigInt(n), 10000n));
        if (!found.ok) return;
        for (const stack of [found.value.fewest, found.value.closest ?? found.value.fewest]) {
          for (const c of stack.chosen)
            expect(testSet.pieces.find((p) => p.size.equals(c.size))?.count).toBeGreaterThanOrEqual(c.count);
          const between = sum(stack.chosen.map((c) => times(c.size, BigInt(c.count))));
          expect(add(inches(1n, 4n), between).equals(stack.width)).toBe(true);
        }
      }),
      { numRuns: runs(100) },
    );
  });
});

describe('pileFor', () => {
  test('is never over, and is what trying every pile finds', () => {
    const asked = fc.record({
      shims: boxes,
      gap: fc.integer({ min: 0, max: 120 }).map(thousandths),
      tol: fc.integer({ min: 0, max: 20 }).map(thousandths),
    });
    fc.assert(
      fc.property(asked, ({ shims, gap, tol }) => {
        const found = pileFor(gap, shims, tol);
        if (!found.ok) throw new Error(found.error.code);
        const { height, short, within, pieces } = found.value;
        expect(less(gap, height)).toBe(false);
        expect(add(height, short).equals(gap)).toBe(true);
        const all = everySet(shims, inches(0n)).filter((s) => !less(gap, s.width));
        const near = all.filter((s) => !less(tol, subtract(gap, s.width)));
        expect(within).toBe(near.length > 0);
        const count = (s: Set) => s.counts.reduce((a, b) => a + b, 0);
        const fewest = Math.min(...near.map(count));
        const pool = within ? near.filter((s) => count(s) === fewest) : all;
        expect(pool.some((s) => less(height, s.width))).toBe(false);
        expect(pieces).toBe(Math.min(...pool.filter((s) => s.width.equals(height)).map(count)));
      }),
      { numRuns: runs(200) },
    );
  });
});

describe('spreadShims', () => {
  test('puts every piece on the arbor once, between two outers, and leaves a ridge only where it must', () => {
    const some = fc.record({
      chippers: fc.integer({ min: 0, max: 2 }),
      shims: fc.uniqueArray(fc.integer({ min: 2, max: 24 }), { maxLength: 6 }),
    });
    fc.assert(
      fc.property(some, ({ chippers, shims }) => {
        const chosen: readonly Piece[] = [
          { size: inches(1n, 8n), count: chippers, kind: 'chipper' },
          ...shims.map((n): Piece => ({ size: thousandths(n), count: 1, kind: 'shim' })),
        ];
        const { order, ridges } = spreadShims({ outer: inches(1n, 8n), chosen });
        expect([order[0]?.kind, order.at(-1)?.kind]).toEqual(['outer', 'outer']);
        expect(order.length).toBe(2 + chippers + shims.length);
        const held = order.filter((o) => o.kind === 'shim').map((o) => Number(o.size.mul(1000n)));
        expect(held.sort((a, b) => a - b)).toEqual([...shims].sort((a, b) => a - b));
        const most = Number(mostInOneGap.mul(1000n));
        expect(ridges.length === 0).toBe(canShare(shims, Array(chippers + 1).fill(most)));
      }),
      { numRuns: runs(200) },
    );
  });
});

/** Whether the shims go into gaps with so much room each: every way tried. */
function canShare([shim, ...rest]: readonly number[], room: readonly number[]): boolean {
  if (shim === undefined) return true;
  return room.some(
    (r, at) =>
      r >= shim &&
      canShare(
        rest,
        room.map((x, k) => (k === at ? x - shim : x)),
      ),
  );
}
