import {
  absolute,
  equals,
  isNegative,
  isPositive,
  isZero,
  type Length,
  subtract,
  zero,
} from '../../length/length';
import { markAt, type Tape } from '../../length/tape';
import { writeMark } from '../../length/write';
import type { BankPlan } from '../../plan/bank-plan';
import type { WorkedDrawers } from '../../trade/boxes/drawers';
import { nextCut, type Stick } from '../../trade/boxes/sticks';
import { type Bank, frontNo } from '../../trade/fronts/bank';
import { storyStick } from '../../trade/fronts/marks';
import { fitOrder } from '../../trade/fronts/stands';
import type { WorkedColumn, WorkedFronts } from '../../trade/fronts/worked';
import { opId } from '../../trade/setups/operation';
import type { Shim } from '../../trade/stacks/pile';
import { askShims } from '../shared/stack-words';
import { plannedReach } from './column-of';
import { endFrom } from './edge-words';
import { pileText } from './gap-words';
import { gapBefore, pilesFor } from './piles';
import * as words from './step-words';
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
  /** What stands on it. */
  readonly on?: Exclude<OnStick, 'slide'>;
};

type OnStick = 'slide' | 'runner' | 'hangstrip' | 'kicker';

/** What the numbers depend on besides the bank. */
export type StepsAt = {
  readonly tape: Tape;
  /** All shims in the drawer. */
  readonly shims: readonly Shim[];
  /** Inches; undefined until it is said. */
  readonly kerf: Length | undefined;
};

const benchOp = (bank: Bank, cut: string, copy: string): string => opId(`${bank.id}~bench`, cut, copy);

/** The numbers of one kind, in the order they are wanted. */
export function stepsOf({ fronts, drawers }: BankPlan, what: OneWhat, at: StepsAt): readonly OneStep[] {
  if (!fronts.ok) return [];
  if (what === 'marks') return marks(fronts.value, at.tape);
  if (what === 'fit') return fitting(fronts.value, at);
  return drawers?.ok ? sticks(drawers.value, at) : [];
}

/** Every edge on one story stick, from the end the fronts go on from: carried to both uprights. */
function marks({ bank, marks: edges, columns }: WorkedFronts, tape: Tape): readonly OneStep[] {
  const skewed = columns.find((c) => !equals(c.opening.left, c.opening.right))?.opening;
  const higher = skewed && absolute(subtract(skewed.left, skewed.right));
  return storyStick(edges, endFrom[bank.order]).map(({ front, edge, at }): OneStep => {
    const mark = markAt(at, tape);
    const op = benchOp(bank, `mark~f${front}${edge}`, '1');
    return {
      id: `f${front}${edge}`,
      title: words.edgeTitle({ front, edge }, bank.order, isNegative(mark.value)),
      figure: absolute(mark.value),
      rest: mark.rest,
      says: words.edgeSays(bank.order, higher),
      ticks: [{ op, label: words.marked, figure: mark.value }],
    };
  });
}

function fitting({ bank, columns }: WorkedFronts, at: StepsAt): readonly OneStep[] {
  const several = columns.length > 1;
  return columns.flatMap((column) =>
    fitOrder(bank).map((no): OneStep => {
      const id = `c${column.no}d${no}`;
      const mark = markAt(plannedReach(bank, column, { no, side: 'left' }), at.tape);
      return {
        id,
        title: words.frontTitle(no, several ? column.no : undefined, bank.order),
        figure: mark.value,
        rest: mark.rest,
        says: fitText(bank, column, { ...at, no, left: mark.value }),
        ticks: [{ op: benchOp(bank, 'fronton', id), label: words.isOn(no), figure: zero }],
      };
    }),
  );
}

type FitAt = StepsAt & { readonly no: number; readonly left: Length };

/** Where a front is measured from, the gap before it, and the shims for that. */
function fitText(bank: Bank, column: WorkedColumn, { no, left, tape, shims }: FitAt): string {
  const right = markAt(plannedReach(bank, column, { no, side: 'right' }), tape);
  const gap = gapBefore(bank, column, no);
  const piles = pilesFor(gap, shims);
  const none = shims.length === 0 ? askShims.beside : '';
  return words.frontSays(bank.order, {
    right: equals(left, right.value) ? undefined : writeMark(right, tape),
    gap: words.gapSays(gap, tape),
    shims: piles ? words.shims(pileText(piles)) : none,
  });
}

/** One stick, longest first: what comes off is reckoned from what the stick before measured. */
function sticks(worked: WorkedDrawers, at: StepsAt): readonly OneStep[] {
  if (!worked.sticks.ok) return [];
  const list = worked.sticks.value;
  const { bank } = worked.fronts;
  const carries = bank.hung && bank.hung === 'runners' ? 'runner' : 'hangstrip';
  return list.map(({ drawer, length, as }, k): OneStep => {
    const mark = markAt(length, at.tape);
    const on = as ?? (bank.hung ? carries : 'slide');
    const before = list[k - 1];
    return {
      id: `${as ? 'k' : 'd'}${drawer}`,
      title: as ? words.kickerTitle(drawer) : words.stickTitle(drawer),
      figure: mark.value,
      rest: mark.rest,
      says: before
        ? cutText(bank, before, { ...at, mark: mark.value })
        : words.longestFirst(standText(worked), on),
      ticks: slides(worked, { no: drawer, on, figure: mark.value }),
      ...(as ? {} : { stick: drawer }),
      ...(on === 'slide' ? {} : { on }),
    };
  });
}

type SlidesAt = { readonly no: number; readonly on: OnStick; readonly figure: Length };

/** The slides of one height: two a drawer, of every column. */
function slides({ fronts, drawers }: WorkedDrawers, { no, on, figure }: SlidesAt): OneStep['ticks'] {
  const own = drawers.filter((d) => d.no === no);
  return own.flatMap(({ column }) =>
    (['left', 'right'] as const).map((hand) => ({
      op: benchOp(fronts.bank, on, `c${column}d${no}h${hand}`),
      label: words.slide(hand, own.length > 1 ? column : undefined),
      figure,
    })),
  );
}

type CutAt = StepsAt & { readonly mark: Length };

/** What comes off the stick before: from what it measures, not from what it should. */
function cutText(bank: Bank, before: Stick, { mark, tape, kerf }: CutAt): string {
  if (!kerf) return words.noKerf(before.drawer);
  const planned = markAt(before.length, tape).value;
  const measured = (before.as ? undefined : frontNo(bank, before.drawer).stick) ?? planned;
  const { offcut, short } = nextCut(measured, mark, kerf);
  if (short) return words.tooShort(before.drawer, short);
  const off = subtract(measured, mark);
  if (!isPositive(offcut)) return isZero(off) ? words.justAsLong : words.lessThanKerf(off);
  return words.comesOff(markAt(offcut, tape), equals(measured, planned) ? undefined : measured, tape);
}
