import type { Length } from '../../length/length';
import { markAt, type Tape, unitsOf } from '../../length/tape';
import { isTapeFraction } from '../../length/write';
import { Mixed, Remainder } from '../../ui/mixed';

/** Exact where a tape can show it, else the mark and what rounding left. */
export function ExactOrMark({ value, tape }: { readonly value: Length; readonly tape: Tape }) {
  if (unitsOf(tape) === 'in' && isTapeFraction(value)) return <Mixed value={value} tape="1/64" />;
  const mark = markAt(value, tape);
  return (
    <>
      <Mixed value={mark.value} rest={mark.rest} tape={tape} />
      <Remainder rest={mark.rest} tape={tape} by={false} />
    </>
  );
}
