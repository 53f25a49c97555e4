import { useState } from 'preact/hooks';
import { equals, isZero } from '../../length/length';
import type { Tape } from '../../length/tape';
import type { Size } from '../../trade/carcass/part';
import { Mixed, Remainder } from '../../ui/mixed';
import { Why } from '../shared/why';
import * as words from './words';
import './parts.css';

type RowProps = { readonly label: string; readonly size: Size; readonly tape: Tape };

/** A size of a part; a tap says the sum it comes from, and how it is rounded. */
export function SizeRow({ label, size: { sum, mark, mode }, tape }: RowProps) {
  const [open, setOpen] = useState(false);
  return (
    <div>
      <button type="button" class="nextset sizerow" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span class="grow">
          <b>{label}</b>
          <span class="s muted block">{words.why}</span>
        </span>
        {isZero(sum.value) ? (
          <span class="muted">{words.notSaid}</span>
        ) : (
          <>
            <Mixed value={mark.value} rest={mark.rest} size="bench" tape={tape} />
            <Remainder rest={mark.rest} tape={tape} by={false} />
          </>
        )}
      </button>
      {open && !isZero(sum.value) && (
        <div class="pad-x">
          <Why sum={sum} tape={tape} />
          <p class="note">{equals(sum.value, mark.value) ? words.exact : words.rounded(mode, sum.value)}</p>
        </div>
      )}
    </div>
  );
}
