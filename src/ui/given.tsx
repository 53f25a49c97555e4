import { asInches, type Length, type Ratio } from '../length/length';
import { showsDecimals, type Tape } from '../length/tape';
import { isMetric, isTapeFraction, spokenNumber, writeDecimals } from '../length/write';
import { Mixed, type Size, Stack } from './mixed';
import { unitInHand } from './unit-in-hand';
import './mixed.css';

/** A number without a unit: pounds, a ratio, a count. It looks as a length does and is not spoken as inches. */
export function Bare({ value, size = 'hand' }: { readonly value: Ratio; readonly size?: Size }) {
  const inch = asInches(value);
  const tape = isTapeFraction(inch) ? '1/64' : '0.001';
  return (
    <>
      <span class={`mx ${size}`} aria-hidden="true">
        <Stack value={inch} tape={tape} />
      </span>
      <span class="sr">{showsDecimals(tape) ? writeDecimals(inch, tape) : spokenNumber(value)}</span>
    </>
  );
}

/** The tape a given figure is shown on: in millimetres where it was given in them. */
export const tapeGiven = (value: Length): Tape => (isMetric(value) ? '1 mm' : '1/64');

/** A figure as it was given, with its unit. */
export const Given = ({ value }: { readonly value: Length }) => (
  <>
    <Mixed value={value} tape={tapeGiven(value)} />
    {unitInHand() === 'in' && !isMetric(value) && <Unit />}
  </>
);

/** The unit of the job, beside a figure or an empty blank; a reader hears it with the figure. */
export const Unit = () => (
  <small class="unit" aria-hidden="true">
    {unitInHand()}
  </small>
);
