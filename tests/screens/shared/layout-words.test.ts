import { describe, expect, test } from 'vitest';
import { newBoard, newRun } from '../../../src/job/board-of';
import { viewOf } from '../../../src/plan/board-layout';
import { problemText, settingProblemText } from '../../../src/screens/shared/layout-words';
import { warningText } from '../../../src/screens/shared/warning-words';
import type { Board, Run } from '../../../src/trade/grooves/board';
import { l } from '../../length/write-figures';

const board = (over: Partial<Board>, run: Partial<Run> = {}): Board => ({
  ...newBoard('b'),
  name: 'Side',
  length: l('34 1/2'),
  ...over,
  runs: over.runs ?? [{ ...newRun('r'), width: l('3/4'), count: 5, pitch: l('6'), first: l('3'), ...run }],
});

const says = (b: Board): readonly string[] => {
  const { layout, settings } = viewOf(b, {}, '1/32');
  return [
    ...layout.problems.map((p) => problemText(p, b, layout)),
    ...settings.problems.map((problem) => settingProblemText(problem)),
    ...layout.warnings.map((x) => warningText(x, layout)),
  ];
};

describe('what is wrong is said by how much, and what would fit', () => {
  test.each([
    [
      'past the end',
      board({}, { pitch: l('8') }),
      'No. 5 runs 1 1/4 past the end. 4 fit, or start at 1 3/4.',
    ],
    [
      'more cuts than one layout takes',
      board({ copies: 1000 }, { count: 900 }),
      '1000 boards of 900 grooves: 898000 cuts over the 2000 of one layout. At most 2 grooves each, or fewer boards.',
    ],
    [
      'before the end',
      board({}, { first: l('-1/2') }),
      'No. 1 starts 1/2 before the end. Start at least that much farther in.',
    ],
    [
      'pitch',
      board({}, { pitch: l('1/2') }),
      '1/2 apart leaves no wood between grooves 3/4 wide. Go over 3/4.',
    ],
    ['count', board({}, { count: 0 }), 'Grooves are counted in whole numbers, one to a thousand.'],
    ['missing', board({}, { pitch: undefined }), 'Say how far apart, centre to centre.'],
    [
      'too deep',
      board({ thickness: l('23/32') }, { depth: l('3/4') }),
      '3/4 deep goes through a board 23/32 thick. Leave a third of it.',
    ],
    [
      'thin end',
      board({}, { first: l('1/8'), count: 2 }),
      'Only 1/8 of wood before no. 1: short grain breaks under 3/8.',
    ],
    [
      'openings',
      board({}, { spacing: 'openings', count: 60 }),
      'The parts alone run 13 1/2 over the length. 41 fit with openings between.',
    ],
    [
      'shop figure',
      board({ machine: 'router' }),
      'Measure once for the shop: router base edge to cutter centre.',
    ],
    [
      'cutter',
      board({ cutter: l('7/8') }),
      'No. 1: a cutter 7/8 wide cannot make a groove 3/4 wide. Take one no wider.',
    ],
  ])('%s', (_, b, text) => expect(says(b)).toContain(text));

  test('a partition grooved through is told what to do', () => {
    const b = board({
      made: 'partition',
      thickness: l('23/32'),
      runs: [
        { ...newRun('a'), face: 'A', spacing: 'given', at: [l('5')], width: l('3/4'), depth: l('3/8') },
        { ...newRun('b'), face: 'B', spacing: 'given', at: [l('5')], width: l('3/4'), depth: l('3/8') },
      ],
    });
    expect(says(b).join(' ')).toContain(
      'meet through the board, 1/32 over. Stagger them, cut shallower, or take thicker stuff.',
    );
  });
});

test('a figure that a machine of the shop’s own is without is asked for that machine', () => {
  const own = { id: 'own1', name: 'Second router', like: 'router', figures: {} } as const;
  expect(settingProblemText({ code: 'shop-figure-missing', field: 'routerBase' }, own)).toBe(
    'Measure once for Second router: router base edge to cutter centre.',
  );
});
