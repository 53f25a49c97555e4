import { inches, type Length, numerator } from './length';
import { err, ok, type Result } from './result';

/** How a length is kept in rows and files: `n/d` inches in lowest terms, `12` when whole. Never a decimal. */
export function toStored(x: Length): string {
  return x.d === 1n ? `${numerator(x)}` : `${numerator(x)}/${x.d}`;
}

const shape = /^(-?)(0|[1-9]\d{0,59})(?:\/([1-9]\d{0,59}))?$/;

type StoredError = { readonly code: 'not-a-stored-length'; readonly text: string };

/** Whether `fromStored` reads a text. */
export const isStored = (text: string): boolean => shape.test(text);

/**
 * Reads what `toStored` wrote. At most 60 digits each, so a hostile file cannot make a number that stalls the phone.
 *
 * @example fromStored('47/64')
 */
export function fromStored(text: string): Result<Length, StoredError> {
  const found = shape.exec(text);
  if (!found) return err({ code: 'not-a-stored-length', text: text.slice(0, 80) });
  const [, sign, n, d] = found;
  return ok(inches(BigInt(`${sign}${n}`), BigInt(d ?? '1')));
}
