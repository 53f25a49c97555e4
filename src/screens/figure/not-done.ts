import type { Refused } from '../../length/keypad-slot';

/** Why Figure did nothing: the keys' own reasons, and those of the strip. */
export type NotDone = Refused | 'built-on-itself' | 'strip-full' | 'sum-too-long';
