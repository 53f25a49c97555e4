import { assertNever } from '../../length/result';
import type { BlankError } from '../../trade/fronts/blank';
import { exactlyOrMetric as w } from '../shared/exact-words';

/** What keeps the fronts of a column from coming out of one blank. */
export function blankErrorText(error: BlankError): string {
  switch (error.code) {
    case 'kerf-missing':
      return 'Say the kerf of the blade in Shop figures: it is lost at every cut.';
    case 'core-gone':
      return `The bands leave nothing of front ${error.front}: ${w(error.by)} too thick.`;
    case 'negative':
      return `The ${blankFields[error.what]} is ${w(error.by)} under nothing: nothing or more.`;
    default:
      return assertNever(error);
  }
}

const blankFields = { trim: 'trim', band: 'band', between: 'gap between the fronts' } as const;
