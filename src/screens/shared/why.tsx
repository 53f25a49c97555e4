import { useState } from 'preact/hooks';
import { absolute } from '../../length/length';
import type { Tape } from '../../length/tape';
import type { Sum } from '../../trade/sums/sum';
import { takesOff } from '../../trade/sums/sum';
import { tapeGiven } from '../../ui/given';
import { Inline } from '../../ui/mixed';
import { termWords } from './sum-words';
import './why.css';

type WhyProps = { readonly sum: Sum; readonly tape: Tape };

/** The sum a figure comes from, in words; a line that is itself worked out can be opened. */
export function Why({ sum, tape }: WhyProps) {
  return (
    <ul class="why">
      {sum.terms.map((term, k) => (
        <Line key={k} term={term} first={k === 0} tape={tape} />
      ))}
      {sum.shares !== undefined && <li class="shared">shared by {sum.shares}</li>}
    </ul>
  );
}

function Line({
  term,
  first,
  tape,
}: {
  readonly term: Sum['terms'][number];
  readonly first: boolean;
  readonly tape: Tape;
}) {
  const [open, setOpen] = useState(false);
  const from = term.from && term.from.terms.length > 1 ? term.from : undefined;
  const words = `${first && !takesOff(term) ? '' : takesOff(term) ? 'less ' : 'plus '}${termWords(term.what)}`;
  return (
    <li>
      {from ? (
        <button type="button" class="whyline" aria-expanded={open} onClick={() => setOpen(!open)}>
          <span>{words}</span>
          <Inline value={absolute(term.value)} tape={tapeGiven(term.value)} />
        </button>
      ) : (
        <span class="whyline">
          <span>{words}</span>
          <Inline value={absolute(term.value)} tape={tapeGiven(term.value)} />
        </span>
      )}
      {open && from && <Why sum={from} tape={tape} />}
    </li>
  );
}
