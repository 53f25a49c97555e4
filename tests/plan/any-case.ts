import fc from 'fast-check';
import {
  editBoard,
  editCase,
  editInside,
  editJob,
  editReading,
  editRun,
  editStock,
  editWide,
} from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { add, inches, type Length } from '../../src/length/length';
import { tapes } from '../../src/length/tape';
import { l } from '../length/write-figures';

const whole = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((n) => inches(BigInt(n)));

/** Off the marks of any tape: whole inches and some 127ths, 64ths or thousandths. */
const uneven = (least: number, most: number): fc.Arbitrary<Length> =>
  fc
    .tuple(whole(least, most - 1), fc.constantFrom(1n, 64n, 127n, 1000n), fc.bigInt({ min: 0n, max: 999n }))
    .map(([x, d, n]) => add(x, inches(n % d, d)));

const thickness = fc.constantFrom('23/32', '0.714', '18 mm', '0.7105', '3/4').map(l);
const tape = fc.constantFrom(...tapes);

const inside = fc.record({
  fixed: fc.integer({ min: 0, max: 3 }),
  loose: fc.integer({ min: 0, max: 2 }),
  trays: fc.boolean(),
});

/** A case with what may stand in it and go round it, and a pair of boards laid out by hand. */
export const anyCase: fc.Arbitrary<readonly Change[]> = fc
  .record({
    tape,
    side: thickness,
    other: thickness,
    width: uneven(28, 60),
    height: uneven(40, 80),
    depth: uneven(10, 24),
    feet: fc.constantFrom('0', '3', '4 1/8').map(l),
    partitions: fc.integer({ min: 0, max: 2 }),
    hasTop: fc.boolean(),
    hasBack: fc.boolean(),
    hasFrame: fc.boolean(),
    hasToe: fc.boolean(),
    bottomJoint: fc.constantFrom('dado', 'butt', 'over' as const),
    topJoint: fc.constantFrom('rabbet', 'dado', 'butt', 'over' as const),
    sidePast: fc.constantFrom('0', '1 1/2', '2 1/127').map(l),
    partitionJoint: fc.constantFrom('dado', 'butt' as const),
    shelfJoint: fc.constantFrom('dado', 'butt' as const),
    cleats: fc.integer({ min: 0, max: 2 }),
    inside,
    machine: fc.constantFrom('stop', 'fence', 'router', 'saw', 'pencil'),
    stopSide: fc.constantFrom('left' as const, 'right' as const),
    readThicker: fc.boolean(),
  })
  .map(
    ({
      tape: marks,
      side,
      other,
      inside: within,
      machine: _,
      stopSide,
      readThicker,
      bottomJoint,
      ...own
    }) => [
      ...editJob({ name: 'Any', tape: marks }),
      ...editStock('a', { name: 'Sheet A', used: side }),
      ...editStock('b', { name: 'Sheet B', used: other }),
      // read since, and not taken up
      ...(readThicker ? editReading('b', 'r1', { size: add(other, inches(1n, 50n)) }) : []),
      ...editStock('thin', { name: 'Thin', used: l('7/32') }),
      ...editStock('oak', { name: 'Oak', kind: 'stick', used: l('3/4') }),
      ...editCase('c', {
        ...own,
        // a case with feet has no bottom under its sides
        bottomJoint: bottomJoint === 'over' && own.feet.n !== 0n ? 'butt' : bottomJoint,
        sideStock: 'a',
        bottomStock: 'b',
        topStock: 'b',
        partitionStock: 'b',
        shelfStock: 'a',
        backStock: 'thin',
        trayStock: 'thin',
        frameStock: 'oak',
      }),
      ...Array.from({ length: within.fixed }, (_, k) =>
        editInside('c', `f${k}`, {
          kind: 'fixed',
          bay: (k % (own.partitions + 1)) + 1,
          at: inches(BigInt(9 * (k + 1))),
        }),
      ).flat(),
      ...(within.loose > 0 ? editInside('c', 'l1', { kind: 'loose', bay: 1, count: within.loose }) : []),
      ...(within.trays
        ? editInside('c', 't1', {
            kind: 'trays',
            bay: own.partitions + 1,
            first: l('2 1/8'),
            pitch: l('5 13/16'),
            endRoom: l('2'),
            width: l('9/32'),
            depth: l('3/16'),
          })
        : []),
      ...editBoard('pair', {
        name: 'Ends',
        made: 'pair',
        copies: 2,
        length: own.width,
        across: own.depth,
        thickness: side,
        end: 'bottom',
        stopSide,
      }),
      ...editRun('pair', 'r', {
        spacing: 'pitch',
        count: 3,
        first: l('2 1/3'),
        pitch: l('7 5/16'),
        width: other,
        depth: l('1/4'),
      }),
      ...editWide('pair', 'w', { near: l('24 5/7'), width: l('0.7'), depth: l('1/4') }),
    ],
  );
