import { useState } from 'preact/hooks';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { type WentOut, wentText } from './copy-words';

/** One tap for everything, and what came of it. */
export function CopyOut({ bench, main = false }: { readonly bench: Bench; readonly main?: boolean }) {
  const [went, setWent] = useState<WentOut>();
  const copies = bench.incoming.copies.value;
  if (!copies) return null;
  return (
    <>
      <button
        type="button"
        class={main ? 'btn main full' : 'btn'}
        onClick={async () => setWent(await copies.out())}
      >
        <Icon name="share" />
        Copy everything out
      </button>
      <p class="note went" role="status">
        {went && wentText[went]}
      </p>
    </>
  );
}

/** When everything was last copied out, in words. */
export function LastCopied({ bench }: { readonly bench: Bench }) {
  const copies = bench.incoming.copies.value;
  const at = copies?.at.value;
  if (!copies) return null;
  const since = copies.since.value;
  const changes = since === 1 ? 'One change' : `${since} changes`;
  return (
    <p>
      {at === undefined
        ? `Not copied out yet. ${changes} made here.`
        : `Last copied out on ${new Date(at).toLocaleDateString()}. ${since === 0 ? 'Nothing has changed since.' : `${changes} since.`}`}
    </p>
  );
}
