import { keeper } from '../../length/keeper';
import {
  add,
  compare,
  equals,
  isNegative,
  isPositive,
  type Length,
  less,
  negate,
  subtract,
  zero,
} from '../../length/length';
import type { Board, Run } from './board';
import { depths, farOf, landWarnings, onFace, overlaps, webs } from './lands';
import type { BoardField, Dropped, Face, Groove, Problem, Warning } from './layout';
import { groovesOf, placeRun, type RunFacts } from './runs';
import { dropFor, wideGrooves } from './wide';

/** Everything a board's layout comes to. With problems it cannot be cut, and `grooves` is what could be placed. */
export type Layout = {
  /** Kept, along the board, face A before face B. */
  readonly grooves: readonly Groove[];
  readonly dropped: readonly Dropped[];
  readonly problems: readonly Problem[];
  readonly warnings: readonly Warning[];
  readonly facts: readonly RunFacts[];
  /** The layout is its own mirror: turned end for end it is the same board. */
  readonly endForEndSafe: boolean;
};

/**
 * Lays out a board: places every run and wide groove from the reference end, lets wide ones win over narrow ones,
 * and says what cannot be cut or is worth a look.
 *
 * @param board lengths in inches, what is not yet said left undefined
 * @example layOut(board).grooves[0].near // exact, from the reference end
 */
export const layOut = (board: Board): Layout => kept(board, [], () => laidOut(board));

const kept = keeper<Board, Layout>();

function laidOut(board: Board): Layout {
  const datum = board.datum ?? zero;
  const facts = placeRuns(board);
  const many = tooMany(board, facts);
  if (many.length > 0) return { ...nothing, facts, problems: [...boardProblems(board), ...many] };
  const wide = wideGrooves(board);
  const narrow = board.runs.flatMap((run, k) => groovesOf(run, facts[k] ?? blank(run), datum));
  const { kept, dropped } = dropFor(narrow, wide.grooves, board.units);
  const grooves = [...kept, ...wide.grooves].sort(along);
  const checked = check(board, grooves, [...narrow, ...wide.grooves]);
  const problems = [
    ...boardProblems(board),
    ...facts.flatMap((f) => f.problems),
    ...wide.problems,
    ...checked.problems,
  ];
  const safe = board.length !== undefined && problems.length === 0 && isMirror(grooves, board.length);
  return { grooves, dropped, problems, warnings: checked.warnings, facts, endForEndSafe: safe };
}

const nothing = { grooves: [], dropped: [], warnings: [], endForEndSafe: false };

/**
 * The most cuts of one layout that are worked out, its grooves on all its boards. 2,000 take 0.2 s with their
 * operations on a desk; a thousand boards of twenty took 11 s.
 */
export const mostCuts = 2000;

/** Every run, as long as there is any use: what has passed the most is not placed. */
function placeRuns(board: Board): readonly RunFacts[] {
  let left = mostCuts;
  return board.runs.map((run) => {
    const facts = left < 0 ? blank(run) : placeRun(run, board);
    left -= facts.nears.length;
    return facts;
  });
}

function tooMany(board: Board, facts: readonly RunFacts[]): readonly Problem[] {
  const grooves = facts.reduce((n, { nears }) => n + nears.length, board.wides.length);
  const copies = board.made === 'alike' ? board.copies : board.made === 'pair' ? 2 : 1;
  return grooves * copies > mostCuts ? [{ code: 'too-many', grooves, copies, most: mostCuts }] : [];
}

const blank = (run: Run): RunFacts => ({ run: run.id, nears: [], problems: [] });

const along = (a: Groove, b: Groove): number =>
  a.face === b.face ? compare(a.near, b.near) : a.face < b.face ? -1 : 1;

function boardProblems(board: Board): readonly Problem[] {
  const found: Problem[] = [];
  if (!board.length) found.push({ code: 'missing', field: 'length' });
  const positive: readonly BoardField[] = ['length', 'thickness', 'cutter', 'across'];
  for (const field of positive) {
    const value = board[field as 'length' | 'thickness' | 'cutter' | 'across'];
    if (value && !isPositive(value)) found.push({ code: 'not-positive', field });
  }
  if (!(Number.isInteger(board.copies) && board.copies >= 1))
    found.push({ code: 'not-positive', field: 'copies' });
  return found;
}

const faces: readonly Face[] = ['A', 'B'];

function check(board: Board, grooves: readonly Groove[], placed: readonly Groove[]) {
  const problems: Problem[] = [];
  const warnings: Warning[] = [];
  const { length, thickness, units } = board;
  for (const face of faces) {
    const on = onFace(grooves, face);
    problems.push(...overlaps(on, face));
    if (!length) continue;
    problems.push(...offTheBoard(board, on, placed));
    warnings.push(...landWarnings(on, length, units));
  }
  if (thickness && isPositive(thickness)) {
    for (const found of [
      depths(grooves, thickness),
      webs(onFace(grooves, 'A'), onFace(grooves, 'B'), { thickness, units }),
    ]) {
      problems.push(...found.problems);
      warnings.push(...found.warnings);
    }
  }
  return { problems, warnings };
}

/** The first groove of each run off the near end, and the last past the far end, with what would fit. */
function offTheBoard(
  board: Board,
  grooves: readonly Groove[],
  placed: readonly Groove[],
): readonly Problem[] {
  const found: Problem[] = [];
  const { length } = board;
  const groups = new Set(grooves.map((g) => g.run ?? g.id));
  for (const group of groups) {
    const all = grooves.filter((g) => (g.run ?? g.id) === group);
    const first = all[0];
    const last = all[all.length - 1];
    if (first && isNegative(first.near)) {
      found.push({ code: 'off-the-end', in: group, no: first.no, by: negate(first.near) });
    }
    if (last && length && less(length, farOf(last))) {
      const own = placed.filter((g) => (g.run ?? g.id) === group);
      const fits = own.filter((g) => !less(length, farOf(g))).length;
      found.push(pastTheEnd(board, last, { fits, length, first: own[0] ?? last }));
    }
  }
  return found;
}

type Past = { readonly fits: number; readonly length: Length; readonly first: Groove };

function pastTheEnd(board: Board, last: Groove, { fits, length, first }: Past): Problem {
  const by = subtract(farOf(last), length);
  const moved = subtract(first.near, by);
  const given = startOf(board, last);
  // no earlier start helps a list or a fill, nor a run longer than the board
  const startAt = given && !isNegative(moved) ? subtract(given, by) : negate(by);
  return { code: 'past-the-end', in: last.run ?? last.id, no: last.no, by, fits, startAt };
}

/** The figure a run's or wide groove's start was given by, when moving it moves all of them alike. */
function startOf(board: Board, groove: Groove): Length | undefined {
  const run = board.runs.find((r) => r.id === groove.run);
  if (!run) return board.wides.find((w) => w.id === groove.id)?.near;
  if (run.spacing === 'openings') return run.first ?? zero;
  return run.spacing === 'pitch' ? run.first : undefined;
}

/**
 * Where a groove's near edge falls when the board is turned end for end: L - a - w.
 *
 * @example fromOther(inches(75n, 2n), inches(49n, 16n), inches(13n, 32n)) // 34 1/32: Example 14 of grooves
 */
export function fromOther(length: Length, near: Length, width: Length): Length {
  return subtract(subtract(length, near), width);
}

/**
 * True when each face's grooves turned end for end fall on its grooves, width and depth alike. Turning swaps front and
 * back, so a board with a stopped groove never is.
 *
 * @param grooves kept, along the board face by face; @param length of the board, inches
 * @example isMirror(layOut(board).grooves, inches(75n, 2n))
 */
export function isMirror(grooves: readonly Groove[], length: Length): boolean {
  if (grooves.length === 0 || grooves.some((g) => g.stopped)) return false;
  return faces.every((face) => {
    const on = onFace(grooves, face);
    return on.every((g, k) => {
      const twin = on[on.length - 1 - k];
      if (!twin) return false;
      const sameDepth = g.depth && twin.depth ? equals(g.depth, twin.depth) : g.depth === twin.depth;
      return (
        sameDepth && equals(g.width, twin.width) && equals(fromOther(length, twin.near, twin.width), g.near)
      );
    });
  });
}

/** Datum of a part: what lies between its reference end and the shared face. @example datumOf(z, t) */
export const datumOf = (floorToBottom: Length, thickness: Length): Length => add(floorToBottom, thickness);

/**
 * One stop for two parts: set it for the part with the larger datum; the other gets a spacer of the difference.
 *
 * @returns the spacer, inches, >= 0, and which part it goes with
 * @example spacerFor(inches(155n, 32n), inches(9n, 32n)) // 4 9/16, at the mate: Example 3 of grooves
 */
export function spacerFor(
  datum: Length,
  mate: Length,
): { readonly spacer: Length; readonly at: 'board' | 'mate' } {
  const difference = subtract(datum, mate);
  return isNegative(difference)
    ? { spacer: negate(difference), at: 'board' }
    : { spacer: difference, at: 'mate' };
}
