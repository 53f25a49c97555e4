/** Least height of a row of figures, px. */
const row = 84;
const foot = 10;

type Spread = {
  readonly height: number;
  /** Middle of each row from the bottom, px. */
  readonly rows: readonly number[];
};

/**
 * Heights for rows of figures beside a board drawn to scale: each as near its own mark as it can be without touching
 * the next. The board grows until its marks and rows go together.
 *
 * @param nears places along the board; @param length of the board, same unit
 */
export function spread(nears: readonly number[], length: number): Spread {
  const height = heightFor(nears, length);
  const scale = (height - foot) / Math.max(length, 0.001);
  const rows = nears.map((near) => foot + near * scale);
  push(rows, row / 2, height - row / 2);
  return { height, rows };
}

/** Moves rows apart, up from the bottom, then back down from the top. */
function push(rows: number[], least: number, most: number): void {
  rows.forEach((y, k) => {
    rows[k] = Math.max(y, k === 0 ? least : (rows[k - 1] ?? 0) + row);
  });
  for (let k = rows.length - 1; k >= 0; k -= 1) {
    const limit = k === rows.length - 1 ? most : (rows[k + 1] ?? most) - row;
    rows[k] = Math.min(rows[k] ?? 0, limit);
  }
}

/** Tall enough that the closest two marks stand a row apart, or, where that is too long a scroll, that all rows fit. */
function heightFor(nears: readonly number[], length: number): number {
  const gaps = nears.slice(1).map((near, k) => near - (nears[k] ?? 0));
  const closest = Math.max(0.001, Math.min(length, ...gaps));
  const least = Math.max(484, nears.length * row + 60);
  return Math.max(least, Math.min((row / closest) * length + foot, least * 1.5));
}
