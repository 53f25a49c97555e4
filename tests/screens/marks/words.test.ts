import { describe, expect, test } from 'vitest';
import { newRun } from '../../../src/job/board-of';
import { viewOf } from '../../../src/plan/board-layout';
import * as words from '../../../src/screens/marks/words';
import type { Board } from '../../../src/trade/grooves/board';
import { l } from '../../length/write-figures';
import { board } from './sample';

const wide = { id: 'w', face: 'A', width: l('1 1/2'), depth: l('1/4'), near: l('20') } as const;

const grooves = (over: Partial<Board> = {}) => viewOf(board(over), {}, '1/32').layout.grooves;

describe('a board in words', () => {
  test.each([
    [{ made: 'alike', copies: 1 }, 'One board'],
    [{ made: 'alike', copies: 4 }, '4 alike'],
    [{ made: 'pair' }, 'Two, left and right'],
    [{ made: 'partition' }, 'One, grooved on both faces'],
  ] as const)('%o is “%s”', (over, says) => expect(words.made(board(over))).toBe(says));

  test('the drawing counts its grooves, one or several', () => {
    expect(words.standing(board(), 2)).toBe('Side, 34 1/2 long, standing on its bottom end, 2 grooves');
    expect(words.standing(board(), 1)).toContain(', 1 groove');
  });

  test('without a name it is a board', () => {
    expect(words.boardName(board({ name: '' }))).toBe('Board');
    expect(words.ownPart(board({ name: '' }))).toBe('This board');
  });

  test('the end to measure from is the board’s, or the facing part’s own', () => {
    const b = board({ mateName: 'partition' });
    expect(words.measureFrom(b, false)).toBe('Measure from this end: the bottom');
    expect(words.measureFrom(b, true)).toBe('Measure from this end: the partition’s own');
  });

  test('the datum is said where there is one', () => {
    expect(words.blueFigures(board())).toBe(
      'Blue figures are from the other end: +\u00a0strong, −\u00a0scant.',
    );
    expect(words.blueFigures(board({ datum: l('3/8') }))).toBe(
      'Blue figures are from the other end: +\u00a0strong, −\u00a0scant. The datum is 3/8 in.',
    );
  });

  test('the way on names the machine', () => {
    expect([words.toMachine(board()), words.toMachine(board({ machine: 'router' }))]).toEqual([
      'To the saw',
      'To the router',
    ]);
    expect(words.machine(board({ machine: 'fence' }))).toBe('Table-saw fence');
  });
});

describe('acts as undo names them', () => {
  const [first] = grooves();
  const broad = grooves({ wides: [wide], runs: [{ ...newRun('r') }] }).find((g) => g.wide);

  test('marking a groove of a run, and a wide one', () => {
    expect(first && words.marking(first, false)).toBe('Marked: no. 1');
    expect(first && words.marking(first, true)).toBe('Not marked: no. 1');
    expect(broad && words.marking(broad, false)).toBe(`Marked: ${broad?.no}`);
  });

  test('cutting at a setting; a tick of several passes says which', () => {
    const [one] = viewOf(board(), {}, '1/32').settings.settings;
    const [, second] = viewOf(board({ cutter: l('1/2') }), {}, '1/32').settings.settings;
    expect(one && words.cutting(one, false)).toBe('Cut: no. 1');
    expect(one && words.cutting(one, true)).toBe('Not cut: no. 1');
    expect(one && words.cutTick(one)).toBe('Cut at 1');
    expect(second && words.cutTick(second)).toBe('Cut at 1, pass 2');
  });
});

test('a wide groove says its width as a fraction, or in thousandths where no tape has it', () => {
  const [of] = grooves({ wides: [wide] }).filter((g) => g.wide);
  if (!of) throw new Error('a wide groove is wanted');
  expect(words.wideGroove(of)).toBe('1 1/2 wide');
  expect(words.wideGroove({ ...of, width: l('0.7'), called: 'shelf' })).toBe('0.700 wide, shelf');
});
