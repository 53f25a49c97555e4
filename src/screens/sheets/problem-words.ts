import type { Length } from '../../length/length';
import { assertNever } from '../../length/result';
import type { Tape } from '../../length/tape';
import { writeLength } from '../../length/write';
import type { Breakdown, PoolView } from '../../plan/breakdown';
import type { RoughPiece } from '../../trade/sheets/pieces';
import type { PoolProblem } from '../../trade/sheets/pool';
import type { TwoDError } from '../../trade/sheets/two-d/two-d';
import { wordFor } from '../shared/counted';
import { workWord } from '../shared/part-words';
import { listed, pieceCount, sizeWords } from './words';

/** Every fault of a pool as a sentence: by how much, and what would fit. */
export function problemWords(problem: PoolProblem, { stocks }: Breakdown, tape: Tape): string {
  const w = (x: Length) => writeLength(x, tape);
  switch (problem.code) {
    case 'kerf-missing':
      return 'The saw’s kerf is not known, and every cut takes it. Measure a cut in scrap and enter it in Shop figures.';
    case 'trim-negative':
      return `A trim takes wood off: ${w(problem.trim)} would add some to ${stocks.get(problem.stock)?.name ?? 'the sheet'}.`;
    case 'trim-eats-it':
      return `Trimming ${w(problem.trim)} off both sides leaves nothing of ${w(problem.most)}: ${stocks.get(problem.stock)?.name ?? 'the sheet'}.`;
    case 'too-large': {
      const { long, wide } = problem.over;
      const by = [long.n > 0n ? `${w(long)} too long` : '', wide.n > 0n ? `${w(wide)} too wide` : ''];
      return `${workWord(problem.piece.name)} is rough ${sizeWords(problem.piece, tape)}: ${by.filter(Boolean).join(' and ')}. The most that fits is ${sizeWords(problem.most, tape)}.`;
    }
    case 'grain-forbids':
      return `${workWord(problem.piece.name)} is rough ${sizeWords(problem.piece, tape)} and would fit turned, but its grain must run ${problem.piece.lies === 'across' ? 'across' : 'along'} it. Let it lie either way, or find a sheet ${w(problem.needs.long)} along its grain and ${w(problem.needs.wide)} across.`;
    case 'too-long-for-stick':
      return `${workWord(problem.piece.name)} is ${w(problem.piece.long)} long, ${w(problem.by)} longer than the longest good stick, ${w(problem.most)}.`;
    case 'wider-than-stick':
      return `${workWord(problem.piece.name)} is ${w(problem.piece.wide)} wide, ${w(problem.by)} wider than the stick, ${w(problem.most)}.`;
    case 'sheets-run-out':
      return `${pieceCount(problem.left)} ${wordFor(problem.left, 'does', 'do')} not fit on what is at hand. Buy more, or let pieces lie either way.`;
    case 'together-too-large':
      return `${listed(problem.names.map(workWord))} must come out of one sheet and do not fit on one.`;
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
    case 'no-sheet-takes': {
      const piece = pieces[error.piece]?.[0];
      return `${piece ? workWord(piece.name) : 'A piece'} fits on none of the sheets.`;
    }
    case 'sheets-run-out':
      return `${pieceCount(error.left)} ${wordFor(error.left, 'does', 'do')} not fit on what is at hand. Buy more, or let pieces lie either way.`;
    case 'together-too-large': {
      const groups = [...new Set(view.toLay.pieces.flatMap((p) => p.together ?? []))];
      const names = view.toLay.pieces
        .filter((p) => p.together === groups[error.together])
        .map((p) => workWord(p.name));
      return `${listed(names)} must come out of one sheet and do not fit on one. Let them lie anywhere.`;
    }
    default:
      return assertNever(error);
  }
}
