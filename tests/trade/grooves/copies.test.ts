import { describe, expect, test } from 'vitest';
import { copiesOf, cutOp, markOp } from '../../../src/trade/grooves/copies';
import { layOut } from '../../../src/trade/grooves/lay-out';
import { leadingEdge, stoppedGroove } from '../../../src/trade/grooves/leading';
import { board, l, one, w } from './sample';

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
  const names = (over: Parameters<typeof board>[0]) => {
    const b = board({ length: l('20'), runs: [one('5', '1/2', { face: 'B' })], ...over });
    return layOut(b).grooves.flatMap((g) => copiesOf(b, g).map((c) => c.name));
  };

  test('of a pair are left and right; of a partition the face; of boards alike their numbers', () => {
    expect(names({ made: 'pair' })).toEqual(['Left', 'Right']);
    expect(names({ made: 'partition' })).toEqual(['Face B']);
    expect(names({ copies: 1 })).toEqual(['This board']);
    expect(names({ copies: 3 })).toEqual(['No. 1', 'No. 2', 'No. 3']);
  });
});

describe('cutOp and markOp', () => {
  test('name an operation by where it comes from', () => {
    expect(cutOp('b', 'r~1~only', 'left')).toBe('cut/b/r~1~only/left');
    expect(markOp('b', 'r~1')).toBe('mark/b/r~1');
  });
});
