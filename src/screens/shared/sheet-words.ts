import type { PlanSheet } from '../../job/job';
import { equals, type Length, type Ratio } from '../../length/length';
import type { Tape } from '../../length/tape';
import { writeLength } from '../../length/write';
import type { Breakdown } from '../../plan/breakdown';
import type { CutStep } from '../../trade/sheets/cut-steps';
import type { StickUse } from '../../trade/sheets/stick-use';
import type { SheetStock } from '../../trade/sheets/stock';
import { type Branch, piecesIn, type Rect } from '../../trade/sheets/tree';
import { counted } from './counted';
import { workWord } from './part-words';
import { measureUnit, wholeOf } from './pounds';
import { bySize } from './size-words';

// What is said of a sheet and its cuts, on its page and on paper.

/** `64 1/2 × 17 3/4`, `1640 × 450 mm`: the unit once. */
export const sizeWords = ({ long, wide }: Rect, tape: Tape): string =>
  bySize(writeLength(long, tape), writeLength(wide, tape));

export const pieceCount = (n: number): string => counted(n, 'piece', 'pieces');

export const listed = (names: readonly string[]): string =>
  names.length > 4
    ? `${names.slice(0, 3).join(', ')} and ${names.length - 3} more`
    : names.length > 1
      ? `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`
      : (names[0] ?? '');

/** `Sheet 2`, `Offcut 31 × 12`, `Stick 1`. */
export function sheetTitle(sheet: PlanSheet, stock: SheetStock | undefined, tape: Tape): string {
  if (sheet.left) return `Offcut ${sizeWords(sheet.size, tape)}`;
  return `${stock?.kind === 'stick' ? 'Stick' : 'Sheet'} ${sheet.no}`;
}

/**
 * `uses 87 1/8 of 96`: parts and the kerfs between them; less than the whole stick where trims or bad places are. No
 * figure breaks over a line.
 */
export function useWords({ used, usable }: StickUse, { long }: Rect, tape: Tape): string {
  const whole = (x: Length) => writeLength(x, tape).replace(' ', '\u00a0');
  return `uses ${whole(used)} of ${whole(usable)}${equals(usable, long) ? '' : ' usable'}`;
}

/** What is set, and over which. */
export function cutTitle(step: CutStep): string {
  if (step.tool === 'stop') return 'Crosscut, stop at';
  const what = step.keep === 'far' ? 'Trim' : step.way === 'rip' ? 'Rip' : 'Crosscut';
  return `${what}, ${step.tool === 'fence' ? 'fence' : 'line'} at`;
}

/** The edge a figure is measured from, as drawn. */
export const fromWords = (step: CutStep): string =>
  step.way === 'rip'
    ? 'from the left edge'
    : step.tool === 'stop'
      ? 'from the squared end'
      : 'from the top end';

/** What a side of a cut is: a piece by name, so many pieces, offcut, waste. */
export function sideWords(branch: Branch, name: (id: string) => string): string {
  if (branch.is === 'piece') return name(branch.piece);
  if (branch.is === 'left') return 'offcut';
  if (branch.is === 'waste') return 'waste';
  const names = [...new Set(piecesIn(branch).map(name))];
  return names.length === 1
    ? `${names[0]}`
    : names.length <= 2
      ? listed(names)
      : pieceCount(piecesIn(branch).length);
}

export const grains = { long: 'grain up', wide: 'grain across', none: 'no grain' } as const;

export const stickUse = (use: string): string => `This stick ${use}.`;

export const goodFaceDown = 'Good face down for a circular saw.';

export const kept = 'kept';

/** The cut in hand: which side is kept, and what the other is. */
export const kerfSide = (near: boolean): string => `, kerf ${near ? 'beyond' : 'before'} the line`;

export const otherSide = (side: string): string => `; other side ${side},`;

/** More than one person carries. @param then what the two halves weigh */
export const heavy = (all: Ratio, then: readonly [near: Ratio, far: Ratio]): string => {
  const [near, far] = then.map((x) => wholeOf('weight', x));
  return `About ${wholeOf('weight', all)} ${measureUnit('weight')}: two people, or cut it where it lies. Then ${near} and ${far} ${measureUnit('weight')}.`;
};

export const guideOff = 'The guide would lie off the sheet: lay a board of the same thickness beside it.';

export const guideUnknown = 'Enter the shoe offset to see the guide mark';

export const guideAt = 'Guide’s edge at';

export const onKept = 'on the piece you keep';

export const onOther = 'on the other side';

export const noLongerWanted = 'no longer wanted';

/** What a piece of a layout is called. */
export const nameIn =
  ({ pieces }: Pick<Breakdown, 'pieces'>) =>
  (id: string): string => {
    const own = pieces.get(id);
    return own ? workWord(own.name) : noLongerWanted;
  };

export const cutsInOrder = 'Cuts in order';
