// What lies in the shop's drawers: the dado set in its box, shims, screws.

export const stack = 'Stack, as it lies in its box';
export const screws = 'Screws on the shelf, lengths';
export const screw = 'Screw';
export const screwLength = 'How long is the screw';
export const takeScrew = (length: string): string => `Take the ${length} screw off the list`;

export const singles = {
  outer: { row: 'One outer cuts', sheet: 'What one outer cuts' },
  arbor: { row: 'The arbor carries at most', sheet: 'The most the arbor carries' },
  correction: { row: 'This set cuts over its marks', sheet: 'What this set cuts over its marks' },
} as const;
export const notSaid = 'not said';
export const outerCuts = (width: string): string => `One outer cuts ${width}`;
export const chippersOf = (size: string): string => `Chippers of ${size}`;

export const shim = 'Shim';
export const otherChipper = 'Other chipper';
/** The sign stays with its word. */
export const more = (thing: string): string => `+\u00a0${thing}`;
export const howMany = (kind: string): string => `${kind}, how many`;
export const howManyOf = (size: string): string => `How many of ${size}, none to take it off`;
export const ofOneSize = 'of one size';
export const howThick = (kind: string): string => `How thick is the ${kind}`;
