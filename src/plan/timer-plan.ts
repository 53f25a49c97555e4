import type { Timer } from '../job/timers';

const minute = 60_000;

/**
 * How a timer stands. Minutes are whole: what is left counts up to the next, what is past down to the last.
 *
 * - `no-time`: nothing says how long; `ready`: not begun; `runs`; `over` for so many minutes.
 * - `clock-back`: it began later than it is now, so the clock of the phone was set back by so much since.
 */
export type TimerStands =
  | { readonly is: 'no-time' | 'ready' }
  | { readonly is: 'runs'; readonly left: number; readonly until: number }
  | { readonly is: 'over'; readonly past: number; readonly until: number }
  | { readonly is: 'clock-back'; readonly by: number };

/** How long a timer takes. Minutes. */
export const minutesOf = ({ hours = 0, minutes = 0 }: Timer): number => hours * 60 + minutes;

/** @param now milliseconds since 1970, as the phone's clock has it */
export function timerStands(timer: Timer, now: number): TimerStands {
  const takes = minutesOf(timer);
  if (takes === 0) return { is: 'no-time' };
  if (!timer.begun) return { is: 'ready' };
  const begun = Date.parse(timer.begun);
  if (begun > now) return { is: 'clock-back', by: Math.ceil((begun - now) / minute) };
  const until = begun + takes * minute;
  return now < until
    ? { is: 'runs', left: Math.ceil((until - now) / minute), until }
    : { is: 'over', past: Math.floor((now - until) / minute), until };
}

/** Those that are over and were not seen to be. */
export const overNow = (timers: readonly Timer[], now: number): readonly Timer[] =>
  timers.filter((timer) => !timer.seen && timerStands(timer, now).is === 'over');
