import {
  add,
  fromMillimetres,
  half,
  inches,
  isNegative,
  isPositive,
  type Length,
  less,
  longest,
  negate,
  over,
  shortest,
  subtract,
} from '../../length/length';
import type { Units } from '../../length/units';
import type { Face, Groove, Problem, Warning } from './layout';

/** Least wood left between grooves, and between a groove and an end. Common practice, no source. */
const leastLand = { in: inches(1n, 4n), mm: fromMillimetres(6n) };
const leastEndLand = { in: inches(3n, 8n), mm: fromMillimetres(10n) };
/** In the unit system of the job. */
export const leastLandIn = (units: Units = 'in'): Length => leastLand[units];

/** Far edge of a groove, from the same end. */
export const farOf = (g: Groove): Length => add(g.near, g.width);

const orLess = (least: Length, depth: Length | undefined): Length => (depth ? longest(least, depth) : least);

/** Grooves of one face, along the board. */
export const onFace = (grooves: readonly Groove[], face: Face): readonly Groove[] =>
  grooves.filter((g) => g.face === face);

/**
 * Wood left at the ends and between neighbours of one face: short grain breaks out when it is less than the depth
 * or than common practice.
 *
 * @param grooves of one face, ordered by near edge
 * @param length of the board, inches
 * @param units of its job
 * @example landWarnings(onFace(layout.grooves, 'A'), inches(20n))
 */
export function landWarnings(grooves: readonly Groove[], length: Length, units?: Units): readonly Warning[] {
  const first = grooves[0];
  const last = grooves[grooves.length - 1];
  const found: Warning[] = [];
  const end = (at: Groove, which: 'reference' | 'other', land: Length) => {
    const least = orLess(leastEndLand[units ?? 'in'], at.depth);
    if (less(land, least)) found.push({ code: 'end-land', at: at.id, end: which, land, least });
  };
  if (first) end(first, 'reference', first.near);
  if (last) end(last, 'other', subtract(length, farOf(last)));
  grooves.forEach((b, k) => {
    const a = grooves[k - 1];
    if (!a) return;
    const land = subtract(b.near, farOf(a));
    const least = orLess(orLess(leastLandIn(units), a.depth), b.depth);
    if (!isNegative(land) && less(land, least)) found.push({ code: 'land', a: a.id, b: b.id, land, least });
  });
  return found;
}

/**
 * Neighbours of one face that run into each other.
 *
 * @param grooves of one face, ordered by near edge
 * @example overlaps(onFace(layout.grooves, 'A'), 'A')
 */
export function overlaps(grooves: readonly Groove[], face: Face): readonly Problem[] {
  return grooves.flatMap((b, k): Problem[] => {
    const a = grooves[k - 1];
    const by = a && subtract(farOf(a), b.near);
    return a && by && isPositive(by) ? [{ code: 'overlap', face, a: a.id, b: b.id, by }] : [];
  });
}

/** Least web between the floors of grooves cut on two faces: the larger of t/3 and 3/16. Common practice, no source. */
const leastFloor = { in: inches(3n, 16n), mm: fromMillimetres(5n) };
const leastWeb = ({ thickness, units }: Stuff): Length =>
  longest(over(thickness, 3n), leastFloor[units ?? 'in']);

/** What a board is of: how thick, inches, and the unit system of its job. */
type Stuff = { readonly thickness: Length; readonly units?: Units | undefined };

/** True where two grooves lie over each other along the board. */
const opposed = (a: Groove, b: Groove): boolean => less(a.near, farOf(b)) && less(b.near, farOf(a));

/**
 * Wood left between the floors of opposed grooves: web = t - depth A - depth B; behind one alone, t - depth.
 *
 * @param a grooves of face A; @param b of face B, ordered by near edge; @param stuff the board is of
 * @example webs(onFace(grooves, 'A'), onFace(grooves, 'B'), { thickness: inches(23n, 32n) }).warnings
 */
export function webs(
  a: readonly Groove[],
  b: readonly Groove[],
  stuff: Stuff,
): { readonly problems: readonly Problem[]; readonly warnings: readonly Warning[] } {
  const problems: Problem[] = [];
  const warnings: Warning[] = [...thinFloors(a, stuff), ...thinFloors(b, stuff)];
  const { thickness } = stuff;
  const least = leastWeb(stuff);
  const ends = b.map(farOf);
  for (const x of a) {
    const end = farOf(x);
    for (const [k, y] of b.entries()) {
      if (!less(y.near, end)) break; // along the board: all that follow lie past it
      const far = ends[k];
      if (!far || !less(x.near, far) || !x.depth || !y.depth) continue;
      const web = subtract(subtract(thickness, x.depth), y.depth);
      if (!isPositive(web)) problems.push({ code: 'no-web', a: x.id, b: y.id, by: negate(web) });
      else if (less(web, least)) warnings.push({ code: 'web', a: x.id, b: y.id, web, least });
    }
  }
  return { problems, warnings };
}

/**
 * The thinnest wood a layout leaves: behind groove `a`, or between it and `b` opposite. Inches; 0 or less: cut
 * through.
 */
export type Web = { readonly web: Length; readonly a: string; readonly b?: string };

/**
 * The least web of a board: t - depth behind each groove, t - depth A - depth B where two lie over each other.
 *
 * @param grooves of both faces; those without a depth are passed over; @param thickness of the board, inches, > 0
 * @returns the thinnest, the first of several alike; nothing when no groove has a depth
 * @example thinnestWeb(layout.grooves, inches(23n, 32n)).web // 17/32 behind a groove 3/16 deep
 */
export function thinnestWeb(grooves: readonly Groove[], thickness: Length): Web | undefined {
  const [a, b] = [onFace(grooves, 'A'), onFace(grooves, 'B')];
  const alone = grooves.flatMap((g): Web[] =>
    g.depth ? [{ web: subtract(thickness, g.depth), a: g.id }] : [],
  );
  const between = a.flatMap((x) => b.flatMap((y) => webBetween(x, y, thickness) ?? []));
  return [...alone, ...between].reduce<Web | undefined>(
    (least, next) => (least && !less(next.web, least.web) ? least : next),
    undefined,
  );
}

function webBetween(a: Groove, b: Groove, thickness: Length): Web | undefined {
  if (!opposed(a, b) || !a.depth || !b.depth) return undefined;
  return { web: subtract(subtract(thickness, a.depth), b.depth), a: a.id, b: b.id };
}

/** Wood left behind a groove with nothing opposite, once a run: web = t - depth. */
function thinFloors(grooves: readonly Groove[], stuff: Stuff): readonly Warning[] {
  const { thickness } = stuff;
  const least = leastWeb(stuff);
  const seen = new Set<string>();
  return grooves.flatMap((g): Warning[] => {
    const web = g.depth && subtract(thickness, g.depth);
    if (!web || !isPositive(web) || !less(web, least) || seen.has(g.run ?? g.id)) return [];
    seen.add(g.run ?? g.id);
    return [{ code: 'web', a: g.id, web, least }];
  });
}

/**
 * Depth against thickness: as deep as the board is refused, more than half is warned of (common practice, no source).
 *
 * @param thickness of the board, inches, > 0
 * @example depths(layout.grooves, inches(23n, 32n)).problems
 */
export function depths(
  grooves: readonly Groove[],
  thickness: Length,
): { readonly problems: readonly Problem[]; readonly warnings: readonly Warning[] } {
  const seen = new Map<string, Length>();
  for (const g of grooves) if (g.depth) seen.set(g.run ?? g.id, g.depth);
  const all = [...seen].map(([id, depth]) => ({ in: id, depth, thickness }));
  return {
    problems: all.filter((d) => !less(d.depth, thickness)).map((d) => ({ code: 'too-deep', ...d })),
    warnings: all
      .filter((d) => less(d.depth, thickness) && less(half(thickness), d.depth))
      .map((d) => ({ code: 'deep', ...d })),
  };
}

/** How two stretches share the board: the overlap, inches, <= 0 when there is none. */
export const overlapOf = (a: Groove, b: Groove): Length =>
  subtract(shortest(farOf(a), farOf(b)), longest(a.near, b.near));
