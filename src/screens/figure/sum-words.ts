import type { PartsError } from '../../length/equal-parts';
import { isZero } from '../../length/length';
import { assertNever } from '../../length/result';
import type { Tape } from '../../length/tape';
import { writeLength } from '../../length/write';
import type { StripsError } from '../../trade/sheets/strips';
import { counted, wordFor } from '../shared/counted';
import { exactly } from '../shared/exact-words';
import type { SumWords } from './sum-rule';

export const list = 'Quick sums';
export const back = 'Figure';

export const otherEnd: SumWords = {
  title: 'From the other end',
  hint: 'the same mark, measured back',
  sentence: [
    'A part ',
    { blank: 'length', label: 'Length of the part' },
    ' long, marked at ',
    { blank: 'mark', label: 'The mark' },
    ' from the one end, is marked from the other end at',
  ],
};

export const beforeEnd = 'The mark lies before the end.';
export const pastEnd = (by: string): string => `The mark lies ${by} past the end.`;
export const meet =
  'Both figures meet at one knife line: the mark is rounded once, the rest is the length less it.';

export const parts: SumWords = {
  title: 'Equal parts',
  hint: 'with dividers, or kerfs, between',
  sentence: [
    'Divide ',
    { blank: 'length', label: 'Length to divide' },
    ' into ',
    { blank: 'n', label: 'How many parts', count: true },
    ' equal parts, with dividers ',
    { blank: 'divider', label: 'Divider thickness, or kerf' },
    ' thick between.',
  ],
};

export const eachPart = 'Each part';
export const dividers = 'Near edge of each divider, from one end, and from the other';

/** Why a length is not divided. */
export function partsText(error: PartsError): string {
  switch (error.code) {
    case 'count-not-whole':
      return 'Parts are counted in whole numbers, one to a thousand.';
    case 'length-not-positive':
      return 'The length must be more than 0.';
    case 'divider-negative':
      return 'A divider cannot be thinner than 0.';
    case 'dividers-fill-it':
      return isZero(error.over)
        ? `The dividers alone fill the length. ${counted(error.most, 'part', 'parts')} would fit.`
        : `The dividers alone run ${exactly(error.over)} over the length. ${counted(error.most, 'part', 'parts')} would fit.`;
    default:
      return assertNever(error);
  }
}

export const diagonal: SumWords = {
  title: 'Diagonal',
  hint: 'of a width and a height',
  sentence: [
    'A frame ',
    { blank: 'w', label: 'Width' },
    ' wide and ',
    { blank: 'h', label: 'Height' },
    ' high is square when each diagonal reads',
  ],
};

/** How the mark stands to the diagonal itself, which is seldom on one. */
export const markIs = (side: number): string => (side === 0 ? '' : side > 0 ? 'strong' : 'scant');

export const square: SumWords = {
  title: 'Square up',
  hint: 'two diagonals: how far to push, until they read what',
  sentence: [
    'A case ',
    { blank: 'w', label: 'Width, the side that slides' },
    ' wide and ',
    { blank: 'h', label: 'Height' },
    ' high reads ',
    { blank: 'a', label: 'One diagonal' },
    ' on one diagonal and ',
    { blank: 'b', label: 'The other diagonal' },
    ' on the other.',
  ],
};

export const allFour = 'Measure all four: equal diagonals alone do not prove square.';
export const push = 'Push the top, squeezing the corners on the long diagonal, by';
export const until = 'until each diagonal reads';

export const strips: SumWords = {
  title: 'Strips ripped from a sheet',
  hint: 'how many, and what is over',
  sentence: [
    'A sheet ',
    { blank: 'across', label: 'Across the sheet' },
    ' across, ',
    { blank: 'trim', label: 'Trimmed off each edge' },
    ' trimmed off each edge, cut with a kerf of ',
    { blank: 'kerf', label: 'Kerf of the saw' },
    ', gives strips ',
    { blank: 'strip', label: 'Width of a ripped strip, rough' },
    ' wide:',
  ],
};

export const stripWord = (count: number): string => wordFor(count, 'strip', 'strips');
export const over = 'Over';
export const usable = (width: string): string =>
  `${width} is usable. Rough widths, where a final rip follows; the last strip needs no kerf.`;

/** Why no strips come out of a sheet. */
export function stripsText(error: StripsError, tape: Tape): string {
  switch (error.code) {
    case 'kerf-missing':
      return 'Every cut takes the kerf. Measure a cut in scrap.';
    case 'no-width':
      return 'A ripped strip must be wider than 0.';
    case 'trim-negative':
      return `A trim takes wood off: ${writeLength(error.trim, tape)} would add some.`;
    case 'trim-eats-it':
      return `Trimming ${writeLength(error.trim, tape)} off both edges leaves nothing of ${writeLength(error.most, tape)}.`;
    case 'wider-than-sheet':
      return `The ripped strip is ${writeLength(error.by, tape)} wider than the ${writeLength(error.usable, tape)} that is usable.`;
    default:
      return assertNever(error);
  }
}

export const guide: SumWords = {
  title: 'Guide for the saw',
  hint: 'where its edge goes, on either side of the line',
  sentence: [
    'What is kept ends ',
    { blank: 'line', label: 'The line, from the edge' },
    ' from the edge. The saw’s kerf is ',
    { blank: 'kerf', label: 'Kerf of the saw' },
    '; from its teeth to the shoe’s edge it is ',
    { blank: 'keep', label: 'Shoe edge to the teeth, guide on what is kept' },
    ' on the side that is kept and ',
    { blank: 'waste', label: 'Shoe edge to the teeth, guide on the waste' },
    ' on the other.',
  ],
};

export const guideWants = 'Give the line, the kerf, and one side of the shoe.';
export const onKeep = 'Guide’s edge, lying on what is kept';
export const offEdge = (by: string): string => `On what is kept the guide would lie ${by} off the edge.`;
export const onWaste = 'Guide’s edge, lying on the waste';
export const twoMarks = 'Both from the same edge. Two marks: the line, and the guide.';

export const burned: SumWords = {
  title: 'Burned tape',
  hint: 'started at an inch, or the tape’s own body',
  sentence: [
    'The tape reads ',
    { blank: 'reading', label: 'What the tape reads' },
    ', started at ',
    { blank: 'burned', label: 'Where the tape was started' },
    ', with the tape’s own body adding ',
    { blank: 'body', label: 'Length of the tape’s body, for an inside measure' },
    '.',
  ],
};

export const startsAt = (inch: string): string =>
  `A tape burned at 1 starts at ${inch}. Leave blank what does not apply.`;
export const lessThanStart = (by: string): string => `That is ${by} less than where the tape was started.`;
export const really = 'It is really';
export const bothOn = 'Both are on: a burned start and the tape’s body. Seldom both are meant.';
