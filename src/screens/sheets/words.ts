import type { PlanSheet } from '../../job/job';
import { equals, type Length } from '../../length/length';
import { assertNever } from '../../length/result';
import type { Tape } from '../../length/tape';
import { writeLength } from '../../length/write';
import type { Breakdown, PoolView } from '../../plan/breakdown';
import type { CutStep } from '../../trade/sheets/cut-steps';
import type { Lies, RoughPiece } from '../../trade/sheets/pieces';
import type { PoolProblem } from '../../trade/sheets/pool';
import type { StickUse } from '../../trade/sheets/stick-use';
import type { SheetStock } from '../../trade/sheets/stock';
import { type Branch, piecesIn, type Rect } from '../../trade/sheets/tree';
import type { TwoDError } from '../../trade/sheets/two-d/two-d';

/** `64 1/2 × 17 3/4`. */
export const sizeWords = ({ long, wide }: Rect, tape: Tape): string =>
  `${writeLength(long, tape)} × ${writeLength(wide, tape)}`;

export const plural = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** What a stock's pieces are called: one sheet, two sticks. */
export const unitOf = (kind: SheetStock['kind'], n: number): string =>
  plural(n, kind === 'stick' ? 'stick' : 'sheet');

/** Every fault of a pool as a sentence: by how much, and what would fit. */
export function problemWords(problem: PoolProblem, { stocks }: Breakdown, tape: Tape): string {
  const w = (x: Length) => writeLength(x, tape);
  switch (problem.code) {
    case 'kerf-missing':
      return 'The saw’s kerf is not known, and every cut takes it. Measure a cut in scrap, in Shop figures.';
    case 'trim-negative':
      return `A trim takes wood off: ${w(problem.trim)} would add some to ${stocks.get(problem.stock)?.name ?? 'the sheet'}.`;
    case 'trim-eats-it':
      return `Trimming ${w(problem.trim)} off both sides leaves nothing of ${w(problem.most)}: ${stocks.get(problem.stock)?.name ?? 'the sheet'}.`;
    case 'too-large': {
      const { long, wide } = problem.over;
      const by = [long.n > 0n ? `${w(long)} too long` : '', wide.n > 0n ? `${w(wide)} too wide` : ''];
      return `${problem.piece.name} is rough ${sizeWords(problem.piece, tape)}: ${by.filter(Boolean).join(' and ')}. The most that fits is ${sizeWords(problem.most, tape)}.`;
    }
    case 'grain-forbids':
      return `${problem.piece.name} is rough ${sizeWords(problem.piece, tape)} and would fit turned, but its grain must run ${problem.piece.lies === 'across' ? 'across' : 'along'} it. Let it lie either way, or find a sheet ${w(problem.needs.long)} along its grain and ${w(problem.needs.wide)} across.`;
    case 'too-long-for-stick':
      return `${problem.piece.name} is ${w(problem.piece.long)} long, ${w(problem.by)} longer than the longest good stick, ${w(problem.most)}.`;
    case 'wider-than-stick':
      return `${problem.piece.name} is ${w(problem.piece.wide)} wide, ${w(problem.by)} wider than the stick, ${w(problem.most)}.`;
    case 'sheets-run-out':
      return `${plural(problem.left, 'piece')} found no place on what is at hand. Let more be bought, or free the grain.`;
    case 'together-too-large':
      return `${listed(problem.names)} are to come out of one sheet and do not go on one.`;
    default:
      return assertNever(problem);
  }
}

/** What the search could not do. */
export function cannotWords(
  error: TwoDError,
  view: PoolView,
  pieces: readonly (readonly RoughPiece[])[],
): string {
  switch (error.code) {
    case 'no-sheet-takes':
      return `${pieces[error.piece]?.[0]?.name ?? 'A piece'} goes on none of the sheets.`;
    case 'sheets-run-out':
      return `${plural(error.left, 'piece')} found no place on what is at hand. Let more be bought, or let pieces lie either way.`;
    case 'together-too-large': {
      const groups = [...new Set(view.toLay.pieces.flatMap((p) => p.together ?? []))];
      const names = view.toLay.pieces.filter((p) => p.together === groups[error.together]).map((p) => p.name);
      return `${listed(names)} are to come out of one sheet and did not go on one. Let them lie anywhere.`;
    }
    default:
      return assertNever(error);
  }
}

export const listed = (names: readonly string[]): string =>
  names.length > 4
    ? `${names.slice(0, 3).join(', ')} and ${names.length - 3} more`
    : names.length > 1
      ? `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`
      : (names[0] ?? '');

export const liesWords: Readonly<Record<Lies, string>> = {
  along: 'grain along it',
  across: 'grain across it',
  free: 'either way',
};

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
      : plural(piecesIn(branch).length, 'piece');
}

/** What is done with a tap: `Ripped, next`. */
export const cutDone = (step: CutStep): string => (step.way === 'rip' ? 'Ripped' : 'Cut');

/** What the search says of its plan. */
export function proofWords(at: {
  readonly kind: SheetStock['kind'];
  readonly count: number;
  readonly least: number | undefined;
  readonly proved: boolean;
}): string {
  const n = unitOf(at.kind, at.count);
  if (at.proved) return `${n}. Proved: no plan ${at.least === undefined ? 'costs less' : 'uses fewer'}.`;
  if (at.least === undefined) return `${n}.`;
  return at.least < at.count ? `${n}; no plan does with fewer than ${at.least}.` : `${n}.`;
}
