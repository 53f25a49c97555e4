/** So many of a thing, with its word in the singular or the plural. @example counted(1, 'cut', 'cuts') // '1 cut' */
export const counted = (n: number, one: string, many: string): string => `${n} ${wordFor(n, one, many)}`;

/** The word alone, where the number stands in a blank of its own. @example wordFor(2, 'cleat', 'cleats') // 'cleats' */
export const wordFor = (n: number | undefined, one: string, many: string): string => (n === 1 ? one : many);
