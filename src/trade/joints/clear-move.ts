import { compare, type Length, less, negate, subtract, zero } from '../../length/length';
import type { Span } from '../carcass/taken';

/**
 * The least way something moves until it is clear of what is in its way; below zero toward the end it is counted from.
 *
 * @param own where it lies, or where each of its pieces does; @param others what it must be clear of
 * @param long it stays between 0 and here
 * @returns nothing where it is clear nowhere; zero where it lies clear
 */
export function clearMove(own: readonly Span[], others: readonly Span[], long: Length): Length | undefined {
  const [first, last] = [own[0], own[own.length - 1]];
  if (!first || !last) return zero;
  const barred = own.flatMap(([from, to]) =>
    others.map(([a, b]): Span => [subtract(a, to), subtract(b, from)]),
  );
  const on = least(barred);
  const back = least(barred.map(([from, to]): Span => [negate(to), negate(from)]));
  const farther = less(subtract(long, last[1]), on) ? undefined : on;
  const nearer = less(first[0], back) ? undefined : back;
  if (!farther || !nearer) return farther ?? (nearer && negate(nearer));
  return less(nearer, farther) ? negate(nearer) : farther;
}

/** The least move onward that lies in none of these, their ends left out. */
const least = (barred: readonly Span[]): Length =>
  [...barred]
    .sort(([a], [b]) => compare(a, b))
    .reduce((at, [from, to]) => (less(from, at) && less(at, to) ? to : at), zero);
