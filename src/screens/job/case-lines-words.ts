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
