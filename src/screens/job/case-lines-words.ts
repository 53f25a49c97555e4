import type { Job } from '../../job/job';
import { hasDrawer } from '../../plan/bank-plan';
import type { CaseLoad } from '../../plan/case-load';
import { counted } from '../shared/counted';
import { closely } from '../shared/exact-words';
import { partWord } from '../shared/part-words';
import { weight } from '../shared/pounds';

/** @param of the case, where there are several */
export const loads = (of: string): string => (of ? `Loads: ${of}` : 'Loads');

/** What stands in a case, how much of it, and its worst shelf, in one line. */
export function briefly({ things, pounds, unweighed, worst, heavy }: CaseLoad): string {
  const not = unweighed > 0 ? `, ${unweighed} not weighed` : '';
  const stands =
    things === 0
      ? 'Nothing is said to stand in it'
      : `${counted(things, 'thing', 'things')}, about ${weight(pounds)}${not}`;
  const most = heavy ? ` ${partWord(heavy.name)}: ${weight(heavy.by)} more than a shelf may carry.` : '';
  if (!worst) return `${stands}.${most}`;
  const { name, sag } = worst;
  return `${stands}.${most} ${partWord(name)}: ${sag.over ? `sags ${closely(sag.over)} too far` : `sags ${closely(sag.sag)} of ${closely(sag.allowed)}`}.`;
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
