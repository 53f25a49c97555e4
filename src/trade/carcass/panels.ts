import { add, type Length, sum, times, zero } from '../../length/length';
import type { Rounding } from '../../length/round';
import type { Tape } from '../../length/tape';
import { cutsFor, type Met, type Seat } from '../joints/joint';
import type { Bore } from '../shelves/bore';
import { boresIn } from '../shelves/bores';
import { stripGrooves } from '../shelves/strip-grooves';
import { minus, plus, type Sum, sumOf } from '../sums/sum';
import { backGroove, rabbetInMitred } from './back-groove';
import { backHow } from './back-how';
import {
  bottomIn,
  type Cutting,
  flatBoard,
  partitionBoard,
  partitionLines,
  partitionsIn,
  sideBoard,
  sideLines,
  topIn,
} from './boards';
import type { Case, StockRole } from './case';
import { cleatPlaces, cleatsIn } from './cleats';
import { flatWide, reachTerms, sideDatum, sideLong, tonguesTerm } from './ends';
import { endAt, type Hand, jointAt, type Meeting, meetingAt, reachOf } from './meetings';
import { mitresAt } from './mitres';
import { nailerLines, nailersInSide } from './nailer-places';
import { type Line, type Part, sizeAt } from './part';
import type { PartName, SingleRole } from './part-name';
import { bottomLong, lengthIn, type Sizes, stockOf } from './sizes';
import { toeNotch } from './toe-notch';
import { tonguesOf } from './tongues';

/** What parts are made in: the sizes of the case, the tape, and how each part's grooves are cut. */
export type Making = {
  readonly sizes: Sizes;
  readonly tape: Tape;
  /** How much the floor falls under the case, where that was read. Inches. */
  readonly fall?: Length | undefined;
  readonly cutting: (part: string) => Cutting;
};

/** The whole case across, up and deep; one bay; the frame between its stiles. */
type Opening = 'across' | 'up' | 'deep' | 'frame' | `bay${number}`;

/** What a part is: by the end of its id, or by a name of its own. */
type Named =
  | { readonly role: SingleRole; readonly name?: never }
  | { readonly role: string; readonly name: PartName };

type New = Pick<Part, 'stage' | 'end' | 'fitted'> &
  Named & {
    readonly stock: StockRole;
    readonly length: Sum;
    readonly width: Sum;
    /** It must enter an opening: rounded down. */
    readonly enters?: boolean;
    /** The openings its length and its width go across, and whether it sets them. */
    readonly spans?: { readonly length?: Opening; readonly width?: Opening; readonly sets?: boolean };
    readonly copies?: number;
  };

/** A part with nothing cut in it yet. */
export function partOf({ sizes, tape }: Making, part: New): Part {
  const { case: c, thick } = sizes;
  const mode: Rounding = part.enters ? 'floor' : 'halfExpand';
  const { length, width, sets = false } = part.spans ?? {};
  const spans = (opening: Opening | undefined) => (opening ? { spans: { opening, sets } } : {});
  return {
    id: `${c.id}~${part.role}`,
    of: c.id,
    name: part.name ?? { role: part.role },
    copies: part.copies ?? 1,
    stock: part.stock,
    stuff: stockOf(c, part.stock),
    thickness: thick(part.stock),
    length: { ...sizeAt(part.length, tape, mode), ...spans(length) },
    width: { ...sizeAt(part.width, tape, mode), ...spans(width) },
    end: part.end,
    stage: part.stage,
    ...(part.fitted ? { fitted: part.fitted } : {}),
    rabbets: [],
    notches: [],
    laps: [],
    mates: [],
    strip: false,
    comesOff: false,
    inFrame: part.stock === 'frame',
  };
}

const blankOf = (part: Part, { units }: Case) => ({
  ...(units ? { units } : {}),
  id: part.id,
  part: part.name,
  length: part.length.sum.value,
  thickness: part.thickness,
  across: part.width.sum.value,
  end: part.end,
});

const bored = (bores: readonly Bore[]) => (bores.length > 0 ? { bores } : {});

/** Both sides, bottom, top and partitions: what the dry-fit stands up. */
export function panels(making: Making): readonly Part[] {
  const { case: c } = making.sizes;
  const partitions = Array.from({ length: c.partitions }, (_, k) => partition(making, k + 1));
  return [
    side(making, 'left'),
    side(making, 'right'),
    flat(making, 'bottom'),
    ...(c.hasTop ? [flat(making, 'top')] : []),
    ...partitions,
  ];
}

function side(making: Making, hand: Hand): Part {
  const { sizes, cutting } = making;
  const part = partOf(making, {
    role: hand,
    stock: 'side',
    length: lengthIn(sizes, 'up', sideLong),
    width: sizes.depth,
    spans: { length: 'up', width: 'deep', sets: true },
    end: 'bottom',
    stage: 'carcass',
  });
  const corner = toeNotch(sizes);
  const bay = hand === 'left' ? 1 : sizes.case.partitions + 1;
  const { rabbets, along: own } = cutsFor([
    bottomIn(sizes, hand),
    ...alongSide(sizes, hand),
    ...backGroove(sizes, hand),
  ]);
  const along = [...own, ...stripGrooves(sizes, bay, 'A')];
  return {
    ...part,
    board: sideBoard(sizes, blankOf(part, sizes.case), { ...cutting(part.id), hand }),
    rabbets,
    ...mitresAt(sizes.case, hand),
    ...(along.length > 0 ? { along } : {}),
    ...bored(boresIn(sizes, bay, { face: 'A', datum: sideDatum(sizes) })),
    lines: [...sideLines(sizes, hand), ...nailerLines(sizes)],
    ...(corner ? { corner } : {}),
    mates: [`${sizes.case.id}~${hand === 'left' ? 'right' : 'left'}`],
  };
}

/** What lies along the ends and edges of a side: the top, the back, and cleats let in for their own length. */
function alongSide(sizes: Sizes, hand: Hand): readonly Met[] {
  const { case: c, thick, joints } = sizes;
  const datum = sideDatum(sizes);
  const met = (meeting: Meeting, part: StockRole, seat: Omit<Seat, 'called' | 'fits' | 'depth'>): Met => {
    const { joint, depth } = meetingAt(c, meeting);
    return { joint, seat: { ...seat, called: part, fits: stockOf(c, part), depth: joints[depth] } };
  };
  const back = { at: 'edge', named: 'back' } as const;
  const rabbeted = backHow(c) === 'rabbet';
  const cleats = cleatPlaces(sizes).map(({ near, long }, k, all) =>
    met('cleat', 'cleat', {
      id: `cleat${k + 1}`,
      no: all.length === 1 ? undefined : k + 1,
      flush: back,
      thick: c.cleatRabbetWide ?? thick('cleat'),
      room: rabbeted ? joints.backWide : zero,
      from: add(datum, near),
      to: sum([datum, near, long]),
    }),
  );
  return [
    ...topIn(sizes, hand),
    ...(rabbeted ? [met('back', 'back', { id: 'back', flush: back, thick: joints.backWide })] : []),
    ...cleats,
    ...nailersInSide(sizes),
  ];
}

function flat(making: Making, which: 'bottom' | 'top'): Part {
  const { sizes, cutting } = making;
  const grooved = backGroove(sizes, which);
  const part = partOf(making, {
    role: which,
    stock: which,
    length: lengthIn(sizes, 'across', which === 'bottom' ? bottomLong : topLong),
    width: flatWide(sizes, which),
    spans: { length: 'across', width: 'deep', sets: true },
    end: 'left',
    stage: 'carcass',
  });
  const own: Part = {
    ...part,
    rabbets: rabbetInMitred(sizes, which),
    ...mitresAt(sizes.case, which),
    ...(grooved.length > 0 ? { along: cutsFor(grooved).along } : {}),
    tongues: tonguesOf(sizes, which, { left: which, right: endAt(which, 'right') }),
  };
  if (sizes.case.partitions === 0) return own;
  const board = flatBoard(sizes, which, { blank: blankOf(part, sizes.case), cutting: cutting(part.id) });
  const { lines } = cutsFor(partitionsIn(sizes, which));
  if (lines.length === 0) return { ...own, board };
  const numbered = (line: Line, k: number): Line => ({ ...line, takes: { ...line.takes, no: k + 1 } });
  return { ...own, lines: lines.length === 1 ? lines : lines.map(numbered) };
}

/** The top, from the outside: what the bottom reaches past the clear width, it reaches its own way. */
const topLong = (sizes: Sizes): Sum =>
  jointAt(sizes.case, 'top') === 'rabbet' && jointAt(sizes.case, 'topRight') === 'rabbet'
    ? rabbetToRabbet(sizes, 'top')
    : sumOf(plus('clear-width', sizes.clearWidth.value, sizes.clearWidth), ...reachTerms(sizes, 'top'));

/** From the floor of a rabbet in one side to that in the other. */
export const rabbetToRabbet = (sizes: Sizes, meeting: 'top' | 'back' | 'cleat'): Sum =>
  sumOf(
    plus('outside-width', sizes.width.value, sizes.width),
    minus('two-sides', times(sizes.thick('side'), 2n)),
    plus('two-rabbet-depths', times(reachOf(sizes, meeting), 2n)),
  );

function partition(making: Making, k: number): Part {
  const { sizes, cutting } = making;
  const { case: c } = sizes;
  const datum = reachOf(sizes, 'partition');
  const seats = times(datum, c.hasTop ? 2n : 1n);
  const along = [...stripGrooves(sizes, k, 'A'), ...stripGrooves(sizes, k + 1, 'B')];
  const part = partOf(making, {
    role: `partition${k}`,
    name: { role: 'partition', ...(c.partitions === 1 ? {} : { no: k }) },
    stock: 'partition',
    length: sumOf(
      plus('clear-height', sizes.clearHeight.value, sizes.clearHeight),
      plus(tonguesTerm(c) ?? (c.hasTop ? 'bottom-and-top-dado-depths' : 'bottom-dado-depth'), seats),
    ),
    width: sizes.inner,
    enters: true,
    spans: { length: 'up', width: 'deep' },
    end: 'bottom',
    stage: 'carcass',
  });
  return {
    ...part,
    board: partitionBoard(sizes, k, { blank: blankOf(part, sizes.case), cutting: cutting(part.id) }),
    tongues: tonguesOf(sizes, 'partition', {
      bottom: 'partition',
      ...(c.hasTop ? { top: 'partition' } : {}),
    }),
    lines: partitionLines(sizes, k),
    notches: cutsFor(cleatsIn(sizes)).notches,
    ...(along.length > 0 ? { along } : {}),
    ...bored([...boresIn(sizes, k, { face: 'A', datum }), ...boresIn(sizes, k + 1, { face: 'B', datum })]),
    mates: Array.from({ length: c.partitions }, (_, n) => `${c.id}~partition${n + 1}`).filter(
      (id) => id !== part.id,
    ),
  };
}
