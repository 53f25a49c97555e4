import { absolute, inches, isNegative, isPositive, less, negate, subtract } from '../../length/length';
import { cutterTape, grainOf, type Tape } from '../../length/tape';
import type { Plan } from '../../plan/plan';
import { banksMeet } from '../../trade/boxes/banks-meet';
import { boxWarnings } from '../../trade/boxes/box';
import { drawersWarnings } from '../../trade/boxes/drawer-warnings';
import type { WorkedDrawers } from '../../trade/boxes/drawers';
import { fingerFit } from '../../trade/boxes/fingers';
import { stickWarnings } from '../../trade/boxes/sticks';
import { tailsWarnings } from '../../trade/boxes/tails';
import type { Bank } from '../../trade/fronts/bank';
import { isOwnFront } from '../../trade/fronts/corner';
import { gapWarning } from '../../trade/fronts/fitted';
import { lowWarnings } from '../../trade/fronts/heights';
import { revealStackUp } from '../../trade/fronts/shims';
import { skewOf, skewWarnings } from '../../trade/fronts/skew';
import { skewIn } from '../../trade/fronts/stands';
import { usualBank } from '../../trade/fronts/usual-bank';
import type { WorkedColumn, WorkedFronts } from '../../trade/fronts/worked';
import { unitInHand } from '../../ui/unit-in-hand';
import { boxWarningText } from './box-words';
import { fitText } from './joint-words';
import { drawersWarningText, grooveText, standText, tailsErrorText } from './words';
import * as words from './worth-words';

/** How near a shim is; a front is cut to half a thirty-second. Common practice, no source. */
const shimTol = inches(1n, 1000n);

/** What is worth a look in the fronts of a column, before they are cut and while they go on. */
function frontsWorth(fronts: WorkedFronts, column: WorkedColumn, tape: Tape): readonly string[] {
  const { bank } = fronts;
  const low = lowWarnings(column.heights, bank.units);
  const own = isOwnFront(bank);
  return [
    ...(low.length > 0 ? [words.low(low)] : []),
    ...column.warnings.map((x) => words.hangsPast(x.side, x.over, x.edge)),
    ...(column.opening.shelves ?? []).map(words.shelfAcross),
    ...coverWorth(fronts, column),
    ...(own ? hungWorth(fronts, column) : skewWorth(fronts, column)),
    ...(column.fitted > 0 ? gapWorth(column) : plannedWorth(fronts, column, tape)),
    ...(bank.count > 1 && column.fitted === 0 && !own ? [stackUpText(fronts, tape)] : []),
  ];
}

/** Covering fronts lie on what there is over and under them. */
function coverWorth({ bank, reveals }: WorkedFronts, { opening }: WorkedColumn): readonly string[] {
  if (bank.fit === 'inset') return [];
  return (['top', 'bottom'] as const).flatMap((end) => {
    const [cover, edge] = [negate(reveals[end]), opening.edges[end]];
    return edge && less(edge, cover) ? [words.hangsPast(end, cover, edge)] : [];
  });
}

/** Hung on sticks from below, all of what an opening is out of square by is in the gap at the top. */
function hungWorth({ bank }: WorkedFronts, { opening }: WorkedColumn): readonly string[] {
  const off = absolute(subtract(opening.left, opening.right));
  return bank.fit === 'inset' && isPositive(off) ? [words.hungSkew(off)] : [];
}

function skewWorth(fronts: WorkedFronts, column: WorkedColumn): readonly string[] {
  const { left, right } = column.opening;
  const skew = left.equals(right) ? undefined : skewOf(skewIn(fronts, column));
  if (!skew) return [];
  const lines = skewWarnings(skew, unitInHand()).map((x) =>
    x.code === 'taper-seen' ? words.taper(x.taper, true) : words.closes(x.side, x.gap),
  );
  return lines.length > 0 ? lines : [words.taper(skew.taper, false)];
}

function gapWorth({ ahead }: WorkedColumn): readonly string[] {
  return (['left', 'right'] as const).flatMap((side) => {
    const each = ahead?.[side]?.each;
    const warning = each && gapWarning(each, unitInHand());
    if (!warning) return [];
    if (warning.code === 'binds') return [words.bind(side, warning.by)];
    return [words.gapsLeft(side, warning.each, warning.code)];
  });
}

/** A left-over that no front can take at the tape. */
function plannedWorth(fronts: WorkedFronts, column: WorkedColumn, tape: Tape): readonly string[] {
  const { left, bank } = fronts;
  if (isNegative(left)) return [words.tooHigh(negate(left))];
  if (left.n === 0n || column.heights.length === 0) return [];
  if (bank.alike && bank.share === 'equal') return [words.cutAlike(left)];
  return [words.leftOver(left, bank.order, less(left, grainOf(tape)))];
}

/** What each front and shim may be off lands in the last gap. */
function stackUpText({ bank, reveals }: WorkedFronts, tape: Tape): string {
  const frontTol = grainOf(cutterTape(tape));
  const up = revealStackUp({
    fronts: bank.count,
    frontTol,
    gaps: bank.count,
    shimTol,
    wanted: reveals.between,
  });
  return words.stackUp({ ...up, frontTol, binds: isNegative(up.least) });
}

/** The drawers of the other banks of a job that work out. */
export const othersThan = ({ id }: Bank, banks: Plan['banks']): readonly WorkedDrawers[] =>
  [...banks].flatMap(([other, { drawers }]) => (other !== id && drawers?.ok ? [drawers.value] : []));

/** What is worth a look in the boxes and slides; `others`: drawers of other banks. */
export function drawersWorth(
  worked: WorkedDrawers,
  others: readonly WorkedDrawers[] = [],
): readonly string[] {
  const [first] = worked.drawers;
  const sticks = worked.sticks.ok
    ? stickWarnings(worked.sticks.value, worked.fronts.bank.units).map((x) =>
        words.shortStick(x.drawer, x.length),
      )
    : [words.slideBelow(worked.sticks.error, standText(worked), worked.fronts.bank.hung)];
  return [
    ...banksMeet(worked, others).map(words.meets),
    ...drawersWarnings(worked).map(drawersWarningText),
    ...(first ? boxWarnings(first.plan, worked.joint).map(boxWarningText) : []),
    ...tightLines(worked),
    ...sticks,
    ...tailLines(worked),
  ];
}

/** Fingers that do not go into their slots, as the sled steps. */
function tightLines({ fronts: { bank }, drawers: [first] }: WorkedDrawers): readonly string[] {
  const { fingerStep: step } = bank;
  if (first?.joint.kind !== 'fingers' || !step) return [];
  const { wide } = first.joint.fingers;
  const play = bank.fingerPlay ?? usualBank(bank).fingerPlay;
  const fit = fingerFit({ wide, step, play });
  return isNegative(fit.loose) ? [fitText(fit, play)] : [];
}

function tailLines({ drawers, fronts: { bank } }: WorkedDrawers): readonly string[] {
  return drawers.flatMap(({ no, column, joint }) => {
    if (column > 1 || joint.kind !== 'tails') return [];
    if (!joint.tails.ok) return [words.ofDrawer(no, tailsErrorText(joint.tails.error))];
    const { groove } = joint.tails.value;
    const at = joint.plan.groove;
    const cut = at && groove && !groove.inside ? [words.ofDrawer(no, grooveText(joint.tails.value, at))] : [];
    const thin = tailsWarnings(joint.plan, bank.units).map((x) =>
      words.ofDrawer(no, x.code === 'half-pin-thin' ? words.weakPin(x.least) : words.thinTails(x.tail)),
    );
    return [...cut, ...thin];
  });
}

type Worked = {
  readonly fronts: WorkedFronts;
  readonly column: WorkedColumn;
  readonly drawers: WorkedDrawers | undefined;
  readonly others: readonly WorkedDrawers[];
};

/** Fronts of a column first, then the worst of the boxes behind them. */
export const worthOf = ({ fronts, column, drawers, others }: Worked, tape: Tape): readonly string[] => [
  ...frontsWorth(fronts, column, tape),
  ...(drawers ? drawersWorth(drawers, others).slice(0, 3) : []),
];
