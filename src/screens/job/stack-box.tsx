import { useState } from 'preact/hooks';
import { Chip } from '../../ui/button';
import { Given } from '../../ui/given';
import { Icon } from '../../ui/icon';
import { KeySheet } from '../../ui/key-sheet';
import type { Bench } from '../bench';
import * as words from '../shared/drawer-words';
import { closely } from '../shared/exact-words';
import { SetRows } from '../shared/set-rows';
import { ShimDrawer } from '../shared/shim-drawer';
import { keepLists, listsOf } from '../shared/shop-lists';

/** What lies in the shop's drawers: the dado set, shims for gaps, screws on the shelf. */
export function StackBox({ bench }: { readonly bench: Bench }) {
  return (
    <>
      <section>
        <div class="sechead">
          <h2 class="sec">{words.stack}</h2>
        </div>
        <SetRows bench={bench} singles={['arbor', 'correction']} />
      </section>
      <ShimDrawer bench={bench} />
      <ScrewShelf bench={bench} />
    </>
  );
}

function ScrewShelf({ bench }: { readonly bench: Bench }) {
  const [open, setOpen] = useState(false);
  const { screws } = listsOf(bench.settings.value);
  return (
    <section>
      <div class="sechead">
        <h2 class="sec">{words.screws}</h2>
      </div>
      <div class="pad-x chips wrap">
        {screws.map((x, k) => (
          <button
            key={k}
            type="button"
            class="chip"
            aria-label={words.takeScrew(closely(x))}
            onClick={() => keepLists(bench, { screws: screws.filter((_, j) => j !== k) })}
          >
            <Given value={x} /> <Icon name="cross" />
          </button>
        ))}
        <Chip label={words.more(words.screw)} onTap={() => setOpen(true)} />
      </div>
      {open && (
        <KeySheet
          title={words.screwLength}
          tape="1/64"
          fill="length"
          kind="screw"
          onLength={(value) =>
            value && keepLists(bench, { screws: [...screws, value].sort((a, b) => a.compare(b)) })
          }
          onClose={() => setOpen(false)}
        />
      )}
    </section>
  );
}
