import {
  emptySlotOn,
  isEmpty,
  pressSlot,
  type Slot,
  type SlotKey,
  slotText,
  slotValue,
} from '../length/keypad-slot';
import { isNegative, type Length } from '../length/length';
import { readLength } from '../length/read';
import { type Tape, unitsOf } from '../length/tape';

/** What a blank takes. */
export type Wanted = {
  readonly tape: Tape;
  /** `length` with the edge rule; `amount` the same without units; `count` with digits alone. */
  readonly fill: 'length' | 'amount' | 'count';
  /** A figure below nothing may be given too: a step, a correction, a place before the datum. */
  readonly signed?: boolean | undefined;
};

/** What was keyed and what was typed into a blank: both stand, and the one used last counts. */
export type Keyed = {
  readonly slot: Slot;
  /** A key was pressed: what the blank held before no longer counts. */
  readonly touched: boolean;
  readonly typing: string;
  readonly last: 'keys' | 'text';
};

/** What a blank is left with. `unread`: what was typed reads as no figure. */
type Given =
  | { readonly is: 'length'; readonly value: Length | undefined }
  | { readonly is: 'count'; readonly value: number | undefined }
  | { readonly is: 'nothing' | 'unread' };

/** A count stays under a thousand: no board has more grooves. */
const mostDigits = 3;

const isCount = ({ fill }: Wanted): boolean => fill === 'count';

/** A blank as it is opened; a count half keyed is on its keys again, a length half typed in its field. */
export function begun(wanted: Wanted, draft: string): Keyed {
  const empty = emptySlotOn(wanted.fill === 'length' ? wanted.tape : '1/64');
  if (!isCount(wanted)) return { slot: empty, touched: false, typing: draft, last: 'text' };
  const slot = /^\d{1,3}$/.test(draft) ? { ...empty, digits: draft } : empty;
  return { slot, touched: draft !== '', typing: '', last: 'text' };
}

/**
 * A key pressed: the keys count from now on, also where this one does nothing.
 *
 * @param draft what stands half typed: once a key is pressed, it is let go
 * @returns undefined where a count is as long as it may be
 */
export function pressed(
  keyed: Keyed,
  key: SlotKey,
  { wanted, draft }: { readonly wanted: Wanted; readonly draft: string },
): Keyed | undefined {
  if (isCount(wanted) && key.key === 'digit' && keyed.slot.digits.length >= mostDigits) return undefined;
  const next = pressSlot(keyed.slot, key, wanted.tape);
  return {
    slot: next.ok ? next.value : keyed.slot,
    touched: true,
    typing: keyed.typing === draft ? '' : keyed.typing,
    last: 'keys',
  };
}

/** Text typed in the field; emptied, what was keyed counts again. */
export const typed = (keyed: Keyed, text: string): Keyed => ({
  ...keyed,
  typing: text,
  last: text === '' && keyed.touched ? 'keys' : 'text',
});

/** What is keyed, as the drawing above may follow it. */
export function figureOf({ slot }: Keyed, wanted: Wanted): Length | number | undefined {
  if (isEmpty(slot)) return undefined;
  return isCount(wanted) ? Number(slot.digits) : slotValue(slot);
}

/** What is keyed, as a draft of its blank. */
export function draftOf({ slot }: Keyed, wanted: Wanted): string {
  if (isEmpty(slot)) return '';
  return isCount(wanted) ? slot.digits : slotText(slot);
}

const textCounts = ({ typing, last }: Keyed): boolean => typing.trim() !== '' && last === 'text';

/** What the blank is given when it is left now. */
export function givenBy(keyed: Keyed, wanted: Wanted): Given {
  const { slot, touched } = keyed;
  if (textCounts(keyed)) {
    const value = readTyped(keyed.typing.trim(), wanted);
    return value ? { is: 'length', value } : { is: 'unread' };
  }
  if (!touched) return { is: 'nothing' };
  if (!isCount(wanted)) return { is: 'length', value: isEmpty(slot) ? undefined : slotValue(slot) };
  return { is: 'count', value: slot.digits === '' ? undefined : Number(slot.digits) };
}

/** What stays a draft once it is given: what was typed and not used. */
export const leftOver = (keyed: Keyed): string => (textCounts(keyed) ? '' : keyed.typing.trim());

function readTyped(text: string, { tape, signed = false }: Wanted): Length | undefined {
  const read = readLength(text, { unit: unitsOf(tape) });
  return read.ok && (signed || !isNegative(read.value.value)) ? read.value.value : undefined;
}
