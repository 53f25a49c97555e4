import { emptySlot, type Slot } from './keypad-state';
import { add, fromMillimetres, inches, isNegative, type Length, subtract, times, zero } from './length';
import { err, ok, type Result } from './result';
import { type Tape, unitsOf } from './tape';
import { writeLength } from './write';

/** An empty figure in the unit of the tape: a bare number is never guessed from its size. */
export const emptySlotOn = (tape: Tape): Slot =>
  unitsOf(tape) === 'mm' ? { digits: '', unit: 'mm', home: 'mm' } : emptySlot;

export type SlotKey =
  | { readonly key: 'digit'; readonly digit: number }
  | { readonly key: 'point' }
  | { readonly key: 'fraction'; readonly sixteenths: number }
  | { readonly key: 'scant' }
  | { readonly key: 'strong' }
  | { readonly key: 'feet' }
  | { readonly key: 'mm' }
  | { readonly key: 'erase' };

/** Why a key does nothing just now. */
export type Refused =
  | 'too-many-digits'
  | 'second-point'
  | 'decimal-has-no-fraction'
  | 'millimetres-have-no-fraction'
  | 'feet-need-a-number'
  | 'feet-already'
  | 'nothing-to-move'
  | 'nothing-to-erase'
  | 'nothing-to-close'
  | 'figure-first'
  | 'sign-first'
  | 'nothing-to-swap';

const most = 9;

/** Scant and strong move one step: 1/64 on a tape read in 64ths, thousandths or millimetres, else 1/32. In 64ths. */
const nudgeOf = (tape: Tape): number => (tape === '1/16' || tape === '1/32' ? 2 : 1);

/**
 * A key pressed while a figure is keyed.
 *
 * @example pressSlot({ digits: '13', unit: 'in' }, { key: 'fraction', sixteenths: 7 }, '1/32') // 13 7/16
 */
export function pressSlot(slot: Slot, key: SlotKey, tape: Tape): Result<Slot, Refused> {
  switch (key.key) {
    case 'digit':
      return digit(slot, key.digit);
    case 'point':
      if (slot.digits.includes('.')) return err('second-point');
      if (slot.sixtyFourths !== undefined) return err('decimal-has-no-fraction');
      return ok({ ...slot, digits: `${slot.digits || '0'}.` });
    case 'fraction':
      return fraction(slot, key.sixteenths * 4);
    case 'scant':
      return moved(slot, -nudgeOf(tape));
    case 'strong':
      return moved(slot, nudgeOf(tape));
    case 'feet':
      return feet(slot);
    case 'mm':
      return millimetres(slot);
    case 'erase':
      return erase(slot);
  }
}

function digit(slot: Slot, d: number): Result<Slot, Refused> {
  if (slot.digits.replace('.', '').length >= most) return err('too-many-digits');
  const digits = slot.digits === '0' ? `${d}` : `${slot.digits}${d}`;
  return ok({ ...slot, digits });
}

function fraction(slot: Slot, sixtyFourths: number): Result<Slot, Refused> {
  if (slot.unit === 'mm' && slot.digits === '') return ok({ ...slot, unit: 'in', sixtyFourths }); // only an inch has one
  if (slot.digits.includes('.')) return err('decimal-has-no-fraction');
  if (slot.unit === 'mm') return err('millimetres-have-no-fraction');
  return ok(slot.sixtyFourths === sixtyFourths ? without(slot, 'sixtyFourths') : { ...slot, sixtyFourths });
}

function moved(slot: Slot, by: number): Result<Slot, Refused> {
  if (slot.digits.includes('.')) return err('decimal-has-no-fraction');
  if (slot.unit === 'mm') return err('millimetres-have-no-fraction');
  if (isEmpty(slot)) return err('nothing-to-move');
  const next = { ...slot, sixtyFourths: (slot.sixtyFourths ?? 0) + by };
  return isNegative(slotValue(next)) ? err('nothing-to-move') : ok(next);
}

function feet(slot: Slot): Result<Slot, Refused> {
  if (slot.feet !== undefined) return err('feet-already');
  if (slot.digits === '' || slot.sixtyFourths !== undefined || slot.unit === 'mm')
    return err('feet-need-a-number');
  return ok({ ...slot, feet: slot.digits, digits: '' });
}

function millimetres(slot: Slot): Result<Slot, Refused> {
  if (slot.unit === 'mm') return ok({ ...slot, unit: 'in' });
  if (slot.home === 'mm' && slot.digits === '' && slot.sixtyFourths === undefined)
    return ok({ ...slot, unit: 'mm' });
  if (slot.sixtyFourths !== undefined) return err('millimetres-have-no-fraction');
  if (slot.feet !== undefined) return err('feet-already');
  return slot.digits === '' ? err('figure-first') : ok({ ...slot, unit: 'mm' });
}

function erase(slot: Slot): Result<Slot, Refused> {
  if (slot.unit === 'mm' && slot.home !== 'mm') return ok({ ...slot, unit: 'in' });
  if (slot.sixtyFourths !== undefined) return ok(without(slot, 'sixtyFourths'));
  if (slot.digits !== '') return ok({ ...slot, digits: slot.digits.slice(0, -1) });
  if (slot.feet !== undefined) return ok({ ...without(slot, 'feet'), digits: slot.feet });
  return err('nothing-to-erase');
}

function without(slot: Slot, field: 'feet' | 'sixtyFourths'): Slot {
  const { [field]: _, ...rest } = slot;
  return rest;
}

export const isEmpty = (slot: Slot): boolean =>
  slot.digits === '' && slot.feet === undefined && slot.sixtyFourths === undefined;

/** True for digits alone: after × or ÷ they count, elsewhere they are inches. */
export const isBareSlot = (slot: Slot): boolean =>
  slot.digits !== '' &&
  slot.feet === undefined &&
  slot.sixtyFourths === undefined &&
  slot.unit === (slot.home ?? 'in');

/** The figure keyed so far, inches; an empty slot is 0. @example slotValue({ digits: '3', unit: 'mm' }) // 15/127 */
export function slotValue(slot: Slot): Length {
  const [n, d] = decimal(slot.digits);
  if (slot.unit === 'mm') return fromMillimetres(n, d);
  const [feetN, feetD] = decimal(slot.feet ?? '');
  return [times(inches(feetN, feetD), 12n), inches(n, d), inches(BigInt(slot.sixtyFourths ?? 0), 64n)].reduce(
    add,
    zero,
  );
}

function decimal(digits: string): readonly [bigint, bigint] {
  const [whole = '', part = ''] = digits.split('.');
  return [BigInt(`${whole}${part}` || '0'), 10n ** BigInt(part.length)];
}

/**
 * The figure as text that reads back to it: `5 ft 3 3/4`, `146 mm`, `0.734`, `13 29/64`. Bare inches on a metric tape
 * keep their mark: `18"`.
 */
export function slotText(slot: Slot): string {
  if (slot.unit === 'mm') return `${tidy(slot.digits)} mm`;
  if (slot.feet === undefined && slot.sixtyFourths === undefined)
    return tidy(slot.digits) + (slot.home === 'mm' ? '"' : '');
  const rest = subtract(slotValue(slot), times(inches(...decimal(slot.feet ?? '')), 12n));
  if (isNegative(rest)) return writeLength(slotValue(slot));
  const inch = slot.digits.includes('.') ? tidy(slot.digits) : writeLength(rest);
  if (slot.feet === undefined) return inch;
  return inch === '0' ? `${tidy(slot.feet)} ft` : `${tidy(slot.feet)} ft ${inch}`;
}

/** The digits alone, as a count is written. */
export const countText = (slot: Slot): string => tidy(slot.digits);

const tidy = (digits: string): string => digits.replace(/\.$/, '') || '0';
