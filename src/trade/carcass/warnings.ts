import {
  equals,
  half,
  inches,
  isZero,
  type Length,
  less,
  over,
  subtract,
  sum,
  times,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { pinWarnings } from '../shelves/pin-problems';
import { backWarnings } from './back';
import { backHow } from './back-how';
import { slackOf } from './boards';
import { frameOf, frameWarnings } from './frame';
import { tongueWarnings } from './joint-problems';
import { housedIn, meetingAt } from './meetings';
import { nailerWarnings } from './nailers';
import type { Worked } from './parts';
import { pastTopWarnings } from './past-top';
import { baseWarnings } from './plinth';
import type { CaseWarning } from './problems';
import { stopWarnings } from './stops';
import { toeWarnings } from './toe-notch';

/** A tray resting on less may drop out. Common practice, no source. */
const leastBearing = inches(1n, 8n);

/**
 * What is worth a look in a case that can be cut. Limits are common practice, no source.
 *
 * @param drawers the bays that drawers stand in: only there are sill and packing of any use
 * @example warningsOf(worked).map((w) => w.code)
 */
export function warningsOf(
  { sizes }: Worked,
  drawers: ReadonlySet<number> = new Set(),
): readonly CaseWarning[] {
  const { case: c } = sizes;
  const frame = c.hasFrame ? frameOf(sizes) : undefined;
  const framed = frame ? frameWarnings(sizes, frame, drawers) : [];
  return [
    ...deep(sizes),
    ...tongueWarnings(sizes),
    ...pastTopWarnings(sizes),
    ...cleats(sizes),
    ...backWarnings(sizes),
    ...toeWarnings(sizes),
    ...nailerWarnings(sizes),
    ...baseWarnings(sizes),
    ...bearing(sizes),
    ...pinWarnings(sizes),
    ...stopWarnings(sizes, drawers),
    ...framed,
    ...(frame ? wider(sizes, frame).filter(({ bay }) => !opens(framed, bay)) : []),
    ...(sharesThickness(sizes) ? [] : [{ code: 'two-thicknesses' } as const]),
  ];
}

type Sizes = Worked['sizes'];

type Deep = Extract<CaseWarning, { code: 'deep' }>;

/**
 * Joints so deep that they begin to weaken the piece they are cut in. A usual depth nobody said is told only where it
 * leaves less than a third.
 */
const deep = ({ case: c, thick, joints }: Sizes): readonly CaseWarning[] => {
  const all = housedIn(c).flatMap((meeting): readonly Deep[] => {
    const { joint, depth: field, into } = meetingAt(c, meeting);
    const [depth, thickness] = [joints[field], thick(into)];
    const usual = c[field] === undefined && !less(over(times(thickness, 2n), 3n), depth);
    return joint.weakens(depth, thickness) && !usual ? [{ code: 'deep', field, depth, thickness }] : [];
  });
  return all.filter((x, k) => all.findIndex(({ field }) => field === x.field) === k);
};

/** Rabbet width, notch depth and cleat thickness are one figure, or the cleat stands proud. */
function cleats({ case: c, thick, inner }: Sizes): readonly CaseWarning[] {
  if (c.cleats === 0) return [];
  const cleat = thick('cleat');
  const found: CaseWarning[] = [];
  const by = (cut: Length) => subtract(cleat, cut);
  if (c.cleatRabbetWide && !isZero(by(c.cleatRabbetWide)))
    found.push({ code: 'cleat-proud', where: 'side', by: by(c.cleatRabbetWide) });
  if (backHow(c) === 'groove') return found;
  if (c.notchDeep && c.partitions > 0 && !isZero(by(c.notchDeep)))
    found.push({ code: 'cleat-proud', where: 'partition', by: by(c.notchDeep) });
  const deepest = c.notchDeep ?? cleat;
  if (c.partitions > 0 && less(half(inner.value), deepest))
    found.push({ code: 'notch-deep', deep: deepest, half: half(inner.value) });
  return found;
}

/** Least bearing of a tray shoved to one side: groove depth less slack. */
function bearing({ case: c }: Sizes): readonly CaseWarning[] {
  return c.inside.flatMap((i): readonly CaseWarning[] => {
    if (i.kind !== 'trays' || !i.depth) return [];
    const least = figureIn(c.units, leastBearing);
    const bears = subtract(i.depth, slackOf(c, i));
    return less(bears, least) ? [{ code: 'small-bearing', in: i.id, bearing: bears, least }] : [];
  });
}

type Wider = Extract<CaseWarning, { code: 'trays-wider' }>;

/**
 * Every frame piece over the trays of a bay comes off: then the others stand outside the groove floors, and trays
 * pass.
 */
function opens(warnings: readonly CaseWarning[], bay: number): boolean {
  const over = warnings.filter((x) => x.code === 'trays-locked' && x.bay === bay);
  return over.length > 0 && over.every((x) => x.code === 'trays-locked' && x.comesOff);
}

function wider(sizes: Sizes, frame: ReturnType<typeof frameOf>): readonly Wider[] {
  return sizes.case.inside.flatMap((i): readonly Wider[] => {
    const opening = frame.openings[i.bay - 1]?.wide.value;
    if (i.kind !== 'trays' || !i.depth || !opening) return [];
    const tray = subtract(sum([sizes.real(i.bay).value, i.depth, i.depth]), slackOf(sizes.case, i));
    return less(opening, tray) ? [{ code: 'trays-wider', bay: i.bay, tray, opening }] : [];
  });
}

/** "Outside grows by so much each" holds only where sides and partitions are of one thickness. */
const sharesThickness = ({ case: c, thick }: Sizes): boolean =>
  c.partitions === 0 || equals(thick('side'), thick('partition'));
