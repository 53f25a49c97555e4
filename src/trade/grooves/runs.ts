import {
  add,
  half,
  isNegative,
  isPositive,
  type Length,
  less,
  longest,
  negate,
  subtract,
  sum,
  times,
  zero,
} from '../../length/length';
import type { Board, Run } from './board';
import type { Groove, GrooveField, Problem } from './layout';
import { atPitch, fill, mostParts, nearFrom, openings } from './place';

/** What a run came to: its near edges from the datum, or why it cannot be laid out. */
export type RunFacts = {
  readonly run: string;
  readonly nears: readonly Length[];
  /** `given`: the number of each, where one taken away has left a gap. */
  readonly numbers?: readonly number[];
  /** `given`: the id of each, by which it is ticked. */
  readonly ids?: readonly string[];
  readonly problems: readonly Problem[];
  /** Centre to centre. */
  readonly pitch?: Length;
  /** `openings`: clear between part faces. */
  readonly opening?: Length;
  /** `fill`: room not used. */
  readonly leftOver?: Length;
  /** `pitch`, `fill`: clear between loose parts, each dropped to the lower edge of its groove: pitch less part. */
  readonly clear?: Length;
  /** Wood from the last groove to the far end of the board. */
  readonly endLand?: Length;
};

/** A run of more is a slip of the keys, and would stall the phone. */
const mostGrooves = 1000;

const none = (run: Run, problems: readonly Problem[]): RunFacts => ({ run: run.id, nears: [], problems });

/**
 * Places one run along a board.
 *
 * @param run, board lengths in inches, positions from the datum; what is missing or wrong becomes problems
 * @example placeRun(run, board).pitch // centre to centre, exact
 */
export function placeRun(run: Run, board: Board): RunFacts {
  const gaps = missing(run);
  if (gaps.length > 0) return none(run, gaps);
  const facts = bySpacing(run, board);
  const last = facts.nears.length > 0 ? longest(zero, ...facts.nears) : undefined;
  if (!last || !board.length) return facts;
  const far = sum([board.datum ?? zero, last, run.width ?? zero]);
  return { ...facts, endLand: subtract(board.length, far) };
}

function bySpacing(run: Run, board: Board): RunFacts {
  switch (run.spacing) {
    case 'pitch':
      return byPitch(run);
    case 'fill':
      return byFill(run, board);
    case 'openings':
      return byOpenings(run, board);
    case 'given':
      return byPlaces(run);
  }
}

const needs: Record<
  Run['spacing'],
  readonly ('width' | 'depth' | 'count' | 'pitch' | 'first' | 'endRoom')[]
> = {
  pitch: ['width', 'count', 'first', 'pitch'],
  fill: ['width', 'first', 'pitch'],
  openings: ['width', 'count'],
  given: ['width'],
};

function missing(run: Run): readonly Problem[] {
  const found: Problem[] = needs[run.spacing]
    .filter((field) => run[field] === undefined && !(field === 'pitch' && run.count === 1))
    .map((field) => ({ code: 'missing', in: run.id, field }));
  if (run.spacing === 'given' && run.at.every((at) => at === undefined))
    found.push({ code: 'missing', in: run.id, field: 'at' });
  const positive: readonly GrooveField[] = ['width', 'depth', 'pitch', 'part', 'span', 'stopped'];
  for (const field of positive) {
    const value = run[field as 'width' | 'depth' | 'pitch' | 'part' | 'span' | 'stopped'];
    if (value !== undefined && !isPositive(value)) found.push({ code: 'not-positive', in: run.id, field });
  }
  if (run.endRoom && isNegative(run.endRoom))
    found.push({ code: 'negative', in: run.id, field: 'endRoom', by: negate(run.endRoom) });
  const counted = run.spacing === 'pitch' || run.spacing === 'openings';
  if (counted && run.count !== undefined && !isCount(run.count)) {
    found.push({ code: 'count-not-whole', in: run.id });
  }
  return found;
}

const isCount = (n: number): boolean => Number.isInteger(n) && n >= 1 && n <= mostGrooves;

function tight(run: Run, pitch: Length, width: Length): readonly Problem[] {
  return less(width, pitch) ? [] : [{ code: 'pitch-too-small', in: run.id, pitch, width }];
}

function byPitch(run: Run): RunFacts {
  const { width = zero, first = zero, count = 0 } = run;
  const pitch = run.pitch ?? add(width, width);
  const problems = count > 1 ? tight(run, pitch, width) : [];
  if (problems.length > 0) return none(run, problems);
  const nears = atPitch(nearFrom(first, width, run.point), pitch, count);
  return { run: run.id, nears, problems, pitch, ...clearOf(run, pitch) };
}

const clearOf = ({ part }: Run, pitch: Length) => (part ? { clear: subtract(pitch, part) } : {});

const spanOf = (run: Run, board: Board): Length =>
  run.span ?? subtract(board.length ?? zero, board.datum ?? zero);

function byFill(run: Run, board: Board): RunFacts {
  const { width = zero, pitch = zero, endRoom = zero } = run;
  const problems = tight(run, pitch, width);
  // without a span or a board length there is nothing to fill: the board's own missing length says so
  if (problems.length > 0 || !(run.span ?? board.length)) return none(run, problems);
  const near = nearFrom(run.first ?? zero, width, run.point);
  const room = subtract(spanOf(run, board), sum([near, endRoom, width]));
  const { count, leftOver } = fill(room, pitch);
  if (count === 0) return none(run, [{ code: 'none-fit', in: run.id, short: negate(leftOver) }]);
  if (count > mostGrooves) return none(run, [{ code: 'count-not-whole', in: run.id }]);
  const start = run.centred ? add(near, half(leftOver)) : near;
  return {
    run: run.id,
    nears: atPitch(start, pitch, count),
    problems: [],
    pitch,
    leftOver,
    ...clearOf(run, pitch),
  };
}

function byOpenings(run: Run, board: Board): RunFacts {
  const { width = zero, count = 1, first = zero } = run;
  if (!(run.span ?? board.length)) return none(run, []);
  const part = run.part ?? width;
  if (less(width, part)) return none(run, [{ code: 'part-too-thick', in: run.id, part, width }]);
  const span = run.span ?? subtract(spanOf(run, board), first);
  const found = openings(span, count, { part, width });
  if (!isPositive(found.opening)) {
    const short = subtract(times(part, BigInt(count)), span);
    return none(run, [{ code: 'no-openings', in: run.id, short, fits: mostParts(span, part) }]);
  }
  const pitch = add(found.opening, part);
  const problems = count > 1 ? tight(run, pitch, width) : [];
  if (problems.length > 0) return none(run, problems);
  const nears = found.nears.map((near) => add(near, first));
  return { run: run.id, nears, problems, opening: found.opening, pitch };
}

/** Places as listed; a gap is passed over and its number never given again, so no tick moves to another groove. */
function byPlaces(run: Run): RunFacts {
  const there = run.at.flatMap((at, k) =>
    at ? [{ at, number: k + 1, id: run.ids?.[k] ?? `${k + 1}` }] : [],
  );
  return {
    run: run.id,
    nears: there.map(({ at }) => nearFrom(at, run.width ?? zero, run.point)),
    numbers: there.map(({ number }) => number),
    ids: there.map(({ id }) => id),
    problems: [],
  };
}

/** The grooves of a placed run, from the reference end: numbers stay with the run. */
export function groovesOf(run: Run, facts: RunFacts, datum: Length): readonly Groove[] {
  const number = (k: number): number => facts.numbers?.[k] ?? k + 1;
  return facts.nears.map((near, k) => ({
    id: `${run.id}~${facts.ids?.[k] ?? number(k)}`,
    no: `${number(k)}`,
    run: run.id,
    face: run.face,
    near: add(near, datum),
    width: run.width ?? zero,
    wide: false,
    ...(run.depth ? { depth: run.depth } : {}),
    ...(run.stopped ? { stopped: run.stopped } : {}),
  }));
}
