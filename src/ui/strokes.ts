import type { SlotKey } from '../length/keypad-slot';
import { walkRule } from './edge-rule';

/** Keys of a desk keyboard. What makes up a length goes to the typed field, as does a caliper's reading. */
export function strokes(
  event: KeyboardEvent,
  press: (key: SlotKey) => void,
  done: () => void,
  field: HTMLInputElement | null,
): void {
  if (event.target instanceof HTMLInputElement || event.ctrlKey || event.metaKey || event.altKey) return;
  if (event.key === '[') press({ key: 'scant' });
  else if (event.key === ']') press({ key: 'strong' });
  else if (event.key === 'Backspace') press({ key: 'erase' });
  else if (event.key === 'Enter' && !(event.target instanceof HTMLButtonElement)) done();
  else if (field && /^[\d.,'"/-]$/.test(event.key)) {
    field.focus(); // the stroke itself then lands at the end of the field
    field.setSelectionRange(field.value.length, field.value.length);
    return;
  } else if (/^\d$/.test(event.key)) press({ key: 'digit', digit: Number(event.key) });
  else if (!walkRule(event)) return;
  event.preventDefault();
}
