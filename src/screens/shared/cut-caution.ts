import type { Breakdown } from '../../plan/breakdown';
import type { Caution } from '../../trade/cautions/caution';
import type { CutStep } from '../../trade/sheets/cut-steps';

/** What can hurt at a cut of a sheet or a stick; of none in hand, at one along the guide. */
export function cutCaution(
  step: CutStep | undefined,
  { saws }: Pick<Breakdown, 'saws'>,
  stick: boolean,
): Caution {
  if (stick) return 'stick-cut';
  switch (step?.tool) {
    case 'fence':
      return 'rip';
    case 'stop':
      return 'crosscut';
    default:
      return saws.guide?.like === 'plunge' ? 'plunge' : 'sheet-cut';
  }
}
