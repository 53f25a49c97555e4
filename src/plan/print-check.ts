import type { Job } from '../job/job';
import { printOf } from '../job/prints';
import { grainOf, unitsOf } from '../length/tape';
import { barOf, hiddenBy, readBar, readWhole, stickMayBeOff } from '../trade/paper/bar';
import { longOf } from './stick-print';
import type { Stick } from './sticks-of';

/** The key the readings of a stick's print are kept under. Stored: the spelling is never changed. */
export const printKey = ({ of, which }: Pick<Stick, 'of' | 'which'>): string => `${of}~${which}`;

/**
 * Whether the print of a stick may be trusted: its two bars within 1 in 1,000, then the whole stick, which decides.
 * What was not read yet is not there. Inches.
 */
export function printCheck(job: Job, stick: Stick) {
  const units = unitsOf(job.tape);
  const said = printOf(job, printKey(stick));
  const long = longOf(stick);
  const drawn = barOf[units];
  const barRead = (read: typeof said.bar) => read && readBar({ drawn, read, stick: long });
  const along = barRead(said.bar);
  const across = barRead(said.across);
  const whole = said.whole && readWhole(long, said.whole, units);
  const bars = { along, across };
  const bad = [along, across].some((bar) => bar && !(bar.ok && bar.value.passes)) || whole?.passes === false;
  return {
    read: said,
    drawn,
    bars,
    whole,
    mayBeOff: stickMayBeOff[units],
    /** What a bar read to one mark of the tape may hide over the whole stick. */
    hidden: hiddenBy(long, drawn, grainOf(job.tape)),
    verdict: bad ? ('refused' as const) : whole ? ('trusted' as const) : ('open' as const),
  };
}

export type PrintCheck = ReturnType<typeof printCheck>;
