import { docksOpen } from '../../ui/dock';
import { drafts, noteDraft, pageOfDrafts } from '../../ui/drafts';
import type { Bench } from '../bench';
import './half-done.css';

/** What was typed on this page, was left and does not count yet: said in words, until it is taken or left out. */
export function HalfDone({ bench }: { readonly bench: Bench }) {
  bench.route.value; // another page has others
  const here = Object.entries(drafts.value).filter(
    ([place, { title }]) => title !== '' && place.startsWith(`${pageOfDrafts()} `),
  );
  const [first] = here;
  if (!first || docksOpen.value > 0) return null;
  const [place, { title, text }] = first;
  return (
    <div class="trouble calm halfdone" role="status">
      <span>
        Not taken yet: “{text}” for {title}. Open it to go on
        {here.length > 1 ? `; ${here.length - 1} more` : ''}.
      </span>
      <button type="button" class="icon box" onClick={() => noteDraft(place, title, '')}>
        Leave it out
      </button>
    </div>
  );
}
