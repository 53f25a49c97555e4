import { describe, expect, test } from 'vitest';
import { newBoard, newRun } from '../../../src/job/job';
import type { TickState } from '../../../src/job/log';
import { type Row, rowsOf, viewOf } from '../../../src/plan/board-layout';
import * as words from '../../../src/screens/saw/words';
import type { Board } from '../../../src/trade/grooves/board';
import { l } from '../../length/write-figures';
import { said } from '../said';

const board = (over: Partial<Board>): Board => ({
  ...newBoard('side'),
  name: 'Side',
  length: l('34 1/2'),
  runs: [{ ...newRun('r'), width: l('3/4'), count: 2, pitch: l('6'), first: l('3') }],
  ...over,
});

const tick: TickState = { figure: '3', at: '2026-11-02T08:30:00.000Z', device: 'p' };

/** The settings of a board with the first copies cut, counted over all settings. */
function rowsWith(over: Partial<Board>, cut: number): readonly Row[] {
  const view = viewOf(board(over), {}, '1/32');
  const ops = rowsOf(view, new Map()).flatMap((r) => r.copies.map((c) => c.op));
  return rowsOf(view, new Map(ops.slice(0, cut).map((op) => [op, tick])));
}

describe('the big bar says the next true thing', () => {
  test.each([
    ['one board: it is cut', {}, 0, 0, 'It is cut'],
    ['of a pair, which one', { made: 'pair' }, 0, 0, 'Left is cut'],
    ['the other of the pair', { made: 'pair' }, 1, 0, 'Right is cut'],
    ['all cut here: the next setting', {}, 1, 0, 'Next stop'],
    ['all cut: back', {}, 2, 1, 'All 2 cut. Back to the marks'],
  ] as const)('%s', (_, over, cut, at, says) =>
    expect(words.mainAction(rowsWith(over, cut), at, board(over))).toBe(says),
  );
});

describe('what is said at the saw', () => {
  test('progress counts settings, one or several', () => {
    expect(words.progress(rowsWith({}, 1))).toBe('1 of 2 settings cut');
    expect(words.progress(rowsWith({}, 1).slice(0, 1))).toBe('1 of 1 setting cut');
  });

  test('the machine is called by its name', () => {
    expect(words.atMachine(board({}))).toBe('At the saw: Side');
    expect(words.leaveMachine(board({ machine: 'router' }))).toBe('Leave the router');
  });

  test('what is set says the groove, from where it is measured, and which face lies where', () => {
    const b = board({ made: 'pair' });
    const { layout, settings } = viewOf(b, {}, '1/32');
    const [first] = settings.settings;
    expect(first && words.whatIsSet(first, b, layout)).toBe(
      'no. 1: bottom end on the stop, to the near teeth, inside down.',
    );
  });

  test('the near teeth are named only where they are not the figure itself', () => {
    const [far, other] = [<i key="f">7</i>, <i key="o">20</i>];
    expect(said(<words.Teeth near={false} far={far} other={other} />)).toBe('far teeth 7, other end 20');
    expect(said(<words.Teeth near={<i>6</i>} far={far} other={other} />)).toBe(
      'near teeth 6, far teeth 7, other end 20',
    );
  });

  test('an act is named by the copy, and by its groove where it is said', () => {
    expect([words.cut('Left', 'no. 3'), words.cut('Left'), words.notCut('Left')]).toEqual([
      'Cut: Left, no. 3',
      'Cut: Left',
      'Not cut: Left',
    ]);
  });
});
