import { half, inches, isPositive, longest, subtract } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Case } from './case';
import { jointAt, type Meets, pastTop } from './meetings';
import type { CaseProblem, CaseWarning } from './problems';

/** What cannot be where the sides run past the top: an end of it in a rabbet, and what goes round or on that end. */
export function pastTopProblems(c: Case): readonly CaseProblem[] {
  const by = pastTop(c);
  if (!isPositive(by)) return [];
  const on = c.hasLooseTop ? 'loose' : c.hasEdging ? 'edging' : undefined;
  return [
    ...(jointAt(c, 'topRight') === 'rabbet' ? [{ joined: true, code: 'top-low', by } as const] : []),
    ...(on ? [{ joined: true, code: 'no-top-under', on, by } as const] : []),
  ];
}

/** Wood over a dado near an end that breaks out. Common practice, no source. */
const leastOver = inches(3n, 8n);

/** Too little of the sides over the dadoes for the top. */
export function pastTopWarnings({ case: c, joints }: Meets): readonly CaseWarning[] {
  const past = pastTop(c);
  const isDadoed = (['top', 'topRight'] as const).some((end) => jointAt(c, end) === 'dado');
  const over = subtract(past, half(joints.fit));
  const least = longest(figureIn(c.units, leastOver), joints.dado);
  return isPositive(past) && isDadoed && isPositive(subtract(least, over))
    ? [{ joined: true, code: 'thin-over', over, least }]
    : [];
}
