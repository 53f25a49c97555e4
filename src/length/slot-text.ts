import { emptySlotOn, isBareSlot, isEmpty, slotText } from './keypad-slot';
import type { Slot } from './keypad-state';
import type { Tape } from './tape';

/** The figure as it stands on a pad, where its unit is said beside it: `18`, `18.`, `13 29/64`. */
export const slotShown = (slot: Slot): string =>
  isEmpty(slot) ? '' : isBareSlot(slot) ? slot.digits : slotText(slot);

/**
 * A text as keys would have made it, so that they can go on from it.
 *
 * @returns undefined where no keys make it
 * @example slotOf('13 7/16', '1/32') // 13 and 28 sixty-fourths
 */
export function slotOf(text: string, tape: Tape): Slot | undefined {
  const empty = emptySlotOn(tape);
  const found = /^(\d{1,9}(?:\.\d*)?|\.\d+)?(?:(?:^| )(\d{1,2})\/(2|4|8|16|32|64))?( mm|")?$/.exec(
    text.trim(),
  );
  if (!found) return undefined;
  const [, digits = '', n, d, mark] = found;
  const unit = mark ? (mark === '"' ? 'in' : 'mm') : empty.unit;
  if (n === undefined) return { ...empty, digits, unit };
  if (unit === 'mm' || digits.includes('.')) return undefined;
  return { ...empty, digits, unit, sixtyFourths: Number(n) * (64 / Number(d)) };
}
