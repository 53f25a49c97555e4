import type { Timer } from '../../job/timers';
import type { TimerStands } from '../../plan/timer-plan';
import { counted } from './counted';

export const nameOf = ({ name }: Timer): string => name || 'Timer';

/** @example span(135) // '2 h 15 min' */
export function span(minutes: number): string {
  const [h, min] = [Math.floor(minutes / 60), minutes % 60];
  if (h >= 48) {
    const [d, rest] = [Math.floor(h / 24), h % 24];
    return `${counted(d, 'day', 'days')}${rest ? ` ${rest} h` : ''}`;
  }
  return [h ? `${h} h` : '', min || !h ? `${min} min` : ''].filter(Boolean).join(' ');
}

/** How a timer stands, in one line. */
export function stands(at: TimerStands): string {
  switch (at.is) {
    case 'no-time':
      return 'Say how long it waits.';
    case 'ready':
      return 'Not started.';
    case 'runs':
      return `${span(at.left)} left.`;
    case 'over':
      return at.past === 0 ? 'Over now.' : `Over since ${span(at.past)}.`;
    case 'clock-back':
      return `Started ${span(at.by)} ahead of this phone’s clock: the clock was set back. Start it again.`;
  }
}
