import {
  compare,
  equals,
  inches,
  isZero,
  type Length,
  less,
  longest,
  subtract,
  sum,
  zero,
} from '../../length/length';
import type { Piece } from './pieces';
import type { Stack } from './stack';

/** What one gap may hold before the floor shows a ridge, about. Common practice, no source. */
export const mostInOneGap = inches(20n, 1000n);

/** One thing on the arbor. Size in inches. */
type OnArbor = { readonly kind: 'outer' | Piece['kind']; readonly size: Length };

type Spread = {
  /** As it goes on the arbor, from one outer to the other. */
  readonly order: readonly OnArbor[];
  /** The gaps, from 1, that cannot but hold more than about .020, and what they hold, inches. */
  readonly ridges: readonly { readonly gap: number; readonly holds: Length }[];
};

type Gaps = readonly (readonly Length[])[];

/** Tries before the spread found so far is taken; a stack that goes on an arbor needs far fewer. */
const mostTries = 5_000;

/**
 * The order on the arbor: outer, chippers larger first, outer, with the shims spread over the gaps between them so that
 * no gap holds more than about .020 where that can be had, else as little over it as can be, all gaps together.
 *
 * @param stack as chosen
 * @example spreadShims(outers, 1/16, two .020 and one .005) // a ridge in gap 1: Example 8 of stacks
 */
export function spreadShims({ outer, chosen }: Pick<Stack, 'outer' | 'chosen'>): Spread {
  const chippers = oneByOne(chosen, 'chipper');
  const gaps = shareOut(oneByOne(chosen, 'shim'), chippers.length + 1);
  const blades = [
    ...chippers.map((size): OnArbor => ({ kind: 'chipper', size })),
    { kind: 'outer', size: outer } as const,
  ];
  const after = gaps.map((gap, k) => [
    ...gap.map((size): OnArbor => ({ kind: 'shim', size })),
    ...blades.slice(k, k + 1),
  ]);
  const ridges = gaps.flatMap((gap, k) =>
    less(mostInOneGap, sum(gap)) ? [{ gap: k + 1, holds: sum(gap) }] : [],
  );
  return { order: [{ kind: 'outer', size: outer }, ...after.flat()], ridges };
}

/** The pieces of a kind one by one, larger first. */
function oneByOne(chosen: readonly Piece[], kind: Piece['kind']): readonly Length[] {
  const sizes = chosen
    .filter((p) => p.kind === kind)
    .flatMap((p) => Array.from({ length: p.count }, () => p.size));
  return sizes.sort((a, b) => compare(b, a));
}

/** What all the gaps hold over what they may, together. */
const excess = (gaps: Gaps): Length =>
  sum(gaps.map((gap) => longest(zero, subtract(sum(gap), mostInOneGap))));

/** Thickest shim first into the emptiest gap; only where that leaves a ridge are the other ways tried. */
function shareOut(shims: readonly Length[], count: number): Gaps {
  const empty: Gaps = Array.from({ length: count }, () => []);
  const easy = shims.reduce((gaps, shim) => put(gaps, shim, emptiest(gaps)), empty);
  return isZero(excess(easy)) ? easy : tryAll(shims, empty, easy);
}

const emptiest = (gaps: Gaps): number =>
  gaps.reduce((best, gap, k) => (less(sum(gap), sum(gaps[best] ?? [])) ? k : best), 0);

const put = (gaps: Gaps, shim: Length, at: number): Gaps =>
  gaps.map((gap, k) => (k === at ? [...gap, shim] : gap));

function tryAll(shims: readonly Length[], empty: Gaps, easy: Gaps): Gaps {
  let best = easy;
  let tries = 0;
  const place = (k: number, gaps: Gaps): void => {
    const shim = shims[k];
    if (!shim) {
      best = gaps;
      return;
    }
    for (const at of unlike(gaps)) {
      tries += 1;
      if (tries > mostTries || isZero(excess(best))) return;
      const next = put(gaps, shim, at);
      if (less(excess(next), excess(best))) place(k + 1, next);
    }
  };
  place(0, empty);
  return best;
}

/** The gaps, leaving out one that holds as much as an earlier one: a shim in either comes to the same. */
function unlike(gaps: Gaps): readonly number[] {
  const holds = gaps.map((gap) => sum(gap));
  return holds.flatMap((held, k) => (holds.findIndex((other) => equals(held, other)) === k ? [k] : []));
}
