import { useEffect, useState } from 'preact/hooks';
import type { Bench } from '../bench';
import { counted } from '../shared/counted';
import { type WentOut, wentText } from './copy-words';

/** Time for a copy: one quiet line with one tap, gone once it is done or put off. What came of the tap stays said. */
export function CopyLine({ bench }: { readonly bench: Bench }) {
  const copies = bench.incoming.copies.value;
  const [went, setWent] = useState<WentOut>();
  if (!copies || !(copies.due.value || went)) return null;
  return (
    <p class="note" role="status">
      {went ? wentText[went] : `${counted(copies.since.value, 'change', 'changes')} since the last copy out.`}{' '}
      {copies.due.value && (
        <>
          <button type="button" class="chip" onClick={async () => setWent(await copies.out())}>
            Copy everything out
          </button>{' '}
          <button type="button" class="chip" onClick={copies.putOff}>
            Later
          </button>
        </>
      )}
    </p>
  );
}

/** Says, once it is so, that everything of the job is cut. */
export function useFinished(bench: Bench, all: boolean): void {
  const copies = bench.incoming.copies.value;
  useEffect(() => {
    if (all) copies?.finished();
  }, [all, copies]);
}
