import { inches, isNegative, less, negate } from '../../length/length';
import { cutterTape, grainOf, type Tape } from '../../length/tape';
import { boxWarnings } from '../../trade/boxes/box';
import { drawersWarnings } from '../../trade/boxes/drawer-warnings';
import type { WorkedDrawers } from '../../trade/boxes/drawers';
import { stickWarnings } from '../../trade/boxes/sticks';
import { tailsWarnings } from '../../trade/boxes/tails';
import { gapWarning } from '../../trade/fronts/fitted';
import { lowWarnings } from '../../trade/fronts/heights';
import { revealStackUp } from '../../trade/fronts/shims';
import { skewOf, skewWarnings } from '../../trade/fronts/skew';
import { skewIn } from '../../trade/fronts/stands';
import type { WorkedColumn, WorkedFronts } from '../../trade/fronts/worked';
import { exactlyOrMetric as w } from '../shared/exact-words';
import { boxWarningText, drawersWarningText, grooveText, standText, tailsErrorText } from './words';

/** How near a shim is; a front is cut to half a thirty-second. Common practice, no source. */
const shimTol = inches(1n, 1000n);

/** What is worth a look in the fronts of a column, before they are cut and while they go on. */
function frontsWorth(fronts: WorkedFronts, column: WorkedColumn, tape: Tape): readonly string[] {
  const { bank } = fronts;
  const low = lowWarnings(column.heights);
  return [
    ...(low.length > 0
      ? [
          `${low.length === 1 ? 'Front' : 'Fronts'} ${low.join(', ')} under ${w(inches(5n, 2n))}: hardly room for a box and a pull.`,
        ]
      : []),
    ...column.warnings.map(
      (x) => `At the ${x.side} the front covers ${w(x.over)} of an edge ${w(x.edge)} wide: it hangs past.`,
    ),
    ...coverWorth(fronts, column),
    ...skewWorth(fronts, column),
    ...(column.fitted > 0 ? gapWorth(column) : plannedWorth(fronts, column, tape)),
    ...(bank.count > 1 && column.fitted === 0 ? [stackUpText(fronts, tape)] : []),
  ];
}

/** Covering fronts lie on what there is over and under them. */
function coverWorth({ bank, reveals }: WorkedFronts, { opening }: WorkedColumn): readonly string[] {
  if (bank.fit === 'inset') return [];
  return (['top', 'bottom'] as const).flatMap((end) => {
    const [cover, edge] = [negate(reveals[end]), opening.edges[end]];
    return edge && less(edge, cover)
      ? [`At the ${end} the front covers ${w(cover)} of an edge ${w(edge)} high: it hangs past.`]
      : [];
  });
}

function skewWorth(fronts: WorkedFronts, column: WorkedColumn): readonly string[] {
  const { left, right } = column.opening;
  const skew = left.equals(right) ? undefined : skewOf(skewIn(fronts, column));
  if (!skew) return [];
  const lines = skewWarnings(skew).map((x) =>
    x.code === 'taper-seen'
      ? `Each gap tapers ${w(x.taper)} from side to side, which shows.`
      : `At the ${x.side} a gap closes to ${w(x.gap)}.`,
  );
  return lines.length > 0 ? lines : [`Each gap tapers ${w(skew.taper)} from side to side: not seen.`];
}

function gapWorth({ ahead }: WorkedColumn): readonly string[] {
  return (['left', 'right'] as const).flatMap((side) => {
    const each = ahead?.[side]?.each;
    const warning = each && gapWarning(each);
    if (!warning) return [];
    if (warning.code === 'binds') return [`At the ${side} the fronts left bind by ${w(warning.by)}.`];
    return [`At the ${side} the gaps left are ${w(warning.each)}: ${warning.code}.`];
  });
}

/** A left-over that no front can take at the tape. */
function plannedWorth(fronts: WorkedFronts, column: WorkedColumn, tape: Tape): readonly string[] {
  const { left, bank } = fronts;
  if (isNegative(left))
    return [`The heights are ${w(negate(left))} over what the opening leaves: the last gap closes by that.`];
  if (left.n === 0n || column.heights.length === 0) return [];
  if (bank.alike && bank.share === 'equal')
    return [`Cut alike, ${w(left)} is left over: it goes into the gaps.`];
  const where = `in the gap at the ${bank.order === 'down' ? 'bottom' : 'top'}`;
  return less(left, grainOf(tape))
    ? [`Under one mark is left over: ${w(left)}, ${where}.`]
    : [`The heights given leave ${w(left)} over, ${where}.`];
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
  const binds = isNegative(up.least) ? ', and could bind' : '';
  return `If every front is off by ${w(frontTol)} the same way, the last gap is off by ${w(up.worst)}${binds}; likely ${w(up.likely)}. Fit and measure as you go.`;
}

/** What is worth a look in the boxes and slides. */
export function drawersWorth(worked: WorkedDrawers): readonly string[] {
  const [first] = worked.drawers;
  const sticks = worked.sticks.ok
    ? stickWarnings(worked.sticks.value).map(
        (x) =>
          `The stick of drawer ${x.drawer}, ${w(x.length)}, is too short to hold at a saw: cut it from a long strip.`,
      )
    : [
        `Drawer ${worked.sticks.error.drawer}: its slide would sit ${w(worked.sticks.error.by)} below the ${standText(worked)}.`,
      ];
  return [
    ...drawersWarnings(worked).map(drawersWarningText),
    ...(first ? boxWarnings(first.plan, worked.joint).map(boxWarningText) : []),
    ...sticks,
    ...tailLines(worked),
  ];
}

function tailLines({ drawers }: WorkedDrawers): readonly string[] {
  return drawers.flatMap(({ no, column, joint }) => {
    if (column > 1 || joint.kind === 'plain') return [];
    if (!joint.tails.ok) return [`Drawer ${no}: ${tailsErrorText(joint.tails.error)}`];
    const { groove } = joint.tails.value;
    const at = joint.plan.groove;
    const cut = at && groove && !groove.inside ? [`Drawer ${no}: ${grooveText(joint.tails.value, at)}`] : [];
    const thin = tailsWarnings(joint.plan).map((x) =>
      x.code === 'half-pin-thin'
        ? `Drawer ${no}: a half pin under ${w(x.least)} is weak.`
        : `Drawer ${no}: tails ${w(x.tail)} at the baseline are narrower than the cutter.`,
    );
    return [...cut, ...thin];
  });
}

type Worked = {
  readonly fronts: WorkedFronts;
  readonly column: WorkedColumn;
  readonly drawers: WorkedDrawers | undefined;
};

/** Fronts of a column first, then the worst of the boxes behind them. */
export const worthOf = ({ fronts, column, drawers }: Worked, tape: Tape): readonly string[] => [
  ...frontsWorth(fronts, column, tape),
  ...(drawers ? drawersWorth(drawers).slice(0, 3) : []),
];
