import { describe, expect, test } from 'vitest';
import { boardWord, copyOfBoard, partWord, workWord } from '../../../src/screens/shared/part-words';
import { copiesOf } from '../../../src/trade/grooves/copies';
import { layOut } from '../../../src/trade/grooves/lay-out';
import { board, l, one } from '../../trade/grooves/sample';

describe('partWord', () => {
  test('gives the only one of its kind no number, bay or column', () => {
    expect(partWord({ role: 'partition' })).toBe('Partition');
    expect(partWord({ role: 'inside', kind: 'fixed' })).toBe('Fixed shelf');
    expect(partWord({ role: 'front', no: 3 })).toBe('Front 3');
    expect(partWord({ role: 'blank' })).toBe('Blank for the fronts');
  });

  test('says which of several: its number, its bay, its column, its hand', () => {
    expect(partWord({ role: 'partition', no: 2 })).toBe('Partition 2');
    expect(partWord({ role: 'inside', kind: 'fixed', bay: 2 })).toBe('Fixed shelf, bay 2');
    expect(partWord({ role: 'inside', kind: 'fixed', bay: 2, no: 1 })).toBe('Fixed shelf 1, bay 2');
    expect(partWord({ role: 'inside', kind: 'loose', no: 2 }, 3)).toBe('Loose shelf B3');
    expect(partWord({ role: 'inside', kind: 'loose' }, 3)).toBe('Loose shelf 3');
    expect(partWord({ role: 'boxback', no: 2, column: 1 })).toBe('Drawer 2, column 1, back');
    expect(partWord({ role: 'left' })).toBe('Left side');
  });

  test('a board laid out by hand keeps the word of whoever laid it out', () => {
    expect(partWord({ role: 'board', named: 'Shell shelf' })).toBe('Shell shelf');
    expect(partWord({ role: 'board', named: '' })).toBe('Board');
  });
});

describe('workWord', () => {
  test('puts the number of a copy behind the thing, before where it stands', () => {
    expect(workWord({ of: { role: 'inside', kind: 'trays', bay: 1 }, copy: 4 })).toBe('Tray 4, bay 1');
    expect(workWord({ of: { role: 'board', named: 'Shelf, top' }, copy: 2 })).toBe('Shelf 2, top');
  });

  test('puts the hand of a drawer side before it', () => {
    const side = { role: 'side', no: 3 } as const;
    expect(workWord({ of: side, copy: 'left' })).toBe('Drawer 3, left side');
  });

  test('sets the copy apart where one setting cuts the grooves of several', () => {
    const of = { role: 'partition', no: 1 } as const;
    expect(workWord({ of, copy: 'B', grooved: true })).toBe('Partition 1, face B');
    expect(workWord({ of: { role: 'stile' }, copy: 2, grooved: true })).toBe('Stile, no. 2');
  });

  test('says that a piece is made again', () => {
    expect(workWord({ of: { role: 'back' }, recut: true })).toBe('Back, recut');
  });
});

describe('copyOfBoard', () => {
  const words = (over: Parameters<typeof board>[0]) => {
    const b = board({ length: l('20'), runs: [one('5', '1/2', { face: 'B' })], ...over });
    return layOut(b).grooves.flatMap((g) => copiesOf(b, g).map((c) => copyOfBoard(c, b)));
  };

  test('of a pair are left and right; of a partition the face; of boards alike their numbers', () => {
    expect(words({ made: 'pair' })).toEqual(['Left', 'Right']);
    expect(words({ made: 'partition' })).toEqual(['Face B']);
    expect(words({ copies: 1 })).toEqual(['This board']);
    expect(words({ copies: 3 })).toEqual(['No. 1', 'No. 2', 'No. 3']);
  });

  test('a side of a case is called by its own name, and cut again by that too', () => {
    const part = { role: 'right' } as const;
    expect(words({ part, hand: 'right' })).toEqual(['Right side']);
    expect(words({ part, hand: 'right', recuts: { '1': 1 } })).toEqual(['Right side, recut']);
  });
});

describe('boardWord', () => {
  test('is the part it is, else the word of whoever laid it out', () => {
    expect(boardWord({ name: '', part: { role: 'top' } }, 'Board')).toBe('Top');
    expect(boardWord({ name: 'Shell shelf' }, 'Board')).toBe('Shell shelf');
    expect(boardWord({ name: '' }, 'Board')).toBe('Board');
  });
});
