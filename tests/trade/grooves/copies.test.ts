import { describe, expect, test } from 'vitest';
import { copiesOf, cutOp, markOp } from '../../../src/trade/grooves/copies';
import { layOut } from '../../../src/trade/grooves/lay-out';
import { board, l, one } from './sample';

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
