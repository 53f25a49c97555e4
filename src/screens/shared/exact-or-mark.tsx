import type { Length } from '../../length/length';
import type { Rounded } from '../../length/round';
import { markAt, type Tape, unitsOf } from '../../length/tape';
import { isTapeFraction } from '../../length/write';
import { Mixed, Remainder } from '../../ui/mixed';

type ExactProps = {
  readonly value: Length;
  readonly tape: Tape;
  /** The mark it is cut to, where that is not the nearest: it is shown, though the tape could show the value. */
  readonly mark?: Rounded | undefined;
};

/** Exact where a tape can show it, else the mark and what rounding left. */
export function ExactOrMark({ value, tape, mark: cut }: ExactProps) {
  if (!cut && unitsOf(tape) === 'in' && isTapeFraction(value)) return <Mixed value={value} tape="1/64" />;
  const mark = cut ?? markAt(value, tape);
  return (
    <>
      <Mixed value={mark.value} rest={mark.rest} tape={tape} />
      <Remainder rest={mark.rest} tape={tape} by={false} />
    </>
  );
}
