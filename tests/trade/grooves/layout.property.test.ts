import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, inches, isNegative, isPositive, less, sum } from '../../../src/length/length';
import { farOf, onFace, overlapOf } from '../../../src/trade/grooves/lands';
import { fromOther, isMirror, layOut } from '../../../src/trade/grooves/lay-out';
import type { Groove } from '../../../src/trade/grooves/layout';
import { runs } from '../../runs';
import { board, l, run, wide } from './sample';

const length = l('60 1/4');
const sixteenths = (min: number, max: number) => fc.integer({ min, max }).map((n) => inches(BigInt(n), 16n));

const boards = fc
  .record({
    first: sixteenths(0, 200),
    pitch: sixteenths(9, 60),
    wideAt: fc.array(sixteenths(0, 14), { maxLength: 3 }),
    point: fc.constantFrom('near', 'centre', 'far' as const),
    centred: fc.boolean(),
  })
  .map(({ first, pitch, wideAt, point, centred }) =>
    board({
      length,
      runs: [
        run({
          spacing: 'fill',
          width: l('1/2'),
          depth: l('1/4'),
          first,
          pitch,
          point,
          centred,
          endRoom: l('1'),
        }),
      ],
      wides: wideAt.map((off, k) =>
        wide({
          id: `w${k}`,
          near: add(inches(BigInt(4 + 18 * k)), off),
          width: l('23/32'),
          depth: l('9/32'),
        }),
      ),
    }),
  );

/** Runs of every kind on both faces, good and bad alike. */
const anyRun = fc
  .record({
    spacing: fc.constantFrom('pitch', 'fill', 'openings', 'given' as const),
    face: fc.constantFrom('A', 'B' as const),
    point: fc.constantFrom('near', 'centre', 'far' as const),
    width: sixteenths(4, 20),
    count: fc.integer({ min: 1, max: 12 }),
    pitch: sixteenths(4, 160),
    first: sixteenths(-8, 480),
    span: fc.option(sixteenths(16, 1000), { nil: undefined }),
    at: fc.array(sixteenths(0, 980), { minLength: 1, maxLength: 4 }),
  })
  .map((over) => run({ ...over, depth: l('1/4'), part: l('1/4') }));

const anyBoards = fc.tuple(anyRun, anyRun, sixteenths(0, 40)).map(([a, b, datum]) =>
  board({
    length,
    datum,
    thickness: l('23/32'),
    runs: [
      { ...a, id: 'a' },
      { ...b, id: 'b' },
    ],
  }),
);

const turned = (g: Groove): Groove => ({ ...g, near: fromOther(length, g.near, g.width) });

describe('layOut, whatever is asked', () => {
  test('leaves no overlap within a face once the dropped are gone', () => {
    const property = fc.property(boards, (b) => {
      const on = onFace(layOut(b).grooves, 'A');
      on.slice(1).forEach((g, k) => {
        const before = on[k];
        expect(before && overlapOf(before, g).compare(0n) <= 0).toBe(true);
      });
    });
    fc.assert(property, { numRuns: runs(300) });
  });

  test('loses no groove: kept and dropped together are all that were placed', () => {
    const property = fc.property(boards, (b) => {
      const { grooves, dropped, facts } = layOut(b);
      expect(grooves.filter((g) => !g.wide).length + dropped.length).toBe(facts[0]?.nears.length);
    });
    fc.assert(property, { numRuns: runs(300) });
  });

  test('near edge, width and what is left beyond add up to the length; without problems none sticks out', () => {
    const property = fc.property(boards, (b) => {
      const { grooves, problems } = layOut(b);
      for (const g of grooves) {
        const rest = fromOther(length, g.near, g.width);
        expect(sum([g.near, g.width, rest]).equals(length)).toBe(true);
        if (problems.length === 0) {
          expect(isNegative(g.near) || isNegative(rest)).toBe(false);
          expect(farOf(g).lte(length)).toBe(true);
        }
      }
    });
    fc.assert(property, { numRuns: runs(300) });
  });

  test('what is not refused can be cut: all on the board, none into another, on either face', () => {
    const property = fc.property(anyBoards, (b) => {
      const { grooves, problems } = layOut(b);
      const sticksOut = grooves.some((g) => isNegative(g.near) || less(length, farOf(g)));
      const meets = grooves.some((g, k) =>
        grooves.slice(k + 1).some((h) => g.face === h.face && isPositive(overlapOf(g, h))),
      );
      const named = problems.some((p) => ['off-the-end', 'past-the-end', 'overlap'].includes(p.code));
      expect(named).toBe(sticksOut || meets);
    });
    fc.assert(property, { numRuns: runs(300) });
  });

  test('a start that is offered lets the whole run fit', () => {
    const property = fc.property(anyRun, sixteenths(0, 40), (r, datum) => {
      const b = board({ length, datum, runs: [r] });
      for (const p of layOut(b).problems) {
        if (p.code !== 'past-the-end' || isNegative(p.startAt)) continue;
        const moved = layOut(board({ ...b, runs: [{ ...r, first: p.startAt }] }));
        expect(moved.problems).toEqual([]);
        expect(moved.grooves.length).toBeGreaterThan(p.fits);
      }
    });
    fc.assert(property, { numRuns: runs(500) });
  });

  test('turned end for end twice is the same board, and one with its own mirror is safe', () => {
    const property = fc.property(boards, (b) => {
      const { grooves } = layOut(b);
      expect(grooves.map((g) => turned(turned(g)).near.toFraction())).toEqual(
        grooves.map((g) => g.near.toFraction()),
      );
      const once = grooves.map(turned).reverse();
      expect(isMirror(once, length)).toBe(isMirror(grooves, length));
    });
    fc.assert(property, { numRuns: runs(200) });
  });

  test('a run alone, centred from equal ends, is end-for-end safe', () => {
    const property = fc.property(sixteenths(9, 60), (pitch) => {
      const runs = [
        run({ spacing: 'fill', width: l('1/2'), first: l('1'), endRoom: l('1'), pitch, centred: true }),
      ];
      expect(layOut(board({ length, runs })).endForEndSafe).toBe(true);
    });
    fc.assert(property, { numRuns: runs(100) });
  });
});
