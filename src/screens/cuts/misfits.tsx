import { type Checklist, misfits } from '../../plan/checklist';
import { Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { whichWords } from '../shared/cut-words';

/** Cut parts that no longer fit are named, never changed. */
export function Misfits({ list, bench }: { readonly list: Checklist; readonly bench: Bench }) {
  const found = misfits(list);
  if (found.length === 0) return null;
  return (
    <section class="misfits" aria-label="Cut, and no longer wanted at that figure">
      <h2>Cut, and now wanted otherwise</h2>
      <ul>
        {found.slice(0, 12).map(({ op, was, now, width, depth }) => (
          <li key={op.id}>
            <button type="button" class="nextset" onClick={() => bench.go({ at: 'part', id: op.part })}>
              <span class="grow">
                <b>{op.name}</b>
                <span class="s muted block">
                  {whichWords(op) || op.what}
                  {width ? ', how wide' : depth ? ', how deep' : ''}: recut, or make its mates match
                </span>
              </span>
              <Mixed value={was} tape={width ? '0.001' : list.plan.job.tape} />
              <span aria-hidden="true">→</span>
              <Mixed value={now} tape={width ? '0.001' : list.plan.job.tape} />
            </button>
          </li>
        ))}
      </ul>
      {found.length > 12 && <p class="note pad-x">and {found.length - 12} more</p>}
    </section>
  );
}
