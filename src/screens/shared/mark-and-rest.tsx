import type { Rounded } from '../../length/round';
import type { Tape } from '../../length/tape';
import { remainder } from '../../length/write';
import { Inline, Mixed, Remainder } from '../../ui/mixed';
import './mark-and-rest.css';

type MarkProps = { readonly mark: Rounded; readonly tape: Tape };

/** A mark of a list, what rounding left in small under it. */
export const MarkAndRest = ({ mark: { value, rest }, tape }: MarkProps) => (
  <span class="markrest">
    <Mixed value={value} rest={rest} tape={tape} />
    <Remainder rest={rest} tape={tape} by={false} />
  </span>
);

/** A mark in a sentence with what rounding left: `5 31/32 strong 0.008`. */
export function InlineMark({ mark: { value, rest }, tape }: MarkProps) {
  const left = remainder(rest, tape);
  return (
    <>
      <Inline value={value} tape={tape} />
      {left?.by && (
        <span class="rem">
          {' '}
          {left.word} {left.by}
        </span>
      )}
    </>
  );
}
