import { useMemo } from 'preact/hooks';
import { editJob } from '../../job/edits';
import { type Checklist, misfits } from '../../plan/checklist';
import { begunBy } from '../../plan/usual-kept';
import { Button } from '../../ui/button';
import { Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { workWord } from '../shared/part-words';
import * as words from './words';
import './cuts.css';

const mostShown = 12;

/** Cut parts that no longer fit are named, never changed. */
export function Misfits({ list, bench }: { readonly list: Checklist; readonly bench: Bench }) {
  const found = misfits(list);
  if (found.length === 0) return null;
  return (
    <section class="misfits" aria-label={words.misfitsLabel}>
      <h2>{words.misfits}</h2>
      <ul>
        {found.slice(0, mostShown).map(({ op, was, now, width, depth, row }) => (
          <li key={op.id}>
            <button type="button" class="nextset" onClick={() => bench.go({ at: 'part', id: op.part })}>
              <span class="grow">
                <b>{workWord(op.name)}</b>
                <span class="s muted block">
                  {words.misfit(op, width ? 'width' : depth ? 'depth' : (row ?? 'place'), list.plan.job.tape)}
                </span>
              </span>
              <Mixed value={was} tape={width ? '0.001' : list.plan.job.tape} />
              <span aria-hidden="true">→</span>
              <Mixed value={now} tape={width ? '0.001' : list.plan.job.tape} />
            </button>
          </li>
        ))}
      </ul>
      <BegunBy list={list} bench={bench} />
      {found.length > mostShown && <p class="note pad-x">{words.moreMisfits(found.length - mostShown)}</p>}
    </section>
  );
}

/** A job begun by the usual figures of the other unit goes back to them with one tap. */
function BegunBy({ list: { plan }, bench }: { readonly list: Checklist; readonly bench: Bench }) {
  const usual = useMemo(() => begunBy(plan.job, bench.folded.value, bench.shop.value), [plan]);
  if (!usual) return null;
  return (
    <div class="pad-x adds">
      <p class="note">{words.usualMoved}</p>
      <Button label={words.backToUsual} onTap={() => void bench.act(words.backToUsual, editJob({ usual }))} />
    </div>
  );
}
