import {
  absolute,
  add,
  isNegative,
  isPositive,
  type Length,
  less,
  subtract,
  zero,
} from '../../length/length';
import type { Rounded } from '../../length/round';
import { markAt, restOfLength, type Tape, unitsOf } from '../../length/tape';
import { cutterOn } from '../machines/cutter';
import { usualOverlap } from '../machines/depths';
import { machineFor } from '../machines/groove-machines';
import type { Figures, GrooveMachine, Place, SetTo } from '../machines/machine';
import { isOtherEndOn, type OutOfReach, outOfReach } from '../machines/reach';
import type { Shop, ShopField } from '../machines/shop';
import type { Board } from './board';
import type { Layout } from './lay-out';
import type { Groove } from './layout';
import { lengthMark, type Mark } from './marks';
import type { SecondMark } from './second-mark';
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
  /** The far wall where it is set by a figure of its own. */
  readonly second?: SecondMark;
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
 * the knife line agree; it is rounded once more for the scale it is read on. What it leaves is told from the exact
 * place, so that all figures of a groove carry the one remainder of its near mark and its walls stay so far apart.
 *
 * @param layout without problems; figures of a layout with problems are not for cutting
 * @example settingsFor(layOut(board), { board, shop, tape: '1/32' }).settings[0].figure.value
 */
export const settingsFor = (layout: Layout, job: CutContext): Settings =>
  settingsOn(machineFor(job.board.machine), layout, job);

/** As `settingsFor`, on the machine given. */
export function settingsOn(machine: GrooveMachine, layout: Layout, job: CutContext): Settings {
  const { board, shop, tape } = job;
  const absent = (machine.needs?.(board) ?? []).filter(
    (field) => !(isMeasured(shop[field]) || (shop.atGuide && field !== 'kerf')),
  );
  const problems: SettingProblem[] = absent.map((field) => ({ code: 'shop-figure-missing', field }));
  problems.push(...wrongFigures(shop));
  if (problems.length > 0) return { settings: [], problems, warnings: [] };
  const settings: Setting[] = [];
  const marks = layout.grooves.map((groove): NearMark => ({ groove, near: markAt(groove.near, tape) }));
  const length = lengthMark(board, tape);
  const placed = (near: (mark: NearMark) => Length, long: Length): Placed => ({
    length: long,
    all: marks.map((mark): Place => {
      const { width } = mark.groove;
      return { near: near(mark), width, cutter: cutterOn(machine, width, job) };
    }),
  });
  const marked = placed((mark) => mark.near.value, length.value);
  const exact = placed((mark) => mark.groove.near, add(length.value, length.rest));
  marks.forEach((mark, k) => {
    const place = marked.all[k];
    const real = exact.all[k];
    if (!place || !real) return;
    const { width, cutter } = place;
    // less than none would leave wood standing between passes
    const passes = passesFor(width, cutter, shop.overlap ?? usualOverlap[board.units ?? unitsOf(tape)]);
    if (passes.ok) {
      const stands = { marked: { ...marked, ...place }, exact: { ...exact, ...real } };
      const own = settingsOf(mark, { ...stands, length, passes: passes.value, machine, job });
      settings.push(...own);
      // one word for a groove, however many passes it takes
      const [far] = own.flatMap((s) => outOfReach(s, { machine, cutter, rest: mark.near.rest, job }) ?? []);
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

/** The grooves of a board, and its length. Inches. */
type Placed = { readonly length: Length; readonly all: readonly Place[] };

/** The mark each figure of a groove stands on. */
type NearMark = Pick<Mark, 'groove' | 'near'>;

type Cut = {
  readonly length: Rounded;
  readonly marked: Place & Placed;
  readonly exact: Place & Placed;
  readonly passes: readonly Pass[];
  readonly machine: GrooveMachine;
  readonly job: CutContext;
};

function settingsOf(
  mark: NearMark,
  { length, marked, exact, passes, machine, job }: Cut,
): readonly Setting[] {
  const { board, tape } = job;
  const ordered = machine.order?.(passes, board) ?? passes;
  const near: Pass = { wall: 'near', offset: zero };
  const setAt = (place: Place & Placed, pass: Pass): SetTo =>
    machine.set({ ...place, teeth: add(place.near, pass.offset), pass, job });
  const first = markAt(setAt(marked, near).figure, tape).value;
  return ordered.map((pass, k) => {
    const [set, real] = [setAt(marked, pass), setAt(exact, pass)];
    const teeth = (past: Length) =>
      shownAt(add(marked.near, add(pass.offset, past)), add(exact.near, add(pass.offset, past)), tape);
    const figure = shownAt(set.figure, real.figure, tape);
    const nearTeeth = teeth(zero);
    return {
      id: `${mark.groove.id}~${nameOf(pass, ordered)}`,
      groove: mark.groove,
      pass: k + 1,
      passes: ordered.length,
      wall: pass.wall,
      measures: set.measures,
      figure,
      nearTeeth,
      farTeeth: teeth(marked.cutter),
      otherEnd: restOfLength(length, nearTeeth),
      ...(set.strip ? { strip: set.strip } : {}),
      ...(set.otherGuide && real.otherGuide
        ? { otherGuide: shownAt(set.otherGuide, real.otherGuide, tape) }
        : {}),
      ...(pass.wall === 'far' && !set.strip
        ? { second: { spacer: pass.offset, off: slip(figure.value, first, pass.offset) } }
        : {}),
    };
  });
}

/** A figure off the near mark at the tape, and what that leaves of where it is by the drawing. */
function shownAt(marked: Length, exact: Length, tape: Tape): Rounded {
  const { value } = markAt(marked, tape);
  return { value, rest: subtract(exact, value) };
}

/** How much too wide a groove comes out by the shown marks of its two walls, which are to be `apart`. Inches. */
const slip = (shown: Length, first: Length, apart: Length): Length =>
  subtract(absolute(subtract(shown, first)), apart);

/** A pass is named for what it cuts, not for when: a tick keeps its meaning when the machine changes the order. */
function nameOf(pass: Pass, passes: readonly Pass[]): string {
  if (pass.wall !== 'between') return pass.wall;
  return `b${passes.filter((p) => p.wall === 'between').indexOf(pass) + 1}`;
}

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
