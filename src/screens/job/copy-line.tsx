import { useState } from 'preact/hooks';
import type { Copies, WentOut } from '../copies';
import { copyOut, wentText } from './copy-words';
import * as words from './later-words';

/** Time for a copy: one quiet line with one tap, gone once it is done or put off. What came of the tap stays said. */
export function CopyLine({ copies }: { readonly copies: Copies | undefined }) {
  const [went, setWent] = useState<WentOut>();
  if (!copies || !(copies.due.value || went)) return null;
  return (
    <p class="note" role="status">
      {went ? wentText[went] : words.sinceCopy(copies.since.value)}{' '}
      {copies.due.value && (
        <>
          <button type="button" class="chip" onClick={async () => setWent(await copies.out())}>
            {copyOut}
          </button>{' '}
          <button type="button" class="chip" onClick={copies.putOff}>
            {words.later}
          </button>
        </>
      )}
    </p>
  );
}
