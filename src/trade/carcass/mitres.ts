import { absolute, equals, type Length, subtract } from '../../length/length';
import { type Flat, type Hand, jointAt, type Meets } from './meetings';
import type { Part } from './part';
import type { CaseProblem } from './problems';

const flats: readonly Flat[] = ['bottom', 'top'];

/** Whether the sides are mitred with a bottom or top. @example isMitred(newCase('c'), 'top') // false */
export const isMitred = (c: Meets['case'], flat: Flat): boolean =>
  (flat === 'bottom' || c.hasTop) && jointAt(c, flat) === 'mitre';

/** The ends of a side, bottom or top that are mitred. */
export function mitresAt(c: Meets['case'], role: Hand | Flat): Pick<Part, 'mitres'> {
  const ends =
    role === 'bottom' || role === 'top'
      ? isMitred(c, role)
        ? ['left', 'right']
        : []
      : flats.filter((flat) => isMitred(c, flat));
  return ends.length > 0 ? { mitres: ends } : {};
}

/** How much of a mitred bottom or top stays behind the back in a rabbet; nothing where it is not mitred. Inches. */
export const behindMitred = (sizes: Meets, flat: Flat): Length | undefined =>
  isMitred(sizes.case, flat) ? subtract(sizes.thick(flat), sizes.joints.backDeep) : undefined;

/** At 45° a mitre goes from corner to corner only where both are one thickness. */
export const mitreProblems = ({ case: c, thick }: Meets): readonly CaseProblem[] =>
  flats.flatMap((flat): readonly CaseProblem[] => {
    const [own, side] = [thick(flat), thick('side')];
    if (!isMitred(c, flat) || equals(own, side)) return [];
    return [{ joined: true, code: 'mitre-unlike', part: flat, own, side, by: absolute(subtract(own, side)) }];
  });
