import { add, atMost, inches, isNegative, type Length, less, type Ratio } from '../../length/length';
import type { Rounded } from '../../length/round';
import { markAt, type Tape } from '../../length/tape';
import type { Shop } from '../machines/shop';
import { weightOf } from './carry';
import { guidePlaces } from './guide';
import { type Branch, type CutBranch, halvesOf, type Place, placesOf, type Rect, type Way } from './tree';

/** What a cut is made with: a circular saw along a guide or line, the table-saw fence, the stop of a crosscut saw. */
type CutTool = 'guide' | 'fence' | 'stop';

/** One cut of a sheet or stick, at what it is set to. Inches, pounds. */
export type CutStep = {
  readonly path: string;
  /** Cuts one after the other at one setting have one number. */
  readonly no: number;
  readonly tool: CutTool;
  readonly way: Way;
  /** The line from the edge measured from: where what is kept ends. On a fence or stop: what it is set to. */
  readonly figure: Rounded;
  /** The side of the line that is kept as measured; the kerf goes on the other. */
  readonly keep: 'near' | 'far';
  /**
   * Edge of the guide from the edge measured from: lying on what is kept, lying on the waste; off the sheet is
   * undefined.
   */
  readonly onKeep?: Rounded | undefined;
  readonly onWaste?: Rounded | undefined;
  /** What is cut, and the two it makes. */
  readonly size: Rect;
  readonly near: Rect;
  readonly far: Rect;
  readonly nearIs: Branch;
  readonly farIs: Branch;
  readonly weight?: Ratio | undefined;
  readonly nearWeight?: Ratio | undefined;
  readonly farWeight?: Ratio | undefined;
  /** Too heavy for one person to lift. */
  readonly heavy: boolean;
};

export type CutsAt = {
  readonly kind: 'sheet' | 'stick';
  readonly kerf: Length;
  readonly tape: Tape;
  readonly shop: Shop;
  readonly thick?: Length | undefined;
  /** Pounds one person may lift. */
  readonly carry: Ratio;
  /** Everything along the guide: there is no table saw. */
  readonly guideOnly: boolean;
};

/** A fence reaches so far when the shop has not said. Common practice, no source. Inches. */
const usualCapacity = inches(24n);

/**
 * The cuts of a sheet in order: what must come apart first, then as few settings as go; at each setting every piece
 * that wants it.
 *
 * @param sheet its size and tree; @param at kerf > 0, tape, shop figures, pounds for one person
 * @example cutSteps(sheet, at)[0].figure.value
 */
export function cutSteps(
  sheet: { readonly size: Rect; readonly tree: Branch },
  at: CutsAt,
): readonly CutStep[] {
  const waiting = placesOf(sheet, at.kerf).flatMap((place) =>
    place.branch.is === 'cut' ? [stepOf(place, place.branch, at)] : [],
  );
  const steps: CutStep[] = [];
  const cut = new Set<string>();
  let no = 0;
  while (waiting.length > 0) {
    const ready = waiting.filter((s) => s.path === 'r' || cut.has(s.path.slice(0, -1)));
    const before = steps[steps.length - 1];
    const next = ready.find((s) => before && sameSetting(s, before)) ?? bestNext(ready, waiting);
    if (!next) throw new RangeError('cutSteps: a cut that nothing leads to');
    if (!before || !sameSetting(next, before)) no += 1;
    steps.push({ ...next, no });
    cut.add(next.path);
    waiting.splice(waiting.indexOf(next), 1);
  }
  return steps;
}

/** Whether two cuts are made at one setting. */
export const sameSetting = (a: CutStep, b: CutStep): boolean =>
  a.tool === b.tool && a.way === b.way && a.keep === b.keep && a.figure.value.equals(b.figure.value);

/** No setting that would be wanted again later; with the guide before with the fence; the largest first. */
function bestNext(ready: readonly CutStep[], waiting: readonly CutStep[]): CutStep | undefined {
  const rank = (s: CutStep): number => {
    const later = waiting.some((w) => w !== s && sameSetting(w, s) && !ready.includes(w));
    return (later ? 2 : 0) + (s.tool === 'guide' ? 0 : 1);
  };
  const area = ({ size }: CutStep) => size.long.mul(size.wide);
  return [...ready].sort((a, b) => rank(a) - rank(b) || area(b).compare(area(a)))[0];
}

/** To the side that leaves more of what is kept: no piece behind it comes out short. */
const generous = { near: 'ceil', far: 'floor' } as const;

function stepOf({ path, size }: Place, branch: CutBranch, at: CutsAt): CutStep {
  const { way, kind, kerf } = { ...branch, ...at };
  const { near, far } = halvesOf(size, branch, kerf);
  const keep = branch.near.is === 'waste' ? 'far' : 'near';
  const line = keep === 'near' ? branch.at : add(branch.at, kerf);
  const weigh = (of: Rect) => (kind === 'sheet' && at.thick ? weightOf(of, { thick: at.thick }) : undefined);
  const weight = weigh(size);
  const heavy = weight?.gt(at.carry) === true;
  const tool = toolFor({ line, keep, way, size, heavy }, at);
  const whole = way === 'rip' ? size.wide : size.long;
  return {
    path,
    no: 0,
    tool,
    way,
    keep,
    figure: markAt(line, at.tape, generous[keep]),
    ...(tool === 'guide' && kind === 'sheet' ? guideMarks(line, { keep, whole, at }) : {}),
    size,
    near,
    far,
    nearIs: branch.near,
    farIs: branch.far,
    weight,
    nearWeight: weigh(near),
    farWeight: weigh(far),
    heavy,
  };
}

type Cut = Pick<CutStep, 'keep' | 'way' | 'size' | 'heavy'> & { readonly line: Length };

/** The fence only for what one person lifts, within its reach, and with the longer edge riding on it. */
function toolFor({ line, keep, way, size, heavy }: Cut, { kind, shop, guideOnly }: CutsAt): CutTool {
  // an end not square yet is no end for a stop: it is cut at a line
  if (kind === 'stick') return keep === 'far' ? 'guide' : way === 'cross' ? 'stop' : 'fence';
  const rides = way === 'rip' ? size.long : size.wide;
  const reach = shop.capacity ?? usualCapacity;
  const fence = !guideOnly && !heavy && keep === 'near' && atMost(line, reach) && atMost(line, rides);
  return fence ? 'fence' : 'guide';
}

function guideMarks(
  line: Length,
  { keep, whole, at }: { readonly keep: 'near' | 'far'; readonly whole: Length; readonly at: CutsAt },
): Pick<CutStep, 'onKeep' | 'onWaste'> {
  const places = guidePlaces(line, { keep, kerf: at.shop.kerf ?? at.kerf, shop: at.shop });
  const mark = (x: Length | undefined): Rounded | undefined =>
    x === undefined || isNegative(x) || less(whole, x) ? undefined : markAt(x, at.tape, generous[keep]);
  return { onKeep: mark(places.onKeep), onWaste: mark(places.onWaste) };
}
