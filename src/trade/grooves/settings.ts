import { isNegative, isPositive, type Length, less, zero } from '../../length/length';
import { fromOtherEnd, markAt, type Tape } from '../../length/tape';
import { cutterOn } from '../machines/cutter';
import { usualOverlap } from '../machines/depths';
import { machineFor } from '../machines/groove-machines';
import type { Figures, GrooveMachine, Place } from '../machines/machine';
import { isOtherEndOn, type OutOfReach, outOfReach } from '../machines/reach';
import type { Shop, ShopField } from '../machines/shop';
import type { Board } from './board';
import type { Layout } from './lay-out';
import type { Groove } from './layout';
import { type Mark, marksOf } from './marks';
import { type Pass, type PassError, passesFor, type Wall } from './wall-passes';

/** What settings are worked out for: the board, the shop's own figures, the marks of the job. */
type CutContext = { readonly board: Board; readonly shop: Shop; readonly tape: Tape };

/** One machine setting: one pass of one groove. Its id is the operation's, whatever is changed round it. */
export type Setting = Figures & {
  readonly id: string;
  readonly groove: Groove;
  readonly pass: number;
  readonly passes: number;
  readonly wall: Wall;
};

export type SettingProblem =
  | { readonly code: 'shop-figure-missing'; readonly field: ShopField }
  /** A figure of the shop that can be nothing at the least, or must be more. */
  | { readonly code: 'shop-figure-wrong'; readonly field: ShopField; readonly figure: Length }
  | ({ readonly groove: Groove } & (PassError | OutOfReach));

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

/**
 * Every setting a laid-out board needs on its machine, in order of working: along the board, and for a groove wider
 * than the cutter both walls before what is between. Each figure stands on the rounded near mark, so the setting and
 * the knife line agree; it is rounded once more for the scale it is read on, and says by how much.
 *
 * @param layout without problems; figures of a layout with problems are not for cutting
 * @example settingsFor(layOut(board), { board, shop, tape: '1/32' }).settings[0].figure.value
 */
export const settingsFor = (layout: Layout, job: CutContext): Settings =>
  settingsOn(machineFor(job.board.machine), layout, job);

/** As `settingsFor`, on the machine given. */
export function settingsOn(machine: GrooveMachine, layout: Layout, job: CutContext): Settings {
  const { board, shop, tape } = job;
  const absent = (machine.needs?.(board) ?? []).filter((field) => !isMeasured(shop[field]));
  const problems: SettingProblem[] = absent.map((field) => ({ code: 'shop-figure-missing', field }));
  problems.push(...wrongFigures(shop));
  if (problems.length > 0) return { settings: [], problems, warnings: [] };
  const settings: Setting[] = [];
  const marks = marksOf(board, layout, tape);
  const all = marks.map(({ near, groove: { width } }): Place => {
    return { near: near.value, width, cutter: cutterOn(machine, width, job) };
  });
  marks.forEach((mark, k) => {
    const place = all[k];
    if (!place) return;
    const { width, cutter } = place;
    // less than none would leave wood standing between passes
    const passes = passesFor(width, cutter, shop.overlap ?? usualOverlap);
    if (passes.ok) {
      const own = settingsOf(mark, { place, all, passes: passes.value, machine, job });
      settings.push(...own);
      // one word for a groove, however many passes it takes
      const [far] = own.flatMap((s) => outOfReach(s, { machine, cutter, job }) ?? []);
      if (far) problems.push({ groove: mark.groove, ...far });
    } else problems.push({ groove: mark.groove, ...passes.error });
  });
  return { settings, problems, warnings: warningsFor(settings, machine, board) };
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

type Cut = {
  readonly place: Place;
  readonly all: readonly Place[];
  readonly passes: readonly Pass[];
  readonly machine: GrooveMachine;
  readonly job: CutContext;
};

function settingsOf(mark: Mark, { place, all, passes, machine, job }: Cut): readonly Setting[] {
  const { board, tape } = job;
  const length = board.length ?? zero;
  const ordered = machine.order?.(passes, board) ?? passes;
  return ordered.map((pass, k) => {
    const teeth = place.near.add(pass.offset) as Length;
    const set = machine.set({ ...place, teeth, pass, all, job });
    const nearTeeth = pass.offset.n === 0n ? mark.near : markAt(teeth, tape);
    return {
      id: `${mark.groove.id}~${nameOf(pass, ordered)}`,
      groove: mark.groove,
      pass: k + 1,
      passes: ordered.length,
      wall: pass.wall,
      measures: set.measures,
      figure: onMark(set.figure, pass, mark) ? mark.near : markAt(set.figure, tape),
      nearTeeth,
      farTeeth: markAt(teeth.add(place.cutter) as Length, tape),
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

function warningsFor(
  settings: readonly Setting[],
  machine: GrooveMachine,
  board: Board,
): readonly SettingWarning[] {
  const across = machine.holds === 'fence' ? board.across : undefined;
  const narrow = across && settings.find((s) => less(across, s.nearTeeth.value));
  return [
    ...(isOtherEndOn(machine, board) ? [{ code: 'lengths-must-match' } as const] : []),
    ...(narrow && across
      ? [{ code: 'narrow-at-fence', groove: narrow.groove, reach: narrow.nearTeeth.value, across } as const]
      : []),
  ];
}
