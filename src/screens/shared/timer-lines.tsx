import type { Job } from '../../job/job';
import { timersOf } from '../../job/timers';
import { timerStands } from '../../plan/timer-plan';
import { Icon } from '../../ui/icon';
import { nameOf, stands } from './timer-words';
import { useNow } from './use-now';
import './rows.css';

/** What waits, and how long yet, a line each; nothing where no timer was started. */
export function TimerLines({ job }: { readonly job: Job }) {
  const timers = timersOf(job).filter(({ begun }) => begun);
  const now = useNow(timers);
  return (
    <>
      {timers.map((timer) => (
        <a key={timer.id} class="nextset" href="#/timers">
          <span class="grow">
            <b>{nameOf(timer)}</b>
            <span class="s muted block">{stands(timerStands(timer, now))}</span>
          </span>
          <Icon name="next" />
        </a>
      ))}
    </>
  );
}
