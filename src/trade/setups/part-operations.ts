import { isPositive, type Length, zero } from '../../length/length';
import type { Rounded } from '../../length/round';
import { cutterTape, markAt, type Tape } from '../../length/tape';
import type { Lap, Notch, Part, Rabbet } from '../carcass/part';
import type { Takes } from '../carcass/part-name';
import { stopMarks } from '../carcass/stop-marks';
import type { Board } from '../grooves/board';
import { copiesOf, copyOf } from '../grooves/copies';
import { layOut } from '../grooves/lay-out';
import { type Setting, settingsFor } from '../grooves/settings';
import { standsOn } from '../grooves/stands-on';
import { cutterOn } from '../machines/cutter';
import { isGuided, machineFor } from '../machines/groove-machines';
import { isOtherEndOn } from '../machines/reach';
import { boresOf } from './bore-operations';
import { cornerOf } from './corner-operations';
import { dowelsOf } from './dowel-operations';
import { endOf } from './end-operations';
import { fastenersOf } from './fastener-operations';
import { onJointMachine } from './joint-machine';
import { alongFence, grooved, lapped, mitred, notched, outsideAlong } from './lies';
import { mitresOf } from './mitre-operations';
import type { On } from './on';
import { type Operation, opId } from './operation';
import { base, type Piece, pieceOf, piecesToCut } from './part-pieces';
import { type Setup, setupOf } from './setup';
import { cutToLength, ripTo, type ThroughAt } from './through-cuts';
import { tonguesOf } from './tongue-operations';
import type { Seat, Which } from './which';

export type Cutting = ThroughAt;

/**
 * Every operation of a part, in trade order: rip to width, cut to length, grooves, then rabbets, notches and laps.
 *
 * @param part with its sizes and joints; @param recuts by copy, how often it was spoiled
 * @param at shop figures and the marks of the job
 * @returns operations whose `after` names what must come first on the same piece
 */
export function partOperations(
  part: Part,
  recuts: Readonly<Record<string, number>>,
  at: Cutting,
): readonly Operation[] {
  const grooves = byCopy(part, grooveCuts(part, recuts, at));
  const ripped = isPositive(part.width.sum.value) ? ripTo(part, at) : undefined;
  const long =
    isPositive(part.length.sum.value) && (ripped || part.of === '') ? lengthOf(part, at) : undefined;
  return piecesToCut(part, recuts).flatMap((piece) => {
    const rip: readonly Operation[] = ripped ? [{ ...base(part, piece, 'rip'), what: 'rip', ...ripped }] : [];
    const length: readonly Operation[] = long
      ? [{ ...base(part, piece, 'len'), ...long, after: ids(rip) }]
      : [];
    const own = (grooves.get(part.copies === 1 ? '' : copyOf(piece.id)) ?? []).map((g) => ({
      ...g,
      after: ids(length),
    }));
    const ready = ids(own.length > 0 ? own : length);
    const last = [
      ...rabbetsOf(part, piece, at.tape),
      ...tonguesOf(part, piece, at.tape),
      ...shouldersOf(part, piece, at.tape),
      ...alongOf(part, piece, at.tape),
      ...cornerOf(part, piece, at.tape),
    ].map((op) => ({ ...onJointMachine(op, part, at), after: ready }));
    const rows = [
      ...boresOf(part, piece, at),
      ...dowelsOf(part, piece, at.tape),
      ...fastenersOf(part, piece, at.tape),
    ].map((op) => ({
      ...onJointMachine(op, part, at),
      after: ids(length),
    }));
    return [
      ...rip,
      ...length,
      ...own,
      ...last,
      ...rows,
      ...[...endOf(part, piece, at.tape), ...mitresOf(part, piece)].map((op) => ({
        ...op,
        after: last.length > 0 ? ids(last) : ready,
      })),
    ];
  });
}

const ids = (ops: readonly Operation[]): readonly string[] => ops.map((op) => op.id);

/** Groove cuts by the copy they are made in; all at the empty word where there is one piece. */
function byCopy(part: Part, cuts: readonly Operation[]): ReadonlyMap<string, readonly Operation[]> {
  const groups = new Map<string, Operation[]>();
  for (const cut of cuts) {
    const key = part.copies === 1 ? '' : copyOf(cut.copy);
    const group = groups.get(key);
    if (group) group.push(cut);
    else groups.set(key, [cut]);
  }
  return groups;
}

/** How all pieces of a part are cut to length. */
function lengthOf(part: Part, at: Cutting): Omit<Operation, keyof ReturnType<typeof base>> {
  if (!part.longPoint) return { what: 'length', ...cutToLength(part, at) };
  const figure = markAt(part.longPoint.value, at.tape);
  const on: On = { at: 'points', named: part.end };
  const setup = setupOf({ machine: 'mitre', sets: 'long-point', figure, on });
  return { what: 'mitre', which: { is: 'long-points' }, setup, figure: figure.value, placing: mitred(part) };
}

function grooveCuts(
  whole: Part,
  recuts: Readonly<Record<string, number>>,
  { shop, tape }: Cutting,
): readonly Operation[] {
  if (!whole.board) return [];
  const on = standsOn(whole.board, shop);
  const part = { ...whole, board: on.board };
  const at = { own: on.own, shop: on.shop, tape };
  const board = { ...on.board, recuts };
  // how often a piece was spoiled moves no groove: the part's own board may be laid out already
  const layout = layOut(whole.board);
  const set = layout.problems.length > 0 ? undefined : settingsFor(layout, { board, ...at });
  const settled = new Set(set?.settings.map((x) => x.groove.id));
  const open = set
    ? layout.grooves.some((g) => !settled.has(g.id))
    : board.runs.length + board.wides.length > 0;
  const waiting = open ? piecesToCut(part, recuts).map((piece) => notYet(part, piece, at.own)) : [];
  const cuts = (set?.settings ?? []).flatMap((setting) => cutsAt(part, board, setting, at));
  return [...cuts, ...waiting];
}

/** The marks of the job, the machine that is the shop's own, and the shop's figures at it. */
type GroovedAt = Omit<ReturnType<typeof standsOn>, 'board'> & Pick<Cutting, 'tape'>;

/** What one setting of a groove cuts in each of the boards: the same setup for all of them. */
function cutsAt(part: Part, board: Board, setting: Setting, at: GroovedAt): readonly Operation[] {
  const { fits, width, said } = setting.groove;
  const setup = grooveSetup(part, setting, at);
  const which = grooveOn(part, setting);
  const groove = { board: board.id, setting: setting.id, teeth: setting.nearTeeth.value };
  return copiesOf(board, setting.groove).map((copy) => ({
    id: opId(board.id, setting.id, copy.id),
    part: part.id,
    copy: copy.id,
    name: { ...pieceOf(part, copy.name, copy.again), ...(said === undefined ? { grooved: true } : {}) },
    what: 'groove',
    which,
    setup,
    figure: setting.figure.value,
    after: [],
    fits,
    width: fits === undefined ? undefined : width,
    groove,
    placing: grooved(part, setting, copy.name),
  }));
}

/** Grooves that cannot be set yet stand as one, so that nothing goes ahead as if they were not there. */
const notYet = (part: Part, piece: Piece, own: GroovedAt['own']): Operation => ({
  ...base(part, piece, 'grooves'),
  what: 'groove',
  which: { is: 'not-set-out' },
  setup: setupOf({ machine: part.board?.machine ?? 'stop', own, on: { at: 'not-set-out', of: part.id } }),
  figure: zero,
  cannot: true,
});

/** Which groove of its part: what stands in it, or its number. */
const grooveOn = (part: Part, { groove, wall }: Setting): Which => ({
  is: 'groove',
  seat: groove.wide ? seatOf(groove) : { in: 'run', no: groove.no },
  ...(wall === 'only' ? {} : { wall }),
  ...(part.board?.made === 'partition' ? { face: groove.face } : {}),
});

/** On a board laid out by hand nobody has said what stands in it: it has its number there, as in Marks. */
function seatOf({ id, no, called, calledNo, said }: Setting['groove']): Seat {
  if (said !== undefined) return { in: 'said', said };
  if (called === undefined) return { in: 'run', no };
  const partition = /^p(\d+)$/.exec(id)?.[1];
  if (partition) return { in: 'partition', no: partition };
  if (id === 'bottom' || id === 'top') return { in: id };
  return { in: 'shelf', ...(calledNo === undefined ? {} : { no: `${calledNo}` }) };
}

function grooveSetup(part: Part, setting: Setting, { shop, own }: GroovedAt): Setup {
  const { board } = part;
  const { width } = setting.groove;
  return setupOf({
    machine: board?.machine ?? 'stop',
    own,
    cutter: board ? cutterOn(machineFor(board.machine), width, { board, shop }) : width,
    height: setting.groove.depth,
    sets: setting.measures,
    figure: setting.figure,
    on: onFor(part),
  });
}

function onFor({ board, end }: Part): On {
  if (!board) return { at: 'end', named: end };
  if (isOtherEndOn(machineFor(board.machine), board)) return { at: 'other-end' };
  return { at: 'end', named: end, ...(isGuided(board.machine) ? { guide: board.guide } : {}) };
}

function rabbetsOf(part: Part, piece: Piece, tape: Tape): readonly Operation[] {
  return part.rabbets.map((rabbet) => {
    const figure = cutterMark(rabbet.width, tape);
    const setup = setupOf({
      machine: 'rabbet',
      height: rabbet.depth,
      sets: 'exposed',
      figure,
      on: rabbet.along,
    });
    const own = base(part, piece, `rabbet~${rabbet.id}`);
    return {
      ...own,
      what: 'rabbet',
      which: { is: 'takes', takes: rabbet.takes, ...stoppedAt(rabbet, part, tape) },
      setup,
      figure: figure.value,
      fits: rabbet.fits,
      placing: alongFence(part, rabbet.along, { copy: piece.name.copy }),
    };
  });
}

/** Where a rabbet or groove begins and ends when it does not run through. */
function stoppedAt(cut: Pick<Rabbet, 'from' | 'to'>, part: Part, tape: Tape) {
  const stopped = stopMarks(cut, part, tape);
  return stopped ? { stopped } : {};
}

/** Widths of cutters are set finer than marks: a sixty-fourth on an inch tape. */
const cutterMark = (x: Length, tape: Tape): Rounded => markAt(x, cutterTape(tape));

/**
 * Grooves along an edge: one stack and one height serve all of them, only the fence moves. A stopped one is let down
 * on a bit, never on a stack.
 */
function alongOf(part: Part, piece: Piece, tape: Tape): readonly Operation[] {
  return (part.along ?? []).map((groove) => {
    const face = part.name.role === 'partition' ? groove.face : undefined;
    const figure = markAt(groove.near, tape);
    const how = groove.from
      ? ({ machine: 'routertable', sets: 'bit-fence' } as const)
      : ({ machine: 'fence', sets: 'rip-fence' } as const);
    const { width: cutter, depth: height } = groove;
    const setup = setupOf({ ...how, cutter, height, figure, on: groove.edge });
    return {
      ...base(part, piece, `along~${groove.id}`),
      ...(groove.also ? { also: groove.also.map((id) => opId(part.id, `along~${id}`, piece.id)) } : {}),
      ...(face ? { name: { ...piece.name, copy: face } } : {}),
      what: 'along',
      which: { is: 'takes', takes: groove.takes, ...stoppedAt(groove, part, tape) },
      setup,
      figure: figure.value,
      fits: groove.fits,
      width: groove.width,
      placing: groove.outside
        ? outsideAlong(groove.edge, piece.name.copy)
        : alongFence(part, groove.edge, { copy: piece.name.copy, ...(face ? { face } : {}) }),
    };
  });
}

/** Notches and laps: cut from shoulder to shoulder, the near one set off the reference end. */
function shouldersOf(part: Part, piece: Piece, tape: Tape): readonly Operation[] {
  const one = (what: 'notch' | 'lap', cut: Notch | Lap, which: Which): Operation => {
    const figure = markAt(cut.near, tape);
    const setup = setupOf({
      machine: what,
      cutter: cut.long,
      height: cut.deep,
      sets: 'near-shoulder',
      figure,
      on: { at: 'end', named: part.end },
    });
    const own = base(part, piece, `${what}~${cut.id}`);
    const placing = what === 'notch' ? notched(part) : lapped(part);
    return { ...own, what, which, setup, figure: figure.value, fits: cut.fits, placing };
  };
  const cleat = (k: number): Takes => ({
    part: 'cleat',
    ...(part.notches.length === 1 ? {} : { no: k + 1 }),
  });
  return [
    ...part.notches.map((cut, k) => one('notch', cut, { is: 'takes', takes: cut.takes ?? cleat(k) })),
    ...part.laps.map((cut, k) => one('lap', cut, { is: 'lap', no: k + 1 })),
  ];
}
