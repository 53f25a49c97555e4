import { fromMillimetres, inches, type Length, longest, subtract } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Case, Inside } from '../carcass/case';
import type { Sizes } from '../carcass/sizes';
import type { Bore } from './bore';
import { leftOut } from './hole-row';
import { balanced, linePitch, rearLine } from './lines';
import { acrossBay } from './wall-grooves';

/** Figures that stand in until the user says otherwise. Common practice, no source, but the hole's. */
const usual = {
  /** 1/4 across and 3/8 deep. Source: bhg.com, adjustable-shelf bookcase, 26 January 2019. */
  dia: inches(1n, 4n),
  deep: inches(3n, 8n),
  front: inches(2n),
  behind: inches(2n),
};

/** Those of 32 mm lines: 5 mm holes, the front line 37 mm behind the edge (bellinghambaywoodcraft.com/32mm). */
const usualLine = {
  dia: fromMillimetres(5n),
  deep: fromMillimetres(10n),
  front: fromMillimetres(37n),
  behind: fromMillimetres(30n),
  first: fromMillimetres(40n),
};

/** What stands in for the holes of loose shelves, by how they are held. Inches. */
export const usualPins = ({ units }: Pick<Case, 'units'>, { heldBy }: Pick<Inside, 'heldBy'>) =>
  heldBy === 'lines'
    ? usualLine
    : {
        dia: figureIn(units, usual.dia),
        deep: figureIn(units, usual.deep),
        front: figureIn(units, usual.front),
        behind: figureIn(units, usual.behind),
        first: undefined,
      };

/** The rows of a bay for its pins, from the upper face of the bottom and from the front edge. Inches. */
export type Pins = Pick<Bore, 'dia' | 'deep' | 'pitch' | 'metric' | 'leftOut'> & {
  readonly first: Length;
  readonly top: Length;
  readonly front: Length;
  readonly rear: Length;
};

/**
 * The rows that hold loose shelves, as decided; what is not said stands at its usual figure.
 *
 * @returns nothing where no holes are laid out, or where first hole or pitch are not said
 * @example pinsOf(sizes, shelves)?.rear // 15 1/2: Example 1 of shelves
 */
export function pinsOf(sizes: Sizes, i: Inside): Pins | undefined {
  const found = i.heldBy === 'lines' ? inLines(sizes, i) : i.heldBy === 'pins' ? inRows(sizes, i) : undefined;
  if (!found) return undefined;
  const least = longest(figureIn(sizes.case.units, leastLand), found.dia);
  const row = { ...found, span: sizes.clearHeight.value };
  return { ...found, leftOut: leftOut(row, acrossBay(sizes, i.bay), least) };
}

/** Least wood between a hole and a groove, and no less than the hole is wide. Common practice, no source. */
const leastLand = inches(1n, 4n);

type Rows = Omit<Pins, 'leftOut'>;

function inRows({ inner, case: c }: Sizes, i: Inside): Rows | undefined {
  if (!i.first || !i.pitch) return undefined;
  const stands = usualPins(c, i);
  return {
    first: i.first,
    pitch: i.pitch,
    top: i.endRoom ?? i.first,
    front: i.front ?? stands.front,
    rear: subtract(inner.value, i.behind ?? stands.behind),
    dia: i.width ?? stands.dia,
    deep: i.depth ?? stands.deep,
    metric: false,
  };
}

function inLines({ inner, clearHeight, case: c }: Sizes, i: Inside): Rows {
  const stands = usualPins(c, i);
  const front = i.front ?? stands.front;
  const { end } = balanced(clearHeight.value, i.first ?? usualLine.first);
  return {
    first: end,
    pitch: linePitch,
    top: end,
    front,
    rear: rearLine({ deep: inner.value, front, margin: i.behind ?? stands.behind }),
    dia: i.width ?? stands.dia,
    deep: i.depth ?? stands.deep,
    metric: true,
  };
}
