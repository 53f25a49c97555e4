import { useEffect } from 'preact/hooks';
import type { Bench } from '../bench';

/** Says, once it is so, that everything of the job is cut. */
export function useFinished(bench: Bench, all: boolean): void {
  const copies = bench.incoming.copies.value;
  useEffect(() => {
    if (all) copies?.finished();
  }, [all, copies]);
}
