import { keeper } from '../../length/keeper';
import { isPositive } from '../../length/length';
import type { Part } from '../carcass/part';
import { layOut } from '../grooves/lay-out';

/**
 * The most operations of one job that are worked out and put in order. 10,000 take 0.5 s on a desk, so two or three
 * on a phone; 20,000 took 1.2 s, and 900,000 did not come back. A large real job has some hundreds.
 */
export const mostOperations = 10_000;

/**
 * How many operations a part comes to, at least: each piece ripped, cut to length and joined, each groove once. A
 * wide groove cut in passes comes to more. Works none of them out.
 *
 * @param part with its sizes and joints
 * @returns a whole number, 0 or more
 * @example leastOperations(part) // 8 for two pieces ripped, cut to length and grooved twice
 */
export const leastOperations = (part: Part): number => kept(part, [], () => leastIn(part));

const kept = keeper<Part, number>();

function leastIn(part: Part): number {
  const rip = isPositive(part.width.sum.value) ? 1 : 0;
  const length = isPositive(part.length.sum.value) && (rip > 0 || part.of === '') ? 1 : 0;
  const joints =
    part.rabbets.length +
    part.notches.length +
    part.laps.length +
    (part.tongues ?? []).length +
    (part.along ?? []).length +
    (part.bores ?? []).length +
    (part.dowels ?? []).length +
    (part.fasteners ?? []).length +
    (part.endCut ? 1 : 0) +
    (part.corner ? 1 : 0);
  return part.copies * (rip + length + joints + groovesOf(part));
}

function groovesOf({ board, copies }: Part): number {
  if (!board || copies === 0) return 0;
  const { grooves, problems } = layOut(board);
  return problems.length === 0 ? grooves.length : 0;
}
