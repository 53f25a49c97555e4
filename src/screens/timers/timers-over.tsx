import { useEffect } from 'preact/hooks';
import { editTimer, type Timer, timersOf } from '../../job/timers';
import { overNow } from '../../plan/timer-plan';
import type { Bench } from '../bench';
import { useNow } from '../shared/use-now';
import { tell } from './tell';
import * as words from './words';
import './timers.css';

type OverBench = Pick<Bench, 'job' | 'act'>;

/** On every page: what waits is over, until it was seen. */
export function TimersOver({ bench }: { readonly bench: OverBench }) {
  const job = bench.job.value;
  const timers = job ? timersOf(job) : [];
  const running = timers.some(({ begun, seen }) => begun && !seen);
  return running ? <Watch bench={bench} timers={timers} /> : null;
}

function Watch({ bench, timers }: { readonly bench: OverBench; readonly timers: readonly Timer[] }) {
  const now = useNow(timers, 'ends');
  const [over] = overNow(timers, now);
  useEffect(() => {
    if (over) void tell(words.isOver(over), over.id);
  }, [over?.id]);
  if (!over) return null;
  return (
    <div class="timerover" role="alert">
      <b>{words.isOver(over)}</b>
      <button
        type="button"
        class="btn"
        onClick={() => void bench.act(words.act(words.seen, over), editTimer(over.id, { seen: true }))}
      >
        {words.seen}
      </button>
    </div>
  );
}
