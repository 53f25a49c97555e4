import { signal } from '@preact/signals';
import { type Tape, unitsOf } from '../length/tape';
import type { Units } from '../length/units';

/**
 * The tape of what is looked at: the job in hand, or this phone where there is none. One place, because every figure is
 * said in its unit and none decides it.
 */
export const tapeInHand = signal<Tape>('1/32');

/** What a number without a unit is, on every pad and in every blank. */
export const unitInHand = (): Units => unitsOf(tapeInHand.value);

/** The tape a figure is shown and keyed on: in a job in millimetres nothing stands in inches. */
export const shownOn = (tape: Tape): Tape =>
  unitInHand() === 'mm' && unitsOf(tape) === 'in' ? tapeInHand.value : tape;
