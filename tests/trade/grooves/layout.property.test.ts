import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, inches, isNegative, sum } from '../../../src/length/length';
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
