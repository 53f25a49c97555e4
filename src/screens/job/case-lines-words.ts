import type { Job } from '../../job/job';
import { hasDrawer } from '../../plan/bank-plan';
import type { CaseLoad } from '../../plan/case-load';
import { shelfMost } from '../../trade/loads/even-shelf';
import { counted } from '../shared/counted';
import { closely } from '../shared/exact-words';
import { partWord } from '../shared/part-words';
import { weight } from '../shared/pounds';

/** @param of the case, where there are several */
export const loads = (of: string): string => (of ? `Loads: ${of}` : 'Loads');

/** What stands in a case, how much of it, and its worst shelf, in one line. */
export function briefly({ things, pounds, unweighed, worst, others }: CaseLoad): string {
  const not = unweighed > 0 ? `, ${unweighed} not weighed` : '';
  const stands =
    things === 0
      ? 'Nothing is said to stand in it'
      : `${counted(things, 'thing', 'things')}, about ${weight(pounds)}${not}`;
  const more = others > 0 ? [`${counted(others, 'more shelf is', 'more shelves are')} over a limit.`] : [];
  return [`${stands}.`, ...(worst ? shelf(worst) : []), ...more].join(' ');
}

/** Every limit it is over, the worse first; else the one it comes nearest to. */
function shelf({ name, by, sag, load, heavy }: NonNullable<CaseLoad['worst']>): readonly string[] {
  const tooHeavy = heavy ? [`${partWord(name)}: ${weight(heavy)} more than a shelf may carry.`] : [];
  const tooFar = sag?.over ? [`${partWord(name)}: sags ${closely(sag.over)} too far.`] : [];
  const over = by === 'load' ? [...tooHeavy, ...tooFar] : [...tooFar, ...tooHeavy];
  if (over.length > 0) return over;
  if (by === 'load' && load)
    return [`${partWord(name)}: carries about ${weight(load)} of the ${weight(shelfMost)} a shelf may.`];
  return sag ? [`${partWord(name)}: sags ${closely(sag.sag)} of ${closely(sag.allowed)}.`] : [];
}

export const things = 'Things to go in';

/** How many things are to go in, and how many of them have no place yet. */
export function thingsTold(job: Pick<Job, 'things' | 'banks'>): string {
  const many = (lots: Job['things']): number => lots.reduce((n, { count }) => n + count, 0);
  const all = many(job.things);
  if (all === 0) return 'Nothing is said yet.';
  const not = many(job.things.filter((t) => t.part === undefined && !hasDrawer(job, t)));
  return `${counted(all, 'thing', 'things')}${not > 0 ? `, ${not} not placed yet` : ''}.`;
}

export const paper = 'On paper';
export const paperTold = 'Lists for the shop, labels, sticks at full size';

export const noted = 'Notes and pictures';
/** @example firstLine('Oak for the doors.\nDamp wall') // 'Oak for the doors.' */
export const firstLine = (note: string): string => note.split('\n', 1)[0] ?? '';
export const picturesTold = (count: number): string =>
  count === 0 ? 'None yet' : counted(count, 'picture', 'pictures');
