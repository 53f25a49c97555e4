import {
  add,
  inches,
  isNegative,
  isPositive,
  isZero,
  type Length,
  less,
  subtract,
  zero,
} from '../../length/length';
import type { Rounded } from '../../length/round';
import { fromOtherEnd, markAt } from '../../length/tape';
import type { Board, Shop } from './board';
import { type CutContext, cutterFor } from './cutter';
import type { Layout } from './lay-out';
import type { Groove } from './layout';
import { type Measures, machines, ridesAtFence } from './machines';
import { type Mark, marksOf } from './marks';
import { type Pass, type PassError, passesFor, type Wall } from './passes';

/** One machine setting: one pass of one groove. Its id is the operation's, whatever is changed round it. */
export type Setting = {
  readonly id: string;
  readonly groove: Groove;
  readonly pass: number;
  readonly passes: number;
  readonly wall: Wall;
  readonly measures: Measures;
  /** The number to set, at the tape. */
  readonly figure: Rounded;
  /** Teeth of this pass from the reference end. */
  readonly nearTeeth: Rounded;
  readonly farTeeth: Rounded;
  /** Near teeth from the other end. */
  readonly otherEnd: Rounded;
  /** Router: strip between guide and base; 0 when out. */
  readonly strip?: Length;
  /** Router, saw: where the guide's edge goes instead if it lies on the other side of the cut. */
  readonly otherGuide?: Rounded;
};

export type ShopField = keyof Shop;

export type SettingProblem =
  | { readonly code: 'shop-figure-missing'; readonly field: ShopField }
  /** A figure of the shop that can be nothing at the least, or must be more. */
  | { readonly code: 'shop-figure-wrong'; readonly field: ShopField; readonly figure: Length }
  | ({ readonly groove: Groove } & PassError)
  | {
      readonly code: 'beyond-fence';
      readonly groove: Groove;
      readonly figure: Length;
      readonly capacity: Length;
      /** The same cut set off the end not on the fence now, when that is within reach. */
      readonly fromOther?: Length;
    }
  | { readonly code: 'behind-fence'; readonly groove: Groove; readonly figure: Length }
  | {
      readonly code: 'guide-off-board';
      readonly groove: Groove;
      readonly figure: Length;
      /** Where it goes on the other side, when that is on the board. */
      readonly otherSide?: Length;
      /** Off the board on the other side too: the guide needs something laid beside the board to lie on. */
      readonly neither: boolean;
    };

export type SettingWarning =
  | { readonly code: 'lengths-must-match' }
  | {
      readonly code: 'narrow-at-fence';
      readonly groove: Groove;
      readonly reach: Length;
      readonly across: Length;
    };

export type Settings = {
  readonly settings: readonly Setting[];
  readonly problems: readonly SettingProblem[];
  readonly warnings: readonly SettingWarning[];
};

/** Overlap of passes when the shop has not said: common practice, no source. */
const usualOverlap = inches(1n, 16n);

/**
 * Every setting a laid-out board needs on its machine, in order of working: along the board, and for a groove wider
 * than the cutter both walls before what is between. Each figure stands on the rounded near mark, so the setting and
 * the knife line agree; it is rounded once more for the scale it is read on, and says by how much.
 *
 * @param layout without problems; figures of a layout with problems are not for cutting
 * @example settingsFor(layOut(board), { board, shop, tape: '1/32' }).settings[0].figure.value
 */
export function settingsFor(layout: Layout, job: CutContext): Settings {
  const { board, shop, tape } = job;
  const absent = needed(board).filter((field) => !isMeasured(shop[field]));
  const problems: SettingProblem[] = absent.map((field) => ({ code: 'shop-figure-missing', field }));
  problems.push(...wrongFigures(shop));
  if (problems.length > 0) return { settings: [], problems, warnings: [] };
  const settings: Setting[] = [];
  const marks = marksOf(board, layout, tape);
  // less than none would leave wood standing between passes
  const overlap = shop.overlap ?? usualOverlap;
  for (const mark of marks) {
    const cutter = cutterFor(mark.groove, job);
    const passes = passesFor(mark.groove.width, cutter, overlap);
    if (passes.ok) {
      const own = settingsOf(mark, { passes: passes.value, cutter, marks, job });
      settings.push(...own);
      // one word for a groove, however many passes it takes
      problems.push(...own.flatMap((s) => outOfReach(s, job)).slice(0, 1));
    } else problems.push({ groove: mark.groove, ...passes.error });
  }
  return { settings, problems, warnings: warningsFor(settings, job) };
}

/** A block may be nothing; a fence or a stop reaches somewhere. */
function wrongFigures(shop: Shop): readonly SettingProblem[] {
  const reach = (['capacity', 'stopReach'] as const).filter(
    (field) => shop[field] && !isPositive(shop[field]),
  );
  const block = shop.block && isNegative(shop.block) ? (['block'] as const) : [];
  return [...reach, ...block].flatMap((field) => {
    const figure = shop[field];
    return figure ? [{ code: 'shop-figure-wrong', field, figure } as const] : [];
  });
}

const isMeasured = (figure: Length | undefined): boolean => figure !== undefined && isPositive(figure);

function needed(board: Board): readonly ShopField[] {
  switch (board.machine) {
    case 'fence':
      return board.grows === 'toward' ? ['single'] : [];
    case 'router':
      return board.cutter ? ['routerBase'] : ['routerBase', 'bit'];
    case 'saw':
      return ['kerf', board.guide === 'reference' ? 'shoeKeep' : 'shoeWaste'];
    default:
      return [];
  }
}

type Cut = {
  readonly passes: readonly Pass[];
  readonly cutter: Length;
  readonly marks: readonly Mark[];
  readonly job: CutContext;
};

function settingsOf(mark: Mark, cut: Cut): readonly Setting[] {
  const { board, tape } = cut.job;
  const rule = machines[board.machine];
  const length = board.length ?? zero;
  const passes = rule.order(cut.passes, board);
  return passes.map((pass, k) => {
    const near = mark.near.value.add(pass.offset) as Length;
    const set = rule.set({ near, pass, cutter: cut.cutter, mark, marks: cut.marks, job: cut.job });
    const nearTeeth = pass.offset.n === 0n ? mark.near : markAt(near, tape);
    return {
      id: `${mark.groove.id}~${nameOf(pass, passes)}`,
      groove: mark.groove,
      pass: k + 1,
      passes: passes.length,
      wall: pass.wall,
      measures: set.measures,
      figure: onMark(set.figure, pass, mark) ? mark.near : markAt(set.figure, tape),
      nearTeeth,
      farTeeth: markAt(near.add(cut.cutter) as Length, tape),
      otherEnd: fromOtherEnd(length, nearTeeth, tape),
      ...(set.strip ? { strip: set.strip } : {}),
      ...(set.otherGuide ? { otherGuide: markAt(set.otherGuide, tape) } : {}),
    };
  });
}

/** A pass is named for what it cuts, not for when: a tick keeps its meaning when the machine changes the order. */
function nameOf(pass: Pass, passes: readonly Pass[]): string {
  if (pass.wall !== 'between') return pass.wall;
  return `b${passes.filter((p) => p.wall === 'between').indexOf(pass) + 1}`;
}

/** A figure that is the knife mark itself keeps the mark's own remainder. */
const onMark = (figure: Length, pass: Pass, mark: Mark): boolean =>
  pass.offset.n === 0n && figure.equals(mark.near.value);

function outOfReach(s: Setting, job: CutContext): readonly SettingProblem[] {
  if (s.measures === 'guide-edge') return offTheBoard(s, job.board.length ?? zero);
  // one stop for all the spacers, standing for the farthest cut, the one without
  if (s.measures === 'spacer' && !isZero(s.figure.value)) return [];
  const figure = s.measures === 'spacer' ? s.nearTeeth.value : s.figure.value;
  const capacity = job.board.machine === 'fence' ? job.shop.capacity : job.shop.stopReach;
  if (isNegative(figure)) return [{ code: 'behind-fence', groove: s.groove, figure }];
  if (!capacity || !less(capacity, figure)) return [];
  const other = otherReach(s, job);
  const fits = other && isPositive(other) && !less(capacity, other);
  return [
    { code: 'beyond-fence', groove: s.groove, figure, capacity, ...(fits ? { fromOther: other } : {}) },
  ];
}

function offTheBoard({ groove, figure, otherGuide }: Setting, length: Length): readonly SettingProblem[] {
  const off = (x: Length) => isNegative(x) || less(length, x);
  if (!off(figure.value)) return [];
  const other = otherGuide?.value;
  const neither = other !== undefined && off(other);
  const otherSide = other && !neither ? { otherSide: other } : {};
  return [{ code: 'guide-off-board', groove, figure: figure.value, neither, ...otherSide }];
}

/** The same cut set off the end not on the stop or fence now; one stop with spacers has no such place. */
function otherReach(s: Setting, job: CutContext): Length | undefined {
  if (s.measures === 'spacer') return undefined;
  if (s.measures === 'other-stop-to-teeth') return s.nearTeeth.value;
  const { board, tape } = job;
  const teeth = subtract(markAt(board.length ?? zero, tape).value, add(s.farTeeth.value, s.farTeeth.rest));
  const rides = s.measures === 'fence-scale' ? ridesAtFence(cutterFor(s.groove, job), job) : zero;
  return markAt(add(teeth, rides), tape).value;
}

function warningsFor(settings: readonly Setting[], { board }: CutContext): readonly SettingWarning[] {
  const offOther = board.machine === 'stop' && board.against === 'other';
  const across = board.machine === 'fence' ? board.across : undefined;
  const narrow = across && settings.find((s) => less(across, s.nearTeeth.value));
  return [
    ...(offOther ? [{ code: 'lengths-must-match' } as const] : []),
    ...(narrow && across
      ? [{ code: 'narrow-at-fence', groove: narrow.groove, reach: narrow.nearTeeth.value, across } as const]
      : []),
  ];
}
