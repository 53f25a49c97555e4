import { useState } from 'preact/hooks';
import type { Tape } from '../../length/tape';
import type { Sum } from '../../trade/sums/sum';
import { ExactOrMark } from './exact-or-mark';
import { Why } from './why';

type RowProps = { readonly words: string; readonly sum: Sum; readonly tape: Tape };

/** A figure worked out; a tap says why. */
export function WhyRow({ words, sum, tape }: RowProps) {
  const [open, setOpen] = useState(false);
  return (
    <li>
      <button type="button" class="whyrow" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span class="grow">
          {words} <span class="s muted">why?</span>
        </span>
        <ExactOrMark value={sum.value} tape={tape} />
      </button>
      {open && <Why sum={sum} tape={tape} />}
    </li>
  );
}
