import { add, isNegative, isPositive, type Length, subtract } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import type { Units } from '../../length/units';
import { type Doorway, type DoorwayError, throughDoorway, type WayThrough } from './doorway';
import { type CaseSize, type Lies, liesThreeWays, noSize, type SizeName } from './lying';
import { type Stair, type StairError, type StairFit, upStair } from './stair';
import { type Corridors, roundTurn, type Turn, type TurnError } from './turn';

/** A turn, and how high it is clear, where that was measured. A landing is one, its rails the walls. Inches. */
type TurnPlace = Corridors & { readonly height?: Length };

/** What a case meets on its way, the first first. */
export type Passage =
  | { readonly kind: 'doorway'; readonly door: Doorway }
  | { readonly kind: 'turn'; readonly turn: TurnPlace }
  | { readonly kind: 'stair'; readonly stair: Stair };

/** A turn with the case lying one way. `overhead`: clear height less the case and a hand. Inches. */
export type TurnWay = {
  readonly lies: Lies;
  readonly turn: Turn;
  readonly overhead?: Length;
  readonly passes: boolean;
};

export type Passed =
  | { readonly kind: 'doorway'; readonly passes: boolean; readonly ways: readonly WayThrough[] }
  | { readonly kind: 'turn'; readonly passes: boolean; readonly ways: readonly TurnWay[] }
  | { readonly kind: 'stair'; readonly passes: boolean; readonly fit: StairFit };

export type PassageError =
  | DoorwayError
  | StairError
  | TurnError
  | { readonly code: 'not-positive'; readonly what: SizeName | 'clear-height' };

type WayInAt = { readonly hand: Length; readonly grain: Length; readonly units?: Units };

function turnThreeWays(
  place: TurnPlace,
  size: CaseSize,
  { hand, grain, units }: WayInAt,
): Result<readonly TurnWay[], PassageError> {
  const none = noSize(size);
  if (none) return err({ code: 'not-positive', what: none });
  if (place.height && !isPositive(place.height)) return err({ code: 'not-positive', what: 'clear-height' });
  const found: TurnWay[] = [];
  for (const { lies, plan, up } of liesThreeWays(size)) {
    const turn = roundTurn(place, plan, grain, units);
    if (!turn.ok) return turn;
    const overhead = place.height && subtract(place.height, add(up, hand));
    const passes = turn.value.goes !== 'jams' && !(overhead && isNegative(overhead));
    found.push({ lies, turn: turn.value, ...(overhead ? { overhead } : {}), passes });
  }
  return ok(found);
}

function through(passage: Passage, size: CaseSize, at: WayInAt): Result<Passed, PassageError> {
  switch (passage.kind) {
    case 'doorway': {
      const ways = throughDoorway(passage.door, size, at.hand);
      if (!ways.ok) return ways;
      return ok({ kind: 'doorway', passes: ways.value.some((way) => way.passes), ways: ways.value });
    }
    case 'turn': {
      const ways = turnThreeWays(passage.turn, size, at);
      if (!ways.ok) return ways;
      return ok({ kind: 'turn', passes: ways.value.some((way) => way.passes), ways: ways.value });
    }
    case 'stair': {
      const fit = upStair(passage.stair, size, at.grain);
      if (!fit.ok) return fit;
      return ok({ kind: 'stair', passes: fit.value.ways.some((way) => way.passes), fit: fit.value });
    }
  }
}

/**
 * Whether a case gets to its place: each thing on its way for itself, so there must be room between them to lay it
 * another way.
 *
 * @param passages on the way, inches; @param size of the case, inches, > 0
 * @param at.hand room for one hand, inches, >= 0; @param at.grain of the tape, inches, > 0
 * @returns every passage in order, passed or refused
 * @example wayIn(passages, size, at).map((found) => found.ok && found.value.passes) // Example 15 of room
 */
export const wayIn = (
  passages: readonly Passage[],
  size: CaseSize,
  at: WayInAt,
): readonly Result<Passed, PassageError>[] => passages.map((passage) => through(passage, size, at));
