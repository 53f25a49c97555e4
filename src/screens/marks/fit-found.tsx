import type { Fit } from '../../trade/grooves/fit';
import { Mixed } from '../../ui/mixed';
import * as words from './fit-words';

/** How wide the groove comes, for the stack and for a mark; what the play is, and where it is too much. */
export const FitFound = ({ fit }: { readonly fit: Fit }) => (
  <section class="pad-x facts rests" aria-live="polite">
    <div class="marked">
      <span class="note">{words.grooveForStack}</span>
      <Mixed value={fit.width} size="arm" tape="0.001" />
      <span class="note">{words.forMark(fit.nearest64.value)}</span>
    </div>
    <p class="fact">{words.play(fit.thinnest, fit.loosest)}</p>
    {fit.wideSpread && <p class="fact warn">{words.wideSpread(fit.spread)}</p>}
    {fit.weakGlueLine && <p class="fact warn">{words.weakGlueLine(fit.groups)}</p>}
  </section>
);
