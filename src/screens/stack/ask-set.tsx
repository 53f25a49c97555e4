import { setIn } from '../../trade/stacks/pieces';
import { Button } from '../../ui/button';
import type { Bench } from '../bench';
import { SetRows } from '../shared/set-rows';
import { listsOf } from '../shared/shop-lists';
import { askSet } from '../shared/stack-words';

type AskProps = { readonly bench: Bench; readonly onDone: () => void };

/** Asked once, before anything is reckoned with the dado set: what really lies in its box. */
export function AskSet({ bench, onDone }: AskProps) {
  const ready = setIn(listsOf(bench.settings.value).stack) !== undefined;
  return (
    <section aria-label={askSet.title}>
      <div class="sechead">
        <h2 class="sec">{askSet.title}</h2>
      </div>
      <p class="pad-x note">{askSet.how}</p>
      <SetRows bench={bench} singles={['arbor']} />
      {ready ? (
        <div class="pad-x adds">
          <Button label={askSet.done} look="main" onTap={onDone} />
        </div>
      ) : (
        <p class="pad-x note">{askSet.lacks}</p>
      )}
    </section>
  );
}
