import { compare, zero } from '../../length/length';
import type { Case, Inside } from './case';

/**
 * Which of its kind it is in its bay, from the bottom up; of things without a place in the order they were said.
 *
 * @returns nothing where it is the only one
 * @example numberOf(c, upperShelf) // 2
 */
export function numberOf(c: Case, i: Inside): number | undefined {
  const alike = c.inside.filter((x) => x.kind === i.kind && x.bay === i.bay);
  if (alike.length < 2) return undefined;
  const upward = [...alike].sort((a, b) => compare(a.at ?? zero, b.at ?? zero));
  return upward.findIndex((x) => x.id === i.id) + 1;
}
