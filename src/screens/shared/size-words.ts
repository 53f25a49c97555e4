/** Two sizes of one thing as written: the unit once where both have it. @example bySize('1640 mm', '450 mm') // '1640 × 450 mm' */
export const bySize = (long: string, wide: string): string =>
  `${long.endsWith(' mm') && wide.endsWith(' mm') ? long.slice(0, -3) : long} × ${wide}`;
