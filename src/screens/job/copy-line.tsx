import { useState } from 'preact/hooks';
import { Chip } from '../../ui/button';
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
          <Chip label={copyOut} onTap={async () => setWent(await copies.out())} />{' '}
          <Chip label={words.later} onTap={copies.putOff} />
        </>
      )}
    </p>
  );
}
