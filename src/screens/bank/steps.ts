import {
  absolute,
  equals,
  isNegative,
  isPositive,
  isZero,
  type Length,
  negate,
  subtract,
  zero,
} from '../../length/length';
import { markAt, type Tape } from '../../length/tape';
import { writeLength } from '../../length/write';
import type { BankPlan } from '../../plan/bank-plan';
import type { WorkedDrawers } from '../../trade/boxes/drawers';
import { nextCut } from '../../trade/boxes/sticks';
import { type Bank, frontNo } from '../../trade/fronts/bank';
import { storyStick } from '../../trade/fronts/marks';
import { fitOrder } from '../../trade/fronts/stands';
import type { WorkedFronts } from '../../trade/fronts/worked';
import { opId } from '../../trade/setups/operation';
import type { Bench } from '../bench';
import { exactlyOrMetric as w } from '../shared/exact-words';
import { askShims } from '../shared/stack-words';
import { plannedReach } from './column-of';
import { pileText, sidesText } from './gap-words';
import { gapBefore, noShims, pileBefore } from './piles';
import { standText } from './words';

/** What is done one number at a time. */
export type OneWhat = 'marks' | 'fit' | 'sticks';

/** One number, and what is ticked at it. */
export type OneStep = {
  /** Stands in the address, so that a kill comes back to it. */
  readonly id: string;
  readonly title: string;
  readonly figure: Length;
  readonly rest: Length;
  readonly says: string;
  readonly ticks: readonly { readonly op: string; readonly label: string; readonly figure: Length }[];
  /** The stick of this drawer may be measured here. */
  readonly stick?: number;
};

const benchOp = (bank: Bank, cut: string, copy: string): string => opId(`${bank.id}~bench`, cut, copy);

/** The numbers of one kind, in the order they are wanted. */
export function stepsOf(bench: Bench, found: BankPlan, what: OneWhat): readonly OneStep[] {
  const tape = bench.job.value?.tape ?? '1/32';
  if (!found.fronts.ok) return [];
  if (what === 'marks') return marks(found.bank, found.fronts.value, tape);
  if (what === 'fit') return fitting(bench, found.fronts.value, tape);
  return found.drawers?.ok ? sticks(bench, found.drawers.value, tape) : [];
}

/** Every edge on one story stick, from the end the fronts go on from: carried to both uprights. */
function marks(bank: Bank, { marks: edges, columns }: WorkedFronts, tape: Tape): readonly OneStep[] {
  const skewed = columns.find((c) => !equals(c.opening.left, c.opening.right))?.opening;
  const more = skewed && w(absolute(subtract(skewed.left, skewed.right)));
  const [end, far] = bank.order === 'down' ? (['top', 'bottom'] as const) : (['bottom', 'top'] as const);
  const aside = more
    ? ` One side is ${more} higher: the stick keeps the gaps as wanted and leaves that at the ${far}. For gaps that taper, mark each upright from the fronts as drawn.`
    : '';
  return storyStick(edges, end).map(({ front, edge, at }): OneStep => {
    const mark = markAt(at, tape);
    const past = isNegative(mark.value) ? `, past the ${end} of the opening` : '';
    return {
      id: `f${front}${edge}`,
      title: `Front ${front}, ${edge} edge${past}`,
      figure: absolute(mark.value),
      rest: mark.rest,
      says: `On the story stick, from its ${end} end. Mark once, carry to both uprights.${aside}`,
      ticks: [{ op: benchOp(bank, `mark~f${front}${edge}`, '1'), label: 'Marked', figure: mark.value }],
    };
  });
}

function fitting(bench: Bench, { bank, columns }: WorkedFronts, tape: Tape): readonly OneStep[] {
  const [edge, end] = bank.order === 'down' ? ['lower', 'top'] : ['upper', 'bottom'];
  return columns.flatMap((column) =>
    fitOrder(bank).map((no): OneStep => {
      const mark = markAt(plannedReach(bank, column, { no, side: 'left' }), tape);
      const right = markAt(plannedReach(bank, column, { no, side: 'right' }), tape).value;
      const sides = equals(mark.value, right) ? '' : ` at the left, ${writeLength(right, tape)} at the right`;
      const gap = gapBefore(bank, column, no);
      const piles = pileBefore(bench, bank, column, no);
      const where = columns.length > 1 ? `, column ${column.no}` : '';
      return {
        id: `c${column.no}d${no}`,
        title: `Front ${no}${where}, ${edge} edge`,
        figure: mark.value,
        rest: mark.rest,
        says: `From the ${end} of the opening${sides}. ${gapSays(gap, tape)}${piles ? `: shims ${pileText(piles)}` : noShims(bench.settings.value) ? askShims.beside : ''}.`,
        ticks: [
          {
            op: benchOp(bank, 'fronton', `c${column.no}d${no}`),
            label: `Front ${no} is on`,
            figure: zero,
          },
        ],
      };
    }),
  );
}

/** The gap before a front; where the first one covers the case, by how much it does. */
const gapSays = ({ left, right }: { readonly left: Length; readonly right: Length }, tape: Tape): string =>
  isNegative(left) && isNegative(right)
    ? `It stands ${w(negate(left))} past that`
    : `Gap before it ${sidesText(left, right, tape)}`;

/** One stick, longest first: what comes off is reckoned from what the stick before measured. */
function sticks(bench: Bench, worked: WorkedDrawers, tape: Tape): readonly OneStep[] {
  if (!worked.sticks.ok) return [];
  const { bank } = worked.fronts;
  const list = worked.sticks.value;
  const stand = standText(worked);
  return list.map(({ drawer, length }, k): OneStep => {
    const mark = markAt(length, tape);
    const before = list[k - 1];
    const own = worked.drawers.filter((d) => d.no === drawer);
    return {
      id: `d${drawer}`,
      title: `Drawer ${drawer}, stick`,
      figure: mark.value,
      rest: mark.rest,
      says: before
        ? cutText(bench, bank, {
            before: { ...before, mark: markAt(before.length, tape).value },
            mark: mark.value,
            tape,
          })
        : `The longest first. Stand it on the ${stand}, rest the slide on it, one at each side.`,
      ticks: own.flatMap((d) =>
        (['left', 'right'] as const).map((hand) => ({
          op: benchOp(bank, 'slide', `c${d.column}d${d.no}h${hand}`),
          label: `${own.length > 1 ? `Column ${d.column}, ` : ''}${hand}`,
          figure: mark.value,
        })),
      ),
      stick: drawer,
    };
  });
}

type Cut = {
  readonly before: { readonly drawer: number; readonly mark: Length };
  readonly mark: Length;
  readonly tape: Tape;
};

/** What comes off the stick before: from what it measures, not from what it should. */
function cutText(bench: Bench, bank: Bank, { before, mark, tape }: Cut): string {
  const kerf = bench.shop.value.kerf ?? bench.shop.value.single;
  const measured = frontNo(bank, before.drawer).stick ?? before.mark;
  if (!kerf)
    return `Cut the stick of drawer ${before.drawer} down. Say the kerf in Shop figures, and what comes off is said here. Then measure what stays.`;
  const { offcut, short } = nextCut(measured, mark, kerf);
  if (short) return `The stick of drawer ${before.drawer} is ${w(short)} too short for it: cut a new one.`;
  const off = subtract(measured, mark);
  if (!isPositive(offcut))
    return isZero(off)
      ? 'The stick before is just as long: use it as it is.'
      : `Only ${w(off)} has to come off the stick before, less than a kerf: plane or sand it. Measure what stays.`;
  const from = isZero(subtract(measured, before.mark))
    ? ''
    : `, from the ${writeLength(measured, tape)} it measures`;
  return `${writeLength(markAt(offcut, tape).value, tape)} comes off the stick before${from}, kerf apart. Measure what stays, not what fell.`;
}
