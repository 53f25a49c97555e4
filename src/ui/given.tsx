import { asInches, type Length, type Ratio } from '../length/length';
import type { Tape } from '../length/tape';
import { isMetric, isTapeFraction, spokenNumber, writeDecimal, writeNumber } from '../length/write';
import { Mixed, type Size, Stack } from './mixed';
import { unitInHand } from './unit-in-hand';
import './mixed.css';

/** A number without a unit as text; in a job in millimetres no fraction stands anywhere. */
export const writeBare = (x: Length): string =>
  unitInHand() === 'mm' ? writeDecimal(x).replace(/\.?0+$/, '') : writeNumber(x);

/** A number without a unit: pounds, a ratio, a count. It looks as a length does and is not spoken as inches. */
export function Bare({ value, size = 'hand' }: { readonly value: Ratio; readonly size?: Size }) {
  const inch = asInches(value);
  const whole = unitInHand() === 'in' && isTapeFraction(inch);
  return (
    <>
      <span class={`mx ${size}`} aria-hidden="true">
        {whole ? <Stack value={inch} tape="1/64" /> : <span class="w">{writeBare(inch)}</span>}
      </span>
      <span class="sr">{whole ? spokenNumber(value) : writeBare(inch)}</span>
    </>
  );
}

/** The tape a given figure is shown on: in millimetres where it was given in them. */
export const tapeGiven = (value: Length): Tape => (isMetric(value) ? '1 mm' : '1/64');

type GivenProps = {
  readonly value: Length;
  /** Of a thing made elsewhere, in a unit of its own. */
  readonly asMade?: boolean | undefined;
};

/** A figure as it was given, with its unit; of a thing made in inches they stand beside its millimetres. */
export const Given = ({ value, asMade }: GivenProps) => (
  <>
    <Mixed value={value} tape={tapeGiven(value)} />
    {unitInHand() === 'in' && !isMetric(value) && <Unit />}
    {asMade && unitInHand() === 'mm' && isTapeFraction(value) && (
      <small class="unit own">{writeNumber(value)} in</small>
    )}
  </>
);

/** The unit of the job, beside a figure or an empty blank; a reader hears it with the figure. */
export const Unit = () => (
  <small class="unit" aria-hidden="true">
    {unitInHand()}
  </small>
);
