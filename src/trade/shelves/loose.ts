import { half, type Length, times, zero } from '../../length/length';
import type { Case, Inside } from '../carcass/case';
import { usualOf } from '../carcass/usual';
import { minus, type Term } from '../sums/sum';
import { proudOf } from './strips';

/** The play a loose shelf has at each end where nothing is said: half of the usual play of both. Inches. */
export const usualPlay = (c: Pick<Case, 'units'>): Length => half(usualOf(c).shelfPlay);

/**
 * What a loose shelf is shorter than its bay by: the room its pins or strips take at each end, and its play.
 *
 * @example looseLong(c, shelves) // 2 × 1/16 for the pins, 2 × 1/32 of play: Example 5 of shelves
 */
export function looseLong(c: Pick<Case, 'units'>, i: Inside): readonly Term[] {
  if (!i.heldBy) return [minus('play', usualOf(c).shelfPlay)];
  return [
    i.heldBy === 'strips'
      ? minus('two-strips', times(proudOf(i), 2n))
      : minus('two-pin-plates', times(i.flange ?? zero, 2n)),
    minus('two-end-plays', times(i.play ?? usualPlay(c), 2n)),
  ];
}

/** What its core is narrower than the inside is deep by: room in front and behind, and the edging stuck on. */
export const looseDeep = (i: Inside): readonly Term[] =>
  i.heldBy
    ? [
        minus('front-room', i.frontPlay ?? zero),
        minus('back-room', i.backPlay ?? zero),
        minus('front-edging', i.band ?? zero),
      ]
    : [];
