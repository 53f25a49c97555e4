import type { Asked, Told } from '../trade/sheets/asked';
import { refit, solve } from '../trade/sheets/solve';

/**
 * The search for plans, off the page's thread: a tap never waits for it. It says each better plan as it finds it, and
 * is stopped by ending the worker: what it said stays.
 */
const tell = (told: Told): void => postMessage(told);

addEventListener('message', ({ data }: MessageEvent<Asked>) => {
  const { two, effort } = data;
  if (data.what === 'refit') {
    const search = refit(two, effort);
    for (;;) {
      const { value, done } = search.next();
      if (done) return tell({ is: 'refitted', refit: value });
    }
  }
  const search = solve(two, effort);
  for (;;) {
    const { value, done } = search.next();
    if (done)
      return tell(value.ok ? { is: 'done', laid: value.value } : { is: 'cannot', error: value.error });
    if (value) tell({ is: 'better', laid: value });
  }
});
