import { describe, expect, test } from 'vitest';
import { copiesOf, cutOp, markOp } from '../../../src/trade/grooves/copies';
import { layOut } from '../../../src/trade/grooves/lay-out';
import { leadingEdge, leadingEdgeOf, stoppedGroove } from '../../../src/trade/grooves/leading';
import { board, l, one, w } from './sample';

type Vector = readonly [number, number, number];

const cross = ([a, b, c]: Vector, [d, e, f]: Vector): Vector => [b * f - c * e, c * d - a * f, a * e - b * d];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/**
 * The same by coordinates: x to the right, y away from you, z up; work is fed away from you. A board is only ever
 * turned, never mirrored, so inside, end and front keep their handedness.
 */
function turnedOnTable(side: 'left' | 'right', end: 'bottom' | 'top', stop: 'left' | 'right') {
  const standing = {
    inside: [side === 'left' ? 1 : -1, 0, 0],
    end: [0, 0, end === 'bottom' ? -1 : 1],
    front: [0, -1, 0],
  } satisfies Record<string, Vector>;
  const hand = dot(cross(standing.inside, standing.end), standing.front);
  const front = cross([0, 0, -1], [stop === 'left' ? -1 : 1, 0, 0]);
  return front[1] * hand > 0 ? 'front' : 'back';
}

const hands = ['left', 'right'] as const;

describe('leadingEdgeOf', () => {
  test('is the edge away from you when the side is turned inside down with that end on the stop', () => {
    for (const side of hands) {
      for (const stopSide of hands) {
        for (const end of ['bottom', 'top'] as const) {
          const other = end === 'bottom' ? 'top' : 'bottom';
          const set = board({ stopSide, end });
          expect(leadingEdgeOf(set, side)).toBe(turnedOnTable(side, end, stopSide));
          expect(leadingEdgeOf({ ...set, against: 'other' }, side)).toBe(
            turnedOnTable(side, other, stopSide),
          );
        }
      }
    }
  });

  test('minds which end is against the stop only where there is a choice of ends', () => {
    const fence = board({ machine: 'fence', against: 'other', end: 'bottom' });
    // the rip fence stands right of the cutter, whatever side a stop stood on
    expect(leadingEdgeOf(fence, 'left')).toBe(leadingEdge('left', 'right'));
  });
});

describe('leadingEdge', () => {
  // Follow a corner: side standing, front toward you, bottom on the floor; lay it on its inside face.
  test.each([
    ['left', 'left', 'back'],
    ['right', 'left', 'front'],
    ['left', 'right', 'front'],
    ['right', 'right', 'back'],
  ] as const)('of the %s side with the stop %s of the blade is the %s', (side, stop, edge) => {
    expect(leadingEdge(side, stop)).toBe(edge);
  });
});

describe('stoppedGroove', () => {
  test('is as long as the board is wide, less what stands before it', () => {
    expect(w(stoppedGroove(l('17 1/2'), l('3/4')))).toBe('16 3/4');
  });
});

describe('copiesOf', () => {
  const ids = (over: Parameters<typeof board>[0]) => {
    const b = board({ length: l('20'), runs: [one('5', '1/2', { face: 'B' })], ...over });
    return layOut(b).grooves.flatMap((g) => copiesOf(b, g).map((c) => c.id));
  };

  test('of a pair are left and right; of a partition the face; of boards alike their numbers', () => {
    expect(ids({ made: 'pair' })).toEqual(['left', 'right']);
    expect(ids({ made: 'partition' })).toEqual(['B']);
    expect(ids({ copies: 1 })).toEqual(['1']);
    expect(ids({ copies: 3 })).toEqual(['1', '2', '3']);
  });
});

describe('cutOp and markOp', () => {
  test('name an operation by where it comes from', () => {
    expect(cutOp('b', 'r~1~only', 'left')).toBe('cut/b/r~1~only/left');
    expect(markOp('b', 'r~1')).toBe('mark/b/r~1');
  });
});
