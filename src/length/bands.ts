import {
  absolute,
  atMost,
  fromMillimetres,
  inches,
  type Length,
  less,
  over,
  ratio,
  times,
  zero,
} from './length';
import type { Units } from './units';

/** What a blank is for, as far as it says how large a figure can be meant there. */
export type BandKind =
  | 'thickness'
  | 'length'
  | 'place'
  | 'kerf'
  | 'cutter'
  | 'groove'
  | 'depth'
  | 'clearance'
  | 'room'
  | 'gap'
  | 'shim'
  | 'screw';

/** From the least to the most that is meant, both of them in it. */
export type Band = { readonly least: Length; readonly most: Length };

const inch = (least: Length, most: bigint | Length): Band => ({
  least,
  most: typeof most === 'bigint' ? inches(most) : most,
});

/** In tenths of a millimetre. */
const mm = (least: bigint, most: bigint): Band => ({
  least: fromMillimetres(least, 10n),
  most: fromMillimetres(most, 10n),
});

const part = (n: bigint, d: bigint): Length => inches(n, d);

/** Each system has a list of its own: no limit in millimetres is a converted one. Common practice, no source. */
const bands: Readonly<Record<BandKind, Readonly<Record<Units, Band>>>> = {
  thickness: { in: inch(part(1n, 8n), 3n), mm: mm(32n, 760n) },
  length: { in: inch(part(1n, 2n), 192n), mm: mm(130n, 48770n) },
  place: { in: inch(zero, 192n), mm: mm(0n, 48770n) },
  kerf: { in: inch(part(1n, 32n), part(1n, 4n)), mm: mm(8n, 64n) },
  cutter: { in: inch(part(1n, 32n), part(3n, 2n)), mm: mm(8n, 400n) },
  groove: { in: inch(part(1n, 32n), 6n), mm: mm(8n, 1500n) },
  depth: { in: inch(part(1n, 32n), 2n), mm: mm(8n, 500n) },
  clearance: { in: inch(zero, part(1n, 16n)), mm: mm(0n, 15n) },
  room: { in: inch(zero, part(3n, 8n)), mm: mm(0n, 100n) },
  gap: { in: inch(zero, part(3n, 2n)), mm: mm(0n, 400n) },
  shim: { in: inch(part(1n, 1000n), part(1n, 2n)), mm: mm(0n, 120n) },
  screw: { in: inch(part(1n, 4n), 8n), mm: mm(60n, 2000n) },
};

export const bandOf = (kind: BandKind, units: Units): Band => bands[kind][units];

const holds = ({ least, most }: Band, x: Length): boolean => atMost(least, x) && atMost(x, most);

/** A figure as it was read, and what may be said of how it was written. */
export type Figure = {
  readonly value: Length;
  readonly unit: Units;
  /** No unit was written: that of the job was taken. */
  readonly bare: boolean;
  readonly fraction: boolean;
  /** `1,200`: a decimal, and perhaps a thousand. */
  readonly comma: boolean;
};

/** Why a figure is not taken as it stands. Inches. */
export type Doubt =
  /** A thousand, or a decimal: the ways it can be meant. */
  | { readonly code: 'comma'; readonly ways: readonly Length[] }
  /** The same number in the other unit is what is perhaps meant. */
  | { readonly code: 'other-unit'; readonly meant: Length; readonly band: Band | undefined }
  | { readonly code: 'out-of-band'; readonly band: Band };

/** The same number in the other unit. @example inOtherUnit(inches(18n), 'in') // 18 mm */
export const inOtherUnit = (x: Length, unit: Units): Length =>
  unit === 'in' ? over(x, ratio(127n, 5n)) : times(x, ratio(127n, 5n));

/**
 * Whether a figure can be meant. Nothing is ever changed: it is asked about where the other unit would do, and refused
 * where neither does. A bare fraction on a metric tape is asked about, for only an inch has them.
 *
 * @param kind of the blank; where it says nothing of a size only a bare fraction is asked about
 * @returns undefined where it can be taken
 * @example doubtOf({ value: inches(18n), unit: 'in', bare: true, fraction: false, comma: false }, 'thickness') // 18 mm?
 */
export function doubtOf(figure: Figure, kind: BandKind | undefined): Doubt | undefined {
  const { value, unit, bare, fraction, comma } = figure;
  const band = kind && bands[kind][unit];
  const ways = [times(value, 1000n), value].filter((x) => !band || holds(band, x));
  if (comma && ways.length > 0) return { code: 'comma', ways };
  const meant = inOtherUnit(value, unit);
  if (bare && fraction && unit === 'mm') return { code: 'other-unit', meant, band };
  if (!kind || !band || holds(band, absolute(value))) return undefined;
  const other = unit === 'in' ? 'mm' : 'in';
  if (bare && !less(value, zero) && holds(bands[kind][other], meant))
    return { code: 'other-unit', meant, band };
  return { code: 'out-of-band', band };
}
