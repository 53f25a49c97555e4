import type { KeypadLook } from '../../length/keypad';
import { isEmpty } from '../../length/keypad-slot';
import { type Tape, unitsOf } from '../../length/tape';
import type { Units } from '../../length/units';

/**
 * The unit of the figure on the pad, before a key of it is pressed and after. Millimetres stand with their figure; what
 * counts pieces, and what is done, has none.
 *
 * @example unitOnPad(look(blank, noLines), '1/32') // 'in'
 */
export function unitOnPad({ slot, done, takenAs, tokens }: KeypadLook, tape: Tape): Units | undefined {
  if (done) return undefined;
  if (!isEmpty(slot)) return takenAs === 'count' || slot.unit === 'mm' ? undefined : 'in';
  const last = tokens[tokens.length - 1];
  const counts = last?.is === 'op' && (last.text === '×' || last.text === '÷');
  return counts || last?.is === 'line' ? undefined : unitsOf(tape);
}
