import type { ComponentChildren as Blank } from 'preact';
import { isPositive } from '../../length/length';
import { assertNever } from '../../length/result';
import type { StopProblem, StopWarning } from '../../trade/carcass/stop-problem';
import { exactly as w } from '../shared/exact-words';

export const stopTitles = {
  stopAt: 'Case bottom to the stop strip',
  stopWide: 'How wide the stop strip is',
  stopBack: 'How far back the face of the stop strip stands',
  stopPlay: 'How far the stop strip is clear at each end',
} as const;

export const underTop = 'under the top';

type At = Readonly<Record<'wide' | 'at' | 'back' | 'play', Blank>>;

/** Of several in its bay which, from the bottom up. */
export const stopSentence = (bay: Blank, at: At, no?: number) => (
  <>
    {no === undefined ? 'A stop strip' : `Stop strip ${no}`}
    {bay}, {at.wide} wide, its lower edge {at.at} over the bottom, its face {at.back} behind the front edges;{' '}
    {at.play} clear at each end.
  </>
);

/** What keeps it from standing so, by how much, and what would fit. */
export function stopProblemText(problem: StopProblem): string {
  switch (problem.code) {
    case 'stop-short':
      return `Nothing is left of the stop strip: what is clear at its ends is ${w(problem.by)} over the bay.`;
    case 'stop-behind':
      return `The stop strip stands ${w(problem.by)} past the back. Its face at most ${w(problem.most)} behind the front edges.`;
    case 'stop-before':
      return `The stop strip stands ${w(problem.by)} before the front edges. Make it 0 or more.`;
    case 'stop-narrow':
      return 'The stop strip must be more than 0 wide.';
    default:
      return assertNever(problem);
  }
}

/** The blank that makes it. */
export function stopField({ code }: StopProblem | StopWarning): 'front' | 'play' | 'wide' | 'at' {
  switch (code) {
    case 'stop-short':
      return 'play';
    case 'stop-behind':
    case 'stop-before':
      return 'front';
    case 'stop-narrow':
      return 'wide';
    case 'stop-on-trays':
    case 'stop-on-drawers':
    case 'stop-strikes':
      return 'at';
    default:
      return assertNever(code);
  }
}

/** What is worth a look. */
export function stopWarningText(warning: StopWarning): string {
  switch (warning.code) {
    case 'stop-on-trays':
      return 'The stop strip stands before the grooves of trays: a tray there does not come out past it.';
    case 'stop-on-drawers':
      return 'Drawers stand in this bay: only their fronts close on the stop strip, their boxes must pass under it or over it.';
    case 'stop-strikes':
      return `The box of drawer ${warning.drawer.no}${inColumn(warning.drawer.column)} runs ${w(warning.by)} into the stop strip. ${clears(warning)}`;
    default:
      return assertNever(warning);
  }
}

const inColumn = (column: number | undefined): string => (column === undefined ? '' : ` in column ${column}`);

type Strikes = Extract<StopWarning, { code: 'stop-strikes' }>;

/** What would fit: another place, else a narrower strip. */
function clears({ at, most }: Pick<Strikes, 'at' | 'most'>): string {
  if (at) return `With its lower edge ${w(at)} over the bottom it just clears the boxes.`;
  return isPositive(most)
    ? `No place in this bay takes it: at most ${w(most)} wide would fit.`
    : 'No room is left beside the boxes: have them lower, or no strip here.';
}
