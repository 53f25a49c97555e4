import { add, isNegative, type Length, less, subtract, zero } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import type { Tape } from '../../length/tape';
import { lappedFrame } from '../joints/laps';
import { pinProblems } from '../shelves/pin-problems';
import { backProblems } from './back';
import type { Cutting } from './boards';
import type { Case, Inside, Stuff } from './case';
import { frameOf, frameProblems } from './frame';
import { matched, type Said } from './matched';
import { nailerProblems } from './nailers';
import { acrossOf, overlaps } from './overlaps';
import { type Making, panels } from './panels';
import type { Part } from './part';
import { plinthProblems } from './plinth';
import type { CaseProblem } from './problems';
import { basePlan, roundIt } from './round-it';
import { withShelfPlaces } from './shelf-places';
import { onMarks, type SetMarks, type Sizes, sizesOf } from './sizes';
import { standing } from './standing';
import { stopProblems, withStopPlaces } from './stops';
import { toeProblems } from './toe-notch';

type CaseOptions = {
  readonly stuff: readonly Stuff[];
  readonly tape: Tape;
  /** How the grooves of a part are cut, where that is not the usual way. */
  readonly cutting?: (part: string) => Cutting;
  /** What is said of a part by its id: how its grain lies, whether it shares a mark with unlike parts. */
  readonly said?: (part: string) => Said;
  /** How much the floor falls under it, where that was read. Inches. */
  readonly fall?: Length | undefined;
  /** Marks of bottom and sides that other parts are cut to already. */
  readonly marks?: SetMarks;
};

/** A case worked out: its sizes, and every part in it. */
export type Worked = { readonly sizes: Sizes; readonly parts: readonly Part[] };

/**
 * Every part of a case from its overall sizes (or held openings), its joints and the stuff as measured.
 *
 * @param c the case as decided; what is not said stands at its usual figure
 * @returns parts with sizes, sums, grooves, rabbets, notches and laps, inches; or everything that stops it
 * @example partsOf(c, { stuff, tape: '1/32' })
 */
export function partsOf(c: Case, options: CaseOptions): Result<Worked, readonly CaseProblem[]> {
  const found = sizesOf(c, options.stuff);
  if (!found.ok) return found;
  const sizes = withStopPlaces(
    withShelfPlaces(onMarks(found.value, options.tape, options.marks), options.tape),
  );
  const problems = [
    ...backProblems(sizes),
    ...toeProblems(sizes),
    ...plinthProblems(sizes),
    ...nailerProblems(sizes),
    ...insideProblems(sizes),
    ...overlaps(sizes),
    ...(c.hasFrame ? frameProblems(sizes) : []),
    ...baseProblems(sizes),
    ...pinProblems(sizes),
    ...stopProblems(sizes),
  ];
  if (problems.length > 0) return err(problems);
  const making: Making = {
    sizes,
    tape: options.tape,
    fall: options.fall,
    cutting: options.cutting ?? (() => ({})),
  };
  const carcass = panels(making);
  const parts = [...carcass, ...standing(making, carcass), ...roundIt(making)];
  return ok({ sizes, parts: matched(parts, sizes, options.tape, options.said) });
}

type Need = 'at' | 'first' | 'pitch' | 'width' | 'depth' | 'stripThick';

const needs: Record<Inside['kind'], readonly Need[]> = {
  trays: ['first', 'pitch', 'width', 'depth'],
  fixed: ['at'],
  loose: [],
  rail: ['at'],
  stop: [],
};

const held = { pins: ['first', 'pitch'], lines: [], strips: ['width', 'stripThick', 'depth'] } as const;

/** What must be said of it; of loose shelves by what holds them. */
const needsOf = ({ kind, heldBy }: Inside): readonly Need[] =>
  kind === 'loose' && heldBy ? held[heldBy] : needs[kind];

function insideProblems(sizes: Sizes): readonly CaseProblem[] {
  const { case: c } = sizes;
  return c.inside.flatMap((i): readonly CaseProblem[] => {
    const bays = c.partitions + 1;
    if (i.bay < 1 || i.bay > bays) return [{ code: 'no-bay', in: i.id, bay: i.bay, bays }];
    const absent = needsOf(i).filter((field) => i[field] === undefined);
    if (absent.length > 0) return absent.map((field) => ({ code: 'missing-inside', in: i.id, field }));
    return tooHigh(sizes, i);
  });
}

/** A shelf, a rail or a stop strip must leave its own thickness under the top. */
function tooHigh(sizes: Sizes, i: Inside): readonly CaseProblem[] {
  if (i.at === undefined) return [];
  const own = acrossOf(sizes, i);
  const room = i.kind === 'rail' ? frameOf(sizes).middles.value : sizes.clearHeight.value;
  const over = subtract(add(i.at, own), room);
  const most = subtract(room, own);
  return isNegative(i.at) || less(zero, over) ? [{ code: 'above-the-top', in: i.id, by: over, most }] : [];
}

function baseProblems(sizes: Sizes): readonly CaseProblem[] {
  if (!sizes.case.hasBase) return [];
  const plan = lappedFrame(basePlan(sizes));
  if (plan.ok) return [];
  const { error } = plan;
  if (error.code === 'crosses-overlap' || error.code === 'rails-meet') return [error];
  return [{ code: 'crosses-count' }];
}
