import type { Board } from '../../../trade/grooves/board';
import type { Setting } from '../../../trade/grooves/settings';
import type { Cuts } from '../../../trade/machines/machine';
import type { GrooveMachineId } from '../../../trade/machines/stored-ids';
import type { CautionWords } from '../caution-line';

/** How a machine that cuts grooves reads on the first screens. */
type GrooveWords = {
  /** As it is offered, and a line more on what that is. */
  readonly label: string;
  readonly hint: string;
  /** What follows "Cut them on the …". A blank stands in braces: what is asked by that name in `marks/asks.ts`. */
  readonly sentence: string;
  /** From where to where a figure of it is measured. */
  readonly measured: (setting: Pick<Setting, 'measures' | 'figure'>, board: Board) => string;
  /** General words: common practice, no source. */
  readonly caution: CautionWords;
};

const toGuide: GrooveWords['measured'] = (_, { end, guide }) =>
  `from the ${end} end to the guide, lying on ${guide === 'reference' ? `the ${end} side` : 'the far side'}`;

const toTeeth: GrooveWords['measured'] = ({ measures }, { end }) =>
  measures === 'other-stop-to-teeth'
    ? 'other end on the stop, to the nearer teeth'
    : `${end} end on the stop, to the near teeth`;

export const grooveWords: Readonly<Record<GrooveMachineId, GrooveWords>> = {
  stop: {
    label: 'sled with a stop',
    hint: 'crosscut saw or table-saw sled, a stop block for the end',
    sentence: ', the {against} on the stop, {stopSide}, with a stack {cutter} wide.',
    measured: toTeeth,
    caution: [
      'Hands outside the line the blade runs.',
      'Work level and tight to the fence, stop clear of chips. A radial saw pulls itself along.',
    ],
  },
  fence: {
    label: 'table-saw fence',
    hint: 'the end against the fence, stack in the table',
    sentence: ', a stack {cutter} wide that grows {grows}, the board {across} along it.',
    measured: (_, { end }) => `${end} end on the fence, read on the scale`,
    caution: [
      'Push blocks; guard back on right after.',
      'Wide insert, nothing freehand. Fence and mitre gauge never together on a cut that goes through.',
    ],
  },
  router: {
    label: 'router and guide',
    hint: 'a straight guide clamped across',
    sentence: ' on the {guide}, with a bit {cutter} wide.',
    measured: toGuide,
    caution: [
      'Feed so the bit draws into the guide.',
      'Guide and work clamped. No light pass on the climbing side. Bit stopped before you lift it.',
    ],
  },
  saw: {
    label: 'circular saw and guide',
    hint: 'the guide sets both walls; clear what stands between',
    sentence: ' on the {guide}.',
    measured: toGuide,
    caution: [
      'Both halves held up, hands behind.',
      'The kerf may not close. Depth set to the cut, cord behind, never over the knee.',
    ],
  },
  spacers: {
    label: 'one stop and spacers',
    hint: 'the stop stands for the farthest, spacers for the rest',
    sentence: ', with a stack {cutter} wide.',
    measured: ({ figure }, { end }) =>
      figure.value.n === 0n ? 'none: straight on the stop' : `between the stop and the ${end} end`,
    caution: [
      'Spacers flat, hands outside the line.',
      'Stop clear of chips, work tight to the fence. A radial saw pulls itself along; stopped before you reach in.',
    ],
  },
  index: {
    label: 'fence pencil marks',
    hint: 'the end brought to a pencil mark for each groove',
    sentence: ', with a stack {cutter} wide that grows {grows}.',
    measured: (_, { end }) => `near teeth to the pencil mark, ${end} end on it`,
    caution: [
      'Work held level, hands outside the line.',
      'These pencil marks belong to one stack. A radial saw pulls itself along; stopped before you reach in.',
    ],
  },
  sliding: {
    label: 'sliding or radial saw',
    hint: 'the stack comes down from above, a stop for the end',
    sentence: ', the {against} on the stop, {stopSide}, with a stack {cutter} wide.',
    measured: toTeeth,
    caution: [
      'Hands well clear; it pulls itself along.',
      'Only a stack its manual allows. Work tight to the far fence, stopped before you reach in.',
    ],
  },
  tablerouter: {
    label: 'router table',
    hint: 'the end along its fence, the bit from below',
    sentence: ', with a bit {cutter} wide, the board {across} along its fence.',
    measured: (_, { end }) => `${end} end on the fence, fence to the near side of the bit`,
    caution: [
      'Push blocks; fed against the bit’s turn.',
      'Never between fence and bit. The work covers the bit from end to end; in light passes, hands never over it.',
    ],
  },
};

/** @example wordsAt(board).label // 'router and guide' */
export const wordsAt = ({ machine }: Pick<Board, 'machine'>): GrooveWords => grooveWords[machine];

/** What its cutter is called. */
export const cutterNamed = (cuts: Cuts): string => (cuts === 'bit' ? 'bit' : 'stack');
