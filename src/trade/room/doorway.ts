import { add, isNegative, isPositive, type Length, less, negate, subtract, times } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { type CaseSize, noSize, type SizeName, type Way, ways } from './lying';

/** A doorway, the door off its hinges. Inches, > 0. */
export type Doorway = {
  /** Stop to stop. */
  readonly width: Length;
  /** Threshold to head stop. */
  readonly height: Length;
  /** The door leaf, where it was measured: it lies against the stops, so the clear width is less. */
  readonly leaf?: Length;
  /** How far the room beyond goes straight on. */
  readonly beyond?: Length;
};

/** What is to spare each way, hands taken off; negative: so much too little. Inches. */
export type WayThrough = Way & {
  readonly sideways: Length;
  readonly overhead: Length;
  /** In the room beyond, behind the trailing size; none where that was not said. */
  readonly behind?: Length;
  readonly passes: boolean;
};

export type DoorwayError =
  | {
      readonly code: 'not-positive';
      readonly what: SizeName | 'clear-width' | 'clear-height' | 'leaf' | 'beyond';
    }
  | { readonly code: 'negative-hand'; readonly by: Length }
  /** The clear width is no less than the leaf: the leaf was measured, or the opening without its stops. */
  | { readonly code: 'leaf-not-opening'; readonly by: Length };

function refused(door: Doorway, size: CaseSize, hand: Length): DoorwayError | undefined {
  const none = noSize(size);
  if (none) return { code: 'not-positive', what: none };
  if (!isPositive(door.width)) return { code: 'not-positive', what: 'clear-width' };
  if (!isPositive(door.height)) return { code: 'not-positive', what: 'clear-height' };
  if (door.leaf && !isPositive(door.leaf)) return { code: 'not-positive', what: 'leaf' };
  if (door.beyond && !isPositive(door.beyond)) return { code: 'not-positive', what: 'beyond' };
  if (isNegative(hand)) return { code: 'negative-hand', by: negate(hand) };
  if (door.leaf && !less(door.width, door.leaf))
    return { code: 'leaf-not-opening', by: subtract(door.width, door.leaf) };
  return undefined;
}

/**
 * A case carried straight through a doorway: each of its three faces ahead, both ways up. Two hands at the sides, one
 * over it.
 *
 * @param door inches; @param size of the case, inches, > 0; @param hand room for one hand, inches, >= 0
 * @returns all six ways, inches; `DoorwayError` where a figure cannot be
 * @example throughDoorway(door, size, inches(1n)).value.some((way) => way.passes) // Example 9 of room
 */
export function throughDoorway(
  door: Doorway,
  size: CaseSize,
  hand: Length,
): Result<readonly WayThrough[], DoorwayError> {
  const bad = refused(door, size, hand);
  if (bad) return err(bad);
  const found = ways.map((way): WayThrough => {
    const sideways = subtract(door.width, add(size[way.across], times(hand, 2n)));
    const overhead = subtract(door.height, add(size[way.up], hand));
    const behind = door.beyond && subtract(door.beyond, size[way.trailing]);
    const spares = [sideways, overhead, ...(behind ? [behind] : [])];
    return {
      ...way,
      sideways,
      overhead,
      ...(behind ? { behind } : {}),
      passes: !spares.some(isNegative),
    };
  });
  return ok(found);
}
