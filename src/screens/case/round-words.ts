import { assertNever } from '../../length/result';
import type { CaseField } from '../../trade/carcass/problems';
import type { RoundProblem, RoundWarning } from '../../trade/carcass/round-problems';
import { exactly as w } from '../shared/exact-words';

/** What keeps what goes round a case from being cut, by how much, and what would fit. */
export function roundProblemText(problem: RoundProblem): string {
  switch (problem.code) {
    case 'back-too-thick':
      return `The back is ${w(problem.by)} too thick for a groove ${w(problem.groove)} wide.`;
    case 'no-depth':
      return `The groove for the back, and what is left behind it, take the whole depth and ${w(problem.by)} more.`;
    case 'cleats-behind':
      return `Cleats lie behind a back in a groove: what is left there is ${w(problem.by)} short. At least ${w(problem.least)}.`;
    default:
      return assertNever(problem);
  }
}

/** The blank that makes it. */
export function roundField(problem: RoundProblem | RoundWarning): CaseField {
  switch (problem.code) {
    case 'back-too-thick':
      return 'backGrooveWide';
    case 'no-depth':
    case 'cleats-behind':
    case 'thin-land':
      return 'backLand';
    default:
      return assertNever(problem);
  }
}

/** What is worth a look in it. Limits are common practice. */
export function roundWarningText(warning: RoundWarning): string {
  switch (warning.code) {
    case 'thin-land':
      return `Only ${w(warning.land)} is left behind the groove for the back: it may break out. Keep ${w(warning.least)}.`;
    default:
      return assertNever(warning.code);
  }
}
