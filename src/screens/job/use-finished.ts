import { useEffect } from 'preact/hooks';
import type { Copies } from '../copies';

/** Says, once it is so, that everything of the job is cut. */
export function useFinished(copies: Copies | undefined, all: boolean): void {
  useEffect(() => {
    if (all) copies?.finished();
  }, [all, copies]);
}
