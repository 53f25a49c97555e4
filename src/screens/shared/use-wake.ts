import { useEffect, useState } from 'preact/hooks';
import type { Bench } from '../bench';
import { keepAwake, type Wake } from './wake';

/** Keeps the screen awake while a machine card stands, and a newer version from starting under it. */
export function useWake(bench: Bench): Wake {
  const [state, setState] = useState<Wake>('refused');
  useEffect(() => {
    const awake = keepAwake();
    const free = bench.holdSaw();
    const stop = awake.state.subscribe(setState);
    return () => {
      stop();
      free();
      awake.release();
    };
  }, []);
  return state;
}
