import type { Bench } from '../bench';
import { shim } from './drawer-words';
import { PieceChips } from './piece-chips';
import { keepLists, listsOf } from './shop-lists';
import { askShims } from './stack-words';

/** The shims for gaps that lie in the drawer, as typed. */
export function ShimDrawer({ bench }: { readonly bench: Bench }) {
  const { shims } = listsOf(bench.settings.value);
  return (
    <section aria-label={askShims.title}>
      <div class="sechead">
        <h2 class="sec">{askShims.title}</h2>
      </div>
      {shims.length === 0 && <p class="pad-x note">{askShims.how}</p>}
      <PieceChips
        pieces={shims}
        onPieces={(now) => keepLists(bench, { shims: now })}
        add={[{ label: shim, kind: 'shim' }]}
      />
    </section>
  );
}
