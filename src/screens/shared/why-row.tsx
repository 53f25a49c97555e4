import { useState } from 'preact/hooks';
import type { Rounded } from '../../length/round';
import type { Tape } from '../../length/tape';
import type { Sum } from '../../trade/sums/sum';
import { ExactOrMark } from './exact-or-mark';
import { Why } from './why';

type RowProps = {
  readonly words: string;
  readonly sum: Sum;
  readonly tape: Tape;
  /** The mark it is cut to, where that is not the nearest. */
  readonly mark?: Rounded;
};

/** A figure worked out; a tap says why. */
export function WhyRow({ words, sum, tape, mark }: RowProps) {
  const [open, setOpen] = useState(false);
  return (
    <li>
      <button type="button" class="whyrow" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span class="grow">
          {words} <span class="s muted">why?</span>
        </span>
        <ExactOrMark value={sum.value} mark={mark} tape={tape} />
      </button>
      {open && <Why sum={sum} tape={tape} />}
    </li>
  );
}
