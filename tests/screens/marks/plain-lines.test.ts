import { describe, expect, test } from 'vitest';
import { viewOf } from '../../../src/plan/board-layout';
import { plainLines } from '../../../src/screens/marks/plain-lines';
import { l } from '../../length/write-figures';
import { board } from './sample';

describe('plainLines', () => {
  test('a board goes out as lines a helper can read', () => {
    const text = plainLines(viewOf(board(), {}, '1/32'));
    expect(text.split('\n')).toEqual([
      'Side, 34 1/2 long. Measure from the bottom end.',
      'Near edges:',
      'no. 1: 3, 3/4 wide, from the other end 31 1/2',
      'no. 2: 9, 3/4 wide, from the other end 25 1/2',
      'Settings: bottom end on the stop, to the near teeth',
      'no. 1, Stop block at 3',
      'no. 2, Stop block at 9',
    ]);
  });

  test('where the machine lacks a figure of the shop there is no line of settings', () => {
    const text = plainLines(viewOf(board({ machine: 'router' }), {}, '1/32'));
    expect(text).toContain('no. 2: 9');
    expect(text).not.toContain('Settings');
  });

  test('each pass is a line of its own', () => {
    const text = plainLines(viewOf(board({ cutter: l('1/2') }), {}, '1/32'));
    expect(text).toContain('no. 1, pass 1 of 2, near wall, Stop block at 3');
    expect(text).toContain('no. 1, pass 2 of 2, far wall, Stop block at 3 1/4');
  });
});
