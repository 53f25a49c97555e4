import {
  add,
  asNumber,
  inches,
  isPositive,
  type Length,
  over,
  ratio,
  sum,
  times,
  zero,
} from '../../length/length';
import { roundTo } from '../../length/round';
import { usualBank } from '../fronts/usual-bank';
import type { WorkedFronts } from '../fronts/worked';
import { type BuyingLine, idOf } from './line';

/** A bank whose fronts work out, and how thick those are. Inches. */
type Banded = { readonly name: string; readonly fronts: WorkedFronts; readonly thick: Length };

/** Edging stuck on the front of loose shelves: so many, so long together; of the band. Inches. */
export type EdgedShelves = {
  readonly name: string;
  readonly shelves: number;
  readonly around: Length;
  readonly thick: Length;
  readonly wide: Length;
};

/** Band bought over what the edges take. Common practice, no source. */
const more = ratio(1n, 10n);

const foot = 12n;

/**
 * The edges of every front of a bank, all four. Its band counts only where the fronts come off one blank: only there
 * is it taken off the cores, so only there is it stuck on.
 *
 * @returns inches; 0 where nothing is banded
 * @example aroundFronts(fronts) // one front 17 x 5: 44
 */
export function aroundFronts({ bank, columns }: WorkedFronts): Length {
  if (!bank.fromBlank || !isPositive(bank.band ?? usualBank(bank).band)) return zero;
  return sum(columns.flatMap((c) => c.heights.map((high) => times(add(c.width.mark.value, high), 2n))));
}

/**
 * Whole feet of band for edges so long: a tenth over, rounded up.
 *
 * @param around inches, >= 0
 * @returns feet, whole
 * @example bandFeet(inches(120n)) // 11
 */
export const bandFeet = (around: Length) =>
  asNumber(roundTo(over(add(around, times(around, more)), foot), inches(1n), 'ceil').value);

/**
 * A line for each band: as thick as it was said, as wide as the fronts or shelves are thick. Those with the same band
 * share it.
 *
 * @param banks inches; @param shelves inches
 * @example bandLines([bank])[0].amount // feet
 */
export function bandLines(
  banks: readonly Banded[],
  shelves: readonly EdgedShelves[] = [],
): readonly BuyingLine[] {
  const runs = [...banks.map(ofBank), ...shelves.map((edged) => ({ ...edged, fronts: 0 }))];
  const byBand = new Map<string, Run[]>();
  for (const run of runs.filter(({ around }) => isPositive(around))) {
    const key = `${idOf(run.thick)}x${idOf(run.wide)}`;
    byBand.set(key, [...(byBand.get(key) ?? []), run]);
  }
  return [...byBand].flatMap(([key, own]) => lineOf(key, own));
}

type Run = EdgedShelves & { readonly fronts: number };

const ofBank = ({ name, fronts, thick }: Banded): Run => ({
  name,
  fronts: fronts.columns.flatMap((c) => c.heights).length,
  shelves: 0,
  around: aroundFronts(fronts),
  thick: fronts.bank.band ?? usualBank(fronts.bank).band,
  wide: thick,
});

function lineOf(key: string, own: readonly Run[]): readonly BuyingLine[] {
  const [first] = own;
  if (!first) return [];
  const around = sum(own.map((run) => run.around));
  const count = (of: 'fronts' | 'shelves') => own.reduce((n, run) => n + run[of], 0);
  return [
    {
      id: `edging/${key}`,
      group: 'edging',
      name: [...new Set(own.map(({ name }) => name))].join(', '),
      amount: bandFeet(around),
      unit: 'foot',
      why: {
        code: 'band',
        fronts: count('fronts'),
        shelves: count('shelves'),
        around,
        more,
        thick: first.thick,
        wide: first.wide,
      },
    },
  ];
}
