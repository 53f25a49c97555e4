import { useEffect, useState } from 'preact/hooks';
import type { Timer } from '../../job/timers';
import { timerStands } from '../../plan/timer-plan';

const minute = 60_000;
/** The longest a page can wait at once: 2^31 - 1 milliseconds. */
const longest = 2 ** 31 - 1;

/**
 * The time now, looked at again when what is said of one of the timers changes: each whole minute of one that runs or
 * is over, and when the page is looked at again. With no timer begun nothing wakes.
 */
export function useNow(timers: readonly Timer[], only: 'minutes' | 'ends' = 'minutes'): number {
  const [, draw] = useState(0);
  // what began since the page was drawn began before now
  const now = Date.now();
  useEffect(() => {
    const look = () => draw((n) => n + 1);
    const wait = untilNext(timers, Date.now(), only);
    const timeout = wait === undefined ? undefined : setTimeout(look, Math.min(wait, longest));
    document.addEventListener('visibilitychange', look);
    return () => {
      clearTimeout(timeout);
      document.removeEventListener('visibilitychange', look);
    };
  });
  return now;
}

/** Milliseconds until anything said of the timers changes; nothing where nothing will. */
function untilNext(timers: readonly Timer[], now: number, only: 'minutes' | 'ends'): number | undefined {
  const waits = timers.flatMap((timer) => {
    const stands = timerStands(timer, now);
    if (stands.is !== 'runs' && (stands.is !== 'over' || only === 'ends')) return [];
    const left = stands.until - now;
    if (only === 'ends') return [left];
    // what is left counts up to the next whole minute, what is past down
    return [((left % minute) + minute) % minute || minute];
  });
  return waits.length > 0 ? Math.min(...waits) + 1 : undefined;
}
