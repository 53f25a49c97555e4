import type { Figure } from '../length/bands';
import { emptySlotOn, isBareSlot, isEmpty, pressSlot, type SlotKey, slotValue } from '../length/keypad-slot';
import type { Slot } from '../length/keypad-state';
import { isNegative, type Length } from '../length/length';
import { readLength } from '../length/read';
import { slotOf, slotShown } from '../length/slot-text';
import { type Tape, unitsOf } from '../length/tape';
import type { Units } from '../length/units';

/** What a blank takes. */
export type Wanted = {
  readonly tape: Tape;
  /** `length` in the unit of the tape; `amount` without one; `count` of whole things. */
  readonly fill: 'length' | 'amount' | 'count';
  /** A figure below nothing may be given too: a step, a correction, a place before the datum. */
  readonly signed?: boolean | undefined;
};

/** What stands in the field of a blank. Keys, keyboard and calipers all write there. */
export type Keyed = {
  readonly slot: Slot;
  /** A key was pressed: what the blank held before no longer counts. */
  readonly touched: boolean;
  /** As it was typed; undefined while keys made what stands there. */
  readonly text: string | undefined;
};

/** What a blank is left with. `unread`: what was typed reads as no figure. */
type Given =
  | { readonly is: 'length'; readonly value: Length | undefined; readonly figure?: Figure }
  | { readonly is: 'count'; readonly value: number | undefined }
  | { readonly is: 'nothing' | 'unread' };

/** A count stays under a thousand: no board has more grooves. */
const mostDigits = 3;

const isCount = ({ fill }: Wanted): boolean => fill === 'count';

const tapeOf = ({ fill, tape }: Wanted): Tape => (fill === 'length' ? tape : '1/64');

/** A blank as it is opened; what was left half done stands in its field again. */
export function begun(wanted: Wanted, draft: string): Keyed {
  const slot = emptySlotOn(tapeOf(wanted));
  if (!isCount(wanted)) return { slot, touched: false, text: draft || undefined };
  const half = /^\d{1,3}$/.test(draft);
  return { slot: half ? { ...slot, digits: draft } : slot, touched: half, text: undefined };
}

/** What stands in the field. */
export const shownIn = ({ slot, text }: Keyed): string => text ?? slotShown(slot);

/**
 * A key pressed: it goes on from what stands there, also where that was typed.
 *
 * @returns undefined where it does nothing
 */
export function pressed(keyed: Keyed, key: SlotKey, wanted: Wanted): Keyed | undefined {
  const from = keyed.text === undefined ? keyed.slot : slotOf(keyed.text, tapeOf(wanted));
  if (!from) return onText(keyed, key);
  if (isCount(wanted) && key.key === 'digit' && from.digits.length >= mostDigits) return undefined;
  const next = pressSlot(from, key, wanted.tape);
  if (next.ok) return { slot: next.value, touched: true, text: undefined };
  return key.key === 'erase' && !keyed.touched ? { ...keyed, touched: true } : undefined;
}

/** A text that no keys make: figures go on at its end, and are taken off it. */
function onText(keyed: Keyed, key: SlotKey): Keyed | undefined {
  const text = keyed.text ?? '';
  switch (key.key) {
    case 'digit':
      return typed(keyed, `${text}${key.digit}`);
    case 'point':
      return typed(keyed, `${text}.`);
    case 'erase':
      return typed(keyed, text.slice(0, -1));
    default:
      return undefined;
  }
}

/** Text typed in the field; emptied, nothing stands there. */
export const typed = (keyed: Keyed, text: string): Keyed => ({
  ...keyed,
  slot: { ...emptySlotOn('1/64'), ...unitOnly(keyed.slot) },
  text: text || undefined,
});

const unitOnly = ({ home }: Slot): Partial<Slot> => (home ? { home, unit: home } : {});

/** What is keyed, as the drawing above may follow it. */
export function figureOf(keyed: Keyed, wanted: Wanted): Length | number | undefined {
  const given = givenBy(keyed, wanted);
  return given.is === 'length' || given.is === 'count' ? given.value : undefined;
}

/** What the blank is given when it is left now. */
export function givenBy(keyed: Keyed, wanted: Wanted): Given {
  const { slot, touched, text } = keyed;
  if (text?.trim()) return readTyped(text.trim(), wanted);
  if (!touched) return { is: 'nothing' };
  if (isCount(wanted)) return { is: 'count', value: slot.digits === '' ? undefined : Number(slot.digits) };
  if (isEmpty(slot)) return { is: 'length', value: undefined };
  const bare = slot.unit === (slot.home ?? 'in') && slot.feet === undefined;
  const value = slotValue(slot);
  const figure: Figure = { value, unit: slot.unit, bare, fraction: !isBareSlot(slot), comma: false };
  return { is: 'length', value, figure };
}

function readTyped(text: string, { tape, fill, signed = false }: Wanted): Given {
  const read = readLength(text, { unit: fill === 'length' ? unitsOf(tape) : 'in' });
  if (!read.ok || (!signed && isNegative(read.value.value))) return { is: 'unread' };
  const { value, unit: as, bare, fraction, notes } = read.value;
  const unit: Units = as === 'mm' || as === 'cm' ? 'mm' : 'in';
  const comma = notes.some(({ code }) => code === 'comma-of-thousands');
  return { is: 'length', value, figure: { value, unit, bare, fraction, comma } };
}

/** What is said beside the field: the unit of the figure, where the field does not say it itself. */
export function unitBeside(keyed: Keyed, wanted: Wanted): Units | undefined {
  if (wanted.fill !== 'length' || /[a-z"'’′″“”]/i.test(shownIn(keyed))) return undefined;
  return unitsOf(wanted.tape);
}
