import { inches, zero } from '../../../length/length';
import { figureIn } from '../../../length/metric-figures';
import { type DowelSize, type Dowels, usualDowels } from '../../fasteners/dowels';
import type { Bank } from '../../fronts/bank';
import { minus, plus, sumOf } from '../../sums/sum';
import type { BoxError, BoxPlan, BoxWarning, DoweledAt } from '../box-plan';
import { type DowelRow, doweledAt, intoGroove, isOver } from '../dowel-rows';
import type { DrawerJoint } from './joint';

const corners: readonly DoweledAt[] = ['front', 'back'];

/** Sides of drawers are thin: 3/16 as well. Common practice, no source. */
const thin = { thick: inches(3n, 16n), long: inches(3n, 2n) };

const usual = (units: Bank['units']): readonly DowelSize[] => [
  { thick: figureIn(units, thin.thick), long: figureIn(units, thin.long) },
  ...usualDowels(units),
];

/** Those said to be at hand, else as they are sold. */
const sizesOf = ({ dowel, dowelLong, units }: Bank): readonly DowelSize[] =>
  usual(units).map(({ thick, long }) => ({ thick: dowel ?? thick, long: dowelLong ?? long }));

function faultOf(plan: BoxPlan): BoxError | undefined {
  for (const at of corners) {
    const found = doweledAt(plan, at);
    if (!found.ok) return { code: 'no-dowels', at, why: found.error };
  }
  return undefined;
}

const warningsOf = (plan: BoxPlan): readonly BoxWarning[] =>
  corners.flatMap((at): readonly BoxWarning[] => {
    const found = doweledAt(plan, at);
    if (!found.ok) return [];
    const by = intoGroove(plan, found.value);
    return [
      ...found.value.warnings.map((warning) => ({ code: 'dowel', at, warning }) as const),
      ...(by ? [{ code: 'dowel-in-groove', at, by } as const] : []),
    ];
  });

/** The holes of a corner: in the ends of what butts, and in the face it meets. */
function rowsAt(at: DoweledAt, { size, row, from, inFace, inEdge }: Dowels) {
  const own = { at, thick: size.thick, from, marks: row.marks };
  const made = (where: DowelRow['in'], both: boolean): DowelRow => ({
    ...own,
    in: where,
    both,
    deep: where === 'face' ? inFace : inEdge,
  });
  return made;
}

/** Front and back butted to the sides and doweled: the front over their ends or between them, the back between. */
export const butted: DrawerJoint = {
  planned: (bank, plan) => ({
    ...plan,
    lap: bank.frontAt === 'between' ? zero : plan.front,
    backDado: zero,
    behind: zero,
    dowels: sizesOf(bank),
  }),
  back: 'between',
  side: (plan) => sumOf(plus('box-depth', plan.depth), minus('front', plan.lap)),
  front: (plan, { width, insideWide }) =>
    isOver(plan) ? sumOf(width) : sumOf(plus('inside-width', insideWide.value, insideWide)),
  ownFront: (plan) => (isOver(plan) ? 'past' : undefined),
  reach: () => zero,
  fault: faultOf,
  warnings: warningsOf,
  problems: () => [],
  height: (_, most) => most,
  layOut: (_, __, plan) => {
    const [front, back] = corners.map((at) => doweledAt(plan, at));
    if (!front?.ok || !back?.ok) return { kind: 'corner' };
    return { kind: 'doweled', front: front.value, back: back.value, over: isOver(plan) };
  },
  cuts: (_, { layout }) => {
    if (layout.kind !== 'doweled') return {};
    const { over } = layout;
    const [front, back] = [rowsAt('front', layout.front), rowsAt('back', layout.back)];
    return {
      dowels: {
        side: [front(over ? 'end' : 'face', false), back('face', false)],
        front: [front(over ? 'face' : 'end', true)],
        back: [back('end', true)],
      },
    };
  },
};
