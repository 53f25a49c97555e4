import type { Case, Inside } from '../../trade/carcass/case';
import { openingsUp } from '../../trade/carcass/shelf-places';
import type { Sizes } from '../../trade/carcass/sizes';
import { openingsSay } from './sentence-words';

type UpProps = { readonly c: Case; readonly i: Inside; readonly sizes: Sizes };

/** What fixed shelves that stand evenly leave between them, said once a bay: under the first of them. */
export function OpeningsUp({ c, i, sizes }: UpProps) {
  const own = c.inside.filter((x) => x.kind === 'fixed' && x.bay === i.bay);
  const first = own.find((x) => x.at === undefined);
  if (first?.id !== i.id) return null;
  const says = openingsSay(openingsUp(sizes, i.bay), own.length, sizes.clearHeight.value);
  return (
    <ul class="problems pad-x">
      <li class="note">{says}</li>
    </ul>
  );
}
