import { editCase } from '../../job/edits';
import type { Case } from '../../trade/carcass/case';
import type { Ask } from '../shared/ask';
import * as words from './ask-words';

/** What is chosen, what stands while nothing is said, and the choices. */
const hows = {
  backHow: { title: words.backHow, usual: 'rabbet', choices: words.backHows },
  frameHow: { title: words.frameHow, usual: 'case', choices: words.frameHows },
  frameMeets: { title: words.frameMeets, usual: 'butt', choices: words.frameMeetings },
  toeHow: { title: words.toeHow, usual: 'between', choices: words.toeHows },
  plinthHow: { title: words.plinthHow, usual: 'shimmed', choices: words.plinthHows },
} as const;

/** How the back is held, a frame made, how a toe board stands, how a plinth comes level. */
export function caseHow(c: Case, field: keyof typeof hows): Ask {
  const { title, usual, choices } = hows[field];
  return {
    as: 'choice',
    title,
    now: c[field] ?? usual,
    choices: Object.entries(choices).map(([value, said]) => ({ value, ...said })),
    save: (how) => editCase(c.id, { [field]: how }),
  };
}
