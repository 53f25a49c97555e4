import fc from 'fast-check';
import { inches, type Length } from '../../../src/length/length';
import type { Result } from '../../../src/length/result';
import type { AtSpot } from '../../../src/trade/room/spot';
import { l, w } from '../grooves/sample';

/** Readings at the front, 40 apart, the first at 0. */
export const row = (...readings: readonly string[]): readonly AtSpot[] =>
  readings.map((x, k) => ({ at: inches(40n * BigInt(k)), plane: 'front', value: l(x) }));

/** The same spots at the back. */
export const back = (...readings: readonly string[]): readonly AtSpot[] =>
  row(...readings).map((x) => ({ ...x, plane: 'back' }));

export const figures = (found: readonly { readonly value: Length }[]): readonly string[] =>
  found.map((x) => w(x.value));

export function value<T>(found: Result<T, unknown>): T {
  if (!found.ok) throw new Error(JSON.stringify(found.error, (_, x) => (typeof x === 'bigint' ? `${x}` : x)));
  return found.value;
}

/** The refusal, its lengths as they are written. */
export function refusal(found: Result<unknown, unknown>): unknown {
  if (found.ok) throw new Error('not refused');
  return spelled(found.error);
}

/** Every length within, as it is written. */
export function spelled(x: unknown): unknown {
  if (typeof x !== 'object' || x === null) return x;
  if ('toFraction' in x) return w(x as Length);
  if (Array.isArray(x)) return x.map(spelled);
  return Object.fromEntries(Object.entries(x).map(([name, part]) => [name, spelled(part)]));
}

/** Lengths in 64ths, between two whole inches. */
export const between = (least: number, most: number): fc.Arbitrary<Length> =>
  fc.bigInt({ min: BigInt(least) * 64n, max: BigInt(most) * 64n }).map((n) => inches(n, 64n));

/** Readings at spots 10 apart, front and back by turns, of so many figures each. */
export const rows = (least: number, most: number, many: number): fc.Arbitrary<readonly AtSpot[]> =>
  fc.array(between(least, most), { minLength: many, maxLength: many }).map((lengths) =>
    lengths.map((x, k) => ({
      at: inches(10n * BigInt(k)),
      plane: k % 2 === 0 ? ('front' as const) : ('back' as const),
      value: x,
    })),
  );

export { l, w };
